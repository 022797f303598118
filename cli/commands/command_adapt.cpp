#include <algorithm>

#include "progress.hpp"
#include "render/html/html_pages.hpp"
#include "render/json/json.hpp"
#include "render/text/text.hpp"
#include "session.hpp"

namespace standin::cli {
namespace {

Result<AdaptRequest> request_of(const Call& call, const Formula& formula, const Engine& engine) {
    AdaptRequest request;
    request.wants = call.wants;
    request.without = call.without;
    request.keep = call.keep;
    request.meat = call.meat;
    request.as_much = call.as_much;
    request.changes = call.changes;
    request.top = call.top.value_or(request.top);
    if (!call.have) return request;
    const auto text = read_text(*call.have);
    if (!text) return Failure(text.error());
    auto have = engine.read_inventory(*text, shown_name(*call.have), &formula);
    if (!have) return Failure(have.error());
    request.have = std::move(*have);
    return request;
}

bool meets_all(const Variant& variant) {
    return std::all_of(variant.wants.begin(), variant.wants.end(), [](const WantResult& w) { return w.met; });
}

}  // namespace

int run_adapt(const Call& call) {
    if (call.have == "-" && call.operands.front() == "-")
        return complain({Trouble::usage, "formula and inventory cannot both come from standard input", {}, {}}, call.colour);
    Progress progress(call.quiet);
    auto options = engine_options(call);
    options.progress = progress.report();
    auto engine = Engine::open(std::move(options));
    if (!engine) return complain(engine.error(), call.colour);
    const auto formula = load_formula(*engine, call.operands.front());
    if (!formula) return complain(formula.error(), call.colour);
    const auto request = request_of(call, *formula, *engine);
    if (!request) return complain(request.error(), call.colour);
    const auto answer = engine->adapt(*formula, *request);
    if (!answer) return complain(answer.error(), call.colour);
    const bool met = answer->conflict.empty() && std::any_of(answer->variants.begin(), answer->variants.end(), meets_all);
    return deliver(call, call.html.empty() ? "" : adapt_html(*answer, *engine),
                   call.json ? adapt_json(*answer, *engine) : adapt_text(*answer, *engine, look_for_output(call.colour)),
                   met ? done : unmet);
}

}  // namespace standin::cli
