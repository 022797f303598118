#include "adapt/distance/fat_wants.hpp"

#include <algorithm>

#include "adapt/goals/wants.hpp"

namespace standin {
namespace {

constexpr double clearly_fatter = 1.3;  // times the fat; judgement
constexpr double felt = 0.02;           // g/g of fat: one lean fish for another makes nothing richer; judgement

double fat_of(const Line& line, const Context& context) { return context.nominal().unit(line)[Amount::fat]; }

}  // namespace

bool serves_fat_want(const Formula& formula, std::size_t l, const Ingredient& food, const Distance& distance, const Context& context) {
    const Role role = context.knowledge().ingredient(formula.lines[l].ingredient)->roles.front();
    if (role != Role::fat && role != Role::lean) return true;
    const double comes = food.composition.fat.mid / 100, goes = fat_of(formula.lines[l], context);
    const bool less = asks_leaner(distance.goals()), more = asks_richer(distance.goals());
    return (!less || (clearly_fatter * comes < goes && comes + felt < goes)) &&
           (!more || (comes > clearly_fatter * goes && comes > goes + felt));
}

bool has_fatter_line(const Formula& formula, std::size_t l, const Distance& distance, const Context& context) {
    const auto is_meat = [&](const Line& line) { return context.knowledge().ingredient(line.ingredient)->meat.has_value(); };
    if (!is_meat(formula.lines[l]) || !asks_leaner(distance.goals())) return false;
    const double clearly = context.constant("advice.meat.fatter"), fat = fat_of(formula.lines[l], context);
    return std::any_of(formula.lines.begin(), formula.lines.end(),
                       [&](const Line& other) { return !other.keep && is_meat(other) && fat_of(other, context) >= clearly * fat; });
}

bool has_no_fat_of_its_own(const Formula& formula, const Knowledge& knowledge) {
    bool any = false;
    for (const auto& line : formula.lines)
        if (const auto& meat = knowledge.ingredient(line.ingredient)->meat) {
            if (meat->species != Species::game && meat->species != Species::rabbit) return false;
            any = true;
        }
    return any;
}

}  // namespace standin
