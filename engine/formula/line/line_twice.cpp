#include "formula/line/line_twice.hpp"

#include <algorithm>
#include <vector>

#include "formula/lexer/number_text.hpp"
#include "formula/lexer/quantity_text.hpp"
#include "formula/lexer/spaces.hpp"

namespace standin {
namespace {

struct Told {
    std::size_t begin = 0, end = 0;
    bool mass = false;
};

std::optional<Told> told_at(const std::string& line, std::size_t at, bool counts_too) {
    Cursor cursor(line, at);
    const auto amount = amount_at(cursor);
    const Unit* unit = amount ? amount->parts.front().unit : nullptr;
    if (!unit || amount->of != Whole::none || unit->dimension == Dimension::percent) return std::nullopt;
    if (unit->dimension == Dimension::count && !counts_too) return std::nullopt;
    return Told{at, cursor.at(), unit->dimension == Dimension::mass};
}

std::size_t past_signs(const std::string& line, std::size_t at) { return std::min(line.find_first_not_of(" |/,;.", at), line.size()); }

// Amounts with units from `at` to the end of the line and nothing else; empty when there is anything else.
std::vector<Told> told_to_the_end(const std::string& line, std::size_t at) {
    std::vector<Told> all;
    for (at = past_signs(line, at); at < line.size(); at = past_signs(line, at)) {
        const auto told = told_at(line, at, !all.empty());
        if (!told) return {};
        all.push_back(*told);
        at = told->end;
    }
    return all;
}

void take(std::string& line, const std::vector<Told>& again, LineNotes& notes) {
    for (const auto& told : again)
        if (told.mass && !notes.grams) notes.column = take_weight(std::string_view(line).substr(told.begin, told.end - told.begin), notes);
    blank(line, again.front().begin, line.size());
}

// "75 g salt, about 1/4 cup plus a teaspoon": behind a weight a last clause that is a measure and nothing else.
void take_measure_clause(std::string& line, std::size_t from) {
    for (std::size_t comma = line.find_first_of(",;", from); comma != std::string::npos; comma = line.find_first_of(",;", comma + 1)) {
        Cursor cursor(line, comma + 1);
        const bool about = cursor.eat_any_word({"about", "approx", "approximately", "roughly", "around", "or", "ca", "circa", "some"});
        cursor.eat_any_word({"about", "roughly", "approximately"});
        auto again = amount_at(cursor);
        const Unit* unit = again ? again->parts.front().unit : nullptr;
        if (!unit || unit->dimension == Dimension::mass || unit->dimension == Dimension::percent) continue;
        if (!about && unit->dimension != Dimension::volume) continue;
        while (cursor.eat_any_word({"plus", "and", "less", "minus", "scant", "heaped", "generous"}))
            if (!amount_at(cursor)) break;
        cursor.space();
        if (!cursor.done()) continue;
        return blank(line, comma, line.size());
    }
}

// "1 small onion, chopped 30 g 2 tbsp", "pork 500 g 1.10 lb": the weights of a table behind the words.
void take_columns(std::string& line, std::size_t start, LineNotes& notes) {
    Cursor cursor(line, start), number(line, start);
    const bool counted = number_at(number).has_value();  // in "walnut 3 g" a walnut is no measure
    const auto first = counted ? amount_at(cursor) : std::nullopt;
    const Unit* unit = first ? first->parts.front().unit : nullptr;
    if (first && unit && unit->dimension != Dimension::count) return;
    for (std::size_t i = std::max(cursor.at(), start) + 1; i < line.size(); ++i) {
        if (line[i - 1] != ' ' || line[i] < '0' || line[i] > '9') continue;
        auto all = told_to_the_end(line, i);
        if (all.empty()) continue;
        if (!first) all.erase(all.begin());
        if (!all.empty() && (!first || all.front().mass)) take(line, all, notes);
        return;
    }
}

}  // namespace

void take_second_amount(std::string& line, std::size_t start, LineNotes& notes) {
    Cursor cursor(line, start);
    const auto first = amount_at(cursor);
    if (!first || !first->parts.front().unit) return take_columns(line, start, notes);
    if (first->parts.front().unit->dimension == Dimension::mass) take_measure_clause(line, cursor.at());
    const std::size_t from = cursor.at();
    cursor.space();
    const bool comma = cursor.eat(",");
    if (!cursor.eat_word("or") && (comma || (!cursor.eat("/") && !cursor.eat("|")))) return take_columns(line, start, notes);
    const std::size_t again = cursor.at();
    const auto second = amount_at(cursor);
    const Unit* unit = second ? second->parts.front().unit : nullptr;
    if (!unit || unit->dimension == Dimension::count || unit->dimension == Dimension::percent) return;
    if (unit->dimension == Dimension::mass && !notes.grams) take_weight(std::string_view(line).substr(again, cursor.at() - again), notes);
    blank(line, from, cursor.at());
}

}  // namespace standin
