#include "models/as_bought.hpp"

#include <algorithm>
#include <array>
#include <string_view>

#include "knowledge/edible.hpp"
#include "models/composition.hpp"

namespace standin {

bool weighed_untrimmed(const Line& line) {
    // Preparations that take off what the edible share leaves out: their own yield counts it.
    constexpr std::array<std::string_view, 5> trims{"trimmed", "husked", "stemmed", "peeled", "shelled"};
    return std::any_of(line.prepared.begin(), line.prepared.end(),
                       [&](const Prepared& step) { return std::find(trims.begin(), trims.end(), step.preparation) != trims.end(); });
}

double bought_per_gram(const Line& line, const Knowledge& knowledge) {
    const Ingredient& ingredient = *knowledge.ingredient(line.ingredient);
    double raw = 1;
    if (line.weighed_prepared) {
        const double yield = preparation_yield(ingredient, line.prepared, knowledge);
        if (yield > 0) raw = 1 / yield;
    }
    return weighed_untrimmed(line) ? raw : raw / edible_share(ingredient);
}

}  // namespace standin
