// Foods and words of more kitchens, in lines of a formula and of a list.
#include <algorithm>
#include <sstream>

#include "core/contains.hpp"
#include "formula/line/line_text.hpp"
#include "formula/reading.hpp"
#include "standin/engine.hpp"
#include "support/catch.hpp"
#include "support/knowledge.hpp"
#include "support/line_rows.hpp"

using namespace standin;

namespace words_of_kitchens_test {

struct Must {
    std::string food;
    double low = 0, high = 0;
};

Must must_of(const std::string& text) {
    Must must;
    std::istringstream(text) >> must.food >> must.low >> must.high;
    return must;
}

// In a formula with a kilo of meat.
bool formula_right(const std::string& line, const std::string& text) {
    const auto engine = Engine::open({});
    const auto read = engine->read_formula("Test\n1000 g pork shoulder\n18 g salt\n" + line + "\n", "f");
    if (!read || text == "asked") return !read && text == "asked";
    const auto [food, low, high] = must_of(text);
    const auto& last = read->lines.back();
    return last.ingredient == food && last.grams.mid >= low && last.grams.mid <= high;
}

bool list_right(const std::string& line, const std::string& text) {
    const auto read = read_inventory("thyme 2 bunches\nlimes 4\n" + line + "\n", "f", knowledge());
    if (text.starts_with("missing ")) return read && contains(read->missing, text.substr(8));
    const auto [food, low, high] = must_of(text);
    if (!read || text == "asked") return !read && text == "asked";
    const auto wanted = food;
    const auto at = std::find_if(read->items.begin(), read->items.end(), [&](const auto& item) { return item.ingredient == wanted; });
    if (at == read->items.end()) return false;
    return high == 0 ? !at->grams : at->grams && *at->grams >= low && *at->grams <= high;
}

TEST_CASE("foods and words of more kitchens are read as a cook means them") {
    const auto rows = line_rows("unit/words_of_kitchens.csv");
    REQUIRE(rows.size() >= 35);
    for (const auto& row : rows) {
        REQUIRE(row.size() == 3);
        INFO(row[0] << ": " << row[1] << " must be " << row[2]);
        CHECK((row[0] == "list" ? list_right(row[1], row[2]) : formula_right(row[1], row[2])));
    }
}

}  // namespace words_of_kitchens_test
