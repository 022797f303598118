#include "formula/amounts/sheet_size.hpp"

#include <algorithm>
#include <string>
#include <vector>

#include "formula/lexer/line_words.hpp"
#include "knowledge/records/word_list.hpp"

namespace standin {
namespace {

std::string size_text(std::string_view line) {
    std::string text(line);
    std::replace_if(
        text.begin(), text.end(), [](char c) { return std::string_view("*_=~#|()[]:;\t").find(c) != std::string_view::npos; }, ' ');
    return text;
}

struct SizeFigure {
    double grams = 0;
    bool percent = false;
    std::size_t begin = 0, end = 0;
};

// The weights and percentages of the text; nothing where a number tells something else.
std::optional<std::vector<SizeFigure>> weights_in(std::string_view text) {
    std::vector<SizeFigure> all;
    for (std::size_t i = 0; i < text.size(); ++i) {
        if (text[i] < '0' || text[i] > '9') continue;
        Cursor cursor(text, i);
        const auto number = number_at(cursor, false);
        if (!number) return std::nullopt;
        Cursor behind = cursor;
        behind.space();
        if (behind.eat("%")) {
            all.push_back({number->band.mid, true, i, behind.at()});
        } else {
            const auto unit = unit_at(cursor);
            if (!unit || unit->unit->dimension != Dimension::mass) return std::nullopt;
            all.push_back({number->band.mid * unit->unit->size.mid, false, i, cursor.at()});
        }
        i = all.back().end - 1;
    }
    return all;
}

// The words beside the weights, where all of them may tell of a size; else none.
std::vector<Word> size_words(const std::string& text, const std::vector<SizeFigure>& weights, const Knowledge& knowledge) {
    std::string rest = text;
    for (const auto& weight : weights)
        std::fill(rest.begin() + static_cast<std::ptrdiff_t>(weight.begin), rest.begin() + static_cast<std::ptrdiff_t>(weight.end), ' ');
    auto words = words_of(rest);
    const bool all = std::all_of(words.begin(), words.end(), [&](const Word& word) {
        return knowledge.in_list(WordList::sheet_size, word.folded) || knowledge.in_list(WordList::sheet_total, word.folded) ||
               knowledge.in_list(WordList::sheet_of_meat, word.folded);
    });
    if (!all) words.clear();
    return words;
}

bool says_any_of(const std::vector<Word>& words, WordList list, const Knowledge& knowledge) {
    return std::any_of(words.begin(), words.end(), [&](const Word& word) { return knowledge.in_list(list, word.folded); });
}

}  // namespace

std::optional<SheetSize> sheet_size(std::string_view line, const Knowledge& knowledge) {
    const std::string text = size_text(line);
    const auto weights = weights_in(text);
    if (!weights) return std::nullopt;
    const auto words = size_words(text, *weights, knowledge);
    if (words.empty()) return std::nullopt;
    SheetSize size;
    for (const auto& weight : *weights)  // "Total 5 kg 100 %", "Batch: 5 kg (11 lb)"
        if (!weight.percent && size.grams <= 0) size.grams = weight.grams;
    if (size.grams <= 0) return std::nullopt;
    if (says_any_of(words, WordList::sheet_of_meat, knowledge)) size.of = Whole::meat;
    size.total = size.of != Whole::meat && says_any_of(words, WordList::sheet_total, knowledge);
    return size;
}

std::optional<SheetSize> size_in_title(std::string_view title, const Knowledge& knowledge) {
    std::optional<SheetSize> size;
    for (std::size_t i = 0; i < title.size(); ++i) {
        if (title[i] < '0' || title[i] > '9' || (i > 0 && title[i - 1] != ' ' && title[i - 1] != '(')) continue;
        Cursor cursor(title, i);
        const auto number = number_at(cursor, false);
        const auto unit = number ? unit_at(cursor) : std::nullopt;
        if (!unit || unit->unit->dimension != Dimension::mass) continue;
        if (size) return std::nullopt;
        size = SheetSize{number->band.mid * unit->unit->size.mid, Whole::batch, false};
        i = cursor.at() - 1;
    }
    if (size && says_any_of(words_of(title), WordList::sheet_of_meat, knowledge)) size->of = Whole::meat;
    return size;
}

bool adds_up_shares(std::string_view line, const Knowledge& knowledge) {
    const std::string text = size_text(line);
    const auto weights = weights_in(text);
    if (!weights || weights->empty()) return false;
    const bool shares = std::all_of(weights->begin(), weights->end(), [](const SizeFigure& one) { return one.percent; });
    return shares && says_any_of(size_words(text, *weights, knowledge), WordList::sheet_total, knowledge);
}

Whole whole_in_words(std::string_view text, const Knowledge& knowledge) {
    const auto words = words_of(text);
    if (text.find('%') == std::string_view::npos && !says_any_of(words, WordList::percent_word, knowledge)) return Whole::unsaid;
    if (says_any_of(words, WordList::sheet_of_meat, knowledge)) return Whole::meat;
    return says_any_of(words, WordList::whole_batch, knowledge) ? Whole::batch : Whole::unsaid;
}

}  // namespace standin
