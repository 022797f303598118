// What a text asks for that would hurt is answered, and what a list or a title says is not lost.
#include <algorithm>

#include "formula/formats/inventory.hpp"
#include "formula/formats/reading.hpp"
#include "safety/promises.hpp"
#include "standin/engine.hpp"
#include "standin/narrate.hpp"
#include "support/catch.hpp"
#include "support/knowledge.hpp"

using namespace standin;

namespace advised_against_test {

Formula with_method(const std::string& sentence) {
    return read_formula("Green\n1 kg pork shoulder\n200 g back fat\n18 g salt\n\nMethod\n" + sentence + "\n", "", knowledge()).value();
}

bool warned(const Formula& formula) {
    return std::any_of(formula.read_as.begin(), formula.read_as.end(), [](const Reason& told) {
        return told.kind == ReasonKind::cooked_too_cool || (told.kind == ReasonKind::hazard_told && told.role == "method");
    });
}

TEST_CASE("a step of a method that can hurt is answered on the page") {
    for (const std::string sentence :
         {"Taste the raw mix and adjust the seasoning.", "Serve pink in the middle.", "Hang the links in the shed for two days.",
          "Ferment for 3 days at 25 C.", "Cold smoke for 6 hours.", "Cool slowly in the pot.", "Rinse the chicken under the tap.",
          "Spread raw on bread.", "Keeps for three weeks in the fridge.", "Store in oil.", "Marinate at room temperature for 8 hours.",
          "Thaw on the counter.", "Grill until rare.", "Poach at 55 C for 20 minutes.", "Die rohe Masse probieren.",
          "Laisser reposer 12 heures à température ambiante."}) {
        INFO(sentence);
        CHECK(warned(with_method(sentence)));
    }
}

TEST_CASE("a step of good practice is not warned of") {
    for (const std::string sentence :
         {"Fry a spoonful of the raw mix and taste it.", "Chill the links overnight in the fridge.", "Cook until no longer pink.",
          "Toast the seeds until they smell nutty.", "Grill over a medium fire to a core of 72 C.", "Poach at 80 C for 20 minutes.",
          "Hang the links in the fridge overnight to dry.", "Blanch the spinach for one minute and squeeze it."}) {
        INFO(sentence);
        CHECK_FALSE(warned(with_method(sentence)));
    }
}

TEST_CASE("a sentence is judged by itself") {
    const Formula formula = with_method("Taste the raw mix. Hang the links in the shed for two days. Fry them.");
    CHECK(std::count_if(formula.read_as.begin(), formula.read_as.end(), [](const Reason& told) { return told.role == "method"; }) >= 2);
}

TEST_CASE("a rest in the warm is not taken over as the rest of the mass") {
    CHECK_FALSE(with_method("Leave the mass to rest for 12 hours at room temperature.").process.rest_h);
    CHECK(with_method("Leave the mass to rest for 12 hours in the fridge.").process.rest_h);
}

TEST_CASE("a title of what is dried, smoked or eaten raw is answered, a fresh one is not") {
    const auto told = [](const std::string& title) {
        const auto all = broken_promises(read_formula(title + "\n1 kg pork shoulder\n18 g salt\n", "", knowledge()).value(), knowledge());
        return std::any_of(all.begin(), all.end(), [](const CautionText& one) {
            return one.reason.kind == ReasonKind::title_raw || one.reason.kind == ReasonKind::title_not_fresh;
        });
    };
    for (const auto* title :
         {"Mettwurst", "Teewurst", "Salami of spring", "Dry-cured chorizo", "Landjäger", "Saucisson sec", "Cold-smoked kielbasa"}) {
        INFO(title);
        CHECK(told(title));
    }
    for (const auto* title : {"Green chorizo", "Garden links", "Smoked paprika sausage", "Bratwurst"}) {
        INFO(title);
        CHECK_FALSE(told(title));
    }
}

TEST_CASE("what a list says of the whole line behind a comma or in brackets is never set aside") {
    for (const std::string line : {"panko, slimy", "spinach, smells off", "wild garlic, I think", "panko (may contain zorbles)",
                                   "chicken thigh 1 kg (smells a bit sour)", "panko (зорблы)", "pork leg 1 kg, left in the car"}) {
        INFO(line);
        CHECK_FALSE(read_inventory("oats\n" + line + "\n", "", knowledge()));
    }
    const auto told = read_inventory("oats\npanko (μπορεί να περιέχει σουσάμι)\n", "", knowledge());
    REQUIRE(told);
    REQUIRE_FALSE(told->items.back().declared.empty());
    CHECK(told->items.back().declared.front().allergen == "sesame");
}

TEST_CASE("raw milk is told in what is written too") {
    const Formula raw = read_formula("Green\n1 kg pork shoulder\n18 g salt\n100 ml whole milk (unpasteurised)\n", "", knowledge()).value();
    static const auto engine = Engine::open({});
    REQUIRE(engine);
    for (const auto& text : {engine->formula_text(raw), engine->formula_json(raw)}) {
        INFO(text);
        const auto again = engine->read_formula(text, "t");
        REQUIRE(again);
        const auto& notes = again->lines.back().notes;
        CHECK(std::any_of(notes.begin(), notes.end(), [](const Reason& note) { return note.role == "raw-dairy"; }));
    }
}

TEST_CASE("a weight of something is no rating of the recipe") {
    CHECK_FALSE(read_formula("Green\n1 kg pork shoulder\n3 g star\n", "", knowledge()));
    CHECK(read_formula("Green\n1 kg pork shoulder\n4.8 stars from 37 votes\n", "", knowledge()));
}

}  // namespace advised_against_test
