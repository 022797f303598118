#include "models/cooking.hpp"

#include <algorithm>
#include <array>
#include <cmath>

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

double& kind(P& p, std::size_t species) { return p.kind[species]; }

template <Cook method>
double& steam(P& p) {
    return p.evaporates[static_cast<std::size_t>(method)];
}

constexpr std::array own{
    Binding<P>{"cooking.water.pan", water<Cook::pan>},
    Binding<P>{"cooking.water.grill", water<Cook::grill>},
    Binding<P>{"cooking.water.oven", water<Cook::oven>},
    Binding<P>{"cooking.water.poach", water<Cook::poach>},
    Binding<P>{"cooking.water.loose", water<Cook::loose>},
    Binding<P>{"cooking.steam.pan", steam<Cook::pan>},
    Binding<P>{"cooking.steam.grill", steam<Cook::grill>},
    Binding<P>{"cooking.steam.oven", steam<Cook::oven>},
    Binding<P>{"cooking.steam.poach", steam<Cook::poach>},
    Binding<P>{"cooking.steam.loose", steam<Cook::loose>},
    Binding<P>{"cooking.water.hotter", [](P& p) -> double& { return p.hotter; }},
    Binding<P>{"cooking.water.cooler", [](P& p) -> double& { return p.cooler; }},
    Binding<P>{"cooking.acid.slope", [](P& p) -> double& { return p.ph_slope; }},
    Binding<P>{"cooking.acid.most", [](P& p) -> double& { return p.ph_most; }},
    Binding<P>{"cooking.acid.least", [](P& p) -> double& { return p.ph_least; }},
    Binding<P>{"cooking.salt.gain", [](P& p) -> double& { return p.salt_gain; }},
    Binding<P>{"cooking.salt.scale", [](P& p) -> double& { return p.salt_scale; }},
    Binding<P>{"cooking.binder.efficiency", [](P& p) -> double& { return p.binder.efficiency; }},
    Binding<P>{"bind.isoelectric.ph", [](P& p) -> double& { return p.binder.isoelectric_ph; }},
    Binding<P>{"bind.isoelectric.width", [](P& p) -> double& { return p.binder.isoelectric_width; }},
    Binding<P>{"bind.isoelectric.loss", [](P& p) -> double& { return p.binder.isoelectric_loss; }},
    Binding<P>{"cooking.paste.kept", [](P& p) -> double& { return p.paste_kept; }},
    Binding<P>{"cooking.fat.pan", severity<Cook::pan>},
    Binding<P>{"cooking.fat.grill", severity<Cook::grill>},
    Binding<P>{"cooking.fat.oven", severity<Cook::oven>},
    Binding<P>{"cooking.fat.poach", severity<Cook::poach>},
    Binding<P>{"cooking.fat.loose", severity<Cook::loose>},
    Binding<P>{"cooking.fat.half", [](P& p) -> double& { return p.fat_half; }},
    Binding<P>{"cooking.fat.power", [](P& p) -> double& { return p.fat_power; }},
    Binding<P>{"cooking.fat.free", [](P& p) -> double& { return p.free_fat; }},
    Binding<P>{"cooking.fat.unsalted", [](P& p) -> double& { return p.unsalted_fat; }},
    Binding<P>{"cooking.fat.salt-scale", [](P& p) -> double& { return p.fat_salt_scale; }},
    Binding<P>{"cooking.care.water", [](P& p) -> double& { return p.care_water; }},
    Binding<P>{"cooking.care.fat", [](P& p) -> double& { return p.care_fat; }},
};

constexpr auto bindings = joined(own, BySpecies<"cooking.kind.", "", P>::bindings<kind>());

// The reference state that k is stated for, and the core temperatures it reaches.
constexpr double core_c_reference = 71, core_c_least = 63, core_c_most = 100;
constexpr double core_turn_c = 2;  // C over which its two slopes meet
constexpr double ph_reference = 5.7;
constexpr double salt_pct_reference = 1.5;
constexpr int bend = 16;  // how tightly water kept follows the straight line up to all the water

