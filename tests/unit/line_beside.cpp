#include "formula/hazards/line_beside.hpp"

#include "formula/hazards/hazards.hpp"
#include "formula/line/line_text.hpp"
#include "formula/reading.hpp"
#include "support/catch.hpp"
#include "support/knowledge.hpp"

using namespace standin;

namespace line_beside_test {

bool has(const std::string& text, const std::string& part) { return text.find(part) != std::string::npos; }

std::string asked(std::string_view text) {
    INFO(std::string(text));
    const auto line = read_line(text, Origin("f.txt", {1, 1}), knowledge());
    REQUIRE_FALSE(line);
    return line.error().message;
}

TEST_CASE("casings and kitchen goods are no food of the mass") {
    for (const char* text :
         {"2 m hog casings, soaked", "about 12 feet of natural hog casing", "Sheep casings", "1 hank hog casings", "120 g sausage casing",
          "8' hog casings, 32-35 mm", "Sausage casing, 3-4 metres", "Pork intestines (sausage casings), cleaned",
          "3 m sausage skins, soaked", "One 6 oz / 170 g package of natural 30 mm sheep casings", "1 m beef middles", "kitchen twine",
          "2 cups wood chips"}) {
        INFO(text);
        CHECK(beside_the_mass(text, knowledge()));
    }
    for (const char* text :
         {"1 lb Italian sausage, casings removed", "500 g sausages in their casings", "2 kg pork shoulder for 4 m of casings",
          "1 kg pork belly, tied with string", "100 g pork skin", "hog jowl 300 g", "1 lb beef"}) {
        INFO(text);
        CHECK_FALSE(beside_the_mass(text, knowledge()));
    }
}

TEST_CASE("a formula keeps its casing beside the weights") {
    const std::string text = "Hedge links\n2 kg pork shoulder\n36 g salt\n3 m hog casings, soaked\n";
    const auto formula = read_formula(text, "f.txt", knowledge());
    REQUIRE(formula);
    CHECK(formula->lines.size() == 2);
    REQUIRE(formula->beside.size() == 1);
    CHECK(formula->beside.front().written == "3 m hog casings, soaked");
    for (const auto& again :
         {formula_text(*formula, knowledge()), formula_json(*formula, knowledge()), formula_jsonld(*formula, knowledge())}) {
        INFO(again);
        const auto back = read_formula(again, "f.txt", knowledge());
        REQUIRE(back);
        REQUIRE(back->beside.size() == 1);
        CHECK(back->beside.front().written == formula->beside.front().written);
        CHECK(back->lines.size() == 2);
    }
    const auto reading = read_closely(text, "f.txt", knowledge());
    REQUIRE(reading);
    REQUIRE(reading->formula);
    REQUIRE(reading->lines.size() == 3);
    REQUIRE(reading->lines[2].beside);
    CHECK(has(in_full(*reading->lines[2].beside), "casing"));
    CHECK_FALSE(reading->lines[2].line);
    CHECK_FALSE(read_formula("Only skins\n3 m hog casings\n", "f.txt", knowledge()));
    CHECK_FALSE(read_formula(R"({"title": "x", "lines": [{"ingredient": "salt", "amount": "9 g"}], "beside": ["90 g spinach"]})", "f.json",
                             knowledge()));
}

TEST_CASE("a first line that names a casing is no title") {
    const auto formula = read_formula("3 m hog casings\n2 kg pork shoulder\n", "f.txt", knowledge());
    REQUIRE(formula);
    CHECK(formula->beside.size() == 1);
}

TEST_CASE("a curing salt is refused in so many words, whatever it is called") {
    for (const char* text : {"1 tsp cure #1", "2.5 g cure no. 2", "3 g Prague powder", "1/4 tsp pink curing salt (see notes)",
                             "10 g curing salt", "1 tsp saltpetre", "5 g salt with nitrite",
                             "1 tsp Prague Powder #1 (6.25% sodium nitrite)", "2 tsp meat cure", "18 g salt (cure #1)", "curing salt"}) {
        const auto message = asked(text);
        CHECK(has(message, "nitrite"));
        CHECK(has(message, "never guessed"));
    }
    CHECK(has(asked("4 g pink salt"), "say which"));
    CHECK_FALSE(danger_in("15 g himalayan pink salt", knowledge()));
    CHECK_FALSE(danger_in("100 g nitrite-free bacon", knowledge()));
    CHECK_FALSE(danger_in("1 lb dry cure bacon", knowledge()));
    CHECK_FALSE(danger_in("20 g kosher salt", knowledge()));
    const auto reading = read_closely("Cured\n2 kg pork shoulder\n1 tsp cure #1\n", "f.txt", knowledge());
    REQUIRE(reading);
    CHECK_FALSE(reading->formula);
    CHECK(reading->lines.size() == 2);
}

TEST_CASE("headings within the list") {
    const auto formula = read_formula(
        "Hedge links\nMeat\n2 kg pork shoulder\nFor the spice mix\n36 g salt\n**Green paste:**\n300 g spinach\nSeasonings:\n4 g black "
        "pepper\n",
        "f.txt", knowledge());
    REQUIRE(formula);
    CHECK(formula->lines.size() == 4);
    for (const char* text : {"Pepper:", "Sausage meat", "salt", "For the pan: butter", "4 herbs"}) {
        INFO(text);
        CHECK_FALSE(is_heading(text, knowledge()));
    }
}

}  // namespace line_beside_test
