#include "formula/lexer/quantity_text.hpp"

#include "support/catch.hpp"

using namespace standin;

namespace quantity_text_test {

double number(std::string_view text) {
    Cursor cursor(text);
    const auto read = number_at(cursor);
    return read ? read->band.mid : -1;
}

AmountText amount(std::string_view text) {
    Cursor cursor(text);
    return amount_at(cursor).value_or(AmountText{});
}

double grams(std::string_view text) {
    double total = 0;
    for (const auto& part : amount(text).parts) total += part.unit ? part.number.mid * part.unit->size.mid : -1e9;
    return total;
}

TEST_CASE("numbers the way people write them") {
    CHECK(number("1 1/2 cups") == 1.5);
    CHECK(number("1-1/2 cups") == 1.5);
    CHECK(number("1½") == 1.5);
    CHECK(number("½") == 0.5);
    CHECK(number("3/4 cup") == 0.75);
    CHECK(number("1 and 1/2") == 1.5);
    CHECK(number(".5 tsp") == 0.5);
    CHECK(number("1,5 kg") == 1.5);
    CHECK(number("0,250 kg") == 0.25);
    CHECK(number("1,234,567") == 1234567);
    CHECK(number("half a lemon") == 0.5);
    CHECK(number("a pinch") == 1);
    CHECK(number("half a dozen") == 6);
    CHECK(number("2 dozen") == 24);
    CHECK(number("one and a half") == 1.5);
    CHECK(number("three quarters") == 0.75);
    CHECK(number("14-oz") == 14);
    CHECK(number("spinach") == -1);
    CHECK(number("-5 g") == -5);
    CHECK(number("1/0") == 1);
}

TEST_CASE("ranges are bands") {
    for (const std::string_view text : {"2-3", "2–3", "2 to 3", "between 2 and 3", "2 or 3"}) {
        Cursor cursor(text);
        const auto read = number_at(cursor);
        REQUIRE(read);
        CHECK(read->band == Band{2, 2.5, 3});
    }
    CHECK(number("1/2-3/4") == 0.625);
    Cursor about("about 300");
    CHECK(number_at(about)->band == Band{270, 300, 330});
    CHECK(amount("20 g to 30 g").parts.front().number == Band{20, 25, 30});
}

TEST_CASE("a comma before three digits is marked unsure") {
    CHECK(amount("2,400 g").unsure_comma);
    CHECK_FALSE(amount("2,4 kg").unsure_comma);
    CHECK_FALSE(amount("1,234,567 g").unsure_comma);
}

TEST_CASE("amounts of several parts") {
    CHECK(grams("2 lb 4 oz") == Approx(2.25 * 453.59237));
    CHECK(grams("2 lb, 4 oz pork") == Approx(2.25 * 453.59237));
    CHECK(grams("1 tbsp plus 1 tsp") == Approx(4 * 4.92892159375));
    CHECK(grams("1 cup less 1 tbsp") == Approx(15 * 14.78676478125));
    CHECK(grams("2 x 400 g") == 800);
    CHECK(grams("2 × 400 g cans") == 800);
    CHECK(grams("2 (14 oz) cans") == Approx(28 * 28.349523125));
    CHECK(grams("two 14-oz cans") == Approx(28 * 28.349523125));
    CHECK(grams("300g") == 300);
}

TEST_CASE("shares say of what") {
    CHECK(amount("1.8 % of meat").of == Whole::meat);
    CHECK(amount("1.8% of the batch").of == Whole::batch);
    CHECK(amount("1.8%").of == Whole::unsaid);
    Cursor per("per kg of meat");
    const auto read = per_at(per);
    REQUIRE(read);
    CHECK(read->grams == 1000);
    CHECK(read->of == Whole::meat);
}

TEST_CASE("durations") {
    const auto minutes = [](std::string_view text) {
        Cursor cursor(text);
        return minutes_at(cursor).value_or(-1);
    };
    CHECK(minutes("3 min") == 3);
    CHECK(minutes("1 h 30 min") == 90);
    CHECK(minutes("2 days") == 2880);
    CHECK(minutes("90 seconds") == 1.5);
    CHECK(minutes("3 cups") == -1);
}

}  // namespace quantity_text_test
