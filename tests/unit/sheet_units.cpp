// Numbers that stand without a unit, and weights told in brackets.
#include <algorithm>

#include "standin/engine.hpp"
#include "support/catch.hpp"

using namespace standin;

namespace sheet_units_test {

const Engine& engine() {
    static const Engine made = std::move(*Engine::open({}));
    return made;
}

Formula formula(const std::string& text) {
    INFO(text);
    auto read = engine().read_formula(text, "f");
    if (!read) FAIL(read.error().message);
    return std::move(*read);
}

double grams_of(const Formula& formula, const std::string& id) {
    for (const auto& line : formula.lines)
        if (line.ingredient == id) return line.grams.mid;
    return 0;
}

TEST_CASE("a title or a heading tells the unit of the numbers below it") {
    for (const char* head : {"Leek links (all in grams)\n", "Leek links (g)\n", "Leek links, quantities in g\n",
                             "Leek links\nQuantities in g\n", "Leek links\nAll weights in grams:\n", "Leek links\nAlle Angaben in Gramm\n",
                             "Leek links (g/kg)\n", "Leek links (g per kg of meat)\nMeat block\n", "Leek links (grams per 1 kg meat)\n"}) {
        const auto read = formula(std::string(head) + "Pork shoulder 800\nPork backfat 200\nLeek 60\nSalt 17\nNutmeg 0.5\nWater, iced 60");
        CHECK(grams_of(read, "pork-shoulder") == Approx(800));
        CHECK(grams_of(read, "leek") == Approx(60));
        CHECK(grams_of(read, "table-salt") == Approx(17));
        CHECK(grams_of(read, "nutmeg") == Approx(0.5));
        CHECK(grams_of(read, "water") == Approx(60));
    }
}

TEST_CASE("grams per kilo go with the meat that has a weight of its own") {
    const auto read = formula("Leek links (g per kg of meat)\nPork shoulder 2 kg\nLeek 60\nSalt 17");
    CHECK(grams_of(read, "pork-shoulder") == Approx(2000));
    CHECK(grams_of(read, "leek") == Approx(120));
    CHECK(grams_of(read, "table-salt") == Approx(34));
    const auto parts =
        formula("Links (g per kg of meat)\nMeat block\nPork shoulder 800\nPork backfat 200\nAdditions per kg of meat\nSalt 17");
    CHECK(grams_of(parts, "table-salt") == Approx(17));
}

TEST_CASE("a column of grams per kilo may hold the meat itself") {
    for (const char* head : {"Ingredient   g/kg meat", "Ingredient   g/kg"}) {
        const auto read = formula("Links\n" + std::string(head) + "\nPork shoulder   800\nPork backfat   200\nSalt   17\nLeek   60");
        CHECK(grams_of(read, "pork-shoulder") == Approx(800));
        CHECK(grams_of(read, "table-salt") == Approx(17));
    }
}

TEST_CASE("numbers that cannot count pieces are asked about, once for the sheet") {
    const auto read = engine().read_closely("Links\n1 kg pork shoulder\nleek 200\nonion 120\nsalt 18\neggs 2", "f");
    REQUIRE(read);
    CHECK_FALSE(read->formula);
    REQUIRE(read->errors.size() == 1);
    CHECK(read->errors.front().message.find("grams?") != std::string::npos);
    CHECK(read->lines[1].line->grams.mid == Approx(200));
    CHECK(grams_of(formula("Links\n1 kg pork shoulder\nleeks 2\n3 onions\n12 juniper berries\nsalt 18 g"), "leek") == Approx(178));
}

TEST_CASE("a weight in brackets counts in whatever state it is told") {
    const auto line = [](const std::string& text) { return formula("Links\n2 kg pork shoulder\n18 g salt\n" + text).lines.back(); };
    for (const char* text : {"2 leeks (about 200 g trimmed)", "1 bunch kale (200 g stripped)", "3 onions (200 g cleaned)",
                             "2 leeks (200 g after trimming)", "1 bunch parsley (200 g picked weight)", "4 carrots (200 g net)"}) {
        INFO(text);
        CHECK(line(text).grams.mid == Approx(200));
    }
    const auto roasted = line("3 poblanos, charred, peeled and seeded (about 8 oz after cleaning)");
    CHECK(roasted.grams.mid == Approx(226.8).epsilon(0.01));
    CHECK(roasted.weighed_prepared);
}

TEST_CASE("cl beside garlic are cloves") {
    const auto read = formula("Links\n2 kg pork shoulder\n10 cl garlic, minced\n4 cl white wine");
    CHECK(grams_of(read, "garlic") == Approx(30));
    CHECK(grams_of(read, "white-wine") == Approx(40).epsilon(0.05));
}

}  // namespace sheet_units_test
