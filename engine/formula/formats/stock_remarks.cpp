#include "formula/formats/stock_remarks.hpp"

#include <algorithm>
#include <cctype>

#include "core/names.hpp"
#include "formula/formats/stock_words.hpp"
#include "formula/lexer/line_words.hpp"
#include "formula/line/hazards.hpp"
#include "formula/line/remark.hpp"
#include "formula/line/tongues.hpp"
#include "knowledge/kinds.hpp"

namespace standin {
namespace {

struct Remark {
    std::size_t first = 0, last = 0;  // bytes, without the signs around it
    bool in_bracket = false;
};

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

std::vector<Remark> clauses_in(std::string_view line) {
    std::vector<Remark> all;
    std::size_t start = 0;
    for (std::size_t at = 0; at <= line.size(); ++at) {
        if (at < line.size() && !parts_clauses(line, at)) continue;
        const auto first = line.find_first_not_of(' ', start);
        const bool opened = start > 0 && (line[start - 1] == '(' || line[start - 1] == '[');
        if (first < at) all.push_back({first, at, opened});
        start = at + 1;
    }
    return all;
}

std::vector<const Ingredient*> foods_in(std::string_view text, const Knowledge& knowledge) {
    constexpr std::size_t longest = 4;  // words
    return foods_named(text, longest, knowledge);
}

std::vector<const Ingredient*> foods_in_any_tongue(std::string_view text, const Knowledge& knowledge) {
    auto all = foods_in(text, knowledge);
    if (!all.empty()) return all;
    for (const auto& way : in_english(text, knowledge))
        if (all = foods_in(way.text, knowledge); !all.empty()) return all;
    return all;
}

// The one food that a part names.
SaidOfFood said_of(std::string_view part, const Knowledge& knowledge) {
    const auto foods = foods_in_any_tongue(part, knowledge);
    return {foods.size() == 1 ? foods.front() : nullptr, part};
}

bool has_amount(std::string_view text) { return text.find_first_of("0123456789") != std::string_view::npos; }

bool all_items(std::string_view text, const IsItem& is_item) {
    const auto parts = parts_of_list(text);
    return !parts.empty() && std::all_of(parts.begin(), parts.end(), is_item);
}

// "Packet warns of peanut: sunflower seeds 200 g"; but "Nuts: walnuts 100 g" heads what follows.
bool is_warning_ahead(std::string_view line, const std::vector<Remark>& clauses, const IsItem& is_item, const Knowledge& knowledge) {
    if (clauses.size() < 2 || line[clauses.front().last] != ':') return false;
    const auto text = line.substr(clauses.front().first, clauses.front().last - clauses.front().first);
    return !is_item(text) && !kind_named(text, knowledge) && !has_amount(text) && words_of(text).size() > 1;
}

void blank_out(std::string& line, std::size_t first, std::size_t last) {
    std::fill(line.begin() + static_cast<std::ptrdiff_t>(first), line.begin() + static_cast<std::ptrdiff_t>(last), ' ');
}

// With the signs that part it from what stands before it.
void blank_clause(std::string& line, Remark clause) {
    const auto before = line.find_last_not_of(" ,;:-([/.", clause.first == 0 ? 0 : clause.first - 1);
    const std::size_t first = clause.first == 0 ? 0 : before == std::string::npos ? 0 : before + 1;
    std::size_t last = clause.last;
    while (last < line.size() && std::string_view(")]!.:").find(line[last]) != std::string_view::npos) ++last;
    blank_out(line, first, last);
}

}  // namespace

std::vector<Declared> take_remarks(std::string& line, const IsItem& is_item, const Knowledge& knowledge) {
    std::vector<Declared> all;
    const std::string written = line;
    const std::string_view text(written);
    const auto clauses = clauses_in(text);
    const auto said = [&](const Remark& clause) { return text.substr(clause.first, clause.last - clause.first); };
    const auto take = [&](const Remark& clause, const std::vector<const Ingredient*>& own) {
        auto told = told_by_remark(said(clause), own, knowledge);
        if (told.empty()) return;
        all.insert(all.end(), told.begin(), told.end());
        blank_clause(line, clause);
    };
    if (is_warning_ahead(text, clauses, is_item, knowledge)) take(clauses.front(), foods_in_any_tongue(said(clauses[1]), knowledge));
    std::vector<const Ingredient*> own;
    for (std::size_t i = 0; i < clauses.size(); ++i) {
        const bool lone = clauses.size() == 2 && i == 1 && has_amount(said(clauses[0])) && !has_amount(said(clauses[1])) &&
                          stock_line(said(clauses[1]), knowledge).says == StockWord::weighed;
        if (i > 0 && knowledge.in_list("thawed-cold", fold(said(clauses[i])))) {
            blank_clause(line, clauses[i]);
            continue;
        }
        if (i > 0 && !own.empty() &&
            (lone || (clauses[i].in_bracket && !has_amount(said(clauses[i]))) || !all_items(said(clauses[i]), is_item))) {
            take(clauses[i], own);
            continue;
        }
        if (auto foods = foods_in_any_tongue(said(clauses[i]), knowledge); !foods.empty()) own = std::move(foods);
    }
    return all;
}

bool is_plain_part(const std::vector<std::string_view>& parts, std::string_view part, const Knowledge& knowledge) {
    return is_plain_remark(part, knowledge, said_of(parts.front(), knowledge));
}

std::set<std::size_t> odd_parts(const std::vector<std::string_view>& parts, const IsItem& is_item, const Knowledge& knowledge) {
    std::set<std::size_t> odd;
    std::size_t before = 0;
    for (std::size_t i = 0; i < parts.size(); ++i) {
        if (i == 0 || is_item(parts[i])) {
            before = i;
        } else if (!is_plain_remark(parts[i], knowledge, said_of(parts[before], knowledge))) {
            odd.insert(before);
            odd.insert(i);
        }
    }
    return odd;
}

}  // namespace standin
