// Colour of masses as makers make them: chile, salmon, much leaf, chopped herbs; and what pepper does in a lean one.
#include <algorithm>
#include <cmath>

#include "models/colour.hpp"
#include "models/colour_words.hpp"
#include "support/catch.hpp"
#include "support/kitchen.hpp"
#include "support/mended.hpp"

using namespace standin;

namespace colour_of_foods_test {

using namespace mending;

TEST_CASE("colour: a cooked mass red with chile is brown or tan by the survey, never pink") {
    CHECK(colour_word({54.8, 16.2, 22.9}) != "pink");
    CHECK(colour_is_surveyed({54.8, 16.2, 22.9}, Doneness::cooked));
    CHECK(colour_word({54.8, 16.2, 12}) == "pink");           // as red, and not yellow
    CHECK(colour_word({67.7, 11.1, 19.3}) == "orange-pink");  // salmon
    CHECK(colour_word({44, 16, 22}, Doneness::cooked) == "red");
    for (const char* chile : {"guajillo", "ancho"})
        for (const char* meat : {"pork-shoulder", "chicken-breast"}) {
            const auto mass = formula({line(meat, 2000), line(chile, 60), line("table-salt", 38)});
            INFO(chile << " " << meat);
            CHECK(colour_word(nominal_state(mass, nominal()).cooked) != "pink");
        }
}

TEST_CASE("colour: no mass is greener than leaf, at any draw, and a usual one is not changed by that") {
    for (const double leaf : {200.0, 1000.0, 3000.0}) {
        const auto mass = formula({line("pork-shoulder", 2000), line("spinach", leaf, {"blanched", "squeezed"}), line("table-salt", 38)});
        CHECK(mended(mass, "flat").base.properties[Property::greenness].high < 27);
    }
}

TEST_CASE("colour: salmon keeps its hue and strength through the pan and gets lighter (Choubert, Blanc, Courvalin 1992)") {
    for (const char* fish : {"salmon", "wild-salmon"}) {
        const State state = nominal_state(formula({line(fish, 1500), line("table-salt", 22)}), nominal());
        INFO(fish);
        CHECK(std::abs(hue_of(state.cooked) - hue_of(state.raw)) < 12);
        CHECK(std::abs(chroma_of(state.cooked) / chroma_of(state.raw) - 1) < 0.25);
        CHECK(state.cooked.L > state.raw.L + 5);
        CHECK(colour_word(state.cooked) == "orange-pink");
    }
}

TEST_CASE("colour: chopped leaf colours a mass less than the same leaf as a paste") {
    const auto with = [](Line herb) {
        return nominal_state(formula({line("cod", 1500), std::move(herb), line("table-salt", 20)}), nominal()).cooked.a;
    };
    const double none = nominal_state(formula({line("cod", 1500), line("table-salt", 20)}), nominal()).cooked.a;
    const double paste = with(line("parsley", 60, {"pureed"})), chopped = with(line("parsley", 60, {"chopped"})),
                 unsaid = with(line("parsley", 60));
    CHECK(chopped > paste + 1);
    CHECK(chopped < none);
    CHECK(unsaid < chopped - 1);
}

TEST_CASE("heat: the usual black pepper makes no lean patty mild with heat") {
    for (const char* meat : {"turkey-breast", "pork-shoulder", "cod"}) {
        const auto mass = formula({line(meat, 2000), line("black-pepper", 5), line("table-salt", 34)});
        INFO(meat);
        CHECK(nominal_state(mass, nominal()).properties[Property::burn_mg_kg] < 1);
    }
}

TEST_CASE("colour: what nobody sees beside the other has one name raw and rested") {
    const auto mass = formula(
        {line("pork-shoulder", 2000), line("pork-backfat", 200), line("spinach", 700, {"blanched", "squeezed"}), line("table-salt", 38)});
    const auto base = mended(mass, "flat").base;
    if (ciede2000(base.raw.lab, base.rested.lab) < 1) CHECK(base.raw.word == base.rested.word);
}

TEST_CASE("caution: so much leaf that meat does not bind it is told, and not less") {
    const auto minds = [](double leaf) {
        const auto base =
            mended(formula({line("pork-shoulder", 2000), line("spinach", leaf, {"blanched", "squeezed"}), line("table-salt", 38)}), "flat")
                .base;
        return std::any_of(base.cautions.begin(), base.cautions.end(), [](const CautionText& c) { return c.id == "much-leaf"; });
    };
    CHECK_FALSE(minds(500));
    CHECK(minds(3000));
}

}  // namespace colour_of_foods_test
