#include "adapt/infeasibility/held_at_most.hpp"

#include <map>
#include <string>

#include "adapt/goals/proportions.hpp"
#include "evaluate/batch.hpp"
#include "knowledge/records/tissue.hpp"
#include "models/as_bought.hpp"

namespace standin {
namespace {

constexpr double at_its_most = 0.93;  // of it: the rest is lost in the rounding of the weights
constexpr double more = 1.01;         // times what there was

struct Held {
    double before = 0, after = 0, bought = 0;  // grams
};

std::map<std::string, Held> foods_of(const Formula& base, const Formula& nearest, const Knowledge& knowledge) {
    std::map<std::string, Held> foods;
    for (const auto& line : base.lines) foods[line.ingredient].before += line.grams.mid;
    for (const auto& line : nearest.lines) {
        Held& held = foods[line.ingredient];
        held.after += line.grams.mid;
        held.bought += line.grams.mid * listed_per_gram(line, knowledge);
    }
    return foods;
}

Reason held(std::string_view by, std::vector<std::string> foods, double most, std::string unit) {
    Reason reason = make_reason(ReasonKind::held_at_most, {{"most", {}, most, std::move(unit)}}, std::move(foods));
    reason.role = by;
    return reason;
}

}  // namespace

std::vector<Reason> held_at_most(const Formula& base, const Formula& nearest, const Stock& stock, const Context& context) {
    const Knowledge& knowledge = context.knowledge();
    const Proportions most(nearest, context);
    const double mass = NominalBatch(nearest, context.nominal()).total()[Amount::mass];
    double binder = 0, binder_before = 0;
    std::vector<Reason> all;
    bool new_binder = false;
    for (const auto& [id, food] : foods_of(base, nearest, knowledge)) {
        const Ingredient& ingredient = *knowledge.ingredient(id);
        if (is_dry_binder(ingredient)) {
            binder += food.after;
            binder_before += food.before;
        }
        if (food.after < more * food.before || !(food.after > 0)) continue;
        const std::string& name = ingredient.names.front();
        const Offer offer = stock.offer(ingredient);
        if (offer.grams && food.bought >= at_its_most * *offer.grams) all.push_back(held("list", {name}, *offer.grams, "g"));
        else if (ingredient.most_g_per_kg && 1000 * food.after >= at_its_most * ingredient.most_g_per_kg->band.mid * mass)
            all.push_back(held("kilo", {name}, ingredient.most_g_per_kg->band.mid, "g/kg"));
        else if (is_dry_binder(ingredient) && food.before == 0 && food.after >= at_its_most * most.added(Role::binder) * mass) {
            all.push_back(held("new", {name}, 100 * most.added(Role::binder), "%"));
            new_binder = true;
        }
    }
    if (!new_binder && binder > more * binder_before && binder >= at_its_most * most.binder * mass)
        all.push_back(held("binders", {}, 100 * most.binder, "%"));
    return all;
}

}  // namespace standin
