// Sheets of shares whose batch stands in the title, meat told in one line, and one question for a whole sheet.
#include <algorithm>

#include "formula/reading.hpp"
#include "support/catch.hpp"
#include "support/knowledge.hpp"

using namespace standin;

namespace sheets_told_whole_test {

FormulaReading shown(const std::string& text) {
    auto read = read_closely(text, "f", knowledge());
    REQUIRE(read);
    return std::move(*read);
}

double grams_of(const FormulaReading& reading, const std::string& id) {
    for (const auto& one : reading.lines)
        if (one.line && one.line->ingredient == id) return one.line->grams.mid;
    return 0;
}

TEST_CASE("no line of a sheet is taken for the head of a table") {
    const auto chives = shown(
        "Green bratwurst\nbatch: 10 kg\nPork shoulder  62.0 %\nPork back fat  27.5 %\nSpinach  9.6 %\nChives, cut 3 mm   0.9 %\n"
        "Lemon juice   0.55 %\nSalt   17 g/kg");
    REQUIRE(chives.lines.size() == 6);
    CHECK(grams_of(chives, "chives") == Approx(90).epsilon(0.05));
    const auto shoulder = shown("Green bratwurst\nPork shoulder 80 VL   70.0 %\nPork back fat   30.0 %\nParsley   1.3 %\nSalt   1.7 %");
    REQUIRE(shoulder.lines.size() == 4);
    CHECK(grams_of(shoulder, "pork-shoulder") > 0);
}

TEST_CASE("a title may tell the batch") {
    for (const std::string title :
         {"GREEN BRATWURST - sheet 14 - batch 10 kg", "Green Bratwurst, batch of 10 kg", "Green Bratwurst (total 10 kg)"}) {
        INFO(title);
        const auto sheet =
            shown(title + "\nPork shoulder 62 %\nPork back fat 27 %\nCrushed ice 5 %\nSpinach 4 %\nSalt 1.7 %\nWhite pepper 0.3 %");
        CHECK(sheet.title == title);
        CHECK(grams_of(sheet, "pork-shoulder") == Approx(6200).epsilon(0.01));
        CHECK(grams_of(sheet, "table-salt") == Approx(170).epsilon(0.01));
    }
    CHECK(shown("Pork shoulder, batch 10 kg\nSalt 20 g\nPepper, black 4 g").title.empty());
}

TEST_CASE("percentages that do not quite add up are of the batch that is told") {
    const auto sheet = shown("Green links\nbatch: 10 kg\nPork shoulder 62 %\nPork back fat 25 %\nSpinach 8 %\nSalt 1.7 %");
    CHECK(grams_of(sheet, "table-salt") == Approx(176).epsilon(0.01));
    for (const auto& line : sheet.lines) CHECK(line.confidence == Confidence::unsure);
}

TEST_CASE("of what all shares are is asked once") {
    const auto refused = read_formula("Green links\nPork shoulder 40 %\nBack fat 20 %\nSpinach 6 %\nSalt 1.7 %", "f", knowledge());
    REQUIRE_FALSE(refused);
    CHECK(refused.error().message.find("add up to 67.7") != std::string::npos);
    CHECK(refused.error().message.find("a share of what") == std::string::npos);
}

TEST_CASE("two cuts in one line") {
    const auto shares = shown("Merguez\nlamb shoulder 70 %, lamb breast 30 % (4 kg together)\nsalt 18 g per kg of meat");
    CHECK(grams_of(shares, "lamb-shoulder") == Approx(2800));
    CHECK(grams_of(shares, "table-salt") == Approx(72));
    const auto cuts = shown("Links\npork: shoulder 2.2 kg + belly 0.6 kg\nsalt 1.8 %");
    CHECK(grams_of(cuts, "pork-shoulder") == Approx(2200));
    CHECK(grams_of(cuts, "pork-belly") == Approx(600));
    CHECK(grams_of(cuts, "table-salt") == Approx(50.4));
}

TEST_CASE("a heading may tell how many it makes") {
    const auto read = shown("Bangers\nIngredients (makes 20 fat ones):\n1.5 kg pork shoulder\n28 g sea salt");
    REQUIRE(read.lines.size() == 2);
    CHECK(read.lines.front().line);
}

}  // namespace sheets_told_whole_test
