#include "render/html/html_pages.hpp"
#include "render/json/json.hpp"
#include "render/text/text.hpp"
#include "session.hpp"

namespace standin::cli {

int run_swaps(const Call& call) {
    auto engine = Engine::open(engine_options(call));
    if (!engine) return complain(engine.error(), call.colour);
    const auto formula = load_formula(*engine, call.operands.front());
    if (!formula) return complain(formula.error(), call.colour);
    const std::string& line = call.operands[1];
    constexpr std::size_t usual = 12;
    const auto answer = engine->swaps(*formula, line, call.top.value_or(usual));
    if (!answer) return complain(answer.error(), call.colour);
    return deliver(call, call.html.empty() ? "" : swaps_html(*answer, formula->title, *engine),
                   call.json ? swaps_json(*answer) : swaps_text(*answer, formula->title, *engine, look_for_output(call.colour)),
                   answer->stand_ins.empty() ? unmet : done);
}

}  // namespace standin::cli
