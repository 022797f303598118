#include "evaluate/leaf_paste.hpp"

#include "models/colour.hpp"
#include "models/composition.hpp"

namespace standin {

double leaf_paste_of(const Formula& formula, const Knowledge& knowledge) {
    double greens = 0, mass = 0;
    for (const auto& line : formula.lines) {
        const Ingredient& food = *knowledge.ingredient(line.ingredient);
        const double grams = line.grams.mid * (line.weighed_prepared ? 1 : preparation_yield(food, line.prepared, knowledge));
        mass += grams;
        if (goes_into_paste(food)) greens += grams;
    }
    return mass > 0
               ? paste_by_share(greens / mass, knowledge.parameter("colour.paste.from").mid, knowledge.parameter("colour.paste.until").mid)
               : 0;
}

}  // namespace standin
