#include "adapt/trims.hpp"

#include <algorithm>
#include <cmath>

#include "adapt/rebalance.hpp"
#include "adapt/salt_follows.hpp"
#include "adapt/search.hpp"
#include "adapt/variant.hpp"
#include "core/band.hpp"
#include "substitute/dose.hpp"

namespace standin {
namespace {

constexpr double most_of_line = 0.4;  // how far a trim goes, either way; judgement

constexpr double salt_bearing = 0.02;  // g NaCl in a gram; judgement

// Acid may follow a swap, and salt where something salt_bearing comes in or goes; water does not: what is absent takes its own water with
// it.
bool may_follow(const Line& line, bool salt_moves, const Context& context) {
    const Role role = context.knowledge().ingredient(line.ingredient)->roles.front();
    return !line.keep && ((role == Role::salt && salt_moves) || role == Role::acid);
}

Problem trims_of(const Formula& swapped, std::size_t line, const Material& counted, const Distance& distance, const Context& context) {
    Problem problem;
    problem.formula = swapped;
    problem.processes.push_back({swapped.process, context.nominal().process(swapped.process), {}, 0});
    const double price = context.constant("advice.price.trim");
    const double before = distance.base_material()[Amount::salt];
    double after = 0;
    for (std::size_t l = 0; l < swapped.lines.size(); ++l)
        after += (l == line ? counted : context.nominal().unit(swapped.lines[l]))[Amount::salt] * swapped.lines[l].grams.mid;
    const bool salt_moves =
        std::abs(after - before) > salt_bearing * swapped.lines[line].grams.mid || counted[Amount::salt] >= salt_bearing;
    for (std::size_t l = 0; l < swapped.lines.size(); ++l) {
        const Line& food = swapped.lines[l];
        const Material& unit = l == line ? counted : context.nominal().unit(food);
        problem.start.push_back(food.grams.mid);
        problem.start_total.add(unit, food.grams.mid);
        if (l == line || !may_follow(food, salt_moves, context)) continue;
        Material less;
        less.add(unit, -1);
        const double most = most_of_line * food.grams.mid;
        // Plain salt makes up for all that went with a sauce.
        const bool salt = plain_salt(*context.knowledge().ingredient(food.ingredient), context.knowledge());
        const double gone = salt ? std::max(0.0, before - after) / unit[Amount::salt] : 0;
        const double least = context.constant("advice.trim.least") * food.grams.mid;
        problem.moves.push_back({MoveKind::reduce, l, food, {}, less, most, price, true, Role::salt});
        problem.moves.push_back({MoveKind::raise, l, food, {}, unit, std::max(most, gone), price, true, Role::salt});
        for (std::size_t m = problem.moves.size() - 2; m < problem.moves.size(); ++m) problem.moves[m].least = least;
    }
    problem.least_meat = problem.start_total[Amount::meat];
    return problem;
}

}  // namespace

Trimmed trimmed_after(const Formula& swapped, std::size_t line, const Material& counted, const Distance& distance, const Context& context) {
    const Problem problem = trims_of(swapped, line, counted, distance, context);
    const Rebalancer rebalancer(problem, distance, context.nominal().models());
    const ProcessOption& process = problem.processes.front();
    const Solution relaxed = rebalancer.solve(std::vector<Choice>(problem.moves.size(), Choice::open), process, {});
    std::vector<Choice> choices(problem.moves.size(), Choice::out);
    for (const auto m : used_moves(problem, relaxed.grams)) choices[m] = Choice::in;
    const Solution paid = rebalancer.solve(choices, process, relaxed.grams);
    const Solution none = rebalancer.solve(std::vector<Choice>(problem.moves.size(), Choice::out), process, {});

    Trimmed result{swapped, {}, 0};
    double price = 0;
    for (std::size_t m = 0; m < problem.moves.size() && paid.cost < none.cost; ++m) {
        const Move& move = problem.moves[m];
        Line& moved = result.formula.lines[move.line];
        const double before = moved.grams.mid;
        const double after = kitchen_grams(before + (move.kind == MoveKind::raise ? paid.grams[m] : -paid.grams[m]), false);
        if (!(paid.grams[m] > 0) || std::abs(after - before) < 0.005 * before) continue;
        moved.grams = exactly(after);
        moved.count.reset();
        moved.written.clear();
        price += move.price;
        result.trims.push_back({moved.ingredient, before, after});
    }
    const NominalBatch batch(result.formula, context.nominal());
    Material total = batch.total();
    const Line& stood_in = result.formula.lines[line];
    total.add(context.nominal().unit(stood_in), -stood_in.grams.mid);
    total.add(counted, stood_in.grams.mid);
    result.distance = std::sqrt(price + distance.square(total, context.nominal().models().state(total, batch.process())));
    return result;
}

}  // namespace standin
