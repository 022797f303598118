// Colour of masses as makers make them: chile, salmon, much leaf, chopped herbs; and what pepper does in a lean one.
#include <algorithm>
#include <cmath>

#include "core/contains.hpp"
#include "evaluate/checked_formula.hpp"
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

Prediction predicted(const Formula& f) { return engine().predict(f).value(); }

TEST_CASE("colour: chopped leaf colours a mass less than the same leaf as a paste; of a little that nobody says so of it is chopped") {
    const auto with = [](Line herb) {
        return predicted(formula({line("cod", 1500), std::move(herb), line("table-salt", 20)})).cooked.lab.a;
    };
    const double none = predicted(formula({line("cod", 1500), line("table-salt", 20)})).cooked.lab.a;
    const double paste = with(line("parsley", 60, {"pureed"})), minced = with(line("parsley", 60, {"minced"})),
                 chopped = with(line("parsley", 60, {"chopped"})), unsaid = with(line("parsley", 60));
    CHECK(minced > paste + 1);
    CHECK(chopped > minced + 0.5);
    CHECK(chopped < none);
    CHECK(unsaid == Approx(chopped).margin(0.5));
    const double much = with(line("parsley", 300)), much_blended = with(line("parsley", 300, {"pureed"}));
    CHECK(much == Approx(much_blended).margin(1));
}

TEST_CASE("colour: a herb beside a mass leaves it its colour, with flecks") {
    struct Case {
        const char* meat;
        const char* herb;
        double grams;
        std::vector<std::string> raw, cooked;
    };
    for (const auto& [meat, herb, grams, raw, cooked] :
         std::vector<Case>{{"salmon", "dill", 60, {"orange-pink"}, {"orange-pink"}},
                           {"wild-salmon", "chervil", 50, {"orange-pink", "red"}, {"orange-pink", "red-brown"}},
                           {"chicken-breast", "parsley", 80, {"pale pink"}, {"white", "cream"}},
                           {"pork-shoulder", "parsley", 70, {"pale pink", "pink"}, {"tan", "greyish"}},
                           {"rabbit", "tarragon", 40, {"pale pink"}, {"cream", "tan"}},
                           {"cod", "dill", 70, {"greyish", "white"}, {"white", "cream"}},
                           {"beef-chuck", "cilantro", 60, {"red"}, {"grey-brown", "brown"}}}) {
        const auto p = predicted(formula({line(meat, 1500), line(herb, grams), line("table-salt", 24)}));
        CAPTURE(meat, herb, p.rested.word, p.cooked.word);
        CHECK(contains(raw, p.rested.word));
        CHECK(contains(cooked, p.cooked.word));
        CHECK(p.rested.flecks == "green");
        CHECK_FALSE(p.cooked.flecks.empty());
    }
    CHECK(predicted(formula({line("cod", 1500), line("dill", 70, {"pureed"}), line("table-salt", 24)})).rested.flecks.empty());
}

TEST_CASE("colour: more meat in a variant does not cut its herbs otherwise") {
    auto base = formula({line("pork-shoulder", 2000), line("cilantro", 200), line("table-salt", 36)});
    const auto p = predicted(base);
    auto variant = CheckedFormula::of(base, knowledge()).value().formula();
    variant.lines.front().grams = {2600, 2600, 2600};
    REQUIRE(variant.process.leaf_paste);
    const auto again = CheckedFormula::of(variant, knowledge());
    CHECK(again->formula().process.leaf_paste == variant.process.leaf_paste);
}

TEST_CASE("colour: white fish with much leaf is green raw, and no greener a word once cooked") {
    for (const char* fish : {"cod", "whiting", "haddock"}) {
        const auto p = predicted(formula({line(fish, 1500), line("spinach", 300), line("lime-juice", 60), line("table-salt", 20)}));
        INFO(fish);
        CHECK(contains(std::vector<std::string>{"green", "olive"}, p.rested.word));
        CHECK(p.cooked.lab.L > p.rested.lab.L);
    }
}

TEST_CASE("colour: red chile is brick red raw and red-brown cooked, with acid as without") {
    for (const char* chile : {"guajillo", "paprika", "ancho"})
        for (const double vinegar : {0.0, 60.0}) {
            auto f = formula({line("pork-shoulder", 2000), line(chile, 45), line("table-salt", 34)});
            if (vinegar > 0) f.lines.push_back(line("cider-vinegar", vinegar));
            const auto p = predicted(f);
            CAPTURE(chile, vinegar);
            CHECK(p.rested.word == "brick red");
            CHECK(p.cooked.word == "red-brown");
        }
    const auto yellow = predicted(formula({line("chicken-breast", 1500), line("turmeric", 15), line("table-salt", 26)}));
    CHECK(yellow.rested.word.find("yellow") == 0);
    CHECK(yellow.cooked.word == "yellow");
}

