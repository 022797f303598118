// What stands in by no swap and is on hand is better than nothing: another chile, another sour thing, another cheese. Formulas are
// invented.
#include <algorithm>

#include "support/catch.hpp"
#include "support/scenario.hpp"

using namespace standin;
using namespace scenario;

namespace rough_match_test {

const std::string mass = "1500 g pork shoulder\n300 g pork backfat\n30 g salt\n15 g garlic\n";

// The weight of `with` in the first answer where `line` is missing and only `there` is on hand.
double taken(const std::string& line, const std::string& there, const std::string& with) {
    const auto space = line.rfind(" g ");
    return grams_in(first_for("Plain (invented)\n" + mass + line + "\n", there + "\nno " + line.substr(space + 3) + "\n"), with);
}

TEST_CASE("rough match: a chile stands in for a chile by its heat") {
    CHECK(taken("30 g serrano", "aji amarillo paste 200 g", "aji-amarillo-paste") > 5);
    CHECK(taken("10 g calabrian chile", "pickled pepperoncini 200 g", "pepperoncini-pickled") > 10);
    CHECK(taken("30 g serrano", "isot pepper 50 g", "urfa-biber") > 0.5);
}

TEST_CASE("rough match: what is sour stands in for what is sour, and a seasoning does not") {
    CHECK(taken("60 g lemon juice", "black vinegar 200 ml", "black-vinegar") == Approx(50).margin(25));
    CHECK(taken("40 g white wine vinegar", "preserved lemons 200 g", "preserved-lemon") > 20);
    CHECK(taken("50 g cider vinegar", "dijon mustard 200 g", "dijon-mustard") == 0);
    CHECK(taken("50 g cider vinegar", "capers 200 g", "caper") == 0);
}

TEST_CASE("rough match: fat with body comes before oil, and what is wet is no fruit and no flour") {
    const std::string lean = "Lean (invented)\n1600 g turkey thigh\n100 g bacon\n28 g salt\n";
    AdaptRequest request;
    request.without = {"pork"};
    CHECK(grams_in(first_for(lean, "duck fat 300 g\nolive oil 1 l\n", request), "duck-fat") > 30);
    CHECK(taken("120 g green apple, grated", "plain yogurt 500 g", "yoghurt") == 0);
    CHECK(taken("60 g dry breadcrumbs", "plain yogurt 500 g", "yoghurt") == 0);
    CHECK(taken("60 g dry breadcrumbs", "chestnut 500 g\nrice flour 200 g", "rice-flour") > 10);
}

TEST_CASE("rough match: a leaf stands in for a leaf, and a fresh herb for a fresh herb") {
    CHECK(taken("150 g chard", "perilla leaves 200 g", "shiso") + taken("150 g chard", "perilla leaves 200 g", "perilla-leaf") > 50);
    CHECK(taken("60 g mint", "dill 100 g", "dill") > 15);
    CHECK(taken("6 g dried oregano", "dill 100 g", "dill") == 0);
}

TEST_CASE("rough match: cheese stands in for cheese at about its weight") {
    CHECK(taken("150 g provolone", "asiago 300 g", "asiago") == Approx(140).margin(40));
    CHECK(taken("120 g feta", "halloumi 300 g", "halloumi") == Approx(110).margin(45));
}

TEST_CASE("rough match: a herb is no filling, and a pepper is no herb") {
    CHECK(taken("120 g cilantro", "green bell pepper 500 g", "bell-green") == 0);
}

TEST_CASE("rough match: a swap that is known comes before it") {
    const auto first =
        first_for("Plain (invented)\n" + mass + "60 g lemon juice\n", "lime juice 200 ml\nblack vinegar 200 ml\nno lemon juice\n");
    CHECK(grams_in(first, "lime-juice") > 40);
    CHECK(grams_in(first, "black-vinegar") == 0);
}

TEST_CASE("rough match: without a list nothing is matched roughly") {
    const auto read = expect(engine().read_formula("Plain (invented)\n" + mass + "60 g lemon juice\n", "formula"));
    SwapsRequest all;
    all.top = 200;
    const auto answer = expect(engine().swaps(read, "lemon juice", all));
    CHECK(std::none_of(answer.stand_ins.begin(), answer.stand_ins.end(), [](const StandIn& s) { return s.ingredient == "black-vinegar"; }));
}

TEST_CASE("rough match: a little heat comes back beside a sweet pepper where a chile is on hand") {
    const auto first = first_for("Plain (invented)\n" + mass + "280 g poblano, roasted and peeled\n",
                                 "green bell pepper 500 g\nserrano 200 g\nno poblano\n");
    CHECK(grams_in(first, "bell-green") > 150);
    CHECK(grams_in(first, "serrano") > 3);
}

TEST_CASE("a list: of fresh produce that it does not name there is what the formula takes, and no more") {
    const auto first = first_for("Plain (invented)\n" + mass + "200 g kale\n30 g parsley\n", "cavolo nero 400 g\nno kale\n");
    CHECK(grams_in(first, "parsley") <= 30);
    CHECK(grams_in(first, "lacinato-kale") > 120);
}

TEST_CASE("a list: the tap makes up for milk, wine and stock, and for nothing sour") {
    CHECK(taken("80 g whole milk", "chives 1 bunch", "water") == Approx(72).margin(15));
    CHECK(taken("80 g chicken stock", "chives 1 bunch", "water") == Approx(80).margin(12));
    CHECK(taken("60 g cider vinegar", "chives 1 bunch", "water") == 0);
}

TEST_CASE("a list: who eats no onions gets another vegetable for the leek") {
    AdaptRequest request;
    request.without = {"alliums"};
    const auto first = first_for("Plain (invented)\n1500 g pork shoulder\n300 g pork belly\n30 g salt\n200 g leek, cooked\n",
                                 "fennel bulb 600 g\n", request);
    CHECK(grams_in(first, "fennel-bulb") == Approx(200).margin(60));
}

TEST_CASE("a list: what of it is left out for the sake of a word is told") {
    AdaptRequest request;
    request.without = {"gluten"};
    const auto answer = answer_to("Plain (invented)\n" + mass + "60 g lemon juice\n",
                                  "malt vinegar 200 ml\nsumac 50 g\ncider vinegar 100 ml\nno lemon juice\n", request);
    REQUIRE(answer.excluded.size() == 1);
    const auto foods_of = [&](ReasonKind kind) {
        std::vector<std::string> foods;
        for (const auto& note : answer.excluded.front().notes)
            if (note.kind == kind) foods.insert(foods.end(), note.foods.begin(), note.foods.end());
        return foods;
    };
    CHECK(foods_of(ReasonKind::off_the_list) == std::vector<std::string>{"malt vinegar"});
    CHECK(foods_of(ReasonKind::perhaps_off_the_list) == std::vector<std::string>{"sumac"});
}

TEST_CASE("wants: game and rabbit get the fat of another animal, as every maker does, and lean meat does not") {
    for (const std::string lean : {"venison", "rabbit", "wild boar"}) {
        CAPTURE(lean);
        AdaptRequest request;
        request.wants = {"richer"};
        const auto first = first_for("Lean (invented)\n2000 g " + lean + "\n34 g salt\n50 g red wine\n", "", request);
        CHECK(grams_in(first, "pork-backfat") > 100);
        CHECK(grams_in(first, "bison") == 0);
        request.without = {"pork"};
        const auto halal = first_for("Lean (invented)\n2000 g " + lean + "\n34 g salt\n50 g water\n", "", request);
        CHECK(grams_in(halal, "pork-backfat") == 0);
    }
}

TEST_CASE("wants: what binds is weighed in by so much that it is felt, or not at all") {
    for (const std::string cold : {"2", "8", "13"}) {
        CAPTURE(cold);
        AdaptRequest request;
        request.wants = {"firmer"};
        const std::string warm =
            "Warm (invented)\n2000 g chicken thigh\n300 g chicken skin\n34 g salt\n60 g parsley\n" + ("mixed at: " + cold) + " C\n";
        for (const auto& variant : answer_to(warm, "", request).variants)
            for (const auto& line : variant.formula.lines)
                if (line.ingredient.find("starch") != std::string::npos) CHECK(line.grams.mid >= 0.0075 * 2400);
    }
}

TEST_CASE("wants: salt comes to what most makers take") {
    AdaptRequest request;
    request.wants = {"saltier"};
    CHECK(grams_in(first_for("Flat (invented)\n2000 g pork shoulder\n14 g salt\n4 g sage\n", "", request), "table-salt") ==
          Approx(28.5).margin(3));
    request.wants = {"less-salty"};
    CHECK(grams_in(first_for("Sharp (invented)\n2000 g pork shoulder\n56 g salt\n4 g sage\n", "", request), "table-salt") ==
          Approx(36).margin(3));
}

}  // namespace rough_match_test
