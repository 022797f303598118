#include "worksheet/limits.hpp"

#include <algorithm>
#include <optional>

#include "safety/making_limits.hpp"

namespace standin {
namespace {

class Keeper {
public:
    Keeper(Sheet& sheet, const Knowledge& knowledge, std::string_view rules)
        : sheet_(sheet), rules_(rules), facts_(facts_of(sheet.prediction, sheet.formula.process, knowledge, rules)) {}

    void keep() {
        if (!frozen()) rest();
        cold(ProcessField::rest_at, [](const SheetStep& s) { return s.id == "rest"; });
        cold(ProcessField::mixed_at,
             [](const SheetStep& s) { return s.id == "grind" || s.id == "paste" || s.id == "sour" || s.id.rfind("mix", 0) == 0; });
    }

private:
    bool frozen() const {
        const auto& at = sheet_.formula.process.rest_at_c;
        return at && *at <= facts_.knowledge.parameter("bench.rest.frozen").mid;
    }

    void override_said(ProcessField field, const MakingLimit& limit) {
        const auto said = said_of(field, sheet_.formula.process, facts_.knowledge);
        if (said && *said > limit.rule->most) note(field, limit, said);
    }

    void note(ProcessField field, const MakingLimit& limit, std::optional<double> said) {
        const double most = limit.rule->most;
        const Holding holding{limit.foods, names_of(limit.foods, facts_.knowledge), {}, most, most};
        Reason kept = reason_of(limit.rule->id, limit.rule->text, holding);
        kept.kind = ReasonKind::kept_to_rule;
        kept.role = field == ProcessField::rest ? "rest" : field == ProcessField::rest_at ? "rest at" : "mixed at";
        const std::string unit(unit_of(field));
        kept.figures = {{"most", {}, most, unit}};
        if (said) kept.figures.push_back({"said", {}, *said, unit});
        sheet_.notes.push_back(std::move(kept));
    }

    void rest() {
        constexpr double minutes_an_hour = 60;
        const MakingLimit limit = limit_on(ProcessField::rest, facts_, rules_);
        if (!limit.rule) return;
        const auto step = std::find_if(sheet_.steps.begin(), sheet_.steps.end(), [](const SheetStep& s) { return s.id == "rest"; });
        if (step == sheet_.steps.end() || !step->minutes || *step->minutes <= minutes_an_hour * limit.rule->most) return;
        const bool none = limit.rule->most <= 0;
        if (sheet_.formula.process.rest_h) override_said(ProcessField::rest, limit);
        else note(ProcessField::rest, limit, std::nullopt);
        if (none) sheet_.steps.erase(step);
        else {
            if (const auto& said = sheet_.formula.process.rest_h)
                step->besides.push_back(make_reason(ReasonKind::rests_too_long, {{"rest", {}, *said, "h"}}));
            step->minutes = minutes_an_hour * limit.rule->most;
        }
    }

    template <class Concerned>
    void cold(ProcessField field, Concerned concerned) {
        const MakingLimit limit = limit_on(field, facts_, rules_);
        if (!limit.rule) return;
        const double most = limit.rule->most;
        bool there = false;
        for (auto& step : sheet_.steps) {
            if (!concerned(step)) continue;
            there = true;
            if (step.temperature_c) step.temperature_c = std::min(*step.temperature_c, most);
            if (step.stop_c) step.stop_c = std::min(*step.stop_c, most);
        }
        if (there) override_said(field, limit);
    }

    Sheet& sheet_;
    std::string_view rules_;
    Facts facts_;
};

}  // namespace

void keep_to_rules(Sheet& sheet, const Knowledge& knowledge, std::string_view rules) { Keeper(sheet, knowledge, rules).keep(); }

}  // namespace standin
