#include "substitute/standing.hpp"

#include <cmath>
#include <string>

#include "knowledge/kinds.hpp"

namespace standin {

double standing_of(const Candidate& candidate, const Line& line, double felt, double new_allergens, const Knowledge& knowledge) {
    const auto constant = [&](std::string_view id) { return knowledge.parameter("stand_ins.order." + std::string(id)).mid; };
    const Ingredient &from = *knowledge.ingredient(line.ingredient), &to = *knowledge.ingredient(candidate.food.ingredient);
    const auto solid = [](const Ingredient& food) { return food.tissue == Tissue::fat_tissue || food.tissue == Tissue::meat; };
    const auto harder_to_get = [&](std::string_view kind) { return belongs(to, kind, knowledge) && !belongs(from, kind, knowledge); };
    double back = std::log1p(felt) + constant("closeness") * (1 - candidate.closeness) + constant("allergen") * new_allergens +
                  constant("share") * (1 - candidate.share);
    if (candidate.trade) back -= constant("trade");
    if (candidate.role == Role::fat && solid(from) && !solid(to)) back += constant("melted");
    if (harder_to_get("gathered")) back += constant("gathered");
    else if (harder_to_get("seldom-sold")) back += constant("seldom");
    return back;
}

}  // namespace standin
