#include "adapt/swaps.hpp"

#include <algorithm>
#include <cmath>
#include <set>

#include "adapt/distance/difference.hpp"
#include "adapt/distance/distance.hpp"
#include "adapt/distance/nearness.hpp"
#include "adapt/goals/request.hpp"
#include "adapt/variants/explain.hpp"
#include "adapt/variants/meat_block.hpp"
#include "adapt/variants/swap_note.hpp"
#include "adapt/variants/trims.hpp"
#include "adapt/variants/variant.hpp"
#include "adapt/variants/variant_name.hpp"
#include "core/band.hpp"
#include "core/names.hpp"
#include "evaluate/predict.hpp"
#include "knowledge/index/kinds.hpp"
#include "knowledge/index/line_name.hpp"
#include "knowledge/index/season.hpp"
#include "safety/allergens.hpp"
#include "safety/packets.hpp"
#include "safety/page.hpp"
#include "safety/safety.hpp"
#include "substitute/conditions.hpp"
#include "substitute/dose.hpp"
#include "substitute/portion.hpp"
#include "substitute/stand_ins.hpp"
#include "substitute/standing.hpp"
#include "substitute/stock.hpp"

namespace standin {
namespace {

class LineSwaps {
public:
    LineSwaps(const Formula& formula, std::size_t line, const std::vector<std::string>& without, const Stock& stock, const Context& context)
        : formula_(formula),
          line_(line),
          without_(without),
          stock_(stock),
          context_(context),
          knowledge_(context.knowledge()),
          nominal_(formula, context.nominal()),
          distance_(context, nominal_.total(), nominal_.state(), {}),
          drawn_(formula, context.sampled()),
          base_states_(drawn_.states()),
          base_(predict_formula(formula, drawn_, base_states_, context.evaluator)) {
        mark_safety(base_, formula, context.evaluator, context.options.rules);
        tell_of_packets(base_, without, knowledge_);
    }

    SwapsAnswer answer(std::size_t top) {
        const Line& line = formula_.lines[line_];
        const Ingredient& ingredient = *knowledge_.ingredient(line.ingredient);
        const SwapGraph graph(knowledge_);
        SwapsAnswer answer;
        answer.line = ingredient.id;
        answer.name = line_name(line, knowledge_);
        answer.line_grams = line.grams.mid;
        answer.roles = ingredient.roles;
        on_page_.add(base_);
        std::vector<Ranked> ranked;
        Candidates candidates = candidates_for(
            formula_, line_, graph, context_.nominal(), [&](const Ingredient& i) { return to_hand(i); },
            [&](const Ingredient& i) { return stock_.names(i.id); });
        for (auto& candidate : candidates.fit) ranked.push_back(balanced(std::move(candidate)));
        std::stable_sort(ranked.begin(), ranked.end(), [](const Ranked& a, const Ranked& b) { return a.standing < b.standing; });
        once_each(ranked);
        leave_what_is_spoken_for(ranked);
        // Of which one packet in many holds what is left out comes after all that is sure.
        const auto in_doubt = [&](const Ranked& r) { return stock_.in_doubt(r.candidate.food.ingredient); };
        not_one_kind_alone(ranked);
        std::stable_partition(ranked.begin(), ranked.end(), [&](const Ranked& r) { return !in_doubt(r); });
        for (std::size_t i = 0; i < std::min(top, ranked.size()); ++i) answer.stand_ins.push_back(stand_in(ranked[i]));
        for (const auto& refused : candidates.refused)
            if (refused.by == Refusal::By::process) answer.left_out.push_back(refused.why);
        answer.allergens = base_.allergens;
        answer.cautions = base_.cautions;
        answer.core = base_.core;
        answer.overlay = base_.overlay;
        answer.excluded = stock_.excluded();
        answer.on_page = on_page_.safety();
        return answer;
    }

private:
    // Without a list every shop is open, out of season too: that is told beside it.
    bool to_hand(const Ingredient& food) const { return stock_.listed() ? stock_.can_bring(food) : stock_.leaves_in(food); }

