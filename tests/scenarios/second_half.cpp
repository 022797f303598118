// The second half of a stand-in is a dose, and a wet one brings its own water. Formulas are invented.
#include "support/catch.hpp"
#include "support/scenario.hpp"

using namespace standin;
using namespace scenario;

namespace second_half_test {

const std::string mass =
    "Plain (invented)\n2000 g pork shoulder\n300 g pork backfat\n200 g spinach, blanched, squeezed\n40 g white wine vinegar\n38 g salt\n";

TEST_CASE("second half: a strong herb beside another is a dose") {
    const auto huacatay = first_for(mass + "70 g huacatay\n", "mint 1 bunch\nbasil 1 bunch\ntarragon\nno huacatay\n");
    CHECK(grams_in(huacatay, "basil") > 20);
    CHECK(grams_in(huacatay, "mint") < 30);
    CHECK(grams_in(huacatay, "tarragon") < 8);
    const auto shiso = first_for(mass + "60 g shiso\n", "mint 1 bunch\nbasil 2 bunches\nno shiso\n");
    CHECK(grams_in(shiso, "basil") > 2 * grams_in(shiso, "mint"));
    CHECK(grams_in(shiso, "mint") > 5);
    for (const std::string strong : {"tarragon", "rosemary", "sage", "epazote"})
        for (const std::string mild : {"huacatay", "basil", "cilantro"}) {
            CAPTURE(strong, mild);
            const auto answer = answer_to(mass + "70 g " + mild + "\n", "fresh " + strong + "\nparsley 1 bunch\nno " + mild + "\n");
            REQUIRE_FALSE(answer.variants.empty());
            const auto& v = answer.variants.front();
            const double most = strong == "tarragon" ? 12 : strong == "rosemary" ? 4 : strong == "sage" ? 20 : 5;
            const double grams = grams_in(v, strong == "sage" ? "fresh-sage" : strong);
            CHECK(1000 * grams <= 0.45 * most * v.prediction.batch_g);
        }
}

TEST_CASE("second half: a sweet pepper for the flesh and a hot pod for the heat") {
    struct Case {
        const char *line, *id, *there, *flesh, *hot;
    };
    for (const auto& [line, id, there, flesh, hot] :
         {Case{"120 g ají amarillo, seeded", "ají amarillo", "yellow bell peppers 2\nhabanero 4\n", "bell-yellow", "habanero"},
          Case{"100 g ají amarillo", "ají amarillo", "red bell peppers 2\nhabanero 4\n", "bell-red", "habanero"},
          Case{"90 g fresno", "fresno", "red bell peppers 2\nhabanero 4\n", "bell-red", "habanero"},
          Case{"120 g hungarian wax pepper", "hungarian wax pepper", "yellow bell peppers 2\nhabanero 3\n", "bell-yellow", "habanero"},
          Case{"120 g jalapeño", "jalapeño", "green bell peppers 2\nhabanero 3\n", "bell-green", "habanero"}}) {
        CAPTURE(line, there);
        const auto v = first_for(mass + line + "\n", std::string(there) + "no " + id + "\n");
        CHECK(grams_in(v, flesh) > 60);
        CHECK(grams_in(v, hot) > 0.5);
        CHECK(grams_in(v, hot) < 0.35 * grams_in(v, flesh));
    }
}

TEST_CASE("second half: garlic beside a leaf for wild garlic by its dose") {
    for (const std::string leaf : {"spinach 500 g", "chard 500 g", "parsley 4 bunches"}) {
        CAPTURE(leaf);
        const auto v = first_for("Plain (invented)\n2000 g pork shoulder\n300 g pork backfat\n180 g wild garlic\n38 g salt\n",
                                 leaf + "\ngarlic\nno wild garlic\n");
        CHECK(grams_in(v, "garlic") > 3);
        CHECK(grams_in(v, "garlic") < 20);
        CHECK(v.formula.lines.size() >= 5);
    }
}

TEST_CASE("second half: boiled rice for crumbs takes the stock down") {
    for (const std::string liquid : {"chicken stock", "water", "whole milk"}) {
        CAPTURE(liquid);
        const auto v = first_for(
            "Plain (invented)\n2000 g pork shoulder\n300 g pork backfat\n120 g dry breadcrumbs\n150 g " + liquid + "\n38 g salt\n",
            "cooked rice\nno breadcrumbs\n");
        REQUIRE(grams_in(v, "rice-cooked") > 100);
        const std::string id = liquid == "water" ? "water" : liquid == "whole milk" ? "whole-milk" : "chicken-stock";
        CHECK(grams_in(v, id) < 110);
        CHECK(grams_in(v, id) > 40);
    }
}

}  // namespace second_half_test
