// What has body is made up with what has body: sour fruit on hand before vinegar. Formulas are invented.
#include "support/catch.hpp"
#include "support/scenario.hpp"

using namespace standin;
using namespace scenario;

namespace sour_body_test {

const std::string mass =
    "Plain (invented)\n2000 g pork shoulder\n300 g pork backfat\n200 g spinach, blanched, squeezed\n60 g cilantro\n38 g salt\n12 g "
    "garlic\n";

TEST_CASE("sour body: sour fruit on the list stands in for sour fruit, and no vinegar does") {
    struct Case {
        const char *line, *id, *there, *fruit;
    };
    const Case cases[] = {
        {"120 g green mango, grated", "green mango", "amla 8", "amla"},
        {"120 g green mango, grated", "green mango", "rhubarb 400 g", "rhubarb"},
        {"120 g green mango, grated", "green mango", "tamarind paste 200 g", "tamarind-pulp"},
        {"35 g green mango, grated", "green mango", "granny smith apple 2", "granny-smith-apple"},
        {"200 g tomatillo, roasted", "tomatillo", "xoconostle 8", "xoconostle"},
        {"200 g tomatillo, roasted", "tomatillo", "gooseberries 300 g", "gooseberry"},
        {"150 g gooseberry", "gooseberry", "rhubarb 400 g", "rhubarb"},
        {"150 g xoconostle", "xoconostle", "tomatillos 12", "tomatillo"},
    };
    for (const auto& [line, id, there, fruit] : cases) {
        CAPTURE(line, there);
        const auto v = first_for(mass + line + "\n20 g white wine vinegar\n",
                                 std::string(there) + "\nmalt vinegar\nwhite wine vinegar\nno " + id + "\n");
        CHECK(grams_in(v, fruit) > (std::string(fruit) == "tamarind-pulp" ? 12 : 20));
        CHECK(grams_in(v, "malt-vinegar") == 0);
        CHECK(grams_in(v, "white-wine-vinegar") < 55);
    }
}

TEST_CASE("sour body: a fruit like it is never taken for the one that the list says is not there") {
    for (const std::string there : {"xoconostle 6", "amla 6"}) {
        CAPTURE(there);
        const auto v = first_for(mass + "200 g tomatillo\n20 g white wine vinegar\n", there + "\nno tomatillo\n");
        CHECK(grams_in(v, "tomatillo") == 0);
    }
}

TEST_CASE("sour body: what is strong is rounded to no more than a kilo takes of it") {
    for (const std::string grams : {"30", "35", "40", "45", "60"}) {
        CAPTURE(grams);
        const auto answer = answer_to("Plain (invented)\n1000 g pork shoulder\n200 g pork backfat\n" + grams + " g mint\n20 g salt\n",
                                      "curry leaves\nno mint\n");
        REQUIRE_FALSE(answer.variants.empty());
        for (const auto& v : answer.variants) CHECK(1000 * grams_in(v, "curry-leaf") <= 10 * v.prediction.batch_g);
        // Only in strength alike: half of it first.
        CHECK(1000 * grams_in(answer.variants.front(), "curry-leaf") <= 8 * answer.variants.front().prediction.batch_g);
    }
}

TEST_CASE("sour body: the sour and the heat that a stand-in lacks are made up for where there is plenty of it") {
    const std::string small = "Plain (invented)\n1000 g pork shoulder\n250 g pork backfat\n20 g salt\n15 g garlic\n";
    const auto mango = first_for(small + "80 g green mango, grated\n", "green papaya, half\nlimes 6\nno green mango\n");
    CHECK(grams_in(mango, "lime-juice") > 18);
    CHECK(grams_in(mango, "lime-juice") < 32);
    const auto pods = first_for(small + "12 g bird's eye chilli\n", "red jalapeños 6\nno bird's eye chilli\n");
    CHECK(grams_in(pods, "jalapeno") > 32);
    const auto purslane = first_for(small + "80 g purslane\n", "spinach 300 g\nlemons 3\nno purslane\n");
    CHECK(grams_in(purslane, "lemon-juice") < 8);
}

}  // namespace sour_body_test
