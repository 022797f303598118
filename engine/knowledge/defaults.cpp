#include "knowledge/defaults.hpp"

#include <algorithm>
#include <string>

#include "core/band.hpp"

namespace standin {
namespace {

constexpr double least_buffer = 0.5;               // mmol/(pH kg); keeps a starch defined
constexpr double salt_g_per_sodium_mg = 2.542e-3;  // common salt is no buffer, though the ash counts it
constexpr double teaspoons_a_tablespoon = 3;

bool is_plant(Tissue t) {
    switch (t) {
        case Tissue::thin_leaf:
        case Tissue::thick_leaf:
        case Tissue::bulb:
        case Tissue::root:
        case Tissue::stalk:
            return true;
        default:
            return false;
    }
}

// Milk with its sugar: curd and whey protein hold more.
bool is_milk(const Ingredient& i) {
    const Composition& c = i.composition;
    return i.allergens == std::vector<std::string>{"milk"} && 2 * c.protein.mid < 100 - c.water.mid - c.fat.mid;
}

class Defaults {
public:
    explicit Defaults(const std::vector<Parameter>& parameters) : parameters_(parameters) {}

    void fill(Ingredient& i) const {
        if (i.tissue == Tissue::thin_leaf && !i.chlorophyll)
            if (const Quantity* usual = rule("colour.leaf.chlorophyll")) i.chlorophyll = *usual;
        ph(i);
        buffer(i);
        if (i.meat) meat(i);
        if (i.binding) binding(i);
        strength(i);
        pods(i);
        tablespoon(i);
    }

    void fill(Swap& s) const {
        if (s.basis == Basis::weight && !s.ratio)
            if (const Quantity* usual = rule("stand_ins.weight-for-weight")) s.ratio = *usual;
    }

private:
    const Quantity* rule(const std::string& id) const {
        const auto found = std::find_if(parameters_.begin(), parameters_.end(), [&](const Parameter& p) { return p.id == id; });
        return found == parameters_.end() ? nullptr : &found->quantity;
    }

    static std::string of_species(const char* begin, const Ingredient& i) { return begin + std::string(spelling(i.meat->species)); }

    void ph(Ingredient& i) const {
        if (i.acidity && i.acidity->ph) return;
        const Quantity* usual = i.meat                            ? rule(of_species("acid.ph.", i))
                                : i.tissue == Tissue::chile_flesh ? rule("acid.ph.chile")
                                : is_plant(i.tissue)              ? rule("acid.ph.plant")
                                                                  : nullptr;
        if (!usual) return;
        if (!i.acidity) i.acidity.emplace();
        i.acidity->ph = *usual;
    }

    // Of what is neither meat nor an acid source, by its protein and its minerals.
    void buffer(Ingredient& i) const {
        if (!i.acidity || !i.acidity->ph || i.acidity->titratable || i.acidity->buffer || i.meat) return;
        const Quantity* protein = rule("acid.buffer.protein");
        const Quantity* ash = rule("acid.buffer.ash");
        if (!protein || !ash) return;
        const Composition& c = i.composition;
        const double salt = c.sodium_mg ? c.sodium_mg->mid * salt_g_per_sodium_mg : c.salt.mid;
        const double minerals = std::max(0.0, c.ash.mid - salt);
        const auto held = [&](double Band::*end) {
            return std::max(least_buffer, protein->band.*end * c.protein.mid + ash->band.*end * minerals);
        };
        i.acidity->buffer = Quantity{{held(&Band::low), held(&Band::mid), held(&Band::high)}, "mmol/(pH kg)", protein->source};
    }

    void meat(Ingredient& i) const {
        const auto take = [&](Quantity& to, const std::string& id) {
            const Quantity* usual = to.source.empty() ? rule(id) : nullptr;
            if (usual) to = *usual;
        };
        take(i.meat->buffer_scale, i.tissue == Tissue::fat_tissue ? "acid.scale.fat-tissue" : of_species("acid.scale.", i));
        take(i.meat->buffer_scale, "acid.scale.other");
        take(i.meat->bind, "bind.index.lean");
    }

    // By the solids other than fat; protein holds more fat than starch does.
    void binding(Ingredient& i) const {
        const Composition& c = i.composition;
        const double solids = std::max(0.0, 100 - c.water.mid - c.fat.mid) / 100, protein = c.protein.mid / 100;
        const Quantity* water = rule(is_milk(i) ? "bind.held.milk" : "bind.held.water");
        if (water && i.binding->water.source.empty()) i.binding->water = {scaled(water->band, solids), "g/g", water->source};
        const Quantity* fat = rule("bind.held.fat");
        const Quantity* by_protein = rule("bind.held.fat-by-protein");
        if (!fat || !by_protein || !i.binding->fat.source.empty()) return;
        const auto held = [&](double Band::*end) { return fat->band.*end * solids + by_protein->band.*end * protein; };
        i.binding->fat = Quantity{{held(&Band::low), held(&Band::mid), held(&Band::high)}, "g/g", fat->source};
    }

    // What is dried has a strength of its own, but for leaves: they lose alike.
    void strength(Ingredient& i) const {
        const auto smells = [](Role r) { return r == Role::herb || r == Role::allium || r == Role::spice; };
        if (i.strength || i.tissue == Tissue::seed || std::none_of(i.roles.begin(), i.roles.end(), smells)) return;
        const bool dry = i.tissue == Tissue::dry, jar = i.tissue == Tissue::paste || i.tissue == Tissue::liquid;
        if (dry && i.roles.front() != Role::herb) return;
        const Quantity* usual = rule(dry ? "aroma.strength.dried-leaf" : jar ? "aroma.strength.jar" : "aroma.strength.fresh");
        if (usual) i.strength = *usual;
    }

    // Only what is sold by the pod differs from pod to pod: a ground powder is a blend of many.
    void pods(Ingredient& i) const {
        if (!i.capsaicinoids || i.capsaicinoids->band.mid <= 0) return;
        if (i.tissue == Tissue::chile_flesh && !i.pod_sigma)
            if (const Quantity* usual = rule("heat.spread.pods")) i.pod_sigma = *usual;
        const char* lots = i.pod_sigma                                               ? "heat.spread.lots"
                           : i.tissue == Tissue::dry                                 ? "heat.spread.ground"
                           : i.tissue == Tissue::paste || i.tissue == Tissue::liquid ? "heat.spread.sauces"
                                                                                     : "";
        if (const Quantity* usual = i.lot_sigma ? nullptr : rule(lots)) i.lot_sigma = *usual;
    }

    static void tablespoon(Ingredient& i) {
        const MeasureRecord* teaspoon = nullptr;
        for (const auto& m : i.measures) {
            if (m.measure == "tbsp") return;
            if (m.measure == "tsp" && m.note.empty()) teaspoon = &m;
        }
        if (!teaspoon) return;
        MeasureRecord spoon = *teaspoon;
        spoon.measure = "tbsp";
        spoon.grams = scaled(spoon.grams, teaspoons_a_tablespoon);
        i.measures.push_back(std::move(spoon));
    }

    const std::vector<Parameter>& parameters_;
};

}  // namespace

void fill_defaults(Records& records) {
    const Defaults defaults(records.parameters);
    for (auto& ingredient : records.ingredients) defaults.fill(ingredient);
    for (auto& swap : records.swaps) defaults.fill(swap);
}

}  // namespace standin
