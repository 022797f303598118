// Headings of a list that say what is there, and what is not.
#include <algorithm>

#include "core/contains.hpp"
#include "formula/reading.hpp"
#include "support/catch.hpp"
#include "support/inventory.hpp"
#include "support/knowledge.hpp"

using namespace standin;

namespace headings_of_lists_test {

Inventory read(const std::string& text) {
    INFO(text);
    auto found = read_inventory(text, "g", knowledge());
    if (!found) FAIL(found.error().message);
    return std::move(*found);
}

TEST_CASE("what stands below a heading that denies is not on hand") {
    for (const char* heading : {"Don't have:",
                                "Missing:",
                                "Out of:",
                                "To buy:",
                                "Not on hand:",
                                "Need to buy",
                                "What we don't have:",
                                "Fehlt:",
                                "Nicht da:",
                                "Einkaufen:",
                                "Il manque :",
                                "À acheter:",
                                "Falta:",
                                "No tengo:",
                                "Por comprar:",
                                "Manca:",
                                "Da comprare:",
                                "Faltam:",
                                "Niet in huis:",
                                "Saknas:",
                                "Nie mam:",
                                "Still to buy at the market:",
                                "# Missing"}) {
        const auto stock = read("kale 200 g\n" + std::string(heading) + "\ndill\nlemons 2\nsorrel 100 g\n");
        INFO(heading);
        for (const char* food : {"dill", "lemon-juice", "sorrel"}) CHECK(contains(stock.missing, std::string(food)));
        CHECK(item(stock, "kale"));
    }
    const auto inline_list = read("kale 200 g\nDa comprare: dill, sorrel\nmint\n");
    CHECK(inline_list.missing.size() == 2);
    CHECK(item(inline_list, "mint"));
}

TEST_CASE("such a heading goes to the next one, or to the blank line") {
    for (const char* end : {"In the fridge:", "", "# market", "On hand:"}) {
        const auto stock = read("kale 200 g\nMissing:\ndill\n" + std::string(end) + "\nmint\n");
        INFO(end);
        CHECK(contains(stock.missing, std::string("dill")));
        CHECK(item(stock, "mint"));
    }
    const auto herbs = read("kale 200 g\nMissing:\nHerbs:\ndill\n");  // of a kind, below it
    CHECK(contains(herbs.missing, std::string("dill")));
    CHECK_FALSE(read_inventory("kale 200 g\nNo luck with:\ndill\n", "g", knowledge()));
    CHECK_FALSE(read_inventory("kale 200 g\nMissing:\nplenty of dill\n", "g", knowledge()));
    CHECK_FALSE(read_inventory("kale 200 g\nMissing:\nzorbles\n", "g", knowledge()));
    CHECK(item(read("Need using up:\ndill\nkale"), "dill"));
}

TEST_CASE("a kind of food and where it is heads the foods below it") {
    const auto meat = read("Meat on hand\npork shoulder 2 kg\nno beef\nbeef suet: none\n");
    CHECK(meat.items.size() == 1);
    CHECK(contains(meat.missing, std::string("beef-suet")));
    for (const char* title : {"Fridge and pantry", "Saturday market stall", "What's in the garden", "Bits"})
        CHECK(read(std::string(title) + "\nkale 200 g\nleeks 3\n").aside.empty());
    CHECK(read("zorbles\nkale 200 g\nleeks 3\n").aside.size() == 1);
}

TEST_CASE("a list with a title is no formula, and a formula that says no is no list") {
    CHECK(looks_like_stock("Fridge and pantry\ncider vinegar 500 ml\nsea salt - plenty\neggs 6\n", "f", knowledge()));
    CHECK_FALSE(looks_like_stock("Market Bunch Links\n5 lb pork shoulder\n2 large pinches salt per patty\n", "f", knowledge()));
    CHECK_FALSE(looks_like_stock("Sausage\n2 kg pork shoulder\n40 g salt\nno garlic\n", "f", knowledge()));
}

TEST_CASE("prices, sprigs and slips of a list") {
    CHECK(*item(read("spinach 1 kg @ 3.50"), "spinach")->grams == Approx(1000));
    CHECK(*item(read("leeks 500 g, \u20AC2.40/kg"), "leek")->grams == Approx(500));
    CHECK(*item(read("kale\nlemon thyme, a sprig or two"), "fresh-thyme")->grams < 6);
    CHECK(item(read("2 habaneros (careful)"), "habanero"));
    CHECK(*item(read("anaheim chiles 300 g / shishito 100 g"), "shishito")->grams == Approx(100));
    CHECK(item(read("kale\nolives green 100 g"), "green-olive"));
    CHECK_FALSE(read_inventory("kale 200 g\nspinich 2 bunches", "g", knowledge()));
    CHECK(read("kale 200 g\n1 chicken (1.8 kg)").aside.size() == 1);
}

}  // namespace headings_of_lists_test
