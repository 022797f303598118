#include "safety/making_limits.hpp"

#include <functional>
#include <optional>

namespace standin {
namespace {

using Holds = std::function<std::optional<std::vector<std::string>>(const MakingRule&)>;

MakingLimit strictest(ProcessField field, const Knowledge& knowledge, std::string_view rules, const Holds& foods_of) {
    MakingLimit limit;
    for (const RuleSet* set : sets_of(knowledge, rules))
        for (const auto& rule : set->making) {
            if (rule.field != field || (limit.rule && rule.most >= limit.rule->most)) continue;
            if (auto foods = foods_of(rule)) limit = {&rule, std::move(*foods)};
        }
    return limit;
}

std::optional<std::vector<std::string>> foods_calling(const MakingRule& rule, const Facts& facts) {
    if (rule.when.empty()) return std::vector<std::string>{};
    for (const auto& when : rule.when)
        if (const auto holding = holds(when, facts)) return holding->foods;
    return std::nullopt;
}

std::vector<CautionText> beyond(const Process& process, const Knowledge& knowledge, const std::function<MakingLimit(ProcessField)>& limit) {
    std::vector<CautionText> all;
    for (std::size_t i = 0; i < count_of<ProcessField>; ++i) {
        const auto field = static_cast<ProcessField>(i);
        const auto said = said_of(field, process, knowledge);
        const MakingLimit most = limit(field);
        if (!said || !most.rule || *said <= most.rule->most) continue;
        const Holding holding{
            most.foods, names_of(most.foods, knowledge), "Here: " + shown_field(field, *said) + ".", *said, most.rule->most,
            {},         std::string(unit_of(field))};
        all.push_back(caution_text(reason_of(most.rule->id, most.rule->text, holding), most.rule->source, most.foods));
    }
    return all;
}

}  // namespace

MakingLimit limit_on(ProcessField field, const Facts& facts, std::string_view rules) {
    return strictest(field, facts.knowledge, rules, [&](const MakingRule& rule) { return foods_calling(rule, facts); });
}

std::vector<CautionText> making_cautions(const Facts& facts, std::string_view rules) {
    return beyond(facts.process, facts.knowledge, [&](ProcessField field) { return limit_on(field, facts, rules); });
}

std::vector<CautionText> making_cautions(const Process& process, const Knowledge& knowledge, std::string_view rules) {
    return beyond(process, knowledge, [&](ProcessField field) {
        return strictest(field, knowledge, rules, [](const MakingRule& rule) {
            return rule.when.empty() ? std::optional(std::vector<std::string>{}) : std::nullopt;
        });
    });
}

}  // namespace standin
