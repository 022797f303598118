// The substitution lists of extension services, among the first that `swaps` proposes for a kilo of sausage, and at their dose.
#include <algorithm>

#include "published/proposed.hpp"
#include "published/rows.hpp"
#include "support/catch.hpp"

using namespace standin;

namespace extension_first_test {

constexpr std::size_t from_column = 7, to_column = 8, word_columns = 9;
constexpr std::size_t first = 12;
constexpr double factor = 1.5;  // how far a dose may lie from the published one

struct Met {
    bool proposed = false, shown = false, dosed = false;
};

// Of several foods all must come in together, as stand-in and partner; seasoning beside two of three is the cook's.
Met met(const PublishedRow& row) {
    const Ingredient& food = *knowledge().ingredient(row.words[from_column]);
    const double grams = sausage_grams(food);
    const auto foods = foods_of(row.words[to_column]);
    Met met;
    std::vector<std::string> seen;
    for (const auto& s : proposed(food.id, grams)) {
        if (std::find(seen.begin(), seen.end(), s.ingredient) == seen.end()) seen.push_back(s.ingredient);
        std::size_t there = 0, right = 0;
        for (std::size_t f = 0; f < foods.size(); ++f) {
            const bool partner = s.partner && s.partner->ingredient == foods[f];
            if (s.ingredient != foods[f] && !partner) continue;
            const double weighed = (partner ? s.partner->grams : s.grams) / (row.values[f] * (grams - s.line_left));
            ++there;
            right += weighed <= factor && weighed >= 1 / factor;
        }
        if (there < std::min<std::size_t>(foods.size(), 2)) continue;
        met.proposed = true;
        met.shown = met.shown || seen.size() <= first;
        met.dosed = met.dosed || right == there;
    }
    return met;
}

TEST_CASE("extension lists: proposed, among the first, and at their dose", "[long]") {
    double rows = 0, is_proposed = 0, shown = 0, dosed = 0;
    std::string misses;
    for (const auto& row : published_rows("extension_substitutions.csv", word_columns)) {
        CAPTURE(row.words[from_column], row.words[to_column]);
        const Met m = met(row);
        ++rows;
        is_proposed += m.proposed;
        shown += m.shown;
        dosed += m.dosed;
        if (!m.shown || !m.dosed)
            misses +=
                "\n  " + row.words[from_column] + " -> " + row.words[to_column] +
                (!m.proposed ? ": not proposed" : std::string(m.shown ? "" : ": not among the first") + (m.dosed ? "" : ": another dose"));
    }
    WARN("extension lists: of " << rows << " rows " << is_proposed << " proposed, " << shown << " among the first " << first << ", "
                                << dosed << " at their dose" << misses);
    CHECK(is_proposed >= 0.98 * rows);
    // Nine of ten is the aim for both; what is reached is held here. The dose without a most in a kilo is held in extension.cpp.
    CHECK(shown >= 0.92 * rows);
    CHECK(dosed >= 0.88 * rows);
}

}  // namespace extension_first_test
