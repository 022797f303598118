#include "prices.hpp"
#include "render/html/html_pages.hpp"
#include "render/json/json.hpp"
#include "render/text/text.hpp"
#include "render/units.hpp"
#include "session.hpp"

namespace standin::cli {

int run_sheet(const Call& call) {
    auto engine = open_engine(call);
    if (!engine) return complain(engine.error(), call.colour);
    const auto formula = load_formula(*engine, call.operands.front(), call);
    if (!formula) return complain(formula.error(), call.colour);
    const auto prices = price_list(call, *engine);
    if (!prices) return complain(prices.error(), call.colour);
    auto have = list_on_hand(call, *engine, *formula);
    if (!have) return complain(have.error(), call.colour);
    const auto sheet = engine->sheet(*formula, {call.meat, call.total, call.piece, call.only, call.casing, call.link, std::move(*have)});
    if (!sheet) return complain(sheet.error(), call.colour);
    const auto beside = extras_of(*engine, sheet->formula, *prices, true, sheet->makes);
    if (!beside) return complain(beside.error(), call.colour);
    const Detail detail{call.units.value_or(units_of(*formula)), call.full, *beside};
    return deliver(call, {call.json ? sheet_json(*sheet, *beside) : sheet_text(*sheet, detail, look_for_output(call.colour)),
                          call.html.empty() ? "" : sheet_html(*sheet, detail),
                          {}});
}

}  // namespace standin::cli