double water_per_protein(Cook method, double core_c, const P& p) {
    const double above = std::clamp(core_c, core_c_least, core_c_most) - core_c_reference;
    const double turned = std::hypot(above, core_turn_c) - core_turn_c;  // one slope bends into the other about the reference
    const double lost = (p.hotter + p.cooler) / 2 * above + (p.hotter - p.cooler) / 2 * turned;
    return std::max(0.0, p.water_per_protein[static_cast<std::size_t>(method)] - lost);
}

/// A straight slope at the reference pH that bends into an upper and a lower end.
double acid_factor(double ph, const P& p) {
    const double room = ph > ph_reference ? p.ph_most - 1 : 1 - p.ph_least;
    return 1 + room * std::tanh(p.ph_slope * (ph - ph_reference) / room);
}

/// The pH as if the meat had the reference's by itself: what its own pH does is in the factor of its kind.
double ph_as_of_reference(const Material& batch, double ph) {
    const double bind = batch[Amount::bind_protein];
    return bind > 0 ? ph - batch[Amount::bind_ph] / bind + ph_reference : ph;
}

double salt_factor(double salt_pct, const P& p) {
    return 1 + p.salt_gain * (std::exp(-salt_pct_reference / p.salt_scale) - std::exp(-salt_pct / p.salt_scale));
}

/// `capacity` where water abounds, all the `water` where it does not; likewise for what fat would run.
double kept(double capacity, double water) {
    if (capacity <= 0 || water <= 0) return 0;
    const double least = std::min(capacity, water), most = std::max(capacity, water);
    return least / std::pow(1 + std::pow(least / most, bend), 1.0 / bend);
}

/// In the pan an unsalted patty lets far more fat run than a salted, bound one.
double severity_of(Cook method, double salt_pct, const P& p) {
    const double bound = p.severity[static_cast<std::size_t>(method)];
    return method == Cook::pan ? bound + (p.unsalted_fat - bound) * std::exp(-salt_pct / p.fat_salt_scale) : bound;
}

double share_of_fat_lost(Cook method, double fat_pct, double salt_pct, const P& p) {
    const double x = std::pow(fat_pct / p.fat_half, p.fat_power);
    return severity_of(method, salt_pct, p) * x / (1 + x);
}

double water_kept(const Material& batch, const CookState& state, const P& p) {
    const double meat = water_per_protein(state.method, state.core_c, p) * mean_over_meats(batch, p.kind) * batch[Amount::meat_protein] *
                        acid_factor(ph_as_of_reference(batch, state.ph), p) * salt_factor(batch.share(Amount::salt, 100), p) *
                        (1 - p.care_water * (1 - state.making));
    const double binder = held_in_the_heat(batch, state.ph, p.binder);
    const double paste = p.paste_kept * loose_paste_water(batch[Amount::paste_water], binder);
    const double steam = p.evaporates[static_cast<std::size_t>(state.method)];
    return kept(meat + binder + paste, (1 - steam) * batch[Amount::water]);
}

double fat_lost(const Material& batch, const CookState& state, const P& p) {
    const double fat = batch[Amount::fat];
    if (fat <= 0) return 0;
    const double unheld = fat * std::exp(-p.binder.efficiency * batch[Amount::held_fat] / fat);
    const double share = share_of_fat_lost(state.method, batch.share(Amount::fat, 100), batch.share(Amount::salt, 100), p) *
                         (1 + p.care_fat * (1 - state.making)) * (1 + p.free_fat * batch[Amount::free_fat] / fat);
    return kept(unheld * share, unheld);
}

}  // namespace

std::span<const Binding<CookingParameters>> cooking_bindings() { return bindings; }

BatchCook batch_cook(const Material& batch, const CookState& state, const CookingParameters& p) {
    BatchCook result;
    const double mass = batch[Amount::mass];
    if (mass <= 0) return result;
    const double water = batch[Amount::water] - water_kept(batch, state, p);
    const double fat = fat_lost(batch, state, p);
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
