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
        cold(ProcessField::rest_at, "The formula rests it at ", [](const SheetStep& s) { return s.id == "rest"; });
        cold(ProcessField::mixed_at, "The formula mixes it up to ",
             [](const SheetStep& s) { return s.id == "grind" || s.id == "paste" || s.id.rfind("mix", 0) == 0; });
    }

private:
    bool frozen() const {
        const auto& at = sheet_.formula.process.rest_at_c;
        return at && *at <= facts_.knowledge.parameter("bench.rest.frozen").mid;
    }

    void override_said(const std::string& formula_does, ProcessField field, const MakingLimit& limit, const std::string& sheet_does) {
        const auto said = said_of(field, sheet_.formula.process, facts_.knowledge);
        if (!said || *said <= limit.rule->most) return;
        sheet_.notes.push_back(formula_does + shown_field(field, *said) + "; the sheet " + sheet_does + " instead. " + words(limit));
    }

    std::string words(const MakingLimit& limit) const {
        const Holding holding{limit.foods, names_of(limit.foods, facts_.knowledge), {}, limit.rule->most, limit.rule->most};
        return in_full(reason_of(limit.rule->id, limit.rule->text, holding));
    }

    void rest() {
        constexpr double minutes_an_hour = 60;
        const MakingLimit limit = limit_on(ProcessField::rest, facts_, rules_);
        if (!limit.rule) return;
        const auto step = std::find_if(sheet_.steps.begin(), sheet_.steps.end(), [](const SheetStep& s) { return s.id == "rest"; });
        if (step == sheet_.steps.end() || !step->minutes || *step->minutes <= minutes_an_hour * limit.rule->most) return;
        const bool none = limit.rule->most <= 0;
        if (sheet_.formula.process.rest_h)
            override_said("The formula rests it ", ProcessField::rest, limit,
                          none ? "has no rest" : "says " + shown_field(ProcessField::rest, limit.rule->most));
        else sheet_.notes.push_back((none ? "No rest. " : "") + words(limit));
        if (none) sheet_.steps.erase(step);
        else {
            if (sheet_.formula.process.rest_h)
                step->how = "The formula says " + shown_field(ProcessField::rest, *sheet_.formula.process.rest_h) +
                            "; raw it does not keep that long: cook it by then, or freeze it. " + step->how;
            step->minutes = minutes_an_hour * limit.rule->most;
        }
    }

    template <class Concerned>
    void cold(ProcessField field, const char* formula_does, Concerned concerned) {
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
        if (there) override_said(formula_does, field, limit, "says no warmer than " + shown_temperature(most));
    }

    Sheet& sheet_;
    std::string_view rules_;
    Facts facts_;
};

}  // namespace

void keep_to_rules(Sheet& sheet, const Knowledge& knowledge, std::string_view rules) { Keeper(sheet, knowledge, rules).keep(); }

}  // namespace standin
