#include "worksheet/freezing.hpp"

#include <algorithm>

namespace standin {

std::vector<FreezingNote> freezing_of(const Prediction& prediction, const Knowledge& knowledge) {
    constexpr std::string_view start = "cold.freeze.", always = "always";
    const auto in_batch = [&](std::string_view role) {
        return std::any_of(prediction.lines.begin(), prediction.lines.end(), [&](const PredictedLine& line) {
            return line.grams > 0 && !line.roles.empty() && word(line.roles.front()) == role;
        });
    };
    std::vector<FreezingNote> notes;
    for (const bool first : {true, false})
        for (const auto& p : knowledge.records().parameters) {
            if (p.id.rfind(start, 0) != 0) continue;
            const std::string_view rest = std::string_view(p.id).substr(start.size());
            const std::string_view when = rest.substr(0, rest.find('.'));
            const bool same = std::any_of(notes.begin(), notes.end(), [&](const FreezingNote& n) { return n.text == p.note; });
            if ((when == always) == first && !same && (first || in_batch(when))) notes.push_back({p.id, p.note, p.quantity.source});
        }
    return notes;
}

}  // namespace standin
