#include <algorithm>
#include <cmath>

#include "models/composition.hpp"
#include "worksheet/order.hpp"
#include "worksheet/steps.hpp"

namespace standin {
namespace {

// Pods that burn the skin.
void tell_of_gloves(SheetStep& step, const Sheet& sheet) {
    for (const auto& caution : sheet.prediction.cautions)
        if (caution.id == "hot-pod") step.besides.push_back(make_reason(ReasonKind::gloves_for, {}, caution.reason.foods));
}

// Everything that loses something between the shop and the scale.
SheetStep trimming(const Sheet& sheet, const Knowledge& knowledge) {
    SheetStep step = plain_step("weigh", BenchTask::weigh);
    tell_of_gloves(step, sheet);
    for (const auto& bought : sheet.buy) {
        constexpr double least = 0.001;  // share; a sheet is rounded more coarsely
        if (bought.bought_g - bought.need_g < least * bought.need_g) continue;
        const auto line = std::find_if(sheet.formula.lines.begin(), sheet.formula.lines.end(),
                                       [&](const Line& l) { return l.ingredient == bought.ingredient; });
        if (line != sheet.formula.lines.end() && !line->ready.empty()) continue;  // trimmed long since
        add_part(step, static_cast<std::size_t>(line - sheet.formula.lines.begin()), bought.bought_g, bought.need_g);
        const auto* preparation = knowledge.preparation(ready_by(*knowledge.ingredient(bought.ingredient)));
        step.parts.back().verb = preparation && !preparation->verb.empty() ? preparation->verb : "trim";
    }
    return step;
}

// Of a beast of the sea it is the shell that comes off, not a skin.
bool is_shellfish(const Line& line, const Knowledge& knowledge) {
    const auto& meat = knowledge.ingredient(line.ingredient)->meat;
    return meat && meat->species == Species::crustacean;
}

SheetStep step_of(const Job& job, const std::vector<Chain>& chains, const Formula& formula, const Knowledge& knowledge) {
    const Preparation& preparation = *knowledge.preparation(job.step.preparation);
    SheetStep step;
    step.id = preparation.id;
    step.own = {preparation.verb.empty() ? preparation.names.front() : preparation.verb, preparation.instruction, preparation.why};
    step.minutes = job.step.minutes ? job.step.minutes : preparation.minutes;
    step.said = job.step.minutes.has_value() || !preparation.minutes;
    step.temperature_c = preparation.temperature_c;
    for (const auto& [chain, n] : job.of) add_part(step, chains[chain].line, chains[chain].grams[n], chains[chain].grams[n + 1]);
    const bool shells = step.id == "peeled" && std::all_of(step.parts.begin(), step.parts.end(), [&](const StepPart& part) {
                            return is_shellfish(formula.lines[part.line], knowledge);
                        });
    if (shells) {
        step.task = BenchTask::shell;
        step.own = {};
    }
    return step;
}

}  // namespace

void add_part(SheetStep& step, std::size_t line, double in, double out) {
    step.parts.push_back({line, in, out, {}});
    step.grams_in += in;
    step.grams_out += out;
}

std::vector<SheetStep> preparing_steps(const Sheet& sheet, const Knowledge& knowledge) {
    std::vector<SheetStep> steps{trimming(sheet, knowledge)};
    const auto chains = chains_of(sheet.formula, knowledge);
    for (const auto& job : jobs_of(chains, knowledge)) steps.push_back(step_of(job, chains, sheet.formula, knowledge));
    return steps;
}

}  // namespace standin
