#include <algorithm>
#include <tuple>

#include "prices.hpp"
#include "progress.hpp"
#include "render/html/html_pages.hpp"
#include "render/json/json.hpp"
#include "render/text/text.hpp"
#include "render/units.hpp"
#include "saved_formula.hpp"
#include "session.hpp"

namespace standin::cli {
namespace {

Result<AdaptRequest> adapt_request(const Call& call, const Formula& formula, Engine& engine) {
    AdaptRequest request;
    request.wants = call.wants;
    request.without = call.without;
    request.keep = call.keep;
    request.meat = call.meat;
    request.as_much = call.as_much;
    request.changes = call.changes;
    request.sure = static_cast<double>(call.sure) / 100;
    request.top = call.top.value_or(request.top);
    request.use = call.use;
    for (const auto& [texts, into, option] :
         {std::tuple(&call.most, &request.most, "--most"), std::tuple(&call.least, &request.least, "--least")})
        for (const auto& text : *texts) {
            const auto read = engine.read_inventory(text, option, &formula);
            if (!read) return Failure(read.error());
            if (read->items.size() != 1 || !read->items.front().grams)
                return failure(Trouble::usage,
                               std::string(option) + ": expected one food and its weight, such as spinach 500 g, not `" + text + "`");
            into->push_back(read->items.front());
        }
    auto have = list_on_hand(call, engine, formula);
    if (!have) return Failure(have.error());
    request.have = std::move(*have);
    return request;
}

bool meets_all(const Variant& variant) {
    return std::all_of(variant.wants.begin(), variant.wants.end(), [](const WantResult& w) { return w.met; });
}

Result<Answer> answer_of(const Call& call, const AdaptAnswer& answer, const std::optional<Inventory>& have, const Detail& detail,
                         const Prices& prices, Engine& engine) {
    Answer out;
    const Look look = look_for_output(call.colour);
    if (call.sheet || !call.save.empty()) {
        const auto number = chosen_of(
            call, answer.variants.size(),
            {Trouble::unmet, "nothing found does what was asked: there is no variant to write out", {}, in_full(answer.conflict)});
        if (!number) return Failure(number.error());
        const Formula& variant = answer.variants[*number].formula;
        if (!call.save.empty()) out.saved = saved_formula(variant, detail.units, call.save, engine);
        if (call.sheet) {
            SheetRequest bench;
            bench.have = have;
            const auto sheet = engine.sheet(variant, bench);
            if (!sheet) return Failure(sheet.error());
            const auto beside = extras_of(engine, sheet->formula, prices, true, sheet->makes);
            if (!beside) return Failure(beside.error());
            const Detail of_sheet{detail.units, detail.full, *beside};
            if (!call.html.empty()) out.html = sheet_html(*sheet, of_sheet);
            out.page = call.json ? sheet_json(*sheet, *beside) : sheet_text(*sheet, of_sheet, look);
            return out;
        }
    }
    if (!call.html.empty()) out.html = adapt_html(answer, engine, detail);
    out.page = call.json ? adapt_json(answer, engine, detail.beside) : adapt_text(answer, engine, detail, look);
    return out;
}

}  // namespace

int run_adapt(const Call& call) {
    if (call.have == "-" && call.operands.front() == "-")
        return complain({Trouble::usage, "formula and inventory cannot both come from standard input", {}, {}}, call.colour);
    Progress progress(call.quiet);
    auto options = engine_options(call);
    options.progress = progress.report();
    auto engine = open_engine(call, std::move(options));
    if (!engine) return complain(engine.error(), call.colour);
    const auto formula = load_formula(*engine, call.operands.front(), call);
    if (!formula) return complain(formula.error(), call.colour);
    const auto request = adapt_request(call, *formula, *engine);
    if (!request) return complain(request.error(), call.colour);
    const auto prices = price_list(call, *engine);
    if (!prices) return complain(prices.error(), call.colour);
    const auto answer = engine->adapt(*formula, *request);
    if (!answer) return complain(answer.error(), call.colour);
    if (call.variant && call.save.empty() && !call.sheet)
        return complain({Trouble::usage, "--variant says which variant is meant: it needs --save FILE or --sheet", {}, {}}, call.colour);
    const bool met = answer->conflict.empty() && std::any_of(answer->variants.begin(), answer->variants.end(), meets_all);
    auto beside = extras_of(*engine, *formula, *prices, false);
    if (!beside) return complain(beside.error(), call.colour);
    if (request->have) beside->glut = engine->glut(*request->have);
    const Detail detail{call.units.value_or(units_of(*formula)), call.full, *beside};
    const auto out = answer_of(call, *answer, request->have, detail, *prices, *engine);
    return out ? deliver(call, *out, met ? done : unmet) : complain(out.error(), call.colour);
}

}  // namespace standin::cli
