#include "formula/amounts/amount.hpp"

#include "support/catch.hpp"

using namespace standin;

namespace amount_test {

Band exact(double grams) { return {grams, grams, grams}; }

Ingredient herb() {
    Ingredient herb;
    herb.id = "parsley";
    herb.names = {"parsley"};
    herb.tissue = Tissue::thin_leaf;
    herb.measures = {{"cup", "chopped", exact(60), ""},
                     {"cup", "", exact(25), ""},
                     {"bunch", "", {60, 80, 120}, ""},
                     {"piece", "medium", exact(10), ""}};
    return herb;
}

Result<Weighed> weighed(std::string_view text, const Ingredient& ingredient, const std::vector<std::string>& words = {}) {
    Cursor cursor(text);
    return weigh(*amount_at(cursor), ingredient, words);
}

TEST_CASE("mass needs no knowledge and is exact") {
    CHECK(weighed("300 g", herb())->grams == exact(300));
    CHECK(weighed("20-30 g", herb())->grams == Band{20, 25, 30});
    CHECK_FALSE(weighed("300 g", herb())->count);
}

TEST_CASE("measures of the ingredient, by what the line says") {
    CHECK(weighed("1 cup", herb())->grams.mid == 25);
    CHECK(weighed("1 cup", herb(), {"chopped"})->grams.mid == 60);
    CHECK(weighed("1 cup", herb())->grams.low == Approx(22.5));
    CHECK(weighed("2 bunches", herb())->grams == Band{120, 160, 240});
    CHECK_FALSE(weighed("2 bunches", herb())->count);
    CHECK(weighed("3", herb())->grams.mid == 30);
    CHECK(weighed("3", herb())->count == 3.0);
    CHECK(weighed("3", herb(), {"large"})->grams.mid > 35);  // said before the name or in the amount, a large one is large
    CHECK(weighed("3 large pieces", herb())->grams.mid > 35);
}

TEST_CASE("another volume goes by the density of a known one") {
    CHECK(weighed("8 tbsp", herb())->grams.mid == Approx(12.5));
    CHECK(weighed("1 metric cup", herb())->grams.mid == Approx(25 * 250 / 236.5882365));
    CHECK(weighed("a smidgen", herb())->grams.mid == Approx(25.0 / 1536));
    CHECK(weighed("a pinch", herb())->grams.mid == Approx(0.4));  // fingers take more of leaf than a sixteenth of a spoon
}

TEST_CASE("liquids without a measure are like water, oils lighter") {
    Ingredient stock = herb();
    stock.measures.clear();
    stock.tissue = Tissue::liquid;
    CHECK(weighed("100 ml", stock)->grams.mid == 100);
    stock.composition.water = exact(33);
    stock.composition.carbohydrate = exact(67);
    CHECK(weighed("1 cup", stock)->grams.mid == Approx(315).epsilon(0.02));  // maple syrup: 315 g a cup, USDA SR28 19353, from memory
    stock.composition = {};
    stock.composition.fat = exact(100);
    CHECK(weighed("100 ml", stock)->grams.mid == Approx(92));
}

TEST_CASE("a measure that is not known is an error naming those that are") {
    const auto missing = weighed("2 cloves", herb());
    REQUIRE_FALSE(missing);
    CHECK(missing.error().message.find("cup, bunch and piece") != std::string::npos);
    Ingredient meat = herb();
    meat.tissue = Tissue::meat;
    meat.measures.clear();
    CHECK_FALSE(weighed("1 cup", meat));
    CHECK_FALSE(weighed("2", meat));
    CHECK_FALSE(weighed("1,250 lb", meat));
    CHECK(weighed("1,250 g", meat)->grams.mid == 1250);
}

TEST_CASE("plain salt by the spoon may be coarse") {
    Ingredient salt = herb();
    salt.names = {"table salt", "salt"};
    salt.measures = {{"tbsp", "", exact(18), ""}};
    CHECK(weighed("1 tbsp", salt)->grams.low == Approx(14.1));
}

TEST_CASE("weights nobody means") {
    CHECK(absurd(exact(300)).empty());
    CHECK_FALSE(absurd(exact(0)).empty());
    CHECK_FALSE(absurd(exact(-1)).empty());
    CHECK_FALSE(absurd(exact(0.0005)).empty());
    CHECK_FALSE(absurd(exact(1.1e6)).empty());
}

}  // namespace amount_test
