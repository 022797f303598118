#include "models/salt.hpp"

#include <algorithm>
#include <cmath>

#include "models/activity.hpp"

namespace standin {
namespace {

constexpr double water_kg_mol = 0.0180153;
constexpr double sucrose_g_mol = 342.30, hexose_g_mol = 180.16, ethanol_g_mol = 46.07;
constexpr double trace_of_water_g = 1e-6;  // keeps a dry batch defined

double water_fraction(double molality) { return 1 / (1 + water_kg_mol * molality); }

double water_activity(const Material& batch, const SaltParameters& p) {
    const double water = batch[Amount::water] + trace_of_water_g;
    const double per_kg = 1000 / water;  // mol to mol/kg water
    const double meat_water = std::max(0.0, batch[Amount::water] - batch[Amount::paste_water] - batch[Amount::gel_water]);
    double raoult = batch[Amount::alcohol] / ethanol_g_mol + std::abs(batch[Amount::strong_ions]) / 1000;
    for (std::size_t j = 0; j < count_of<Acid>; ++j) raoult += batch[static_cast<Acid>(j)] / 1000;
    const double sucrose = p.sucrose_share * batch[Amount::sugars] / sucrose_g_mol;
    const double hexose = (1 - p.sucrose_share) * batch[Amount::sugars] / hexose_g_mol;
    const double known =
        std::pow(p.native_aw, meat_water / water) * salt_water_activity(batch[Amount::salt] / sodium_chloride_g_mol * per_kg, p) *
        norrish(sucrose * per_kg, p.norrish_sucrose) * norrish(hexose * per_kg, p.norrish_hexose) * water_fraction(raoult * per_kg);
    return std::max(0.0, 1 - p.lowering * (1 - known));
}

constexpr Binding<SaltParameters> bindings[] = {
    {"salt.pitzer.slope", [](SaltParameters& p) -> double& { return p.pitzer.slope; }},
    {"salt.pitzer.b0", [](SaltParameters& p) -> double& { return p.pitzer.b0; }},
    {"salt.pitzer.b1", [](SaltParameters& p) -> double& { return p.pitzer.b1; }},
    {"salt.pitzer.c", [](SaltParameters& p) -> double& { return p.pitzer.c; }},
    {"salt.saturation", [](SaltParameters& p) -> double& { return p.saturation; }},
    {"salt.native_aw", [](SaltParameters& p) -> double& { return p.native_aw; }},
    {"salt.lowering", [](SaltParameters& p) -> double& { return p.lowering; }},
    {"salt.sucrose_share", [](SaltParameters& p) -> double& { return p.sucrose_share; }},
    {"salt.norrish.sucrose", [](SaltParameters& p) -> double& { return p.norrish_sucrose; }},
    {"salt.norrish.hexose", [](SaltParameters& p) -> double& { return p.norrish_hexose; }},
};

}  // namespace

std::span<const Binding<SaltParameters>> salt_bindings() { return bindings; }

double osmotic_coefficient(double molality, const PitzerParameters& p) {
    const double root = std::sqrt(molality);
    return 1 - p.slope * root / (1 + 1.2 * root) + molality * (p.b0 + p.b1 * std::exp(-2 * root)) + molality * molality * p.c;
}

double salt_water_activity(double molality, const SaltParameters& p) {
    const double dissolved = std::clamp(molality, 0.0, p.saturation);
    return std::exp(-2 * water_kg_mol * dissolved * osmotic_coefficient(dissolved, p.pitzer));
}

double norrish(double molality, double k) {
    const double solvent = water_fraction(molality), solute = 1 - solvent;
    return solvent * std::exp(-k * solute * solute);
}

BatchSalt batch_salt(const Material& batch, const SaltParameters& p) {
    BatchSalt answer;
    const double salt = batch[Amount::salt];
    if (!(batch[Amount::mass] > 0)) return answer;
    answer.salt_pct = batch.share(Amount::salt, 100);
    if (batch[Amount::meat] > 0) answer.salt_pct_of_meat = 100 * salt / batch[Amount::meat];
    answer.water_phase_salt_pct = 100 * salt / (salt + batch[Amount::water] + trace_of_water_g);
    answer.water_activity = water_activity(batch, p);
    return answer;
}

}  // namespace standin
