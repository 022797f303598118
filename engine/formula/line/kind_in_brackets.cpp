#include "formula/line/kind_in_brackets.hpp"

namespace standin {

void take_kind_in_brackets(NameRead& name, LineNotes& notes, const Knowledge& knowledge) {
    std::string own;
    for (const auto& word : name.words) own += " " + word;
    for (auto passed = notes.passed.begin(); passed != notes.passed.end(); ++passed) {
        const auto* kind = known_ingredient(*passed + own, knowledge);
        if (!kind || kind->family != name.ingredient->family || kind->tissue != name.ingredient->tissue) continue;
        name.ingredient = kind;
        name.generic.clear();
        notes.passed.erase(passed);
        return;
    }
}

std::string other_food_in_brackets(const NameRead& name, const LineNotes& notes, std::string_view written, const Knowledge& knowledge) {
    for (const auto& passed : notes.passed)
        if (const auto* other = knowledge.ingredient_named(passed);
            other && other->family != name.ingredient->family && written.find("(" + passed + ")") != std::string_view::npos)
            return other->names.front();
    return {};
}

}  // namespace standin
