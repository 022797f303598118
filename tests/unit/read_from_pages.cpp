// What pages and notebooks hold besides plain lines: amounts told twice, bases in headings, the method, words about the recipe.
#include <algorithm>

#include "standin/engine.hpp"
#include "support/catch.hpp"

using namespace standin;

namespace read_from_pages_test {

const Engine& engine() {
    static const Engine made = std::move(*Engine::open({}));
    return made;
}

Result<Formula> reading(const std::string& lines) { return engine().read_formula("A green one\n" + lines, "f"); }

Formula formula(const std::string& lines) {
    INFO(lines);
    auto read = reading(lines);
    if (!read) FAIL(read.error().message);
    return std::move(*read);
}

double grams(const std::string& line) { return formula("1 kg veal shoulder\n" + line).lines.back().grams.mid; }

bool any(const std::vector<Reason>& told, const std::string& part) {
    const auto all = in_full(told);
    return std::any_of(all.begin(), all.end(), [&](const auto& one) { return one.find(part) != std::string::npos; });
}

TEST_CASE("an amount told in two systems is one amount") {
    for (const char* line : {"Pork butt\t5 lb\t2268 g", "Pork shoulder 5 lb 2268 g", "5 lb 2268 g pork shoulder",
                             "2.27 kg\t5 lb\tpork shoulder", "| Pork butt | 5 lb | 2268 g |", "Pork shoulder 5 lb / 2268 g"}) {
        INFO(line);
        CHECK(grams(line) == Approx(2268).epsilon(0.002));
    }
    CHECK(grams("Ice water\t1 cup\t240 ml") == Approx(240).epsilon(0.01));
    CHECK(grams("1 lb 4 oz pork shoulder") == Approx(567).epsilon(0.002));
    CHECK(grams("1 cup 2 tbsp water") == Approx(266).epsilon(0.01));
    CHECK(grams("Garlic\t0.5 %\t5 g") == Approx(5));
    CHECK(grams("Black pepper\t3.0 g\t0.3 %") == Approx(3));
}

TEST_CASE("two amounts that differ are asked about") {
    CHECK_FALSE(reading("1 kg veal shoulder\nPork butt\t5 lb\t1500 g"));
    CHECK_FALSE(reading("1 kg veal shoulder\nIce water\t1 cup\t500 ml"));
    CHECK_FALSE(reading("1 kg veal shoulder\n500 g spinach, water 100 ml"));
}

TEST_CASE("a heading that names a base goes for the lines below it") {
    for (const char* heading : {"Gewürze (pro kg Fleisch):", "Spices per kg of meat:", "Per kg:", "Assaisonnement au kilo :",
                                "Seasonings per 1 kg", "Gewürze auf 1 kg Fleisch:", "For each kilogram of meat:"}) {
        INFO(heading);
        const auto read = formula("3 kg pork shoulder\n" + std::string(heading) + "\n18 g salt\n2 g black pepper\n\n200 g spinach");
        REQUIRE(read.lines.size() == 4);
        CHECK(read.lines[1].grams.mid == Approx(54));
        CHECK(read.lines[2].grams.mid == Approx(6));
        CHECK(read.lines[3].grams.mid == Approx(200));
        CHECK(any(read.read_as, "reckoned per 1 kg of meat"));
    }
    const auto masse = formula("3 kg pork shoulder\nGewürze (pro kg Masse):\n20 g Salz\n");
    CHECK(masse.lines.back().grams.mid == Approx(60 / 0.98));
    const auto pounds = formula("10 lb pork shoulder\nSeasonings (per 5 lb)\n1 oz salt");
    CHECK(pounds.lines.back().grams.mid == Approx(56.7).epsilon(0.001));
}

TEST_CASE("a base above the meat itself is the whole recipe or asked about") {
    const auto whole = formula("Ingredients per 1 kg of meat\n1 kg pork shoulder\n18 g salt");
    CHECK(whole.lines.back().grams.mid == Approx(18));
    CHECK_FALSE(reading("Ingredients per 1 kg of meat\n2 kg pork shoulder\n18 g salt"));
}

TEST_CASE("a spoon a pound is told with its own figure") {
    const auto read = formula("2 lb pork shoulder\n1 tsp salt per pound\n1/4 oz black pepper for every 5 pounds of meat");
    CHECK(read.lines[1].grams.mid == Approx(12).epsilon(0.01));
    CHECK(any(read.lines[1].notes, "13.2 g per kg of meat"));
    CHECK(read.lines[2].grams.mid == Approx(2.835).epsilon(0.01));
}

TEST_CASE("meat cut for the grinder is ground, and nothing is crushed by the kilo") {
    for (const char* line : {"1 kg pork shoulder, cubed", "1 kg pork shoulder, coarsely ground", "1 kg pork shoulder, coarsely chopped",
                             "1 kg Schweineschulter, gewürfelt", "1 kg épaule de porc en dés", "1 kg pork shoulder, cut into strips"}) {
        INFO(line);
        const auto sheet = engine().sheet(formula(std::string(line) + "\n18 g salt"), {});
        REQUIRE(sheet);
        bool ground = false;
        for (const auto& step : sheet->steps) {
            CHECK(step.id != "crushed");
            ground = ground || step.id == "grind";
        }
        CHECK(ground);
    }
    const auto onion = formula("1 kg pork shoulder\n100 g onion, finely diced\n3 gousses d'ail pressées");
    CHECK(onion.lines[1].prepared.front().preparation == "diced");
    CHECK(onion.lines[2].prepared.front().preparation == "crushed");
}

TEST_CASE("the method of structured data is kept, told and written back") {
    const std::string page =
        R"({"@context": "https://schema.org", "@type": "Recipe", "name": "A", "recipeIngredient": ["1 kg pork shoulder",
        "18 g salt"], "recipeInstructions": [{"@type": "HowToStep", "text": "Grind through the 3/8 inch plate."},
        "Mix 4 minutes by hand.", "Refrigerate overnight, then grill to 160°F."]})";
    const auto read = engine().read_formula(page, "f");
    REQUIRE(read);
    CHECK(read->method.size() == 3);
    CHECK(any(read->read_as, "the method, 3 steps"));
    for (const auto& text : {engine().formula_text(*read), engine().formula_json(*read), engine().formula_jsonld(*read)}) {
        INFO(text);
        CHECK(text.find("Mix 4 minutes by hand.") != std::string::npos);
        const auto back = engine().read_formula(text, "f");
        REQUIRE(back);
        CHECK(back->method == read->method);
        CHECK(*back->process.plate_mm == Approx(*read->process.plate_mm));
    }
}

