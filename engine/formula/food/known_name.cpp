#include <algorithm>
#include <array>
#include <string>
#include <string_view>

#include "core/names.hpp"
#include "formula/food/name_text.hpp"
#include "knowledge/records/word_list.hpp"

namespace standin {
namespace {

// "Shoulder pork" and "lean shoulder of pork" for "lean pork shoulder".
const Ingredient* animal_behind(const std::string& folded, const Knowledge& knowledge) {
    const auto blank = folded.rfind(' ');
    if (blank == std::string::npos) return nullptr;
    const std::string animal = folded.substr(blank + 1);
    if (!knowledge.in_list(WordList::animal_behind_cut, animal)) return nullptr;
    std::string cut = folded.substr(0, blank);
    const bool of = cut.size() > 3 && cut.compare(cut.size() - 3, 3, " of") == 0;
    if (of) cut.erase(cut.size() - 3);
    if (cut == "fat" && !of) return nullptr;  // "fat pork" is meat
    if (const auto* found = knowledge.ingredient_named(animal + " " + cut)) return found;
    return cut.rfind("lean ", 0) == 0 ? knowledge.ingredient_named("lean " + animal + " " + cut.substr(5)) : nullptr;
}

// "Thai bird chilies" for "thai bird chile".
const Ingredient* under_another_spelling(const std::string& folded, const Knowledge& knowledge) {
    constexpr std::array<std::string_view, 3> spellings{"chile", "chili", "chilli"};
    for (const auto spelling : spellings) {
        const auto at = (" " + folded + " ").find(" " + std::string(spelling) + " ");
        if (at == std::string::npos) continue;
        for (const auto other : spellings)
            if (other != spelling)
                if (const auto* found = knowledge.ingredient_named(std::string(folded).replace(at, spelling.size(), other))) return found;
        return nullptr;
    }
    return nullptr;
}

}  // namespace

const Ingredient* known_ingredient(std::string_view name, const Knowledge& knowledge) {
    if (const auto* found = knowledge.ingredient_named(name)) return found;
    std::string id = fold(name);
    // The living animal for its meat: "pig's skin", "calf's liver".
    constexpr std::array<std::array<std::string_view, 2>, 5> animals{
        {{"pig ", "pork "}, {"hog ", "pork "}, {"calf ", "veal "}, {"ox ", "beef "}, {"sheep ", "lamb "}}};
    for (const auto& [animal, meat] : animals)
        if (id.rfind(animal, 0) == 0)
            if (const auto* found = knowledge.ingredient_named(std::string(meat) + id.substr(animal.size()))) return found;
    if (const auto at = id.rfind(" rind"); at != std::string::npos && at + 5 == id.size())  // "pork rind" is its skin
        if (const auto* found = knowledge.ingredient_named(id.substr(0, at) + " skin"); found && found->meat) return found;
    if (const auto* found = under_another_spelling(id, knowledge)) return found;
    if (const auto* found = animal_behind(id, knowledge)) return found;
    std::replace(id.begin(), id.end(), ' ', '-');
    return knowledge.ingredient(id);
}

}  // namespace standin
