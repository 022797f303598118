#include "adapt/swaps.hpp"

#include <algorithm>
#include <set>

#include "adapt/difference.hpp"
#include "adapt/explain.hpp"
#include "adapt/request.hpp"
#include "adapt/trims.hpp"
#include "adapt/variant.hpp"
#include "adapt/variant_name.hpp"
#include "adapt/verdict.hpp"
#include "adapt/yardstick.hpp"
#include "core/band.hpp"
#include "evaluate/predict.hpp"
#include "knowledge/season.hpp"
#include "safety/allergens.hpp"
#include "safety/safety.hpp"
#include "substitute/conditions.hpp"
#include "substitute/dose.hpp"
#include "substitute/stand_ins.hpp"

namespace standin {
namespace {

class LineSwaps {
public:
    LineSwaps(const Formula& formula, std::size_t line, const Context& context)
        : formula_(formula),
          line_(line),
          context_(context),
          knowledge_(context.knowledge()),
          nominal_(formula, context.nominal()),
          yardstick_(context, nominal_.total(), nominal_.state(), {}),
          drawn_(formula, context.sampled()),
          base_states_(drawn_.states()),
          base_(predict_formula(formula, drawn_, base_states_, context.evaluator)) {
        mark_safety(base_, formula, knowledge_, context.options.rules);
    }

    SwapsAnswer answer(std::size_t top) {
        const Line& line = formula_.lines[line_];
        const Ingredient& ingredient = *knowledge_.ingredient(line.ingredient);
        const SwapGraph graph(knowledge_);
        SwapsAnswer answer;
        answer.line = ingredient.id;
        answer.name = ingredient.names.front();
        answer.line_grams = line.grams.mid;
        answer.roles = ingredient.roles;
        std::vector<Ranked> ranked;
        Candidates candidates = candidates_for(line, formula_.process, graph, context_.nominal(), [](const Ingredient&) { return true; });
        for (auto& candidate : candidates.fit) ranked.push_back(balanced(std::move(candidate)));
        std::stable_sort(ranked.begin(), ranked.end(), [](const Ranked& a, const Ranked& b) { return a.distance < b.distance; });
        for (std::size_t i = 0; i < std::min(top, ranked.size()); ++i) answer.stand_ins.push_back(stand_in(ranked[i]));
        for (const auto& candidate : candidates.refused) answer.left_out.push_back(refusal(candidate));
        answer.allergens = base_.allergens;
        answer.cautions = base_.cautions;
        answer.core_c = base_.core_c;
        return answer;
    }

private:
    // Which food, and what it would ask for.
    std::string refusal(const Candidate& candidate) const {
        const Swap& last = knowledge_.records().swaps[candidate.swaps.back()];
        std::string why = knowledge_.ingredient(candidate.food.ingredient)->names.front() + ": ";
        for (const auto& ask : conditions_ask(last, formula_.process, knowledge_)) why += (why.back() == ' ' ? "" : "; ") + ask;
        return why;
    }

    Formula swapped(const Candidate& candidate) const {
        Formula variant = formula_;
        Line food = candidate.food;
        food.grams = exactly(kitchen_grams(food.grams.mid, false));
        variant.lines[line_] = food;
        return variant;
    }

    // A candidate in the formula, with what follows it.
    struct Ranked {
        Candidate candidate;
        Trimmed trimmed;
        double distance = 0;
    };

    Ranked balanced(Candidate candidate) const {
        double price = context_.constant("advice.price.swap") * (1 - candidate.closeness);
        for (const auto& allergen : knowledge_.ingredient(candidate.food.ingredient)->allergens)
            price += known_allergen(allergen) ? 0 : context_.constant("advice.price.allergen");
        Trimmed trimmed = trimmed_after(swapped(candidate), line_, counted_as(candidate, formula_.lines[line_], context_.nominal()),
                                        yardstick_, context_);
        const double distance = price + trimmed.distance;
        return {std::move(candidate), std::move(trimmed), distance};
    }

