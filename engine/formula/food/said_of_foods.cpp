#include "formula/food/said_of_foods.hpp"

#include <algorithm>
#include <map>

#include "core/contains.hpp"
#include "core/names.hpp"
#include "formula/hazards/hazards.hpp"
#include "formula/lexer/digits.hpp"
#include "formula/lexer/line_words.hpp"
#include "formula/lexer/measures.hpp"
#include "knowledge/records/word_list.hpp"
#include "knowledge/words/hazard_text.hpp"

namespace standin {
namespace {

constexpr std::size_t no_line = static_cast<std::size_t>(-1);

bool is_warned_of(const std::string& word, const Knowledge& knowledge) {
    const auto& hazards = knowledge.records().lexicon.hazards;
    return std::any_of(hazards.begin(), hazards.end(), [&](const Hazard& hazard) {
        const bool stops = hazard.act == HazardAct::refuse || hazard.act == HazardAct::ask;
        return stops && !hazard.of.empty() && std::any_of(hazard.words.begin(), hazard.words.end(), [&](const std::string& pattern) {
                   return pattern.find(' ') == std::string::npos && fits_any({pattern}, word);
               });
    });
}

// The words by which a line calls its food: no amount, and nothing that could be said of it.
std::vector<std::string> names_in_line(std::string_view written, const Knowledge& knowledge) {
    constexpr std::size_t shortest = 3;
    std::vector<std::string> all;
    for (const auto& word : words_of(written.substr(0, written.find_first_of(",(")))) {
        const bool amount = has_digit(word.folded) || unit_named(word.folded);
        if (amount || word.folded.size() < shortest || knowledge.in_list(WordList::leads_on, word.folded)) continue;
        const auto plain = hazard_text(word.raw).words;
        if (plain.size() == 1 && !is_warned_of(plain.front(), knowledge)) all.push_back(word.folded);
    }
    return all;
}

class Subjects {
public:
    Subjects(const std::vector<LineAsWritten>& lines, const Knowledge& knowledge) : lines_(lines), knowledge_(knowledge) {
        for (const auto& line : lines) names_.push_back(names_in_line(line.written, knowledge));
    }

    struct Found {
        std::size_t line = no_line, words = 0;  ///< no line: a food that no line has; no words: no food
    };

    Found at(const std::vector<Word>& words, std::size_t first) const {
        constexpr std::size_t longest = 3;
        for (std::size_t last = std::min(words.size(), first + longest); last > first; --last) {
            if (words[last - 1].segment != words[first].segment) continue;
            const std::string name = phrase(words, first, last);
            const auto* food = knowledge_.ingredient_named(name);
            if (!food) food = knowledge_.ingredient_meant(name);
            if (last == first + 1)
                if (const auto line = called(words[first].folded); line != no_line) return {line, 1};
            if (food) return {of(*food), last - first};
        }
        return {};
    }

    std::vector<std::size_t> shellfish() const {
        std::vector<std::size_t> all;
        for (std::size_t i = 0; i < lines_.size(); ++i)
            if (contains(knowledge_.ingredient(lines_[i].line->ingredient)->cautions, "raw-shellfish")) all.push_back(i);
        return all;
    }

private:
    std::size_t called(const std::string& word) const {
        constexpr std::size_t long_enough = 5;  // letters: "lupin" for "lupini"
        const auto is_same = [&](const std::string& name) {
            const std::size_t shorter = std::min(name.size(), word.size()), longer = std::max(name.size(), word.size());
            return name == word || (shorter >= long_enough && longer == shorter + 1 && (name.starts_with(word) || word.starts_with(name)));
        };
        for (std::size_t i = 0; i < names_.size(); ++i)
            if (std::any_of(names_[i].begin(), names_[i].end(), is_same)) return i;
        if (knowledge_.in_list(WordList::whole_meat, word))
            for (std::size_t i = 0; i < lines_.size(); ++i)
                if (knowledge_.ingredient(lines_[i].line->ingredient)->meat) return i;
        return no_line;
    }

