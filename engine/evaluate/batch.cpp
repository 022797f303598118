#include "evaluate/batch.hpp"

#include <algorithm>
#include <cmath>

#include "core/band.hpp"
#include "models/composition.hpp"

namespace standin {
namespace {

constexpr double usual_pod_g = 15;  // a chile of which no piece weight is known; judgement

std::string key_of(const Line& line, double pods) {
    std::string key = line.ingredient + (line.weighed_prepared ? "|after" : "|");
    for (const auto& step : line.prepared) key += "," + step.preparation + (step.minutes ? std::to_string(*step.minutes) : "");
    return key + "|" + std::to_string(pods);
}

}  // namespace

double pods_of(const Line& line, const Ingredient& ingredient) {
    if (!ingredient.pod_sigma) return 1;
    if (line.count) return std::max(1.0, *line.count);
    double piece = usual_pod_g;
    for (const auto& measure : ingredient.measures)
        if (measure.measure == "piece" || measure.measure == "pod") piece = measure.grams.mid;
    return std::max(1.0, std::round(line.grams.mid / piece));
}

const std::vector<Material>& Pantry::unit(const Line& line) {
    const Ingredient& ingredient = *knowledge_.ingredient(line.ingredient);
    const double pods = pods_of(line, ingredient);
    const auto [place, fresh] = known_.try_emplace(key_of(line, pods));
    if (fresh) place->second = unit_materials({ingredient, line.prepared, line.weighed_prepared, pods}, knowledge_, models_.acid(), draws_);
    return place->second;
}

Batch::Batch(const Formula& formula, Pantry& pantry) : process_(process_states(formula.process, pantry.knowledge(), pantry.draws())) {
    for (const auto& line : formula.lines) {
        BatchLine added{&pantry.unit(line), std::vector<double>(process_.size(), line.grams.mid)};
        if (line.grams.low != line.grams.high) {
            const auto& deviates = pantry.draws().of(line.ingredient + " weight");
            for (std::size_t i = 0; i < added.grams.size(); ++i) added.grams[i] = at(line.grams, deviates[i]);
        }
        lines_.push_back(std::move(added));
    }
}

Material Batch::total(std::size_t draw) const {
    Material sum;
    for (const auto& line : lines_) sum.add((*line.unit)[draw], line.grams[draw]);
    return sum;
}

double Batch::part(std::size_t line, Amount amount, std::size_t draw) const {
    return (*lines_[line].unit)[draw][amount] * lines_[line].grams[draw];
}

}  // namespace standin
