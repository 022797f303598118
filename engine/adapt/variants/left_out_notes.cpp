#include "adapt/variants/left_out_notes.hpp"

#include "safety/left_out_words.hpp"

namespace standin {

void leave_out_of_notes(std::vector<Edit>& edits, const Formula& formula, const AdaptRequest& request, const Stock& stock,
                        const Knowledge& knowledge) {
    if (request.without.empty()) return;
    const auto may_be_named = [&](const Ingredient& food) { return may_name(stock, formula, food); };
    for (auto& edit : edits) {
        edit.reason.note = without_what_is_left_out(edit.reason.note, may_be_named, knowledge);
        std::erase_if(edit.reason.asks, [&](const std::string& ask) { return names_what_is_left_out(ask, may_be_named, knowledge); });
        edit.why = in_brief(edit.reason);
    }
}

}  // namespace standin
