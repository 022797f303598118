#include "evaluate/evaluator.hpp"

#include <algorithm>
#include <cmath>

#include "models/composition.hpp"
#include "standin/number_text.hpp"

namespace standin {
namespace {

constexpr double usual_pod_g = 15;  // a chile of which no piece weight is known; judgement

// What the caches may hold: about 10 MB of nominal materials, and of sampled ones about 40 MB whatever the number of draws.
constexpr std::size_t most_nominal = 10000, most_sampled_bytes = std::size_t{40} << 20, fewest_sampled = 16;

std::size_t most_sampled(std::size_t draws) { return std::max(fewest_sampled, most_sampled_bytes / (draws * sizeof(Material))); }

std::string key_of(const Line& line, double pods) {
    std::string key = line.ingredient + (line.called.empty() ? "" : "~") + (line.weighed_prepared ? "|after" : "|");
    for (const auto& step : line.prepared) key += "," + step.preparation + (step.minutes ? exact_text(*step.minutes) : "");
    for (const auto& fact : {line.fat_pct, line.ph, line.acid_pct, line.heat_mg_kg})
        key += fact ? "|" + exact_text(fact->low) + " " + exact_text(fact->mid) + " " + exact_text(fact->high) : "|";
    return key + "|" + exact_text(pods);
}

// What a gram of the line's food is, known already or made now.
template <class Known, class Make>
auto looked_up(const Line& line, const Knowledge& knowledge, Known& known, Make make) {
    const Ingredient& ingredient = *knowledge.ingredient(line.ingredient);
    const double pods = pods_of(line, ingredient);
    return known.get(key_of(line, pods), [&] {
        std::optional<Band> likeness;
        if (!line.called.empty()) likeness = knowledge.parameter("composition.spread.likeness");
        return make(Portion{ingredient, line.prepared, line.weighed_prepared, pods, line.fat_pct, line.ph, line.acid_pct, line.heat_mg_kg,
                            likeness});
    });
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

Nominal::Nominal(const Knowledge& knowledge, const Deviates& given)
    : knowledge_(knowledge),
      middle_(Draws::middle(given)),
      acid_(draw_parameters(knowledge, acid_bindings(), middle_)),
      models_(models_of(knowledge, middle_).front()),
      units_(most_nominal) {}

Material Nominal::unit(const Line& line) const {
    return *looked_up(line, knowledge_, units_,
                      [&](const Portion& portion) { return unit_materials(portion, knowledge_, acid_, middle_).front(); });
}

ProcessState Nominal::process(const Process& process) const { return process_states(process, knowledge_, middle_).front(); }

Sampled::Sampled(const Knowledge& knowledge, std::size_t draws, std::uint64_t seed, std::string_view held, const Deviates& given)
    : knowledge_(knowledge), seed_(seed), given_(given), draws_(draws, seed, held, given), units_(most_sampled(draws)) {
    acid_ = draw_parameters(knowledge, acid_bindings(), draws_);
    models_ = models_of(knowledge, draws_);
}

std::shared_ptr<const std::vector<Material>> Sampled::units(const Line& line) const {
    return looked_up(line, knowledge_, units_, [&](const Portion& portion) { return unit_materials(portion, knowledge_, acid_, draws_); });
}

std::vector<ProcessState> Sampled::processes(const Process& process) const { return process_states(process, knowledge_, draws_); }

}  // namespace standin
