#include "knowledge/index/plausible.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace standin {
namespace {

// All judgement: wide enough for an odd lot, narrow enough to catch a slip.
constexpr double fat_points = 30;                     // a cut may be this much fatter or leaner than its record
constexpr PlausibleRange meat_ph{4.8, 7.5};           // from the sourest pale pork to the darkest meat, old fish and skin
constexpr double ph_steps = 1.5;                      // beyond the record's own band
constexpr PlausibleRange any_ph{1.5, 10};             // from strong acid to soda
constexpr double acid_times = 5, most_acid_pct = 30;  // vinegar essence has 25 %
constexpr double bought_as_acid = 50;                 // g in 100 g: lactic acid is sold at 80 and at 88 %
constexpr double heat_times = 10;                     // beyond the record's own band
constexpr double most_heat_mg_kg = 200000;            // beyond any pod

}  // namespace

PlausibleRange plausible_fat(const Ingredient& ingredient) {
    const Band& fat = ingredient.composition.fat;
    return {std::max(0.0, fat.low - fat_points), std::min(100.0, fat.high + fat_points)};
}

std::optional<PlausibleRange> plausible_ph(const Ingredient& ingredient) {
    if (!ingredient.acidity || !ingredient.acidity->ph) return std::nullopt;
    if (ingredient.meat) return meat_ph;
    const Band& ph = ingredient.acidity->ph->band;
    return PlausibleRange{std::max(any_ph.low, ph.low - ph_steps), std::min(any_ph.high, ph.high + ph_steps)};
}

std::optional<Acid> main_acid(const Ingredient& ingredient) {
    if (!ingredient.acidity || !ingredient.acidity->titratable || ingredient.acidity->acids.empty()) return std::nullopt;
    const auto& acids = ingredient.acidity->acids;
    return std::max_element(acids.begin(), acids.end(), [](const AcidShare& a, const AcidShare& b) { return a.share < b.share; })->acid;
}

bool is_bought_as_acid(const Ingredient& ingredient) { return ingredient.composition.acid.mid > bought_as_acid; }

std::optional<PlausibleRange> plausible_acid(const Ingredient& ingredient) {
    if (!main_acid(ingredient)) return std::nullopt;
    if (is_bought_as_acid(ingredient)) return PlausibleRange{std::floor(ingredient.composition.acid.mid / acid_times), 100};
    const Quantity& q = *ingredient.acidity->titratable;
    constexpr double pct_a_mmol_kg = 0.0064;  // of citric acid, what is given in mmol/kg for the most part
    const double usual = q.band.mid * (q.unit == "mmol/kg" ? pct_a_mmol_kg : 0.1);
    return PlausibleRange{std::floor(10 * usual / acid_times) / 10, std::min(most_acid_pct, std::ceil(usual * acid_times))};
}

std::optional<PlausibleRange> plausible_heat(const Ingredient& ingredient) {
    if (!ingredient.capsaicinoids || ingredient.capsaicinoids->band.high <= 0) return std::nullopt;
    const Band& heat = ingredient.capsaicinoids->band;
    return PlausibleRange{std::floor(heat.low / heat_times), std::min(most_heat_mg_kg, std::ceil(heat.high * heat_times))};
}

}  // namespace standin
