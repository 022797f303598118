#include "models/cooking.hpp"

#include <algorithm>
#include <cmath>

namespace standin {
namespace {

using P = CookingParameters;

// The reference state that k is stated for, and the core temperatures it reaches.
constexpr double core_c_reference = 71, core_c_least = 55, core_c_most = 100;
constexpr double core_turn_c = 2;  // C over which its two slopes meet
constexpr double ph_reference = 5.7;
constexpr double salt_pct_reference = 1.5;
constexpr double own_water_reference = 3.5;  // g of its own water a gram of protein in raw meat
constexpr int bend = 16;                     // how tightly water kept follows the straight line up to all the water

/// In the oven heat comes slowly and from all sides, for as long as the middle takes: a patty loses less than a loaf.
double thickness_factor(Cook method, double thickness_mm, const P& p) {
    constexpr double least = 20, most = 120;  // from a patty to a loaf
    if (method != Cook::oven) return 1;
    return std::max(0.0, 1 - p.thicker * std::log2(std::clamp(thickness_mm, least, most) / usual_thickness_mm));
}

double water_per_protein(Cook method, double core_c, const P& p) {
    const double usual = p.water_per_protein[static_cast<std::size_t>(method)];
    const double above = std::clamp(core_c, core_c_least, core_c_most) - core_c_reference;
    const double turned = std::hypot(above, core_turn_c) - core_turn_c;  // one slope bends into the other about the reference
    const double lost = (p.hotter + p.cooler) / 2 * above + (p.hotter - p.cooler) / 2 * turned;
    return std::max(0.0, usual - lost);
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

/// How much of the way from unsalted meat is left.
double unsalted(double salt_pct, const P& p) { return std::exp(-salt_pct / p.salt_scale); }

double salt_factor(double salt_pct, const P& p) { return 1 + p.salt_gain * (unsalted(salt_pct_reference, p) - unsalted(salt_pct, p)); }

/// Of this lot in this pan: plain meat strays further from the mean than a salted, bound mass.
double lot_factor(double salt_pct, const P& p) { return std::pow(p.lot, 1 + p.lot_plain * std::exp(-salt_pct / p.fat_salt_scale)); }

/// Meat with more water of its own a gram of protein, young or dark, keeps more of it.
double own_water_factor(const Material& batch, const P& p) {
    const double protein = batch[Amount::meat_protein], own = batch[Amount::water] - batch[Amount::paste_water] - batch[Amount::gel_water];
    return protein > 0 && own > 0 ? std::pow(own / protein / own_water_reference, p.own_water) : 1;
}

/// `capacity` where water abounds, all the `water` where it does not; likewise for what fat would run.
double kept(double capacity, double water) {
    if (capacity <= 0 || water <= 0) return 0;
    const double least = std::min(capacity, water), most = std::max(capacity, water);
    return least / std::pow(1 + std::pow(least / most, bend), 1.0 / bend);
}

double curve(double fat_pct, double half, double power) {
    const double x = std::pow(fat_pct / half, power);
    return x / (1 + x);
}

/// A salted, bound mass holds its fat until there is more than the meat encloses; a plain one lets it run, beef most.
double share_of_fat_lost(const Material& batch, double fat, Cook method, const P& p) {
    const double salt = batch.share(Amount::salt, 100);
    const double severity = p.severity[static_cast<std::size_t>(method)], plain = curve(fat, p.fat_half, p.fat_power);
    if (method == Cook::poach) return severity * plain;
    const double of_kind = mean_over_meats(batch, p.fat_of_kind);
    if (method == Cook::loose) return severity * of_kind * plain;
    const double looser = of_kind / p.fat_of_kind[static_cast<std::size_t>(Species::pork)];  // than pork, of which the curve was worked out
    const double bound = severity * curve(fat, p.bound_fat_half / std::pow(looser, 1 / p.bound_fat_power), p.bound_fat_power);
    return bound + (p.unsalted_fat * of_kind * plain - bound) * std::exp(-salt / p.fat_salt_scale);
}

/// The share of all its water that a mass keeps in water or in its casing, where it cannot dry.
double share_poached(double core_c, double salt_pct, const P& p) {
    const double over = std::clamp(core_c, core_c_least, core_c_most) - core_c_reference;
    const double above = (over + std::hypot(over, core_turn_c) - core_turn_c) / 2;  // nothing below, without a corner
    const double plain = unsalted(salt_pct, p);
    const double salted_so = 1 - p.drip_unsalted * (plain - unsalted(salt_pct_reference, p));
    return std::max(0.0, (1 - p.drip) * (salted_so - (p.drip_hotter + p.drip_hotter_unsalted * plain) * above));
}

/// Of the water that no binder holds: less of what was poured in than of what cells hold.
double loose_kept(const Material& batch, double binder, const P& p) {
    const double water = batch[Amount::paste_water];
    if (water <= 0) return 0;
    const double poured = batch[Amount::poured_water] / water;
    return (poured * p.poured_kept + (1 - poured) * p.paste_kept) * loose_paste_water(water, binder);
}

double water_kept(const Material& batch, const CookState& state, const P& p) {
    const double salt = batch.share(Amount::salt, 100), water = batch[Amount::water];
    const double protein = water_per_protein(state.method, state.core_c, p) * thickness_factor(state.method, state.thickness_mm, p) *
                           mean_over_meats(batch, p.kind) * own_water_factor(batch, p) *
                           (batch[Amount::meat_protein] - batch[Amount::undone_protein]);
    const double made = acid_factor(ph_as_of_reference(batch, state.ph), p) * lot_factor(salt, p) * (1 - p.care_water * (1 - state.making));
    const double binder = held_in_the_heat(batch, state.ph, p.binder);
    const double paste = loose_kept(batch, binder, p);
    const double gel = p.gel_kept * batch[Amount::gel_water];
    const double left = (1 - p.evaporates[static_cast<std::size_t>(state.method)]) * water;
    if (state.method != Cook::poach) return kept(protein * made * salt_factor(salt, p) + binder + paste + gel, left);
    // A binder takes up part of what would drip, ever less of it the less is left.
    const double drip = std::max(0.0, 1 - share_poached(state.core_c, salt, p) * made) * water;
    const double unbound = drip > 0 ? drip * drip / (drip + binder) : 0;
    return kept(protein + binder + paste + gel, kept(water - unbound, left));
}

/// Water that came in beside the meat encloses no fat, and what is poured in as fat runs by itself: the fat in the cells of the meat stays
/// as it would without either.
double fat_lost(const Material& batch, const CookState& state, const P& p) {
    const double fat = batch[Amount::fat], free = std::min(batch[Amount::free_fat], fat), cells = fat - free;
    if (fat <= 0) return 0;
    const double held = std::exp(-p.binder.efficiency * batch[Amount::held_fat] / fat), care = 1 + p.care_fat * (1 - state.making);
    const double enclosing = std::max(batch[Amount::mass] - batch[Amount::paste_water], fat);
    const auto runs = [&](double part, double fat_pct, double freer) {
        if (part <= 0) return 0.0;
        const double share = kept(share_of_fat_lost(batch, fat_pct, state.method, p) * care, 1);
        return part * held * (1 + freer) * share / (1 + freer * share);
    };
    return runs(cells, 100 * cells / (enclosing - free), 0) + runs(free, 100 * fat / enclosing, p.free_fat);
}

/// What stays of the batch once so much of its water and fat are gone.
BatchCook balance(const Material& batch, double water, double fat) {
    BatchCook result;
    const double mass = batch[Amount::mass], cooked = mass - water - fat;
    result.water_lost_pct = 100 * water / mass;
    result.fat_lost_pct = 100 * fat / mass;
    result.loss_pct = result.water_lost_pct + result.fat_lost_pct;
    result.yield = cooked / mass;
    if (cooked <= 0) return result;
    result.cooked_water_pct = 100 * (batch[Amount::water] - water) / cooked;
    result.cooked_fat_pct = 100 * (batch[Amount::fat] - fat) / cooked;
    result.cooked_protein_pct = 100 * batch[Amount::protein] / cooked;
    result.cooked_salt_pct = 100 * batch[Amount::salt] / cooked;
    return result;
}

}  // namespace

BatchCook batch_cook(const Material& batch, const CookState& state, const CookingParameters& p) {
    if (batch[Amount::mass] <= 0) return {};
    return balance(batch, batch[Amount::water] - water_kept(batch, state, p), fat_lost(batch, state, p));
}

BatchCook with_loss(const Material& batch, const BatchCook& cook, double loss_pct) {
    if (cook.loss_pct <= 0 || batch[Amount::mass] <= 0) return cook;
    const double percent = batch[Amount::mass] / 100;
    const double water = std::min(batch[Amount::water], cook.water_lost_pct * loss_pct / cook.loss_pct * percent);
    const double fat = std::min(batch[Amount::fat], loss_pct * percent - water);
    return balance(batch, std::min(batch[Amount::water], loss_pct * percent - fat), fat);
}

}  // namespace standin
