#include "evaluate/learn.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>

#include "evaluate/batch.hpp"
#include "evaluate/predict.hpp"

namespace standin {
namespace {

constexpr int steps = 4;
constexpr double least_share = 0.015;  // of the variance; judgement: below, 512 draws cannot tell it from chance
constexpr double farthest = 4;         // standard deviations; beyond, the measurement contradicts everything known
constexpr double ends = 2 * 1.644854;  // standard deviations from one end of a band to the other

double mean(const std::vector<double>& values) {
    return std::accumulate(values.begin(), values.end(), 0.0) / static_cast<double>(values.size());
}

double product(const std::vector<double>& a, double mean_a, const std::vector<double>& b, double mean_b) {
    double sum = 0;
    for (std::size_t i = 0; i < a.size(); ++i) sum += (a[i] - mean_a) * (b[i] - mean_b);
    return sum / static_cast<double>(a.size());
}

// One step towards one measurement.
void step(Learned& learned, const Formula& formula, const Measured& measured, const Knowledge& knowledge, std::size_t draws,
          std::uint64_t seed, int number) {
    const Sampled sampled(knowledge, draws, seed, {}, learned.sampled);
    const auto values = values_of(SampledBatch(formula, sampled).states(), measured.property);
    const double middle = mean(values), variance = product(values, middle, values, middle);
    const double sd = (measured.value.high - measured.value.low) / ends, error = steps * sd * sd;
    if (variance <= 0) return;
    const Draws errors(draws, seed);
    const auto& noise = errors.of("kitchen measurement " + std::to_string(number));
    for (const auto& name : sampled.uncertain()) {
        std::vector<double> deviates = sampled.deviates(name);
        const double own = mean(deviates), spread = product(deviates, own, deviates, own);
        const double together = product(deviates, own, values, middle);
        if (spread <= 0 || together * together < least_share * spread * variance) continue;
        const double gain = together / (variance + error);
        for (std::size_t i = 0; i < draws; ++i) {
            const double moved = deviates[i] + gain * (measured.value.mid + std::sqrt(error) * noise[i] - values[i]);
            deviates[i] = std::clamp(moved, -farthest, farthest);
        }
        learned.sampled[name] = std::move(deviates);
    }
}

}  // namespace

Learned learned_from(const Formula& formula, const std::vector<Measured>& measured, const Knowledge& knowledge, std::size_t draws,
                     std::uint64_t seed) {
    Learned learned;
    for (int n = 0; n < steps; ++n)
        for (const auto& one : measured) step(learned, formula, one, knowledge, draws, seed, n);
    for (const auto& [name, deviates] : learned.sampled) learned.middle[name] = {mean(deviates)};
    return learned;
}

}  // namespace standin
