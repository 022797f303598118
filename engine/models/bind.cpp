#include "models/bind.hpp"

#include <algorithm>
#include <cmath>

namespace standin {
namespace {

using P = BindParameters;

constexpr double meat_ph = 5.7;                 // where hardness is unscaled: usual pH of pork
constexpr double firm_protein_share = 15;       // %, where protein leaves hardness unscaled
constexpr double meat_water_per_protein = 3.5;  // g/g, lean with its fat; where water leaves hardness unscaled
constexpr double plate_reference_mm = 5;        // where the plate changes nothing
constexpr double salt_mol_g = 58.44;            // g/mol NaCl
constexpr int bend = 4;                         // how tightly the smooth corners follow the straight lines

/// `value` below `limit`, bending into it.
double bent_under(double value, double limit) {
    const double x = value / limit;
    return value / std::pow(1 + std::pow(x, bend), 1.0 / bend);
}

/// The greater of two, without the corner.
double bent_over(double value, double floor) { return std::pow(std::pow(value, bend) + std::pow(floor, bend), 1.0 / bend); }

double salt_factor(double ionic_strength, const P& p) {
    return p.salt_floor + (1 - p.salt_floor) / (1 + std::exp(-(ionic_strength - p.salt_middle) / p.salt_width));
}

double ph_held(double ph, const P& p) {
    const double below = std::max(0.0, p.ph_best - ph) / p.ph_scale;
    return bent_over(std::exp(-below * below), p.ph_floor);
}

/// Against the same meat at the pH it usually has: the trade's index was found there and holds what that pH costs.
double acid_factor(const Material& batch, double ph, const P& p) {
    const double bind = batch[Amount::bind_protein];
    return ph_held(ph, p) / ph_held(bind > 0 ? batch[Amount::bind_ph] / bind : p.ph_best, p);
}

/// Only fat can smear: the more of it and the softer, the more meat it coats.
double smear_factor(const Material& batch, double temperature_c, const P& p) {
    const double fat = batch[Amount::soft_fat];
    if (fat <= 0) return 1;
    const double half_at = batch[Amount::fat_softens] / fat;
    const double above = std::max(0.0, temperature_c - half_at + p.smear_span) / p.smear_span;
    const double smeared = 1 - 1 / (1 + std::pow(above, p.smear_power));
    return 1 - smeared * (1 - std::exp(-batch.share(Amount::soft_fat, 100) / p.smear_fat));
}

/// Below its freezing point, which salt brings down, a mass keeps that over its temperature of its water liquid; only there is protein
/// brought out, and the stiffer the mass, the less of it is worked.
double thawed_factor(double temperature_c, double salt_per_kg_water, const P& p) {
    const double freezes_at = p.ice_native + p.ice_salt * salt_per_kg_water;
    const double below = std::min(0.0, temperature_c) / freezes_at;
    return std::pow(1 + std::pow(below, bend), -p.ice_power / bend);
}

/// Gums that only thicken lie between the meat proteins as they set.
double gum_factor(const Material& batch, const P& p) { return std::exp(-batch[Amount::held_thick] / batch[Amount::mass] / p.gum_scale); }

double mixing_factor(double minutes, const P& p) {
    return p.mixing_floor + (1 - p.mixing_floor) * (1 - std::exp(-minutes / p.mixing_time));
}

/// Only acid that was added can come at the wrong time, so the cost grows with the dose and fades without it.
double order_factor(const Material& batch, Order order, const P& p) {
    if (order == Order::salt_first) return 1;
    const double dose = 1000 * batch[Amount::titratable] / batch[Amount::mass];
    const double early = order == Order::acid_first ? 1 : p.order_together;
    return 1 - p.order_cost * early * (1 - std::exp(-dose / p.order_acid));
}

double plate_factor(double plate_mm, double power) { return std::pow(std::max(plate_mm, 1.0) / plate_reference_mm, power); }

/// The share of its protein that the meat's salt dissolves, from its salt factor.
double dissolved(double salted, const P& p) { return std::max(0.0, salted - p.salt_floor) / (1 - p.salt_floor); }

/// Only what salt can dissolve comes out while the mass rests.
double rest_factor(double hours, double salted, const P& p) {
    return 1 + p.rest_gain * dissolved(salted, p) * (std::exp(-usual_rest_h / p.rest_time) - std::exp(-hours / p.rest_time));
}

/// What raw fruit digests goes on for as long as the mass rests.
double enzyme_factor(const Material& batch, double hours, const P& p) {
    return std::exp(-p.enzyme_rate * batch[Amount::protease] / batch[Amount::mass] * hours);
}

double core_factor(double core_c, const P& p) {
    constexpr double least = 55, most = 100;  // below it has not set, above is steam
    return std::exp(p.firm_core * (std::clamp(core_c, least, most) - usual_core_c));
}

/// 0-1: how much of a full gel `held` grams of binder water make. Binders that must hold more paste water than they can make a weaker one.
double gel_of(const Material& batch, double held, double capacity, double loose, const P& p) {
    if (held <= 0 || capacity <= 0) return 0;
    return 1 - std::exp(-held * capacity / (capacity + p.binder_thinned * loose) / (batch[Amount::mass] * p.binder_water));
}

/// The gel that holds in the heat; of protein binders only what their isoelectric point leaves.
double hot_gel(const Material& batch, double ph, double capacity, double loose, const P& p) {
    const double hot = batch[Amount::held_hot], cold = batch[Amount::held_cold], own = batch[Amount::held_own];
    if (hot + cold + own <= 0) return 0;
    const double lost = (1 - protein_share_kept(ph, p.binder)) * batch[Amount::held_protein] / (hot + cold + own);
    // What a food holds of its own water it holds whole; of other water only what it gets in a salted mass.
    return gel_of(batch, (p.binder.efficiency * (hot + p.binder_cold * cold) + own) * (1 - lost), capacity + own, loose, p);
}

double meat_index(const Material& batch, const P& p) {
    const double by_protein = batch[Amount::bind_protein] / (p.bull_protein / 100);
    const double weight = std::clamp(p.reading, 0.0, 1.0);
    return (weight * by_protein + (1 - weight) * batch[Amount::bind_mass]) / batch[Amount::mass];
}

/// Protein that makes the network of the cooked mass: egg sets and is part of it.
double network_protein(const Material& batch) { return batch[Amount::meat_protein] + batch[Amount::set_protein]; }

/// Water beside the meat that neither a binder holds nor, of what was poured in, its dissolved protein takes up.
double water_between(const Material& batch, double capacity, double salted, const P& p) {
    const double water = batch[Amount::paste_water];
    if (water <= 0) return 0;
    const double poured = std::min(batch[Amount::poured_water] / water, 1.0);
    const double takes_up = p.takes_up * dissolved(salted, p) * batch[Amount::meat_protein];
    return loose_paste_water(water, capacity + poured * takes_up);
}

double dilution_factor(const Material& batch, double loose, const P& p) {
    const double protein = 100 * network_protein(batch) / (batch[Amount::mass] + p.paste_extra * loose);
    return bent_under(std::pow(protein / p.dilution_protein, p.dilution_power), 1);
}

/// Water beyond the meat's own, as a share of all water.
double foreign_water(const Material& batch, double own) {
    const double share = 1 - own / std::max(batch[Amount::water], 1e-9);
    return bent_over(std::max(0.0, share), 1e-3);
}

double hardness(const Material& batch, const MixState& mix, const BatchBind& so_far, double gel, const P& p) {
    const double protein = 100 * network_protein(batch) / batch[Amount::mass];
    const double fat = batch.share(Amount::fat, 100) + p.firm_free_fat * batch.share(Amount::free_fat, 100);
    const double own = meat_water_per_protein * batch[Amount::meat_protein] + batch[Amount::gel_water];
    if (protein <= 0 || own <= 0) return p.firm_binder_own * gel;
    const double salt_power = p.firm_salt + p.firm_salt_wet * foreign_water(batch, own);
    const double meat = std::pow(protein / firm_protein_share, p.firm_protein) / (1 + fat / p.firm_fat) *
                        std::pow(own / std::max(batch[Amount::water], own / 2), p.firm_water) * std::pow(so_far.salt_factor, salt_power) *
                        std::exp(-p.firm_ph * (mix.ph - meat_ph)) * plate_factor(mix.plate_mm, p.firm_plate) *
                        (1 + p.firm_mixing * (1 - std::exp(-mix.mixing_min / p.firm_mixing_time))) *
                        std::pow(so_far.order_factor * so_far.cold_factor * so_far.enzyme_factor, p.firm_state) *
                        std::pow(so_far.acid_factor, p.firm_set);
    return core_factor(mix.core_c, p) * so_far.gum_factor * meat / p.firm_scale * (1 + p.firm_binder * gel) + p.firm_binder_own * gel;
}

double on_the_scale(double index, const P& p) { return 100 * (1 - std::exp(-index / p.scale)); }

double on_the_bite(double hardness) { return 100 * hardness / (1 + hardness); }

}  // namespace

BatchBind batch_bind(const Material& batch, const MixState& mix, const BindParameters& p) {
    BatchBind result;
    const double mass = batch[Amount::mass];
    if (mass <= 0) return result;
    const double capacity = held_in_the_heat(batch, mix.ph, p.binder);
    const double water_kg = std::max(batch[Amount::water], 1e-6 * mass) / 1000;
    const double salted = batch[Amount::salt] / salt_mol_g / water_kg;
    result.ionic_strength = p.native_ions + salted;
    result.meat = meat_index(batch, p);
    result.salt_factor = salt_factor(result.ionic_strength, p);
    const double thinning = loose_paste_water(batch[Amount::paste_water], capacity);
    const double gel = hot_gel(batch, mix.ph, capacity, thinning, p);
    const double loose = water_between(batch, capacity, result.salt_factor, p);
    result.loose_water = loose / mass;
    result.acid_factor = acid_factor(batch, mix.ph, p);
    result.order_factor = order_factor(batch, mix.order, p);
    result.cold_factor = smear_factor(batch, mix.temperature_c, p) * thawed_factor(mix.temperature_c, salted, p);
    result.mixing_factor = mixing_factor(mix.mixing_min, p);
    result.plate_factor = plate_factor(mix.plate_mm, p.plate_power);
    result.rest_factor = rest_factor(mix.rest_h, result.salt_factor, p);
    result.enzyme_factor = enzyme_factor(batch, mix.rest_h, p);
    result.dilution_factor = dilution_factor(batch, loose, p);
    result.gum_factor = gum_factor(batch, p);
    result.binder = p.binder_most * gel * result.gum_factor;
    const double held = result.salt_factor * result.acid_factor * result.order_factor * result.cold_factor * result.mixing_factor *
                        result.plate_factor * result.rest_factor * result.enzyme_factor * result.dilution_factor;
    result.index = p.error * result.meat * held * std::pow(result.gum_factor, p.gum_bind) + result.binder;
    result.hardness = hardness(batch, mix, result, gel, p);
    result.bind = on_the_scale(result.index, p);
    result.firmness = on_the_bite(result.hardness);

    const double jelly_water = p.binder.efficiency * batch[Amount::held_chilled];
    const double jelly = gel_of(batch, jelly_water, jelly_water + capacity, thinning, p);
    result.bind_served_cold = on_the_scale(result.index + p.jelly_most * jelly, p);
    result.firmness_served_cold = on_the_bite(result.hardness + p.firm_binder_own * jelly);
    return result;
}

std::string_view bind_word(double bind) {
    // Names for stretches of the scale, chosen with it; nothing is computed from them.
    if (bind < 25) return "crumbly";
    if (bind < 45) return "loose";
    if (bind < 65) return "tender";
    if (bind < 85) return "sliceable";
    return "firm-bound";
}

}  // namespace standin
