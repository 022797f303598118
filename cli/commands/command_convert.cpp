#include "render/json/json.hpp"
#include "render/text/text.hpp"
#include "session.hpp"

namespace standin::cli {
namespace {

// What was understood, line by line. It is the answer even where something is asked back; the exit code says so.
int report(const Call& call, const Engine& engine) {
    const auto text = read_text(call.operands.front());
    if (!text) return complain(text.error(), call.colour);
    if (engine.is_stock(*text, shown_name(call.operands.front()))) {
        const auto stock = engine.read_inventory(*text, shown_name(call.operands.front()));
        if (!stock) return complain(stock.error(), call.colour);
        return deliver(call.json ? stock_json(*stock) : stock_text(*stock, look_for_output(call.colour)));
    }
    const auto reading = engine.read_closely(*text, shown_name(call.operands.front()));
    if (!reading) return complain(reading.error(), call.colour);
    return deliver(call.json ? reading_json(*reading) : reading_text(*reading, look_for_output(call.colour)),
                   reading->formula ? done : bad_data);
}

std::string written(const Call& call, const Engine& engine, const Formula& formula) {
    if (call.to == "text") return engine.formula_text(formula);
    return call.to == "jsonld" ? engine.formula_jsonld(formula) : engine.formula_json(formula);
}

}  // namespace

int run_convert(const Call& call) {
    if (call.json && !call.to.empty() && call.to != "json")
        return complain({Trouble::usage, "--json and --to " + call.to + " contradict each other", {}, {}}, call.colour);
    const auto engine = open_engine(call);
    if (!engine) return complain(engine.error(), call.colour);
    if (call.to.empty()) return report(call, *engine);
    const auto formula = load_formula(*engine, call.operands.front(), call);
    if (!formula) return complain(formula.error(), call.colour);
    std::string text = written(call, *engine, *formula);
    if (text.empty() || text.back() != '\n') text += '\n';
    return deliver(text);
}

}  // namespace standin::cli
