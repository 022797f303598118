#include "adapt/moves/stand_in_place.hpp"

#include <algorithm>
#include <limits>

#include "adapt/moves/salt_follows.hpp"
#include "core/contains.hpp"
#include "knowledge/records/tissue.hpp"
#include "substitute/dose.hpp"

namespace standin {
double StandInPlace::room_by_the_kilo(const Ingredient& food) const {
    return food.most_g_per_kg ? food.most_g_per_kg->band.mid * base_mass_ / 1000 : std::numeric_limits<double>::infinity();
}

double StandInPlace::missing_as_picked(std::size_t l) const {
    return missing_of(l) * as_picked(lines()[l], context_.nominal()).grams.mid / lines()[l].grams.mid;
}

double StandInPlace::fairly_missing(std::size_t l) const {
    return std::min(missing_as_picked(l), room_by_the_kilo(ingredient(lines()[l])));
}

bool StandInPlace::is_bulk(std::size_t l) const {
    const double vegetable_share = context_.constant("advice.place.vegetable-share");
    const Role role = role_of_line(l);
    const Ingredient& food = ingredient(lines()[l]);
    const auto& most = food.most_g_per_kg;
    const bool relish = role != Role::heat && !has_body(l) && most && most->band.mid <= context_.constant("advice.place.relish");
    const bool seasoning = relish || (role == Role::herb && is_leaf(food.tissue)) || role == Role::spice || role == Role::allium;
    return is_vegetable(food) && !seasoning && lines()[l].grams.mid >= vegetable_share * base_mass_;
}

// Garlic for ramps: it stands for the taste alone, and far less of it is enough.
bool StandInPlace::seasons_for(std::size_t l, const Candidate& candidate) const {
    const double most_times = context_.constant("advice.place.most-times");
    const double equal = candidate.food.grams.mid / candidate.share;
    return role_of_line(l) == Role::green && candidate.role == Role::allium && most_times * equal < lines()[l].grams.mid;
}

// Dried, a little does what the fresh line did: the same plant, any allium or mushroom.
bool StandInPlace::is_dried_form(std::size_t l, const Line& food) const {
    const Ingredient &fresh = ingredient(lines()[l]), &dry = ingredient(food);
    const bool same = !fresh.latin.empty() && fresh.latin == dry.latin;
    return dry.tissue == Tissue::dry && (same || role_of_line(l) == Role::allium || fresh.tissue == Tissue::fungus);
}

bool StandInPlace::by_the_pinch(const Candidate& candidate) const {
    const auto& limit = ingredient(candidate.food).most_g_per_kg;
    return limit && limit->band.mid <= context_.constant("stand_ins.pinch");
}

bool StandInPlace::fills_the_bowl(std::size_t l) const {
    const double vegetable_share = context_.constant("advice.place.vegetable-share");
    return has_body(l) && is_vegetable(ingredient(lines()[l]).tissue) && lines()[l].grams.mid >= vegetable_share * base_mass_;
}

// Makers weigh it against the line: a printed ratio, no equal dose.
bool StandInPlace::by_weight(const Candidate& candidate) const {
    const auto& swaps = context_.knowledge().records().swaps;
    return !candidate.swaps.empty() &&
           std::all_of(candidate.swaps.begin(), candidate.swaps.end(), [&](std::size_t s) { return swaps[s].basis == Basis::weight; });
}

bool StandInPlace::is_filling(std::size_t l, const Candidate& candidate) const {
    const Ingredient& food = ingredient(candidate.food);
    if (is_vegetable(food)) return true;
    const bool dry_or_poured = food.tissue == Tissue::dry || food.tissue == Tissue::liquid;
    if (dry_or_poured || !by_weight(candidate) || !is_bulk(l)) return false;
    const double equal = candidate.food.grams.mid / candidate.share / as_picked(lines()[l], context_.nominal()).grams.mid;
    return equal >= context_.constant("advice.bulk.least") && equal <= context_.constant("advice.bulk.most");
}

StandInPlace::Weights StandInPlace::weights(std::size_t l, const Candidate& candidate) const {
    const double twice_the_leaf = context_.constant("advice.place.twice-the-leaf");
    const double slack = context_.constant("advice.place.slack");
    const double salt_slack = context_.constant("advice.place.salt-slack");
    const double as_printed = context_.constant("advice.place.as-printed");
    const double bodiless = context_.constant("advice.place.bodiless");
    const double most_times = context_.constant("advice.place.most-times");
    const double equal = candidate.food.grams.mid / candidate.share, line = as_picked(lines()[l], context_.nominal()).grams.mid;
    const auto lift = asked_.lift.find(candidate.role);
    const bool plain = plain_salt(ingredient(candidate.food), context_.knowledge());
    const bool paste = candidate.role == Role::salt && !plain;  // miso for doenjang: more of it is bought for its colour
    const double over = candidate.role == Role::salt && plain ? salt_slack : paste ? as_printed : by_weight(candidate) ? as_printed : slack;
    const double most = std::min(over * candidate.food.grams.mid * (lift == asked_.lift.end() ? 1.0 : lift->second), candidate.most_grams);
    // Fennel is there for the body of an onion, and a clove has none.
    if (candidate.role == Role::allium && !contains(ingredient(candidate.food).roles, Role::allium) && !fills_the_bowl(l))
        return {equal, 0};
    // The taste of onion by the pinch fills no bowl: half of the line is body.
    if (candidate.role == Role::allium && by_the_pinch(candidate) && fills_the_bowl(l)) return {equal / bodiless, most};
    if (is_dried_form(l, candidate.food)) return {equal, most};
    if (seasons_for(l, candidate)) return {is_bulk(l) ? equal / bodiless : equal, most};
    if (!is_bulk(l)) {
        // Of a little of a vegetable too, no crumb and no basketful: the rest of the dose is left to others.
        const Tissue tissue = ingredient(lines()[l]).tissue;
        const bool dry = tissue == Tissue::dry && ingredient(candidate.food).tissue == Tissue::dry;
        const bool no_vegetable = !is_vegetable(ingredient(candidate.food).tissue);
        if (has_body(l) && !dry && no_vegetable && (most_times * equal < line || equal > most_times * line)) return {equal, 0};
        if (!is_vegetable(tissue) || no_vegetable) return {equal, most};
        // Of a few bird chiles' heat a milder pod brings no more than its flesh may weigh in the paste.
        const double flesh = candidate.role == Role::heat ? context_.constant("stand_ins.heat.flesh") * base_mass_ : 0;
        return {std::max(equal, line / most_times), std::min(most, std::max(most_times * line, flesh))};
    }
    if (!is_filling(l, candidate)) return {equal / bodiless, most};
    // A strong herb that makers weigh against a leaf is there for the taste of both: half as much culantro as coriander leaf fills its
    // place.
    const Ingredient &from = ingredient(lines()[l]), &to = ingredient(candidate.food);
    if (to.roles.front() == Role::herb && contains(from.roles, Role::herb) && candidate.swaps.size() == 1 && by_weight(candidate) &&
        equal < line)
        return {equal, most};
    // A milder chile has no partner that brings the rest of its heat: more of it comes in, as far as the bulk allows.
    const double most_bulk = context_.constant("advice.bulk.most") * line, full = candidate.role == Role::heat ? most_bulk : line;
    const double whole = std::clamp(equal, context_.constant("advice.bulk.least") * line, full);
    // Who wants it greener gets more of the leaf that comes in, as of one that is there.
    const bool greener = candidate.role == Role::green && asked_.by_goal.count(Role::green) > 0 && asked_.up.count(Role::green) > 0;
    return {whole, greener ? std::max(most, twice_the_leaf * whole) : std::min(most, most_bulk)};
}

bool StandInPlace::adds_nothing(std::size_t l, const Candidate& candidate, const Material& per_gram, double most) const {
    constexpr double some = 0.25;  // of the heat; judgement
    if (candidate.role != Role::heat) return false;
    const double was = dose_of(context_.nominal().unit(lines()[l]), Role::heat) * missing_of(l);
    return dose_of(per_gram, Role::heat) * most < some * was;
}

double StandInPlace::least(std::size_t l, const Candidate& candidate, double whole) const {
    const double third = context_.constant("advice.place.third");
    const double rest_of_meat = context_.constant("advice.place.rest-of-meat");
    const double pinch = context_.constant("advice.place.pinch");
    const double by_choice = context_.constant("advice.place.by-choice");
    const double weighed = context_.constant("advice.place.weighed");
    double grams = third * whole * missing_of(l) / lines()[l].grams.mid;
    if (is_dried_form(l, candidate.food) || seasons_for(l, candidate) || by_the_pinch(candidate)) grams = pinch * whole;
    else if (!problem_.missing[l]) grams = by_choice * whole;
    else if (candidate.role == Role::lean && ingredient(candidate.food).meat) grams *= rest_of_meat / third;
    else if (has_body(l)) grams = third * fairly_missing(l);
    else if (by_weight(candidate)) grams *= weighed / third;
    return candidate.share < 1 ? std::min(grams, candidate.food.grams.mid) : grams;
}

// Chives for ramps, culantro for coriander: a small bunch of them brings back some of the taste, if not the bulk. And of a leaf that is
// near the line whatever the garden has goes in, though something else must make up for the rest.
bool StandInPlace::little_will_do(std::size_t l, const Candidate& candidate, double most) const {
    const double near_enough = context_.constant("advice.place.near-enough");
    const double part_worth_picking = context_.constant("advice.place.part-worth-picking");
    const double pinch = context_.constant("advice.place.pinch");
    if (!has_body(l)) return true;
    const bool vegetable = is_filling(l, candidate) && !seasons_for(l, candidate);
    if (vegetable && candidate.closeness >= near_enough && most >= part_worth_picking * fairly_missing(l)) return true;
    const Ingredient &from = ingredient(lines()[l]), &to = ingredient(candidate.food);
    const auto both = [&](Role role) { return contains(from.roles, role) && contains(to.roles, role); };
    return to.tissue == Tissue::thin_leaf && (both(Role::allium) || both(Role::herb)) && most >= pinch * weights(l, candidate).whole;
}

bool StandInPlace::fills(std::size_t l, const Candidate& candidate, double most) const {
    const double third = context_.constant("advice.place.third");
    if (!is_filling(l, candidate) || seasons_for(l, candidate)) return false;
    return std::min(weights(l, candidate).most, most) >= third * fairly_missing(l);
}

void StandInPlace::hold_bulk(Problem& problem, std::size_t l, std::size_t first, bool only_one) const {
    const double all_but = context_.constant("advice.fair.all-but");
    const double missing = missing_share(problem, l);
    const auto is_short = [&](const Move& m) { return m.fills && m.most * m.covers->per_gram < all_but * missing; };
    const auto from = problem.moves.begin() + static_cast<std::ptrdiff_t>(first);
    if (!only_one && std::any_of(from, problem.moves.end(), is_short)) return;
    for (auto move = from; move != problem.moves.end(); ++move)
        if (move->kind == MoveKind::stand_in && move->line == l) move->least = std::max(move->least, alone(*move).value_or(0));
}

// Grams that hold the bulk of a vegetable where so much of it may stand alone for that.
std::optional<double> StandInPlace::alone(const Move& move) const {
    const double bodiless = context_.constant("advice.place.bodiless");
    const double clear_of_cap = context_.constant("advice.place.clear-of-cap");
    const double missing = missing_as_picked(move.line);
    if (!move.fills || move.covers->per_gram * bodiless * missing > 1) return std::nullopt;
    return std::min(clear_of_cap * move.most, context_.constant("advice.bulk.least") * missing);
}

}  // namespace standin
