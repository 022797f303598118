// A prediction by hand: lines and weights, and only the properties a test is about.
#pragma once

#include <stdexcept>
#include <string>
#include <utility>
#include <vector>

#include "standin/prediction.hpp"
#include "support/knowledge.hpp"

/// A property as predicted, its nominal value in the middle of the band.
inline void foretell(standin::Prediction& p, standin::Property property, const standin::Band& band) {
    p.properties[property] = band;
    p.nominal[property] = band.mid;
}

inline standin::Prediction mixture(const std::vector<std::pair<std::string, double>>& lines, std::string title = "",
                                   const standin::Knowledge& known = knowledge()) {
    standin::Prediction p;
    p.title = std::move(title);
    for (const auto& [id, grams] : lines) {
        const standin::Ingredient* ingredient = known.ingredient(id);
        if (!ingredient) throw std::invalid_argument("no ingredient " + id);
        standin::PredictedLine line;
        line.ingredient = id;
        line.name = ingredient->names.front();
        line.weighed_g = line.grams = grams;
        line.roles = ingredient->roles;
        p.batch_g += grams;
        if (ingredient->meat) p.meat_g += grams;
        p.lines.push_back(std::move(line));
    }
    const auto set = [&](standin::Property property, double value) { foretell(p, property, {value, value, value}); };
    set(standin::Property::ph, 5.8);
    set(standin::Property::salt_pct_of_meat, 1.8);
    set(standin::Property::salt_pct, 1.6);
    set(standin::Property::fat_pct, 25);
    return p;
}
