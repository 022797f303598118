// How much a kilo usually has of a food, for who asks without a formula.
#include "substitute/usual.hpp"

#include "support/catch.hpp"
#include "support/knowledge.hpp"

using namespace standin;

namespace usual_test {

TEST_CASE("a usual weight of every food is one that a kilo takes, and goes by its strength") {
    for (const auto& food : knowledge().records().ingredients) {
        INFO(food.id);
        const double grams = usual_grams(food, knowledge());
        CHECK(grams > 0);
        CHECK(grams <= 1000);
        if (food.most_g_per_kg) CHECK(grams <= food.most_g_per_kg->band.mid);
    }
    const auto of = [](const char* id) { return usual_grams(*knowledge().ingredient(id), knowledge()); };
    CHECK(of("habanero") < of("serrano"));
    CHECK(of("serrano") < of("poblano"));
    CHECK(of("cayenne-powder") < of("paprika"));
    CHECK(of("table-salt") == 17);
    CHECK(of("soy-sauce") > of("table-salt"));
    CHECK(of("fresh-sage") < of("parsley"));
    CHECK(of("pork-shoulder") == 1000);
}

}  // namespace usual_test
