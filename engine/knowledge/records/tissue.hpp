// What a food is made of, as far as it sets how foods replace each other.
#pragma once

#include "knowledge/records/records.hpp"
#include "knowledge/records/vocabulary.hpp"

namespace standin {

inline bool is_leaf(Tissue tissue) { return tissue == Tissue::thin_leaf || tissue == Tissue::thick_leaf; }

/// Whether it is a vegetable that gives a paste its body.
inline bool is_vegetable(Tissue tissue) {
    switch (tissue) {
        case Tissue::thin_leaf:
        case Tissue::thick_leaf:
        case Tissue::chile_flesh:
        case Tissue::fruit:
        case Tissue::bulb:
        case Tissue::root:
        case Tissue::stalk:
        case Tissue::fungus:
            return true;
        default:
            return false;
    }
}

/// Whether it gives a paste its body as a vegetable does: peas and beans in their green as well.
inline bool is_vegetable(const Ingredient& food) {
    return is_vegetable(food.tissue) || (food.tissue == Tissue::seed && food.family == "vegetables");
}

/// Flour, crumbs, starch or gum: what is stirred in dry and binds by the water it takes up.
inline bool is_dry_binder(const Ingredient& food) { return food.roles.front() == Role::binder && food.tissue == Tissue::dry; }

/// Oil: what pours and is all fat; cream pours and is not.
inline bool is_oil(const Ingredient& food) {
    constexpr double all_fat = 80;  // g in 100 g; judgement
    return food.roles.front() == Role::fat && food.tissue == Tissue::liquid && food.composition.fat.mid >= all_fat;
}

/// Of a bird: its meat, its skin or its fat.
inline bool is_bird(const Ingredient& food) {
    return food.meat &&
           (food.meat->species == Species::chicken || food.meat->species == Species::turkey || food.meat->species == Species::duck);
}

}  // namespace standin
