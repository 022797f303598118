#include "models/acid.hpp"

#include <algorithm>
#include <cmath>

#include "models/charge_balance.hpp"

namespace standin {
namespace {

using namespace charge;

constexpr double trace_of_water_g = 1e-6;  // keeps a dry batch defined

// What of a batch the balance needs, gathered once.
struct Mixture {
    std::array<Conditional, count_of<Acid>> constant;
    std::array<double, count_of<Acid>> amount;
    std::array<std::size_t, count_of<Acid>> protons;
    std::size_t acids = 0;
    double water = 0, activity = 1;
    double strong = 0, meat_sites = 0, meat_protons = 0, buffer = 0, buffer_ph = 0;
    const AcidConstants& constants;

    Mixture(const Material& batch, const AcidConstants& c) : constants(c) {
        const Activities g = activities(batch_ionic_strength(batch, c), c.davies);
        for (std::size_t j = 0; j < count_of<Acid>; ++j) {
            const double mmol = batch[static_cast<Acid>(j)];
            if (!(mmol > 0)) continue;
            constant[acids] = conditional(c.overall[j], g);
            protons[acids] = basicity[j];
            amount[acids++] = mmol;
        }
        water = batch[Amount::water] + trace_of_water_g;  // g water times mol/kg is mmol
        activity = g[1];
        strong = batch[Amount::strong_ions];
        meat_sites = batch[Amount::meat_sites];
        meat_protons = batch[Amount::meat_protons];
        buffer = batch[Amount::plant_buffer];
        buffer_ph = batch[Amount::plant_buffer_ph];
    }

    Balance operator()(double ph) const {
        Balance b;
        const double u = power_of_ten(ph), h = 1 / u;
        add_water(b, water, constants.water, activity, h);
        add_strong(b, strong);
        for (std::size_t j = 0; j < acids; ++j) add_acid(b, amount[j], dissociate(constant[j], u));
        for (std::size_t k = 0; k < meat_site_count; ++k) {
            const double held = h / (h + constants.site_constant[k]), sites = meat_sites * constants.sites[k];
            b.plus += sites * held;
            b.plus_slope -= sites * held * (1 - held);
        }
        b.minus += meat_protons + buffer * (ph - lowest_ph);  // both sides moved up by the same, so that neither is negative
        b.minus_slope += buffer / std::numbers::ln10;
        b.plus += buffer_ph - buffer * lowest_ph;
        return b;
    }

    double undissociated(double ph) const {
        const double u = power_of_ten(ph);
        double sum = 0;
        for (std::size_t j = 0; j < acids; ++j) sum += amount[j] * (1 - dissociate(constant[j], u).share[protons[j]]);
        return sum;
    }
};

}  // namespace

double bound_protons(double ph, const AcidParameters& p) {
    double sum = 0;
    for (std::size_t k = 0; k < meat_site_count; ++k) sum += p.sites[k] / (1 + power_of_ten(ph - p.site_pk[k]));
    return sum;
}

AcidConstants prepare(const AcidParameters& p) {
    AcidConstants c;
    for (std::size_t j = 0; j < count_of<Acid>; ++j) c.overall[j] = overall_constants(std::span(p.pka[j]).first(basicity[j]));
    c.sites = p.sites;
    for (std::size_t k = 0; k < meat_site_count; ++k) c.site_constant[k] = power_of_ten(-p.site_pk[k]);
    c.water = power_of_ten(-p.pkw);
    c.davies = p.davies;
    c.native_ionic = p.native_ionic;
    c.sour_weight = p.sour_weight;
    c.cooking_rise = p.cooking_rise;
    c.rise = p.rise;
    c.model_error = p.model_error;
    return c;
}

double batch_ionic_strength(const Material& batch, const AcidConstants& c) {
    const double ions = 1000 * batch[Amount::salt] / sodium_chloride_g_mol + std::abs(batch[Amount::strong_ions]);
    return c.native_ionic + ions / (batch[Amount::water] + trace_of_water_g);
}

BatchAcid batch_acid(const Material& batch, const AcidConstants& c) {
    BatchAcid answer;
    const Mixture mixture(batch, c);
    answer.ph = std::clamp(meeting_ph(mixture) + c.model_error, lowest_ph, highest_ph);
    answer.cooked_ph = answer.ph + c.cooking_rise * mean_over_meats(batch, c.rise);
    const double mass = batch[Amount::mass];
    if (!(mass > 0)) return answer;
    const double free_hydrogen = batch[Amount::water] * power_of_ten(-answer.ph) / mixture.activity;
    answer.titratable_mmol_kg = batch.share(Amount::titratable, 1000);
    answer.undissociated_mmol_kg = 1000 * mixture.undissociated(answer.ph) / mass;
    const double sour_molecules = answer.undissociated_mmol_kg + 1000 * free_hydrogen / mass;
    answer.sourness_mmol_kg = c.sour_weight * answer.titratable_mmol_kg + (1 - c.sour_weight) * sour_molecules;
    return answer;
}

BatchAcid batch_acid(const Material& batch, const AcidParameters& p) { return batch_acid(batch, prepare(p)); }

}  // namespace standin
