#include "formula/formats/inventory.hpp"

#include "formula/formats/reading.hpp"
#include "support/catch.hpp"
#include "support/knowledge.hpp"

using namespace standin;

namespace {

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

}  // namespace

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
    CHECK(has(trouble("spinch 400 g"), "i.txt:1:1 unknown ingredient"));
    CHECK(has(trouble("no spinch"), "i.txt:1:4 unknown ingredient"));
    CHECK(has(trouble("spinach 400 g\nno spinach"), "on hand and not on hand"));
    CHECK(has(trouble("nothing else\neverything else"), "expected one of them"));
    CHECK(has(trouble("spinach 2 % of meat"), "no amount on hand"));
    CHECK(has(trouble("spinach 400 g, blanched"), "as bought"));
    CHECK(has(trouble(""), "empty"));
    CHECK(has(trouble(R"({"have": [{"ingredient": "spinach", "plenti": true}]})"), "unknown key \"plenti\""));
    CHECK(has(trouble(R"({"have": [{"ingredient": "spinach", "amount": "4 g", "plenty": true}]})"), "both"));
    CHECK(has(trouble(R"({"have": "spinach"})"), "list"));
    CHECK(has(trouble(R"({"not": ["spinch"], "have": []})"), "unknown ingredient"));
}
