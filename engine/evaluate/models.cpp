#include "evaluate/models.hpp"

#include <algorithm>

#include "models/parameters.hpp"

namespace standin {

namespace {

MixState mix_state(double ph, const ProcessState& process) {
    return {ph, process.mixed_at_c, process.mixing_min, process.plate_mm, process.order, process.rest_h, process.cooked_to_c};
}

// What the way of making costs, whatever goes in.
double making_of(const BatchBind& bind) { return bind.mixing_factor * bind.order_factor * bind.cold_factor * bind.enzyme_factor; }

template <class P>
void spread(std::vector<Constants>& all, P Constants::*part, const std::vector<P>& drawn) {
    for (std::size_t i = 0; i < all.size(); ++i) all[i].*part = drawn[i];
}

}  // namespace

Models::Models(const Constants& constants, std::shared_ptr<const Validity> validity)
    : constants_(constants), acid_ready_(prepare(constants.acid)), validity_(std::move(validity)) {}

State Models::state(const Material& batch, const ProcessState& process) const {
    State s;
    auto& p = s.properties;
    const BatchAcid acid = batch_acid(batch, acid_ready_);
    const BatchSalt salt = batch_salt(batch, constants_.salt);
    const BatchColour colour = this->colour(batch, acid.ph, process);
    const BatchHeat heat = batch_heat(batch, constants_.heat);
    const BatchBind bind = batch_bind(batch, mix_state(acid.ph, process), constants_.bind);
    BatchCook cook =
        batch_cook(batch, {acid.ph, process.cook, process.cooked_to_c, making_of(bind), process.diameter_mm}, constants_.cooking);

    p[Property::salt_pct] = salt.salt_pct;
    p[Property::salt_pct_of_meat] = salt.salt_pct_of_meat;
    p[Property::water_phase_salt_pct] = salt.water_phase_salt_pct;
    p[Property::water_activity] = salt.water_activity;
    p[Property::fat_pct] = batch.share(Amount::fat, 100);
    p[Property::fat_pct_of_meat] = batch[Amount::meat] > 0 ? 100 * batch[Amount::meat_fat] / batch[Amount::meat] : 0;
    p[Property::protein_pct] = batch.share(Amount::protein, 100);
    p[Property::water_pct] = batch.share(Amount::water, 100);
    p[Property::ph] = acid.ph;
    p[Property::sourness_mmol_kg] = acid.sourness_mmol_kg;
    p[Property::cooked_ph] = acid.cooked_ph;
    p[Property::heat_mg_kg] = heat.heat_mg_kg;
    p[Property::heat_shu] = heat.heat_shu;
    p[Property::burn_mg_kg] = heat.scale_mg_kg;
    p[Property::chlorophyll_mg_kg] = colour.chlorophyll_mg_kg;
    p[Property::greenness] = -colour.rested.a;
    p[Property::hue_deg] = colour.hue_rested;
    p[Property::bind] = bind.bind;
    p[Property::firmness] = bind.firmness;
    p[Property::cook_loss_pct] = cook.loss_pct;
    const double pigment =
        batch.share(Amount::chlorophyll_live, 1000) + batch.share(Amount::chlorophyll_set, 1000) + batch.share(Amount::pheophytin, 1000);
    validity_->widen(p, {acid.ph, p[Property::fat_pct], p[Property::salt_pct], process.cooked_to_c, pigment, process.plate_mm},
                     constants_.doubts);
    // No mass is greener than the leaf in it, however much is doubted.
    p[Property::greenness] = std::min(p[Property::greenness], std::max(constants_.colour.greenest, -colour.rested.a));
    // What is doubted of the loss is doubted of what stays.
    if (p[Property::cook_loss_pct] != cook.loss_pct) cook = with_loss(batch, cook, p[Property::cook_loss_pct]);
    p[Property::cooked_water_pct] = cook.cooked_water_pct;
    p[Property::cooked_fat_pct] = cook.cooked_fat_pct;
    p[Property::cooked_protein_pct] = cook.cooked_protein_pct;
    p[Property::cooked_salt_pct] = cook.cooked_salt_pct;
    if (cook.cooked_protein_pct > 0) p[Property::juice] = (cook.cooked_water_pct + cook.cooked_fat_pct) / cook.cooked_protein_pct;
    s.raw = colour.raw;
    s.rested = colour.rested;
    s.cooked = colour.cooked;
    return s;
}

BatchBind Models::bind(const Material& batch, const ProcessState& process) const {
    return batch_bind(batch, mix_state(ph(batch), process), constants_.bind);
}

double Models::ph(const Material& batch) const { return batch_acid(batch, acid_ready_).ph; }

BatchColour Models::colour(const Material& batch, double ph, const ProcessState& process) const {
    return batch_colour(batch, ph, process.rest_h, process.rest_at_c, process.cook, process.cooked_to_c, constants_.colour,
                        process.leaf_paste);
}

std::vector<Models> models_of(const Knowledge& knowledge, const Draws& draws) {
    std::vector<Constants> all(draws.count());
    spread(all, &Constants::acid, draw_parameters(knowledge, acid_bindings(), draws));
    spread(all, &Constants::salt, draw_parameters(knowledge, salt_bindings(), draws));
    spread(all, &Constants::colour, draw_parameters(knowledge, colour_bindings(), draws));
    spread(all, &Constants::heat, draw_parameters(knowledge, heat_bindings(), draws));
    spread(all, &Constants::bind, draw_parameters(knowledge, bind_bindings(), draws));
    spread(all, &Constants::cooking, draw_parameters(knowledge, cooking_bindings(), draws));
    spread(all, &Constants::aroma, draw_parameters(knowledge, aroma_bindings(), draws));
    spread(all, &Constants::lethality, draw_parameters(knowledge, lethality_bindings(), draws));
    const auto validity = std::make_shared<const Validity>(knowledge);
    spread(all, &Constants::doubts, validity->doubts(draws));
    std::vector<Models> models;
    models.reserve(all.size());
    for (const auto& constants : all) models.emplace_back(constants, validity);
    return models;
}

}  // namespace standin
