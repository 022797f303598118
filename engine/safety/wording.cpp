#include "safety/wording.hpp"

#include <cmath>

#include "standin/number_text.hpp"

namespace standin {

CautionText caution_text(Reason reason, std::string source, std::vector<std::string> foods, std::string degree) {
    const std::string text = in_full(reason);
    return {reason.about, text, std::move(source), std::move(foods), std::move(degree), std::move(reason), {}};
}

CautionText caution_text(Reason reason, const Reason& brief, std::string source, std::vector<std::string> foods, std::string degree) {
    CautionText text = caution_text(std::move(reason), std::move(source), std::move(foods), std::move(degree));
    text.brief = brief.note;
    return text;
}

bool has_words(std::string_view text, std::string_view words) {
    if (words.empty()) return false;
    for (auto at = text.find(words); at != std::string_view::npos; at = text.find(words, at + 1)) {
        const auto end = at + words.size();
        if ((at == 0 || text[at - 1] == ' ') && (end == text.size() || text[end] == ' ')) return true;
    }
    return false;
}

std::string shown(double value) { return trimmed_text(value, 2); }

std::vector<const RuleSet*> sets_of(const Knowledge& knowledge, std::string_view rules) {
    std::vector<const RuleSet*> sets;
    if (const RuleSet* general = knowledge.rules("general")) sets.push_back(general);
    if (const RuleSet* chosen = knowledge.rules(rules); chosen && rules != "general") sets.push_back(chosen);
    return sets;
}

std::vector<std::string> names_of(const std::vector<std::string>& ids, const Knowledge& knowledge) {
    std::vector<std::string> names;
    for (const auto& id : ids) {
        const Ingredient* ingredient = knowledge.ingredient(id);
        names.push_back(ingredient ? ingredient->names.front() : id);
    }
    return names;
}

std::string allergen_name(const std::string& id, const Knowledge& knowledge) {
    const Allergen* allergen = knowledge.allergen(id);
    return allergen ? allergen->name : id;
}

std::vector<Present> present(const Prediction& prediction, const Knowledge& knowledge) {
    std::vector<Present> lines;
    for (const auto& line : prediction.lines)
        if (const Ingredient* ingredient = knowledge.ingredient(line.ingredient); ingredient && line.weighed_g > 0)
            lines.push_back({&line, ingredient});
    return lines;
}

std::vector<Present> present_beside(const Prediction& prediction, const Knowledge& knowledge) {
    std::vector<Present> lines;
    for (const auto& line : prediction.beside)
        if (const Ingredient* ingredient = knowledge.ingredient(line.ingredient)) lines.push_back({&line, ingredient});
    return lines;
}

}  // namespace standin
