// What a list says of a food in passing: allergens stay with it, and what is not understood keeps it out.
#include <algorithm>

#include "formula/formats/reading.hpp"
#include "formula/line/line_text.hpp"
#include "formula/remark/remark.hpp"
#include "formula/remark/told_allergens.hpp"
#include "formula/write/writing.hpp"
#include "knowledge/knowledge.hpp"
#include "knowledge/word_list.hpp"
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
