#include "substitute/usual.hpp"

#include <algorithm>
#include <string>

#include "knowledge/index/kinds.hpp"
#include "knowledge/records/tissue.hpp"

namespace standin {
namespace {

bool is_dry(const Ingredient& food) { return food.tissue == Tissue::dry; }

// Of a pod or a powder as much as makes a kilo mild; of flesh with little heat a handful.
double hot(const Ingredient& food, const Knowledge& knowledge) {
    constexpr double grams_a_kilo = 1000;
    const double most = knowledge.parameter(is_dry(food) ? "stand_ins.usual.heat-dry" : "stand_ins.usual.heat").mid;
    const double heat = food.capsaicinoids ? food.capsaicinoids->band.mid : 0;  // mg/kg
    return heat > 0 ? std::min(most, knowledge.parameter("stand_ins.usual.heat-dose").mid * grams_a_kilo / heat) : most;
}

// Salt itself, and what is salted by as much of the salt as it may bring.
double salty(const Ingredient& food, const Knowledge& knowledge) {
    constexpr double percent = 100;
    const double salt = food.composition.salt.mid / percent;
    const double whole = knowledge.parameter("stand_ins.usual.salt").mid;
    if (salt > 0.5) return whole;
    return salt > 0 ? knowledge.parameter("stand_ins.usual.salt-beside").mid / salt : whole;
}

double by_role(const Ingredient& food, const Knowledge& knowledge) {
    const auto usual = [&](const std::string& of) { return knowledge.parameter("stand_ins.usual." + of).mid; };
    const bool strong = is_dry(food) || food.tissue == Tissue::seed;
    switch (food.roles.front()) {
        case Role::lean:
            return usual("lean");
        case Role::fat:
            return usual(food.tissue == Tissue::liquid ? "oil" : "fat");
        case Role::green:
            return usual(strong ? "dry-leaf" : "green");
        case Role::herb:
            return usual(strong ? "dry-leaf" : "herb");
        case Role::allium:
            return usual(is_dry(food) ? "dry-leaf" : "allium");
        case Role::heat:
            return hot(food, knowledge);
        case Role::acid:
            return usual(food.tissue == Tissue::liquid ? "acid" : is_dry(food) ? "acid-dry" : "sour-fruit");
        case Role::spice:
            return usual("spice");
        case Role::nut:
            return usual("nut");
        case Role::salt:
            return salty(food, knowledge);
        case Role::sweet:
            return usual("sweet");
        case Role::binder:
            return usual(is_dry(food) ? "binder" : "wet-binder");
        default:
            return usual("liquid");
    }
}

}  // namespace

double usual_grams(const Ingredient& food, const Knowledge& knowledge) {
    const double grams = by_role(food, knowledge);
    return food.most_g_per_kg ? std::min(grams, knowledge.parameter("stand_ins.usual.of-the-most").mid * food.most_g_per_kg->band.mid)
                              : grams;
}

}  // namespace standin
