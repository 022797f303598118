// Why a property is what it is.
#include "predict/why.hpp"

#include "face/inside.hpp"

namespace standin {

Result<WhyAnswer> Engine::why(const Formula& formula, Property property) {
    auto prediction = predict(formula);
    if (!prediction) return Failure(prediction.error());
    const auto without = [&](const std::string& held) {
        Draws draws(inside_->options.draws, inside_->options.seed);
        draws.hold(held);
        Bench bench(inside_->knowledge, std::move(draws));
        const Batch batch(formula, bench.pantry);
        std::vector<double> values(bench.models.count());
        for (std::size_t i = 0; i < values.size(); ++i)
            values[i] = bench.models.state(batch.total(i), batch.process(i), i).properties[property];
        return band_of(std::move(values));
    };
    WhyAnswer answer = why_of(formula, property, inside_->drawn.pantry, without);
    answer.prediction = std::move(*prediction);
    return answer;
}

}  // namespace standin
