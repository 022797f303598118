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

double& rise(AcidParameters& p, std::size_t species) { return p.rise[species]; }

constexpr std::array own{
    Binding<AcidParameters>{"acid.pka.acetic.1", pka<Acid::acetic, 1>},
    Binding<AcidParameters>{"acid.pka.lactic.1", pka<Acid::lactic, 1>},
    Binding<AcidParameters>{"acid.pka.citric.1", pka<Acid::citric, 1>},
    Binding<AcidParameters>{"acid.pka.citric.2", pka<Acid::citric, 2>},
    Binding<AcidParameters>{"acid.pka.citric.3", pka<Acid::citric, 3>},
    Binding<AcidParameters>{"acid.pka.malic.1", pka<Acid::malic, 1>},
    Binding<AcidParameters>{"acid.pka.malic.2", pka<Acid::malic, 2>},
    Binding<AcidParameters>{"acid.pka.tartaric.1", pka<Acid::tartaric, 1>},
    Binding<AcidParameters>{"acid.pka.tartaric.2", pka<Acid::tartaric, 2>},
    Binding<AcidParameters>{"acid.pka.oxalic.1", pka<Acid::oxalic, 1>},
    Binding<AcidParameters>{"acid.pka.oxalic.2", pka<Acid::oxalic, 2>},
    Binding<AcidParameters>{"acid.pka.succinic.1", pka<Acid::succinic, 1>},
    Binding<AcidParameters>{"acid.pka.succinic.2", pka<Acid::succinic, 2>},
    Binding<AcidParameters>{"acid.pka.ascorbic.1", pka<Acid::ascorbic, 1>},
    Binding<AcidParameters>{"acid.pka.ascorbic.2", pka<Acid::ascorbic, 2>},
    Binding<AcidParameters>{"acid.pka.phosphoric.1", pka<Acid::phosphoric, 1>},
    Binding<AcidParameters>{"acid.pka.phosphoric.2", pka<Acid::phosphoric, 2>},
    Binding<AcidParameters>{"acid.pka.phosphoric.3", pka<Acid::phosphoric, 3>},
    Binding<AcidParameters>{"acid.sites.carboxyl", sites<MeatSite::carboxyl>},
    Binding<AcidParameters>{"acid.site_pk.carboxyl", site_pk<MeatSite::carboxyl>},
    Binding<AcidParameters>{"acid.sites.histidine", sites<MeatSite::histidine>},
    Binding<AcidParameters>{"acid.site_pk.histidine", site_pk<MeatSite::histidine>},
    Binding<AcidParameters>{"acid.sites.dipeptide", sites<MeatSite::dipeptide>},
    Binding<AcidParameters>{"acid.site_pk.dipeptide", site_pk<MeatSite::dipeptide>},
    Binding<AcidParameters>{"acid.sites.phosphate", sites<MeatSite::phosphate>},
    Binding<AcidParameters>{"acid.site_pk.phosphate", site_pk<MeatSite::phosphate>},
    Binding<AcidParameters>{"acid.sites.lactate", sites<MeatSite::lactate>},
    Binding<AcidParameters>{"acid.site_pk.lactate", site_pk<MeatSite::lactate>},
    Binding<AcidParameters>{"acid.pkw", [](AcidParameters& p) -> double& { return p.pkw; }},
    Binding<AcidParameters>{"acid.davies.a", [](AcidParameters& p) -> double& { return p.davies.a; }},
    Binding<AcidParameters>{"acid.davies.b", [](AcidParameters& p) -> double& { return p.davies.b; }},
    Binding<AcidParameters>{"acid.davies.limit", [](AcidParameters& p) -> double& { return p.davies.limit; }},
    Binding<AcidParameters>{"acid.native_ionic", [](AcidParameters& p) -> double& { return p.native_ionic; }},
    Binding<AcidParameters>{"acid.equivalents_limit", [](AcidParameters& p) -> double& { return p.equivalents_limit; }},
    Binding<AcidParameters>{"acid.sour_weight", [](AcidParameters& p) -> double& { return p.sour_weight; }},
    Binding<AcidParameters>{"acid.cooking_rise", [](AcidParameters& p) -> double& { return p.cooking_rise; }},
    Binding<AcidParameters>{"acid.model_error", [](AcidParameters& p) -> double& { return p.model_error; }},
};

constexpr auto bindings = joined(own, BySpecies<"acid.rise.", "", AcidParameters>::bindings<rise>());

}  // namespace

std::span<const Binding<AcidParameters>> acid_bindings() { return bindings; }

}  // namespace standin
