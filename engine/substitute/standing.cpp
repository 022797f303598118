#include "substitute/standing.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <utility>

#include "knowledge/index/kinds.hpp"

namespace standin {
namespace {

// The kind of near twins that a food is of.
std::optional<std::size_t> twins_kind(const Ingredient& food, const Knowledge& knowledge) {
    constexpr std::string_view kinds_of_twins = "twins-";
    const auto& kinds = knowledge.records().kinds;
    for (std::size_t k = 0; k < kinds.size(); ++k)
        if (kinds[k].id.starts_with(kinds_of_twins) && belongs(food, kinds[k], knowledge)) return k;
    return std::nullopt;
}

}  // namespace

double standing_of(const Candidate& candidate, const Line& line, double felt, double new_allergens, const Knowledge& knowledge,
                   bool on_the_list) {
    const auto constant = [&](std::string_view id) { return knowledge.parameter("stand_ins.order." + std::string(id)).mid; };
    const Ingredient &from = *knowledge.ingredient(line.ingredient), &to = *knowledge.ingredient(candidate.food.ingredient);
    const auto solid = [](const Ingredient& food) { return food.tissue == Tissue::fat_tissue || food.tissue == Tissue::meat; };
    const auto newly = [&](std::string_view kind) { return belongs(to, kind, knowledge) && !belongs(from, kind, knowledge); };
    double back = std::log1p(felt) + constant("closeness") * (1 - candidate.closeness) + constant("allergen") * new_allergens +
                  constant("share") * (1 - candidate.share);
    if (to.id == from.id) back += constant("own");
    if (candidate.trade) back -= constant(candidate.swaps.size() > 1 ? "trade-by-way" : "trade");
    const bool weak = candidate.carries < knowledge.parameter("stand_ins.least.dose").mid && !candidate.partner;
    if (candidate.role == Role::heat && weak) back += constant("weak");
    if (candidate.role == Role::fat && solid(from) && !solid(to)) back += constant("melted");
    if (newly("no-named-sort")) back += constant("open");
    if (candidate.partner && !candidate.partner->named && !candidate.of_custom()) back += constant("helped");
    if (belongs(from, "bought-ground", knowledge) && !belongs(to, "bought-ground", knowledge)) back += constant("whole");
    if (newly("other-packet")) {
        const auto twins = twins_kind(from, knowledge);
        if (twins && twins == twins_kind(to, knowledge)) back += constant("packet");
    }
    if (candidate.role == Role::fat && belongs(from, "cured", knowledge) && !belongs(to, "cured", knowledge)) back += constant("uncured");
    if (on_the_list) return back;  // nobody has to look for it
    if (newly("gathered")) back += constant("gathered");
    else if (newly("seldom-sold")) back += constant("seldom");
    return back;
}

NearlySame nearly_same(const std::vector<std::string>& foods, const Knowledge& knowledge) {
    const double close = knowledge.parameter("stand_ins.order.same-from").mid;
    std::set<std::pair<std::string, std::string>> pairs;
    for (const auto& swap : knowledge.records().swaps)
        if (swap.closeness >= close && !swap.partner) pairs.insert(std::minmax(swap.from, swap.to));
    return
        [foods, pairs](std::size_t a, std::size_t b) { return foods[a] == foods[b] || pairs.count(std::minmax(foods[a], foods[b])) > 0; };
}

Twins twins_of(const std::vector<std::string>& foods, const std::string& line, const Knowledge& knowledge) {
    Twins twins;
    for (const auto& food : foods) twins.of.push_back(twins_kind(*knowledge.ingredient(food), knowledge));
    twins.own = twins_kind(*knowledge.ingredient(line), knowledge);
    return twins;
}

std::vector<std::size_t> order_of(const std::vector<double>& standings, const std::vector<std::optional<Species>>& animals,
                                  std::optional<Species> own, const Knowledge& knowledge, const NearlySame& same, const Twins& twins) {
    const auto constant = [&](std::string_view id) { return knowledge.parameter("stand_ins.order." + std::string(id)).mid; };
    const double of_own = constant("crowd"), of_others = constant("crowd-other"), first = constant("crowd-from"),
                 most = constant("crowd-most");
    std::map<Species, double> before;  // cuts of an animal that stand already
    std::vector<bool> like_one_before(standings.size());
    std::map<std::size_t, double> twins_before;
    const auto back_by_twins = [&](std::size_t i) {
        const auto kind = i < twins.of.size() ? twins.of[i] : std::nullopt;
        const auto found = kind ? twins_before.find(*kind) : twins_before.end();
        if (found == twins_before.end()) return 0.0;
        return constant("twin") * std::max(0.0, found->second - (kind == twins.own ? constant("twin-own") : 1) + 1);
    };
    const auto alone = [&](std::size_t i) {
        if (!animals[i]) return standings[i] + (like_one_before[i] ? constant("same") : 0);
        const auto found = before.find(*animals[i]);
        const double seen = found == before.end() ? 0 : found->second;
        return standings[i] + (animals[i] == own ? of_own * std::max(0.0, seen - first + 1) : of_others * std::min(seen, most));
    };
    const auto stands_at = [&](std::size_t i) { return alone(i) + back_by_twins(i); };
    std::vector<std::size_t> left(standings.size()), order;
    for (std::size_t i = 0; i < left.size(); ++i) left[i] = i;
    while (!left.empty()) {
        const auto next =
            std::min_element(left.begin(), left.end(), [&](std::size_t a, std::size_t b) { return stands_at(a) < stands_at(b); });
        order.push_back(*next);
        if (animals[*next]) before[*animals[*next]] += 1;
        if (*next < twins.of.size() && twins.of[*next]) twins_before[*twins.of[*next]] += 1;
        for (const std::size_t i : left)
            if (same && !like_one_before[i]) like_one_before[i] = same(*next, i);
        left.erase(next);
    }
    return order;
}

}  // namespace standin
