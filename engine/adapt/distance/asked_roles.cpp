#include "adapt/distance/asked_roles.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

#include "adapt/goals/proportions.hpp"
#include "core/contains.hpp"
#include "substitute/dose.hpp"

namespace standin {
namespace {

constexpr double lean_mass = 10;  // % fat of the batch; judgement

double lifted(const Goal& goal, const Distance& distance, Leeway leeway) {
    constexpr double next_to_nothing = 1e-6, most_lift = 50;
    if (leeway == Leeway::all) return most_lift;
    const double base = distance.base().properties[goal.property];
    return base > next_to_nothing ? std::clamp(goal.target(base) / base, 1.0, most_lift) : most_lift;
}

// Who wants a third less of the sour gives no leave to take all of it out for the sake of another want.
bool asks_for_more_than_half(const Goal& goal, const Distance& distance) {
    constexpr double half = 0.55;
    const bool a_share_less = goal.property == Property::sourness_mmol_kg && goal.times && goal.kind == Goal::Kind::at_most;
    const double base = distance.base().properties[goal.property];
    return !a_share_less || goal.target(base) < half * base;
}

// Whether more of the role is what moves the property that way: who wants less acid is brought no other.
bool serves(const Lever& lever, Role role, bool more) {
    const auto change = std::find_if(lever.change.begin(), lever.change.end(), [&](const Change& c) { return c.role == role; });
    if (change == lever.change.end() || change->more == Change::Way::either) return more;
    return (change->more == Change::Way::up) == more;
}

}  // namespace

void AskedRoles::open(const Change& more, Goal::Kind kind) {
    change.insert(more.role);
    by_goal.insert(more.role);
    const bool any = more.more == Change::Way::either || kind == Goal::Kind::equal;
    const bool rises = (more.more == Change::Way::up) == (kind == Goal::Kind::at_least);
    if (any || rises) up.insert(more.role);
    if (any || !rises) down.insert(more.role);
}

AskedRoles roles_asked_for(const Distance& distance, const HasRole& has_line, const HasRole& has_main_line, Leeway leeway) {
    AskedRoles asked;
    const auto& base = distance.base().properties;
    const double fat = base[Property::fat_pct], ph = base[Property::ph], salt = base[Property::salt_pct_of_meat];
    for (const auto& goal : distance.goals())
        for (const auto& lever : levers()) {
            if (lever.property != of_batch(goal.property)) continue;
            const bool less = goal.kind == Goal::Kind::at_most;
            std::vector<Change> changes = lever.change;
            if (less) changes.insert(changes.end(), lever.towards_less.begin(), lever.towards_less.end());
            for (const Change& change : changes) {
                if (fat < change.fat_from || fat >= change.fat_below || ph >= change.ph_below) continue;
                if (change.salt_from > 0 && salt <= change.salt_from) continue;
                if (less && (contains(lever.never_towards_less, change.role) ||
                             (leeway == Leeway::usual && contains(lever.last_towards_less, change.role))))
                    continue;
                asked.open(change, goal.kind);
                // Acid is in the way of the green, and is no less the sausage's own for that.
                const bool beside = change.role == Role::acid && lever.change.front().role != Role::acid;
                // Nor does a word that is about the bite ask for none of the acid.
                const bool for_the_taste = any_asks(distance.goals(), Property::sourness_mmol_kg, Goal::Kind::at_most);
                const bool back_to_ph = goal.property == Property::ph && !goal.condition && !for_the_taste;
                if (!of_the_whole_mass(goal.property) && !beside && !back_to_ph && asks_for_more_than_half(goal, distance))
                    asked.direct.insert(change.role);
            }
            asked.by_goal.insert(lever.add.begin(), lever.add.end());
            const bool more = goal.kind != Goal::Kind::at_most;
            // Fat that is there is raised before another is bought.
            const bool own_fat = lever.property == Property::fat_pct && more && has_main_line(Role::fat);
            // Another flour sets as the first did.
            const bool looser = !lever.last_towards_less.empty() && less;
            // A mass without fat is short and tender with some, where nothing that it has makes it so.
            if (looser && leeway == Leeway::all && fat < lean_mass) asked.add.insert(Role::fat);
            if (!own_fat && !looser) asked.replace.insert(lever.replace.begin(), lever.replace.end());
            const bool loss = goal.property == Property::cook_loss_pct;
            for (const Role role : lever.add)
                if (role == Role::binder ? more != loss : serves(lever, role, more) && !own_fat && (role != Role::salt || !has_line(role)))
                    asked.add.insert(role);
            // A mass of nothing but fat cuts gets lean from the butcher's.
            const bool raises_lean = std::any_of(lever.change.begin(), lever.change.end(), [&](const Change& change) {
                return change.role == Role::lean && !(fat < change.fat_from) && fat < change.fat_below &&
                       (change.more == Change::Way::up) == more;
            });
            const bool leaner = lever.property == Property::fat_pct && !more;
            if ((raises_lean || leaner) && !loss && !has_main_line(Role::lean)) asked.add.insert(Role::lean);
            const Role first = lever.change.front().role;
            const bool by_itself = lever.add == std::vector<Role>{first};  // the role is what the property measures
            if (by_itself && more) asked.lift[first] = std::max(asked.lift[first], lifted(goal, distance, leeway));
            const bool binds = std::find(lever.add.begin(), lever.add.end(), Role::binder) != lever.add.end();
            asked.dry_binder_stays = asked.dry_binder_stays || (binds && more != loss);
        }
    return asked;
}

bool salt_goes_for_looser(const Distance& distance) {
    const double salt = distance.base().properties[Property::salt_pct_of_meat];
    const auto goes = [&](const Goal& goal) {
        if (goal.kind != Goal::Kind::at_most) return false;
        return std::any_of(levers().begin(), levers().end(), [&](const Lever& lever) {
            return lever.property == goal.property &&
                   std::any_of(lever.towards_less.begin(), lever.towards_less.end(),
                               [&](const Change& c) { return c.role == Role::salt && salt > c.salt_from; });
        });
    };
    return std::any_of(distance.goals().begin(), distance.goals().end(), goes);
}

double enough_for_goals(const Distance& distance, double base_mass, const Material& per_gram, Role role) {
    // At the pH of meat most of an acid is bound and not sour; of a chile one lot is half as hot as the next.
    const double slack = role == Role::acid ? 6 : role == Role::heat ? 4 : 2;
    double most = std::numeric_limits<double>::infinity();
    for (const auto& goal : distance.goals()) {
        const bool counted = (role == Role::heat && goal.property == Property::heat_mg_kg) ||
                             (role == Role::acid && goal.property == Property::sourness_mmol_kg) ||
                             (role == Role::salt && of_batch(goal.property) == Property::salt_pct) ||
                             (role == Role::fat && of_batch(goal.property) == Property::fat_pct);
        if (!counted || goal.kind == Goal::Kind::at_most) continue;
        const double base = distance.base().properties[goal.property];
        const double per = role == Role::salt || role == Role::fat ? 100 : 1000;
        most = std::min(most, slack * std::max(0.0, goal.target(base) - base) * base_mass / per / dose_of(per_gram, role));
    }
    return most;
}

double share_for_goals(const AskedRoles& asked, const Distance& distance, double base_mass, const Material& per_gram, double grams,
                       double dose_slack, Role role) {
    const auto lift = asked.lift.find(role);
    if (lift == asked.lift.end()) return 0;
    const double lifted = dose_slack * (lift->second - 1), enough = enough_for_goals(distance, base_mass, per_gram, role);
    return std::isfinite(enough) ? std::max(lifted, enough / grams) : lifted;
}

}  // namespace standin
