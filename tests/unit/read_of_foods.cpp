// Foods and shares of fat under the names that writers give them, and words that are no danger.
#include "standin/engine.hpp"
#include "support/catch.hpp"
#include "support/read_line.hpp"

using namespace standin;

namespace read_of_foods_test {

using namespace reading_a_line;

TEST_CASE("foods by other names") {
    const auto is = [](const std::string& text, const std::string& id) {
        INFO(text);
        CHECK(line_of(text).ingredient == id);
    };
    is("20 g black sesame", "sesame-seed");
    is("2 tsp nigella", "nigella-seed");
    is("1 tsp boukovo", "red-pepper-flakes");
    is("100 ml Apfelwein", "hard-cider");
    is("20 g salt-packed capers", "caper-salted");
    is("20 g capers", "caper");
    is("2 tsp New Mexico chile powder", "new-mexico-chile-dried");
    is("1 tsp red chile powder (pure, not the blend)", "new-mexico-chile-dried");
    is("1 tsp red chilli powder", "cayenne-powder");
    is("80 g salted almonds", "salted-almond");
    is("80 g peanuts, salted", "salted-peanut");
    is("400 g lamb breast", "lamb-breast");
    is("40 g roasted salted pumpkin seeds", "salted-pumpkin-seed");
    is("45 g pepitas, roasted and salted", "salted-pumpkin-seed");
    is("35 g sunflower seeds (salted)", "salted-sunflower-seed");
    is("50 g salted cashews", "salted-cashew");
    is("35 g salted roasted sunflower kernels", "salted-sunflower-seed");
    is("60 g dry-roasted peanuts, salted", "salted-peanut");
    is("60 g unsalted peanuts", "peanut");
    is("200 g blanched broad beans, skinned", "fava-green");
    is("80 g spelt flakes", "spelt-flake");
    is("75 g Dinkelflocken", "spelt-flake");
    is("150 g extra-sharp white cheddar", "cheddar");
    is("600 g échine de porc", "pork-neck");
    is("2 tsk stødt spidskommen", "cumin");
    is("40 g garlic paste", "garlic");
}

TEST_CASE("salted seeds bring their salt, and cooked grain is boiled and weighed so") {
    const auto salt = [](const std::string& line) {
        return engine().predict(with_line(line).value()).value().nominal[Property::salt_pct_of_meat];
    };
    CHECK(salt("100 g salted pumpkin seeds") > salt("100 g pumpkin seeds"));
    CHECK(salt("100 g salted cashews") > salt("100 g cashews"));
    const auto bulgur = line_of("150 g cooked bulgur");
    REQUIRE(bulgur.prepared.size() == 1);
    CHECK(bulgur.prepared.front().preparation == "boiled");
    CHECK(bulgur.weighed_prepared);
}

TEST_CASE("a spice that is bought ground is ground, weighed so") {
    for (const char* text : {"5 g ground cumin", "2 tsp ground coriander", "4 g cumin powder", "1 tsp freshly ground cumin"}) {
        INFO(text);
        const auto spice = line_of(text);
        REQUIRE(spice.prepared.size() == 1);
        CHECK(spice.prepared.front().preparation == "ground");
        CHECK(spice.weighed_prepared);
    }
    CHECK(line_of("5 g cumin seeds").prepared.empty());
}

TEST_CASE("the weight that a bracket or the label tells is the one that counts") {
    CHECK(line_of("3 tbsp kosher salt (large flakes, about 27 g)").grams.mid == Approx(27));
    CHECK(line_of("1 can (400 g) chickpeas, drained 240 g").grams.mid == Approx(240));
    const auto both = with_line("200 g leeks, sliced and sweated in 20 g butter");
    REQUIRE(both.has_value());
    CHECK(both->lines.back().ingredient == "butter");
    CHECK(both->lines.back().grams.mid == Approx(20));
}

TEST_CASE("what the method wilts, roasts, toasts or sweats is done to its line") {
    const auto made = [](const std::string& line, const std::string& method) {
        INFO(line << " / " << method);
        const auto read = with_line(line + "\nMethod\n" + method);
        if (!read) FAIL(read.error().message);
        std::string all;
        for (const auto& step : read->lines.back().prepared) all += (all.empty() ? "" : " ") + step.preparation;
        return all;
    };
    CHECK(made("300 g spinach", "1. Wilt the spinach in a dry pan and squeeze it out.") == "wilted squeezed");
    CHECK(made("300 g poblanos", "Roast and peel the poblanos.") == "roasted-peeled");
    CHECK(made("300 g poblanos", "Char the poblanos over a flame. Peel and seed them.") == "roasted-peeled");
    CHECK(made("60 g pumpkin seeds", "Toast the pumpkin seeds until they pop; cool.") == "toasted");
    CHECK(made("200 g leeks", "Sweat the leeks gently and cool.") == "cooked");
    CHECK(made("200 g leeks", "Do not sweat the leeks.").empty());
    CHECK(made("200 g tomatillos", "Roast the sausages with tomatillos to 72 C.").empty());
    CHECK(made("300 g spinach, blanched", "Wilt the spinach.") == "blanched");
}

TEST_CASE("what is soaked in so much water is soaked, whatever the water") {
    const auto porcini = line_of("30 g dried porcini, soaked in 200 ml hot water, drained");
    CHECK(porcini.ingredient == "porcini-dried");
    CHECK(porcini.grams.mid == Approx(30));
    CHECK_FALSE(with_line("200 g black beans, soaked in 500 ml water"));
}

TEST_CASE("shares of fat in another dress") {
    for (const char* text :
         {"1 kg lamb shoulder (70% lean / 30% fat)", "1 kg lamb shoulder (visual lean 70%)", "1 kg lamb shoulder 70VL"}) {
        INFO(text);
        REQUIRE(line_of(text).fat_pct);
        CHECK(line_of(text).fat_pct->mid == Approx(30));
    }
    CHECK(line_of("Cream, 35%   0.1 l").grams.mid == Approx(100).epsilon(0.03));
    CHECK_FALSE(with_line("100 ml cream (12% fat)"));
}

TEST_CASE("a drink and a word that says nothing are no slips for a danger") {
    const auto sambuca = with_line("20 ml sambuca");
    REQUIRE_FALSE(sambuca);
    CHECK(sambuca.error().message.find("elder") == std::string::npos);
    CHECK(line_of("1 tsp pure chile powder").ingredient == "new-mexico-chile-dried");
    for (const char* text : {"20 ml sambuco", "20 g pure #1", "1 tsp cure", "1 tsp cuer"}) {
        INFO(text);
        CHECK_FALSE(with_line(text));
    }
}

TEST_CASE("an amount that nobody can weigh is asked back, dotted or not") {
    for (const char* text : {"Zorble peelings . . . . . . . . . . . . q.s.", "Walnut pieces . . . . . . . . . . . . to taste."}) {
        INFO(text);
        CHECK_FALSE(with_line(text));
    }
}

}  // namespace read_of_foods_test