    // The currency of the swap, as the first of the path has it.
    std::string dose_in_words(const Candidate& candidate) const {
        const auto& swaps = knowledge_.records().swaps;
        const Line& line = formula_.lines[line_];
        if (candidate.swaps.size() == 1 && swaps[candidate.swaps.front()].basis == Basis::weight)
            return "by weight, " + figures(swaps[candidate.swaps.front()].ratio->band.mid) + " g for each gram";
        const double dose = dose_of(context_.nominal().unit(line), candidate.role) * line.grams.mid;
        return figures(dose) + " " + std::string(dose_unit(candidate.role)) + ", as the line brings";
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
        s.grams = kitchen_grams(candidate.food.grams.mid, false);
        s.grams_band = dose_band(candidate);
        s.closeness = candidate.closeness;
        s.path.push_back(formula_.lines[line_].ingredient);
        for (const auto swap : candidate.swaps) s.path.push_back(records.swaps[swap].to);
        s.dose = dose_in_words(candidate);
        s.trims = ranked.trimmed.trims;
        s.distance = ranked.distance;
        s.verdict = verdict_of(s.distance, context_);
        const Swap& last = records.swaps[candidate.swaps.back()];
        s.note = last.note;
        if (context_.options.month) s.in_season = in_season(ingredient, *context_.options.month, context_.options.season_shift);
        s.needs = conditions_ask(last, formula_.process, knowledge_);
        std::set<std::string> sources;
        for (const auto swap : candidate.swaps)
            if (sources.insert(records.swaps[swap].source).second) s.sources.push_back(records.swaps[swap].source);
        look_at(s, ranked.trimmed.formula);
        s.formula = ranked.trimmed.formula;
        name_swapped(s.formula, formula_, s, knowledge_.ingredient(formula_.lines[line_].ingredient)->names.front());
        for (const auto& allergen : ingredient.allergens)
            if (!known_allergen(allergen)) s.new_allergens.push_back(allergen);
        return s;
    }

    // How unsure the equal dose is: both foods' doses at every draw. By weight the band is the ratio's own.
    Band dose_band(const Candidate& candidate) {
        const auto& swaps = knowledge_.records().swaps;
        const Line& line = formula_.lines[line_];
        const Swap& only = swaps[candidate.swaps.front()];
        if (candidate.swaps.size() == 1 && only.basis == Basis::weight) return scaled(only.ratio->band, line.grams.mid);
        const auto from = context_.sampled().units(line), to = context_.sampled().units(candidate.food);
        std::vector<double> grams;
        for (std::size_t i = 0; i < from->size(); ++i) {
            const double given = dose_of((*from)[i], candidate.role), taken = dose_of((*to)[i], candidate.role);
            if (taken > 0) grams.push_back(line.grams.mid * given / taken);
        }
        if (grams.empty()) return candidate.food.grams;
        const Band spread = band_of(std::move(grams));
        return spread.mid > 0 ? scaled(spread, candidate.food.grams.mid / spread.mid) : candidate.food.grams;
    }

    // What changes with it, and what there is to be minded that there was not.
    void look_at(StandIn& s, const Formula& variant) {
        const SampledBatch batch(variant, context_.sampled());
        const auto states = batch.states();
        const Differences d = differences_between(base_states_, states);
        s.effects = d.properties;
        s.colour_difference = d.rested;
        Prediction there = predict_formula(variant, batch, states, context_.evaluator);
        mark_safety(there, variant, knowledge_, context_.options.rules);
        s.allergens = there.allergens;
        s.core_c = there.core_c;
        for (const auto& caution : there.cautions)
            if (std::none_of(base_.cautions.begin(), base_.cautions.end(), [&](const CautionText& c) { return c.text == caution.text; }))
                s.cautions.push_back(caution);
    }

    const Formula& formula_;
    std::size_t line_;
    const Context& context_;
    const Knowledge& knowledge_;
    NominalBatch nominal_;
    Yardstick yardstick_;
    SampledBatch drawn_;
    std::vector<State> base_states_;
    Prediction base_;
};

}  // namespace

Result<SwapsAnswer> swaps_for_line(const CheckedFormula& checked, std::string_view line, std::size_t top, const Context& context) {
    const Formula& formula = checked.formula();
    const auto index = line_named(formula, line, context.knowledge());
    if (!index) return Failure(index.error());
    return LineSwaps(formula, *index, context).answer(top);
}

}  // namespace standin
