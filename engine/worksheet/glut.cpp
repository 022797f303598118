#include "worksheet/glut.hpp"

#include <algorithm>
#include <cmath>

#include "core/contains.hpp"
#include "knowledge/index/edible.hpp"
#include "knowledge/records/tissue.hpp"
#include "models/composition.hpp"

namespace standin {
namespace {

// What is known of the food itself, else of its family: "cold.keep.food.collard", "cold.keep.family.leaf-greens".
const Parameter* known_of(const char* what, const Ingredient& food, const Knowledge& knowledge) {
    const std::string start = "cold." + std::string(what) + ".";
    const auto& all = knowledge.records().parameters;
    for (const auto& id : {start + "food." + food.id, start + "family." + food.family})
        if (const auto found = std::find_if(all.begin(), all.end(), [&](const Parameter& p) { return p.id == id; }); found != all.end())
            return &*found;
    return nullptr;
}

// Blanched where that is known, leaves wrung out; else as it is.
double yield_of(const Ingredient& food, const Knowledge& knowledge) {
    std::vector<Prepared> steps;
    if (const Parameter* minutes = known_of("blanch", food, knowledge)) {
        steps.push_back({"blanched", minutes->quantity.band.mid});
        if (is_leaf(food.tissue)) steps.push_back({"squeezed", std::nullopt});
    }
    return edible_share(food) * preparation_yield(food, steps, knowledge);
}

// Said to be plenty, not only to be there: the list tells how it read each line.
bool is_plenty(const std::string& name, const Inventory& stock) {
    return std::any_of(stock.read.begin(), stock.read.end(), [&](const StockRead& line) {
        return line.as.kind == ReasonKind::stock_unweighed && line.as.role == "plenty" && contains(line.as.foods, name);
    });
}

}  // namespace

std::vector<KeepForLater> glut_of(const Inventory& stock, const Knowledge& knowledge) {
    constexpr double kilo = 1000, step = 10;  // g
    std::vector<KeepForLater> all;
    for (const auto& item : stock.items) {
        const Ingredient* food = knowledge.ingredient(item.ingredient);
        if (item.grams || !food || !food->already.empty() || !is_plenty(food->names.front(), stock)) continue;
        const Parameter* months = known_of("keep", *food, knowledge);
        if (!months) continue;
        const Band& band = months->quantity.band;
        KeepForLater keep{food->id, food->names.front(), yield_of(*food, knowledge), band, {}, {}, months->quantity.source};
        const double kilo_gives = std::round(kilo * keep.yield / step) * step;
        keep.reason = make_reason(ReasonKind::keeps_frozen,
                                  {{"a kilo gives", {}, kilo_gives, "g"}, {"keeps", {}, band.mid, "months", band.low, band.high}});
        keep.reason.note = months->note;
        keep.says = in_full(keep.reason);
        all.push_back(std::move(keep));
    }
    return all;
}

}  // namespace standin
