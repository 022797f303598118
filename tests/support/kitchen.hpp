// A bench to try formulas on: knowledge, perhaps changed, with its models at the middle of every band or at draws.
#pragma once

#include <functional>
#include <string>
#include <utility>
#include <vector>

#include "evaluate/predict.hpp"
#include "face/inside.hpp"
#include "support/knowledge.hpp"

inline standin::Line line(std::string ingredient, double grams, std::vector<std::string> prepared = {}) {
    standin::Line made;
    made.ingredient = std::move(ingredient);
    made.grams = standin::exactly(grams);
    for (auto& step : prepared) made.prepared.push_back({std::move(step), std::nullopt});
    return made;
}

inline standin::Formula formula(std::vector<standin::Line> lines) {
    standin::Formula made;
    made.title = "Test";
    made.lines = std::move(lines);
    return made;
}

/// The real knowledge after a change of its records; the cross checks are not run.
inline standin::Knowledge changed(const std::function<void(standin::Records&)>& change) {
    standin::Records records = knowledge().records();
    change(records);
    return standin::Knowledge(std::move(records));
}

/// Everything the models say of a formula in the middle of all bands.
inline standin::State middle_state(const standin::Formula& formula, standin::Bench& middle) {
    const standin::Batch batch(formula, middle.pantry);
    return middle.models.state(batch.total(0), batch.process(0), 0);
}

inline standin::Bench& middle_bench() {
    static standin::Bench bench(knowledge(), standin::Draws::middle());
    return bench;
}