    // The line's place goes to the stand-in; what stays of the line, and the partner, come at the end and are not trimmed.
    Formula swapped(const Candidate& candidate) const {
        Formula variant = formula_;
        for (auto& line : variant.lines) stock_.tell(line);
        Line food = candidate.food;
        food.grams = exactly(weighed(food));
        stock_.tell(food);
        variant.lines[line_] = food;
        const auto beside = [&](Line line, double grams) {
            line.grams = exactly(kitchen_grams(grams, false));
            line.count.reset();
            line.written.clear();
            line.keep = true;
            stock_.tell(line);
            if (line.grams.mid > 0) variant.lines.push_back(std::move(line));
        };
        if (candidate.share < 1) beside(formula_.lines[line_], (1 - candidate.share) * formula_.lines[line_].grams.mid);
        if (candidate.partner) beside(candidate.partner->food, candidate.partner->food.grams.mid);
        return variant;
    }

    // A candidate in the formula, with what follows it.
    struct Ranked {
        Candidate candidate;
        Trimmed trimmed;
        double distance = 0;
        double standing = 0;  ///< in what order a maker would try them: the least first
    };

    // What the list has of it and no other line of the formula needs, weighed as the stand-in is; nothing where there is plenty.
    std::optional<double> free_grams(const Line& food) const {
        const Offer offer = stock_.offer(food);
        if (!offer.grams || !stock_.listed()) return offer.grams;
        double taken = 0;  // share of what is there
        for (std::size_t l = 0; l < formula_.lines.size(); ++l) {
            const Line& own = formula_.lines[l];
            if (l == line_ || own.ingredient != food.ingredient) continue;
            const Offer for_it = stock_.offer(own);
            if (for_it.grams && *for_it.grams > 0) taken += own.grams.mid / *for_it.grams;
        }
        return *offer.grams * std::max(0.0, 1 - taken);
    }

    // Whether the list names it, and enough of it.
    bool is_there(const Line& food) const {
        const auto free = free_grams(food);
        return stock_.names(food.ingredient) && (!free || *free >= food.grams.mid);
    }

    // The whole list is spoken for by the formula's own lines. Where nothing else is there it is told all the same.
    void leave_what_is_spoken_for(std::vector<Ranked>& ranked) const {
        constexpr double worth_weighing = 0.05;  // of what would fill the place: judgement
        const auto spoken_for = [&](const Ranked& r) {
            const auto there = stock_.offer(r.candidate.food).grams, free = free_grams(r.candidate.food);
            return there && free && *free < *there && *free < worth_weighing * r.candidate.food.grams.mid;
        };
        if (!std::all_of(ranked.begin(), ranked.end(), spoken_for)) std::erase_if(ranked, spoken_for);
    }

    // To the kitchen's scale, and not past what a kilo takes of it.
    double weighed(const Line& food) const {
        const double grams = kitchen_grams(food.grams.mid, false);
        double rest = 0;
        for (std::size_t l = 0; l < base_.lines.size(); ++l) rest += l == line_ ? 0 : base_.lines[l].grams;
        const double limit = most_beside(rest, *knowledge_.ingredient(food.ingredient));
        constexpr double over = 1.1;  // what oversteps it by more was not held to it in the first place
        return grams > limit && grams < over * limit ? kitchen_grams(limit, true) : grams;
    }

    // Of a food prepared in two ways the first to try is enough; with another partner it is another answer.
    static void once_each(std::vector<Ranked>& ranked) {
        std::set<std::string> seen;
        std::erase_if(ranked, [&](const Ranked& r) {
            const Candidate& c = r.candidate;
            return !seen.insert(c.food.ingredient + (c.partner ? "+" + c.partner->food.ingredient : "")).second;
        });
    }

    void not_one_kind_alone(std::vector<Ranked>& ranked) const {
        const auto animal = [&](const std::string& id) {
            const auto& meat = knowledge_.ingredient(id)->meat;
            return meat ? std::optional(meat->species) : std::nullopt;
        };
        std::vector<double> standings;
        std::vector<std::optional<Species>> animals;
        std::vector<std::string> foods;
        for (const auto& r : ranked) {
            foods.push_back(r.candidate.food.ingredient);
            standings.push_back(r.standing);
            animals.push_back(animal(r.candidate.food.ingredient));
        }
        std::vector<Ranked> ordered;
        const auto own = animal(formula_.lines[line_].ingredient);
        const Twins twins = twins_of(foods, formula_.lines[line_].ingredient, knowledge_);
        for (const auto i : order_of(standings, animals, own, knowledge_, nearly_same(foods, knowledge_), twins))
            ordered.push_back(std::move(ranked[i]));
        ranked = std::move(ordered);
    }

