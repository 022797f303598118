#include "bench/sheet.hpp"

#include <algorithm>
#include <cmath>

#include "bench/buy.hpp"
#include "bench/makes.hpp"
#include "bench/parts.hpp"
#include "bench/scale.hpp"
#include "bench/steps.hpp"
#include "bench/weights.hpp"
#include "safety/core_temperature.hpp"
#include "safety/wording.hpp"

namespace standin {
namespace {

// Salt first where it helps; says so, and says what an order that the formula does name costs.
void settle_order(Sheet& sheet, const Knowledge& knowledge, const Foretell& foretell) {
    Process& process = sheet.formula.process;
    if (process.order == Order::salt_first) return;
    Formula salted = sheet.formula;
    salted.process.order = Order::salt_first;
    const double as_is = foretell.bind(sheet.formula), better = foretell.bind(salted);
    if (better - as_is < knowledge.parameter("bench.mix.gain").mid * as_is) return;
    const auto tenths = [](double bind) { return shown(std::round(bind * 10) / 10); };
    const std::string gain = "bind " + tenths(as_is) + " -> " + tenths(better) + " of 100";
    if (process.order == Order::acid_first) {
        sheet.notes.push_back("The formula puts the acid first. Salt first and acid last would bind better: " + gain + ".");
        return;
    }
    process.order = Order::salt_first;
    sheet.notes.push_back(
        "The formula does not say what goes in first; the sheet salts first and adds acid last, which binds better: " + gain + ".");
}

void settle_core(Sheet& sheet, const Knowledge& knowledge, std::string_view rules) {
    const auto demanded = demanded_core(sheet.prediction, knowledge, rules);
    sheet.core_c = std::max(demanded.core_c, sheet.formula.process.core_c.value_or(0));
    if (demanded.rule) sheet.core_rule = demanded.rule->text + " [" + demanded.rule->source + "]";
    if (sheet.formula.process.core_c && *sheet.formula.process.core_c < demanded.core_c)
        sheet.notes.push_back("The formula stops at a core of " + shown_temperature(*sheet.formula.process.core_c) + "; the sheet says " +
                              shown_temperature(sheet.core_c) + ", as the rule does.");
}

void warn_of_the_scale(Sheet& sheet) {
    std::vector<std::string> fine;
    for (const auto& w : sheet.weights)
        if (w.fine) fine.push_back(sheet.prediction.lines[w.line].name);
    if (!fine.empty())
        sheet.notes.push_back("A scale that shows whole grams is too coarse for " + listed(fine) +
                              ": use one that shows 0.1 g, or weigh a batch of the dry ones ten times as large and take a tenth.");
}

}  // namespace

Result<Sheet> sheet_of(const Formula& formula, const SheetRequest& request, const Knowledge& knowledge, std::string_view rules,
                       const Foretell& foretell) {
    const auto scaling = scaling_of(formula, request, knowledge);
    if (!scaling) return Failure(scaling.error());
    double piece = 0;
    if (!request.piece.empty()) {
        const auto asked = weight_asked(request.piece, "--piece");
        if (!asked) return Failure(asked.error());
        piece = *asked;
    }
    Sheet sheet;
    sheet.scaled = scaling->says;
    sheet.factor = scaling->factor;
    sheet.formula = scaled(formula, scaling->factor);
    settle_order(sheet, knowledge, foretell);
    sheet.prediction = foretell.prediction(sheet.formula);
    settle_core(sheet, knowledge, rules);
    sheet.weights = weights_of(sheet.formula, knowledge);
    sheet.buy = purchases_of(sheet.formula, knowledge);
    sheet.makes = makes_of(sheet.formula, sheet.prediction, piece, knowledge);
    if (sheet.makes.pieces < 1)
        return failure(Trouble::usage, "the batch is too small: one " + sheet.makes.shape + " of " +
                                           shown(std::round(sheet.makes.piece_g)) + " g and a test patty do not come out of it");
    sheet.steps = preparing_steps(sheet, knowledge);
    std::erase_if(sheet.steps, [](const SheetStep& s) { return s.parts.empty(); });
    for (auto& step : making_steps(sheet, knowledge)) sheet.steps.push_back(std::move(step));
    warn_of_the_scale(sheet);
    return sheet;
}

}  // namespace standin
