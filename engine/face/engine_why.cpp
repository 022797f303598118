// Why a property is what it is.
#include "evaluate/predict.hpp"
#include "evaluate/why.hpp"
#include "face/inside.hpp"

namespace standin {

Result<WhyAnswer> Engine::why(const Formula& formula, Property property) {
    auto prediction = predict(formula);
    if (!prediction) return Failure(prediction.error());
    const auto without = [&](const std::string& held) {
        Draws draws(inside_->options.draws, inside_->options.seed);
        draws.hold(held);
        Bench bench(inside_->knowledge, std::move(draws));
        return band_of(values_of(states_of(Batch(formula, bench.pantry), bench.models), property));
    };
    WhyAnswer answer = why_of(formula, property, inside_->drawn.pantry, without);
    answer.prediction = std::move(*prediction);
    return answer;
}

}  // namespace standin
