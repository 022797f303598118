#include "safety/wording.hpp"

#include "standin/number_text.hpp"

namespace standin {

bool has_words(std::string_view text, std::string_view words) {
    if (words.empty()) return false;
    for (auto at = text.find(words); at != std::string_view::npos; at = text.find(words, at + 1)) {
        const auto end = at + words.size();
        if ((at == 0 || text[at - 1] == ' ') && (end == text.size() || text[end] == ' ')) return true;
    }
    return false;
}

std::string shown(double value) { return trimmed_text(value, 2); }

std::vector<Present> present(const Prediction& prediction, const Knowledge& knowledge) {
    std::vector<Present> lines;
    for (const auto& line : prediction.lines)
        if (const Ingredient* ingredient = knowledge.ingredient(line.ingredient); ingredient && line.weighed_g > 0)
            lines.push_back({&line, ingredient});
    return lines;
}

}  // namespace standin