    std::size_t of(const Ingredient& food) const {
        for (std::size_t i = 0; i < lines_.size(); ++i)
            if (lines_[i].line->ingredient == food.id) return i;
        return no_line;
    }

    const std::vector<LineAsWritten>& lines_;
    const Knowledge& knowledge_;
    std::vector<std::vector<std::string>> names_;
};

// Which words of a text are said of which line.
class Allotted {
public:
    Allotted(const SaidBeside& said, const std::vector<LineAsWritten>& lines, const Knowledge& knowledge)
        : knowledge_(knowledge), subjects_(lines, knowledge), lines_(lines.size()), method_(said.method) {
        const auto words = words_of(said.text);
        for (std::size_t first = 0; first < words.size();) {
            std::size_t last = first;
            while (last < words.size() && words[last].segment == words[first].segment) ++last;
            clause(words, first, last);
            first = last;
        }
    }

    const std::map<std::size_t, std::string>& texts() const { return texts_; }

private:
    void say(std::size_t line, const Word& word) {
        if (line != no_line) texts_[line] += (texts_[line].empty() ? "" : " ") + word.raw;
    }

    void clause(const std::vector<Word>& words, std::size_t first, std::size_t last) {
        for (std::size_t i = first; i < last; ++i)
            if (knowledge_.in_list(WordList::until_word, words[i].folded)) last = i;  // "mix the meat until sticky"
        std::vector<std::pair<std::size_t, Subjects::Found>> foods;
        for (std::size_t i = first; i < last;) {
            const auto found = subjects_.at(words, i);
            if (found.words > 0) foods.emplace_back(i, found);
            i += std::max<std::size_t>(found.words, 1);
        }
        if (foods.empty()) {
            const bool of_some = !method_ && first < last && knowledge_.in_list(WordList::some_of_it, words[first].folded);
            const auto them = before_ != no_line ? std::vector<std::size_t>{} : subjects_.shellfish();
            const bool of_them =
                std::any_of(words.begin() + static_cast<std::ptrdiff_t>(first), words.begin() + static_cast<std::ptrdiff_t>(last),
                            [&](const Word& word) { return knowledge_.in_list(WordList::pronoun, word.folded); });
            for (std::size_t i = first; i < last; ++i) {
                say(before_, words[i]);
                for (const auto line : of_them && !of_some ? them : std::vector<std::size_t>{}) say(line, words[i]);
                if (of_some && before_ == no_line)
                    for (std::size_t line = 0; line < lines_; ++line) say(line, words[i]);
            }
            return;
        }
        for (std::size_t i = first; i < foods.front().first; ++i) say(foods.front().second.line, words[i]);
        for (std::size_t at = 0; at < foods.size(); ++at) {
            const auto& [place, food] = foods[at];
            for (std::size_t i = place; i < place + food.words; ++i) say(food.line, words[i]);
            const bool more = at + 1 < foods.size();
            const std::size_t end = more ? foods[at + 1].first : last;
            std::size_t turn = end;
            while (more && turn > place + food.words && !knowledge_.in_list(WordList::leads_on, words[turn - 1].folded)) --turn;
            for (std::size_t i = place + food.words; i < end; ++i) say(more && i >= turn ? foods[at + 1].second.line : food.line, words[i]);
        }
        before_ = foods.back().second.line;
    }

    const Knowledge& knowledge_;
    Subjects subjects_;
    std::size_t lines_;
    bool method_;
    std::size_t before_ = no_line;
    std::map<std::size_t, std::string> texts_;
};

}  // namespace

SaidOfLines said_of_lines(const SaidBeside& said, const std::vector<LineAsWritten>& lines, const Knowledge& knowledge) {
    SaidOfLines out;
    const Allotted allotted(said, lines, knowledge);
    for (const auto& [at, text] : allotted.texts()) {
        auto told = what_is_said_of(text, lines[at].written, *lines[at].line, said.method, knowledge);
        if (!out.danger && told.danger) out.danger = std::move(told.danger);
        out.told.insert(out.told.end(), told.told.begin(), told.told.end());
    }
    return out;
}

}  // namespace standin
