#include "models/bind.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace standin {
namespace {

using P = BindParameters;

constexpr std::array<Binding<P>, 39> bindings{{
    {"bind.error", [](P& p) -> double& { return p.error; }},
    {"bind.meat.reading", [](P& p) -> double& { return p.reading; }},
    {"bind.meat.bull-protein", [](P& p) -> double& { return p.bull_protein; }},
    {"bind.salt.floor", [](P& p) -> double& { return p.salt_floor; }},
    {"bind.salt.middle", [](P& p) -> double& { return p.salt_middle; }},
    {"bind.salt.width", [](P& p) -> double& { return p.salt_width; }},
    {"bind.salt.native", [](P& p) -> double& { return p.native_ions; }},
    {"bind.acid.best", [](P& p) -> double& { return p.ph_best; }},
    {"bind.acid.scale", [](P& p) -> double& { return p.ph_scale; }},
    {"bind.acid.floor", [](P& p) -> double& { return p.ph_floor; }},
    {"bind.cold.up-to", [](P& p) -> double& { return p.cold_up_to; }},
    {"bind.cold.half", [](P& p) -> double& { return p.cold_half; }},
    {"bind.cold.power", [](P& p) -> double& { return p.cold_power; }},
    {"bind.mixing.floor", [](P& p) -> double& { return p.mixing_floor; }},
    {"bind.mixing.time", [](P& p) -> double& { return p.mixing_time; }},
    {"bind.plate.power", [](P& p) -> double& { return p.plate_power; }},
    {"bind.order.cost", [](P& p) -> double& { return p.order_cost; }},
    {"bind.order.acid", [](P& p) -> double& { return p.order_acid; }},
    {"bind.order.together", [](P& p) -> double& { return p.order_together; }},
    {"bind.dilution.protein", [](P& p) -> double& { return p.dilution_protein; }},
    {"bind.dilution.power", [](P& p) -> double& { return p.dilution_power; }},
    {"bind.dilution.paste", [](P& p) -> double& { return p.paste_extra; }},
    {"cooking.binder.efficiency", [](P& p) -> double& { return p.binder_efficiency; }},
    {"bind.binder.cold", [](P& p) -> double& { return p.binder_cold; }},
    {"bind.binder.most", [](P& p) -> double& { return p.binder_most; }},
    {"bind.binder.water", [](P& p) -> double& { return p.binder_water; }},
    {"bind.binder.thinned", [](P& p) -> double& { return p.binder_thinned; }},
    {"bind.scale", [](P& p) -> double& { return p.scale; }},
    {"bind.firmness.protein", [](P& p) -> double& { return p.firm_protein; }},
    {"bind.firmness.fat", [](P& p) -> double& { return p.firm_fat; }},
    {"bind.firmness.water", [](P& p) -> double& { return p.firm_water; }},
    {"bind.firmness.salt", [](P& p) -> double& { return p.firm_salt; }},
    {"bind.firmness.acid", [](P& p) -> double& { return p.firm_ph; }},
    {"bind.firmness.plate", [](P& p) -> double& { return p.firm_plate; }},
    {"bind.firmness.mixing", [](P& p) -> double& { return p.firm_mixing; }},
    {"bind.firmness.mixing-time", [](P& p) -> double& { return p.firm_mixing_time; }},
    {"bind.firmness.binder", [](P& p) -> double& { return p.firm_binder; }},
    {"bind.firmness.binder-own", [](P& p) -> double& { return p.firm_binder_own; }},
    {"bind.firmness.scale", [](P& p) -> double& { return p.firm_scale; }},
}};

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

double acid_factor(double ph, const P& p) {
    const double below = std::max(0.0, p.ph_best - ph) / p.ph_scale;
    return std::min(1.0, bent_over(std::exp(-below * below), p.ph_floor));
}

double cold_factor(double temperature_c, const P& p) {
    const double above = std::max(0.0, temperature_c - p.cold_up_to) / (p.cold_half - p.cold_up_to);
    return 1 / (1 + std::pow(above, p.cold_power));
}

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

/// 0-1: how much of a full binder gel the batch has. Binders that must hold more paste water than they can make a weaker gel.
double binder_gel(const Material& batch, double capacity, const P& p) {
    if (capacity <= 0) return 0;
    const double hot = batch[Amount::held_hot], cold = p.binder_cold * batch[Amount::held_cold];
    const double loose = loose_paste_water(batch[Amount::paste_water], capacity);
    const double gel = p.binder_efficiency * (hot + cold) * capacity / (capacity + p.binder_thinned * loose);
    return 1 - std::exp(-gel / (batch[Amount::mass] * p.binder_water));
}

double meat_index(const Material& batch, const P& p) {
    const double by_protein = batch[Amount::bind_protein] / (p.bull_protein / 100);
    const double weight = std::clamp(p.reading, 0.0, 1.0);
    return (weight * by_protein + (1 - weight) * batch[Amount::bind_mass]) / batch[Amount::mass];
}

double dilution_factor(const Material& batch, double loose, const P& p) {
    const double protein = 100 * batch[Amount::meat_protein] / (batch[Amount::mass] + p.paste_extra * loose);
    return bent_under(std::pow(protein / p.dilution_protein, p.dilution_power), 1);
}

double hardness(const Material& batch, const MixState& mix, const BatchBind& so_far, double gel, const P& p) {
    const double protein = batch.share(Amount::meat_protein, 100), fat = batch.share(Amount::fat, 100);
    const double own = meat_water_per_protein * batch[Amount::meat_protein];
    const double meat = std::pow(protein / firm_protein_share, p.firm_protein) / (1 + fat / p.firm_fat) *
                        (own > 0 ? std::pow(own / std::max(batch[Amount::water], own / 2), p.firm_water) : 0) *
                        std::pow(so_far.salt_factor, p.firm_salt) * std::exp(-p.firm_ph * (mix.ph - meat_ph)) *
                        plate_factor(mix.plate_mm, p.firm_plate) *
                        (1 + p.firm_mixing * (1 - std::exp(-mix.mixing_min / p.firm_mixing_time)));
    return meat / p.firm_scale * (1 + p.firm_binder * gel) + p.firm_binder_own * gel;
}

}  // namespace

