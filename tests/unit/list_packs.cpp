// Packs on a list with what one of them weighs, shares of a container, and meat with its bone.
#include <utility>

#include "formula/reading.hpp"
#include "standin/narrate.hpp"
#include "support/catch.hpp"
#include "support/inventory.hpp"
#include "support/knowledge.hpp"

using namespace standin;

namespace list_packs_test {

// Grams of a food by a line of a list; below zero: set aside or not read.
double grams(const std::string& line, const std::string& food) {
    const auto read = read_inventory("no star anise\nthyme 2 bunches\nmace 5 g\n" + line + "\n", "f", knowledge());
    const InventoryItem* one = read ? item(*read, food) : nullptr;
    return one ? one->grams.value_or(0) : -1;
}

TEST_CASE("a pack with its weight is so much as bought, however it is written", "[list_packs]") {
    for (const auto& line : {"spinach 200 g bag x2",
                             "spinach 200g bag x 2",
                             "spinach 2 bags x 200 g",
                             "spinach 2 bags of 200 g",
                             "spinach 2 bags, 200 g each",
                             "spinach 200 g x 2",
                             "spinach 200g x2",
                             "x2 200g bags spinach",
                             "2x spinach 200 g bag",
                             "spinach, 200g bags, two",
                             "spinach 200g bag (x2)",
                             "spinach 200 g bag \u00D7 2",
                             "spinach bag 200 g x2",
                             "Spinat 2 Beutel \u00E0 200 g",
                             "Spinat 2 Beutel je 200 g",
                             "\u00E9pinards 2 sachets de 200 g",
                             "espinacas 2 bolsas de 200 g",
                             "spinaci 2 buste da 200 g",
                             "spinach two 200 g bags",
                             "spinach, two 200 g bags"}) {
        INFO(line);
        CHECK(grams(line, "spinach") == Approx(400));
    }
    for (const auto& line : {"spinach 1 bag, 200 g", "spinach, 1 bag, 200 g", "1 bag spinach, 200 g", "spinach (1 bag, 200 g)",
                             "spinach 1 bag (200 g)", "spinach bag 200 g", "\u00E9pinards, 1 sachet, 200 g", "espinacas 1 bolsa, 200 g"}) {
        INFO(line);
        CHECK(grams(line, "spinach") == Approx(200));
    }
    CHECK(grams("rocket 80g bag x 3", "arugula") == Approx(240));
    CHECK(grams("white wine vinegar half a litre", "white-wine-vinegar") == Approx(505).margin(20));
    CHECK(grams("spinach 200 g x2, kale 150 g x 3", "spinach") == Approx(400));
    CHECK(grams("spinach 200 g x2, kale 150 g x 3", "kale") == Approx(450));
    CHECK(grams("spinach 500 g (2 bags)", "spinach") == Approx(500));
    CHECK(grams("Petersilie 3 Bund \u00E0 50 g", "parsley") == Approx(150));
    CHECK(grams("parsley 1 bunch, 60 g", "parsley") == Approx(60));
    CHECK(grams("chard 2 bunches x 400 g", "chard") == Approx(800));
    CHECK(grams("frozen spinach 10 oz box x 2", "spinach-frozen") == Approx(567).margin(1));
    CHECK(grams("chickpeas 400 g tin x 2", "cooked-chickpea") < 800);  // drained
}

TEST_CASE("whether a weight is that of one pack or of all is asked", "[list_packs]") {
    for (const auto& line : {"spinach 2 bags, 200 g", "spinach 2 bags (200 g)", "walnuts, 3 packs, 100 g"}) {
        const auto read = read_inventory("no star anise\nthyme 2 bunches\nmace 5 g\n" + std::string(line) + "\n", "f", knowledge());
        INFO(line);
        REQUIRE(read);
        CHECK(read->aside == std::vector<std::string>{line});
    }
    CHECK(grams("spinach 200 g, 2 bags kale", "spinach") == Approx(200));
    CHECK(grams("spinach 2 bags, 200 g kale", "kale") == Approx(200));
}

TEST_CASE("how full a bottle is says how much is in it", "[list_packs]") {
    const double full = grams("a bottle of cider vinegar", "cider-vinegar");
    for (const auto& [line, share] :
         {std::pair("a bottle of cider vinegar, two thirds full", 2.0 / 3), std::pair("cider vinegar (bottle, 1/3 full)", 1.0 / 3),
          std::pair("a bottle of cider vinegar, half full", 0.5), std::pair("cider vinegar, 1 bottle, a quarter left", 0.25)}) {
        INFO(line);
        CHECK(grams(line, "cider-vinegar") == Approx(share * full).epsilon(0.02));
    }
    CHECK(grams("cider vinegar 500 ml bottle, half full", "cider-vinegar") == Approx(254).margin(5));
}

TEST_CASE("meat with its bone is taken without it, and told", "[list_packs]") {
    for (const auto& line : {"pork shoulder, bone in, 3 kg", "pork butt 3 kg bone in", "pork shoulder 3 kg with bone",
                             "bone-in pork shoulder 3 kg", "3 kg pork shoulder (bone in)", "pork shoulder 3 kg, on the bone",
                             "Schweineschulter mit Knochen 3 kg", "\u00E9paule de porc avec os 3 kg", "spalla di maiale con osso 3 kg"}) {
        const auto read = read_inventory("no star anise\nthyme 2 bunches\n" + std::string(line) + "\n", "f", knowledge());
        INFO(line);
        REQUIRE(read);
        const InventoryItem* one = item(*read, "pork-shoulder");
        REQUIRE(one);
        CHECK(*one->grams == Approx(2550));
        bool told = false;
        for (const auto& note : read->notes) told = told || in_full(note).find("without its bone") != std::string::npos;
        CHECK(told);
    }
    for (const auto& line : {"pork shoulder 3 kg bone out", "pork shoulder 3 kg, no bone", "boneless pork shoulder 3 kg"}) {
        INFO(line);
        CHECK(grams(line, "pork-shoulder") == Approx(3000));
    }
}

}  // namespace list_packs_test
