// What a maker knows of the own kitchen, laid over an engine.
#include <algorithm>
#include <cmath>
#include <optional>
#include <utility>

#include "core/names.hpp"
#include "evaluate/batch.hpp"
#include "evaluate/learn.hpp"
#include "evaluate/state_figure.hpp"
#include "face/inside.hpp"
#include "face/kitchen_notes.hpp"
#include "formula/kitchen/kitchen_text.hpp"
#include "knowledge/index/kitchen_overlay.hpp"
#include "narrate/kitchen_words.hpp"

namespace standin {
namespace {

bool is_fried(const Formula& formula, const Evaluator& evaluator) {
    const Cook cook = evaluator.nominal().process(formula.process).cook;
    return cook == Cook::pan || cook == Cook::loose;
}

/// What was weighed in the pan tells nothing of what is cooked another way.
bool is_of_the_pan(const KitchenFact& fact) {
    return fact.kind == KitchenKind::pan_fat || (fact.kind == KitchenKind::pan_loss && loss_in_the_pan(fact));
}

bool is_of_batch(KitchenKind kind) {
    return kind == KitchenKind::pan_loss || kind == KitchenKind::batch_ph || kind == KitchenKind::pan_fat ||
           kind == KitchenKind::raw_lightness || kind == KitchenKind::cooked_lightness;
}

/// What was measured of the batch, cooked as its formula says; nothing where the fact tells nothing of it.
std::optional<StateFigure> figure_measured(const KitchenFact& fact, const Formula& formula, const Evaluator& evaluator) {
    if (!is_of_batch(fact.kind) || (is_of_the_pan(fact) && !is_fried(formula, evaluator))) return std::nullopt;
    switch (fact.kind) {
        case KitchenKind::pan_loss:
            return figure_of(Property::cook_loss_pct);
        case KitchenKind::pan_fat:
            return fat_run_pct;
        case KitchenKind::raw_lightness:
            return figure_of(ColourPart::raw_lightness);
        case KitchenKind::cooked_lightness:
            return figure_of(ColourPart::lightness);
        default:
            return figure_of(Property::ph);
    }
}

bool is_of(const KitchenFact& fact, const Formula& formula) { return fact.formula.empty() || fold(fact.formula) == fold(formula.title); }

bool says_itself(const Line& line, KitchenKind kind) {
    return kind == KitchenKind::fat    ? line.fat_pct.has_value()
           : kind == KitchenKind::ph   ? line.ph.has_value()
           : kind == KitchenKind::acid ? line.acid_pct.has_value()
                                       : kind == KitchenKind::heat && line.heat_mg_kg.has_value();
}

bool touches(const KitchenFact& fact, const std::vector<const Formula*>& formulas) {
    return std::any_of(formulas.begin(), formulas.end(), [&](const Formula* formula) {
        return std::any_of(formula->lines.begin(), formula->lines.end(), [&](const Line& line) {
            if (fact.kind == KitchenKind::like) return line.ingredient == own_food_id(fact.called);
            return std::find(fact.foods.begin(), fact.foods.end(), line.ingredient) != fact.foods.end() && !says_itself(line, fact.kind);
        });
    });
}

Reason told_so(const KitchenFact& fact, std::string words) {
    Reason told = make_reason(ReasonKind::kitchen_fact, {{"value", {}, fact.value.mid, "", fact.value.low, fact.value.high}}, fact.foods);
    told.note = std::move(words);
    return told;
}

std::optional<std::string> fault_in(const Kitchen& kitchen, const Knowledge& knowledge) {
    for (const auto& fact : kitchen.facts) {
        const auto& v = fact.value;
        if (!std::isfinite(v.low) || !std::isfinite(v.mid) || !std::isfinite(v.high) || v.low > v.mid || v.mid > v.high || v.low < 0)
            return "the kitchen: a fact without a sound figure: \"" + fact.written + "\"";
        for (const auto& food : fact.foods)
            if (!knowledge.ingredient(food)) return "the kitchen: no ingredient has the id \"" + food + "\"";
    }
    return std::nullopt;
}

}  // namespace

std::shared_ptr<const Evaluator> Engine::Inside::evaluator_for(const Formula& formula) const {
    std::vector<Measured> measured;
    for (const auto& fact : kitchen.facts) {
        if (!is_of(fact, formula)) continue;
        if (auto figure = figure_measured(fact, formula, evaluator)) measured.push_back({std::move(*figure), fact.value});
    }
    if (measured.empty()) return {std::shared_ptr<const void>(), &evaluator};  // the engine outlives its questions
    return std::make_shared<const Evaluator>(knowledge, options.draws, options.seed,
                                             learned_from(formula, measured, knowledge, options.draws, options.seed), evaluator.general());
}

std::vector<Reason> kitchen_doubts(const Kitchen& kitchen, const Formula& formula, const Evaluator& evaluator) {
    std::vector<Reason> doubts;
    std::vector<State> states;
    for (const auto& fact : kitchen.facts) {
        if (!is_of(fact, formula)) continue;
        const auto figure = figure_measured(fact, formula, evaluator);
        if (!figure) continue;
        if (states.empty()) states = SampledBatch(formula, evaluator.sampled()).states();
        const Band foretold = band_of(values_of(states, *figure));
        if (foretold.low > fact.value.high || foretold.high < fact.value.low)
            doubts.push_back(told_so(fact, contradicts(fact, kitchen.file, foretold)));
    }
    return doubts;
}

Result<Kitchen> Engine::read_kitchen(std::string_view text, std::string_view file) const {
    return standin::read_kitchen(text, file, inside_->knowledge);
}

Result<Engine> Engine::with_kitchen(const Kitchen& kitchen) const {
    std::shared_ptr<const Inside> base = inside_;
    while (base->general) base = base->general;
    if (auto fault = fault_in(kitchen, base->knowledge)) return failure(Trouble::bad_data, std::move(*fault));
    // Foods known by their likeness alone are there in the general figures too: what is safe goes by those as well.
    Kitchen likes{kitchen.file, {}, {}}, rest = likes;
    for (const auto& fact : kitchen.facts) (fact.kind == KitchenKind::like ? likes : rest).facts.push_back(fact);
    if (!likes.facts.empty()) {
        auto known = standin::with_kitchen(base->knowledge, likes);
        base = std::make_shared<const Inside>(std::move(likes), std::move(known), base);
    }
    return Engine(std::make_shared<const Inside>(kitchen, standin::with_kitchen(base->knowledge, rest), base));
}

std::vector<Reason> kitchen_notes(const Kitchen& kitchen, const std::vector<const Formula*>& formulas, const Evaluator& evaluator,
                                  bool weighed) {
    std::vector<Reason> notes;
    for (const auto& fact : kitchen.facts) {
        if (fact.kind == KitchenKind::scale && !weighed) continue;
        const bool of_food = !fact.foods.empty();
        const bool of_batch = is_of_batch(fact.kind);
        if (formulas.empty() || (of_food && !touches(fact, formulas)) || (of_batch && !is_of(fact, *formulas.front()))) continue;
        if (of_batch && !figure_measured(fact, *formulas.front(), evaluator))
            notes.push_back(told_so(fact, pan_loss_unused(fact, kitchen.file)));
        else notes.push_back(told_so(fact, kitchen_words(fact, kitchen.file, evaluator.knowledge())));
    }
    if (!notes.empty())
        for (const auto& note : kitchen.notes) {
            notes.push_back(note);
            notes.back().kind = ReasonKind::kitchen_fact;
            notes.back().note = kitchen.file + ": " + in_full(note);
        }
    return notes;
}

}  // namespace standin