std::span<const Binding<BindParameters>> bind_bindings() { return bindings; }

double loose_paste_water(double paste_water, double capacity) {
    return paste_water > 0 ? paste_water * std::exp(-capacity / paste_water) : 0;
}

BatchBind batch_bind(const Material& batch, const MixState& mix, const BindParameters& p) {
    BatchBind result;
    const double mass = batch[Amount::mass];
    if (mass <= 0) return result;
    const double capacity = p.binder_efficiency * (batch[Amount::held_hot] + batch[Amount::held_cold]);
    const double loose = loose_paste_water(batch[Amount::paste_water], capacity);
    const double water_kg = std::max(batch[Amount::water], 1e-6 * mass) / 1000;
    const double gel = binder_gel(batch, capacity, p);

    result.loose_water = loose / mass;
    result.ionic_strength = p.native_ions + batch[Amount::salt] / salt_mol_g / water_kg;
    result.meat = meat_index(batch, p);
    result.salt_factor = salt_factor(result.ionic_strength, p);
    result.acid_factor = acid_factor(mix.ph, p);
    result.order_factor = order_factor(batch, mix.order, p);
    result.cold_factor = cold_factor(mix.temperature_c, p);
    result.mixing_factor = mixing_factor(mix.mixing_min, p);
    result.plate_factor = plate_factor(mix.plate_mm, p.plate_power);
    result.dilution_factor = dilution_factor(batch, loose, p);
    result.binder = p.binder_most * gel;
    result.index = p.error * result.meat * result.salt_factor * result.acid_factor * result.order_factor * result.cold_factor *
                       result.mixing_factor * result.plate_factor * result.dilution_factor +
                   result.binder;
    result.hardness = hardness(batch, mix, result, gel, p);
    result.bind = 100 * (1 - std::exp(-result.index / p.scale));
    result.firmness = 100 * result.hardness / (1 + result.hardness);
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