    Ranked balanced(Candidate candidate) const {
        const double unlike = 1 - candidate.closeness;
        double price = context_.constant("advice.price.swap") * unlike * unlike;
        for (const auto& allergen : knowledge_.ingredient(candidate.food.ingredient)->allergens)
            price += known_allergen(allergen) ? 0 : context_.constant("advice.price.allergen");
        leave_salt(candidate);
        Formula variant = swapped(candidate);
        const bool oiled = candidate.partner && !knowledge_.ingredient(candidate.partner->food.ingredient)->meat;
        const bool by_itself = candidate.share < 1 || (candidate.role == Role::lean && oiled);  // cod and oil: its own fat
        const auto block = by_itself ? std::vector<Trim>{}
                           : is_cured(candidate)
                               ? hold_fat_beside(variant, formula_, line_, context_)
                               : hold_meat_block(variant, formula_, line_, candidate.role, candidate.most_grams, context_);
        candidate.food.grams = exactly(variant.lines[line_].grams.mid);
        Trimmed trimmed =
            trimmed_after(variant, line_, counted_as(candidate, formula_.lines[line_], context_.nominal()), distance_, context_);
        trimmed.trims.insert(trimmed.trims.begin(), block.begin(), block.end());
        hold_aroma(trimmed, candidate.closeness);
        const double distance = std::sqrt(price + trimmed.distance * trimmed.distance);
        const auto& allergens = knowledge_.ingredient(candidate.food.ingredient)->allergens;
        const auto fresh = std::count_if(allergens.begin(), allergens.end(), [&](const auto& a) { return !known_allergen(a); });
        const double order = standing_of(candidate, formula_.lines[line_], trimmed.distance, static_cast<double>(fresh), knowledge_,
                                         is_there(candidate.food));
        return {std::move(candidate), std::move(trimmed), distance, order};
    }

    // Guanciale for bacon: what makers weigh for its cure, by a weight of its own.
    bool is_cured(const Candidate& candidate) const {
        const auto& swaps = knowledge_.records().swaps;
        const bool weighed = candidate.swaps.size() == 1 && swaps[candidate.swaps.front()].basis == Basis::weight;
        return weighed && belongs(*knowledge_.ingredient(formula_.lines[line_].ingredient), "cured", knowledge_);
    }

    // How unlike two foods are is reviewed as their closeness; the notes of their aroma alone, out of proportion in a plain mass, do not
    // make more of it than that bears.
    void hold_aroma(Trimmed& trimmed, double closeness) const {
        const NominalBatch batch(trimmed.formula, context_.nominal());
        const double most = context_.constant("advice.swap.aroma-most") * (1 - closeness);
        for (const auto& residual : distance_.residuals(batch.total(), batch.state())) {
            if (residual.what != "aroma" || std::abs(residual.value) <= most) continue;
            const double square = trimmed.distance * trimmed.distance - residual.value * residual.value + most * most;
            trimmed.distance = std::sqrt(std::max(most * most, square));
        }
    }

    // Of salt that is stood in for in part, as much stays as the stand-in does not bring.
    void leave_salt(Candidate& candidate) const {
        const Line& line = formula_.lines[line_];
        if (candidate.role != Role::salt || !(candidate.share < 1)) return;
        const double brought = context_.nominal().unit(candidate.food)[Amount::salt] * kitchen_grams(candidate.food.grams.mid, false);
        const double there = context_.nominal().unit(line)[Amount::salt] * line.grams.mid;
        if (brought > 0 && there > 0) candidate.share = std::clamp(brought / there, 0.0, candidate.share);
    }

