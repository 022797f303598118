#include "formula/stock/stock_remarks.hpp"

#include <algorithm>

#include "core/names.hpp"
#include "formula/food/clauses.hpp"
#include "formula/food/foods_in_any_tongue.hpp"
#include "formula/food/kind_in_brackets.hpp"
#include "formula/food/remark.hpp"
#include "formula/food/told_allergens.hpp"
#include "formula/hazards/hazards.hpp"
#include "formula/lexer/digits.hpp"
#include "formula/lexer/line_words.hpp"
#include "formula/words/stock_words.hpp"
#include "formula/words/thaw_day.hpp"
#include "formula/words/tongues.hpp"
#include "knowledge/index/kinds.hpp"
#include "knowledge/records/word_list.hpp"

namespace standin {
namespace {

// The one food that a part names.
SaidOfFood said_of(std::string_view part, const Knowledge& knowledge) {
    const auto foods = foods_in_any_tongue(part, knowledge);
    return {foods.size() == 1 ? foods.front() : nullptr, part};
}

bool all_items(std::string_view text, const IsItem& is_item, const Knowledge& knowledge) {
    const auto parts = parts_of_list(text, knowledge);
    return !parts.empty() && std::all_of(parts.begin(), parts.end(), is_item);
}

// "Packet warns of peanut: sunflower seeds 200 g"; but "Nuts: walnuts 100 g" heads what follows.
bool is_warning_ahead(std::string_view line, const std::vector<LineClause>& clauses, const IsItem& is_item, const Knowledge& knowledge) {
    if (clauses.size() < 2 || clauses.front().closed != ':') return false;
    const auto text = clauses.front().of(line);
    return !is_item(text) && !kind_named(text, knowledge) && !has_digit(text) && words_of(text).size() > 1;
}

}  // namespace

std::vector<Declared> take_remarks(std::string& line, const IsItem& is_item, const Knowledge& knowledge) {
    std::vector<Declared> all;
    const std::string written = line;
    const std::string_view text(written);
    const auto clauses = cut_in_clauses(text);
    const auto said = [&](const LineClause& clause) { return clause.of(text); };
    const auto take = [&](const LineClause& clause, const std::vector<const Ingredient*>& own) {
        auto told = told_by_remark(said(clause), own, knowledge);
        if (told.empty()) return;
        all.insert(all.end(), told.begin(), told.end());
        blank_clause(line, clause);
    };
    if (is_warning_ahead(text, clauses, is_item, knowledge)) take(clauses.front(), foods_in_any_tongue(said(clauses[1]), knowledge));
    std::vector<const Ingredient*> own;
    for (std::size_t i = 0; i < clauses.size(); ++i) {
        const bool lone = clauses.size() == 2 && i == 1 && has_digit(said(clauses[0])) && !has_digit(said(clauses[1])) &&
                          stock_line(said(clauses[1]), knowledge).says == StockWord::weighed;
        if (i > 0 && knowledge.in_list(WordList::thawed_cold, fold(said(clauses[i])))) {
            blank_clause(line, clauses[i]);
            continue;
        }
        if (i > 0 && !own.empty() &&
            (lone || (clauses[i].in_bracket() && !has_digit(said(clauses[i]))) || !all_items(said(clauses[i]), is_item, knowledge))) {
            take(clauses[i], own);
            continue;
        }
        if (auto foods = foods_in_any_tongue(said(clauses[i]), knowledge); !foods.empty()) own = std::move(foods);
    }
    return all;
}

std::string_view unknown_bracket(std::string_view names, const Knowledge& knowledge) {
    const auto open = names.find(" ("), close = names.find(')', open);
    if (open == std::string_view::npos || close == std::string_view::npos) return {};
    const auto said = names.substr(open + 2, close - open - 2);
    if (said.empty() || !foods_in_any_tongue(said, knowledge).empty()) return {};
    return read_remark(said, knowledge, said_of(names.substr(0, open), knowledge)).is == RemarkIs::plain ? std::string_view() : said;
}

std::string in_kinds(std::string_view line, const Knowledge& knowledge) {
    std::string out(line);
    write_kinds_in_brackets(out, true, knowledge);
    take_thaw_day(out, knowledge);
    return out;
}

RemarkIs remark_of_part(const std::vector<std::string_view>& parts, std::string_view part, const Knowledge& knowledge) {
    return read_remark(part, knowledge, said_of(parts.front(), knowledge)).is;
}

std::set<std::size_t> odd_parts(const std::vector<std::string_view>& parts, const IsItem& is_item, const Knowledge& knowledge) {
    std::set<std::size_t> odd;
    std::size_t before = 0;
    for (std::size_t i = 0; i < parts.size(); ++i) {
        if (i == 0 || is_item(parts[i])) {
            if (i == 0 || !foods_in_any_tongue(parts[i], knowledge).empty()) before = i;
        } else if (read_remark(parts[i], knowledge, said_of(parts[before], knowledge)).is == RemarkIs::asked) {
            odd.insert(before);
            odd.insert(i);
        }
    }
    return odd;
}

}  // namespace standin
