#include "knowledge/index/kitchen_overlay.hpp"

#include <algorithm>
#include <cmath>

#include "core/band.hpp"
#include "core/names.hpp"
#include "knowledge/index/plausible.hpp"

namespace standin {
namespace {

constexpr std::string_view prefix = "kitchen-line-";

// The rest of a food shares what another amount of one part leaves.
void set_fat(Composition& c, const Band& fat) {
    const double rest = c.fat.mid < 100 ? (100 - fat.mid) / (100 - c.fat.mid) : 1;
    for (Band* part : {&c.water, &c.protein, &c.carbohydrate, &c.ash, &c.alcohol, &c.acid, &c.salt}) *part = scaled(*part, rest);
    for (auto* part : {&c.fibre, &c.sugars, &c.sodium_mg, &c.potassium_mg})
        if (*part) **part = scaled(**part, rest);
    c.fat = fat;
}

// A weak acid of another strength has another pH: by half the logarithm of how much stronger it is.
void set_acid(Ingredient& food, const Band& pct, const std::string& source) {
    constexpr double g_kg_a_percent = 10;
    const auto acid = main_acid(food);
    if (!acid) return;
    auto& acidity = *food.acidity;
    const std::string unit = "g/kg " + std::string(spelling(*acid));
    const double usual = acidity.titratable->unit == unit ? acidity.titratable->band.mid / g_kg_a_percent : 0;
    if (acidity.ph && usual > 0) {
        const double shift = -std::log10(pct.mid / usual) / 2;
        Band& ph = acidity.ph->band;
        ph = {ph.low + shift, ph.mid + shift, ph.high + shift};
    }
    acidity.titratable = Quantity{scaled(pct, g_kg_a_percent), unit, source};
    if (food.composition.acid.mid <= 0) return;
    food.composition.water.mid += food.composition.acid.mid - pct.mid;
    food.composition.acid = exactly(pct.mid);
}

void set_heat(Ingredient& food, const Band& heat, double own_pods, const std::string& source) {
    constexpr double ends = 2 * 1.644854;  // standard deviations from one end of a band to the other
    food.capsaicinoids = Quantity{heat, "mg/kg", source};
    if (food.lot_sigma && heat.low > 0) food.lot_sigma = Quantity{exactly(std::log(heat.high / heat.low) / ends), "ln", source};
    if (food.pod_sigma) food.pod_sigma->band = scaled(food.pod_sigma->band, own_pods);
}

void set_measure(Ingredient& food, const std::string& word, const Band& grams, const std::string& source) {
    bool known = false;
    for (auto& measure : food.measures) {
        const bool same = measure.measure == word || (word == "piece" && measure.measure == "pod");
        if (!same || (known && !measure.note.empty())) continue;
        measure.grams = grams;
        measure.source = source;
        known = true;
    }
    if (!known) food.measures.push_back({word, "", grams, source});
}

// The line of "kitchen.txt:3:1"; of a fact without a place its number.
std::string line_of(const std::string& where, std::size_t number) {
    const auto column = where.rfind(':');
    const auto line = column == std::string::npos || column == 0 ? std::string::npos : where.rfind(':', column - 1);
    return line == std::string::npos ? "n" + std::to_string(number) : where.substr(line + 1, column - line - 1);
}

class Overlay {
public:
    explicit Overlay(const Knowledge& base) : base_(base), records_(base.records()) {}

    void lay(const KitchenFact& fact, const std::string& file) {
        const std::string source = std::string(prefix) + line_of(fact.where, records_.sources.size());
        records_.sources.push_back(
            {source, SourceKind::common_practice, file + ", your own: \"" + fact.written + "\"", "laid over the general figure"});
        if (fact.kind == KitchenKind::scale) set_scale(fact.value, source);
        if (fact.kind == KitchenKind::like) return add_like(fact, source);
        for (const auto& id : fact.foods)
            for (auto& food : records_.ingredients)
                if (food.id == id) set(food, fact, source);
    }

    Knowledge done() && { return Knowledge(std::move(records_), base_.overlay()); }

private:
    void set(Ingredient& food, const KitchenFact& fact, const std::string& source) {
        switch (fact.kind) {
            case KitchenKind::fat:
                if (const auto* table = base_.source(food.composition.source))
                    records_.sources.back().cite += "; its other parts in proportion from " + table->cite;
                set_fat(food.composition, fact.value);
                food.composition.source = source;
                break;
            case KitchenKind::ph:
                if (food.acidity) food.acidity->ph = Quantity{fact.value, "pH", source};
                break;
            case KitchenKind::acid:
                set_acid(food, fact.value, source);
                break;
            case KitchenKind::heat:
                set_heat(food, fact.value, base_.parameter("kitchen.heat.own-pods").mid, source);
                break;
            case KitchenKind::measure:
                set_measure(food, fact.measure, fact.value, source);
                break;
            case KitchenKind::edible:
                food.edible = Quantity{fact.value, "%", source};
                break;
            case KitchenKind::scale:
            case KitchenKind::pan_loss:
            case KitchenKind::batch_ph:
            case KitchenKind::like:
            case KitchenKind::pan_fat:
            case KitchenKind::raw_lightness:
            case KitchenKind::cooked_lightness:
                break;  // of no food that is known
        }
    }

    // A record of its own under the maker's name, with wider bands; allergens and cautions are those of what it is like.
    void add_like(const KitchenFact& fact, const std::string& source) {
        const Ingredient* like = fact.foods.empty() ? nullptr : base_.ingredient(fact.foods.front());
        if (!like) return;
        Ingredient own = *like;
        own.id = own_food_id(fact.called);
        own.names = {fact.called};
        own.generic.clear();
        own.latin.clear();
        own.composition.source = source;
        own.composition.stand_in = like->names.front();
        const Band& factor = base_.parameter("composition.spread.likeness");
        const auto widen = [&](Band& band) { band = {band.low * factor.low, band.mid, band.high * factor.high}; };
        for (auto* dose : {&own.chlorophyll, &own.capsaicinoids, &own.pungency, &own.strength})
            if (*dose) widen((*dose)->band);
        if (own.acidity && own.acidity->titratable) widen(own.acidity->titratable->band);
        if (own.acidity && own.acidity->buffer) widen(own.acidity->buffer->band);
        for (Band* part : {&own.composition.protein, &own.composition.carbohydrate, &own.composition.ash}) widen(*part);
        for (std::size_t s = 0, count = records_.swaps.size(); s < count; ++s) {
            Swap swap = records_.swaps[s];
            if (swap.from != like->id && swap.to != like->id) continue;
            if (swap.from == like->id) swap.from = own.id;
            if (swap.to == like->id) swap.to = own.id;
            records_.swaps.push_back(std::move(swap));
        }
        records_.ingredients.push_back(std::move(own));
    }

    void set_scale(const Band& step, const std::string& source) {
        for (auto& parameter : records_.parameters)
            if (parameter.id == "bench.scale.step") parameter.quantity = Quantity{step, "g", source};
    }

    const Knowledge& base_;
    Records records_;
};

}  // namespace

Knowledge with_kitchen(const Knowledge& base, const Kitchen& kitchen) {
    Overlay overlay(base);
    for (const auto& fact : kitchen.facts) overlay.lay(fact, kitchen.file);
    return std::move(overlay).done();
}

std::string own_food_id(std::string_view called) {
    std::string id = "own-" + fold(called);
    std::replace(id.begin(), id.end(), ' ', '-');
    return id;
}

bool is_kitchen_source(std::string_view reference) { return reference.substr(0, prefix.size()) == prefix; }

}  // namespace standin