TEST_CASE("colour: a mass that acid has set is greyish and opaque before it is cooked") {
    for (const char* meat : {"pork-shoulder", "chicken-thigh", "beef-chuck"}) {
        auto sour = formula({line(meat, 2000), line("table-salt", 33), line("white-wine-vinegar", 320)});
        sour.process.rest_h = 12;
        const auto p = predicted(sour);
        CAPTURE(meat, p.nominal[Property::ph]);
        CHECK(p.rested.word.find("pink") == std::string::npos);
        CHECK(p.rested.lab.a < 0.75 * p.raw.lab.a);  // a quarter of its red at least
        CHECK(p.rested.lab.L > p.raw.lab.L);
    }
}

TEST_CASE("colour: turmeric beside paprika is orange to yellow-brown, and paprika alone stays red") {
    for (const char* meat : {"chicken-thigh", "chicken-breast", "pork-shoulder"})
        for (const auto& [turmeric, paprika] :
             {std::pair(20.0, 40.0), std::pair(10.0, 20.0), std::pair(8.0, 20.0), std::pair(20.0, 10.0)}) {
            const auto p =
                predicted(formula({line(meat, 2000), line("turmeric", turmeric), line("paprika", paprika), line("table-salt", 34)}));
            CAPTURE(meat, turmeric, paprika);
            for (const auto* colour : {&p.rested, &p.cooked}) CHECK((colour->word == "orange" || colour->word.find("yellow") == 0));
        }
}

TEST_CASE("colour: a night in lime turns pork and fowl opaque and pale, not pink") {
    for (const char* meat : {"pork-shoulder", "chicken-thigh", "turkey-breast"})
        for (const double lime : {200.0, 300.0}) {
            auto sour = formula({line(meat, 2000), line("table-salt", 34), line("lime-juice", lime)});
            sour.process.rest_h = 12;
            sour.process.order = Order::acid_first;
            const auto p = predicted(sour);
            CAPTURE(meat, lime, p.nominal[Property::ph]);
            if (p.nominal[Property::ph] < 4.9) CHECK(p.rested.word.find("pink") == std::string::npos);
        }
    auto mild = formula({line("pork-shoulder", 2000), line("table-salt", 34), line("lime-juice", 30)});
    mild.process.rest_h = 12;
    CHECK(predicted(mild).rested.word.find("pink") != std::string::npos);
}

TEST_CASE("colour: soy sauce browns raw meat") {
    const auto raw = [](double soy) {
        return predicted(formula({line("pork-shoulder", 2000), line("soy-sauce", soy), line("table-salt", 20)})).rested.word;
    };
    CHECK(raw(60) == "brownish pink");
    CHECK(raw(2).find("brown") == std::string::npos);
}

TEST_CASE("colour: what colours a mass so that it is another colour has people's word, and bare meat its makers'") {
    for (const char* dark : {"beef-chuck", "venison", "duck", "lamb-shoulder"}) {
        const auto leafy = predicted(formula({line(dark, 1000), line("spinach", 150, {"blanched", "squeezed"}), line("table-salt", 17)}));
        CAPTURE(dark);
        CHECK(leafy.rested.word.find("brown") != std::string::npos);
    }
    CHECK(predicted(formula({line("pork-liver", 1000), line("table-salt", 17)})).raw.word == "brown");
    const auto berries = predicted(formula({line("pork-shoulder", 1000), line("blueberry", 200), line("table-salt", 17)}));
    CHECK(berries.raw.word.find("grey") == 0);
    CHECK(berries.cooked.word == "grey-violet");
    const auto blood = predicted(formula({line("pork-shoulder", 1000), line("pork-blood", 250), line("table-salt", 17)}));
    CHECK(blood.raw.word == "red");
    CHECK(blood.cooked.word.find("brown") != std::string::npos);
}

TEST_CASE("colour: what is presumed of raw leaf is told, and what is said of it is not") {
    const auto presumed = [](Line leaf) {
        std::string roles;
        for (const auto& note : predicted(formula({line("pork-shoulder", 1000), std::move(leaf), line("table-salt", 17)})).notes)
            if (note.kind == ReasonKind::leaf_cut) roles += note.role;
        return roles;
    };
    CHECK(presumed(line("parsley", 40)) == "chopped");
    CHECK(presumed(line("parsley", 160)) == "partly");
    CHECK(presumed(line("parsley", 400)) == "blended");
    CHECK(presumed(line("spinach", 150)) == "ground");
    CHECK(presumed(line("parsley", 160, {"chopped"})).empty());
    CHECK(presumed(line("spinach", 150, {"blanched", "squeezed"})).empty());
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
