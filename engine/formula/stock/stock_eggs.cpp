#include "formula/stock/stock_eggs.hpp"

#include <algorithm>
#include <cmath>
#include <vector>

#include "core/has_food.hpp"
#include "core/words.hpp"
#include "knowledge/index/edible.hpp"
#include "knowledge/index/kinds.hpp"
#include "standin/number_text.hpp"

namespace standin {
namespace {

// Of a large one, which all of them are weighed by.
double piece_of(const Ingredient& food) {
    for (const auto& measure : food.measures)
        if (measure.measure == "piece" && (measure.note.empty() || measure.note == "large")) return measure.grams.mid;
    return 0;
}

std::vector<const Ingredient*> parts_of_an_egg(const Knowledge& knowledge) {
    std::vector<const Ingredient*> parts;
    for (const auto& food : knowledge.records().ingredients)
        if (belongs(food, "egg-part", knowledge)) parts.push_back(&food);
    return parts;
}

Reason parted(const Ingredient& egg, const InventoryItem& part, const std::vector<std::string>& left_over, const Knowledge& knowledge) {
    Reason told = reason_about(ReasonKind::taken_as_amount, egg.names.front());
    told.note = part.grams ? trimmed_text(std::round(*part.grams), 0) + " g " : std::string();
    told.note += knowledge.ingredient(part.ingredient)->names.front();
    if (!left_over.empty()) told.note += "; part them, the " + listed(left_over) + " is left over";
    return told;
}

}  // namespace

void part_eggs(Inventory& list, const StockNamer& namer, const Knowledge& knowledge) {
    const auto parts = parts_of_an_egg(knowledge);
    const auto whole = std::find_if(list.items.begin(), list.items.end(), [&](const InventoryItem& item) {
        const Ingredient& food = *knowledge.ingredient(item.ingredient);
        return food.tissue == Tissue::egg && food.already.empty() && !belongs(food, "egg-part", knowledge) && piece_of(food) > 0;
    });
    if (whole == list.items.end() || namer.in_formula(whole->ingredient)) return;
    const Ingredient& egg = *knowledge.ingredient(whole->ingredient);
    std::vector<InventoryItem> given;
    std::vector<std::string> left_over;
    for (const Ingredient* part : parts) {
        const double share = edible_share(egg) * piece_of(*part) / piece_of(egg);
        if (!namer.in_formula(part->id)) left_over.push_back(part->names.front());
        else if (!has_food(list, part->id) && share > 0) {
            InventoryItem item = *whole;
            item.ingredient = part->id;
            if (item.grams) item.grams = *item.grams * share / edible_share(*part);
            if (item.at_most) item.at_most = *item.at_most * share / edible_share(*part);
            given.push_back(std::move(item));
        }
    }
    for (auto& item : given) {
        list.notes.push_back(parted(egg, item, left_over, knowledge));
        std::erase(list.missing, item.ingredient);
        list.items.push_back(std::move(item));
    }
}

}  // namespace standin
