#include "formula/words/ripe_age.hpp"

#include <algorithm>

#include "core/names.hpp"
#include "formula/lexer/line_words.hpp"
#include "formula/lexer/measures.hpp"
#include "knowledge/index/kinds.hpp"
#include "knowledge/records/word_list.hpp"

namespace standin {
namespace {

class AgeFinder {
public:
    AgeFinder(std::string_view line, const Knowledge& knowledge) : line_(line), words_(words_of(line)), knowledge_(knowledge) {}

    std::optional<RipeAge> find() const {
        for (std::size_t i = 0; i < words_.size(); ++i)
            if (const std::size_t end = counted_end(i); end > i) return taken(i, end, true, false);
        for (std::size_t i = 0; i < words_.size(); ++i)
            if (is_year(i)) return taken(begins_with_ripe(i), i + 1 + phrase_at(i + 1, WordList::ripened_word), false, true);
        for (std::size_t i = 0; i < words_.size(); ++i)
            if (const std::size_t count = phrase_at(i, WordList::ripened_word)) return taken(i, i + count, false, false);
        return std::nullopt;
    }

private:
    // How many words from `at` on are one of the list, the most that are.
    std::size_t phrase_at(std::size_t at, WordList list) const {
        constexpr std::size_t longest = 3;  // words
        for (std::size_t end = std::min(words_.size(), at + longest); end > at; --end)
            if (knowledge_.in_list(list, fold(phrase(words_, at, end)))) return end - at;
        return 0;
    }

    bool is_unit(const std::string& folded) const {
        return knowledge_.in_list(WordList::year_word, folded) || knowledge_.in_list(WordList::month_of_age, folded);
    }

    bool is_short_number(std::size_t at) const {
        constexpr std::size_t most_digits = 3;
        return at < words_.size() && words_[at].raw.size() <= most_digits &&
               words_[at].raw.find_first_not_of("0123456789") == std::string::npos;
    }

    std::size_t number_end(std::size_t at) const {
        if (is_short_number(at)) {  // "18-24", "18 to 24"
            if (is_short_number(at + 1)) return at + 2;
            return at + 2 < words_.size() && words_[at + 1].folded == "to" && is_short_number(at + 2) ? at + 3 : at + 1;
        }
        if (const std::size_t count = phrase_at(at, WordList::months_of_ripening)) return at + count;
        return at + phrase_at(at, WordList::small_age_word);
    }

    // "24mo", "3yr", "zweijähriger", "2-jähriger": a number and its unit in one.
    bool is_joined(std::size_t at) const {
        if (at >= words_.size()) return false;
        const std::string& word = words_[at].raw;
        const auto ends = [&](const std::string& tail) { return knowledge_.in_list(WordList::age_ending, tail) || is_unit(tail); };
        const auto digits = word.find_first_not_of("0123456789");
        if (digits != 0 && digits != std::string::npos) return ends(fold(word.substr(digits)));
        constexpr std::size_t shortest = 3;
        for (std::size_t cut = shortest; cut + shortest <= word.size(); ++cut)
            if ((knowledge_.in_list(WordList::small_age_word, fold(word.substr(0, cut))) ||
                 knowledge_.in_list(WordList::months_of_ripening, fold(word.substr(0, cut)))) &&
                knowledge_.in_list(WordList::age_ending, fold(word.substr(cut))))
                return true;
        return false;
    }

    // Behind the last word of the age that starts at `i`; `i` itself where none does.
    std::size_t counted_end(std::size_t i) const {
        std::size_t at = i + phrase_at(i, WordList::ripened_word);
        if (is_joined(at)) {
            ++at;
        } else {
            const std::size_t unit = number_end(at);
            if (unit == at || unit >= words_.size()) return i;
            if (!is_unit(words_[unit].folded) && !knowledge_.in_list(WordList::age_ending, words_[unit].folded)) return i;
            at = unit + 1;
        }
        at += phrase_at(at, WordList::old_behind_age);
        return at + phrase_at(at, WordList::ripened_word);
    }

    // A year by itself: no weight, and no number of a range.
    bool is_year(std::size_t at) const {
        const std::string& word = words_[at].raw;
        if (word.size() != 4 || word.find_first_not_of("0123456789") != std::string::npos) return false;
        if (!(word >= "1950" && word <= "2099")) return false;
        return at + 1 >= words_.size() || !unit_named(words_[at + 1].folded);
    }

    std::size_t begins_with_ripe(std::size_t year) const {
        return year > 0 && phrase_at(year - 1, WordList::ripened_word) == 1 ? year - 1 : year;
    }

    RipeAge taken(std::size_t first, std::size_t last, bool counted, bool a_year) const {
        RipeAge age{std::string(line_), phrase(words_, first, last), counted, a_year};
        const auto blank = [&](std::size_t from, std::size_t to) {
            std::fill(age.line.begin() + static_cast<std::ptrdiff_t>(from), age.line.begin() + static_cast<std::ptrdiff_t>(to), ' ');
        };
        blank(words_[first].begin, words_[last - 1].end);
        drop_empty_clause(age.line, words_[first].begin, words_[last - 1].end, blank);
        return age;
    }

    // The bracket or the comma that held nothing but the age.
    template <class Blank>
    static void drop_empty_clause(const std::string& line, std::size_t from, std::size_t to, Blank blank) {
        const auto before = line.find_last_not_of(' ', from), behind = line.find_first_not_of(' ', to);
        if (before == std::string::npos) return;
        const bool ends = behind == std::string::npos;
        if (line[before] == '(' && !ends && line[behind] == ')') return blank(before, behind + 1);
        if (line[before] == ',' && (ends || line[behind] == ',' || line[behind] == ')' || line[behind] == ';')) blank(before, before + 1);
    }

    std::string_view line_;
    std::vector<Word> words_;
    const Knowledge& knowledge_;
};

}  // namespace

std::optional<RipeAge> take_ripe_age(std::string_view line, const Knowledge& knowledge) { return AgeFinder(line, knowledge).find(); }

bool may_have_age(const Ingredient& food, const RipeAge& age, const Knowledge& knowledge) {
    return age.a_year ? food.family == "vinegars-and-wines" : belongs(food, "ripens", knowledge);
}

std::string without_ripe_age(std::string_view line, const std::vector<const Ingredient*>& foods, const Knowledge& knowledge) {
    auto age = take_ripe_age(line, knowledge);
    const bool all = age && !foods.empty() &&
                     std::all_of(foods.begin(), foods.end(), [&](const Ingredient* food) { return may_have_age(*food, *age, knowledge); });
    return all ? std::move(age->line) : std::string(line);
}

}  // namespace standin
