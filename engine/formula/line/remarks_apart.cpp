#include "formula/line/remarks_apart.hpp"

#include <algorithm>
#include <cctype>

#include "core/names.hpp"
#include "formula/formats/stock_words.hpp"
#include "formula/lexer/line_words.hpp"
#include "formula/lexer/measures.hpp"
#include "formula/line/line_asides.hpp"

namespace standin {
namespace {

bool digit_at(std::string_view line, std::size_t at) { return at < line.size() && std::isdigit(static_cast<unsigned char>(line[at])) != 0; }

bool ends_clause(std::string_view line, std::size_t at) {
    if (at >= line.size()) return true;
    const char c = line[at];
    if (c == ',') return !(at > 0 && digit_at(line, at - 1) && digit_at(line, at + 1));  // "1,5 kg"
    return c == ';' || c == '(' || c == ')';
}

}  // namespace

std::string without_clauses(std::string_view line, std::vector<std::string>& out, const std::function<bool(std::string_view)>& may_go) {
    std::string rest;
    std::size_t start = 0;
    char open = ' ';  // the sign before the clause
    for (std::size_t at = 0; at <= line.size(); ++at) {
        if (!ends_clause(line, at)) continue;
        const char close = at < line.size() ? line[at] : ' ';
        const std::string_view whole = line.substr(start, at - start), said = bare(whole);
        const bool apart = open != ' ' && (open == '(') == (close == ')');
        if (apart && !said.empty() && may_go(said)) {
            out.emplace_back(said);
            rest += ' ';
        } else {
            if (open != ' ') rest += open;
            rest += whole;
            if (close == ')') rest += close;
        }
        open = close == ')' ? ' ' : close;
        start = at + 1;
    }
    return rest;
}

bool changes_no_reading(std::string_view said, const Knowledge& knowledge) {
    const auto words = words_of(said);
    if (words.empty()) return false;
    for (std::size_t first = 0; first < words.size(); ++first) {
        const std::string& word = words[first].folded;
        const Unit* unit = unit_named(word);
        if (changes_food(word, knowledge) || names_a_kind(word, knowledge) || knowledge.in_list("tells-form", word) ||
            knowledge.in_list("dry-form", word) || knowledge.in_list("cut-of-meat", word) ||
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
