#include <algorithm>
#include <filesystem>

#include "render/html/html_pages.hpp"
#include "render/json/json.hpp"
#include "render/text/text.hpp"
#include "render/units.hpp"
#include "session.hpp"

namespace standin::cli {
namespace {

std::string lower(std::string text) {
    for (auto& c : text)
        if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
    return text;
}

// "Hedgerow green: 3 kg", "hedgerow.txt: 3 kg", "2: 3 kg"; a title may begin so.
Result<PlanMake> make_of(const std::string& text, const Call& call, const std::vector<Formula>& formulas) {
    const auto at = text.rfind(':');
    if (at == std::string::npos)
        return failure(Trouble::usage, "--make: expected a title or file, a colon and a weight, such as \"" + formulas.front().title +
                                           ": 3 kg\", not `" + text + "`");
    std::string name = text.substr(0, at);
    const std::string amount = text.substr(std::min(text.find_first_not_of(' ', at + 1), text.size()));
    while (!name.empty() && name.back() == ' ') name.pop_back();
    std::vector<std::size_t> found;
    for (std::size_t f = 0; f < formulas.size(); ++f) {
        const std::string title = lower(formulas[f].title), wanted = lower(name);
        if (call.operands[f] == name || title == wanted || std::to_string(f + 1) == name) return PlanMake{f, amount};
        if (!wanted.empty() && title.compare(0, wanted.size(), wanted) == 0) found.push_back(f);
    }
    if (found.size() == 1) return PlanMake{found.front(), amount};
    std::vector<std::string> titles;
    for (const auto& formula : formulas) titles.push_back(formula.title);
    return failure(Trouble::usage, "--make: no one formula is called \"" + name + "\"", {}, titles);
}

// A formula without a title goes by its file.
std::string called(const std::string& path, std::size_t number) {
    return path == "-" ? "sausage " + std::to_string(number) : std::filesystem::path(path).filename().string();
}

Result<PlanRequest> plan_request(const Call& call, Engine& engine) {
    if (!call.have) return failure(Trouble::usage, "plan needs --have FILE: the list of what there is");
    PlanRequest request;
    request.without = call.without;
    Formula all;  // a word of the list is first looked for among the lines of every formula
    for (const auto& path : call.operands) {
        auto formula = load_formula(engine, path, call);
        if (!formula) return Failure(formula.error());
        if (formula->title.empty()) formula->title = called(path, request.formulas.size() + 1);
        all.lines.insert(all.lines.end(), formula->lines.begin(), formula->lines.end());
        request.formulas.push_back(std::move(*formula));
    }
    auto have = list_on_hand(call, engine, all);
    if (!have) return Failure(have.error());
    request.have = std::move(**have);
    for (const auto& asked : call.make) {
        const auto make = make_of(asked, call, request.formulas);
        if (!make) return Failure(make.error());
        request.make.push_back(*make);
    }
    return request;
}

}  // namespace

int run_plan(const Call& call) {
    const auto from_input = std::count(call.operands.begin(), call.operands.end(), "-") + (call.have == "-" ? 1 : 0);
    if (from_input > 1) return complain({Trouble::usage, "only one file can come from standard input", {}, {}}, call.colour);
    auto engine = open_engine(call);
    if (!engine) return complain(engine.error(), call.colour);
    const auto request = plan_request(call, *engine);
    if (!request) return complain(request.error(), call.colour);
    const auto answer = plan(*engine, *request);
    if (!answer) return complain(answer.error(), call.colour);
    const Detail detail{call.units.value_or(units_of(request->formulas.front())), call.full};
    const bool any = std::any_of(answer->sausages.begin(), answer->sausages.end(), [](const PlannedSausage& s) { return s.made_g > 0; });
    const bool all_asked = std::all_of(answer->sausages.begin(), answer->sausages.end(), [](const PlannedSausage& s) {
        constexpr double a_step = 51;  // g
        return !s.asked_g || s.made_g + a_step >= *s.asked_g;
    });
    return deliver(call,
                   {call.json ? plan_json(*answer, *engine) : plan_text(*answer, *engine, detail, look_for_output(call.colour)),
                    call.html.empty() ? "" : plan_html(*answer, *engine, detail),
                    {}},
                   any && all_asked ? done : unmet);
}

}  // namespace standin::cli
