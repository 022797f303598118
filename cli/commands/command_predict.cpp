#include "prices.hpp"
#include "render/html/html_pages.hpp"
#include "render/json/json.hpp"
#include "render/text/text.hpp"
#include "render/units.hpp"
#include "session.hpp"

namespace standin::cli {

int run_predict(const Call& call) {
    auto engine = open_engine(call);
    if (!engine) return complain(engine.error(), call.colour);
    const Look look = look_for_output(call.colour);
    const bool many = call.operands.size() > 1;
    if (many && !call.html.empty())
        return complain({Trouble::usage, "--html takes one formula at a time", {}, {"several formulas on one page: standin compare"}},
                        call.colour);
    const auto prices = price_list(call, *engine);
    if (!prices) return complain(prices.error(), call.colour);
    std::string pages, html;
    for (const auto& path : call.operands) {
        const auto formula = load_formula(*engine, path, call);
        if (!formula) return complain(formula.error(), call.colour);
        if (call.why || call.why_colour) {
            const auto answer = call.why ? engine->why(*formula, *call.why) : engine->why(*formula, *call.why_colour);
            if (!answer) return complain(answer.error(), call.colour);
            pages += call.json ? why_json(*answer)
                               : (pages.empty() ? "" : "\n\n") + why_text(*answer, call.units.value_or(units_of(*formula)), look);
            continue;
        }
        const auto prediction = engine->predict(*formula);
        if (!prediction) return complain(prediction.error(), call.colour);
        const auto beside = extras_of(*engine, *formula, *prices, call.full || call.json || !call.html.empty());
        if (!beside) return complain(beside.error(), call.colour);
        const Detail detail{call.units.value_or(units_of(*formula)), call.full, *beside};
        if (!call.html.empty()) html = predict_html(*prediction, detail);
        if (call.json) pages += predict_json(*prediction, many ? Form::line : Form::document, *beside);
        else pages += (pages.empty() ? "" : "\n\n") + predict_text(*prediction, detail, look);
    }
    return deliver(call, {pages, html, {}});
}

}  // namespace standin::cli
