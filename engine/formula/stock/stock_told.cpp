#include "formula/stock/stock_told.hpp"

#include <algorithm>

#include "core/contains.hpp"
#include "formula/hazards/hazards.hpp"
#include "formula/lexer/line_words.hpp"
#include "formula/words/stock_words.hpp"
#include "knowledge/records/word_list.hpp"
#include "knowledge/words/hazard_text.hpp"

namespace standin {
namespace {

// The allergens that a part of the line says are in it, each with all its words.
std::vector<Declared> told_by(std::string_view part, const Knowledge& knowledge) {
    std::vector<Declared> all = declared_in(part, knowledge);
    for (auto& one : all) one.words = bare(part);
    return all;
}

// "walnuts - made in a factory that ...": back over the words before it that name no food.
std::size_t with_what_leads(std::string_view line, std::size_t at, const Knowledge& knowledge) {
    const auto words = words_of(line.substr(0, at));
    std::size_t first = words.size();
    while (first > 1 && (knowledge.in_list(WordList::has_in_it, words[first - 1].folded) ||
                         knowledge.in_list(WordList::article, words[first - 1].folded)))
        --first;
    return first < words.size() ? words[first].begin : at;
}

// Where a clause without brackets begins that tells what is in the food: at "may contain", "contains", "traces of".
std::size_t clause_start(std::string_view line, const Knowledge& knowledge) {
    const auto& lexicon = knowledge.records().lexicon;
    for (std::size_t at = 0; at < line.size();) {
        const auto end = std::min(line.find_first_of(" ,;:-", at), line.size());
        const std::string word = hazard_fold(line.substr(at, end - at));
        const bool opens =
            knowledge.in_list(WordList::perhaps_word, word) || fits_any(lexicon.holds, word) || fits_any(lexicon.handles, word);
        const bool denies = opens && ends_in_denial(line.substr(0, at), lexicon);
        if (at > 0 && opens && !denies && !declared_in(line.substr(at), knowledge).empty()) return with_what_leads(line, at, knowledge);
        at = end + 1;
    }
    return std::string_view::npos;
}

void blank(std::string& line, std::size_t from, std::size_t to) {
    std::fill(line.begin() + static_cast<std::ptrdiff_t>(from), line.begin() + static_cast<std::ptrdiff_t>(to), ' ');
}

}  // namespace

std::vector<Declared> take_told(std::string& line, const Knowledge& knowledge) {
    std::vector<Declared> all;
    const auto add = [&](std::vector<Declared> more) { all.insert(all.end(), more.begin(), more.end()); };
    for (auto open = line.find_first_of("(["); open != std::string::npos; open = line.find_first_of("([", open + 1)) {
        const auto close = std::min(line.find_first_of(")]", open), line.size());
        auto told = told_by(std::string_view(line).substr(open + 1, close - open - 1), knowledge);
        if (told.empty()) continue;
        add(std::move(told));
        blank(line, open, std::min(close + 1, line.size()));
    }
    if (const auto start = clause_start(line, knowledge); start != std::string_view::npos) {
        add(told_by(std::string_view(line).substr(start), knowledge));
        blank(line, start, line.size());
        const auto last = line.find_last_not_of(" ,;:-");  // what led to the clause
        if (last != std::string::npos) blank(line, last + 1, line.size());
    }
    return all;
}

}  // namespace standin
