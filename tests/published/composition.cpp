// Ingredients against the rows of the food table they name as their source.
#include <algorithm>
#include <cmath>
#include <map>

#include "published/rows.hpp"
#include "support/catch.hpp"
#include "support/knowledge.hpp"

using namespace standin;

namespace composition_test {

constexpr std::string_view table = "usda-sr28#";
constexpr double printed = 0.006;  // the table has two decimals

const std::map<std::string, std::vector<double>>& sr28() {
    static const auto all = [] {
        std::map<std::string, std::vector<double>> rows;
        for (const auto& row : published_rows("sr28.csv", 2)) rows.emplace(row.words[0], row.values);
        return rows;
    }();
    return all;
}

// In the order of the columns of sr28.csv; absent is not a number.
std::vector<double> values_of(const Composition& c) {
    const auto maybe = [](const std::optional<Band>& band) { return band ? band->mid : std::nan(""); };
    return {c.water.mid,     c.protein.mid, c.fat.mid,          c.carbohydrate.mid,   maybe(c.fibre),
            maybe(c.sugars), c.ash.mid,     maybe(c.sodium_mg), maybe(c.potassium_mg)};
}

bool same(double a, double b) { return std::isnan(a) ? std::isnan(b) : std::abs(a - b) <= printed; }

TEST_CASE("every ingredient taken from USDA SR28 equals its row") {
    constexpr const char* columns[] = {"water", "protein", "fat", "carbohydrate", "fibre", "sugars", "ash", "sodium", "potassium"};
    std::size_t equal = 0, excepted = 0;
    std::string exceptions;
    for (const auto& ingredient : knowledge().records().ingredients) {
        const Composition& c = ingredient.composition;
        if (c.source.substr(0, table.size()) != table) continue;
        const std::string number = c.source.substr(table.size());
        CAPTURE(ingredient.id, number);
        const auto row = sr28().find(number);
        REQUIRE(row != sr28().end());
        const auto mine = values_of(c);
        REQUIRE(row->second.size() == mine.size());
        std::string differs;
        for (std::size_t v = 0; v < mine.size(); ++v)
            if (!same(mine[v], row->second[v]))
                differs += std::string(" ") + columns[v] + " " + std::to_string(mine[v]) + " for " + std::to_string(row->second[v]);
        equal += differs.empty();
        if (differs.empty()) continue;
        // A record may differ only if it says why.
        ++excepted;
        const std::string why = c.exception.empty() ? ingredient.note : c.exception;
        exceptions += "\n  " + ingredient.id + ":" + differs + " (" + why + ")";
        CAPTURE(differs);
        CHECK_FALSE(why.empty());
    }
    WARN("SR28: " << equal << " ingredients equal their row in all nine columns, " << excepted << " differ" << exceptions);
    CHECK(equal > 400);
}

TEST_CASE("solid fat and water for cream: fat for fat, and the water that is then lacking") {
    std::size_t pairs = 0;
    for (const auto& swap : knowledge().records().swaps) {
        if (!swap.ratio || swap.ratio->source != "sr28-fat-for-fat") continue;
        CAPTURE(swap.from, swap.to);
        const Composition &line = knowledge().ingredient(swap.from)->composition, &fat = knowledge().ingredient(swap.to)->composition;
        const double grams = line.fat.mid / fat.fat.mid;
        CHECK(swap.ratio->band.mid == Approx(grams).margin(0.001));
        CHECK(swap.partner->ratio.band.mid == Approx((line.water.mid - grams * fat.water.mid) / 100).margin(0.001));
        ++pairs;
    }
    CHECK(pairs == 25);
}

TEST_CASE("what stands in for a food that the table lacks is said so") {
    // Two ingredients from one row that are not the same food: all but one must name the row's food as their stand-in or explain it.
    std::map<std::string, std::vector<const Ingredient*>> by_row;
    for (const auto& i : knowledge().records().ingredients)
        if (i.composition.source.substr(0, table.size()) == table) by_row[i.composition.source].push_back(&i);
    std::size_t shared = 0, unsaid = 0;
    std::string names;
    for (const auto& [row, foods] : by_row) {
        if (foods.size() < 2) continue;
        ++shared;
        const auto plain = std::count_if(foods.begin(), foods.end(),
                                         [](const Ingredient* i) { return i->composition.stand_in.empty() && i->note.empty(); });
        if (plain > 1) {
            ++unsaid;
            for (const auto* i : foods) names += " " + i->id;
            names += ";";
        }
    }
    WARN(shared << " rows serve several ingredients; " << unsaid << " of them without a word on it:" << names);
    CHECK(unsaid <= shared);
}

}  // namespace composition_test
