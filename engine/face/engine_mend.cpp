#include <stdexcept>

#include "evaluate/checked_request.hpp"
#include "face/cooked_through.hpp"
#include "face/inside.hpp"
#include "face/kitchen_notes.hpp"
#include "mend/mend.hpp"

namespace standin {

namespace packed {
// Defined in the file that the packer writes at build time.
extern const char mending[];
extern const std::size_t mending_size;
}  // namespace packed

namespace {

const Mending& built_in() {
    static const Mending mending = [] {
        auto read = mending_from({packed::mending, packed::mending_size}, std::string(mending_file));
        if (!read) throw std::logic_error(read.error().message);  // the packer has read it
        return std::move(*read);
    }();
    return mending;
}

}  // namespace

Result<MendAnswer> mend(const Engine& engine, const Formula& formula, const MendRequest& request, const Setting& setting) {
    const auto asked = asked_of(engine, formula, setting);
    if (!asked) return Failure(asked.error());
    const Knowledge& knowledge = asked->evaluator->knowledge();
    const auto checked = cooked_through(formula, knowledge, asked->options.rules);
    if (!checked) return Failure(checked.error());
    if (auto wrong = as_error(faults_in(request, knowledge), Trouble::usage)) return Failure(std::move(*wrong));
    auto answer = mend_formula(*checked, request, built_in(), {*asked->evaluator, asked->options});
    if (!answer) return answer;
    const auto tell = [&](const std::vector<Reason>& notes) {
        answer->base.read_as.insert(answer->base.read_as.end(), notes.begin(), notes.end());
    };
    if (request.have) tell(request.have->notes);
    tell(kitchen_notes(asked->kitchen, {&formula}, *asked->evaluator));
    return answer;
}

}  // namespace standin
