#include "formula/kitchen/kitchen_food.hpp"

#include <algorithm>

#include "core/names.hpp"
#include "formula/lexer/line_words.hpp"
#include "formula/lexer/measures.hpp"
#include "formula/lexer/number_text.hpp"
#include "formula/lexer/spaces.hpp"
#include "knowledge/records/word_list.hpp"

namespace standin {
namespace {

struct Amount {
    double value = 0;
    std::size_t begin = 0, end = 0;
};

// The last number with such a unit behind it.
template <class UnitOf>
std::optional<Amount> last_amount(const std::string& text, UnitOf unit) {
    std::optional<Amount> found;
    for (const auto& word : words_of(text)) {
        Cursor cursor(text, word.begin);
        const auto number = number_at(cursor, false);
        const double size = number ? unit(cursor) : 0;
        if (size > 0) found = Amount{number->band.mid * size, word.begin, cursor.at()};
    }
    return found;
}

double percent(Cursor& cursor) {
    cursor.space();
    return cursor.eat("%") || cursor.eat_any_word({"percent", "pct"}) ? 1 : 0;
}

double mass(Cursor& cursor) {
    const auto unit = unit_at(cursor);
    return unit && unit->unit->dimension == Dimension::mass ? unit->unit->size.mid : 0;
}

}  // namespace

std::optional<FoodShare> take_share(std::string& text, const Knowledge& knowledge) {
    const auto amount = last_amount(text, percent);
    if (!amount) return std::nullopt;
    blank(text, amount->begin, amount->end);
    bool lost = false, left = false;
    for (const auto& word : words_of(text)) {
        const bool is_lost = knowledge.in_list(WordList::trimmed_off, word.folded),
                   is_left = knowledge.in_list(WordList::left_of_food, word.folded);
        if (is_lost || is_left) blank(text, word.begin, word.end);
        lost = lost || is_lost;
        left = left || is_left;
    }
    if (lost == left) return FoodShare{amount->value, false};
    return FoodShare{lost ? 100 - amount->value : amount->value, true};
}

std::optional<FoodMeasure> take_measure(std::string& text, const KnownName& known, const Knowledge& knowledge) {
    const auto amount = last_amount(text, mass);
    if (!amount) return std::nullopt;
    blank(text, amount->begin, amount->end);
    FoodMeasure measure{"", amount->value};
    double count = 1;
    bool by_number = false;
    for (const auto& word : words_of(text)) {
        Cursor cursor(text, word.begin);
        const auto number = number_at(cursor, false);
        const bool counted = number && number->band.mid > 0;  // "3 serranos: 20 g"
        if (counted) count = number->band.mid;
        if (!counted && word.folded != "one" && !knowledge.in_list(WordList::single_piece, word.folded)) continue;
        by_number = true;
        blank(text, word.begin, std::max(word.end, cursor.at()));
    }
    // A word for a measure; in "flat-leaf parsley" one may be part of the name.
    for (const auto& word : words_of(text)) {
        const Unit* unit = unit_named(word.folded);
        if (!unit || (unit->dimension != Dimension::count && unit->dimension != Dimension::volume)) continue;
        std::string without = text;
        blank(without, word.begin, word.end);
        if (!known(food_name(without, knowledge).name)) continue;
        text = without;
        measure.word = unit->word;
        break;
    }
    if (measure.word.empty() && by_number) measure.word = "piece";
    if (measure.word.empty()) return std::nullopt;
    measure.grams /= count;
    return measure;
}

PlausibleRange plausible_measure(const std::string& word, const Ingredient& ingredient) {
    constexpr double times = 5, least = 0.01, most = 5000;  // g, judgement
    for (const auto& record : ingredient.measures)
        if (record.measure == word || (word == "piece" && record.measure == "pod"))
            return {record.grams.mid / times, record.grams.mid * times};
    return {least, most};
}

FoodName food_name(const std::string& text, const Knowledge& knowledge) {
    auto words = words_of(text);
    while (!words.empty() && knowledge.in_list(WordList::beside_a_name, words.front().folded)) words.erase(words.begin());
    while (!words.empty() && knowledge.in_list(WordList::beside_a_name, words.back().folded)) words.pop_back();
    if (words.empty()) return {};
    return {phrase(words, 0, words.size()), words.front().begin};
}

}  // namespace standin
