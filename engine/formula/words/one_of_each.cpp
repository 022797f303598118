#include "formula/words/one_of_each.hpp"

#include <algorithm>

#include "core/contains.hpp"
#include "core/names.hpp"
#include "knowledge/index/kind_heads.hpp"

namespace standin {

std::vector<std::string> one_of_each_form(const Kind& kind, std::string_view word, const Knowledge& knowledge) {
    constexpr std::size_t few = 5;
    const std::string said = fold(word);
    const auto says_it = [&](const Ingredient& one) { return fold(one.names.front()).find(said) != std::string::npos; };
    const auto all = foods_meant(kind, knowledge);
    const bool any = std::any_of(all.begin(), all.end(), [&](const auto* one) { return says_it(*one); });
    std::vector<std::string> names;
    std::vector<std::string> forms;
    for (const auto* food : all) {
        const bool ground = contains(food->already, std::string("ground"));
        const std::string form = std::to_string(static_cast<int>(food->tissue)) + (ground ? " ground" : "");
        if (any && !says_it(*food)) continue;  // of corn the corn, and not the breadcrumbs made of it
        if (names.size() == few || contains(forms, form)) continue;
        forms.push_back(form);
        names.push_back(food->names.front());
    }
    return names;
}

}  // namespace standin
