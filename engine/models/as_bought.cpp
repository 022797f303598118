#include "models/as_bought.hpp"

#include <algorithm>
#include <array>
#include <string_view>

#include "knowledge/index/edible.hpp"
#include "models/composition.hpp"

namespace standin {

bool weighed_untrimmed(const Line& line) {
    // Preparations that take off what the edible share leaves out: their own yield counts it.
    constexpr std::array<std::string_view, 5> trims{"trimmed", "husked", "stemmed", "peeled", "shelled"};
    return std::any_of(line.prepared.begin(), line.prepared.end(),
                       [&](const Prepared& step) { return std::find(trims.begin(), trims.end(), step.preparation) != trims.end(); });
}

namespace {

// Grams that were prepared behind one gram as weighed.
double before_preparing(const Line& line, const Knowledge& knowledge) {
    if (!line.weighed_prepared) return 1;
    const double yield = preparation_yield(*knowledge.ingredient(line.ingredient), line.prepared, knowledge);
    return yield > 0 ? 1 / yield : 1;
}

}  // namespace

double bought_per_gram(const Line& line, const Knowledge& knowledge) {
    const double raw = before_preparing(line, knowledge);
    return weighed_untrimmed(line) ? raw : raw / edible_share(*knowledge.ingredient(line.ingredient));
}

double listed_per_gram(const Line& line, const Knowledge& knowledge) {
    return weighed_as_used(*knowledge.ingredient(line.ingredient)) ? before_preparing(line, knowledge) : bought_per_gram(line, knowledge);
}

}  // namespace standin