TEST_CASE("what the method says of the making is presumed and told") {
    const auto read = formula(
        "1 kg pork shoulder\n300 g spinach\n200 g chard\n18 g salt\n\nMethod\nBlanch the spinach 2 minutes and squeeze it.\n"
        "Grind the meat through the coarse (10 mm) plate.\nMix for 3 minutes.\nStuff into 32 mm casings.\n"
        "Rest overnight.\nCook to an internal temperature of 160°F.");
    CHECK(*read.process.plate_mm == Approx(10));
    CHECK(*read.process.mixing_min == Approx(3));
    CHECK(*read.process.rest_h == Approx(12));
    CHECK(*read.process.core_c == Approx(71.1).epsilon(0.01));
    CHECK(read.lines[1].prepared.front() == Prepared{"blanched", 2});
    CHECK(read.lines[2].prepared.empty());
    CHECK(any(read.read_as, "read from the method: plate 10 mm"));
    const auto german =
        formula("1 kg Schweineschulter\n18 g Salz\nZubereitung:\nDas Fleisch durch die 6-mm-Scheibe wolfen.\n5 Minuten kneten.");
    CHECK(*german.process.plate_mm == Approx(6));
    CHECK(*german.process.mixing_min == Approx(5));
    const auto said = formula("1 kg pork shoulder\n18 g salt\nplate: 4 mm\nMethod\nGrind through a 10 mm plate.");
    CHECK(*said.process.plate_mm == Approx(4));
}

