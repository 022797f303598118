#include <algorithm>
#include <cmath>

#include "bench/order.hpp"
#include "bench/steps.hpp"
#include "models/composition.hpp"

namespace standin {
namespace {

// Everything that loses something between the shop and the scale.
SheetStep trimming(const Sheet& sheet) {
    SheetStep step;
    step.id = "weigh";
    step.what = "trim and weigh out";
    step.how = "Cut away roots, stalks, husks and damaged parts, wash and dry the leaves, then weigh every line and tick it off.";
    step.why = "The weights are of what goes in, not of what was carried home.";
    for (const auto& bought : sheet.buy) {
        constexpr double least = 0.5;  // grams: less is no trimming
        if (bought.bought_g - bought.need_g < least) continue;
        const auto line = std::find_if(sheet.formula.lines.begin(), sheet.formula.lines.end(),
                                       [&](const Line& l) { return l.ingredient == bought.ingredient; });
        add_part(step, static_cast<std::size_t>(line - sheet.formula.lines.begin()), bought.bought_g, bought.need_g);
    }
    return step;
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
    step.parts.push_back({line, in, out});
    step.grams_in += in;
    step.grams_out += out;
}

std::vector<SheetStep> preparing_steps(const Sheet& sheet, const Knowledge& knowledge) {
    std::vector<SheetStep> steps{trimming(sheet)};
    const auto chains = chains_of(sheet.formula, knowledge);
    for (const auto& job : jobs_of(chains, knowledge)) steps.push_back(step_of(job, chains, knowledge));
    return steps;
}

}  // namespace standin
