#include <array>

#include "models/bind.hpp"

namespace standin {
namespace {

using P = BindParameters;

constexpr std::array bindings{
    Binding<P>{"bind.error", [](P& p) -> double& { return p.error; }},
    Binding<P>{"bind.meat.reading", [](P& p) -> double& { return p.reading; }},
    Binding<P>{"bind.meat.bull-protein", [](P& p) -> double& { return p.bull_protein; }},
    Binding<P>{"bind.salt.floor", [](P& p) -> double& { return p.salt_floor; }},
    Binding<P>{"bind.salt.middle", [](P& p) -> double& { return p.salt_middle; }},
    Binding<P>{"bind.salt.width", [](P& p) -> double& { return p.salt_width; }},
    Binding<P>{"bind.salt.native", [](P& p) -> double& { return p.native_ions; }},
    Binding<P>{"bind.acid.best", [](P& p) -> double& { return p.ph_best; }},
    Binding<P>{"bind.acid.scale", [](P& p) -> double& { return p.ph_scale; }},
    Binding<P>{"bind.acid.floor", [](P& p) -> double& { return p.ph_floor; }},
    Binding<P>{"fat.softens.span", [](P& p) -> double& { return p.smear_span; }},
    Binding<P>{"bind.smear.power", [](P& p) -> double& { return p.smear_power; }},
    Binding<P>{"bind.smear.fat", [](P& p) -> double& { return p.smear_fat; }},
    Binding<P>{"bind.ice.native", [](P& p) -> double& { return p.ice_native; }},
    Binding<P>{"bind.ice.salt", [](P& p) -> double& { return p.ice_salt; }},
    Binding<P>{"bind.ice.power", [](P& p) -> double& { return p.ice_power; }},
    Binding<P>{"bind.mixing.floor", [](P& p) -> double& { return p.mixing_floor; }},
    Binding<P>{"bind.mixing.time", [](P& p) -> double& { return p.mixing_time; }},
    Binding<P>{"bind.plate.power", [](P& p) -> double& { return p.plate_power; }},
    Binding<P>{"bind.rest.gain", [](P& p) -> double& { return p.rest_gain; }},
    Binding<P>{"bind.rest.time", [](P& p) -> double& { return p.rest_time; }},
    Binding<P>{"bind.enzyme.rate", [](P& p) -> double& { return p.enzyme_rate; }},
    Binding<P>{"bind.order.cost", [](P& p) -> double& { return p.order_cost; }},
    Binding<P>{"bind.order.acid", [](P& p) -> double& { return p.order_acid; }},
    Binding<P>{"bind.order.together", [](P& p) -> double& { return p.order_together; }},
    Binding<P>{"bind.dilution.protein", [](P& p) -> double& { return p.dilution_protein; }},
    Binding<P>{"bind.dilution.power", [](P& p) -> double& { return p.dilution_power; }},
    Binding<P>{"bind.dilution.paste", [](P& p) -> double& { return p.paste_extra; }},
    Binding<P>{"bind.dilution.takes-up", [](P& p) -> double& { return p.takes_up; }},
    Binding<P>{"cooking.binder.efficiency", [](P& p) -> double& { return p.binder.efficiency; }},
    Binding<P>{"bind.isoelectric.ph", [](P& p) -> double& { return p.binder.isoelectric_ph; }},
    Binding<P>{"bind.isoelectric.width", [](P& p) -> double& { return p.binder.isoelectric_width; }},
    Binding<P>{"bind.isoelectric.loss", [](P& p) -> double& { return p.binder.isoelectric_loss; }},
    Binding<P>{"bind.gum.scale", [](P& p) -> double& { return p.gum_scale; }},
    Binding<P>{"bind.gum.bind", [](P& p) -> double& { return p.gum_bind; }},
    Binding<P>{"bind.jelly.most", [](P& p) -> double& { return p.jelly_most; }},
    Binding<P>{"bind.binder.cold", [](P& p) -> double& { return p.binder_cold; }},
    Binding<P>{"bind.binder.most", [](P& p) -> double& { return p.binder_most; }},
    Binding<P>{"bind.binder.water", [](P& p) -> double& { return p.binder_water; }},
    Binding<P>{"bind.binder.thinned", [](P& p) -> double& { return p.binder_thinned; }},
    Binding<P>{"bind.scale", [](P& p) -> double& { return p.scale; }},
    Binding<P>{"bind.firmness.protein", [](P& p) -> double& { return p.firm_protein; }},
    Binding<P>{"bind.firmness.fat", [](P& p) -> double& { return p.firm_fat; }},
    Binding<P>{"bind.firmness.free-fat", [](P& p) -> double& { return p.firm_free_fat; }},
    Binding<P>{"bind.firmness.water", [](P& p) -> double& { return p.firm_water; }},
    Binding<P>{"bind.firmness.salt", [](P& p) -> double& { return p.firm_salt; }},
    Binding<P>{"bind.firmness.salt-wet", [](P& p) -> double& { return p.firm_salt_wet; }},
    Binding<P>{"bind.firmness.acid", [](P& p) -> double& { return p.firm_ph; }},
    Binding<P>{"bind.firmness.plate", [](P& p) -> double& { return p.firm_plate; }},
    Binding<P>{"bind.firmness.mixing", [](P& p) -> double& { return p.firm_mixing; }},
    Binding<P>{"bind.firmness.mixing-time", [](P& p) -> double& { return p.firm_mixing_time; }},
    Binding<P>{"bind.firmness.binder", [](P& p) -> double& { return p.firm_binder; }},
    Binding<P>{"bind.firmness.binder-own", [](P& p) -> double& { return p.firm_binder_own; }},
    Binding<P>{"bind.firmness.core", [](P& p) -> double& { return p.firm_core; }},
    Binding<P>{"bind.firmness.state", [](P& p) -> double& { return p.firm_state; }},
    Binding<P>{"bind.firmness.set", [](P& p) -> double& { return p.firm_set; }},
    Binding<P>{"bind.firmness.scale", [](P& p) -> double& { return p.firm_scale; }},
};

}  // namespace

std::span<const Binding<BindParameters>> bind_bindings() { return bindings; }

}  // namespace standin
