#include <array>

#include "models/cooking.hpp"

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

double& fat_of_kind(P& p, std::size_t species) { return p.fat_of_kind[species]; }

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
    Binding<P>{"cooking.water.thicker", [](P& p) -> double& { return p.thicker; }},
    Binding<P>{"cooking.water.own", [](P& p) -> double& { return p.own_water; }},
    Binding<P>{"cooking.lot", [](P& p) -> double& { return p.lot; }},
    Binding<P>{"cooking.lot.plain", [](P& p) -> double& { return p.lot_plain; }},
    Binding<P>{"cooking.poach.drip", [](P& p) -> double& { return p.drip; }},
    Binding<P>{"cooking.poach.unsalted", [](P& p) -> double& { return p.drip_unsalted; }},
    Binding<P>{"cooking.poach.hotter", [](P& p) -> double& { return p.drip_hotter; }},
    Binding<P>{"cooking.poach.hotter-unsalted", [](P& p) -> double& { return p.drip_hotter_unsalted; }},
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
    Binding<P>{"cooking.gel.kept", [](P& p) -> double& { return p.gel_kept; }},
    Binding<P>{"cooking.poured.kept", [](P& p) -> double& { return p.poured_kept; }},
    Binding<P>{"cooking.paste.kept", [](P& p) -> double& { return p.paste_kept; }},
    Binding<P>{"cooking.fat.pan", severity<Cook::pan>},
    Binding<P>{"cooking.fat.grill", severity<Cook::grill>},
    Binding<P>{"cooking.fat.oven", severity<Cook::oven>},
    Binding<P>{"cooking.fat.poach", severity<Cook::poach>},
    Binding<P>{"cooking.fat.loose", severity<Cook::loose>},
    Binding<P>{"cooking.fat.half", [](P& p) -> double& { return p.fat_half; }},
    Binding<P>{"cooking.fat.power", [](P& p) -> double& { return p.fat_power; }},
    Binding<P>{"cooking.fat.bound-half", [](P& p) -> double& { return p.bound_fat_half; }},
    Binding<P>{"cooking.fat.bound-power", [](P& p) -> double& { return p.bound_fat_power; }},
    Binding<P>{"cooking.fat.free", [](P& p) -> double& { return p.free_fat; }},
    Binding<P>{"cooking.fat.unsalted", [](P& p) -> double& { return p.unsalted_fat; }},
    Binding<P>{"cooking.fat.salt-scale", [](P& p) -> double& { return p.fat_salt_scale; }},
    Binding<P>{"cooking.care.water", [](P& p) -> double& { return p.care_water; }},
    Binding<P>{"cooking.care.fat", [](P& p) -> double& { return p.care_fat; }},
};

constexpr auto bindings =
    joined(own, BySpecies<"cooking.kind.", "", P>::bindings<kind>(), BySpecies<"cooking.fat.kind.", "", P>::bindings<fat_of_kind>());

}  // namespace

std::span<const Binding<CookingParameters>> cooking_bindings() { return bindings; }

}  // namespace standin
