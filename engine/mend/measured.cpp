#include "mend/measured.hpp"

#include <algorithm>
#include <cctype>
#include <cmath>

#include "core/words.hpp"
#include "evaluate/bands.hpp"
#include "evaluate/predict.hpp"
#include "safety/safety.hpp"
#include "standin/number_text.hpp"

namespace standin {
namespace {

constexpr const char* measured_part = "request.measured";
constexpr double sodium_of_salt = 22.98977 / 58.44277;  // g/g: standard atomic weights

Failure not_read(const std::string& text) {
    return failure(Trouble::usage, "expected \"pH 4.9\" or \"salt 2.4 %\", not `" + text + "`: pH and salt are what a bench measures",
                   measured_part);
}

Result<MassReading> read_one(const std::string& text, const Context& context) {
    std::string name, rest;
    std::size_t i = text.find_first_not_of(" \t");
    for (; i < text.size() && std::isalpha(static_cast<unsigned char>(text[i])) != 0; ++i)
        name += static_cast<char>(std::tolower(static_cast<unsigned char>(text[i])));
    for (; i < text.size(); ++i)
        if (std::string_view(" \t=:%").find(text[i]) == std::string_view::npos) rest += text[i] == ',' ? '.' : text[i];
    const auto value = number_in(rest);
    if (!value || (name != "ph" && name != "salt")) return not_read(text);
    if (name == "ph") {
        const double least = context.constant("mend.ph.least"), most = context.constant("mend.ph.most");
        if (*value < least || *value > most)
            return failure(Trouble::usage,
                           "pH " + rest + " is no raw sausage mass (" + figures_text(least, 2) + " to " + figures_text(most, 2) +
                               "): set the meter with its buffers and measure again; a mass that really is above that is "
                               "spoiling, and one far below it is no fresh sausage",
                           measured_part);
        return MassReading{Property::ph, *value};
    }
    if (*value < 0 || *value > context.constant("mend.salt.most"))
        return failure(Trouble::usage,
                       "salt " + rest + " % is no fresh sausage: expected 0 to " + figures_text(context.constant("mend.salt.most"), 2) +
                           " % of the mass",
                       measured_part);
    return MassReading{Property::salt_pct, *value};
}

// The strong ions that bring the batch to `ph`; more of them raise it all the way.
double ions_for(Material batch, double ph, const Models& models) {
    constexpr int halvings = 60;
    const double mass = batch[Amount::mass], before = batch[Amount::strong_ions];
    double low = -mass, high = mass;  // mmol, a mol to the kilo either way
    for (int i = 0; i < halvings; ++i) {
        const double middle = (low + high) / 2;
        batch[Amount::strong_ions] = before + middle;
        (models.ph(batch) < ph ? low : high) = middle;
    }
    return (low + high) / 2;
}

}  // namespace

Result<std::vector<MassReading>> read_measured(const std::vector<std::string>& measured, const Context& context) {
    std::vector<MassReading> readings;
    for (const auto& text : measured) {
        auto reading = read_one(text, context);
        if (!reading) return Failure(reading.error());
        const auto same =
            std::any_of(readings.begin(), readings.end(), [&](const MassReading& r) { return r.property == reading->property; });
        if (same) return failure(Trouble::usage, "the same thing twice; give the mean of what you measured", measured_part);
        readings.push_back(*reading);
    }
    return readings;
}

MassAsMade::MassAsMade(const Formula& mass, const std::vector<MassReading>& readings, const Context& context) : context_(context) {
    if (readings.empty()) return;
    const NominalBatch batch(mass, context.nominal());
    middle_ = missing(batch.total(), batch.process(), context.nominal().models(), readings);
    const SampledBatch drawn(mass, context.sampled());
    for (std::size_t d = 0; d < drawn.count(); ++d) drawn_.push_back(missing(drawn.total(d), drawn.process(d), drawn.models(d), readings));
}

Material MassAsMade::missing(Material total, const ProcessState& process, const Models& models,
                             const std::vector<MassReading>& readings) const {
    constexpr int rounds = 3;  // salt moves the pH a little, and doubts beyond the models' range shift it by a constant
    Material beside;
    const auto put = [&](Amount amount, double by) {
        beside[amount] += by;
        total[amount] += by;
    };
    for (int round = 0; round < rounds; ++round)
        for (const auto& reading : readings) {
            if (reading.property == Property::salt_pct) {
                const double salt = reading.value / 100 * total[Amount::mass] - total[Amount::salt];
                put(Amount::salt, salt);
                put(Amount::sodium, salt * sodium_of_salt);
                put(Amount::ash, salt);
                put(Amount::water, -salt);
                continue;
            }
            const double shown = models.state(total, process).properties[Property::ph], by_itself = models.ph(total);
            put(Amount::strong_ions, ions_for(total, reading.value - (shown - by_itself), models));
        }
    return beside;
}

Material MassAsMade::total(const Formula& formula) const {
    Material total = NominalBatch(formula, context_.nominal()).total();
    total.add(middle_, 1);
    return total;
}

State MassAsMade::state(const Formula& formula) const {
    return context_.nominal().models().state(total(formula), context_.nominal().process(formula.process));
}

std::vector<State> MassAsMade::states(const Formula& formula) const {
    const SampledBatch batch(formula, context_.sampled());
    if (drawn_.empty()) return batch.states();
    std::vector<State> states;
    for (std::size_t d = 0; d < batch.count(); ++d) {
        Material total = batch.total(d);
        total.add(drawn_[d], 1);
        states.push_back(batch.models(d).state(total, batch.process(d)));
    }
    return states;
}

Prediction MassAsMade::predicted(const Formula& formula, const std::vector<State>& states) const {
    Prediction p = predict_formula(formula, SampledBatch(formula, context_.sampled()), states, context_.evaluator);
    if (!drawn_.empty()) put_bands(p, state(formula), states);
    mark_safety(p, formula, context_.evaluator, context_.options.rules);
    return p;
}

}  // namespace standin
