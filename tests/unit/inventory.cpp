#include "formula/stock/inventory.hpp"

#include <algorithm>

#include "formula/reading.hpp"
#include "support/catch.hpp"
#include "support/knowledge.hpp"

using namespace standin;

namespace inventory_test {

Inventory good(const std::string& text) {
    auto inventory = read_inventory(text, "i.txt", knowledge());
    if (!inventory) FAIL(inventory.error().where + " " + inventory.error().message);
    return *inventory;
}

std::string trouble(const std::string& text) {
    const auto inventory = read_inventory(text, "i.txt", knowledge());
    REQUIRE_FALSE(inventory);
    return inventory.error().where + " " + inventory.error().message;
}

bool has(const std::string& text, const std::string& part) { return text.find(part) != std::string::npos; }

TEST_CASE("an inventory in lines") {
    const Inventory inventory = good(
        "# in the cold room\nspinach 400 g\n500 g garlic\nparsley 2 bunches\nchard plenty\nplenty of salt\njalapeno\nno cilantro\nout of "
        "serranos\nnothing else\n");
    REQUIRE(inventory.items.size() == 6);
    CHECK(inventory.items[0].ingredient == "spinach");
    CHECK(inventory.items[0].grams == 400.0);
    CHECK(inventory.items[1].grams == 500.0);
    CHECK(inventory.items[2].grams > 50.0);
    CHECK_FALSE(inventory.items[3].grams);
    CHECK(inventory.items[4].ingredient == "table-salt");
    CHECK_FALSE(inventory.items[5].grams);
    CHECK(inventory.missing.size() == 2);
    CHECK(inventory.complete == true);
}

TEST_CASE("lists, ends and sums") {
    CHECK(good("spinach, chard and parsley").items.size() == 3);
    CHECK(good("no spinach, chard or parsley\neverything else").missing.size() == 3);
    CHECK(good("no spinach\neverything else").complete == false);
    CHECK_FALSE(good("spinach").complete);
    CHECK(good("spinach 100 g\nspinach 200 g").items.front().grams == 300.0);
    CHECK_FALSE(good("spinach 100 g\nspinach plenty").items.front().grams);
    CHECK(good("spinach: none").missing.front() == "spinach");
    CHECK(good("spinach 0 g").missing.front() == "spinach");
}

TEST_CASE("an inventory in JSON") {
    const Inventory inventory =
        good(R"({"have": [{"ingredient": "spinach", "amount": "400 g"}, {"ingredient": "chard", "plenty": true}, {"ingredient": "salt"}],
 "not": ["cilantro"], "complete": true, "note": "cold room"})");
    REQUIRE(inventory.items.size() == 3);
    CHECK(inventory.items[0].grams == 400.0);
    CHECK_FALSE(inventory.items[1].grams);
    CHECK(inventory.missing.size() == 1);
    CHECK(inventory.complete == true);
}

TEST_CASE("bad inventories") {
    CHECK(has(trouble("spnch 400 g"), "i.txt:1:1 unknown ingredient"));
    CHECK(has(trouble("no spnch"), "i.txt:1:4 unknown ingredient"));
    CHECK(has(trouble("spinach 400 g\nno spinach"), "on hand and not on hand"));
    CHECK(has(trouble("nothing else\neverything else"), "expected one of them"));
    CHECK(has(trouble("spinach 2 % of meat"), "no amount on hand"));
    CHECK(has(trouble("chicken thigh 400 g, cooked"), "as bought"));
    CHECK(has(trouble(""), "empty"));
    CHECK(has(trouble(R"({"have": [{"ingredient": "spinach", "plenti": true}]})"), "unknown key \"plenti\""));
    CHECK(has(trouble(R"({"have": [{"ingredient": "spinach", "amount": "4 g", "plenty": true}]})"), "both"));
    CHECK(has(trouble(R"({"have": "spinach"})"), "list"));
    CHECK(has(trouble(R"({"not": ["spnch"], "have": []})"), "unknown ingredient"));
}

