#include "adapt/moves/same_line.hpp"

#include <algorithm>
#include <cmath>

namespace standin {

std::optional<std::size_t> line_alike(const Problem& problem, const Line& food, const Context& context) {
    const auto mass = [&](const Line& line) { return context.nominal().unit(line)[Amount::mass]; };
    const auto& lines = problem.formula.lines;
    for (std::size_t l = 0; l < lines.size(); ++l) {
        if (lines[l].ingredient != food.ingredient || lines[l].keep || problem.missing[l]) continue;
        // Toasted seeds are the same seeds, weighed before or after.
        const bool as_prepared =
            std::equal(lines[l].prepared.begin(), lines[l].prepared.end(), food.prepared.begin(), food.prepared.end(),
                       [](const Prepared& one, const Prepared& other) { return one.preparation == other.preparation; });
        if (as_prepared || std::abs(mass(lines[l]) - mass(food)) < 1e-9) return l;
    }
    return std::nullopt;
}

bool kept_as_it_is(const Problem& problem, const Line& food, const std::map<std::string, double>& left) {
    const auto& lines = problem.formula.lines;
    const bool kept =
        std::any_of(lines.begin(), lines.end(), [&](const Line& line) { return line.keep && line.ingredient == food.ingredient; });
    return kept && left.count(food.ingredient) == 0;
}

double weighed_there(const Line& there, const Line& food, const Context& context) {
    return context.nominal().unit(food)[Amount::mass] / context.nominal().unit(there)[Amount::mass];
}

}  // namespace standin
