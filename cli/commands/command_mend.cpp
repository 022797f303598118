#include <algorithm>

#include "progress.hpp"
#include "render/html/html_pages.hpp"
#include "render/json/json.hpp"
#include "render/text/text.hpp"
#include "render/units.hpp"
#include "saved_formula.hpp"
#include "session.hpp"

namespace standin::cli {
namespace {

Result<MendRequest> mend_request(const Call& call, const Formula& formula, Engine& engine) {
    MendRequest request;
    request.tasted = call.tasted;
    request.measured = call.measured;
    request.made = call.made;
    request.without = call.without;
    request.top = call.top.value_or(request.top);
    request.sure = std::max(request.sure, static_cast<double>(call.sure) / 100);  // what goes in does not come out: never on a toss-up
    if (call.tasted.empty())
        return failure(Trouble::usage, "mend needs --tasted: what was said of the test patty, such as --tasted \"flat, too sour\"");
    auto have = list_on_hand(call, engine, formula);
    if (!have) return Failure(have.error());
    request.have = std::move(*have);
    return request;
}

Result<std::string> saved(const Call& call, const MendAnswer& answer, Units units, const Engine& engine) {
    const auto number =
        chosen_of(call, answer.ways.size(),
                  {Trouble::unmet, "nothing found mends this: there is no formula to write out", {}, in_full(answer.cannot)}, "way");
    if (!number) return Failure(number.error());
    return saved_formula(answer.ways[*number].formula, units, call.save, engine);
}

}  // namespace

int run_mend(const Call& call) {
    if (call.have == "-" && call.operands.front() == "-")
        return complain({Trouble::usage, "formula and inventory cannot both come from standard input", {}, {}}, call.colour);
    Progress progress(call.quiet);
    auto options = engine_options(call);
    options.progress = progress.report();
    auto engine = open_engine(call, std::move(options));
    if (!engine) return complain(engine.error(), call.colour);
    const auto formula = load_formula(*engine, call.operands.front(), call);
    if (!formula) return complain(formula.error(), call.colour);
    const auto request = mend_request(call, *formula, *engine);
    if (!request) return complain(request.error(), call.colour);
    const auto answer = mend(*engine, *formula, *request);
    if (!answer) return complain(answer.error(), call.colour);
    const Detail detail{call.units.value_or(units_of(*formula)), call.full};
    Answer out;
    if (!call.save.empty()) {
        auto text = saved(call, *answer, detail.units, *engine);
        if (!text) return complain(text.error(), call.colour);
        out.saved = std::move(*text);
    }
    if (!call.html.empty()) out.html = mend_html(*answer, *engine, detail);
    out.page = call.json ? mend_json(*answer, *engine) : mend_text(*answer, *engine, detail, look_for_output(call.colour));
    return deliver(call, out, answer->ways.empty() ? unmet : done);  // each way says itself how far it goes
}

}  // namespace standin::cli
