#include <algorithm>

#include "render/json/json.hpp"
#include "render/text/text.hpp"
#include "session.hpp"

namespace standin::cli {
namespace {

bool is_missing(const FileCheck& file) {
    return std::any_of(file.errors.begin(), file.errors.end(), [](const Error& e) { return e.trouble == Trouble::not_found; });
}

int code_of(const CheckAnswer& answer) {
    int code = done;
    for (const auto& file : answer.files) {
        if (file.ok) continue;
        if (!is_missing(file)) return bad_data;
        code = no_file;
    }
    return code;
}

}  // namespace

int run_check(const Call& call) {
    auto engine = open_engine(call);
    if (!engine) return complain(engine.error(), call.colour);
    const auto answer = engine->check(call.operands);
    return deliver(call.json ? check_json(answer) : check_text(answer, call.verbose, look_for_output(call.colour)), code_of(answer));
}

}  // namespace standin::cli
