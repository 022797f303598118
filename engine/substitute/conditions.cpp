#include "substitute/conditions.hpp"

#include <algorithm>
#include <optional>

namespace standin {
namespace {

std::optional<double> value_of(const Process& process, ProcessField field) {
    switch (field) {
        case ProcessField::plate:
            return process.plate_mm;
        case ProcessField::mixing:
            return process.mixing_min;
        case ProcessField::mixed_at:
            return process.mixed_at_c;
        case ProcessField::rest:
            return process.rest_h;
        case ProcessField::rest_at:
            return process.rest_at_c;
        case ProcessField::core:
            return process.core_c;
    }
    return std::nullopt;
}

// Nothing where the condition is not about the process, or the maker has not said.
std::optional<bool> holds(const Condition& condition, const Process& process) {
    const auto value = condition.process ? value_of(process, *condition.process) : std::nullopt;
    if (!value) return std::nullopt;
    return (!condition.least || *value >= *condition.least) && (!condition.most || *value <= *condition.most);
}

template <class Visit>
void each_condition(const Swap& swap, const Knowledge& knowledge, Visit visit) {
    for (const auto& need : swap.needs)
        if (const auto* condition = knowledge.condition(need)) visit(*condition);
}

}  // namespace

bool conditions_allow(const Swap& swap, const Process& process, const Knowledge& knowledge) {
    bool allowed = true;
    each_condition(swap, knowledge, [&](const Condition& c) { allowed = allowed && holds(c, process).value_or(true); });
    return allowed;
}

std::vector<std::string> conditions_prepare(const Swap& swap, const Knowledge& knowledge) {
    std::vector<std::string> steps;
    each_condition(swap, knowledge, [&](const Condition& c) {
        if (!c.preparation.empty()) steps.push_back(c.preparation);
    });
    return steps;
}

std::vector<std::string> conditions_ask(const Swap& swap, const Process& process, const Knowledge& knowledge) {
    std::vector<std::string> sentences;
    each_condition(swap, knowledge, [&](const Condition& c) {
        if (c.preparation.empty() && !holds(c, process).value_or(false)) sentences.push_back(c.says);
    });
    return sentences;
}

}  // namespace standin
