// Light weights in level spoons.
#include "evaluate/spoons.hpp"

#include "support/catch.hpp"
#include "support/kitchen.hpp"

using namespace standin;

namespace spoons_test {

std::string spoons(const char* food, double grams) { return in_spoons(*knowledge().ingredient(food), grams); }

TEST_CASE("spoons: by the weight that the record gives a spoon") {
    // USDA SR28: a teaspoon of ground black pepper weighs 2.3 g, of salt 6 g.
    CHECK(spoons("black-pepper", 2.3) == "1 tsp ground");
    CHECK(spoons("black-pepper", 2.9) == "1 1/4 tsp ground");
    CHECK(spoons("black-pepper", 0.9) == "3/8 tsp ground");
    CHECK(spoons("black-pepper", 0.2) == "a pinch ground");
    CHECK(spoons("table-salt", 18) == "1 tbsp");
    CHECK(spoons("table-salt", 19.9) == "1 tbsp 1/2 tsp");
    CHECK(spoons("table-salt", 12) == "2 tsp");
}

TEST_CASE("spoons: what is weighed, and what has no spoon, has none") {
    CHECK(spoons("table-salt", 40).empty());
    CHECK(spoons("pork-shoulder", 10).empty());
    CHECK(spoons("black-pepper", 0).empty());
}

TEST_CASE("spoons: a light pod is told by its part, and what is weighed is not") {
    CHECK(spoons("habanero", 1.2).ends_with("pod"));
    CHECK(spoons("habanero", 1.2).find("1/") == 0);
    CHECK(spoons("habanero", 25).empty());
}

}  // namespace spoons_test
