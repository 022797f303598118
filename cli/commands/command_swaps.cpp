#include "prices.hpp"
#include "render/html/html_pages.hpp"
#include "render/json/json.hpp"
#include "render/text/text.hpp"
#include "render/units.hpp"
#include "saved_formula.hpp"
#include "session.hpp"

namespace standin::cli {

int run_swaps(const Call& call) {
    auto engine = open_engine(call);
    if (!engine) return complain(engine.error(), call.colour);
    const auto formula = load_formula(*engine, call.operands.front(), call);
    if (!formula) return complain(formula.error(), call.colour);
    const std::string& line = call.operands[1];
    constexpr std::size_t usual = 12;
    const auto prices = price_list(call, *engine);
    if (!prices) return complain(prices.error(), call.colour);
    auto have = list_on_hand(call, *engine, *formula);
    if (!have) return complain(have.error(), call.colour);
    const auto answer = engine->swaps(*formula, line, {call.top.value_or(usual), std::move(*have), call.without});
    if (!answer) return complain(answer.error(), call.colour);
    if (call.take && call.save.empty())
        return complain({Trouble::usage, "--take says which stand-in to save: it needs --save FILE", {}, {}}, call.colour);
    const std::size_t take = call.take.value_or(1), there = answer->stand_ins.size();
    if (!call.save.empty() && there > 0 && take > there)
        return complain(
            {Trouble::usage, "--take " + std::to_string(take) + ": there are only " + std::to_string(there) + " stand-ins", {}, {}},
            call.colour);
    if (!call.save.empty() && there == 0)
        return complain({Trouble::unmet, "nothing known can stand in for " + answer->name + ": nothing was saved", {}, {}}, call.colour);
    const auto beside = extras_of(*engine, *formula, *prices, false);
    if (!beside) return complain(beside.error(), call.colour);
    const Detail detail{call.units.value_or(units_of(*formula)), call.full, *beside};
    Answer out;
    if (!call.save.empty()) out.saved = saved_formula(answer->stand_ins[take - 1].formula, detail.units, call.save, *engine);
    if (!call.html.empty()) out.html = swaps_html(*answer, formula->title, *engine, detail);
    out.page = call.json ? swaps_json(*answer, *engine, *beside)
                         : swaps_text(*answer, formula->title, *engine, detail, look_for_output(call.colour));
    return deliver(call, out, answer->stand_ins.empty() ? unmet : done);
}

}  // namespace standin::cli