    // The currency of the swap, as the first of the path has it.
    Reason dose_reason(const Candidate& candidate) const {
        const auto& swaps = knowledge_.records().swaps;
        const Line& line = formula_.lines[line_];
        if (candidate.bounded) return *candidate.bounded;
        if (candidate.swaps.size() == 1 && swaps[candidate.swaps.front()].basis == Basis::weight)
            return make_reason(ReasonKind::by_weight, {{"ratio", {}, swaps[candidate.swaps.front()].ratio->band.mid, "g for each gram"}});
        const double dose = dose_of(context_.nominal().unit(line), candidate.role) * line.grams.mid * candidate.share;
        return make_reason(ReasonKind::same_dose, {{"dose", {}, dose, std::string(dose_unit(candidate.role))}});
    }

    bool known_allergen(const std::string& allergen) const {
        return std::any_of(base_.allergens.begin(), base_.allergens.end(), [&](const AllergenText& a) { return a.allergen == allergen; });
    }

    StandIn stand_in(const Ranked& ranked) {
        const Candidate& candidate = ranked.candidate;
        const Records& records = knowledge_.records();
        const Ingredient& ingredient = *knowledge_.ingredient(candidate.food.ingredient);
        StandIn s;
        s.ingredient = ingredient.id;
        s.name = ingredient.names.front();
        for (const auto& step : candidate.food.prepared) s.prepared.push_back(describe(step, knowledge_));
        s.role = candidate.role;
        s.grams = weighed(candidate.food);
        s.grams_band = around(s.grams, dose_band(candidate));
        s.trade = candidate.trade;
        if (candidate.share < 1) s.line_left = kitchen_grams((1 - candidate.share) * formula_.lines[line_].grams.mid, false);
        if (candidate.partner) s.partner = partner(*candidate.partner);
        s.closeness = candidate.closeness;
        s.path.push_back(formula_.lines[line_].ingredient);
        for (const auto swap : candidate.swaps) s.path.push_back(records.swaps[swap].any() ? ingredient.id : records.swaps[swap].to);
        s.dose_reason = dose_reason(candidate);
        s.dose = in_full(s.dose_reason);
        s.trims = ranked.trimmed.trims;
        s.distance = ranked.distance;
        s.nearness = nearness_of(s.distance, context_);
        const Swap& last = records.swaps[candidate.swaps.back()];
        s.note = note_of(candidate.swaps, formula_.lines[line_], candidate.food, stock_);
        if (const auto free = free_grams(candidate.food); free && *free < s.grams) s.on_hand = kitchen_grams(*free, true);
        if (context_.options.month) s.in_season = in_season(ingredient, *context_.options.month, context_.options.season_shift);
        s.needs = conditions_ask(last, formula_.process, knowledge_);
        std::set<std::string> sources;
        for (const auto swap : candidate.swaps)
            if (sources.insert(records.swaps[swap].source).second) s.sources.push_back(records.swaps[swap].source);
        look_at(s, ranked.trimmed.formula);
        s.formula = ranked.trimmed.formula;
        for (std::size_t l = formula_.lines.size(); l < s.formula.lines.size(); ++l) s.formula.lines[l].keep = false;
        name_swapped(s.formula, formula_, s, knowledge_.ingredient(formula_.lines[line_].ingredient)->names.front());
        std::set<std::string> allergens;
        const auto brings = [&](Line food) {
            const auto& own = knowledge_.ingredient(food.ingredient)->allergens;
            allergens.insert(own.begin(), own.end());
            stock_.tell(food);
            for (const auto& told : food.declared) allergens.insert(told.allergen);
        };
        brings(candidate.food);
        if (candidate.partner) brings(candidate.partner->food);
        for (const auto& allergen : allergens)
            if (!known_allergen(allergen)) s.new_allergens.push_back(allergen);
        return s;
    }

    Partner partner(const PartnerFood& beside) const {
        Partner p;
        p.ingredient = beside.food.ingredient;
        p.name = knowledge_.ingredient(p.ingredient)->names.front();
        for (const auto& step : beside.food.prepared) p.prepared.push_back(describe(step, knowledge_));
        p.grams = kitchen_grams(beside.food.grams.mid, false);
        p.reason = beside.why;
        p.why = in_full(p.reason);
        return p;
    }

