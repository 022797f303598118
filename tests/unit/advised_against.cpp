// What a text asks for that would hurt is answered, and what a list or a title says is not lost.
#include <algorithm>

#include "formula/reading.hpp"
#include "formula/stock/inventory.hpp"
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
    for (const std::string sentence : {"Taste the raw mix and adjust the seasoning.",
                                       "Serve pink in the middle.",
                                       "Hang the links in the shed for two days.",
                                       "Ferment for 3 days at 25 C.",
                                       "Cold smoke for 6 hours.",
                                       "Cool slowly in the pot.",
                                       "Rinse the chicken under the tap.",
                                       "Spread raw on bread.",
                                       "Keeps for three weeks in the fridge.",
                                       "Store in oil.",
                                       "Marinate at room temperature for 8 hours.",
                                       "Thaw on the counter.",
                                       "Grill until rare.",
                                       "Poach at 55 C for 20 minutes.",
                                       "Die rohe Masse probieren.",
                                       "Laisser reposer 12 heures à température ambiante.",
                                       "Poach them and leave them in the pot until morning.",
                                       "Fridge them for a fortnight.",
                                       "They keep ten days in the cold larder.",
                                       "Re-freeze what you do not use.",
                                       "Anything thawed and left over goes back into the freezer.",
                                       "Put the rest back in the freezer.",
                                       "Brush the grilled links with the marinade the raw meat stood in.",
                                       "Brush the used marinade on the links as they come off the grill.",
                                       "Marinate two hours, then brush the used marinade on the links.",
                                       "Slow cooker on low, from frozen, 8 hours.",
                                       "Dip a finger in and correct the seasoning, then stuff.",
                                       "Taste for seasoning before you stuff them.",
                                       "Taste the mince and adjust.",
                                       "Take off at 62 C and rest.",
                                       "Bake until the thermometer says 63.",
                                       "Pull them off at 65 °C, they carry over.",
                                       "Mince it at 15 C."}) {
        INFO(sentence);
        CHECK(warned(with_method(sentence)));
    }
}

TEST_CASE("a step of good practice is not warned of") {
    for (const std::string sentence :
         {"Fry a spoonful of the raw mix and taste it.", "Chill the links overnight in the fridge.", "Cook until no longer pink.",
          "Toast the seeds until they smell nutty.", "Grill over a medium fire to a core of 72 C.", "Poach at 80 C for 20 minutes.",
          "Hang the links in the fridge overnight to dry.", "Blanch the spinach for one minute and squeeze it.",
          "Chill overnight. Fry to 72 C.", "Put the bowl back in the freezer for 20 minutes.", "Marinate overnight in the fridge.",
          "Freeze them for two weeks at most.", "Fry a patty, taste and adjust the seasoning.", "Soak the beans overnight in water.",
          "Keep them warm at 65 C.", "Grill for 12 minutes until the middle is done."}) {
        INFO(sentence);
        CHECK_FALSE(warned(with_method(sentence)));
    }
}

TEST_CASE("what a method cooks at is held against the foods of the batch, whatever core is written above") {
    static const auto engine = Engine::open({});
    const auto told = [](const std::string& meat, const std::string& end) {
        const auto formula = engine->read_formula("Green\n1 kg " + meat + "\n18 g salt\n" + end + "\n", "f");
        const auto p = engine->predict(*formula);
        return std::any_of(p->read_as.begin(), p->read_as.end(), [](const Reason& r) { return r.kind == ReasonKind::cooked_too_cool; });
    };
    CHECK(told("chicken thigh", "core: 75 C\n\nMethod\nTake off at 62 C and rest."));
    CHECK(told("pork shoulder", "core: 71.1 C\n\nMethod\nCook to an internal temperature of 140 F."));
    CHECK(told("pork shoulder", "core: 71.1 C\n\nMethod\nFry to 68 C."));
    CHECK(told("turkey thigh", "\nMethod\nPoach at 70 C for 15 minutes."));
    CHECK(told("turkey thigh", "core: 75 C\n\nMethod\nPoach at 72 C for 15 minutes."));
    CHECK_FALSE(told("pork shoulder", "core: 75 C\n\nMethod\nPoach at 72 C for 15 minutes."));
    CHECK_FALSE(told("pork shoulder", "core: 75 C\n\nMethod\nFry to 71 C."));
    CHECK_FALSE(told("chicken thigh", "\nMethod\nFry to 74 C."));
}

TEST_CASE("degrees are read in every tongue, and a heat that only holds is not taken for one that cooks") {
    static const auto engine = Engine::open({});
    const auto too_cool = [](const std::string& method) {
        const auto p = engine->predict(*engine->read_formula("Green\n1 kg chicken thigh\n18 g salt\n\nMethod\n" + method + "\n", "f"));
        return std::any_of(p->read_as.begin(), p->read_as.end(), [](const Reason& r) { return r.kind == ReasonKind::cooked_too_cool; });
    };
    for (const std::string method :
         {"Bei 62 Grad im Wasserbad 20 Minuten garziehen lassen.", "Pocher à 65 degrés un quart d'heure.",
          "Cocer a 62 grados veinte minutos.", "Cuocere a 60 gradi.", "Cozinhar a 60 graus.", "Poach at 62 degrees for 20 minutes.",
          "Poach at 62° for 20 minutes.", "Fry until firm, 62 C, then keep warm in the oven.", "Poach at 62 degrees Celsius."}) {
        INFO(method);
        CHECK(too_cool(method));
    }
    for (const std::string method :
         {"Im Ofen bei 180 Grad braten.", "Fry to 75 C core, then keep them in a 45 C oven till everyone has arrived.",
          "Durchbraten, dann im Ofen bei 50 Grad bis zum Abend warm halten.", "Heat the oven to 180 degrees and bake.",
          "Fry to 75 C, then stand the tray in a low oven, 45 C or so, until people turn up.", "Bake at 350 degrees."}) {
        INFO(method);
        CHECK_FALSE(too_cool(method));
    }
    const auto core = [](const std::string& method) {
        return engine->read_formula("Green\n1 kg pork shoulder\n18 g salt\n\nMethod\n" + method + "\n", "f")->process.core_c;
    };
    CHECK(core("Bis 75 Grad Kern braten.") == 75);
    CHECK(core("Braten bis 65 Grad Kerntemperatur, dann servieren.") == 65);
    CHECK(core("Cocer a fuego lento hasta 60 grados en el centro.") == 60);
    CHECK(core("Cuocere fino a 72 gradi al cuore.") == 72);
}

TEST_CASE("a phrase behind a food of a list is never a food, and the food is not taken by itself") {
    for (const std::string line : {"chard 500 g, picked by zorbs"}) {
        INFO(line);
        const auto read = read_inventory("oats 200 g\nkale 100 g\nspinach 1 kg\n" + line + "\n", "", knowledge());
        if (!read) continue;  // asked back
        CHECK(std::none_of(read->items.begin(), read->items.end(), [](const InventoryItem& item) { return item.ingredient == "chard"; }));
        REQUIRE(read->aside.size() == 1);
        CHECK(read->aside.front() == line);
    }
    const auto fine = read_inventory("chard 500 g, best I have\nkale 100 g, still in the freezer\n", "", knowledge());
    REQUIRE(fine);
    CHECK(fine->items.size() == 2);
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
