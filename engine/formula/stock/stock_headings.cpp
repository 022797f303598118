#include "formula/stock/stock_headings.hpp"

#include <algorithm>
#include <array>
#include <cctype>

#include "core/contains.hpp"
#include "core/names.hpp"
#include "formula/hazards/hazards.hpp"
#include "formula/lexer/digits.hpp"
#include "formula/lexer/line_words.hpp"
#include "formula/lexer/quantity_text.hpp"
#include "formula/stock/stock_amounts.hpp"
#include "formula/stock/stock_doubt.hpp"
#include "formula/words/stock_words.hpp"
#include "formula/words/tongues.hpp"
#include "knowledge/index/kinds.hpp"
#include "knowledge/records/word_list.hpp"

namespace standin {
namespace {

constexpr std::size_t longest_heading = 5;  // words

bool holds_words_of(std::string_view text, WordList list, std::size_t fewest, const Knowledge& knowledge) {
    const auto words = words_of(text);
    for (std::size_t first = 0; first < words.size(); ++first)
        for (std::size_t last = first + fewest; last <= std::min(words.size(), first + longest_heading); ++last)
            if (knowledge.in_list(list, fold(phrase(words, first, last)))) return true;
    return false;
}

bool names_food_in_any_tongue(std::string_view line, const Knowledge& knowledge) {
    constexpr std::size_t longest = 4;  // words
    if (!foods_named(line, longest, knowledge).empty()) return true;
    const auto ways = in_english(line, knowledge);
    return std::any_of(ways.begin(), ways.end(),
                       [&](const Rewording& way) { return way.foreign && !foods_named(way.text, longest, knowledge).empty(); });
}

bool is_number(const Word& word) { return only_digits(word.folded); }

// "No. 7" denies nothing.
std::string without_numbering(std::string_view line) {
    std::string out(line);
    const auto words = words_of(line);
    for (std::size_t i = words.size(); i-- > 1;)
        if (is_number(words[i]) && (words[i - 1].folded == "no" || words[i - 1].folded == "nr" || words[i - 1].folded == "n"))
            out.erase(words[i - 1].begin, words[i].end - words[i - 1].begin);
    return out;
}

// "Meat on hand", but not "plenty of herbs".
bool heads_a_kind(std::string_view line, const Knowledge& knowledge) {
    if (has_digit(line)) return false;
    const StockLine says = stock_line(line, knowledge);
    if (says.says != StockWord::some || says.names.empty() || !kind_named(says.names, knowledge)) return false;
    const auto at = line.find(says.names);
    return at != std::string_view::npos && !bare(line.substr(at + says.names.size())).empty();
}

// "Left from last week", "Was noch da ist": it opens with such a word and names no food.
bool heads_what_is_left(std::string_view line, const Knowledge& knowledge) {
    const StockWord says = stock_line(line, knowledge).says;
    if (has_digit(line) || says == StockWord::everything_else || says == StockWord::nothing_else) return false;
    const auto words = words_of(line);
    bool opens = false;
    for (std::size_t last = 1; last <= std::min(words.size(), longest_heading); ++last)
        opens = opens || knowledge.in_list(WordList::heads_what_is_left, fold(phrase(words, 0, last)));
    return opens && !names_food_in_any_tongue(line, knowledge);
}

std::string_view without_signs(std::string_view comment) {
    comment.remove_prefix(std::min(comment.find_first_not_of("# "), comment.size()));
    return comment;
}

}  // namespace

std::optional<StockHeading> stock_heading(std::string_view line, const Knowledge& knowledge) {
    const bool colon = !line.empty() && line.back() == ':';
    const std::string_view written = bare(line);
    const std::string said = without_numbering(written);
    if (written.empty()) return std::nullopt;
    if (knowledge.in_list(WordList::stock_none_heading, fold(said))) return StockHeading{StockSection::none, {}};
    if (const auto stop = line.find(':');
        stop != std::string_view::npos && !colon && knowledge.in_list(WordList::stock_none_heading, fold(bare(line.substr(0, stop)))))
        return StockHeading{StockSection::none, bare(line.substr(stop + 1))};
    if (knowledge.in_list(WordList::stock_heading, fold(said))) return StockHeading{};
    const bool left = heads_what_is_left(said, knowledge);
    if (!colon && !left) return std::nullopt;
    if (holds_words_of(said, WordList::stock_none_heading, 2, knowledge)) return StockHeading{StockSection::none, {}};
    const bool denies = holds_words_of(said, WordList::stock_none_heading, 1, knowledge) ||
                        holds_words_of(said, WordList::stock_none, 1, knowledge) ||
                        holds_words_of(said, WordList::stock_no_abroad, 1, knowledge);  // "need" alone may go on with "using up"
    if (denies) return StockHeading{StockSection::unclear, {}};
    const bool aged = (left || !names_food_in_any_tongue(said, knowledge)) && only_tells_age(said, knowledge);
    return StockHeading{aged ? StockSection::aged : StockSection::there, {}};
}

bool is_list_title(std::string_view line, const Knowledge& knowledge) {
    if (has_digit(line)) return false;
    const auto words = words_of(line);
    const bool sausage = std::any_of(words.begin(), words.end(), [&](const Word& word) {
        return knowledge.in_list(WordList::link_word, word.folded) || knowledge.in_list(WordList::yield_heading, word.folded);
    });
    return !sausage && std::any_of(words.begin(), words.end(), [&](const Word& word) {
        return knowledge.in_list(WordList::stock_heading, word.folded) || knowledge.in_list(WordList::stock_title_word, word.folded);
    });
}

namespace {

bool opens_with_capital(const Word& word) { return std::isupper(static_cast<unsigned char>(word.raw.front())) != 0; }

// "Sorrel Farm", "Goose Green Farm, pork and herb": a house or a farm, and nothing that is on hand.
bool names_a_place(const std::vector<Word>& words, const Knowledge& knowledge) {
    for (std::size_t i = 1; i < words.size(); ++i)
        if (words[i].segment == words[i - 1].segment && opens_with_capital(words[i]) && opens_with_capital(words[i - 1]) &&
            knowledge.in_list(WordList::place_behind_a_name, words[i].folded))
            return true;
    return false;
}

// "40th", "12/5/24", "3 May", "4 pm"
bool is_of_a_day(const std::vector<Word>& words, std::size_t i) {
    constexpr std::array<std::string_view, 4> ordinals{"st", "nd", "rd", "th"};
    constexpr std::array<std::string_view, 3> beside_number{"may", "am", "pm"};
    const std::string& word = words[i].folded;
    const auto letters = word.find_first_not_of("0123456789");
    if (letters == std::string::npos) return false;
    if (letters > 0 && contains(ordinals, std::string_view(word).substr(letters))) return true;
    const bool number_beside = (i > 0 && is_number(words[i - 1])) || (i + 1 < words.size() && is_number(words[i + 1]));
    if (number_beside && contains(beside_number, std::string_view(word))) return true;
    const auto signs = std::count_if(word.begin(), word.end(), [](char c) { return c == '/' || c == '.'; });
    return word.find_first_not_of("0123456789/.") == std::string::npos && (signs > 1 || (signs == 1 && words.size() == 1));
}

// "Grandad turns 90 on Sunday", "Olive Grove links".
bool tells_occasion(const std::vector<Word>& words, const Knowledge& knowledge) {
    if (words.size() > 1 && knowledge.in_list(WordList::link_word, words.back().folded)) return true;
    for (std::size_t first = 0; first < words.size(); ++first) {
        if (is_of_a_day(words, first) || knowledge.in_list(WordList::kin_who_eat, words[first].folded)) return true;
        for (std::size_t last = first + 1; last <= std::min(words.size(), first + 3); ++last)
            if (knowledge.in_list(WordList::list_occasion, fold(phrase(words, first, last)))) return true;
    }
    return false;
}

bool weighs_something(std::string_view line) { return tells_mass(line) || tells_weight(line); }

}  // namespace

bool is_first_title(std::string_view line, const std::function<bool(std::string_view)>& is_food, const Knowledge& knowledge) {
    const std::string said = without_numbering(line);
    const auto words = words_of(said);
    if (weighs_something(said) || warns_or_excludes(said, knowledge)) return false;
    if (names_a_place(words, knowledge)) return true;
    if (!is_list_title(said, knowledge) && !tells_occasion(words, knowledge) && said.size() == line.size()) return false;
    const auto parts = parts_of_list(std::string_view(said).substr(said.find(':') + 1), knowledge);  // "Pantry: oats, salt" names some
    return std::none_of(parts.begin(), parts.end(), is_food);
}

bool heads_others(const std::vector<TextLine>& lines, std::size_t i, const std::function<bool(std::string_view)>& is_food,
                  const Knowledge& knowledge) {
    const auto apart = [&](std::size_t line) { return lines[line].place.line > lines[line - 1].place.line + 1; };
    if ((i > 0 && !apart(i)) || i + 1 == lines.size() || (i > 0 && apart(i + 1))) return false;
    const std::string_view text = lines[i].text;
    const auto words = words_of(text);
    const auto tells_how_much = [&](const Word& word) { return knowledge.in_list(WordList::stock_plenty, word.folded); };
    if (std::any_of(words.begin(), words.end(), tells_how_much)) return false;  // "pork plenty"
    if (heads_a_kind(text, knowledge) && !apart(i + 1)) return true;
    return i == 0 && is_first_title(text, is_food, knowledge);
}

bool only_tells_age(std::string_view line, const Knowledge& knowledge) {
    return stopped_only_by(
        line, [&](const std::string& said) { return knowledge.in_list(WordList::from_days_ago, fold(said)); }, knowledge);
}

bool outlasts_a_week(const Ingredient& food, const Knowledge& knowledge) {
    constexpr std::array fresh{Tissue::thin_leaf, Tissue::thick_leaf, Tissue::stalk, Tissue::root,       Tissue::bulb,
                               Tissue::fruit,     Tissue::seed,       Tissue::dry,   Tissue::chile_flesh};
    return belongs(food, "keeps-for-months", knowledge) || food.family == "sour-fruit" ||
           (contains(fresh, food.tissue) && food.id != "bean-sprout");
}

Error heading_not_understood(std::string_view heading, const std::string& where) {
    return {Trouble::bad_data,
            "\"" + std::string(heading) + "\" says that something is not on hand, in words not known here",
            where,
            {"not on hand:", "no cilantro"}};
}

Error below_none(std::string_view line, const std::string& where) {
    return {Trouble::bad_data,
            "\"" + std::string(line) + "\" stands below a heading that says there is none of it",
            where,
            {"on hand:", "no cilantro"}};
}

Error not_there_but_what(std::string_view line, const std::string& where) {
    return {Trouble::bad_data,
            "\"" + std::string(line) + "\" says that something is not on hand, but not what, in words known here",
            where,
            {"no cilantro"}};
}

void StockSections::take(StockSection says, bool of_a_kind) {
    if (of_a_kind && now_ != StockSection::there && !used_) return;  // "Don't have:" and "Herbs:" below it
    now_ = says == StockSection::unclear ? StockSection::there : says;
    used_ = false;
}

void StockSections::take_comments(std::size_t before) {
    for (; next_comment_ < comments_.size() && comments_[next_comment_].place.line < before; ++next_comment_) {
        const auto heading = stock_heading(without_signs(comments_[next_comment_].text), knowledge_);
        take(heading ? heading->says : StockSection::there, false);
        last_line_ = comments_[next_comment_].place.line;
    }
}

StockSection StockSections::at(const TextLine& line, const std::optional<StockHeading>& heading) {
    const bool gap = line.place.line > last_line_ + 1;
    take_comments(line.place.line);
    last_line_ = line.place.line;
    if (gap && used_) now_ = StockSection::there;
    if (!heading) {
        used_ = true;
        return now_;
    }
    if (!heading->rest.empty()) return heading->says;
    take(heading->says, heading->says == StockSection::there && kind_named(bare(line.text), knowledge_) != nullptr);
    return now_;
}

std::string gone_in(std::string_view line, const Knowledge& knowledge) {
    const StockLine says = stock_line(line, knowledge);
    return says.says == StockWord::none ? std::string(bare(says.names.substr(0, says.names.find('(')))) : std::string();
}

std::string said_missing(std::string_view line, const Knowledge& knowledge) {
    const StockLine says = stock_line(line, knowledge);
    if (says.says == StockWord::none) return std::string(line);
    if (says.says != StockWord::weighed) return {};
    const std::string turned = with_amount_first(line, knowledge);
    Cursor cursor(turned);
    if (amount_at(cursor)) cursor.eat_word("of");
    else cursor.go(0);
    std::string_view name = bare(std::string_view(turned).substr(cursor.at()));
    for (std::size_t i = name.find_first_of(" ,"); i != std::string_view::npos; i = name.find_first_of(" ,", i + 1)) {  // "lemons 2"
        Cursor tail(name, i + 1);
        tail.space();
        if (!tail.digit() || !amount_at(tail)) continue;
        tail.space();
        if (!tail.done()) continue;
        name = bare(name.substr(0, i));
        break;
    }
    return name.empty() ? std::string() : "no " + std::string(name);
}

}  // namespace standin
