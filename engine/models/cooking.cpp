#include "models/cooking.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include "models/bind.hpp"

namespace standin {
namespace {

using P = CookingParameters;

template <Cook method>
double& water(P& p) {
    return p.water_per_protein[static_cast<std::size_t>(method)];
}

template <Cook method>
double& severity(P& p) {
    return p.severity[static_cast<std::size_t>(method)];
}

constexpr std::array<Binding<P>, 19> bindings{{
    {"cooking.water.pan", water<Cook::pan>},
    {"cooking.water.grill", water<Cook::grill>},
    {"cooking.water.oven", water<Cook::oven>},
    {"cooking.water.poach", water<Cook::poach>},
    {"cooking.water.hotter", [](P& p) -> double& { return p.hotter; }},
    {"cooking.water.cooler", [](P& p) -> double& { return p.cooler; }},
    {"cooking.acid.slope", [](P& p) -> double& { return p.ph_slope; }},
    {"cooking.acid.most", [](P& p) -> double& { return p.ph_most; }},
    {"cooking.acid.least", [](P& p) -> double& { return p.ph_least; }},
    {"cooking.salt.gain", [](P& p) -> double& { return p.salt_gain; }},
    {"cooking.salt.scale", [](P& p) -> double& { return p.salt_scale; }},
    {"cooking.binder.efficiency", [](P& p) -> double& { return p.binder_efficiency; }},
    {"cooking.paste.kept", [](P& p) -> double& { return p.paste_kept; }},
    {"cooking.fat.pan", severity<Cook::pan>},
    {"cooking.fat.grill", severity<Cook::grill>},
    {"cooking.fat.oven", severity<Cook::oven>},
    {"cooking.fat.poach", severity<Cook::poach>},
    {"cooking.fat.half", [](P& p) -> double& { return p.fat_half; }},
    {"cooking.fat.power", [](P& p) -> double& { return p.fat_power; }},
}};

// The reference state that k is stated for, and the core temperatures it reaches.
constexpr double core_c_reference = 71, core_c_least = 63, core_c_most = 100;
constexpr double ph_reference = 5.7;
constexpr double salt_pct_reference = 1.5;
constexpr int bend = 12;  // how tightly water kept follows the straight line up to all the water

double water_per_protein(Cook method, double core_c, const P& p) {
    const double above = std::clamp(core_c, core_c_least, core_c_most) - core_c_reference;
    return std::max(0.0, p.water_per_protein[static_cast<std::size_t>(method)] - (above > 0 ? p.hotter : p.cooler) * above);
}

/// A straight slope at the reference pH that bends into an upper and a lower end.
double acid_factor(double ph, const P& p) {
    const double room = ph > ph_reference ? p.ph_most - 1 : 1 - p.ph_least;
    return 1 + room * std::tanh(p.ph_slope * (ph - ph_reference) / room);
}

double salt_factor(double salt_pct, const P& p) {
    return 1 + p.salt_gain * (std::exp(-salt_pct_reference / p.salt_scale) - std::exp(-salt_pct / p.salt_scale));
}

/// `capacity` where water abounds, all the `water` where it does not.
double kept(double capacity, double water) {
    if (capacity <= 0 || water <= 0) return 0;
    const double least = std::min(capacity, water), most = std::max(capacity, water);
    return least / std::pow(1 + std::pow(least / most, bend), 1.0 / bend);
}

double share_of_fat_lost(Cook method, double fat_pct, const P& p) {
    const double x = std::pow(fat_pct / p.fat_half, p.fat_power);
    return p.severity[static_cast<std::size_t>(method)] * x / (1 + x);
}

double water_kept(const Material& batch, double ph, Cook method, double core_c, const P& p) {
    const double meat = water_per_protein(method, core_c, p) * batch[Amount::meat_protein] * acid_factor(ph, p) *
                        salt_factor(batch.share(Amount::salt, 100), p);
    const double binder = p.binder_efficiency * (batch[Amount::held_cold] + batch[Amount::held_hot]);
    const double paste = p.paste_kept * loose_paste_water(batch[Amount::paste_water], binder);
    return kept(meat + binder + paste, batch[Amount::water]);
}

double fat_lost(const Material& batch, Cook method, const P& p) {
    const double fat = batch[Amount::fat];
    if (fat <= 0) return 0;
    const double free = fat * std::exp(-p.binder_efficiency * batch[Amount::held_fat] / fat);
    return free * std::clamp(share_of_fat_lost(method, batch.share(Amount::fat, 100), p), 0.0, 1.0);
}

}  // namespace

std::span<const Binding<CookingParameters>> cooking_bindings() { return bindings; }

BatchCook batch_cook(const Material& batch, double ph, Cook method, double core_c, const CookingParameters& p) {
    BatchCook result;
    const double mass = batch[Amount::mass];
    if (mass <= 0) return result;
    const double water = batch[Amount::water] - water_kept(batch, ph, method, core_c, p);
    const double fat = fat_lost(batch, method, p);
    result.water_lost_pct = 100 * water / mass;
    result.fat_lost_pct = 100 * fat / mass;
    result.loss_pct = result.water_lost_pct + result.fat_lost_pct;
    const double cooked = mass - water - fat;
    result.yield = cooked / mass;
    if (cooked <= 0) return result;
    result.cooked_water_pct = 100 * (batch[Amount::water] - water) / cooked;
    result.cooked_fat_pct = 100 * (batch[Amount::fat] - fat) / cooked;
    result.cooked_protein_pct = 100 * batch[Amount::protein] / cooked;
    result.cooked_salt_pct = 100 * batch[Amount::salt] / cooked;
    return result;
}

}  // namespace standin
