#include "adapt/variants/trims.hpp"

#include <algorithm>
#include <cmath>
#include <optional>

#include "adapt/moves/salt_follows.hpp"
#include "adapt/search/rebalance.hpp"
#include "adapt/search/search.hpp"
#include "adapt/variants/variant.hpp"
#include "core/band.hpp"
#include "evaluate/batch.hpp"
#include "substitute/dose.hpp"

namespace standin {
namespace {

// Acid may follow a swap, and salt where something salt_bearing comes in or goes; water does not: what is absent takes its own water with
// it.
bool may_follow(const Line& line, bool salt_moves, const Context& context) {
    const Role role = context.knowledge().ingredient(line.ingredient)->roles.front();
    return !line.keep && ((role == Role::salt && salt_moves) || role == Role::acid);
}

double salt_of(const Formula& formula, std::size_t line, const Material& counted, const Context& context) {
    double salt = 0;
    for (std::size_t l = 0; l < formula.lines.size(); ++l)
        salt += (l == line ? counted : context.nominal().unit(formula.lines[l]))[Amount::salt] * formula.lines[l].grams.mid;
    return salt;
}

// Whether something salty came in or went.
bool moves_salt(const Formula& swapped, std::size_t line, const Material& counted, double after, const Distance& distance,
                const Context& context) {
    const double salt_bearing = context.constant("advice.trim.salt-bearing");
    const double salt_felt = context.constant("advice.trim.salt-felt");
    const double before = distance.base_material()[Amount::salt];
    const double moved = std::abs(after - before);
    return moved > salt_bearing * swapped.lines[line].grams.mid || moved > salt_felt * before || counted[Amount::salt] >= salt_bearing;
}

// Salt is put in by the gram, so what a food brings or takes of it is closed with plain salt, whole: as much in the batch as there was,
// by the meat where the meat block changed.
std::optional<Trim> close_salt(Formula& swapped, std::size_t line, const Material& counted, const Distance& distance,
                               const Context& context) {
    const double least_left = context.constant("advice.trim.salt-left");
    const double worth_weighing = context.constant("advice.trim.salt-worth-weighing");
    const Material& base = distance.base_material();
    const double after = salt_of(swapped, line, counted, context);
    if (!moves_salt(swapped, line, counted, after, distance, context)) return std::nullopt;
    double meat = 0;
    for (std::size_t l = 0; l < swapped.lines.size(); ++l)
        meat += (l == line ? counted : context.nominal().unit(swapped.lines[l]))[Amount::meat] * swapped.lines[l].grams.mid;
    const double asked = base[Amount::salt] * (meat > 0 && base[Amount::meat] > 0 ? meat / base[Amount::meat] : 1);
    for (std::size_t l = 0; l < swapped.lines.size(); ++l) {
        Line& salt = swapped.lines[l];
        if (l == line || salt.keep || !plain_salt(*context.knowledge().ingredient(salt.ingredient), context.knowledge())) continue;
        const double unit = context.nominal().unit(salt)[Amount::salt], before = salt.grams.mid;
        if (!(unit > 0)) continue;
        const double grams = kitchen_grams(std::max(least_left * before, before + (asked - after) / unit), false);
        if (std::abs(grams - before) < worth_weighing * before) return std::nullopt;
        salt.grams = exactly(grams);
        salt.count.reset();
        salt.written.clear();
        return Trim{salt.ingredient, before, grams};
    }
    return std::nullopt;
}

Problem trims_of(const Formula& swapped, std::size_t line, const Material& counted, const Distance& distance, const Context& context) {
    const double most_of_line = context.constant("advice.trim.most");
    Problem problem;
    problem.formula = swapped;
    problem.processes.push_back({swapped.process, context.nominal().process(swapped.process), {}, 0});
    const double price = context.constant("advice.price.trim");
    const bool salt_moves = moves_salt(swapped, line, counted, salt_of(swapped, line, counted, context), distance, context);
    for (std::size_t l = 0; l < swapped.lines.size(); ++l) {
        const Line& food = swapped.lines[l];
        const Material& unit = l == line ? counted : context.nominal().unit(food);
        problem.start.push_back(food.grams.mid);
        problem.start_total.add(unit, food.grams.mid);
        const bool closed = plain_salt(*context.knowledge().ingredient(food.ingredient), context.knowledge());
        if (l == line || closed || !may_follow(food, salt_moves, context)) continue;
        Material less;
        less.add(unit, -1);
        const double most = most_of_line * food.grams.mid;
        const double least = context.constant("advice.trim.least") * food.grams.mid;
        problem.moves.push_back({MoveKind::reduce, l, food, {}, less, most, price, true, Role::salt});
        problem.moves.push_back({MoveKind::raise, l, food, {}, unit, most, price, true, Role::salt});
        for (std::size_t m = problem.moves.size() - 2; m < problem.moves.size(); ++m) problem.moves[m].least = least;
    }
    problem.least_meat = problem.start_total[Amount::meat];
    return problem;
}

}  // namespace

Trimmed trimmed_after(const Formula& given, std::size_t line, const Material& counted, const Distance& distance, const Context& context) {
    Formula swapped = given;
    const auto salt = close_salt(swapped, line, counted, distance, context);
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
    if (salt) {
        result.trims.push_back(*salt);
        price += context.constant("advice.price.trim");
    }
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
