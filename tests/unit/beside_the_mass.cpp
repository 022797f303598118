// What stands beside the mass is eaten with it: fat for the pan, crumbs for coating, seeds to garnish, casings.
#include <algorithm>

#include "formula/amounts/written_preparation.hpp"
#include "formula/line/food_beside.hpp"
#include "formula/reading.hpp"
#include "safety/casings.hpp"
#include "safety/exclusions.hpp"
#include "standin/engine.hpp"
#include "support/catch.hpp"
#include "support/kitchen.hpp"
#include "support/knowledge.hpp"

using namespace standin;

namespace beside_the_mass_test {

Formula read(const std::string& lines, const std::string& title = "Fry") {
    const auto formula = read_formula(title + "\n2000 g pork shoulder\n500 g pork backfat\n36 g salt\n" + lines + "\n", "", knowledge());
    if (!formula) FAIL(lines + ": " + formula.error().message);
    return *formula;
}

Formula of(const std::string& meat, const std::string& lines, const std::string& title = "Links") {
    const auto formula = read_formula(title + "\n" + meat + "\n36 g salt\n" + lines + "\n", "", knowledge());
    if (!formula) FAIL(lines + ": " + formula.error().message);
    return *formula;
}

const Engine& engine() {
    static const Engine one = opened(32);
    return one;
}

const AllergenText* allergen(const std::vector<AllergenText>& all, const std::string& id) {
    const auto at = std::find_if(all.begin(), all.end(), [&](const AllergenText& a) { return a.allergen == id; });
    return at == all.end() ? nullptr : &*at;
}

bool cautions_of(const Prediction& p, const std::string& id, const std::string& word = "") {
    return std::any_of(p.cautions.begin(), p.cautions.end(),
                       [&](const CautionText& c) { return c.id == id && c.text.find(word) != std::string::npos; });
}

TEST_CASE("beside: a food that a line keeps out of the mass weighs nothing in it, and its allergens count") {
    struct Case {
        const char *line, *food, *allergen;
    };
    for (const auto& [line, food, held] :
         {Case{"20 g butter, for frying", "butter", "milk"}, Case{"butter for the pan", "butter", "milk"},
          Case{"50 g breadcrumbs, for coating", "breadcrumb", "wheat"}, Case{"20 g wheat flour, for dusting", "wheat-flour", "wheat"},
          Case{"20 g sesame seeds, for garnish", "sesame-seed", "sesame"}, Case{"20 g sesame seeds to garnish", "sesame-seed", "sesame"},
          Case{"2 eggs, for dipping", "egg", "egg"}, Case{"10 g sesame oil, for frying", "sesame-oil", "sesame"},
          Case{"30 g walnuts, for topping", "walnut", "walnut"}}) {
        CAPTURE(line);
        const Formula made = read(line);
        REQUIRE(made.lines.size() == 3);
        REQUIRE(made.beside.size() == 1);
        CHECK(made.beside.front().ingredient == food);
        const auto p = engine().predict(made);
        REQUIRE(p);
        CHECK(p->batch_g == 2536);
        const AllergenText* told = allergen(p->allergens, held);
        REQUIRE(told != nullptr);
        CHECK(told->sure);
        CHECK(told->beside);
        CHECK(told->from.front().find("beside the mass") != std::string::npos);
        CHECK(p->label.find("beside the mass") != std::string::npos);
        CHECK(std::none_of(p->read_as.begin(), p->read_as.end(), [](const Reason& told) {
            const std::string note = in_full(told);
            return note.find("not in the allergen list") != std::string::npos || note.find("passed over") != std::string::npos;
        }));
    }
}

TEST_CASE("beside: what goes in as well is counted in") {
    CHECK(read("50 g butter, plus more for frying").beside.empty());
    CHECK(read("50 g breadcrumbs").beside.empty());
    CHECK(read("100 g bacon, for garnish").beside.empty());  // meat has a core temperature of its own
}

TEST_CASE("beside: --without takes it, and the variant is made without it") {
    AdaptRequest request;
    for (const auto& [word, line] : {std::pair{"milk", "20 g butter, for frying"}, std::pair{"gluten", "50 g breadcrumbs, for coating"},
                                     std::pair{"sesame", "20 g sesame seeds to garnish"}, std::pair{"pork", "30 g lard for frying"}}) {
        CAPTURE(word);
        const bool pork = std::string(word) == "pork";
        request.without = {word};
        const Formula made = pork ? of("2000 g beef chuck", line) : read(line);
        const auto answer = engine().adapt(made, request);
        REQUIRE(answer);
        REQUIRE(answer->excluded.size() == 1);
        CHECK(answer->excluded.front().casings == std::vector<std::string>{line});
        REQUIRE_FALSE(answer->variants.empty());
        for (const auto& variant : answer->variants) {
            CHECK(variant.formula.beside.empty());
            CHECK(std::any_of(variant.edits.begin(), variant.edits.end(), [](const Edit& e) {
                return e.kind == EditKind::process && e.with.find("beside the mass") != std::string::npos;
            }));
            if (!pork)
                CHECK(std::none_of(variant.prediction.allergens.begin(), variant.prediction.allergens.end(),
                                   [](const AllergenText& a) { return a.sure; }));
        }
    }
}

TEST_CASE("beside: a title's promise is held against it, and its cautions are said") {
    CHECK(cautions_of(*engine().predict(read("20 g butter, for frying", "Dairy-free Fry")), "title-promise", "butter"));
    CHECK(cautions_of(*engine().predict(read("50 g breadcrumbs, for coating", "Gluten-free bangers")), "title-promise", "breadcrumbs"));
    CHECK(cautions_of(*engine().predict(read("2 eggs, for dipping")), "raw-egg"));
    CHECK(cautions_of(*engine().predict(read("20 g wheat flour, for dusting")), "raw-flour"));
    CHECK_FALSE(cautions_of(*engine().predict(read("20 g parsley")), "raw-egg"));
}

TEST_CASE("beside: it lasts through every way of writing a formula") {
    const Formula made = read("20 g butter, for frying\n50 g breadcrumbs, for coating\nhog casings 32 mm");
    for (const auto& text :
         {formula_text(made, knowledge(), Amounts::grams), formula_json(made, knowledge()), formula_jsonld(made, knowledge())}) {
        CAPTURE(text);
        const auto again = read_formula(text, "", knowledge());
        REQUIRE(again);
        REQUIRE(again->beside.size() == 3);
        CHECK(again->beside[0].ingredient == "butter");
        CHECK(again->beside[1].ingredient == "breadcrumb");
        CHECK(again->process.diameter_mm == 32);
    }
}

TEST_CASE("casings: of an animal that the mass is not, in every sausage") {
    for (const auto* meat : {"2000 g beef chuck", "2000 g turkey thigh", "2000 g lamb shoulder", "2000 g venison", "2000 g cod"}) {
        CAPTURE(meat);
        CHECK(cautions_of(*engine().predict(of(meat, "hog casings 32 mm")), "casing-animal", "pork"));
        CHECK(cautions_of(*engine().predict(of(meat, "collagen casings 26 mm")), "casing-animal", "may be"));
        CHECK(cautions_of(*engine().predict(of(meat, "natural casings")), "casing-animal", "may be"));
        CHECK_FALSE(cautions_of(*engine().predict(of(meat, "sheep casings 22 mm")), "casing-animal"));
        CHECK_FALSE(cautions_of(*engine().predict(of(meat, "cellulose casings 26 mm")), "casing-animal"));
        CHECK(engine().predict(of(meat, "hog casings 32 mm"))->label.find("hog casing (pork)") != std::string::npos);
    }
    CHECK_FALSE(cautions_of(*engine().predict(read("hog casings 32 mm")), "casing-animal"));
    CHECK(cautions_of(*engine().predict(read("beef middles casings")), "casing-animal", "beef"));
}

TEST_CASE("casings: --without pork takes those of hog, of collagen and of no told beast") {
    AdaptRequest request;
    request.without = {"pork"};
    for (const auto* casing : {"hog casings 32 mm", "collagen casings 26 mm", "natural casings"}) {
        CAPTURE(casing);
        const auto answer = engine().adapt(of("2000 g beef chuck", casing), request);
        REQUIRE(answer);
        CHECK(answer->excluded.front().casings == std::vector<std::string>{casing});
        for (const auto& variant : answer->variants) CHECK(variant.prediction.label.find("casing") == std::string::npos);
    }
    CHECK(engine().adapt(of("2000 g beef chuck", "sheep casings 22 mm"), request)->excluded.front().casings.empty());
}

TEST_CASE("casings: what is left out takes the width along, and no sheet names a casing of it") {
    for (const auto& [meat, casing, word] :
         {std::tuple{"2000 g lamb shoulder", "hog casings 32 mm", "pork"}, std::tuple{"2000 g beef chuck", "sheep casings 22 mm", "lamb"},
          std::tuple{"2000 g chicken thigh", "natural casings 30 mm", "pork"}, std::tuple{"2000 g chicken thigh", "casing: 30 mm", "pork"},
          std::tuple{"2000 g pork shoulder", "diameter: 22 mm", "lamb"}, std::tuple{"2000 g chicken thigh", "diameter: 32 mm", "halal"}}) {
        CAPTURE(meat, casing, word);
        AdaptRequest request;
        request.without = {word};
        const auto answer = engine().adapt(of(meat, casing), request);
        REQUIRE(answer);
        CHECK(answer->excluded.front().casings.size() == 1);
        REQUIRE_FALSE(answer->variants.empty());
        for (const auto& variant : answer->variants) {
            CHECK_FALSE(variant.formula.process.diameter_mm);
            const auto sheet = engine().sheet(variant.formula, {});
            REQUIRE(sheet);
            CHECK(sheet->makes.shape == "patty");
            CHECK_FALSE(sheet->makes.casing_m);
        }
    }
    AdaptRequest request;
    request.without = {"pork"};
    CHECK(engine().adapt(of("2000 g lamb shoulder", "sheep casings 22 mm"), request)->variants.front().formula.process.diameter_mm == 22);
    // A width alone names no beast that the mass is not of.
    CHECK(engine().sheet(of("2000 g chicken thigh", "diameter: 32 mm"), {})->makes.casing.empty());
    CHECK(engine().sheet(of("2000 g pork shoulder", "diameter: 32 mm"), {})->makes.casing == "hog");
}

TEST_CASE("casings: a width on their line makes links of it, bought and named as written") {
    for (const auto& [line, mm] :
         {std::pair{"hog casings 32 mm", 32.0}, std::pair{"hog casings, 32/35 mm", 33.5}, std::pair{"2 m sheep casings 22mm", 22.0},
          std::pair{"collagen casings, 26-28 mm", 27.0}, std::pair{"1 1/4 inch hog casings", 31.75}}) {
        CAPTURE(line);
        const auto width = casing_width_mm(line);
        REQUIRE(width);
        CHECK(*width == mm);
    }
    CHECK_FALSE(casing_width_mm("2 m hog casings"));
    CHECK_FALSE(casing_width_mm("hog casings, 1 hank"));
    const auto sheet = engine().sheet(of("2000 g beef chuck", "sheep casings 32 mm"), {});
    REQUIRE(sheet);
    CHECK(sheet->makes.shape == "link");
    CHECK(sheet->makes.casing == "sheep");
    CHECK(sheet->makes.casing_m > 0);
    Formula own = of("2000 g beef chuck", "hog casings 32 mm\ndiameter: 28 mm");
    CHECK(own.process.diameter_mm == 28);
}

}  // namespace beside_the_mass_test