TEST_CASE("amounts without a weight mean that it is there") {
    for (const auto* text :
         {"some spinach", "spinach, some", "a handful of spinach", "lots of spinach", "half a bag of spinach", "spinach: yes",
          "2 trays spinach", "a crate of spinach", "spinach (plenty)", "- a few spinach", "spinach, in the freezer"}) {
        CAPTURE(text);
        const Inventory one = good(text);
        REQUIRE(one.items.size() == 1);
        CHECK(one.items.front().ingredient == "spinach");
    }
    const auto only = [](const std::string& text, const std::string& id) {
        CAPTURE(text);
        const Inventory one = good(text);
        REQUIRE(one.items.size() == 1);
        CHECK(one.items.front().ingredient == id);
    };
    only("curry leaves 1 bunch", "curry-leaf");
    only("a jar of green olives", "green-olive");
    only("1 bottle soy sauce", "soy-sauce");
    CHECK(good("a jar of olives").items.size() == 2);  // green or black
    only("a couple of leeks", "leek");
    CHECK(good("a jar of green olives").items.front().grams == 200.0);  // what one usually holds, and told
    CHECK(good("spinach 400 g, chard 1 bunch and parsley").items.size() == 3);
    CHECK(good("Garden:\nspinach 400 g\nPantry:\nsalt").items.size() == 2);
    CHECK(good("ran out of spinach\nchard: gone\nno more sorrel").missing.size() == 3);
    CHECK(good("Pantry: oats, salt\nIn the garden: chard").items.size() == 3);
    CHECK(good("spinach (500 g)").items.front().grams == 500.0);
    CHECK(good("no spinach left").missing == std::vector<std::string>{"spinach"});
    CHECK(good("no spinach, no chard, sorrel").missing.size() == 3);
    CHECK(good("no spinach (frost), chard plenty").missing == std::vector<std::string>{"spinach"});
    CHECK(good("spinach 300 g\nthat's all").complete == true);
}

TEST_CASE("a word is first looked for among the lines of the formula") {
    Formula made;
    for (const auto* id : {"pork-shoulder", "cilantro", "serrano", "jalapeno", "red-onion", "garlic"}) {
        Line one;
        one.ingredient = id;
        one.grams = {50, 50, 50};
        made.lines.push_back(one);
    }
    const auto with = [&](const std::string& text) {
        auto read = read_inventory(text, "i.txt", knowledge(), &made);
        if (!read) FAIL(read.error().where + " " + read.error().message);
        return *read;
    };
    CHECK(with("no coriander").missing == std::vector<std::string>{"cilantro"});
    CHECK(with("coriander 60 g").items.front().ingredient == "cilantro");
    CHECK(with("no chile").missing == std::vector<std::string>{"serrano", "jalapeno"});
    CHECK(with("chiles: plenty").items.size() == 2);
    CHECK(with("no alliums").missing == std::vector<std::string>{"red-onion", "garlic"});
    CHECK(with("coriander seed 20 g").items.front().ingredient == "coriander-seed");
    CHECK_FALSE(with("no coriander").notes.empty());
    CHECK(with("no onion").missing == std::vector<std::string>{"red-onion"});
    CHECK(with("no onion\nred onion 2").missing.empty());  // what is said of the food itself goes first
    CHECK(with("no chile\nserrano 20 g").missing == std::vector<std::string>{"jalapeno"});
    // Without such a line a kind takes in all of it, and a food by its own name says more.
    const Inventory nuts = with("no nuts\nwalnuts 100 g");
    CHECK(nuts.missing.size() > 8);
    CHECK(std::find(nuts.missing.begin(), nuts.missing.end(), "walnut") == nuts.missing.end());
}

TEST_CASE("each line of a list tells how it was understood") {
    const Inventory list = good("spinach 400 g\nparsley, some\nno sorrel\nnothing else");
    REQUIRE(list.read.size() == 4);
    CHECK(has(in_full(list.read[0].as), "spinach, 400 g"));
    CHECK(has(in_full(list.read[1].as), "parsley, no weight"));
    CHECK(has(in_full(list.read[2].as), "none"));
}

TEST_CASE("a list is told from a formula by what it says") {
    for (const auto* text : {"spinach 400 g\nno chard", "nothing else", "chard plenty\nspinach 400 g", R"({"have": []})"})
        CHECK(looks_like_stock(text, "x", knowledge()));
    for (const auto* text :
         {"Green sausage\n\n1 kg pork shoulder\n18 g salt", R"({"title": "x", "lines": []})", "No garlic sausage\n\n1 kg pork"})
        CHECK_FALSE(looks_like_stock(text, "x", knowledge()));
}

TEST_CASE("no name is offered that is another food") {
    for (const auto* text : {"butter beans 400 g", "vegan 3 g", "gluten 5 g"}) {
        const auto list = read_inventory(text, "i.txt", knowledge());
        if (list) continue;
        for (const auto& hint : list.error().hints) {
            CAPTURE(text, hint);
            CHECK(hint != "peanut butter");
            CHECK(hint != "table salt");
        }
    }
}

}  // namespace inventory_test