TEST_CASE("a plate of a decimal comma, a mixed number or a range is one length") {
    const auto plate = [](const std::string& method) {
        return formula("1 kg pork shoulder\n18 g salt\nMethod\n" + method + "\n").process.plate_mm.value_or(0);
    };
    CHECK(plate("Das Fleisch durch die 4,5 mm Scheibe wolfen.") == Approx(4.5));
    CHECK(plate("Grind through the 4,5 mm plate.") == Approx(4.5));
    CHECK(plate("Hacher à la grille de 4,5 mm.") == Approx(4.5));
    CHECK(plate("Grind through the 4 1/2 mm plate.") == Approx(4.5));
    CHECK(plate("Grind through the 4-6 mm plate.") == Approx(5));
    CHECK(plate("Grind through the 6 mm plate, then the 3 mm plate.") == Approx(3));
    const auto core = formula("1 kg Schweineschulter\n18 g Salz\nZubereitung:\nAuf 72,5 °C Kerntemperatur braten.");
    CHECK(*core.process.core_c == Approx(72.5));
}

TEST_CASE("what the method does to greens, seeds and nuts is taken over the stops between its sentences") {
    const auto done = [](const std::string& method) {
        std::string all;
        const auto read = formula("1 kg pork shoulder\n300 g spinach\n200 g chard\n60 g pumpkin seeds\n40 g walnuts\n18 g salt\nMethod\n" +
                                  method + "\n");
        for (const auto& line : read.lines)
            for (const auto& step : line.prepared)
                all +=
                    line.ingredient + " " + step.preparation + (step.minutes ? " " + std::to_string(*step.minutes).substr(0, 3) : "") + ";";
        return all;
    };
    const std::string squeezed = "spinach blanched 0.5;spinach squeezed;";
    CHECK(done("Blanch the spinach 30 seconds; squeeze dry.") == squeezed);
    CHECK(done("Blanch the spinach 30 seconds. Squeeze it dry.") == squeezed);
    const auto seconds = formula("1 kg pork shoulder\n300 g spinach\n18 g salt\nMethod\nBlanch the spinach 20 seconds; squeeze dry.\n");
    CHECK(any(seconds.read_as, "spinach blanched 20 s, squeezed"));
    const auto again = engine().read_formula(engine().formula_text(seconds), "f");
    REQUIRE(again);
    CHECK(again->lines[1].prepared.front().minutes.value_or(0) == Approx(1.0 / 3));
    CHECK(done("Blanch the spinach 30 seconds. Cool in ice water. Drain and wring out.") == squeezed);
    CHECK(done("Den Spinat 30 Sekunden blanchieren. Gut ausdrücken.") == squeezed);
    CHECK(done("Blanch the spinach 30 seconds. Do not squeeze.") == "spinach blanched 0.5;");
    CHECK(done("Blanch the spinach 30 seconds. Squeeze the limes over it.") == "spinach blanched 0.5;");
    CHECK(done("Blanch the spinach 30 seconds. Squeeze the chard.") == "spinach blanched 0.5;");
    CHECK(done("Toast 1/4 cup pumpkin seeds in a dry skillet until they pop, 4 minutes.") == "pumpkin-seed toasted;");
    CHECK(done("Toast the pumpkin seeds, walnuts and cumin.") == "pumpkin-seed toasted;walnut toasted;");
    CHECK(done("Kürbiskerne und Walnüsse rösten.") == "pumpkin-seed toasted;walnut toasted;");
    CHECK(done("Do not toast the walnuts.").empty());
    CHECK(done("Toast the buns. Chop the walnuts.").empty());
}

