#include "knowledge/index/defaults.hpp"

#include <algorithm>
#include <map>
#include <optional>
#include <string>
#include <tuple>
#include <vector>

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

    // The way back of a weight is its reciprocal; where neither says one, weight for weight.
    void fill(Swap& s, const Swap* back) const {
        if (s.basis != Basis::weight || s.ratio) return;
        if (back) {
            const Band& there = back->ratio->band;
            s.ratio = Quantity{{1 / there.high, 1 / there.mid, 1 / there.low}, back->ratio->unit, back->ratio->source};
        } else if (const Quantity* usual = rule("stand_ins.weight-for-weight")) {
            s.ratio = *usual;
        }
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

// Swaps that say a weight of their own, by what leads back to where they start.
class WaysBack {
public:
    explicit WaysBack(const std::vector<Swap>& swaps) {
        for (std::size_t s = 0; s < swaps.size(); ++s)
            if (swaps[s].basis == Basis::weight && swaps[s].ratio && !swaps[s].partner)
                known_.try_emplace(std::tuple(swaps[s].role, swaps[s].to, swaps[s].from), s);
    }
    std::optional<std::size_t> of(const Swap& swap) const {
        const auto found = known_.find(std::tuple(swap.role, swap.from, swap.to));
        return found == known_.end() || swap.partner ? std::nullopt : std::optional(found->second);
    }

private:
    std::map<std::tuple<Role, std::string, std::string>, std::size_t> known_;
};

// Heat that the flesh does not bring, in grams of the hot pod beside it.
class HeatBeside {
public:
    explicit HeatBeside(const std::vector<Ingredient>& ingredients) {
        for (const auto& i : ingredients) heat_.emplace(i.id, i.capsaicinoids ? &*i.capsaicinoids : nullptr);
    }
    void fill(Swap& s) const {
        if (s.role != Role::heat || !s.partner || !s.partner->ratio.source.empty() || !s.ratio) return;
        const Quantity* line = of(s.from);
        const double rest = mid(line) - s.ratio->band.mid * mid(of(s.to)), hot = mid(of(s.partner->ingredient));
        if (line && rest > 0 && hot > 0) s.partner->ratio = {exactly(rest / hot), "g/g", line->source};
    }

private:
    const Quantity* of(const std::string& id) const {
        const auto found = heat_.find(id);
        return found == heat_.end() ? nullptr : found->second;
    }
    static double mid(const Quantity* quantity) { return quantity ? quantity->band.mid : 0; }

    std::map<std::string, const Quantity*> heat_;
};

}  // namespace

void fill_defaults(Records& records) {
    const Defaults defaults(records.parameters);
    for (auto& ingredient : records.ingredients) defaults.fill(ingredient);
    const WaysBack ways_back(records.swaps);
    const HeatBeside heat(records.ingredients);
    for (auto& swap : records.swaps) {
        const auto back = ways_back.of(swap);
        defaults.fill(swap, back ? &records.swaps[*back] : nullptr);
        heat.fill(swap);
    }
}

}  // namespace standin
