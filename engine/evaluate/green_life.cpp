#include "evaluate/green_life.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

#include "evaluate/predict.hpp"
#include "models/colour.hpp"
#include "models/colour_words.hpp"

namespace standin {
namespace {

constexpr std::array<double, 10> rests_h{0, 4, 8, 12, 18, 24, 36, 48, 72, 96};

// Green to the eye is a matter of hue: olive masses are green ones too, until they turn yellow. What is called another word to begin with
// is said nothing of.
bool green(const Lab& lab, double least_hue) {
    constexpr double half_turn = 180;
    return lab.a < 0 && std::atan2(lab.b, lab.a) * half_turn / std::numbers::pi >= least_hue;
}

// Hours of rest after which the mass is no longer green; the last of the table where it still is, 0 where it is not even after the first.
// Green only fades: the last green rest is found by halving.
double hours_green(const Material& batch, ProcessState process, const Models& models, double least_hue) {
    const double ph = models.ph(batch);
    const auto still_green = [&](double hours) {
        process.rest_h = hours;
        return green(models.colour(batch, ph, process).rested, least_hue);
    };
    const auto faded = std::partition_point(rests_h.begin(), rests_h.end(), still_green);
    return faded == rests_h.begin() ? 0 : *(faded - 1);
}

double least_hue_of(const Knowledge& knowledge) { return knowledge.parameter("colour.green.hue").mid; }

bool is_acid(const Line& line, const Knowledge& knowledge) { return knowledge.ingredient(line.ingredient)->roles.front() == Role::acid; }

// The batch without its acid, which then goes on in the pan.
double hours_without_acid(const Formula& formula, const NominalBatch& batch, const Evaluator& evaluator) {
    Material mild = batch.total();
    for (std::size_t l = 0; l < batch.lines(); ++l)
        if (is_acid(formula.lines[l], evaluator.knowledge())) mild.add(batch.part(l), -1);
    return hours_green(mild, batch.process(), evaluator.nominal().models(), least_hue_of(evaluator.knowledge()));
}

}  // namespace

std::optional<GreenLife> green_life_of(const Formula& formula, const NominalBatch& nominal, const SampledBatch& sampled,
                                       const Evaluator& evaluator) {
    const Models& models = evaluator.nominal().models();
    const double least_hue = least_hue_of(evaluator.knowledge());
    const Lab raw = nominal.state().raw;
    if (!green(raw, least_hue) || !called_green(colour_word(raw, Doneness::raw))) return std::nullopt;
    std::vector<double> hours(sampled.count());
    for (std::size_t i = 0; i < hours.size(); ++i)
        hours[i] = hours_green(sampled.total(i), sampled.process(i), sampled.models(i), least_hue);
    GreenLife life;
    life.hours = band_around(hours_green(nominal.total(), nominal.process(), models, least_hue), std::move(hours));
    life.reason.kind = ReasonKind::keeps_green;
    auto& figures = life.reason.figures;
    figures = {{"rest", {}, life.hours.mid, "h", life.hours.low, life.hours.high},
               {"least told", {}, rests_h[1], "h"},
               {"most told", {}, rests_h.back(), "h"}};
    if (life.hours.mid < rests_h.back()) {
        constexpr double coldest = 0;  // C: as cold as a mass rests without freezing
        ProcessState cold = nominal.process();
        cold.rest_at_c = std::min(cold.rest_at_c, coldest);
        if (const double colder = hours_green(nominal.total(), cold, models, least_hue); colder > life.hours.mid) {
            figures.push_back({"colder", {}, colder, "h"});
            figures.push_back({"at", {}, coldest, "C"});
        }
        if (const double milder = hours_without_acid(formula, nominal, evaluator); milder > life.hours.mid)
            figures.push_back({"without acid", {}, milder, "h"});
    }
    life.says = in_full(life.reason);
    return life;
}

}  // namespace standin
