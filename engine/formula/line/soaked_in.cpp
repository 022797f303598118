#include "formula/line/soaked_in.hpp"

#include <algorithm>

#include "formula/food/soaking_liquid.hpp"
#include "formula/hazards/hazards.hpp"
#include "formula/lexer/line_words.hpp"
#include "formula/lexer/measures.hpp"
#include "formula/lexer/number_text.hpp"
#include "formula/line/line_text.hpp"
#include "knowledge/records/word_list.hpp"

namespace standin {
namespace {

constexpr double mostly_fat = 70;  // g in 100 g, judgement: what things are fried in

bool soaks_up(const Ingredient& food) { return food.roles.front() == Role::binder && !food.meat && food.tissue != Tissue::egg; }

}  // namespace

std::optional<SoakedIn> soaked_in_measured(std::string_view line, const Origin& origin, const Knowledge& knowledge) {
    const auto words = words_of(line);
    for (std::size_t i = 2; i + 2 < words.size(); ++i) {
        const auto said = [&](WordList list) { return knowledge.in_list(list, words[i - 1].folded); };
        const bool soaking = said(WordList::soaks), mixing = said(WordList::mixes_with), absorbing = said(WordList::plumps_in);
        const auto* done = knowledge.preparation_named(words[i - 1].raw);
        const bool frying = done && (done->id == "cooked" || done->id == "caramelised" || done->id == "wilted");
        if ((!soaking && !mixing && !absorbing && !frying) || (words[i].folded != "in" && words[i].folded != "with")) continue;
        Cursor cursor(line, words[i + 1].begin);
        if (!number_at(cursor)) return std::nullopt;
        std::size_t last = i + 2;
        while (last < words.size() && words[last].segment == words[i].segment && words[last].folded != "and" &&
               words[last].folded != "then")
            ++last;
        SoakedIn soaked;
        soaked.liquid = line.substr(words[i + 1].begin, words[last - 1].end - words[i + 1].begin);
        const auto liquid = read_line(soaked.liquid, origin, knowledge);
        if (!liquid) return std::nullopt;
        const Ingredient& taken_up = *knowledge.ingredient(liquid->line.ingredient);
        const bool of_fat = taken_up.composition.fat.mid >= mostly_fat;
        const bool fried = frying && (!soaking || of_fat);  // crumbs softened in milk, onions softened in butter
        soaked.food = line.substr(0, words[fried ? i - 1 : i - 2].end);
        const auto food = read_line(soaked.food, origin, knowledge);
        if (!food || danger_of_food(line, food->line, knowledge)) return std::nullopt;  // beans that were only soaked
        // Of what is plumped in water nobody knows how much stays; in anything else it is meant to go in.
        const bool goes_in = soaks_up(*knowledge.ingredient(food->line.ingredient)) || mixing ||
                             (absorbing && knowledge.ingredient(liquid->line.ingredient)->id != "water");
        if (fried ? !of_fat : !goes_in || !is_soaking_liquid(taken_up)) return std::nullopt;
        const bool squeezed = std::any_of(words.begin() + static_cast<std::ptrdiff_t>(last), words.end(),
                                          [&](const Word& word) { return knowledge.in_list(WordList::wrung_word, word.folded); });
        const auto& name = knowledge.ingredient(liquid->line.ingredient)->names.front();
        soaked.told = make_reason(ReasonKind::soaked_counted_in, {}, {name});
        if (squeezed) soaked.told.role = "squeezed";
        return soaked;
    }
    return std::nullopt;
}

}  // namespace standin
