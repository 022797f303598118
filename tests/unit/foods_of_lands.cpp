// Foods of many lands by the names that makers there write, in a line of a formula and in a list; and what only sounds like a danger.
#include <algorithm>

#include "formula/line/line_text.hpp"
#include "formula/reading.hpp"
#include "standin/engine.hpp"
#include "support/catch.hpp"
#include "support/knowledge.hpp"
#include "support/line_rows.hpp"

using namespace standin;

namespace foods_of_lands_test {

bool on_hand(const std::string& line, const std::string& food) {
    const auto list = read_inventory("thyme 2 bunches\nkale 300 g\n" + line + "\n", "f", knowledge());
    return list && std::any_of(list->items.begin(), list->items.end(), [&](const auto& item) { return item.ingredient == food; });
}

TEST_CASE("foods of many lands are read by their own names, in a formula and in a list") {
    const auto rows = line_rows("unit/foods_of_lands.csv");
    REQUIRE(rows.size() >= 70);
    for (const auto& row : rows) {
        REQUIRE(row.size() == 2);
        CAPTURE(row[0]);
        const auto read = read_line("20 g " + row[0], Origin("", {1, 1}), knowledge());
        REQUIRE(read);
        CHECK(read->line.ingredient == row[1]);
        CHECK(on_hand(row[0], row[1]));
        CHECK(on_hand(row[0] + " 200 g", row[1]));
    }
}

TEST_CASE("each of them has stand-ins, and a note of a few words with each") {
    for (const auto& row : line_rows("unit/foods_of_lands.csv")) {
        CAPTURE(row[1]);
        const auto& swaps = knowledge().records().swaps;
        const auto count = std::count_if(swaps.begin(), swaps.end(), [&](const auto& swap) { return swap.from == row[1]; });
        CHECK(count >= 2);
    }
}

TEST_CASE("spiced butter is no curing salt, and nitre stays one") {
    const auto read = read_line("80 g niter kibbeh", Origin("", {1, 1}), knowledge());
    REQUIRE(read);
    const Ingredient& food = *knowledge().ingredient(read->line.ingredient);
    CHECK(food.allergens == std::vector<std::string>{"milk"});
    for (const char* line : {"2 g niter", "2 g nitre", "2 g saltpetre", "2 g nitter", "80 g butter with niter", "5 g saltpeter kibbeh"}) {
        CAPTURE(line);
        CHECK_FALSE(read_line(line, Origin("", {1, 1}), knowledge()));
        CHECK_FALSE(read_inventory("thyme 2 bunches\nkale 300 g\n" + std::string(line) + "\n", "f", knowledge()));
    }
}

TEST_CASE("a sentence that names a danger is not said of food that only sounds like it") {
    const auto why = [](const char* line) {
        const auto read = read_line(line, Origin("", {1, 1}), knowledge());
        return read ? std::string() : read.error().message;
    };
    CHECK(why("20 g cured pork belly").find("curing salt") == std::string::npos);
    CHECK(why("20 g horse gram").find("another animal") == std::string::npos);
    CHECK(why("20 g snake fruit").find("another animal") == std::string::npos);
    CHECK(why("2 g ascorbic acid").find("slip of the pen") == std::string::npos);
    CHECK(why("2 g tsp cure").find("curing salt") != std::string::npos);
}

}  // namespace foods_of_lands_test
