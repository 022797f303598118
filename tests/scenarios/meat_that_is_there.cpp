// What the list has of meat, in the formula's own cuts or in others, is used before a batch shrinks or fails. Formulas and lists are
// invented.
#include "support/catch.hpp"
#include "support/scenario.hpp"

using namespace standin;
using namespace scenario;

namespace meat_that_is_there_test {

TEST_CASE("meat there: a first line that is short, with more to add, crashes nothing") {
    const auto answer = answer_to(
        "Last day (invented)\n6 kg pork shoulder\n105 g salt\n900 g tomatillo, raw, chopped\n600 g chard, blanched and squeezed [weighed "
        "prepared]\n"
        "300 g cilantro\n300 g roasted jalape\u00f1o\n60 g garlic\n200 ml white vinegar\n",
        "pork shoulder 4 kg\npork trim fatty 1.5 kg\nsalt\ngreen tomatoes 300 g\nunripe grapes 300 g\nlimes 5\nchard 200 g\nkale 250 g\n"
        "parsley 120 g\ncilantro 100 g\njalape\u00f1o 150 g\npoblano 200 g\ngarlic\ncider vinegar 500 ml\nnothing else\n");
    REQUIRE_FALSE(answer.variants.empty());
    CHECK(grams_in(answer.variants.front(), "pork-shoulder") == Approx(4000).margin(60));
}

TEST_CASE("meat there: a cut that comes in beside another comes in without it where there is too little of that") {
    const Variant v = first_for("Market (invented)\n3.5 kg pork shoulder\n700 g pork belly\n72 g salt\n120 g parsley\n",
                                "pork shoulder 2.4 kg\npork loin 1 kg\npork belly 800 g\nsalt\nparsley 120 g\nnothing else\n");
    CHECK(grams_in(v, "pork-loin") > 800);
    CHECK(grams_in(v, "pork-shoulder") > 2300);
}

TEST_CASE("meat there: fish that two lines want is shared, and the next makes up the rest") {
    const Variant v = first_for("Cod and prawn (invented)\n900 g cod fillet\n300 g raw prawns, peeled\n20 g salt\n40 g dill\n",
                                "haddock 1 kg\nsalmon 500 g\nprawns 150 g\nsalt\ndill 60 g\nnothing else\n");
    CHECK(grams_in(v, "haddock") > 800);
    CHECK(grams_in(v, "haddock") + grams_in(v, "salmon") + grams_in(v, "shrimp") == Approx(1200).margin(60));
}

TEST_CASE("meat there: more of the other meat of the formula fills up what is short of one") {
    const Variant v =
        first_for("Veal and pork (invented)\n1 kg veal shoulder\n800 g pork shoulder\n400 g pork back fat\n38 g salt\n100 g parsley\n",
                  "veal shoulder 500 g\npork shoulder 1.5 kg\npork back fat 450 g\nsalt\nparsley 120 g\nnothing else\n");
    CHECK(grams_in(v, "veal-shoulder") == Approx(500).margin(20));
    CHECK(grams_in(v, "pork-shoulder") > 1150);
}

TEST_CASE("meat there: what is weighed when it is squeezed is replaced by what weighs as much then") {
    const std::string formula =
        "Nettle (invented)\n2.4 kg pork shoulder\n600 g pork back fat\n50 g salt\n300 g nettle, blanched and squeezed [weighed prepared]\n";
    CHECK(grams_in(first_for(formula, "no nettle\nspinach plenty\n"), "spinach") > 400);
    CHECK(grams_in(first_for(formula, "no nettle\nchard plenty\n"), "chard") > 400);
}

TEST_CASE("meat there: a wish does not change what the list says is there") {
    const std::string formula = "Fridge (invented)\n1 kg pork shoulder\n17 g salt\n100 g spinach, raw\n40 g pistachio\n";
    const std::string list = "pork shoulder\nsalt\nchard 500 g\npistachio\n";
    AdaptRequest milder;
    milder.wants = {"greener"};
    for (const auto& request : {AdaptRequest{}, milder}) {
        const auto answer = answer_to(formula, list, request);
        REQUIRE_FALSE(answer.variants.empty());
        CHECK(grams_in(answer.variants.front(), "spinach") == 0);
        CHECK(grams_in(answer.variants.front(), "chard") > 50);
    }
}

TEST_CASE("meat there: with nothing else on hand, what the list has for a line goes in for it") {
    const Variant v = first_for("Apple (invented)\n2 kg pork shoulder\n150 g green apple, grated\n36 g salt\n60 g parsley\n",
                                "pork shoulder 2 kg\nsalt\nparsley 100 g\ngreen tomatoes 400 g\nnothing else\n");
    CHECK(grams_in(v, "green-tomato") > 60);
    CHECK(grams_in(v, "green-apple") == 0);
}

}  // namespace meat_that_is_there_test
