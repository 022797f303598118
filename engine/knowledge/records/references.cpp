#include "knowledge/records/references.hpp"

#include <algorithm>

namespace standin {
namespace {

class Collector {
public:
    explicit Collector(std::vector<Reference>& all) : all_(all) {}

    void record(std::string name) { record_ = std::move(name); }
    // Without a source nothing stands there: the rule of its kind fills it.
    void note(std::string what, const std::string& source) {
        if (!source.empty()) all_.push_back({record_, std::move(what), source});
    }
    void note(std::string what, const std::optional<Quantity>& q) {
        if (q) note(std::move(what), q->source);
    }

private:
    std::vector<Reference>& all_;
    std::string record_;
};

void collect(const Ingredient& i, Collector& to) {
    to.record("ingredient " + i.id);
    to.note("composition", i.composition.source);
    to.note("chlorophyll", i.chlorophyll);
    to.note("lutein", i.lutein);
    to.note("capsaicinoids", i.capsaicinoids);
    to.note("pungency", i.pungency);
    to.note("pod_sigma", i.pod_sigma);
    to.note("lot_sigma", i.lot_sigma);
    to.note("strength", i.strength);
    to.note("edible", i.edible);
    to.note("sulphites", i.sulphites);
    to.note("most_g_per_kg", i.most_g_per_kg);
    if (i.acidity) {
        to.note("ph", i.acidity->ph);
        to.note("titratable", i.acidity->titratable);
        to.note("buffer", i.acidity->buffer);
    }
    if (i.meat) {
        to.note("buffer_scale", i.meat->buffer_scale.source);
        to.note("bind", i.meat->bind.source);
    }
    if (i.binding) {
        to.note("binding water", i.binding->water.source);
        to.note("binding fat", i.binding->fat.source);
        if (i.binding->swells) to.note("binding swells", i.binding->swells->source);
    }
    if (i.tint) to.note("tint", i.tint->source);
    for (const auto& measure : i.measures) to.note("measure " + measure.measure, measure.source);
}

}  // namespace

std::vector<Reference> references_in(const Records& records) {
    std::vector<Reference> all;
    Collector to(all);
    for (const auto& i : records.ingredients) collect(i, to);
    for (const auto& p : records.preparations) {
        to.record("preparation " + p.id);
        for (const auto& effect : p.effects) to.note("effect", effect.source);
    }
    for (const auto& s : records.swaps) {
        to.record(swap_key(s));
        to.note("swap", s.source);
        to.note("ratio", s.ratio);
        if (s.partner) to.note("ratio", s.partner->ratio);
    }
    for (const auto& c : records.conditions) {
        to.record("condition " + c.id);
        to.note("bound", c.source);
    }
    for (const auto& p : records.parameters) {
        to.record("parameter " + p.id);
        to.note("value", p.quantity.source);
    }
    for (const auto& d : records.perception) {
        to.record("difference " + d.property);
        to.note("step", d.step.source);
    }
    for (const auto& h : records.lexicon.hazards) {
        to.record("hazard " + h.id);
        to.note("reason", h.source);
    }
    for (const auto& w : records.wants) {
        to.record("want " + w.word);
        to.note("step", w.source);
    }
    for (const auto& r : records.rules) {
        to.record("rules " + r.code);
        for (const auto& a : r.allergens) to.note("allergen " + a.allergen, a.source);
        for (const auto& c : r.caps) to.note("cap " + c.id, c.source);
        for (const auto& c : r.cooking) to.note("cooking", c.source);
        for (const auto& m : r.making) to.note("making " + m.id, m.source);
        for (const auto& c : r.cautions) to.note("caution " + c.id, c.source);
        for (const auto& m : r.meat_word) to.note("meat word", m.source);
        to.note("wine sulphites", r.wine_sulphites);
        to.note("hot holding", r.hot_holding);
    }
    return all;
}

std::vector<std::string> sources_of(const Ingredient& ingredient) {
    std::vector<Reference> all;
    Collector to(all);
    collect(ingredient, to);
    std::vector<std::string> names;
    for (const auto& reference : all)
        if (std::find(names.begin(), names.end(), reference.source) == names.end()) names.push_back(reference.source);
    return names;
}

}  // namespace standin
