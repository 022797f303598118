#include "formula/formats/stock_headings.hpp"

#include <algorithm>

#include "core/names.hpp"
#include "formula/formats/stock_amounts.hpp"
#include "formula/formats/stock_doubt.hpp"
#include "formula/formats/stock_words.hpp"
#include "formula/lexer/line_words.hpp"
#include "formula/lexer/quantity_text.hpp"
#include "knowledge/kinds.hpp"
#include "knowledge/word_list.hpp"

namespace standin {
namespace {

constexpr std::size_t longest_said = 5;  // words

bool holds_words_of(std::string_view text, WordList list, std::size_t fewest, const Knowledge& knowledge) {
    const auto words = words_of(text);
    for (std::size_t first = 0; first < words.size(); ++first)
        for (std::size_t last = first + fewest; last <= std::min(words.size(), first + longest_said); ++last)
            if (knowledge.in_list(list, fold(phrase(words, first, last)))) return true;
    return false;
}

bool has_figure(std::string_view text) { return text.find_first_of("0123456789") != std::string_view::npos; }

// "Meat on hand", but not "plenty of herbs".
bool heads_a_kind(std::string_view line, const Knowledge& knowledge) {
    if (has_figure(line)) return false;
    const StockLine says = stock_line(line, knowledge);
    if (says.says != StockWord::some || says.names.empty() || !kind_named(says.names, knowledge)) return false;
    const auto at = line.find(says.names);
    return at != std::string_view::npos && !bare(line.substr(at + says.names.size())).empty();
}

std::string_view without_signs(std::string_view comment) {
    comment.remove_prefix(std::min(comment.find_first_not_of("# "), comment.size()));
    return comment;
}

}  // namespace

std::optional<StockHeading> stock_heading(std::string_view line, const Knowledge& knowledge) {
    const bool colon = !line.empty() && line.back() == ':';
    const std::string_view said = bare(line);
    if (said.empty()) return std::nullopt;
    if (knowledge.in_list(WordList::stock_none_heading, fold(said))) return StockHeading{StockSection::none, {}};
    if (const auto stop = line.find(':');
        stop != std::string_view::npos && !colon && knowledge.in_list(WordList::stock_none_heading, fold(bare(line.substr(0, stop)))))
        return StockHeading{StockSection::none, bare(line.substr(stop + 1))};
    if (!colon) return knowledge.in_list(WordList::stock_heading, fold(said)) ? std::optional(StockHeading{}) : std::nullopt;
    if (knowledge.in_list(WordList::stock_heading, fold(said))) return StockHeading{};
    if (holds_words_of(said, WordList::stock_none_heading, 2, knowledge)) return StockHeading{StockSection::none, {}};
    const bool denies = holds_words_of(said, WordList::stock_none_heading, 1, knowledge) ||
                        holds_words_of(said, WordList::stock_none, 1, knowledge) ||
                        holds_words_of(said, WordList::stock_no_abroad, 1, knowledge);  // "need" alone may go on with "using up"
    return StockHeading{denies ? StockSection::unclear : StockSection::there, {}};
}

bool is_list_title(std::string_view line, const Knowledge& knowledge) {
    if (has_figure(line)) return false;
    const auto words = words_of(line);
    const bool sausage = std::any_of(words.begin(), words.end(), [&](const Word& word) {
        return knowledge.in_list(WordList::link_word, word.folded) || knowledge.in_list(WordList::yield_heading, word.folded);
    });
    return !sausage && std::any_of(words.begin(), words.end(), [&](const Word& word) {
        return knowledge.in_list(WordList::stock_heading, word.folded) || knowledge.in_list(WordList::stock_title_word, word.folded);
    });
}

bool heads_others(const std::vector<TextLine>& lines, std::size_t i, const std::function<bool(std::string_view)>& is_food,
                  const Knowledge& knowledge) {
    const auto apart = [&](std::size_t line) { return lines[line].place.line > lines[line - 1].place.line + 1; };
    if ((i > 0 && !apart(i)) || i + 1 == lines.size() || apart(i + 1)) return false;
    const std::string_view text = lines[i].text;
    const auto words = words_of(text);
    const auto tells_how_much = [&](const Word& word) { return knowledge.in_list(WordList::stock_plenty, word.folded); };
    if (std::any_of(words.begin(), words.end(), tells_how_much)) return false;  // "pork plenty"
    if (heads_a_kind(text, knowledge)) return true;
    if (i > 0 || !is_list_title(text, knowledge) || warns_or_excludes(text, knowledge)) return false;
    const auto parts = parts_of_list(text.substr(text.find(':') + 1), knowledge);  // "Pantry: oats, salt" names some
    return std::none_of(parts.begin(), parts.end(), is_food);
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

void StockSections::take(StockSection says, bool of_a_kind) {
    if (of_a_kind && none_ && !used_) return;  // "Don't have:" and "Herbs:" below it
    none_ = says == StockSection::none;
    used_ = false;
}

void StockSections::take_comments(std::size_t before) {
    for (; next_comment_ < comments_.size() && comments_[next_comment_].place.line < before; ++next_comment_) {
        const auto heading = stock_heading(without_signs(comments_[next_comment_].text), knowledge_);
        take(heading ? heading->says : StockSection::there, false);
        last_line_ = comments_[next_comment_].place.line;
    }
}

bool StockSections::none_at(const TextLine& line, const std::optional<StockHeading>& heading) {
    const bool gap = line.place.line > last_line_ + 1;
    take_comments(line.place.line);
    last_line_ = line.place.line;
    if (gap && used_) none_ = false;
    if (!heading) {
        used_ = true;
        return none_;
    }
    if (!heading->rest.empty()) return heading->says == StockSection::none;
    take(heading->says, heading->says == StockSection::there && kind_named(bare(line.text), knowledge_) != nullptr);
    return none_;
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
