#include "evaluate/learn.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <utility>

#include "evaluate/batch.hpp"
#include "evaluate/predict.hpp"

namespace standin {
namespace {

constexpr int steps = 4, shifts = 2;
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

// How one property goes with each uncertain quantity that it goes with at all: deviates for a unit of the property.
using Gains = std::vector<std::pair<std::string, double>>;

class Learner {
public:
    Learner(const Formula& formula, const Knowledge& knowledge, std::size_t draws, std::uint64_t seed, const Deviates& before)
        : formula_(formula), knowledge_(knowledge), draws_(draws), seed_(seed), errors_(draws, seed), learned_{before, {}} {}

    // One step of the ensemble towards one measurement; hands back what it went by.
    Gains step(const Measured& measured, int number) {
        const Sampled sampled(knowledge_, draws_, seed_, {}, learned_.sampled);
        const auto values = values_of(SampledBatch(formula_, sampled).states(), measured.figure);
        const double middle = mean(values), variance = product(values, middle, values, middle);
        const double sd = (measured.value.high - measured.value.low) / ends, error = steps * sd * sd;
        Gains gains;
        if (variance <= 0) return gains;
        const auto& noise = errors_.of("kitchen measurement " + std::to_string(number));
        for (const auto& name : sampled.uncertain()) {
            std::vector<double> deviates = sampled.deviates(name);
            const double own = mean(deviates), spread = product(deviates, own, deviates, own);
            const double together = product(deviates, own, values, middle);
            if (spread <= 0 || together * together < least_share * spread * variance) continue;
            gains.emplace_back(name, together / variance);
            const double gain = together / (variance + error);
            for (std::size_t i = 0; i < draws_; ++i) {
                const double moved = deviates[i] + gain * (measured.value.mid + std::sqrt(error) * noise[i] - values[i]);
                deviates[i] = std::clamp(moved, -farthest, farthest);
            }
            learned_.sampled[name] = std::move(deviates);
        }
        return gains;
    }

    // What the steps left of the way to the measurement, since the property is no straight line: all draws go it together.
    void shift(const Measured& measured, const Gains& gains) {
        const Sampled sampled(knowledge_, draws_, seed_, {}, learned_.sampled);
        const double off = measured.value.mid - mean(values_of(SampledBatch(formula_, sampled).states(), measured.figure));
        for (const auto& [name, gain] : gains)
            for (auto& deviate : learned_.sampled[name]) deviate = std::clamp(deviate + gain * off, -farthest, farthest);
    }

    Learned done() && {
        for (const auto& [name, deviates] : learned_.sampled) learned_.middle[name] = {mean(deviates)};
        return std::move(learned_);
    }

private:
    const Formula& formula_;
    const Knowledge& knowledge_;
    std::size_t draws_;
    std::uint64_t seed_;
    Draws errors_;
    Learned learned_;
};

}  // namespace

Learned learned_from(const Formula& formula, const std::vector<Measured>& measured, const Knowledge& knowledge, std::size_t draws,
                     std::uint64_t seed, const Deviates& before) {
    Learner learner(formula, knowledge, draws, seed, before);
    std::vector<Gains> first(measured.size());
    for (int n = 0; n < steps; ++n)
        for (std::size_t m = 0; m < measured.size(); ++m) {
            Gains gains = learner.step(measured[m], n);
            if (n == 0) first[m] = std::move(gains);
        }
    for (int n = 0; n < shifts; ++n)
        for (std::size_t m = 0; m < measured.size(); ++m) learner.shift(measured[m], first[m]);
    return std::move(learner).done();
}

}  // namespace standin
