// What goes onto paper beside an answer: label, cold store, money.
#include "evaluate/checked_formula.hpp"
#include "evaluate/predict.hpp"
#include "face/inside.hpp"
#include "formula/kitchen/price_list.hpp"
#include "standin/engine.hpp"
#include "worksheet/cost.hpp"
#include "worksheet/freezing.hpp"
#include "worksheet/glut.hpp"
#include "worksheet/label_draft.hpp"
#include "worksheet/makes.hpp"

namespace standin {

Result<Paper> Engine::paper(const Formula& formula, const Setting& setting) const {
    const auto options = inside_->asked(setting);
    if (!options) return Failure(options.error());
    const auto checked = CheckedFormula::of(formula, inside_->knowledge);
    if (!checked) return Failure(checked.error());
    const Prediction prediction = weights_only(checked->formula(), inside_->knowledge);
    const auto evaluator = inside_->evaluator_for(checked->formula());
    return Paper{label_draft(checked->formula(), prediction, *evaluator, options->rules), freezing_of(prediction, inside_->knowledge)};
}

Result<PriceList> Engine::read_prices(std::string_view text, std::string_view file) const {
    return standin::read_prices(text, file, inside_->knowledge);
}

Result<Cost> Engine::cost(const Formula& formula, const PriceList& prices, const std::optional<SheetYield>& makes) const {
    const auto checked = CheckedFormula::of(formula, inside_->knowledge);
    if (!checked) return Failure(checked.error());
    const Prediction prediction = predict_formula(checked->formula(), *inside_->evaluator_for(checked->formula()));
    const SheetYield yield = makes ? *makes : makes_of(checked->formula(), prediction, {}, inside_->knowledge);
    return cost_of(checked->formula(), prediction, yield, prices, inside_->knowledge);
}

Result<CostChange> Engine::cost_change(const Formula& base, const Formula& variant, const PriceList& prices) const {
    for (const auto* formula : {&base, &variant})
        if (const auto checked = CheckedFormula::of(*formula, inside_->knowledge); !checked) return Failure(checked.error());
    return standin::cost_change(base, variant, prices, inside_->knowledge);
}

std::vector<KeepForLater> Engine::glut(const Inventory& stock) const { return glut_of(stock, inside_->knowledge); }

}  // namespace standin
