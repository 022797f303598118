// A list of prices as makers write it.
#include <algorithm>

#include "formula/kitchen/price_list.hpp"
#include "formula/kitchen/price_text.hpp"
#include "support/catch.hpp"
#include "support/knowledge.hpp"

using namespace standin;

namespace prices_test {

PriceList good(const std::string& text) {
    auto list = read_prices(text, "prices.txt", knowledge());
    if (!list) FAIL(list.error().where + " " + list.error().message);
    return *list;
}

Error trouble(const std::string& text) {
    const auto list = read_prices(text, "prices.txt", knowledge());
    REQUIRE_FALSE(list);
    return list.error();
}

const Price& of(const PriceList& list, const std::string& id) {
    const auto found = std::find_if(list.prices.begin(), list.prices.end(), [&](const Price& p) { return p.ingredient == id; });
    REQUIRE(found != list.prices.end());
    return *found;
}

// Money for a kilo.
double a_kilo(const std::string& line, const std::string& id) {
    const PriceList list = good(line);
    const Price& price = of(list, id);
    return 1000 * price.money / price.grams.mid;
}

bool has(const std::string& text, const std::string& part) { return text.find(part) != std::string::npos; }

TEST_CASE("a price by weight, however it is written", "[prices]") {
    CHECK(a_kilo("pork shoulder 6.50/kg", "pork-shoulder") == Approx(6.5));
    CHECK(a_kilo("pork shoulder: 6,50 \xe2\x82\xac/kg", "pork-shoulder") == Approx(6.5));
    CHECK(a_kilo("pork shoulder 6.50 EUR per kg", "pork-shoulder") == Approx(6.5));
    CHECK(a_kilo("pork shoulder EUR 6.50 a kilo", "pork-shoulder") == Approx(6.5));
    CHECK(a_kilo("pork shoulder - 6.50 crowns / kg", "pork-shoulder") == Approx(6.5));
    CHECK(a_kilo("$3.99/lb pork shoulder", "pork-shoulder") == Approx(3.99 / 0.45359237));
    CHECK(a_kilo("2 EUR/kg spinach", "spinach") == Approx(2));
    CHECK(a_kilo("black pepper 1.20 per 100 g", "black-pepper") == Approx(12));
    CHECK(a_kilo("black pepper 1.80 for 40 g", "black-pepper") == Approx(45));
    CHECK(a_kilo("500 g table salt 0.60", "table-salt") == Approx(1.2));
    CHECK(a_kilo("spinach free", "spinach") == Approx(0));
    CHECK(a_kilo("pork shoulder 1,234.50/kg", "pork-shoulder") == Approx(1234.5));
}

TEST_CASE("a price by the bunch or the piece is of what is left when it is trimmed", "[prices]") {
    const PriceList list = good("parsley 1.20 a bunch\nlemon juice 6/l\ngarlic 0.50 a head\nspinach 2.00/kg");
    CHECK(of(list, "parsley").trimmed);
    CHECK(of(list, "parsley").grams.mid > 20);
    CHECK(of(list, "garlic").trimmed);
    CHECK_FALSE(of(list, "spinach").trimmed);
}

TEST_CASE("one currency a list, said once or everywhere", "[prices]") {
    CHECK(good("currency: EUR\nspinach 2/kg").currency == "EUR");
    CHECK(good("spinach 2 \xe2\x82\xac/kg\nchard 2 EUR/kg").currency == "\xe2\x82\xac");
    CHECK(good("spinach 2/kg").currency.empty());
    const Error two = trouble("spinach 2 EUR/kg\nchard $2/kg");
    CHECK(two.where == "prices.txt:2:1");
    CHECK(has(two.message, "two currencies"));
}

TEST_CASE("what is wrong with a price list is told with its place", "[prices]") {
    const Error slip = trouble("pork shoulder 6.50/kg\nspnch 2/kg");
    CHECK(has(slip.where, "prices.txt:2:"));
    CHECK(has(slip.message, "spnch"));
    CHECK(has(trouble("pork shoulder").message, "no price"));
    CHECK(has(trouble("6.50/kg").message, "no food"));
    CHECK(has(trouble("spinach 2/kg\nspinach 3/kg").message, "two prices"));
    CHECK(has(trouble("spinach 1,234/kg").message, "thousand"));
    CHECK(has(trouble("blanched spinach 3/kg").message, "as it is bought"));
    CHECK(has(trouble("").where, "prices.txt"));
}

TEST_CASE("headings and remarks in a price list are passed over", "[prices]") {
    CHECK(good("Prices, November\nMeat:\npork shoulder 6.50/kg\n# from the stall\nGreens:\nspinach 2/kg").prices.size() == 2);
}

TEST_CASE("prices are told from formulas and lists of what is on hand", "[prices]") {
    CHECK(looks_like_prices("pork shoulder 6.50/kg\nspinach 2 EUR/kg", "x"));
    CHECK_FALSE(looks_like_prices("Green\n2 kg pork shoulder\nsalt 18 g/kg\n300 g spinach", "x"));
    CHECK_FALSE(looks_like_prices("spinach 400 g\nparsley 2 bunches\nchard plenty", "x"));
}

}  // namespace prices_test
