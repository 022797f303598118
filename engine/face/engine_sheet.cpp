#include "evaluate/predict.hpp"
#include "face/inside.hpp"
#include "safety/safety.hpp"
#include "standin/engine.hpp"
#include "worksheet/sheet.hpp"

namespace standin {

Result<Sheet> Engine::sheet(const Formula& formula, const SheetRequest& request) {
    const auto& knowledge = inside_->knowledge;
    if (const auto sound = check_formula(formula, knowledge); !sound) return Failure(sound.error());
    const Foretell foretell{[&](const Formula& made) {
                                Prediction prediction = predict_formula(made, inside_->drawn.pantry);
                                mark_safety(prediction, made, knowledge, inside_->options.rules);
                                return prediction;
                            },
                            [&](const Formula& made) {
                                const Batch batch(made, inside_->middle.pantry);
                                return inside_->middle.models.state(batch.total(0), batch.process(0), 0).properties[Property::bind];
                            }};
    return sheet_of(formula, request, knowledge, inside_->options.rules, foretell);
}

}  // namespace standin
