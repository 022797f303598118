#include "mend/bring.hpp"

#include <algorithm>

#include "adapt/variants/variant.hpp"
#include "core/band.hpp"
#include "core/contains.hpp"
#include "evaluate/predict.hpp"

namespace standin {
namespace {

constexpr std::string_view water = "water";

template <class T>
bool fits(const std::vector<T>& words, T word) {
    return words.empty() || std::find(words.begin(), words.end(), word) != words.end();
}

void add_to(Formula& mass, const Line& food, double grams) {
    const auto same = std::find_if(mass.lines.begin(), mass.lines.end(), [&](const Line& line) {
        return line.ingredient == food.ingredient && line.prepared == food.prepared && line.weighed_prepared == food.weighed_prepared;
    });
    if (same == mass.lines.end()) {
        Line line = food;
        line.grams = exactly(grams);
        line.count.reset();
        line.written.clear();
        line.notes.clear();
        line.keep = false;
        mass.lines.push_back(std::move(line));
        return;
    }
    for (const auto& told : food.declared)
        if (!contains(same->declared, told)) same->declared.push_back(told);
    if (same->count && same->grams.mid > 0) *same->count *= 1 + grams / same->grams.mid;
    same->grams = {same->grams.low + grams, same->grams.mid + grams, same->grams.high + grams};
    same->written.clear();
}

}  // namespace

const BringIn* way_in(const Ingredient& food, const Mending& mending, bool wet) {
    for (const auto& way : mending.bring)
        if ((wet || !way.wet) && fits(way.roles, food.roles.front()) && fits(way.tissues, food.tissue)) return &way;
    return nullptr;
}

Ingoing ingoing(const Line& food, double grams, bool fresh, const Mending& mending, const Knowledge& knowledge, bool wet) {
    const Ingredient& ingredient = *knowledge.ingredient(food.ingredient);
    Ingoing in{ingredient.id, ingredient.names.front(), {}, grams, 0, {}};
    in.fresh = fresh;
    for (const auto& step : food.prepared) in.prepared.push_back(describe(step, knowledge));
    in.weighed_raw = !ingredient.meat && !food.prepared.empty() && !food.weighed_prepared;
    if (const BringIn* way = way_in(ingredient, mending, wet)) {
        in.how = way->how;
        in.water_g = kitchen_grams(way->water * grams, false);
    }
    return in;
}

void put_in(Formula& mass, const Line& food, const Ingoing& what) {
    add_to(mass, food, what.grams);
    if (!(what.water_g > 0)) return;
    Line wet;
    wet.ingredient = water;
    add_to(mass, wet, what.water_g);
}

}  // namespace standin
