// Formulas put together by hand, knowledge perhaps changed, and what the models say nominally.
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
inline standin::State nominal_state(const standin::Formula& formula, const standin::Nominal& nominal) {
    return standin::NominalBatch(formula, nominal).state();
}

inline standin::Engine opened(std::size_t draws, std::uint64_t seed = 1) {
    standin::Options options;
    options.draws = draws;
    options.seed = seed;
    return standin::Engine::open(std::move(options)).value();
}

/// The real knowledge's nominal view.
inline const standin::Nominal& nominal() {
    static const standin::Nominal view(knowledge());
    return view;
}
