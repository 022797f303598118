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
    const auto sheet = engine->sheet(*formula, {call.meat, call.total, call.piece, call.only, call.casing, call.link});
    if (!sheet) return complain(sheet.error(), call.colour);
    const Units units = call.units.value_or(units_of(*formula));
    return deliver(call, {call.json ? sheet_json(*sheet) : sheet_text(*sheet, units, look_for_output(call.colour)),
                          call.html.empty() ? "" : sheet_html(*sheet, units),
                          {}});
}

}  // namespace standin::cli
