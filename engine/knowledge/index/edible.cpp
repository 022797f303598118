#include "knowledge/index/edible.hpp"

namespace standin {

double edible_share(const Ingredient& ingredient) {
    constexpr double percent = 100;
    const bool shelled = ingredient.roles.front() == Role::nut;
    return shelled || !ingredient.edible ? 1 : ingredient.edible->band.mid / percent;
}

bool weighed_as_used(const Ingredient& ingredient) {
    const bool leaf = ingredient.tissue == Tissue::thin_leaf || ingredient.tissue == Tissue::thick_leaf;
    return ingredient.roles.front() == Role::herb && leaf;
}

}  // namespace standin
