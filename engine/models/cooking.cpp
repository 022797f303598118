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

// "cooking.kind.pork" and so on, spelled by the compiler from the list of species.
template <std::size_t s>
struct Kind {
    static constexpr auto id = [] {
        std::array<char, 32> text{};
        std::size_t n = 0;
        for (const std::string_view part : {std::string_view("cooking.kind."), Words<Species>::all[s]})
            for (const char c : part) text[n++] = c;
        return std::pair(text, n);
    }();
    static double& field(P& p) { return p.kind[s]; }
    static Binding<P> binding() { return {std::string_view(id.first.data(), id.second), field}; }
};

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
    Binding<P>{"cooking.binder.efficiency", [](P& p) -> double& { return p.binder_efficiency; }},
    Binding<P>{"cooking.paste.kept", [](P& p) -> double& { return p.paste_kept; }},
    Binding<P>{"cooking.fat.pan", severity<Cook::pan>},
    Binding<P>{"cooking.fat.grill", severity<Cook::grill>},
    Binding<P>{"cooking.fat.oven", severity<Cook::oven>},
    Binding<P>{"cooking.fat.poach", severity<Cook::poach>},
    Binding<P>{"cooking.fat.loose", severity<Cook::loose>},
    Binding<P>{"cooking.fat.half", [](P& p) -> double& { return p.fat_half; }},
    Binding<P>{"cooking.fat.power", [](P& p) -> double& { return p.fat_power; }},
    Binding<P>{"cooking.care.water", [](P& p) -> double& { return p.care_water; }},
    Binding<P>{"cooking.care.fat", [](P& p) -> double& { return p.care_fat; }},
};

template <std::size_t... s>
auto with_kinds(std::index_sequence<s...>) {
    std::array<Binding<P>, own.size() + sizeof...(s)> all{};
    std::copy(own.begin(), own.end(), all.begin());
    ((all[own.size() + s] = Kind<s>::binding()), ...);
    return all;
}

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

/// The mean over the meats in the batch; 1 where it has none.
double kind_factor(const Material& batch, const P& p) {
    double sum = 0, meat = 0;
    for (std::size_t s = 0; s < count_of<Species>; ++s) {
        const double grams = batch[static_cast<Species>(s)];
        sum += grams * p.kind[s];
        meat += grams;
    }
    return meat > 0 ? sum / meat : 1;
}

double water_kept(const Material& batch, const CookState& state, const P& p) {
    const double meat = water_per_protein(state.method, state.core_c, p) * kind_factor(batch, p) * batch[Amount::meat_protein] *
                        acid_factor(state.ph, p) * salt_factor(batch.share(Amount::salt, 100), p) * (1 - p.care_water * (1 - state.making));
    const double binder = p.binder_efficiency * (batch[Amount::held_cold] + batch[Amount::held_hot]);
    const double paste = p.paste_kept * loose_paste_water(batch[Amount::paste_water], binder);
    const double steam = p.evaporates[static_cast<std::size_t>(state.method)];
    return kept(meat + binder + paste, (1 - steam) * batch[Amount::water]);
}

double fat_lost(const Material& batch, const CookState& state, const P& p) {
    const double fat = batch[Amount::fat];
    if (fat <= 0) return 0;
    const double free = fat * std::exp(-p.binder_efficiency * batch[Amount::held_fat] / fat);
    const double share = share_of_fat_lost(state.method, batch.share(Amount::fat, 100), p) * (1 + p.care_fat * (1 - state.making));
    return free * std::clamp(share, 0.0, 1.0);
}

}  // namespace

std::span<const Binding<CookingParameters>> cooking_bindings() {
    static const auto all = with_kinds(std::make_index_sequence<count_of<Species>>{});
    return all;
}

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
