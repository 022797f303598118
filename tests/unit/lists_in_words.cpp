// Lists of what is on hand in the words of whoever wrote them: measures, prepared food, parts of a plant, what is like a poison.
#include <algorithm>

#include "core/contains.hpp"
#include "formula/reading.hpp"
#include "support/catch.hpp"
#include "support/inventory.hpp"
#include "support/knowledge.hpp"

using namespace standin;

namespace lists_in_words_test {

Inventory read(const std::string& line, const Formula* formula = nullptr) {
    INFO(line);
    auto found = read_inventory("kale 200 g\nleeks 3\n" + line, "g", knowledge(), formula);
    if (!found) FAIL(found.error().message);
    return std::move(*found);
}

double grams(const std::string& line, const std::string& id) {
    const auto stock = read(line);
    const auto* found = item(stock, id);
    INFO(line);
    REQUIRE(found);
    return found->grams.value_or(1e6);
}

TEST_CASE("a measure of anything is an amount") {
    const auto between = [](const std::string& line, const std::string& id, double low, double high) {
        const double weight = grams(line, id);
        INFO(line);
        CHECK(weight >= low);
        CHECK(weight <= high);
    };
    between("lovage 1 bunch", "lovage", 20, 150);
    between("1 Kopf Wirsing", "savoy-cabbage", 500, 2000);
    between("Apfelessig 1 Flasche", "cider-vinegar", 250, 1000);
    between("Kerbel 1 Topf", "chervil", 10, 100);
    between("basilico una pianta", "basil", 10, 150);
    between("epazote un manojito", "epazote", 10, 80);
    between("smoked paprika 1 tin", "smoked-paprika", 40, 120);
    between("1 jar cumin", "cumin", 20, 70);
    between("dried oregano 1 jar", "dried-oregano", 5, 30);
    between("we have about a kilo of dandelion greens", "dandelion", 950, 1050);
    between("spin. 1 bag", "spinach", 100, 400);
    between("jal x6", "jalapeno", 50, 200);
    between("oregano 1 plant", "fresh-oregano", 10, 100);
}

TEST_CASE("much of it is plenty, whatever it lies in") {
    for (const char* line : {"nettles, a big bag", "nettles, heaps", "nettles, lots", "bags of nettles", "there's plenty of nettles"}) {
        INFO(line);
        const auto stock = read(line);
        REQUIRE(item(stock, "nettle"));
        CHECK_FALSE(item(stock, "nettle")->grams);
    }
    CHECK(grams("a big bag of nettles (500 g)", "nettle") == Approx(500));
}

TEST_CASE("prepared food on hand counts as the fresh food that it came of") {
    CHECK(grams("ramps, blanched, 200 g", "ramps-leaf") >= 200);
    CHECK(grams("roasted poblanos 300 g", "poblano") > 300);
    CHECK(grams("sautéed mushrooms 200 g", "mushroom-white") > 200);
    CHECK(item(read("some leftover roasted poblanos"), "poblano"));
    for (const char* line : {"cooked chicken thigh 500 g", "boiled eggs 4", "salted chard 300 g"}) {
        INFO(line);
        const auto stock = read(line);
        CHECK(stock.aside.size() == 1);
    }
}

TEST_CASE("what comes along with a food is on hand as well") {
    const auto celery = read("celery with leaves, 1 head");
    CHECK(item(celery, "celery")->grams.value_or(0) > 300);
    REQUIRE(item(celery, "celery-leaf"));
    CHECK(item(celery, "celery-leaf")->grams.value_or(1e6) < 100);
    CHECK(item(read("fennel bulb 1 with fronds"), "fennel-fronds"));
    CHECK(item(read("2 bottes de radis avec fanes"), "radish-greens"));
    const auto parsley = read("parsley with roots, 1 bunch");
    CHECK(item(parsley, "parsley"));
    CHECK(parsley.aside.empty());
    for (const char* line : {"rhubarb with leaves 1 kg", "tomatoes with leaves 1 kg"}) {
        INFO(line);
        CHECK_FALSE(read_inventory(std::string("kale 200 g\nleeks 3\n") + line, "g", knowledge()));
    }
}

TEST_CASE("a harmless word stops no list, and a word of spoiling does") {
    CHECK(grams("rocket gone to seed 100g", "arugula") == Approx(100));
    CHECK(contains(read("used up all the basil").missing, std::string("basil")));
    for (const char* line : {"plus d'aneth", "plus d\u2019aneth", "plus de aneth", "pas d'aneth", "we've run out of dill"}) {
        INFO(line);
        CHECK(contains(read(line).missing, std::string("dill")));
    }
    for (const char* line : {"rocket gone off 100g", "rocket, gone slimy", "zorbles, may contain nuts", "no zorbles"}) {
        INFO(line);
        CHECK_FALSE(read_inventory(std::string("kale 200 g\nleeks 3\n") + line, "g", knowledge()));
    }
}

TEST_CASE("a plant that looks like one that kills is left where it is, told first") {
    const auto stock = read("ground elder, lots");
    REQUIRE(stock.aside.size() == 1);
    CHECK(stock.aside.front().find("hemlock") != std::string::npos);
    REQUIRE_FALSE(stock.notes.empty());
    CHECK(stock.notes.front().note.find("hemlock") != std::string::npos);
    CHECK(stock.items.size() == 2);
    const auto formula = read_formula("Test\n1 kg pork shoulder\n30 g parsley\n18 g salt\n", "", knowledge());
    REQUIRE(formula);
    CHECK_FALSE(read_inventory("kale 200 g\nwild parsley, lots\n", "g", knowledge(), &*formula));
    for (const char* line : {"hemlock, lots", "ground elder, may contain nuts", "ground elder, gone slimy"}) {
        INFO(line);
        CHECK_FALSE(read_inventory(std::string("kale 200 g\nleeks 3\n") + line, "g", knowledge()));
    }
}

TEST_CASE("a wider word means the line of the formula that it names, and that is told") {
    const auto formula = read_formula("Test\n1 kg venison\n500 g pork backfat\n10 g rosemary, fresh\n18 g salt\n", "", knowledge());
    REQUIRE(formula);
    for (const char* line : {"no pork fat", "no pork back fat", "no backfat"}) {
        const auto stock = read(line, &*formula);
        INFO(line);
        CHECK(contains(stock.missing, std::string("pork-backfat")));
    }
    const auto told = read("no pork fat", &*formula);
    CHECK(std::any_of(told.notes.begin(), told.notes.end(), [](const Reason& note) { return note.kind == ReasonKind::of_the_formula; }));
    CHECK_FALSE(contains(read("no beef fat", &*formula).missing, std::string("pork-backfat")));
    CHECK(contains(read("no herbs", &*formula).missing, std::string("fresh-rosemary")) !=
          contains(read("no herbs", &*formula).missing, std::string("rosemary")));
    const auto some = read("pork fat 1 kg", &*formula);
    REQUIRE(item(some, "pork-backfat"));
    CHECK(item(some, "pork-backfat")->grams.value_or(0) == Approx(1000));
}

TEST_CASE("lists in any dress are no formulas") {
    for (const char* text :
         {"2 bottes de radis avec fanes\noseille 150 g\nvinaigre de xérès\npas d'épinards\n",
          "spin. 1 bag\ncil 2 bu\njal x6\nACV\ngarlic 2 heads\n",
          "we have about a kilo of dandelion greens\nthere's plenty of parsley and mint\nused up all the basil\ntwo lemons and a lime\n",
          "1 kg pork shoulder, 20 % fat\n2 whole ducks\nramps, blanched, 200 g\npeas 900g bag\n",
          "# what is on hand\nkale 300 g\nchard 2 bunches\n"}) {
        INFO(text);
        CHECK(looks_like_stock(text, "", knowledge()));
    }
    for (const char* text :
         {"1 kg pork shoulder\n18 g salt\n200 g chard\n", "Green sausage\n1 kg pork shoulder\n1 can green chiles\n18 g salt\n",
          "1 kg pork shoulder\n18 g slat\n200 g zorbles\n"}) {
        INFO(text);
        CHECK_FALSE(looks_like_stock(text, "", knowledge()));
    }
}

}  // namespace lists_in_words_test
