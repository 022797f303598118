#include "adapt/part_way.hpp"

#include <algorithm>
#include <cmath>

#include "adapt/distance/met.hpp"
#include "adapt/variants/variant_list.hpp"

namespace standin {
namespace {

// How much of the way to what was asked for a want has gone; figures: before and after, then what was asked for.
double way_gone(const WantResult& want) {
    if (want.met) return 1;
    const auto& figures = want.reason.figures;
    if (figures.size() < 2 || !figures[0].before) return 0;
    const double before = *figures[0].before, whole = figures[1].after - before;
    return whole == 0 ? 0 : (figures[0].after - before) / whole;
}

bool of_the_bite(Property property) { return property == Property::bind || property == Property::firmness; }

bool goes_far_enough(const Variant& variant, double enough) {
    return std::all_of(variant.wants.begin(), variant.wants.end(), [&](const WantResult& want) { return way_gone(want) >= enough; });
}

// Whether a line that is not there is left out though the list has what stands in for it.
bool leaves_a_stand_in_unused(const Variant& variant) {
    return std::any_of(variant.edits.begin(), variant.edits.end(),
                       [](const Edit& edit) { return edit.reason.kind == ReasonKind::not_there && !edit.reason.foods.empty(); });
}

void put_first(AdaptAnswer& answer, Variant first, std::size_t top) {
    answer.variants.insert(answer.variants.begin(), std::move(first));
    answer.variants.resize(std::min(answer.variants.size(), std::max<std::size_t>(2, top)));
    number(answer.variants);
}

}  // namespace

bool weighs_anew(const Variant& variant) {
    return std::any_of(variant.edits.begin(), variant.edits.end(), [](const Edit& edit) { return edit.kind != EditKind::process; });
}

bool goes_too_far(const AdaptAnswer& answer, const std::vector<Goal>& goals, const Context& context) {
    if (!all_in_words(goals) || !answer.conflict.empty() || answer.variants.empty() || !meets_all(answer.variants.front())) return false;
    const Variant& whole = answer.variants.front();
    return leaves_a_stand_in_unused(whole) ||
           whole.distance > context.constant(of_the_bite(goals.front().property) ? "advice.part-way.from-bite" : "advice.part-way.from");
}

void put_part_way_first(AdaptAnswer& answer, AdaptAnswer gentle, std::size_t top, const Context& context) {
    if (gentle.variants.empty()) return;
    Variant first = std::move(gentle.variants.front());
    const Variant& whole = answer.variants.front();
    const double off = std::sqrt(first.distance * first.distance + missed_square(first, context.constant("advice.part-way.weight")));
    const bool nearer = off <= context.constant("advice.part-way.nearer") * whole.distance;
    const bool far_enough = goes_far_enough(first, context.constant("advice.part-way.least"));
    // Who asks for a green one of a red garden has a sausage first, and is told that it is not green.
    const double hopeless = context.constant("advice.part-way.hopeless");
    const bool is_one = whole.distance > hopeless && first.distance <= hopeless;
    // Nor is a mass that is told to set in its acid one that goes part of the way to holding.
    const auto sets = [](const Variant& v) {
        return std::any_of(v.prediction.cautions.begin(), v.prediction.cautions.end(),
                           [](const CautionText& caution) { return caution.id == "acid-set"; });
    };
    // Nor is what is another sausage all the same put before one that does all of it and lies hardly further.
    constexpr double clearly = 0.5;  // noticeable differences; judgement
    const bool word_nearer = (first.nearness < whole.nearness && first.distance + clearly <= whole.distance) ||
                             whole.distance > context.constant("advice.part-way.from");
    // Nobody leaves out what the list stands in for, for the sake of a word.
    const bool whole_garden = leaves_a_stand_in_unused(whole) && !leaves_a_stand_in_unused(first);
    const bool some_of_it = whole_garden && goes_far_enough(first, context.constant("advice.part-way.least") / 2);
    if (!(nearer && (word_nearer || whole_garden)) || meets_all(first) || !(far_enough || is_one || some_of_it)) return;
    if (sets(first) && !sets(whole)) return;
    Reason told = make_reason(ReasonKind::part_way);
    if (!far_enough) told.role = "hardly";
    first.gives_back.insert(first.gives_back.begin(), std::move(told));
    answer.would_give = std::move(gentle.would_give);
    put_first(answer, std::move(first), top);
    answer.plans_visited += gentle.plans_visited;
    answer = with_safety(std::move(answer));
}

void put_making_first(AdaptAnswer& answer, Variant made, std::size_t top, const Context& context) {
    if (weighs_anew(made) || made.edits.empty()) return;
    if (meets_all(made) || !goes_far_enough(made, context.constant("advice.making.enough"))) return;
    made.gives_back.insert(made.gives_back.begin(), make_reason(ReasonKind::by_making));
    put_first(answer, std::move(made), top);
    answer = with_safety(std::move(answer));
}

}  // namespace standin
