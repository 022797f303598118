#include "substitute/stand_ins.hpp"

#include <algorithm>
#include <cmath>
#include <set>
#include <string>

#include "core/band.hpp"
#include "knowledge/effects.hpp"
#include "models/composition.hpp"
#include "substitute/conditions.hpp"
#include "substitute/dose.hpp"

namespace standin {
namespace {

// A swap that needs this many times the line's weight is no swap a kitchen would make.
constexpr double implausible_ratio = 30;

Line prepared_like(const Line& line, const Ingredient& ingredient, const std::vector<std::string>& extra, const Knowledge& knowledge) {
    Line food;
    food.ingredient = ingredient.id;
    const auto add = [&](const Prepared& step) {
        const Preparation* preparation = knowledge.preparation(step.preparation);
        const bool there =
            std::any_of(food.prepared.begin(), food.prepared.end(), [&](const Prepared& p) { return p.preparation == step.preparation; });
        const auto& already = ingredient.already;
        if (std::find(already.begin(), already.end(), step.preparation) != already.end()) return;
        if (preparation && !there && effect_on(*preparation, ingredient.tissue)) food.prepared.push_back(step);
    };
    for (const auto& step : line.prepared) add(step);
    for (const auto& step : extra) add({step, std::nullopt});
    return food;
}

std::vector<std::string> preparations_of(const Swap& swap, const Knowledge& knowledge) {
    std::vector<std::string> all = swap.prepared;
    for (auto& step : conditions_prepare(swap, knowledge)) all.push_back(std::move(step));
    return all;
}

double dose_per_gram(const Line& food, Role role, const Nominal& nominal) { return dose_of(nominal.unit(food), role); }

// Grams of the stand-in for the whole line, following the path swap by swap; nothing where a dose is missing at either end.
std::optional<double> equal_grams(const Line& line, const Line& food, const SwapPath& path, Role role, const Nominal& nominal) {
    const Records& records = nominal.knowledge().records();
    const bool all_by_dose =
        std::all_of(path.swaps.begin(), path.swaps.end(), [&](std::size_t s) { return records.swaps[s].basis == Basis::dose; });
    const auto by_dose = [&](double grams, const Line& from, const Line& to) -> std::optional<double> {
        const double given = dose_per_gram(from, role, nominal), taken = dose_per_gram(to, role, nominal);
        if (!(given > 0) || !(taken > 0)) return std::nullopt;
        return grams * given / taken;
    };
    if (all_by_dose) return by_dose(line.grams.mid, line, food);
    std::optional<double> grams = line.grams.mid;
    Line from = line;
    for (const auto s : path.swaps) {
        const Swap& swap = records.swaps[s];
        const bool last = s == path.swaps.back();
        const Line to = last ? food
                             : prepared_like(line, *nominal.knowledge().ingredient(swap.to), preparations_of(swap, nominal.knowledge()),
                                             nominal.knowledge());
        if (swap.basis == Basis::weight) grams = *grams * swap.ratio->band.mid;
        else grams = by_dose(*grams, from, to);
        if (!grams) return std::nullopt;
        from = to;
    }
    return grams;
}

}  // namespace

Material counted_as(const Candidate& candidate, const Line& line, const Nominal& nominal) {
    Material unit = nominal.unit(candidate.food);
    const auto dose = amount_of_dose(candidate.role);
    if (dose && candidate.food.grams.mid > 0) unit[*dose] = nominal.unit(line)[*dose] * line.grams.mid / candidate.food.grams.mid;
    return unit;
}

std::string key_of(const Line& food) {
    std::string key = food.ingredient;
    for (const auto& step : food.prepared) key += "," + step.preparation;
    return key;
}

std::size_t index_of(const Knowledge& knowledge, std::string_view id) {
    return static_cast<std::size_t>(knowledge.ingredient(id) - knowledge.records().ingredients.data());
}

Candidates candidates_for(const Line& line, const Process& process, const SwapGraph& graph, const Nominal& nominal,
                          const std::function<bool(const Ingredient&)>& may_use) {
    const Knowledge& knowledge = nominal.knowledge();
    const Records& records = knowledge.records();
    const Ingredient& ingredient = *knowledge.ingredient(line.ingredient);
    Candidates all;
    std::set<std::string> seen, refused;
    for (const Role role : ingredient.roles) {
        for (const auto& path : graph.from(role, index_of(knowledge, line.ingredient))) {
            const Ingredient& to = records.ingredients[path.to];
            if (!may_use(to)) continue;
            const Swap& last = records.swaps[path.swaps.back()];
            Candidate candidate{prepared_like(line, to, preparations_of(last, knowledge), knowledge), role, path.closeness, path.swaps};
            if (to.id == ingredient.id && candidate.food.prepared == line.prepared) continue;
            const auto grams = equal_grams(line, candidate.food, path, role, nominal);
            if (!grams || !(*grams > 0) || *grams > implausible_ratio * line.grams.mid) continue;
            const bool allowed = conditions_allow(last, process, knowledge);
            if (!(allowed ? seen : refused).insert(key_of(candidate.food)).second) continue;
            candidate.food.grams = exactly(*grams);
            (allowed ? all.fit : all.refused).push_back(std::move(candidate));
        }
    }
    std::erase_if(all.refused, [&](const Candidate& c) { return seen.count(key_of(c.food)) > 0; });
    return all;
}

Line brought_in(const Ingredient& food, Role role, const Knowledge& knowledge) {
    const Swap* closest = nullptr;
    for (const auto& swap : knowledge.records().swaps)
        if (swap.role == role && swap.to == food.id && (!closest || swap.closeness > closest->closeness)) closest = &swap;
    return prepared_like({}, food, closest ? preparations_of(*closest, knowledge) : std::vector<std::string>{}, knowledge);
}

}  // namespace standin
