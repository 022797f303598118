#include "formula/amounts/fact_band.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include "core/band.hpp"
#include "knowledge/index/plausible.hpp"
#include "standin/number_text.hpp"

namespace standin {
namespace {

Failure no_such(const std::string& what, const Ingredient& ingredient) {
    return failure(Trouble::bad_data, what + " is told of " + ingredient.names.front() + ", which has none that counts here", "");
}

Failure beyond(const std::string& what, const Ingredient& ingredient, const PlausibleRange& range, const std::string& unit) {
    return failure(Trouble::bad_data,
                   what + " of " + ingredient.names.front() + " lies beyond what can be: expected " + exact_text(range.low) + " to " +
                       exact_text(range.high) + unit,
                   "");
}

Result<Band> within(const FactText& fact, const std::optional<PlausibleRange>& range, const Band& band, const Ingredient& ingredient,
                    const std::string& figure, const std::string& unit) {
    if (!range) return no_such(figure, ingredient);
    if (!range->holds(fact.value.low) || !range->holds(fact.value.high)) return beyond(figure, ingredient, *range, unit);
    return band;
}

// Two or three figures are all that is known of heat.
Band rounded(const Band& band) {
    const auto cut = [](double value) { return number_in(figures_text(value, 3)).value_or(value); };
    return {cut(band.low), cut(band.mid), cut(band.high)};
}

bool is_pod(const Ingredient& ingredient) { return ingredient.tissue == Tissue::chile_flesh; }

// mg/kg of the pod as it is for one SHU.
double mg_kg_a_shu(const FactText& fact, const Ingredient& ingredient, const Knowledge& knowledge) {
    const double solids = 1 - ingredient.composition.water.mid / 100;
    const double a_shu = 1 / knowledge.parameter("heat.shu-factor").mid;
    return is_pod(ingredient) && fact.of != HeatOf::fresh ? a_shu * solids : a_shu;
}

Result<Band> heat_of_word(HeatWord word, const Ingredient& ingredient, const Knowledge& knowledge) {
    constexpr std::array<std::string_view, 5> ids{"kitchen.heat.very-mild", "kitchen.heat.mild", "kitchen.heat.usual", "kitchen.heat.hot",
                                                  "kitchen.heat.very-hot"};
    if (!plausible_heat(ingredient)) return no_such("how hot it is", ingredient);
    const Band& heat = ingredient.capsaicinoids->band;
    constexpr double ends = 1.644854;  // standard deviations from the middle of a band to its ends
    const double lot = ingredient.lot_sigma ? ingredient.lot_sigma->band.mid : std::log(heat.high / std::max(heat.low, 1e-3)) / (2 * ends);
    const Band& steps = knowledge.parameter(ids[static_cast<std::size_t>(word)]);
    return rounded({heat.mid * std::exp(lot * steps.low), heat.mid * std::exp(lot * steps.mid), heat.mid * std::exp(lot * steps.high)});
}

}  // namespace

Band fact_spread(const FactText& fact, const Knowledge& knowledge) {
    if (fact.banded) return fact.value;
    const double mid = fact.value.mid;
    const auto times = [&](const char* id) {
        const Band& factor = knowledge.parameter(id);
        return rounded({mid * factor.low, mid, mid * factor.high});
    };
    switch (fact.kind) {
        case FactKind::ph: {
            const Band& off = knowledge.parameter("kitchen.spread.ph");
            return {mid + off.low, mid, mid + off.high};
        }
        case FactKind::acid_pct:
            return times("kitchen.spread.acid");
        case FactKind::heat_shu:
            return times("kitchen.spread.heat-shu");
        case FactKind::heat_mg_kg:
        case FactKind::heat_word:
            break;
    }
    return times("kitchen.spread.heat");
}

namespace {

// A fresh pod's is less sure than a packet's: its water is presumed.
Band shu_spread(const FactText& fact, const Ingredient& ingredient, const Knowledge& knowledge) {
    if (fact.banded || !is_pod(ingredient)) return fact_spread(fact, knowledge);
    const Band& factor = knowledge.parameter("kitchen.spread.heat-shu-pod");
    return rounded({fact.value.mid * factor.low, fact.value.mid, fact.value.mid * factor.high});
}

}  // namespace

Result<Band> fact_band(const FactText& fact, const Ingredient& ingredient, const Knowledge& knowledge) {
    if (fact.kind == FactKind::heat_word) return heat_of_word(fact.word, ingredient, knowledge);
    const std::string number = trimmed_text(fact.value.mid, 2);
    if (fact.kind == FactKind::ph)
        return within(fact, plausible_ph(ingredient), fact_spread(fact, knowledge), ingredient, "pH " + number, "");
    if (fact.kind == FactKind::acid_pct)
        return within(fact, plausible_acid(ingredient), fact_spread(fact, knowledge), ingredient, "an acidity of " + number + " %", " %");
    const auto range = plausible_heat(ingredient);
    if (fact.kind == FactKind::heat_mg_kg)
        return within(fact, range, fact_spread(fact, knowledge), ingredient, number + " mg/kg", " mg/kg");
    if (!range) return no_such(number + " SHU", ingredient);
    const double share = mg_kg_a_shu(fact, ingredient, knowledge);
    const auto shu = [&](double mg_kg) { return number_in(figures_text(mg_kg / share, 2)).value_or(0); };
    const PlausibleRange in_shu{shu(range->low), shu(range->high)};
    return within(fact, in_shu, rounded(scaled(shu_spread(fact, ingredient, knowledge), share)), ingredient, number + " SHU", " SHU");
}

bool fits_bare(const FactText& fact, const Ingredient& ingredient) {
    if (fact.kind == FactKind::acid_pct)
        return main_acid(ingredient) == Acid::acetic || (is_bought_as_acid(ingredient) && ingredient.tissue == Tissue::liquid);
    return plausible_heat(ingredient).has_value();
}

std::optional<Reason> fact_note(const FactText& fact, const Ingredient& ingredient, const Band& band) {
    if (fact.kind != FactKind::heat_shu || !is_pod(ingredient) || fact.of == HeatOf::fresh) return std::nullopt;
    return make_reason(ReasonKind::heat_of_dried, {{"dried", {}, fact.value.mid, "SHU"}, {"fresh", {}, band.mid, "mg/kg"}},
                       {ingredient.names.front()});
}

}  // namespace standin
