// The swaps that makers take without asking, among the first that are proposed.
#include <algorithm>
#include <map>

#include "adapt/swaps.hpp"
#include "published/rows.hpp"
#include "support/catch.hpp"
#include "support/kitchen.hpp"

using namespace standin;

namespace {

constexpr std::size_t first = 12;  // what the command shows unless asked for more
constexpr double least = 0.85;     // share of the rows among them

// Columns of the table; the grams come last.
constexpr std::size_t role_column = 1, line_column = 2, stand_in_column = 3, word_columns = 4;

// A plain kilo of pork sausage with the line in it; one of its own lines takes the weight of the row.
Formula batch_with(const std::string& food, double grams, std::size_t& place) {
    std::vector<Line> lines{line("pork-shoulder", 750), line("pork-backfat", 250), line("table-salt", 16),
                            line("water", 40),          line("black-pepper", 2),   line("garlic", 5)};
    const Role role = knowledge().ingredient(food)->roles.front();
    if (role == Role::lean) lines.front() = line(food, grams);
    else if (role == Role::fat && grams >= 250) lines[1] = line(food, grams);
    auto found = std::find_if(lines.begin(), lines.end(), [&](const Line& l) { return l.ingredient == food; });
    if (found == lines.end()) found = lines.insert(lines.end(), line(food, grams));
    else found->grams = exactly(grams);
    place = static_cast<std::size_t>(found - lines.begin());
    return formula(std::move(lines));
}

std::vector<std::string> proposed(const std::string& food, double grams) {
    static std::map<std::string, std::vector<std::string>> known;
    auto [held, fresh] = known.try_emplace(food + std::to_string(grams));
    if (!fresh) return held->second;
    std::size_t place = 0;
    const Formula batch = batch_with(food, grams, place);
    const Options options;
    static const Evaluator evaluator(knowledge(), 16, 1);
    const Context context{evaluator, options};
    const auto checked = CheckedFormula::of(batch, knowledge());
    REQUIRE(checked);
    const auto answer = swaps_for_line(*checked, std::to_string(place + 1), 1000, context);
    REQUIRE(answer);
    for (const auto& s : answer->stand_ins)  // a food prepared in two ways is one to look for
        if (std::find(held->second.begin(), held->second.end(), s.ingredient) == held->second.end()) held->second.push_back(s.ingredient);
    return held->second;
}

// Where a list that names no food twice has it, from 1; 0: nowhere.
std::size_t rank_of(const std::vector<std::string>& all, const std::string& food) {
    const auto found = std::find(all.begin(), all.end(), food);
    return found == all.end() ? 0 : static_cast<std::size_t>(found - all.begin()) + 1;
}

}  // namespace

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
