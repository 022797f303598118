// Remarks of lines and lists that a cook needs no question about: a towel, a bone, a kind behind a comma, a jar that is open.
#include <algorithm>
#include <utility>

#include "formula/line/line_text.hpp"
#include "formula/reading.hpp"
#include "standin/narrate.hpp"
#include "support/catch.hpp"
#include "support/inventory.hpp"
#include "support/knowledge.hpp"

using namespace standin;

namespace remarks_of_the_trade_test {

std::string read_as(const std::string& line) {
    const auto read = read_line(line, Origin("f", {1, 1}), knowledge());
    if (!read) return "asked: " + read.error().message;
    std::string all = read->line.ingredient;
    for (const auto& step : read->line.prepared) all += ", " + step.preparation;
    return all;
}

Result<Inventory> listed(const std::string& line) {
    return read_inventory("no star anise\nthyme 2 bunches\nmace 5 g\n" + line + "\n", "f", knowledge());
}

bool told(const Inventory& list, const std::string& words) {
    return std::any_of(list.notes.begin(), list.notes.end(),
                       [&](const Reason& note) { return in_full(note).find(words) != std::string::npos; });
}

TEST_CASE("leaves of a herb are fresh, in whichever order they are told", "[trade]") {
    for (const auto& line : {"10 g leaves of sage", "10 g sage leaves", "10 g Blätter Salbei", "10 g Blätter vom Salbei"}) {
        INFO(line);
        CHECK(read_as(line) == "fresh-sage");
    }
    CHECK(read_as("1 tbsp leaves of thyme") == "fresh-thyme");
    CHECK(read_as("2 bay leaves").find("bay") != std::string::npos);
}

TEST_CASE("a cloth, a rind and soft butter are no questions", "[trade]") {
    CHECK(read_as("250 g silverbeet (leaves only), wilted and wrung out in a tea towel") == "chard, stemmed, wilted, squeezed");
    CHECK(read_as("250 g spinach, squeezed dry in a clean tea towel") == "spinach, squeezed");
    CHECK(read_as("250 g Spinat, im Küchentuch ausgedrückt") == "spinach, squeezed");
    for (const auto& line :
         {"2.5 kg back fat, cut off the rind", "2.5 kg back fat, rind cut off", "2.5 kg back fat, with the rind cut off"}) {
        INFO(line);
        CHECK(read_as(line) == "pork-backfat");
    }
    for (const auto& line : {"100 g softened butter", "100 g butter, softened", "100 g beurre ramolli"}) {
        INFO(line);
        CHECK(read_as(line) == "butter");
    }
    CHECK(read_as("100 g onion, softened") == "onion, cooked");
    CHECK(read_as("500 g épaule de porc hachée") == "pork-shoulder, minced");
    CHECK(read_as("500 g paleta de cerdo picada") == "pork-shoulder, minced");
}

TEST_CASE("a kind behind a comma is the food, as it is in brackets", "[trade]") {
    for (const auto& line : {"400 g Green chile, Anaheim", "Green chile, Anaheim, 400 g", "400 g green chile (Anaheim)"}) {
        INFO(line);
        CHECK(read_as(line) == "anaheim");
    }
    CHECK(read_as("400 g spinach, kale").starts_with("asked"));
}

TEST_CASE("meat with its bone is asked for its weight without it", "[trade]") {
    for (const auto& line : {"3 kg pork shoulder, bone in", "3 kg bone-in pork shoulder", "3 kg Schweineschulter mit Knochen",
                             "3 kg épaule de porc avec os", "3 kg paleta de cerdo con hueso"}) {
        INFO(line);
        CHECK(read_as(line).find("the bone does not go into the mass") != std::string::npos);
    }
    CHECK(read_as("3 kg pork shoulder, bone out") == "pork-shoulder");
}

TEST_CASE("a few sprigs are asked in every tongue", "[trade]") {
    for (const auto& line : {"a few sprigs of thyme", "quelques brins de thym", "einige Zweige Thymian", "unas ramitas de tomillo"}) {
        INFO(line);
        CHECK(read_as(line).starts_with("asked"));
    }
}

TEST_CASE("a list is read where it says it the other way round", "[trade]") {
    for (const auto& [line, food, grams] :
         {std::tuple("about 2 lbs of chard, kind of wilted", "chard", 907), std::tuple("tomatillos 10 pzas", "tomatillo", 378),
          std::tuple("opened jar of roasted peppers", "bell-red", 325), std::tuple("a jar of roasted peppers, opened", "bell-red", 325),
          std::tuple("pistachios 150g (salted)", "salted-pistachio", 150), std::tuple("butter 100 g, softened", "butter", 100),
          std::tuple("spinach 300 g - my aunt's way", "spinach", 300)}) {
        const auto read = listed(line);
        INFO(line);
        REQUIRE(read);
        const InventoryItem* one = item(*read, food);
        REQUIRE(one);
        CHECK(*one->grams == Approx(grams).epsilon(0.02));
    }
    for (const auto& line : {"dried sage only", "only dried sage", "nur getrockneter Salbei", "seulement de la sauge séchée"}) {
        const auto read = listed(line);
        INFO(line);
        REQUIRE(read);
        CHECK(item(*read, "dried-sage"));
    }
    for (const auto& line :
         {"can't find wild garlic", "cannot find wild garlic", "finde keinen Bärlauch", "je ne trouve pas d'ail des ours"}) {
        const auto read = listed(line);
        INFO(line);
        REQUIRE(read);
        CHECK(read->missing == std::vector<std::string>{"star-anise", "wild-garlic"});
    }
}

TEST_CASE("what a list says of a food and is passed over is told", "[trade]") {
    const auto salted = listed("pumpkin seeds 100 g, salted");
    REQUIRE(salted);
    CHECK((told(*salted, "salted") || !item(*salted, "pumpkin-seed")));
    const auto unknown = listed("parsley (zorbed)");
    REQUIRE(unknown);
    CHECK((told(*unknown, "zorbed") || !item(*unknown, "parsley")));
    const auto unread = listed("spinach 300 g 7 zorb");
    CHECK(unread);  // set aside, and the rest is read
    CHECK(listed("spinach 300 g (grandma picked it)"));
    CHECK(!listed("spinach 300 g (not for zorbs)"));
}

TEST_CASE("a number before a name and a bracket below it are of the title", "[trade]") {
    const auto numbered = read_formula("No. 14 Country, 10 kg\n7.5 kg pork shoulder\n2.5 kg back fat\nsalt 18 g/kg", "f", knowledge());
    REQUIRE(numbered);
    CHECK(numbered->title == "No. 14 Country, 10 kg");
    CHECK(numbered->lines.size() == 3);
    const auto german = read_formula(
        "Bratwurst\n(Familienrezept, auf 1 kg Fleisch)\n\nSchweineschulter 700 g\nRückenspeck 300 g\nSalz 18 g/kg", "f", knowledge());
    REQUIRE(german);
    CHECK(german->lines.size() == 3);
    CHECK(!read_formula("Bratwurst\n(300 g zorb)\n700 g pork shoulder\n12 g salt", "f", knowledge()));
}

}  // namespace remarks_of_the_trade_test
