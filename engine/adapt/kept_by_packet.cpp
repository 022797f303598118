#include "adapt/kept_by_packet.hpp"

#include <algorithm>

#include "substitute/stand_ins.hpp"

namespace standin {
namespace {

constexpr double most_of_the_line = 0.5;  // that something harmless can stand in for; judgement

bool has_harmless_stand_in(const Formula& formula, std::size_t l, const Stock& stock, const SwapGraph& graph, const Context& context) {
    const Role role = context.knowledge().ingredient(formula.lines[l].ingredient)->roles.front();
    const auto harmless = [&](const Ingredient& food) { return stock.can_bring(food) && !stock.in_doubt(food.id); };
    const auto candidates = candidates_for(formula, l, graph, context.nominal(), harmless);
    return std::any_of(candidates.fit.begin(), candidates.fit.end(), [&](const Candidate& candidate) {
        const Offer offer = stock.offer(candidate.food);
        const bool enough = !offer.grams || *offer.grams >= most_of_the_line * candidate.food.grams.mid;
        return candidate.role == role && enough && candidate.share >= most_of_the_line;
    });
}

}  // namespace

std::optional<Formula> with_doubtful_lines_kept(const Formula& formula, const Stock& stock, const Context& context) {
    Formula kept = formula;
    bool some = false;
    std::optional<SwapGraph> graph;  // seldom asked for
    for (std::size_t l = 0; l < formula.lines.size(); ++l) {
        const Line& line = formula.lines[l];
        const bool poured = context.knowledge().ingredient(line.ingredient)->roles.front() == Role::liquid;  // the tap has water for it
        if (line.keep || poured || !stock.only_perhaps(line.ingredient) || stock.says_missing(line.ingredient) || stock.has_idea_for(line))
            continue;
        if (!graph) graph.emplace(context.knowledge());
        if (has_harmless_stand_in(formula, l, stock, *graph, context)) continue;
        kept.lines[l].keep = some = true;
    }
    return some ? std::optional(std::move(kept)) : std::nullopt;
}

}  // namespace standin
