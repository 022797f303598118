// What people write by hand above, beside and below the foods of a list or a formula, read as they mean it.
#include <algorithm>

#include "core/contains.hpp"
#include "formula/reading.hpp"
#include "standin/narrate.hpp"
#include "support/catch.hpp"
#include "support/inventory.hpp"
#include "support/knowledge.hpp"

using namespace standin;

namespace as_on_paper_test {

Inventory list(const std::string& text, const Formula* formula = nullptr) {
    INFO(text);
    auto found = read_inventory(text, "g", knowledge(), formula);
    if (!found) FAIL(found.error().message);
    return std::move(*found);
}

// Below two foods that everybody has.
Inventory line_of_list(const std::string& line) { return list("rolled oats 300 g\nbeetroot 300 g\n" + line + "\n"); }

Result<Formula> formula(const std::string& lines) {
    return read_formula("Links\n2 kg pork shoulder\n36 g salt\n" + lines + "\n", "f", knowledge());
}

Line line_of(const std::string& line) {
    INFO(line);
    auto read = formula(line);
    if (!read) FAIL(read.error().message);
    return read->lines.back();
}

bool asked(const std::string& line) { return !formula(line); }

bool says(const std::vector<Reason>& told, const std::string& part) {
    const auto all = in_full(told);
    return std::any_of(all.begin(), all.end(), [&](const auto& one) { return one.find(part) != std::string::npos; });
}

TEST_CASE("a first line that names a day, a feast or a farm is a title and no food") {
    for (const char* title : {"Grandad turns 90 on Sunday",
                              "Nan's 80th - Sat 14th",
                              "40 years of the club",
                              "12 May",
                              "12/5/2024",
                              "Tom's 40th",
                              "Batch no. 7",
                              "No. 7",
                              "Test no. 3, less salt",
                              "For the fete on the 3rd",
                              "6 people Friday",
                              "Wedding Saturday, 120 guests",
                              "Sorrel Farm",
                              "Bacon Hall sausage",
                              "Goose Green Farm, pork & herb",
                              "Green Pepper Inn house sausage",
                              "Sheep Dip Farm mutton links",
                              "Olive Grove Deli links",
                              "Oma wird 80 am Sonntag",
                              "Papy a 90 ans dimanche",
                              "El abuelo cumple 90 el domingo",
                              "Nonno compie 90 anni domenica",
                              "What's in the fridge 12 May"})
        for (const char* below : {"\n", ":\n", "\n\n"}) {
            const auto stock = list(std::string(title) + below + "spinach 400 g\nkale 200 g\nserrano 100 g\n");
            INFO(title);
            CHECK(stock.items.size() == 3);
            CHECK(stock.aside.empty());
            CHECK(stock.missing.empty());
        }
    CHECK(item(list("Farm eggs\nkale 200 g\n"), "egg"));
    CHECK(item(list("sorrel, from the farm\nkale 200 g\n"), "sorrel"));
    CHECK(item(list("sun-dried tomatoes 100 g\nkale 200 g\n"), "sun-dried-tomato"));
    CHECK_FALSE(read_inventory("Sunday: no zorbles\nkale 200 g\n", "g", knowledge()));
}

TEST_CASE("a heading of what is left heads what stands below it") {
    for (const char* heading :
         {"What is left", "What's left:", "What's left after the weekend", "Still here", "What we still have",
          "Remaining:", "Was noch da ist", "Noch übrig", "Ce qui reste", "Lo que queda", "Quel che resta", "O que sobrou"}) {
        const auto stock = list("kale 200 g\n" + std::string(heading) + "\ndill 20 g\npork shoulder 1 kg\n");
        INFO(heading);
        CHECK(stock.items.size() == 3);
        CHECK(stock.aside.empty());
    }
    CHECK(list("kale 200 g\nWhat's left to buy\ndill\n").missing == std::vector<std::string>{"dill"});
    CHECK_FALSE(read_inventory("kale 200 g\nRotten:\ndill\n", "g", knowledge()));
    CHECK_FALSE(read_inventory("kale 200 g\nLeft out overnight:\ndill\n", "g", knowledge()));
}

TEST_CASE("below a heading that says it is there since last week, leaf and fruit are told and meat is set aside") {
    for (const char* heading :
         {"Left from last week:", "Left from last week", "Left over from the party:", "Last week's", "Reste von letzter Woche",
          "Restes de la semaine dernière", "Sobras de la semana pasada", "Avanzato dalla settimana scorsa"}) {
        const auto stock = list("kale 200 g\n" + std::string(heading) +
                                "\ndill 20 g\nlimes 2\ncider vinegar 200 ml\npork shoulder 1 kg\ncream 100 ml\n\nmint 10 g\n");
        INFO(heading);
        for (const char* food : {"dill", "lime-juice", "cider-vinegar"}) {
            REQUIRE(item(stock, food));
            CHECK(says(item(stock, food)->told, "sound"));
        }
        CHECK_FALSE(item(stock, "pork-shoulder"));
        CHECK(stock.aside.size() == 2);
        CHECK(item(stock, "mint")->told.empty());  // below the blank line
        CHECK(item(stock, "kale")->told.empty());
    }
}

TEST_CASE("how a leaf or a fruit looks loses it not; of meat and mushrooms it may be spoiled") {
    for (const char* remark : {"a bit soft", "bit soft", "starting to go soft", "floppy", "a few holes", "yellow at the edges",
                               "etwas schlapp", "un peu mou", "un poco blando", "un po' molle"})
        for (const char* food : {"gooseberries 300 g", "kale 300 g"}) {
            const auto stock = line_of_list(std::string(food) + " (" + remark + ")");
            INFO(food << remark);
            CHECK(stock.items.size() == 3);
            CHECK(says(stock.notes, remark));
        }
    CHECK(line_of_list("kale 300 g, a few brown leaves").items.size() == 3);
    CHECK(line_of_list("kale 300 g, brown zorbs").aside.size() == 1);  // no slip for "blown": set aside, and the rest is read
    for (const char* line : {"pork shoulder 1 kg (a bit soft)", "oyster mushrooms 200 g (a bit soft)"}) {
        INFO(line);
        CHECK(line_of_list(line).items.size() == 2);
    }
    for (const char* line : {"kale 200 g (slimy)", "gooseberries 200 g, mouldy", "kale 200 g, gone to mush"}) {
        INFO(line);
        CHECK_FALSE(read_inventory("oats 300 g\nbeetroot 200 g\n" + std::string(line), "g", knowledge()));
    }
    CHECK(line_of_list("chicken thighs 800 g (use by tomorrow)").items.size() == 3);
    CHECK(contains(line_of_list("no dill (slugs got it)").missing, std::string("dill")));
}

TEST_CASE("meat that thawed yesterday is there, and told") {
    for (const char* line :
         {"pork shoulder 2 kg, defrosted yesterday", "pork shoulder 2 kg (thawed this morning)", "pork shoulder 2 kg thawed overnight",
          "Schweineschulter 2 kg, gestern aufgetaut", "épaule de porc 2 kg, décongelée hier"}) {
        const auto stock = line_of_list(line);
        INFO(line);
        REQUIRE(item(stock, "pork-shoulder"));
        CHECK(says(item(stock, "pork-shoulder")->told, "not frozen again"));
    }
    CHECK(item(line_of_list("pork butt 4 kg (thawed Thursday night in the fridge)"), "pork-shoulder"));
    CHECK(item(line_of_list("Majoran getrocknet"), "dried-marjoram"));
    CHECK(says(line_of("1 kg pork belly, defrosted yesterday").notes, "not frozen again"));
    for (const char* line :
         {"pork shoulder 2 kg, thawed last week", "pork shoulder 2 kg, thawed on the radiator", "pork shoulder 2 kg, thawed twice"}) {
        const auto found = read_inventory("oats 300 g\nbeetroot 200 g\n" + std::string(line), "g", knowledge());
        INFO(line);
        CHECK((!found || !item(*found, "pork-shoulder")));
    }
}

TEST_CASE("a bracket names the kind of a word that takes it in") {
    for (const char* line : {"100 g green chile (serrano)", "2 green chiles (serrano), sliced", "100 g chiles (serrano)"}) {
        INFO(line);
        CHECK(line_of(line).ingredient == "serrano");
        CHECK(line_of(line).notes.empty());
    }
    CHECK(item(line_of_list("green chiles (jalapeño) 150 g"), "jalapeno"));
    CHECK(item(line_of_list("green chile (serrano)"), "serrano"));
    CHECK(item(line_of_list("nuts (walnuts) 100 g"), "walnut"));
    const auto nuts = line_of_list("nuts (hazelnuts, walnuts)");
    CHECK((item(nuts, "hazelnut") && item(nuts, "walnut")));
    CHECK(item(line_of_list("parsley, walnuts"), "walnut"));  // a walnut is a measure too
    CHECK_FALSE(item(line_of_list("peppers 3"), "black-pepper"));
    const auto herbs = line_of_list("herbs (parsley, dill)");
    CHECK((item(herbs, "parsley") && item(herbs, "dill")));
    CHECK(line_of("100 g canned green chiles (jalapeño)").ingredient != "jalapeno");
    CHECK(line_of("20 g salt (sea, fine)").ingredient == "sea-salt");
}

TEST_CASE("pulses out of a tin are boiled, and raw ones of a list go into nothing") {
    CHECK(line_of("1 tin kidney beans, drained").ingredient == "kidney-bean-cooked");
    CHECK(line_of("200 g butter beans, tinned, drained").ingredient == "butter-bean-cooked");
    CHECK(item(line_of_list("2 cans butter beans"), "butter-bean-cooked")->grams == Approx(480));
    for (const char* line :
         {"kidney beans 200 g", "raw broad beans 500 g", "broad beans, raw, 1 kg", "broad beans in the pod, raw, 1 kg"}) {
        const auto stock = line_of_list(line);
        INFO(line);
        CHECK(stock.items.size() == 2);
        CHECK(stock.aside.size() == 1);
    }
    for (const char* line : {"200 g kidney beans", "200 g raw runner beans", "200 g raw broad beans", "200 g butter beans, soaked"}) {
        INFO(line);
        CHECK(asked(line));
    }
    CHECK(item(line_of_list("raw runner beans 300 g"), "green-bean"));
    CHECK(line_of("100 g raw runner beans, boiled 10 min").ingredient == "green-bean");
    for (const char* line : {"1 Dose weiße Bohnen", "1 boîte de haricots blancs", "1 tin haricot beans"}) {
        INFO(line);
        CHECK(line_of(line).ingredient == "white-bean-cooked");
    }
    CHECK(line_of("2 latas de frijoles rojos").ingredient == "kidney-bean-cooked");
    for (const char* line : {"200 g de haricots rouges", "200 g borlotti beans", "200 g haricot beans"}) {
        INFO(line);
        CHECK(asked(line));
    }
    CHECK(says(line_of("200 g weiße Bohnen").notes, "read as boiled ones"));
    CHECK(line_of_list("beans 200 g").aside.size() == 1);  // which, and no slip for bears
    CHECK(line_of("1 packet of tofu").grams.mid == Approx(300));
    CHECK(item(line_of_list("tofu, 1 packet"), "tofu")->grams == Approx(300));
}

TEST_CASE("what a food is free from it does not hold, and what is made as elsewhere is that food") {
    CHECK(line_of("100 ml gluten-free stock").ingredient == "chicken-stock");
    CHECK(item(line_of_list("gluten-free stock 500 ml"), "chicken-stock"));
    CHECK(line_of("60 g gluten-free breadcrumbs").ingredient == "gluten-free-breadcrumb");
    for (const char* line :
         {"60 g dairy-free butter", "60 ml alcohol-free white wine", "100 g chicken-style pieces", "100 g ham-style tofu"}) {
        INFO(line);
        CHECK(asked(line));
    }
    CHECK(line_of("100 g Greek-style yogurt").ingredient == "greek-yoghurt");
    CHECK(line_of("50 g Thai-style green curry paste").ingredient == "green-curry-paste");
    CHECK(line_of("100 g Italian-style tomatoes").ingredient == "tomato");
}

TEST_CASE("an acid by the bottle has the strength that is told") {
    for (const char* line : {"10 ml lactic acid 80 %", "Milchsäure 80 % 10 ml", "10 g Milchsäure 80 %", "10 ml lactic acid (80 %)"}) {
        INFO(line);
        REQUIRE(line_of(line).acid_pct);
        CHECK(line_of(line).acid_pct->mid == Approx(80));
    }
    CHECK(asked("white vinegar 90 % acidity 10 ml"));
}

TEST_CASE("limón is the lime where the words around it are of such a kitchen, and told") {
    CHECK(line_of("zumo de 2 limones").ingredient == "lemon-juice");
    const auto mexican = formula("100 g jitomate\n2 limones");
    REQUIRE(mexican);
    CHECK(mexican->lines.back().ingredient == "lime-juice");
    CHECK(says(mexican->lines.back().notes, "read as lime"));
    CHECK(says(line_of("2 limones").notes, "read as lemon"));
    CHECK(line_of("2 limones verdes").ingredient == "lime-juice");
    const auto green = formula("40 ml lime juice");
    REQUIRE(green);
    CHECK(item(list("limones 6\nkale 200 g\n", &*green), "lime-juice"));
    CHECK(item(list("limones 6\nkale 200 g\n"), "lemon-juice"));
    CHECK(item(list("limones 6\nepazote 20 g\n"), "lime-juice"));
}

TEST_CASE("small slips of the hand") {
    CHECK(line_of("50 ml lime jc").ingredient == "lime-juice");
    CHECK(line_of("juice ½ lemon").grams.mid == Approx(24));
    CHECK(line_of("1 hpd tsp fennel seeds, toasted").ingredient == "fennel-seed");
    CHECK(line_of("1 pkt frozen chopped spinach, 10 oz, squeezed").grams.mid == Approx(283.5).epsilon(0.01));
    CHECK(line_of("1 peperoncino fresco, senza semi").ingredient == "finger-chile-red");
    for (const char* line : {"1 heaped tbsp chopped parsley", "1 cucchiaio colmo di prezzemolo tritato", "1 cda colmada de perejil picado",
                             "1 EL gehäuft Petersilie, gehackt", "1 tbsp heaped chopped parsley"}) {
        INFO(line);
        CHECK(line_of(line).grams.mid == Approx(6.08));
    }
    CHECK(line_of("1 cucchiaino raso di sale").grams.mid == Approx(6));
    CHECK(line_of("a pinch of parsley").grams.mid == Approx(0.4));
    CHECK(line_of("a pinch of dried parsley").grams.mid < 0.2);
}

TEST_CASE("an amount between two commas is of what stands before it, and a pot is the plant") {
    CHECK(item(line_of_list("spring onions, 2 bunches - limp"), "scallion")->grams);
    CHECK(item(line_of_list("gooseberries, 1 punnet, bit soft"), "gooseberry")->grams);
    const auto two = line_of_list("kale, 2 bunches, chard");
    CHECK((item(two, "kale")->grams && item(two, "chard") && !item(two, "chard")->grams));
    CHECK_FALSE(read_inventory("oats 300 g\nkale, 300 g, slimy\n", "g", knowledge()));
    CHECK(item(line_of_list("sage, pot on windowsill"), "fresh-sage"));
    CHECK(item(line_of_list("chives in a pot"), "chives"));
    CHECK(item(line_of_list("breadcrumbs (panko) 200 g"), "panko")->declared.empty());
    CHECK(line_of("1/2 tsp red pepper flakes (more if you like)").ingredient == "red-pepper-flakes");
    CHECK(line_of("4 cloves garlic thru the press").ingredient == "garlic");
}

TEST_CASE("a colour before a sauce of chiles names another sauce") {
    for (const char* line :
         {"20 g green harissa", "20 g harissa (green)", "20 g harissa, green", "30 ml green hot sauce", "50 g red pesto"}) {
        INFO(line);
        CHECK(asked(line));
    }
    CHECK(line_of("20 g yellow mustard").ingredient == "prepared-mustard");
    CHECK(line_of_list("green harissa 100 g").items.size() == 2);
}

}  // namespace as_on_paper_test
