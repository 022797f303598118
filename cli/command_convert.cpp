#include "session.hpp"

namespace standin::cli {

int run_convert(const Call& call) {
    if (call.json && call.to == "text")
        return complain({Trouble::usage, "--json and --to text contradict each other", {}, {}}, call.colour);
    const auto engine = Engine::open(engine_options(call));
    if (!engine) return complain(engine.error(), call.colour);
    const auto formula = load_formula(*engine, call.operands.front());
    if (!formula) return complain(formula.error(), call.colour);
    std::string text = call.to == "text" ? engine->formula_text(*formula) : engine->formula_json(*formula);
    if (text.empty() || text.back() != '\n') text += '\n';
    return deliver(text);
}

}  // namespace standin::cli