    // How unsure the equal dose is: both foods' doses at every draw. By weight the band is the ratio's own.
    Band dose_band(const Candidate& candidate) {
        const auto& swaps = knowledge_.records().swaps;
        const Line& line = formula_.lines[line_];
        const Swap& only = swaps[candidate.swaps.front()];
        if (candidate.swaps.size() == 1 && only.basis == Basis::weight) return as_weighed(only.ratio->band, candidate);
        const auto from = context_.sampled().units(line), to = context_.sampled().units(candidate.food);
        std::vector<double> grams;
        for (std::size_t i = 0; i < from->size(); ++i) {
            const double given = dose_of((*from)[i], candidate.role), taken = dose_of((*to)[i], candidate.role);
            if (taken > 0) grams.push_back(line.grams.mid * given / taken);
        }
        if (grams.empty()) return candidate.food.grams;
        return as_weighed(band_of(std::move(grams)), candidate);
    }

    // The spread about what is weighed, which may be held to a part of the line or to what a kilo takes. However unsure the dose, nobody
    // would weigh less or more than that.
    static Band as_weighed(const Band& spread, const Candidate& candidate) {
        if (!(spread.mid > 0)) return candidate.food.grams;
        const double mid = candidate.food.grams.mid;
        const Band band = scaled(spread, mid / spread.mid);
        return {std::min(mid, std::max(band.low, candidate.least_grams)), mid, std::max(mid, std::min(band.high, candidate.most_grams))};
    }

    // The weight that is shown is rounded for the scale, and still lies in its band.
    static Band around(double shown, const Band& band) { return {std::min(band.low, shown), shown, std::max(band.high, shown)}; }

    // What changes with it, and what there is to be minded that there was not.
    void look_at(StandIn& s, const Formula& variant) {
        const SampledBatch batch(variant, context_.sampled());
        const auto states = batch.states();
        const Differences d = differences_between(base_states_, states);
        s.effects = d.properties;
        s.colour_difference = d.rested;
        Prediction there = predict_formula(variant, batch, states, context_.evaluator);
        mark_safety(there, variant, context_.evaluator, context_.options.rules);
        tell_of_packets(there, without_, knowledge_);
        s.allergens = there.allergens;
        s.core = there.core;
        s.cautions = new_cautions(base_, there);
        on_page_.add(there);
    }

    const Formula& formula_;
    std::size_t line_;
    const std::vector<std::string>& without_;
    const Stock& stock_;
    const Context& context_;
    const Knowledge& knowledge_;
    NominalBatch nominal_;
    Distance distance_;
    SampledBatch drawn_;
    std::vector<State> base_states_;
    Prediction base_;
    OnPage on_page_;
};

// The casing that `line` may mean: by its words, or as the line after those that are weighed.
const Beside* casing_meant(const Formula& formula, std::string_view line) {
    const auto is_casing = [](const Beside& b) { return b.kind == BesideKind::casing; };
    const auto casing = std::find_if(formula.beside.begin(), formula.beside.end(), is_casing);
    if (casing == formula.beside.end()) return nullptr;
    const bool by_number = std::all_of(line.begin(), line.end(), [](char c) { return c >= '0' && c <= '9'; });
    const std::string words = fold(line);
    return by_number || words.find("casing") != std::string::npos || fold(casing->written).find(words) != std::string::npos ? &*casing
                                                                                                                            : nullptr;
}

}  // namespace

Result<SwapsAnswer> swaps_for_line(const CheckedFormula& checked, std::string_view line, const SwapsRequest& request,
                                   const Context& context) {
    const Formula& formula = checked.formula();
    const auto index = line_named(formula, line, context.knowledge());
    if (const Beside* casing = index ? nullptr : casing_meant(formula, line))
        return failure(
            Trouble::usage,
            "\"" + casing->written +
                "\" is not weighed, and nothing in the mass changes with it: any casing of the same width stands in, hog, sheep, "
                "beef or collagen (mind whose gut it is); caul wraps patties; without any, shape them by hand");
    if (!index) return Failure(index.error());
    AdaptRequest asked;
    asked.have = request.have;
    asked.without = request.without;
    const auto stock = Stock::of(formula, asked, context);
    if (!stock) return Failure(stock.error());
    SwapsAnswer answer = LineSwaps(formula, *index, request.without, *stock, context).answer(request.top);
    answer.nothing_listed = request.have && request.have->items.empty() && request.have->complete != false;
    return answer;
}

}  // namespace standin
