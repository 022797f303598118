// Which record of knowledge/models/acid.json fills which constant of the acid model.
#include "models/acid.hpp"

namespace standin {
namespace {

template <Acid acid, std::size_t step>
double& pka(AcidParameters& p) {
    static_assert(step >= 1 && step <= basicity[static_cast<std::size_t>(acid)]);
    return p.pka[static_cast<std::size_t>(acid)][step - 1];
}

template <MeatSite site>
double& sites(AcidParameters& p) {
    return p.sites[static_cast<std::size_t>(site)];
}

template <MeatSite site>
double& site_pk(AcidParameters& p) {
    return p.site_pk[static_cast<std::size_t>(site)];
}

constexpr Binding<AcidParameters> bindings[] = {
    {"acid.pka.acetic.1", pka<Acid::acetic, 1>},
    {"acid.pka.lactic.1", pka<Acid::lactic, 1>},
    {"acid.pka.citric.1", pka<Acid::citric, 1>},
    {"acid.pka.citric.2", pka<Acid::citric, 2>},
    {"acid.pka.citric.3", pka<Acid::citric, 3>},
    {"acid.pka.malic.1", pka<Acid::malic, 1>},
    {"acid.pka.malic.2", pka<Acid::malic, 2>},
    {"acid.pka.tartaric.1", pka<Acid::tartaric, 1>},
    {"acid.pka.tartaric.2", pka<Acid::tartaric, 2>},
    {"acid.pka.oxalic.1", pka<Acid::oxalic, 1>},
    {"acid.pka.oxalic.2", pka<Acid::oxalic, 2>},
    {"acid.pka.succinic.1", pka<Acid::succinic, 1>},
    {"acid.pka.succinic.2", pka<Acid::succinic, 2>},
    {"acid.pka.ascorbic.1", pka<Acid::ascorbic, 1>},
    {"acid.pka.ascorbic.2", pka<Acid::ascorbic, 2>},
    {"acid.pka.phosphoric.1", pka<Acid::phosphoric, 1>},
    {"acid.pka.phosphoric.2", pka<Acid::phosphoric, 2>},
    {"acid.pka.phosphoric.3", pka<Acid::phosphoric, 3>},
    {"acid.sites.carboxyl", sites<MeatSite::carboxyl>},
    {"acid.site_pk.carboxyl", site_pk<MeatSite::carboxyl>},
    {"acid.sites.histidine", sites<MeatSite::histidine>},
    {"acid.site_pk.histidine", site_pk<MeatSite::histidine>},
    {"acid.sites.dipeptide", sites<MeatSite::dipeptide>},
    {"acid.site_pk.dipeptide", site_pk<MeatSite::dipeptide>},
    {"acid.sites.phosphate", sites<MeatSite::phosphate>},
    {"acid.site_pk.phosphate", site_pk<MeatSite::phosphate>},
    {"acid.sites.lactate", sites<MeatSite::lactate>},
    {"acid.site_pk.lactate", site_pk<MeatSite::lactate>},
    {"acid.pkw", [](AcidParameters& p) -> double& { return p.pkw; }},
    {"acid.davies.a", [](AcidParameters& p) -> double& { return p.davies.a; }},
    {"acid.davies.b", [](AcidParameters& p) -> double& { return p.davies.b; }},
    {"acid.davies.limit", [](AcidParameters& p) -> double& { return p.davies.limit; }},
    {"acid.native_ionic", [](AcidParameters& p) -> double& { return p.native_ionic; }},
    {"acid.equivalents_limit", [](AcidParameters& p) -> double& { return p.equivalents_limit; }},
    {"acid.sour_weight", [](AcidParameters& p) -> double& { return p.sour_weight; }},
    {"acid.cooking_rise", [](AcidParameters& p) -> double& { return p.cooking_rise; }},
    {"acid.model_error", [](AcidParameters& p) -> double& { return p.model_error; }},
};

}  // namespace

std::span<const Binding<AcidParameters>> acid_bindings() { return bindings; }

}  // namespace standin
