#include "render/effects.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include "standin/narrate.hpp"
#include "words.hpp"

namespace standin::cli {
namespace {

struct Row {
    Property property;
    double step;  // a smaller difference is not worth a line: a choice of this page, nothing is computed from it
};

constexpr std::array<Row, 11> table{{
    {Property::salt_pct_of_meat, 0.1},
    {Property::fat_pct, 1},
    {Property::water_pct, 1},
    {Property::protein_pct, 0.7},
    {Property::ph, 0.05},
    {Property::sourness_mmol_kg, 2},
    {Property::heat_mg_kg, 0.1},
    {Property::greenness, 1},
    {Property::bind, 3},
    {Property::firmness, 3},
    {Property::cook_loss_pct, 1},
}};

}  // namespace

std::vector<Property> moved(const PerProperty<Band>& differences) {
    std::vector<const Row*> rows;
    const auto steps = [&](const Row* w) { return std::abs(differences[w->property].mid) / w->step; };
    for (const auto& w : table)
        if (steps(&w) >= 1) rows.push_back(&w);
    std::stable_sort(rows.begin(), rows.end(), [&](const Row* a, const Row* b) { return steps(a) > steps(b); });
    std::vector<Property> out;
    for (const auto* w : rows) out.push_back(w->property);
    return out;
}

std::string effect(Property property, const Band& difference) {
    const auto& i = info(property);
    return direction(property, difference.mid) + ": " + std::string(i.name) + " " + signed_band(difference, i.decimals) +
           (i.unit.empty() ? "" : " " + std::string(i.unit));
}

}  // namespace standin::cli
