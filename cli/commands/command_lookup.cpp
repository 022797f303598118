#include "render/json/json.hpp"
#include "render/text/text.hpp"
#include "session.hpp"

namespace standin::cli {

int run_lookup(const Call& call) {
    auto engine = open_engine(call);
    if (!engine) return complain(engine.error(), call.colour);
    std::string word;
    for (const auto& part : call.operands) word += (word.empty() ? "" : " ") + part;
    const auto answer = engine->lookup(word);
    if (call.json) return deliver(lookup_json(answer), answer.matches.empty() ? unmet : done);
    if (!answer.matches.empty())
        return deliver(lookup_text(answer, *engine, call.units.value_or(Units::metric), look_for_output(call.colour)));
    if (!answer.refused.empty()) return complain({Trouble::unmet, "`" + word + "`: " + answer.refused, {}, {}}, call.colour);
    Error error{Trouble::unmet, "nothing is known of `" + word + "`", {}, {}};
    if (!answer.question.empty()) error.message = "`" + word + "`: " + answer.question;
    for (const auto& name : answer.nearest) error.hints.push_back(answer.question.empty() ? "did you mean `" + name + "`?" : name);
    return complain(error, call.colour);
}

}  // namespace standin::cli
