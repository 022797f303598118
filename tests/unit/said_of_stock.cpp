// What a list says of a food in passing: allergens stay with it, and what is not understood keeps it out.
#include <algorithm>

#include "formula/amounts/written_preparation.hpp"
#include "formula/food/remark.hpp"
#include "formula/food/told_allergens.hpp"
#include "formula/line/line_text.hpp"
#include "formula/reading.hpp"
#include "knowledge/index/knowledge.hpp"
#include "knowledge/records/word_list.hpp"
#include "support/catch.hpp"
#include "support/inventory.hpp"
#include "support/knowledge.hpp"
#include "support/line_rows.hpp"

using namespace standin;

namespace said_of_stock_test {

Result<Inventory> listed(const std::string& line) {
    return read_inventory("thyme 2 bunches\nlimes 4\nno star anise\n" + line + "\n", "f", knowledge());
}

bool holds(const InventoryItem& one, const std::string& allergen) {
    return std::any_of(one.declared.begin(), one.declared.end(), [&](const Declared& told) { return told.allergen == allergen; });
}

bool right(const Result<Inventory>& read, const std::string& food, const std::string& must) {
    const InventoryItem* one = read ? item(*read, food) : nullptr;
    if (must == "unused") return !one;
    if (!one) return false;
    return must == "used" ? one->declared.empty() : holds(*one, must.substr(must.find(' ') + 1));
}

TEST_CASE("what a list says of a food comes to what it must") {
    const auto rows = line_rows("unit/list_wordings.csv");
    REQUIRE(rows.size() >= 50);
    for (const auto& row : rows) {
        REQUIRE(row.size() == 3);
        const auto read = listed(row[0]);
        INFO(row[0] << " must be " << row[2] << (read ? "" : ": " + read.error().message));
        CHECK(right(read, row[1], row[2]));
    }
}

TEST_CASE("a remark of a list that is not understood is told before everything else") {
    const auto read = listed("kale 300 g, leathery at the edges");
    REQUIRE(read);
    REQUIRE(read->aside == std::vector<std::string>{"kale 300 g, leathery at the edges"});
    const auto told = std::find_if(read->notes.begin(), read->notes.end(), [](const Reason& r) { return r.kind == ReasonKind::set_aside; });
    REQUIRE(told != read->notes.end());
    CHECK(told->role == "remark");
    CHECK(in_full(*told).find("\"leathery at the edges\" is not understood") != std::string::npos);
}

TEST_CASE("a list keeps every weight: behind a remark, behind a heading of its own, in a bracket that guesses") {
    const auto grams = [](const std::string& line, const std::string& food) {
        INFO(line);
        const auto read = listed(line);
        if (!read) FAIL(read.error().message);
        const auto* one = item(*read, food);
        REQUIRE(one != nullptr);
        REQUIRE(one->grams.has_value());
        return *one->grams;
    };
    CHECK(grams("walnuts - made in a factory that handles other nuts and sesame 100g", "walnut") == Approx(100));
    CHECK(grams("spinach, about half a carrier bag (say 400 g)", "spinach") == Approx(400));
    CHECK(grams("Cheese board: stilton 120 g, 3yr cheddar 90 g", "cheddar") == Approx(90));
    CHECK(grams("Bergkäse 200 g, 12 Monate gereift", "swiss-cheese") == Approx(200));
    CHECK(grams("two-year-old Gouda, 180 g", "gouda") == Approx(180));
    CHECK(grams("jalapeño 8, 3 habaneros, poblano x4", "jalapeno") > 80);
    CHECK(grams("Chillies: jalapeño 8, poblano x4", "poblano") > 200);
    CHECK(grams("leeks 4, cabbage half a head", "cabbage") > 200);
    CHECK(grams("2 kg pork neck (best before 3 Dec)", "pork-neck") == Approx(2000));
    CHECK(grams("mushrooms: chestnut 250 g, portobello 4", "mushroom-cremini") == Approx(250));
    CHECK(grams("pork: shoulder 1.5 kg, belly 700 g", "pork-shoulder") == Approx(1500));
    CHECK(grams("Garden today - spinach 500 g, rhubarb 4 sticks, black beans 600 g dry", "spinach") == Approx(500));
    CHECK(grams("nootmuskaat 2 stuks", "nutmeg") > 5);
    CHECK(grams("chard (rainbow) 300 g", "chard") == Approx(300));
}

TEST_CASE("what is no food stands beside a list and stops nothing") {
    for (const std::string line : {"1 slow cooker", "1 dehydrator", "2 cast-iron pans", "1 sausage stuffer", "blender"}) {
        INFO(line);
        const auto read = listed(line);
        REQUIRE(read.has_value());
        CHECK(read->aside.empty());
    }
    const auto tomatoes = listed("1 kg tomatoes from the dehydrator");
    CHECK((!tomatoes || !item(*tomatoes, "tomato") || item(*tomatoes, "tomato")->grams));
}

TEST_CASE("a plain remark may be made of every word of its list") {
    for (const auto& word : knowledge().listed(WordList::plain_remark)) {
        INFO(word);
        CHECK(is_plain_remark(word, knowledge()));
    }
    CHECK_FALSE(is_plain_remark("warm", knowledge()));
    CHECK_FALSE(is_plain_remark("out of the fridge", knowledge()));
    CHECK_FALSE(is_plain_remark("from the floor", knowledge()));
}

TEST_CASE("an allergen that a remark names is written so that it reads back") {
    for (const auto& allergen : knowledge().records().allergens) {
        std::string name = allergen.id;
        std::replace(name.begin(), name.end(), '-', ' ');
        const auto told = told_by_remark("packet warns of " + name, {knowledge().ingredient("parsley")}, knowledge());
        INFO(allergen.id);
        if (told.empty()) continue;
        const auto read = read_line("75 g parsley (" + told.front().words + ")", Origin("", {1, 1}), knowledge());
        REQUIRE(read);
        for (const auto& one : told)
            CHECK(std::find(read->line.declared.begin(), read->line.declared.end(), one) != read->line.declared.end());
    }
}

}  // namespace said_of_stock_test
