#include "models/heat.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace standin {
namespace {

double normal_below(double z) { return 0.5 * std::erfc(-z / std::numbers::sqrt2); }

}  // namespace

BatchHeat batch_heat(const Material& batch, const HeatParameters& p) {
    const double mass = batch[Amount::mass];
    if (!(mass > 0)) return {};
    const double fat = std::min(1.0, batch[Amount::fat] / mass);
    BatchHeat heat;
    heat.heat_mg_kg = batch.share(Amount::capsaicinoids, 1000) * p.kept_cooking;
    heat.heat_shu = heat.heat_mg_kg * p.shu_factor;
    // Piperine fades in the heat much as capsaicin does. What fat damps was measured of capsaicin: pepper is felt as in the reference
    // mass, for no lean patty is hot by what it has of it.
    const double at_reference = 1 + p.fat_damping * p.reference_fat;
    const double pepper = batch.share(Amount::pungency, 1000) * p.kept_cooking;
    heat.effective_mg_kg = heat.heat_mg_kg / (1 + p.fat_damping * fat) + pepper / at_reference;
    heat.scale_mg_kg = heat.effective_mg_kg * at_reference;
    return heat;
}

std::array<double, 6> word_chances(std::span<const double> draws, const std::array<double, 5>& boundaries, double person_sd) {
    if (draws.empty()) return {1, 0, 0, 0, 0, 0};
    const double sd = std::max(person_sd, 1e-9);
    std::array<double, 6> chances{};
    for (const double draw : draws) {
        double below = 0;
        for (std::size_t word = 0; word < boundaries.size(); ++word) {
            const double next = draw > 0 ? normal_below(std::log(boundaries[word] / draw) / sd) : 1.0;
            chances[word] += next - below;
            below = next;
        }
        chances.back() += 1 - below;
    }
    for (double& chance : chances) chance /= static_cast<double>(draws.size());
    return chances;
}

double pod_sigma_of_blend(double pod_sigma, double pods) {
    return std::sqrt(std::log1p(std::expm1(pod_sigma * pod_sigma) / std::max(1.0, pods)));
}

namespace {

using P = HeatParameters;

constexpr std::array bindings{
    Binding<P>{"heat.shu-factor", [](P& p) -> double& { return p.shu_factor; }},
    Binding<P>{"heat.kept-cooking", [](P& p) -> double& { return p.kept_cooking; }},
    Binding<P>{"heat.fat-damping", [](P& p) -> double& { return p.fat_damping; }},
    Binding<P>{"heat.reference-fat", [](P& p) -> double& { return p.reference_fat; }},
    Binding<P>{"heat.word.barely", [](P& p) -> double& { return p.boundaries[0]; }},
    Binding<P>{"heat.word.mild", [](P& p) -> double& { return p.boundaries[1]; }},
    Binding<P>{"heat.word.medium", [](P& p) -> double& { return p.boundaries[2]; }},
    Binding<P>{"heat.word.hot", [](P& p) -> double& { return p.boundaries[3]; }},
    Binding<P>{"heat.word.very-hot", [](P& p) -> double& { return p.boundaries[4]; }},
    Binding<P>{"heat.word.person-sd", [](P& p) -> double& { return p.person_sd; }},
};

}  // namespace

std::span<const Binding<HeatParameters>> heat_bindings() { return bindings; }

}  // namespace standin
