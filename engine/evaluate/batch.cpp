#include "evaluate/batch.hpp"

#include "core/band.hpp"

namespace standin {

NominalBatch::NominalBatch(const Formula& formula, const Nominal& nominal)
    : models_(&nominal.models()), process_(nominal.process(formula.process)) {
    for (const auto& line : formula.lines) {
        parts_.emplace_back().add(nominal.unit(line), line.grams.mid);
        total_.add(parts_.back(), 1);
    }
}

SampledBatch::SampledBatch(const Formula& formula, const Sampled& sampled)
    : sampled_(&sampled), process_(sampled.processes(formula.process)) {
    for (const auto& line : formula.lines) {
        Part added{sampled.units(line), std::vector<double>(process_.size(), line.grams.mid)};
        if (line.grams.low != line.grams.high) {
            const auto& deviates = sampled.deviates(line.ingredient + " weight");
            for (std::size_t i = 0; i < added.grams.size(); ++i) added.grams[i] = at(line.grams, deviates[i]);
        }
        parts_.push_back(std::move(added));
    }
}

Material SampledBatch::total(std::size_t draw) const {
    Material sum;
    for (const auto& part : parts_) sum.add((*part.units)[draw], part.grams[draw]);
    return sum;
}

std::vector<State> SampledBatch::states() const {
    std::vector<State> all(count());
    for (std::size_t i = 0; i < all.size(); ++i) all[i] = state(i);
    return all;
}

}  // namespace standin
