#include <algorithm>

#include "pages/html_pages.hpp"
#include "pages/json.hpp"
#include "pages/text.hpp"
#include "session.hpp"

namespace standin::cli {

int run_compare(const Call& call) {
    if (std::count(call.operands.begin(), call.operands.end(), "-") > 1)
        return complain({Trouble::usage, "only one formula can come from standard input", {}, {}}, call.colour);
    auto engine = Engine::open(engine_options(call));
    if (!engine) return complain(engine.error(), call.colour);
    std::vector<Prediction> predictions;
    for (const auto& path : call.operands) {
        const auto formula = load_formula(*engine, path);
        if (!formula) return complain(formula.error(), call.colour);
        auto prediction = engine->predict(*formula);
        if (!prediction) return complain(prediction.error(), call.colour);
        predictions.push_back(std::move(*prediction));
    }
    return deliver(call, call.html.empty() ? "" : compare_html(predictions),
                   call.json ? compare_json(predictions) : compare_text(predictions, look_for_output(call.colour)));
}

}  // namespace standin::cli
