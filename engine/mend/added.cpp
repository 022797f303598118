#include "mend/added.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include "adapt/distance/met.hpp"
#include "adapt/search/search.hpp"
#include "adapt/variants/variant.hpp"
#include "mend/additions.hpp"
#include "mend/bring.hpp"
#include "mend/cause_foods.hpp"

namespace standin {
namespace {

bool is_own_leaf(const Move& move) { return move.kind == MoveKind::raise && (move.role == Role::green || move.role == Role::herb); }

// Every choice of so many moves, no two of one role.
std::vector<std::vector<std::size_t>> chosen_moves(const Problem& problem, std::size_t foods) {
    constexpr std::size_t enough = 60;
    std::vector<std::vector<std::size_t>> all{{}};
    for (std::size_t n = 0; n < foods; ++n) {
        std::vector<std::vector<std::size_t>> longer;
        for (const auto& chosen : all)
            for (std::size_t m = chosen.empty() ? 0 : chosen.back() + 1; m < problem.moves.size() && longer.size() < enough; ++m) {
                const auto role = problem.moves[m].role;
                // Oil may go beside a fat that there is too little of.
                const bool oil = role == Role::fat && !(problem.moves[m].per_gram[Amount::meat] > 0);
                const bool again = std::any_of(chosen.begin(), chosen.end(), [&](std::size_t c) {
                    // The formula's own leaf and herbs go up together, as a maker takes some of each.
                    if (is_own_leaf(problem.moves[c]) && is_own_leaf(problem.moves[m])) return false;
                    const bool other_oil = !(problem.moves[c].per_gram[Amount::meat] > 0);
                    return problem.moves[c].role == role && !(role == Role::fat && oil != other_oil);
                });
                if (again) continue;
                longer.push_back(chosen);
                longer.back().push_back(m);
            }
        all = std::move(longer);
    }
    return all;
}

Problem only(const Problem& problem, const std::vector<std::size_t>& chosen) {
    Problem part = problem;
    part.moves.clear();
    for (const auto m : chosen) {
        part.moves.push_back(problem.moves[m]);
        part.moves.back().equivalents.clear();
    }
    for (std::size_t c = 0; c < part.constraints.size(); ++c) {
        part.constraints[c].per_gram.clear();
        for (const auto m : chosen) part.constraints[c].per_gram.push_back(problem.constraints[c].per_gram[m]);
    }
    return part;
}

}  // namespace

bool thins(const Goal& goal) { return goal.kind == Goal::Kind::at_most && goal.property != Property::cook_loss_pct; }

bool asks_less(const Meant& meant) { return meant.reading->asks_less() || std::any_of(meant.goals.begin(), meant.goals.end(), thins); }

bool is_of_same_foods(const Mended& one, const Mended& other) {
    return std::equal(one.add.begin(), one.add.end(), other.add.begin(), other.add.end(),
                      [](const Ingoing& a, const Ingoing& b) { return a.ingredient == b.ingredient; });
}

double leaf_share(const Mended& mended, const Material& mass, const Knowledge& knowledge) {
    double grams = 0;
    for (const auto& in : mended.add)
        if (const Role role = knowledge.ingredient(in.ingredient)->roles.front(); role == Role::green || role == Role::herb)
            grams += in.grams;
    return grams / mass[Amount::mass];
}

Mended Additions::with_more_of(const Formula& start) const {
    Mended mended{start, {}};
    const double batch = mass_.made.total(start)[Amount::mass], grown = batch / total_[Amount::mass];
    for (const auto& taste : mass_.tastes) {
        if (!taste.reading->more_of) continue;
        for (const auto& line : mass_.formula.lines) {
            const Ingredient& food = *knowledge().ingredient(line.ingredient);
            if (!counts_as(food, *taste.reading->more_of)) continue;
            double there = 0;
            for (const auto& now : mended.formula.lines)
                if (now.ingredient == line.ingredient && now.prepared == line.prepared) there += now.grams.mid;
            double grams = taste.by() * line.grams.mid * grown - there;
            const Offer offer = mass_.stock.offer(line);
            if (offer.grams) grams = std::min(grams, *offer.grams);
            if (food.most_g_per_kg) grams = std::min(grams, food.most_g_per_kg->band.mid * batch / 1000 - there);
            grams = kitchen_grams(grams, offer.grams.has_value());
            if (offer.on_hand && grams > 0) bring(mended, line, grams, false);
        }
    }
    return mended;
}

void Additions::bring(Mended& mended, Line food, double grams, bool fresh) const {
    mass_.stock.tell(food);
    Ingoing in = ingoing(food, grams, fresh, mass_.mending, knowledge(), mass_.wet);
    const BringIn* way = way_in(*knowledge().ingredient(food.ingredient), mass_.mending, mass_.wet);
    if (way && way->round > 0) in.rounds = static_cast<int>(std::ceil(1000 * grams / total_[Amount::mass] / way->round - 0.1));
    in.rounds = std::max(in.rounds, 1);
    put_in(mended.formula, food, in);
    const auto same = std::find_if(mended.add.begin(), mended.add.end(), [&](const Ingoing& other) {
        return other.ingredient == in.ingredient && other.prepared == in.prepared;
    });
    if (same == mended.add.end()) mended.add.push_back(std::move(in));
    else {  // one food stands once, however many words asked for it
        same->grams += in.grams;
        same->water_g += in.water_g;
        same->rounds = std::max(same->rounds, in.rounds);
    }
}

Mended Additions::weighed(const Problem& problem, const std::vector<double>& grams, const Mended& start) const {
    Mended mended = start;
    for (const auto m : used_moves(problem, grams)) {
        const Move& move = problem.moves[m];
        const Ingredient& food = *knowledge().ingredient(move.food.ingredient);
        const bool short_of = food.most_g_per_kg || move.role == Role::binder || mass_.stock.offer(food).grams;
        const double weight = kitchen_grams(grams[m], short_of);
        if (!(weight > 0)) continue;
        bring(mended, move.food, weight, move.kind == MoveKind::add);
        const Material brought = mass_.context.nominal().unit(move.food);
        const auto salt = salt_for(brought, start.formula, distance_, mass_.context);
        const double salting = salt ? kitchen_grams(weight * salt->grams, true) : 0;
        if (salting > 0) bring(mended, salt->food, salting, false);
    }
    return mended;
}

// The goals with the limits moved by what the draws miss; nothing where they keep them all.
std::optional<std::vector<Goal>> Additions::tighter(const Formula& formula, std::vector<Goal> hard, const Aim& aim, double margin) const {
    const auto states = mass_.made.states(formula);
    bool any = false;
    if (aim.part != 1 || std::any_of(aim.each.begin(), aim.each.end(), [](double part) { return part < 1; })) return std::nullopt;
    for (std::size_t g = 0; g < goals().size(); ++g) {
        const double miss = missed_by(goals()[g], distance_, mass_.states, states, mass_.request.sure);
        if (miss <= 0 || thins(goals()[g])) continue;
        hard[g].limit += (goals()[g].kind == Goal::Kind::at_most ? -margin : margin) * miss;
        any = true;
    }
    return any ? std::optional(std::move(hard)) : std::nullopt;
}

Struck Additions::struck() const {
    Struck struck;
    for (const auto& taste : mass_.tastes)
        if (taste.reading->less_note) struck.notes.push_back(*taste.reading->less_note);
    struck.leaf = mass_.only_fresh;
    struck.binders = mass_.unsalted;
    struck.wet = mass_.wet;
    return struck;
}

std::vector<Mended> Additions::searched(const Mended& start, std::size_t top, const Aim& aim) const {
    const Material there = mass_.made.total(start.formula);
    const State state = mass_.made.state(start.formula);
    const Distance distance(mass_.context, there, state, asked_in(start.formula, state, aim));
    const Problem problem = additions_to(start.formula, there, mass_.stock, distance, mass_.mending, mass_.context, struck());
    std::vector<Candidate> found;
    const auto allowed = [&](const std::vector<std::size_t>& chosen) {
        const auto is_new = [&](std::size_t m) { return problem.moves[m].kind == MoveKind::add; };
        return !aim.own || std::none_of(chosen.begin(), chosen.end(), is_new);
    };
    constexpr std::size_t most_foods = 3;
    std::size_t foods = 1;
    for (; foods <= most_foods; ++foods) {
        for (const auto& chosen : chosen_moves(problem, foods)) {
            if (!allowed(chosen)) continue;
            if (auto candidate = with_only(only(problem, chosen), chosen, start, distance, aim)) found.push_back(std::move(*candidate));
        }
        if (!found.empty()) break;
    }
    // What is in the formula comes before what is new, though it take two of its leaves.
    const auto of_its_own = [](const Candidate& one) { return one.rank.first == 0; };
    if (foods == 1 && std::none_of(found.begin(), found.end(), of_its_own))
        for (const auto& chosen : chosen_moves(problem, 2))
            if (std::all_of(chosen.begin(), chosen.end(), [&](std::size_t m) { return is_own_leaf(problem.moves[m]); }))
                if (auto candidate = with_only(only(problem, chosen), chosen, start, distance, aim)) found.push_back(std::move(*candidate));
    std::stable_sort(found.begin(), found.end(), [](const Candidate& a, const Candidate& b) { return a.rank < b.rank; });
    std::vector<Mended> best;
    for (auto& candidate : found)
        if (best.size() < std::max<std::size_t>(1, top)) best.push_back(std::move(candidate.mended));
    return best;
}

// Where the mass itself, of the middle draw, has all that is asked and too few draws have it, the limits move by what those miss.
std::vector<Goal> Additions::asked_in(const Formula& formula, const State& state, const Aim& aim) const {
    std::vector<Goal> asked = asked_of(state, aim);
    const auto lacks = [&](const Goal& goal) {
        const double value = state.properties[goal.property];
        return shortfall(goal, value, value) > 0;
    };
    if (!aim.nearest || std::any_of(asked.begin(), asked.end(), lacks)) return asked;
    return tighter(formula, asked, aim).value_or(asked);
}

// What is to hold of the mass with all that goes into it. Plain mass has done for what it thins as much as it shall.
std::vector<Goal> Additions::asked_of(const State& state, const Aim& aim) const {
    constexpr double inside = 0.15, moved = 0.1;  // noticeable differences
    std::vector<Goal> asked;
    for (std::size_t g = 0; g < goals().size(); ++g) {
        const Goal& goal = goals()[g];
        const double part = aim.each.empty() ? aim.part : aim.each[g];
        Goal one = as_condition(goal, distance_.base().properties[goal.property], inside * distance_.unit(goal.property));
        const double value = state.properties[goal.property];
        if (thins(goal) && (aim.nearest || value < distance_.base().properties[goal.property]))
            one.limit = std::max(one.limit, value + moved * distance_.unit(goal.property));
        else if (shortfall(one, value, value) > 0) one.limit = value + (goal.most ? std::min(1.0, part) : part) * (one.limit - value);
        asked.push_back(std::move(one));
    }
    return asked;
}

std::optional<Additions::Candidate> Additions::with_only(const Problem& problem, const std::vector<std::size_t>& chosen,
                                                         const Mended& start, const Distance& distance, const Aim& aim) const {
    constexpr double rarer = 0.5;  // squared differences for each food that is more usual
    SearchLimits limits;
    limits.plans = 1;
    limits.progress = mass_.context.options.progress;
    // The draws that decide may gain less than the middle one does, so each time they are not there the step is longer.
    limits.tighter = [&, margin = 1.2](const Plan& plan, const std::vector<Goal>& hard) mutable {
        constexpr double longer = 1.4;
        auto moved = tighter(weighed(problem, plan.grams, start).formula, hard, aim, margin);
        margin *= longer;
        return moved;
    };
    const auto plans = search_plans(problem, distance, mass_.context.nominal().models(), limits).plans;
    if (plans.empty()) return std::nullopt;
    Candidate candidate{weighed(problem, plans.front().grams, start), {0, plans.front().cost}};
    for (const auto m : used_moves(problem, plans.front().grams)) {
        candidate.rank.first += problem.moves[m].kind == MoveKind::add ? 1 : 0;
        candidate.rank.second += rarer * static_cast<double>(chosen[m]);
    }
    return candidate;
}

// Additions that go the largest part of the way that any do: by the middle draw past it first, as then more of the draws get there.
std::vector<Mended> Additions::nearest(const Mended& start, std::size_t top, bool own) const {
    constexpr std::array parts{1.0, 1.6, 1.3, 0.98, 0.9, 0.75, 0.6, 0.45, 0.3, 0.15};
    std::vector<Mended> found;
    bool each_tried = goals().size() < 2 || own;
    for (const double part : parts) {
        found = searched(start, top, {part, true, {}, own});
        if (!found.empty()) break;
        if (part < 1 && !each_tried) {
            each_tried = true;
            found = nearest_for_each(start, top);
            if (!found.empty()) break;
        }
    }
    return found;
}

// Goals of which one cannot be had in full: each as far as it goes by itself, or nearly so.
std::vector<Mended> Additions::nearest_for_each(const Mended& start, std::size_t top) const {
    constexpr std::array parts{1.0, 0.9, 0.75, 0.6, 0.45, 0.3, 0.15};
    constexpr double kept = 0.02;  // of the way: what one brings may not cost the other, so both are asked for
    Aim aim{1, true, std::vector<double>(goals().size(), kept)};
    for (std::size_t g = 0; g < goals().size(); ++g) {
        Aim alone{1, true, std::vector<double>(goals().size(), kept)};
        for (const double part : parts) {
            alone.each[g] = part;
            if (searched(start, 1, alone).empty()) continue;
            aim.each[g] = part;
            break;
        }
    }
    constexpr std::array together{1.0, 0.9, 0.75};
    for (const double by : together) {
        Aim joint = aim;
        for (auto& part : joint.each) part *= by;
        if (auto found = searched(start, top, joint); !found.empty()) return found;
    }
    return {};
}

}  // namespace standin
