#include "formula/food/clauses.hpp"

#include <algorithm>
#include <cctype>

#include "core/names.hpp"
#include "formula/lexer/line_words.hpp"
#include "formula/lexer/measures.hpp"
#include "formula/words/line_asides.hpp"
#include "formula/words/stock_words.hpp"
#include "knowledge/records/word_list.hpp"

namespace standin {
namespace {

bool parts_clauses(std::string_view line, std::size_t at) {
    const auto is = [&](std::size_t i, auto&& what) { return i < line.size() && what(static_cast<unsigned char>(line[i])) != 0; };
    const auto digit = [](unsigned char c) { return std::isdigit(c); };
    const auto blank = [](unsigned char c) { return std::isspace(c); };
    const char c = line[at];
    if (c == ',') return !(at > 0 && is(at - 1, digit) && is(at + 1, digit));  // "1,5 kg"
    if (c == ';' || c == ':' || c == '(' || c == ')' || c == '[' || c == ']' || c == '!') return true;
    if (c == '-' || c == '/') return at > 0 && is(at - 1, blank) && is(at + 1, blank);
    return c == '.' && at > 2 && is(at + 1, blank) && !is(at - 1, digit) && !is(at - 2, blank);
}

void blank_out(std::string& line, std::size_t first, std::size_t last) {
    std::fill(line.begin() + static_cast<std::ptrdiff_t>(first), line.begin() + static_cast<std::ptrdiff_t>(last), ' ');
}

}  // namespace

std::vector<LineClause> cut_in_clauses(std::string_view line) {
    std::vector<LineClause> all;
    std::size_t start = 0;
    char opened = ' ';
    for (std::size_t at = 0; at <= line.size(); ++at) {
        if (at < line.size() && !parts_clauses(line, at)) continue;
        const char closed = at < line.size() ? line[at] : ' ';
        const auto first = line.find_first_not_of(' ', start);
        if (first < at) all.push_back({first, at, opened, closed});
        opened = closed;
        start = at + 1;
    }
    return all;
}

void blank_clause(std::string& line, const LineClause& clause) {
    const auto before = line.find_last_not_of(" ,;:-([/.", clause.first == 0 ? 0 : clause.first - 1);
    const std::size_t first = clause.first == 0 ? 0 : before == std::string::npos ? 0 : before + 1;
    std::size_t last = clause.last;
    while (last < line.size() && std::string_view(")]!.:").find(line[last]) != std::string_view::npos) ++last;
    blank_out(line, first, last);
}

std::string without_clauses(std::string_view line, std::vector<std::string>& out, const std::function<bool(std::string_view)>& may_go) {
    std::string rest(line);
    const auto clauses = cut_in_clauses(line);
    for (std::size_t i = 1; i < clauses.size(); ++i) {
        const auto& clause = clauses[i];
        const bool whole = clause.in_bracket() == (clause.closed == ')' || clause.closed == ']');
        const auto said = bare(clause.of(line));
        if (!whole || said.empty() || !may_go(said)) continue;
        out.emplace_back(said);
        if (clause.in_bracket()) blank_clause(rest, clause);
        else blank_out(rest, line.rfind(clause.opened, clause.first), clause.last);
    }
    return rest;
}

bool changes_no_reading(std::string_view said, const Knowledge& knowledge) {
    const auto words = words_of(said);
    if (words.empty()) return false;
    for (std::size_t first = 0; first < words.size(); ++first) {
        const std::string& word = words[first].folded;
        const Unit* unit = unit_named(word);
        if (changes_food(word, knowledge) || names_a_kind(word, knowledge) || knowledge.in_list(WordList::tells_form, word) ||
            knowledge.in_list(WordList::dry_form, word) || knowledge.in_list(WordList::cut_of_meat, word) ||
            (unit && unit->dimension != Dimension::count) || word == "or" || word == "with")
            return false;
        for (std::size_t last = first + 1; last <= std::min(words.size(), first + 4); ++last) {
            const std::string name = phrase(words, first, last);
            if (knowledge.preparation_named(name) || knowledge.ingredient_named(name)) return false;
        }
    }
    return true;
}

}  // namespace standin
