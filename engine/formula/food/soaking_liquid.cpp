#include "formula/food/soaking_liquid.hpp"

#include "formula/lexer/line_words.hpp"
#include "formula/lexer/measures.hpp"
#include "formula/lexer/number_text.hpp"
#include "knowledge/records/word_list.hpp"

namespace standin {

bool is_soaking_liquid(const Ingredient& ingredient) {
    constexpr double salty = 1;  // g in 100 g, judgement
    constexpr double fat = 20;   // g in 100 g, judgement: oil is no water
    return ingredient.tissue == Tissue::liquid && ingredient.roles.front() != Role::acid && ingredient.composition.salt.mid < salty &&
           ingredient.composition.fat.mid < fat;
}

std::string soaked_in_plain_water(std::string_view line, const Knowledge& knowledge) {
    const auto words = words_of(line);
    for (std::size_t i = 1; i + 2 < words.size(); ++i) {
        const auto* done = knowledge.preparation_named(words[i - 1].raw);
        const bool soaks =
            knowledge.in_list(WordList::soaks, words[i - 1].folded) || (done && (done->id == "soaked" || done->id == "rehydrated"));
        if (!soaks || words[i].folded != "in") continue;
        Cursor cursor(line, words[i + 1].begin);
        if (!number_at(cursor, false)) return {};
        cursor.space();
        const auto unit = unit_at(cursor);
        std::size_t last = i + 1;
        while (last < words.size() && words[last].segment == words[i].segment && words[last].begin < cursor.at()) ++last;
        std::size_t water = last;
        while (water < words.size() && words[water].segment == words[i].segment && words[water].folded != "water") ++water;
        if (!unit || last == words.size() || water == words.size() || words[water].folded != "water") return {};
        return std::string(line.substr(0, words[i + 1].begin)) + std::string(line.substr(words[last].begin));
    }
    return {};
}

void tell_of_soaking(const NameRead& name, ReadLine& read) {
    const Ingredient* liquid = name.after.soaked_in ? name.after.soaked_in : name.before.soaked_in;
    if (!liquid) return;
    const std::string& called = liquid->names.front();
    for (const auto& allergen : liquid->allergens) read.line.declared.push_back({allergen, "soaked in " + called});
    read.doubts.push_back(
        {Confidence::unsure, make_reason(ReasonKind::soaked_as_water, {}, {name.ingredient->names.front(), called}), true});
}

}  // namespace standin
