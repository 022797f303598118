#include "formula/words/changes_nothing.hpp"

#include <algorithm>

#include "knowledge/index/effects.hpp"

namespace standin {

bool changes_nothing(const Prepared& prepared, const Ingredient& ingredient, const Knowledge& knowledge) {
    constexpr double unchanged = 0.97;  // yields from here on count as no change of mass
    const Preparation* preparation = knowledge.preparation(prepared.preparation);
    const PreparationEffect* effect = preparation ? effect_on(*preparation, ingredient.tissue) : nullptr;
    if (!effect || preparation->denatures) return false;
    if (effect->water_left) return false;
    return std::all_of(effect->yield.begin(), effect->yield.end(),
                       [](const Point& point) { return point.value.mid >= unchanged && point.value.mid <= 1 / unchanged; });
}

}  // namespace standin
