#include "adapt/variants/loose_cautions.hpp"

#include "standin/narrate.hpp"

namespace standin {

void leave_out_how_to_bind(std::vector<CautionText>& cautions) {
    for (auto& caution : cautions) {
        if (caution.id != "acid-soft" && caution.id != "acid-crumbly") continue;
        const auto end = caution.reason.note.find(". ");
        if (end == std::string::npos) continue;
        caution.reason.note.resize(end + 1);
        caution.text = in_full(caution.reason);
        if (!caution.brief.empty()) caution.brief = in_brief(caution.reason);
    }
}

}  // namespace standin
