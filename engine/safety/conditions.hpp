// Whether a condition of the rules holds for a batch, and what of the batch makes it hold. The conditions: knowledge/rule_records.hpp.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "safety/core_temperature.hpp"
#include "safety/wording.hpp"

namespace standin {

/// A batch as the rules look at it.
struct Facts {
    const Prediction& prediction;
    const Process& process;
    const Knowledge& knowledge;
    std::vector<Present> lines;
    std::vector<Species> species;
    CoreTemperature core;
};
Facts facts_of(const Prediction& prediction, const Process& process, const Knowledge& knowledge, std::string_view rules);

/// A threshold on a property that holds: of one property and side only the most severe counts.
struct Threshold {
    Property property = Property::ph;
    bool below = false;
    double severity = 0;
};

struct Holding {
    std::vector<std::string> foods;         ///< ids
    std::vector<std::string> foods_said{};  ///< the same with what matters of each: "chicken stock (celery)"
    std::string here{};                     ///< a sentence with what the process says
    std::optional<double> value{}, limit{};
    std::optional<Threshold> threshold{};
    std::string unit{};  ///< of value and limit
};

/// A rule that holds, as a reason: its numbers filled in for the batch, and what the process says behind it.
Reason reason_of(const std::string& id, std::string text, const Holding& holding);

/// Nothing where the condition does not hold.
std::optional<Holding> holds(const When& when, const Facts& facts);

/// The same, of what the process says by itself; nothing for any other condition.
std::optional<Holding> stated(const When& when, const Process& process, const Knowledge& knowledge);

/// What a process says of a field; nothing where it is silent. A rest in the freezer is no rest.
std::optional<double> said_of(ProcessField field, const Process& process, const Knowledge& knowledge);

/// "25 C", "120 hours".
std::string shown_field(ProcessField field, double value);

/// "C", "h"
std::string_view unit_of(ProcessField field);

/// How hot the core gets as the formula says it: by its last word, or by the end of its readings.
std::optional<double> core_said(const Process& process);

}  // namespace standin
