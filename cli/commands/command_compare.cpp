#include <algorithm>

#include "prices.hpp"
#include "render/html/html_pages.hpp"
#include "render/json/json.hpp"
#include "render/text/text.hpp"
#include "render/units.hpp"
#include "session.hpp"

namespace standin::cli {

int run_compare(const Call& call) {
    if (std::count(call.operands.begin(), call.operands.end(), "-") > 1)
        return complain({Trouble::usage, "only one formula can come from standard input", {}, {}}, call.colour);
    auto engine = open_engine(call);
    if (!engine) return complain(engine.error(), call.colour);
    std::vector<Formula> formulas;
    for (const auto& path : call.operands) {
        auto formula = load_formula(*engine, path, call);
        if (!formula) return complain(formula.error(), call.colour);
        formulas.push_back(std::move(*formula));
    }
    const auto prices = price_list(call, *engine);
    if (!prices) return complain(prices.error(), call.colour);
    const auto answer = engine->compare(formulas);
    if (!answer) return complain(answer.error(), call.colour);
    Detail detail{call.units.value_or(units_of(formulas.front())), call.full};
    for (const auto& formula : formulas) {
        if (!*prices) break;
        auto cost = engine->cost(formula, **prices);
        if (!cost) return complain(cost.error(), call.colour);
        detail.beside.costs.push_back(std::move(*cost));
    }
    return deliver(call, {call.json ? compare_json(*answer) : compare_text(*answer, detail, look_for_output(call.colour)),
                          call.html.empty() ? "" : compare_html(answer->formulas, detail),
                          {}});
}

}  // namespace standin::cli
