// The swaps that makers take without asking, among the first that are proposed.
#include <algorithm>
#include <map>

#include "published/proposed.hpp"
#include "published/rows.hpp"
#include "support/catch.hpp"

using namespace standin;

namespace trade_swaps_test {

constexpr std::size_t first = 12;  // what the command shows unless asked for more
constexpr double least = 0.85;     // share of the rows among them

// Columns of the table; the grams come last.
constexpr std::size_t role_column = 1, line_column = 2, stand_in_column = 3, word_columns = 4;

// Where it stands, from 1; 0: nowhere. The same food with two partners counts as one to look at.
std::size_t rank_of(const std::vector<StandIn>& all, const std::string& food) {
    std::vector<std::string> seen;
    for (const auto& s : all) {
        if (std::find(seen.begin(), seen.end(), s.ingredient) == seen.end()) seen.push_back(s.ingredient);
        if (s.ingredient == food) return seen.size();
    }
    return 0;
}

TEST_CASE("the trade's own swaps stand among the first") {
    struct Count {
        std::size_t rows = 0, shown = 0;
    };
    Count all;
    std::map<std::string, Count> by_role;
    std::string misses;
    for (const auto& row : published_rows("trade_swaps.csv", word_columns)) {
        const std::string &food = row.words[line_column], &wanted = row.words[stand_in_column];
        CAPTURE(food, wanted);
        const std::size_t rank = rank_of(proposed(food, row.values.front()), wanted);
        const bool shown = rank > 0 && rank <= first;
        Count& role = by_role[row.words[role_column]];
        for (Count* count : {&all, &role}) {
            ++count->rows;
            count->shown += shown;
        }
        if (!shown) misses += "\n  " + food + " -> " + wanted + (rank ? ": " + std::to_string(rank) + "." : ": not proposed");
    }
    std::string roles;
    for (const auto& [role, count] : by_role) roles += " " + role + " " + std::to_string(count.shown) + "/" + std::to_string(count.rows);
    WARN("trade swaps: " << all.shown << " of " << all.rows << " among the first " << first << ";" << roles << "\nmissed:" << misses);
    CHECK(static_cast<double>(all.shown) >= least * static_cast<double>(all.rows));
}

}  // namespace trade_swaps_test
