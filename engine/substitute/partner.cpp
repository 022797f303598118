#include "substitute/partner.hpp"

#include <algorithm>

#include "knowledge/index/kinds.hpp"
#include "substitute/dose.hpp"

namespace standin {
namespace {

Reason brings_rest(Role role) {
    Reason reason = make_reason(ReasonKind::brings_rest);
    reason.role = word(role);
    return reason;
}

}  // namespace

std::optional<PartnerFood> partner_named(const Swap& swap, double line_grams) {
    if (!swap.partner) return std::nullopt;
    PartnerFood partner;
    partner.food.ingredient = swap.partner->ingredient;
    for (const auto& step : swap.partner->prepared) partner.food.prepared.push_back({step, std::nullopt});
    partner.food.grams = exactly(line_grams * swap.partner->ratio.band.mid);
    partner.why = said(swap.partner->why);
    partner.named = true;
    return partner;
}

Partners::Partners(const Formula& formula, std::size_t line, const Portions& portions, const Nominal& nominal,
                   const std::function<bool(const Ingredient&)>& may_use)
    : formula_(formula), line_(formula.lines[line]), portions_(portions), nominal_(nominal), may_use_(may_use) {}

bool Partners::noticed(double lacking, Role role) const {
    const Knowledge& knowledge = nominal_.knowledge();
    if (role == Role::heat && lacking * 1000 / portions_.batch_grams() < knowledge.parameter("advice.floor.heat").mid) return false;
    return lacking > 0 && lacking >= knowledge.parameter("stand_ins.partner.least").mid * portions_.dose(role);
}

bool Partners::in_formula(const Ingredient& food) const {
    return std::any_of(formula_.lines.begin(), formula_.lines.end(), [&](const Line& l) { return l.ingredient == food.id; });
}

// How often the swaps of a role name it, against what they name most: lemon juice 1, verjuice little.
double Partners::usual(const Ingredient& food, Role role) {
    if (usual_in_ != role) {
        usual_.clear();
        for (const auto& swap : nominal_.knowledge().records().swaps)
            if (swap.role == role) ++usual_[swap.to];
        usual_in_ = role;
    }
    double most = 1;
    for (const auto& [id, count] : usual_) most = std::max(most, static_cast<double>(count));
    const auto found = usual_.find(food.id);
    return found == usual_.end() ? 0 : static_cast<double>(found->second) / most;
}

std::optional<PartnerFood> Partners::bring(double lacking, Role role, const Line& beside, const std::vector<SwapPath>& paths) {
    const Knowledge& knowledge = nominal_.knowledge();
    if (!noticed(lacking, role)) return std::nullopt;
    const double most = knowledge.parameter("stand_ins.partner.most").mid * line_.grams.mid;
    const bool dry = knowledge.ingredient(line_.ingredient)->tissue == Tissue::dry;
    std::optional<PartnerFood> best;
    double best_worth = 0;
    const auto constant = [&](std::string_view id) { return knowledge.parameter(id).mid; };
    for (const auto& path : paths) {
        const Ingredient& food = knowledge.records().ingredients[path.to];
        if (food.id == beside.ingredient || food.id == line_.ingredient || food.roles.front() != role || !may_use_(food)) continue;
        const Swap& last = knowledge.records().swaps[path.swaps.back()];
        if (last.partner || last.most_share < 1 || !food.allergens.empty() || belongs(food, "seldom-sold", knowledge)) continue;
        Line small = prepared_like({}, food, preparations_of(last, knowledge), knowledge);
        if (role == Role::heat && dry && portions_.vegetable(small)) continue;  // no sliver of a fresh pod beside what is ground
        const double per_gram = dose_of(nominal_.unit(small), role);
        const double flesh = role == Role::heat && portions_.vegetable(small) ? 2 : 1;  // a pod is flesh beside its heat; judgement
        if (!(per_gram > 0) || lacking / per_gram > flesh * most || (role == Role::acid && portions_.vegetable(small))) continue;
        // What the formula has is at hand and known to its eaters; else what every kitchen has.
        const double worth = path.closeness + (in_formula(food) ? constant("stand_ins.partner.at_hand") : 0) +
                             constant("stand_ins.partner.usual") * usual(food, role);
        if (worth <= best_worth) continue;
        best_worth = worth;
        small.grams = exactly(lacking / per_gram);
        best = PartnerFood{std::move(small), brings_rest(role)};
    }
    return best;
}

}  // namespace standin
