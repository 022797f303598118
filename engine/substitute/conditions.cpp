#include "substitute/conditions.hpp"

#include <algorithm>
#include <optional>

#include "safety/conditions.hpp"

namespace standin {
namespace {

// Nothing where the condition is not about the process, or the maker has not said.
std::optional<bool> holds(const Condition& condition, const Process& process, const Knowledge& knowledge) {
    const auto value = condition.process ? said_of(*condition.process, process, knowledge) : std::nullopt;
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
    each_condition(swap, knowledge, [&](const Condition& c) { allowed = allowed && holds(c, process, knowledge).value_or(true); });
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
        if (c.preparation.empty() && !holds(c, process, knowledge).value_or(false)) sentences.push_back(c.says);
    });
    return sentences;
}

}  // namespace standin
