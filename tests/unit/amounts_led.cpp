// Amounts that an article or a word leads, that stand in brackets or before a state, and whole animals.
#include "formula/amounts/heading_base.hpp"
#include "formula/hazards/page_words.hpp"
#include "formula/reading.hpp"
#include "standin/engine.hpp"
#include "support/catch.hpp"
#include "support/knowledge.hpp"

using namespace standin;

namespace amounts_led_test {

FormulaReading shown(const std::string& text) {
    auto read = read_closely(text, "f", knowledge());
    REQUIRE(read);
    return std::move(*read);
}

LineReading line(const std::string& text) { return shown("Test\n2 kg pork shoulder\n" + text + "\n").lines.back(); }

double grams(const std::string& text) {
    const auto read = line(text);
    INFO(text << (read.asked ? ": " + read.asked->message : ""));
    REQUIRE(read.line);
    return read.line->grams.mid;
}

TEST_CASE("an article before a measure heads nothing") {
    for (const char* text : {"salt - a scant ounce", "salt, a pound", "salt - a pound", "salt, a good pound"}) {
        INFO(text);
        CHECK_FALSE(heading_base(text, knowledge()));
    }
    CHECK(heading_base("épices à 1 kg", knowledge()));
    CHECK_FALSE(is_said_of_recipe("a good 2 lb of pork, half fat half lean", knowledge()));
    const auto sheet = shown("Test\na good 2 lb of pork, half fat half lean\nsalt - a scant ounce\n1 gill of white wine\n");
    REQUIRE(sheet.lines.size() == 3);
    CHECK(sheet.lines[0].line->fat_pct->mid == Approx(50));
    CHECK(sheet.lines[1].line->grams.mid == Approx(25.5).epsilon(0.02));
    CHECK(sheet.lines[2].line->grams.mid < 150);
}

TEST_CASE("a good pound, a sprig or two, an ounce and a half, no less than") {
    CHECK(grams("a good 500 g of spinach") == Approx(550));
    CHECK(grams("salt, an ounce and a half") == Approx(42.5).epsilon(0.01));
    CHECK(grams("thyme, a sprig or two") == Approx(1.2).epsilon(0.5));
    CHECK(grams("a clove or two of garlic") < 12);
    CHECK(grams("at least 100 g ice") == Approx(100));
    CHECK(grams("mindestens 100 g Spinat") == Approx(100));
    CHECK(grams("no less than 40 g walnuts") == Approx(40));
    CHECK(line("lamb shoulder 1 kg, at least 30 % fat").line->fat_pct->mid == Approx(30));
}

TEST_CASE("an amount in a bracket, in one unit or in two") {
    CHECK(grams("Pork belly (2.2 lb / 1 kg)") == Approx(1000).epsilon(0.03));
    CHECK(grams("Back fat (hard) [250 g]") == Approx(250));
    CHECK(grams("Salt (fine) (36 g)") == Approx(36));
    CHECK(grams("Ice water (1 cup or 240 ml)") == Approx(240).epsilon(0.03));
}

TEST_CASE("a bare number before a state, on a page in grams") {
    const auto page = shown(
        "Notebook, quantities in g\npork shoulder 3000\nsalt 50\nchard 400 blanched + squeezed\ncumin 5 grd\nmix 4 min, 2 C, rest o/n\n");
    REQUIRE(page.lines.size() == 4);
    CHECK(page.lines[2].line->grams.mid == Approx(400));
    CHECK(page.lines[2].line->prepared.size() == 2);
    CHECK(page.lines[3].line->grams.mid == Approx(5));
}

TEST_CASE("visual lean, titles with a yield, headings, prices") {
    CHECK(line("1 lb 85% VL beef chuck").line);
    const auto german =
        shown("Kräuterbratwurst vom Hof (für 5 kg)\n2 kg Schweineschulter\n1 Bund Schnittlauch, in Röllchen\nZum Schluss\n40 g Salz\n");
    CHECK(german.title == "Kräuterbratwurst vom Hof (für 5 kg)");
    CHECK(german.lines.size() == 3);
    REQUIRE(german.told.size() == 1);
    CHECK(in_full(german.told.front()) == "taken for headings: \"Zum Schluss\"");
    CHECK(grams("spinach 1 kg @ 3.50") == Approx(1000));
    CHECK(line("2 tsp salt per patty").asked->message.find("slip") == std::string::npos);
    CHECK(line("2 tsp salt petre").asked);
}

TEST_CASE("a whole animal is no meat by its weight") {
    for (const char* text : {"1 chicken (1.8 kg)", "1 whole chicken, 1.8 kg", "1 Hähnchen (1,8 kg)", "1 rabbit (1.3 kg)"}) {
        INFO(text);
        CHECK(line(text).asked);
    }
    CHECK(line("1.8 kg chicken").line);
    CHECK(line("1 chicken breast (300 g)").line);
}

TEST_CASE("an onion cooked until soft is fried, and a word of another kind is no hint") {
    CHECK(line("1 large onion, finely chopped and cooked until soft").line->prepared.back().preparation == "cooked");
    CHECK(line("1 tbsp chili powder, mild").line->ingredient == "chili-powder-blend");
    CHECK(line("1 tsp chili powder").asked);
    for (const char* text : {"100 g swiss zorbel", "100 g corn"}) {
        const auto read = line(text);
        INFO(text);
        REQUIRE(read.asked);
        for (const auto& hint : read.asked->hints) CHECK(hint.find("breadcrumb") == std::string::npos);
    }
}

}  // namespace amounts_led_test
