#include "knowledge/edible.hpp"

namespace standin {

double edible_share(const Ingredient& ingredient) {
    constexpr double percent = 100;
    const bool shelled = ingredient.roles.front() == Role::nut;
    return shelled || !ingredient.edible ? 1 : ingredient.edible->band.mid / percent;
}

}  // namespace standin
