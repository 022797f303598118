#include "models/fat.hpp"

#include <algorithm>

namespace standin {

bool fat_is_free(const Ingredient& ingredient, const Knowledge& knowledge) {
    const bool for_fat = std::find(ingredient.roles.begin(), ingredient.roles.end(), Role::fat) != ingredient.roles.end();
    return for_fat && !ingredient.meat && ingredient.composition.fat.mid >= knowledge.parameter("fat.free.from").mid;
}

std::string softening_of(const Ingredient& ingredient, const Knowledge& knowledge) {
    const std::string start = "fat.softens.";
    if (knowledge.has_parameter(start + ingredient.id)) return start + ingredient.id;
    return start + (ingredient.meat ? std::string(spelling(ingredient.meat->species)) : "oil");
}

}  // namespace standin
