// What a cook does with a list without thinking about it. Formulas are invented.
#include <algorithm>

#include "support/catch.hpp"
#include "support/scenario.hpp"

using namespace standin;
using namespace scenario;

namespace as_cooks_do_test {

const std::string mass = "Plain (invented)\n2000 g pork shoulder\n300 g pork backfat\n38 g salt\n12 g garlic\n";

bool is_prepared(const Variant& v, const std::string& food, const std::string& step) {
    const Line* line = line_of(v.formula, food);
    return line && std::any_of(line->prepared.begin(), line->prepared.end(), [&](const Prepared& p) { return p.preparation == step; });
}

TEST_CASE("as cooks do: two herbs that are missing do not both become parsley while there is another") {
    const auto first = first_for(mass + "60 g mint\n60 g cilantro\n", "dill 2 bunches\nparsley 2 bunches\nno mint\nno cilantro\n");
    CHECK(grams_in(first, "dill") > 20);
    CHECK(grams_in(first, "parsley") > 20);
    const auto only = first_for(mass + "60 g mint\n60 g cilantro\n", "parsley 3 bunches\nno mint\nno cilantro\n");
    CHECK(grams_in(only, "parsley") > 60);
}

TEST_CASE("as cooks do: a leaf for the pot comes in blanched, and stays raw where one like it was raw") {
    const auto for_herb = first_for(mass + "150 g parsley\n", "spinach 600 g\nno parsley\n");
    CHECK(is_prepared(for_herb, "spinach", "blanched"));
    CHECK(is_prepared(for_herb, "spinach", "squeezed"));
    const auto for_leaf = first_for(mass + "150 g orache\n", "spinach 600 g\nno orache\n");
    REQUIRE(line_of(for_leaf.formula, "spinach"));
    CHECK_FALSE(is_prepared(for_leaf, "spinach", "blanched"));
}

TEST_CASE("as cooks do: a bunch that nobody weighed is enough where it may be, and a little less leaf is no gap") {
    const std::string green = mass + "200 g cilantro\n150 g spinach, blanched, squeezed\n30 g serrano\n20 g mint\n";
    const std::string there = "spinach 400 g\nparsley plenty\njalapeño plenty\nno serrano\n";
    const auto bunches = answer_to(green, there + "cilantro 3 bunches\nmint 1 handful\n");
    REQUIRE_FALSE(bunches.variants.empty());
    CHECK(grams_in(bunches.variants.front(), "cilantro") == 200);
    CHECK(grams_in(bunches.variants.front(), "mint") == 20);
    CHECK(std::any_of(bunches.presumed.begin(), bunches.presumed.end(),
                      [](const Presumption& p) { return p.reason.kind == ReasonKind::taken_for_enough; }));
    const auto weighed = answer_to(green, there + "mint plenty\ncilantro 150 g\n");  // a weight is a weight
    REQUIRE_FALSE(weighed.variants.empty());
    CHECK(grams_in(weighed.variants.front(), "cilantro") <= 150);
    const auto hardly = first_for(green, "spinach 200 g\nmint plenty\ncilantro plenty\nparsley plenty\njalapeño plenty\nno serrano\n");
    CHECK(grams_in(hardly, "spinach") <= 150);
    CHECK(grams_in(hardly, "spinach") >= 135);
    CHECK(grams_in(hardly, "parsley") == 0);
}

TEST_CASE("as cooks do: for a grating cheese there is yeast or miso") {
    AdaptRequest request;
    request.without = {"dairy"};
    const auto first = first_for(mass + "80 g pecorino\n60 g basil\n", "nutritional yeast\nbasil plenty\n", request);
    CHECK(grams_in(first, "nutritional-yeast") == Approx(20).margin(8));
}

TEST_CASE("as cooks do: leaves chopped raw and grated squash are squeezed, however badly the mass was made") {
    AdaptRequest request;
    request.wants = {"firmer"};
    const auto first = first_for(
        "Soft (invented)\n1500 g pork shoulder\n250 g pork backfat\n300 g spinach, chopped raw\n150 g courgette, grated\n80 g white wine\n"
        "60 g white wine vinegar\n25 g salt\n",
        "potato starch\nspinach\n", request);
    CHECK(is_prepared(first, "spinach", "squeezed"));
    CHECK(is_prepared(first, "zucchini", "squeezed"));
    CHECK(grams_in(first, "potato-starch") < 0.035 * first.prediction.batch_g);
}

TEST_CASE("as cooks do: nobody makes it greener with red chile") {
    AdaptRequest request;
    request.wants = {"greener"};
    request.top = 6;
    const auto answer = answer_to(mass + "200 g spinach, blanched 10 min, squeezed\n20 g red chile powder\n60 g lemon juice\n",
                                  "everything else\n", request);
    REQUIRE_FALSE(answer.variants.empty());
    for (const auto& v : answer.variants)
        for (const auto& edit : v.edits)
            for (const char* red : {"guajillo", "ancho", "kashmiri-chile-powder", "mirasol", "paprika"}) CHECK(edit.with != red);
}

TEST_CASE("as cooks do: what garlic and what leaf is missing is told, with what brings it back") {
    const auto weak = first_for(
        "Hedge (invented)\n2000 g pork shoulder\n400 g pork backfat\n40 g salt\n80 g ramsons\n"
        "200 g nettles, blanched, squeezed\n",
        "garlic 5 heads\ngarlic chives 4 bunches\nnettles plenty\nno ramsons\n");
    REQUIRE(grams_in(weak, "garlic-chives") > 0);
    CHECK(std::any_of(weak.gives_back.begin(), weak.gives_back.end(), [](const Reason& r) {
        return r.kind == ReasonKind::comes_back_as_allium && r.figures.front().after > 1 && r.figures.front().after < 40;
    }));
    const auto pale = answer_to(mass + "200 g spinach, blanched, squeezed\n", "white cabbage 1 head\nnothing else\nno spinach\n");
    CHECK(std::any_of(pale.would_give.begin(), pale.would_give.end(), [](const Reason& r) { return r.about == "spinach"; }));
}

}  // namespace as_cooks_do_test
