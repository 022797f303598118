#include "render/effects.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include "words.hpp"

namespace standin::cli {
namespace {

struct Words {
    Property property;
    double step;  // a smaller difference is not worth a line: a choice of this page, nothing is computed from it
    const char *more, *less;
};

constexpr std::array<Words, 11> table{{
    {Property::salt_pct_of_meat, 0.1, "saltier", "less salty"},
    {Property::fat_pct, 1, "richer", "leaner"},
    {Property::water_pct, 1, "wetter", "drier"},
    {Property::protein_pct, 0.7, "more protein", "less protein"},
    {Property::ph, 0.05, "less acid", "more acid"},
    {Property::sourness_mmol_kg, 2, "sharper", "less sharp"},
    {Property::heat_mg_kg, 0.1, "hotter", "milder"},
    {Property::greenness, 1, "greener", "less green"},
    {Property::bind, 3, "better bound", "looser"},
    {Property::firmness, 3, "firmer", "softer"},
    {Property::cook_loss_pct, 1, "drier from the pan", "juicier from the pan"},
}};

const Words* words_of(Property property) {
    const auto found = std::find_if(table.begin(), table.end(), [&](const Words& w) { return w.property == property; });
    return found == table.end() ? nullptr : &*found;
}

}  // namespace

std::vector<Property> moved(const PerProperty<Band>& differences) {
    std::vector<const Words*> rows;
    const auto steps = [&](const Words* w) { return std::abs(differences[w->property].mid) / w->step; };
    for (const auto& w : table)
        if (steps(&w) >= 1) rows.push_back(&w);
    std::stable_sort(rows.begin(), rows.end(), [&](const Words* a, const Words* b) { return steps(a) > steps(b); });
    std::vector<Property> out;
    for (const auto* w : rows) out.push_back(w->property);
    return out;
}

std::string direction(Property property, double difference) {
    const auto* w = words_of(property);
    if (!w) return difference < 0 ? "less " + std::string(info(property).name) : "more " + std::string(info(property).name);
    return difference < 0 ? w->less : w->more;
}

std::string effect(Property property, const Band& difference) {
    const auto& i = info(property);
    return direction(property, difference.mid) + ": " + std::string(i.name) + " " + signed_band(difference, i.decimals) +
           (i.unit.empty() ? "" : " " + std::string(i.unit));
}

}  // namespace standin::cli
