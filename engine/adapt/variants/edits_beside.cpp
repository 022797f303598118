#include "adapt/variants/edits_beside.hpp"

#include <utility>

#include "evaluate/predict.hpp"
#include "safety/core_temperature.hpp"
#include "safety/exclusions.hpp"

namespace standin {
namespace {

// An edit of the making: what to do, and why in a few words.
Edit told(Reason does, Reason why) {
    Edit edit;
    edit.kind = EditKind::process;
    edit.does = std::move(does);
    edit.with = to_do(edit.does);
    edit.reason = std::move(why);
    edit.why = in_brief(edit.reason);
    return edit;
}

}  // namespace

std::optional<Edit> cook_through(Formula& formula, const Prediction& base, const Context& context) {
    Process& process = formula.process;
    if (!process.core_c) return std::nullopt;
    const auto demanded = [&](const Prediction& p) { return demanded_core(p, context.knowledge(), context.options.rules); };
    const CoreTemperature needed = demanded(weights_only(formula, context.knowledge()));
    if (*process.core_c >= needed.core_c || demanded(base).core_c >= needed.core_c) return std::nullopt;
    process.core_c = needed.core_c;
    Reason why;
    why.kind = ReasonKind::cook_through;
    return told(make_reason(ReasonKind::cook_through, {{"core", {}, needed.core_c, "C"}, {"kept for", {}, needed.hold_s, "s"}}),
                std::move(why));
}

bool cook_as_needed(Formula& formula, const Context& context) {
    const auto needed = core_beyond_the_written(formula, context.knowledge(), context.options.rules);
    return std::exchange(formula.process.core_needed_c, needed) != needed;
}

Edit without_beside(const Formula& formula, const std::string& written, const std::string& word, const Stock& stock) {
    Reason does = make_reason(ReasonKind::without_casing, {}, {written});
    for (const auto& beside : formula.beside)
        if (beside.written == written && !is_casing(beside)) does.role = "food";
    if (does.role.empty() && !stock.casings().empty()) {
        does.role = "another";
        does.foods.push_back(stock.casings().front().written);
    }
    Reason why = does;
    why.about = word;
    return told(does, std::move(why));
}

std::vector<Edit> without_all_beside(const Formula& formula, const Stock& stock) {
    std::vector<Edit> edits;
    for (const auto& word : stock.excluded())
        for (const auto& written : word.casings) edits.push_back(without_beside(formula, written, word.word, stock));
    return edits;
}

}  // namespace standin
