// Sheets and lines as they are written in kitchens: notes in tables, units before numbers, measures that nobody weighed.
#include <algorithm>

#include "formula/reading.hpp"
#include "standin/engine.hpp"
#include "support/catch.hpp"
#include "support/knowledge.hpp"
#include "support/read_line.hpp"

using namespace standin;

namespace words_of_sheets_test {

using namespace reading_a_line;

FormulaReading sheet(const std::string& text) {
    auto read = read_closely(text, "f.txt", knowledge());
    if (!read) FAIL(read.error().message);
    return std::move(*read);
}

const LineReading& of(const FormulaReading& read, const std::string& part) {
    const auto at = std::find_if(read.lines.begin(), read.lines.end(),
                                 [&](const LineReading& line) { return line.written.find(part) != std::string::npos; });
    if (at == read.lines.end()) FAIL("no line with " + part);
    return *at;
}

bool is_prepared(const Line& line, const std::string& step) {
    return std::any_of(line.prepared.begin(), line.prepared.end(), [&](const Prepared& one) { return one.preparation == step; });
}

TEST_CASE("what a column of notes says of a food goes with it") {
    for (const char* head : {"Notes", "Remarks", "Comment", "Hinweis", "Remarque", "Observaciones", "State"}) {
        INFO(head);
        const auto read = sheet(std::string("Test\n| Ingredient | g | ") + head +
                                " |\n|---|---|---|\n| Pork shoulder | 2000 | from the market |\n| Hazelnuts | 90 | roasted, chopped |\n"
                                "| Thyme | 6 | fresh |\n| Kale | 220 | blanched, squeezed |\n| Salt | 36 | |\n");
        REQUIRE(read.formula);
        CHECK(is_prepared(*of(read, "Hazelnuts").line, "toasted"));
        CHECK(of(read, "Thyme").line->ingredient == "fresh-thyme");
        CHECK(is_prepared(*of(read, "Kale").line, "blanched"));
        CHECK(is_prepared(*of(read, "Kale").line, "squeezed"));
        CHECK(of(read, "Pork shoulder").line->grams.mid == Approx(2000));
    }
    const auto asked = sheet(
        "Test\n| Ingredient | g | Notes |\n|---|---|---|\n| Pork shoulder | 2000 | |\n| Chard | 90 | fermented, zorbed |\n| Salt | 36 | "
        "|\n");
    CHECK(of(asked, "Chard").asked);
    const auto told = sheet(
        "Test\n| Ingredient | g | Notes |\n|---|---|---|\n| Pork shoulder | 2000 | |\n| Walnuts | 50 | may contain peanut |\n| Salt | 36 | "
        "|\n");
    REQUIRE(told.formula);
    const bool declared = std::any_of(told.formula->declared.begin(), told.formula->declared.end(),
                                      [](const Declared& one) { return one.allergen == "peanut"; }) ||
                          std::any_of(of(told, "Walnuts").line->declared.begin(), of(told, "Walnuts").line->declared.end(),
                                      [](const Declared& one) { return one.allergen == "peanut"; });
    CHECK(declared);
}

TEST_CASE("per kilo of mass, and the meat stands there by the kilo as well: as written") {
    const std::string rest = "200 g Rinderhack\n18 g Salz\n60 g Spinat\n2 g Pfeffer\n";
    const auto whole = sheet("Bratwurst\npro kg Masse\n700 g Schweineschulter\n" + rest);
    REQUIRE(whole.formula);
    CHECK(of(whole, "Salz").line->grams.mid == Approx(18));
    CHECK(of(whole, "Spinat").line->grams.mid == Approx(60));
    const auto missed = sheet("Bratwurst\npro kg Masse\n700 g Zorbelkeule\n" + rest);
    CHECK(of(missed, "Salz").line->grams.mid == Approx(18));
}

TEST_CASE("no share is reckoned while much of the meat is not understood") {
    const auto missed = sheet("Test\n2 kg zorbel shoulder\n500 g pork shoulder\nsalt 1.8 % of meat\n");
    CHECK(of(missed, "salt").asked);
    CHECK(of(missed, "pork").line);
}

TEST_CASE("a unit before its number") {
    const auto grams = [](const std::string& text, const std::string& id, double weight) {
        INFO(text);
        const Line line = line_of(text);
        CHECK(line.ingredient == id);
        CHECK(line.grams.mid == Approx(weight).epsilon(0.02));
    };
    grams("Spalla di maiale kg 3", "pork-shoulder", 3000);
    grams("Sale g 80", "table-salt", 80);
    grams("Sale gr 80", "table-salt", 80);
    grams("salt g. 80", "table-salt", 80);
    grams("Vino bianco ml 150", "white-wine", 149);
    grams("Pepe nero g 8,5", "black-pepper", 8.5);
    grams("g 80 sale", "table-salt", 80);
    grams("lamb shldr 2.2k", "lamb-shoulder", 2200);
    grams("salt 18 g", "table-salt", 18);
}

TEST_CASE("cuts of an animal and words of the stove in other tongues") {
    const auto is = [](const std::string& text, const std::string& id) {
        INFO(text);
        CHECK(line_of(text).ingredient == id);
    };
    is("2 kg d'épaule de sanglier", "wild-boar");
    is("1 kg d'épaule de chevreuil", "venison");
    is("1,5 kg di polpa di agnello", "lamb-shoulder");
    is("700 g Hähnchenkeule", "chicken-leg");
    is("700 g Hähnchenkeulen ohne Knochen, mit Haut", "chicken-leg");
    is("1 kg Ziegenschulter", "goat");
    is("500 g Entenbrust mit Haut", "duck-skin-on");
    is("500 g duck breast with skin", "duck-skin-on");
    is("500 g duck breast", "duck");
    is("2 kg de coxa e sobrecoxa de frango", "chicken-leg");
    is("2 lb veal trimmings", "veal-shoulder");
    is("1 kg spalla di capra", "goat");
    is("1 kg pele de frango", "chicken-skin");
    is("1 kg Wildschweinkeule", "wild-boar");
    is("3 hg lardo", "pork-backfat");
    is("1 kg Bauch ohne Schwarte", "pork-belly");
    is("500 g duck skin & fat", "duck-skin");
    is("Setas salteadas 250 g", "mushroom-white");
    CHECK(is_prepared(line_of("Setas salteadas 250 g"), "cooked"));
    CHECK(is_prepared(line_of("funghi trifolati 200 g"), "cooked"));
    is("60 g cilantro with roots", "cilantro");
    is("150 g asparagus tips, blanched", "asparagus");
    is("½ pound slab bacon", "bacon");
    is("50 g fennel, diced and sweated", "fennel-bulb");
    is("5 g fennel", "fennel-seed");
    is("ginger 8 g/kg of meat", "ginger");
    is("el jugo de 2 limones", "lemon-juice");
    is("le jus de 2 citrons", "lemon-juice");
}

TEST_CASE("a measure of which nobody wrote down the weight goes by its kin, unsure") {
    for (const char* text : {"1 bunch lovage", "1 head savoy cabbage", "1 teaspoon dried epazote", "1/3 cup crumbled cotija",
                             "1 cup blanched spinach", "10 brins de ciboulette"}) {
        INFO(text);
        const auto read = with_line(text);
        REQUIRE(read);
        const Band& grams = line_of(text).grams;
        CHECK(grams.low < grams.mid);
        CHECK(grams.high > 1.4 * grams.mid);
    }
    CHECK(line_of("1 teaspoon dried epazote").grams.mid < 2);
    CHECK_FALSE(with_line("1 bunch potato starch"));
}

TEST_CASE("a word of the kitchen is no slip for a poison, and a slip is") {
    CHECK(line_of("A colander full of young nettle tops (about 150g)").ingredient == "nettle");
    CHECK(line_of("1 tsp shichimi").ingredient == "shichimi");
    const auto greens = with_line("1 maço de cheiro-verde");
    CHECK((greens || greens.error().message.find("spoil") == std::string::npos));
    for (const char* text : {"100 g holundar leaves", "1 tsp shikimi", "1 tsp shikimmi", "50 g hemlok", "carne com cheiro 200 g"}) {
        INFO(text);
        CHECK_FALSE(with_line(text));
    }
}

TEST_CASE("so much of a herb that a kilo takes no more of it dried is more likely the leaf") {
    const auto read = sheet("Test\n1800 g turkey thigh\n300 g pork belly\n12 g sage\n36 g salt\n");
    CHECK(of(read, "sage").line->ingredient == "fresh-sage");
    CHECK(of(read, "sage").confidence == Confidence::unsure);
    const auto little = sheet("Test\n1800 g turkey thigh\n300 g pork belly\n3 g sage\n36 g salt\n");
    CHECK(of(little, "sage").line->ingredient == "dried-sage");
}

TEST_CASE("what is another food under a near name, and what leaves its sort open") {
    const auto is = [](const std::string& text, const std::string& id) {
        INFO(text);
        CHECK(line_of(text).ingredient == id);
    };
    is("300 g Röstzwiebeln", "crispy-fried-onion");
    is("30 g crispy fried onions", "crispy-fried-onion");
    is("300 g onions, fried", "onion");
    is("20 g salted capers, rinsed", "caper");
    is("20 g salted capers", "caper-salted");
    is("30 g green peppercorns in brine, drained", "green-peppercorn-brined");
    is("200 g smoked trout", "smoked-trout");
    is("200 g smoked mackerel", "smoked-mackerel");
    is("40 g chestnut flour", "chestnut-flour");
    is("100 g lupini beans", "lupini-cooked");
    is("200 g clams", "clam");
    is("200 g mussels", "mussel");
    is("200 g bitter leaf", "bitterleaf");
    is("100 g water chestnuts", "water-chestnut");
    is("20 g biber salçası", "red-pepper-paste");
    is("200 g friggitelli", "cubanelle");
    is("10 g pastis", "anise-spirit");
    is("10 g ouzo", "anise-spirit");
    is("aleppo 8g", "aleppo-pepper");
    is("60 g sour plums", "green-plum");
    is("300 g grilled peppers", "bell-red");
    is("40 g pimenta dedo-de-moça", "red-chile");
    for (const char* text : {"5 g chilli", "4 pimentas dedo-de-moça", "30 ml suco de limão", "suco de 1 limão", "100 g dried lupini beans",
                             "100 g bitter lupini"}) {
        INFO(text);
        CHECK_FALSE(with_line(text));
    }
    const auto chilli = with_line("5 g chilli");
    CHECK(chilli.error().message.find("say which") != std::string::npos);
    const auto& food = *knowledge().ingredient("lupini-cooked");
    CHECK(food.allergens == std::vector<std::string>{"lupin"});
    for (const char* id : {"clam", "mussel"}) {
        const auto& cautions = knowledge().ingredient(id)->cautions;
        CHECK(std::find(cautions.begin(), cautions.end(), "raw-shellfish") != cautions.end());
    }
}

}  // namespace words_of_sheets_test
