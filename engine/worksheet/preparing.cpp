#include <algorithm>
#include <cmath>

#include "core/words.hpp"
#include "models/composition.hpp"
#include "worksheet/order.hpp"
#include "worksheet/steps.hpp"

namespace standin {
namespace {

// Pods that burn the skin.
std::string gloves(const Sheet& sheet) {
    const auto& all = sheet.prediction.cautions;
    const auto pods = std::find_if(all.begin(), all.end(), [](const CautionText& c) { return c.id == "hot-pod"; });
    return pods == all.end() ? "" : " Gloves on for the " + listed(pods->reason.foods) + ".";
}

// Everything that loses something between the shop and the scale.
SheetStep trimming(const Sheet& sheet, const Knowledge& knowledge) {
    SheetStep step;
    step.id = "weigh";
    step.what = "trim and weigh out";
    step.how = "Cut away what is damaged, wash and dry the leaves; weigh every line and tick it off." + gloves(sheet);
    step.why = "The weights are of what goes in.";
    step.source = "common-practice";
    for (const auto& bought : sheet.buy) {
        constexpr double least = 0.001;  // share; a sheet is rounded more coarsely
        if (bought.bought_g - bought.need_g < least * bought.need_g) continue;
        const auto line = std::find_if(sheet.formula.lines.begin(), sheet.formula.lines.end(),
                                       [&](const Line& l) { return l.ingredient == bought.ingredient; });
        add_part(step, static_cast<std::size_t>(line - sheet.formula.lines.begin()), bought.bought_g, bought.need_g);
        const auto* preparation = knowledge.preparation(ready_by(*knowledge.ingredient(bought.ingredient)));
        step.parts.back().verb = preparation && !preparation->verb.empty() ? preparation->verb : "trim";
    }
    return step;
}

// What the formula says is to be seen to, a step each: "chard: strip the ribs".
std::vector<SheetStep> seeing_to_stand_ins(const Sheet& sheet) {
    std::vector<SheetStep> steps;
    for (const auto& task : sheet.formula.to_do) {
        if (task.rfind("plate: ", 0) == 0) continue;  // comes last
        const auto colon = task.find(": ");
        const std::string food = colon == std::string::npos ? "" : task.substr(0, colon),
                          how = colon == std::string::npos ? task : task.substr(colon + 2);
        SheetStep step;
        step.id = "stand-in";
        step.what = food.empty() ? "see to what is new" : "see to the " + food;
        step.how = how.empty() || how.back() == '.' ? how : how + ".";
        step.why = "It is new in this formula: handle it by its own ways.";
        step.source = "common-practice";
        steps.push_back(std::move(step));
    }
    return steps;
}

SheetStep step_of(const Job& job, const std::vector<Chain>& chains, const Knowledge& knowledge) {
    const Preparation& preparation = *knowledge.preparation(job.step.preparation);
    SheetStep step;
    step.id = preparation.id;
    step.what = preparation.verb.empty() ? preparation.names.front() : preparation.verb;
    step.how = preparation.instruction;
    step.why = preparation.why;
    step.minutes = job.step.minutes ? job.step.minutes : preparation.minutes;
    step.said = job.step.minutes.has_value() || !preparation.minutes;
    step.temperature_c = preparation.temperature_c;
    for (const auto& [chain, n] : job.of) add_part(step, chains[chain].line, chains[chain].grams[n], chains[chain].grams[n + 1]);
    return step;
}

}  // namespace

void add_part(SheetStep& step, std::size_t line, double in, double out) {
    step.parts.push_back({line, in, out, {}});
    step.grams_in += in;
    step.grams_out += out;
}

std::vector<SheetStep> preparing_steps(const Sheet& sheet, const Knowledge& knowledge) {
    std::vector<SheetStep> steps = seeing_to_stand_ins(sheet);
    steps.push_back(trimming(sheet, knowledge));
    const auto chains = chains_of(sheet.formula, knowledge);
    for (const auto& job : jobs_of(chains, knowledge)) steps.push_back(step_of(job, chains, knowledge));
    return steps;
}

}  // namespace standin