TEST_CASE("a plate that stands in a line of meat is that of the mass, or is told") {
    const auto one = formula("3 kg pork shoulder, 80/20, 8 mm plate\n54 g salt");
    CHECK(*one.process.plate_mm == Approx(8));
    CHECK(any(one.read_as, "read from the lines: plate 8 mm"));
    const auto table = formula("Ingredient\tg\tNotes\nPork shoulder\t6200\t80/20, 4.5 mm plate\nTable salt\t175\t");
    CHECK(*table.process.plate_mm == Approx(4.5));
    const auto two = formula("3 kg pork shoulder, 8 mm plate\n1 kg pork backfat, 3 mm plate\n72 g salt");
    CHECK(!two.process.plate_mm);
    CHECK(any(two.lines[0].notes, "8 mm plate"));
    CHECK(any(two.lines[1].notes, "3 mm plate"));
    const auto said = formula("3 kg pork shoulder, 8 mm plate\n54 g salt\nplate: 6 mm");
    CHECK(*said.process.plate_mm == Approx(6));
    CHECK(any(said.lines[0].notes, "8 mm plate"));
}

TEST_CASE("what a page says of the recipe is passed over in one line") {
    const auto read =
        formula("Servings: 12\nPrep Time: 45 mins\nYield: 5 lb\nBy Jane Doe\nRinde: 2.5 kg\nFür 4 Personen\n2 kg pork shoulder\n36 g salt");
    CHECK(read.lines.size() == 2);
    CHECK(std::count_if(read.read_as.begin(), read.read_as.end(),
                        [](const auto& one) { return in_full(one).find("said of the recipe") != std::string::npos; }) == 1);
    CHECK_FALSE(reading("2 kg pork shoulder\n36 g salt\n300 g zorbelkraut"));
}

TEST_CASE("fat for the pan stays outside, and a cup of which more is fried is in") {
    const auto read = formula("1 kg pork shoulder\n18 g salt\n2 tbsp olive oil, for frying\n1/4 cup olive oil, plus more for frying");
    CHECK(read.lines.size() == 3);
    CHECK(read.beside.size() == 1);
}

TEST_CASE("leaves by the cup agree with leaves by the spoon") {
    for (const char* leaf : {"cilantro", "mint", "dill", "parsley", "basil"}) {
        INFO(leaf);
        const double cup = grams("1 cup chopped fresh " + std::string(leaf)), spoons = grams("16 tbsp chopped fresh " + std::string(leaf));
        CHECK(cup == Approx(spoons).epsilon(0.1));
        CHECK(cup > 30);
        CHECK(cup < 70);
    }
    CHECK(grams("1 cup chopped kale") == Approx(50));
    CHECK(grams("1 cup kale leaves") == Approx(16));
}

TEST_CASE("a list tells what is open, and a no is never set aside") {
    const auto list = [](const std::string& lines) { return engine().read_inventory("basil 10 g\n" + lines, "f"); };
    for (const char* open : {"sunflower seeds?", "spinach if it grew"}) {
        const auto read = list(open);
        REQUIRE(read);
        CHECK(read->items.size() == 1);
        CHECK(read->aside == std::vector<std::string>{open});
    }
    CHECK_FALSE(list("spinach if it has not bolted"));
    CHECK_FALSE(list("pas de zorbelles"));
    const auto none = list("pas de piments verts");
    CHECK((!none || none->missing == std::vector<std::string>{"green-chile"}));
    const auto bag = list("1 bag baby spinach (200 g)");
    REQUIRE(bag);
    CHECK(*bag->items.back().grams == Approx(200));
    const auto thyme = list("no fresh thyme, only dried");
    REQUIRE(thyme);
    CHECK(thyme->missing == std::vector<std::string>{"fresh-thyme"});
    CHECK(thyme->items.back().ingredient == "dried-thyme");
}

TEST_CASE("a food's name above the line that weighs it is the title") {
    const auto read = engine().read_formula("Chicken thigh\n1000 g chicken thigh\n18 g salt", "f");
    REQUIRE(read);
    CHECK(read->title == "Chicken thigh");
    CHECK_FALSE(engine().read_formula("Salt\n1000 g chicken thigh", "f"));
}

TEST_CASE("a name that may be another food is told") {
    const auto read = formula("1 kg pork shoulder\n100 g bramley apple\n50 ml cider");
    for (std::size_t i = 1; i < read.lines.size(); ++i) CHECK(any(read.lines[i].notes, "say which if it is another"));
}

}  // namespace read_from_pages_test
