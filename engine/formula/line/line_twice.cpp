#include "formula/line/line_twice.hpp"

#include <algorithm>
#include <cmath>
#include <vector>

#include "core/contains.hpp"
#include "formula/amounts/amount.hpp"
#include "formula/amounts/process_text.hpp"
#include "formula/food/line_prepared.hpp"
#include "formula/lexer/number_text.hpp"
#include "formula/lexer/quantity_text.hpp"
#include "formula/lexer/spaces.hpp"

namespace standin {
namespace {

struct Told {
    std::size_t begin = 0, end = 0;
    const Unit* unit = nullptr;
};

bool measured(const Unit& unit) { return unit.dimension == Dimension::mass || unit.dimension == Dimension::volume; }

std::optional<Told> told_at(const std::string& line, std::size_t at, bool counts_too) {
    Cursor cursor(line, at);
    const auto amount = amount_at(cursor);
    const Unit* unit = amount ? amount->parts.front().unit : nullptr;
    if (!unit || (amount->of != Whole::none && unit->dimension != Dimension::percent)) return std::nullopt;
    if (unit->dimension == Dimension::count && !counts_too) return std::nullopt;
    return Told{at, cursor.at(), unit};
}

std::size_t past_signs(const std::string& line, std::size_t at) { return std::min(line.find_first_not_of(" |/,;.", at), line.size()); }

// Amounts with units from `at` to the end of the line and nothing else; empty when there is anything else.
std::vector<Told> told_to_the_end(const std::string& line, std::size_t at) {
    std::vector<Told> all;
    for (at = past_signs(line, at); at < line.size(); at = past_signs(line, at)) {
        const auto told = told_at(line, at, !all.empty() || line.find_first_of("0123456789", at + 3) != std::string::npos);
        if (!told) return {};
        all.push_back(*told);
        at = told->end;
    }
    const auto of = [&](Dimension dimension) {
        return std::any_of(all.begin(), all.end(), [&](const Told& told) { return told.unit->dimension == dimension; });
    };
    if (!of(Dimension::mass) && !of(Dimension::volume)) return {};
    return all;
}

// What is told again must come to the same: `noted_weight` and `noted_volume` of the line reader see to it.
void remember(std::string_view said, Dimension dimension, const Knowledge& knowledge, LineNotes& notes) {
    if (dimension == Dimension::mass && !notes.grams) notes.column = take_weight(said, knowledge, notes);
    Cursor cursor(said);
    if (dimension == Dimension::volume && notes.volume.empty())
        if (const auto amount = amount_at(cursor)) notes.volume = amount->parts;
}

// `from`: where what stood before ends.
void take(std::string& line, std::size_t from, const std::vector<Told>& again, const Knowledge& knowledge, LineNotes& notes) {
    for (const auto& told : again)
        remember(std::string_view(line).substr(told.begin, told.end - told.begin), told.unit->dimension, knowledge, notes);
    blank(line, from, line.size());
}

// "75 g salt, about 1/4 cup plus a teaspoon": behind a weight a last clause that is a measure and nothing else.
void take_measure_clause(std::string& line, std::size_t from) {
    for (std::size_t comma = line.find_first_of(",;", from); comma != std::string::npos; comma = line.find_first_of(",;", comma + 1)) {
        Cursor cursor(line, comma + 1);
        const bool about = eat_about(cursor) || cursor.eat_any_word({"or", "some"});
        eat_about(cursor);
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

// "5 lb 2268 g", "1 cup 240 ml": the other system, with nothing between them.
bool tells_again(const Unit& first, const Unit& second) {
    return measured(first) && measured(second) && is_metric(first) != is_metric(second);
}

// "1 small onion, chopped 30 g 2 tbsp", "pork 500 g 1.10 lb", "garlic 0.5 % 5 g": the weights of a table behind the words.
void take_columns(std::string& line, std::size_t start, const Knowledge& knowledge, LineNotes& notes) {
    Cursor cursor(line, start), number(line, start);
    const bool counted = number_at(number).has_value();  // in "walnut 3 g" a walnut is no measure
    const auto first = counted ? amount_at(cursor) : std::nullopt;
    for (std::size_t i = std::max(cursor.at(), start) + 1; i < line.size(); ++i) {
        if (line[i - 1] != ' ' || line[i] < '0' || line[i] > '9') continue;
        auto all = told_to_the_end(line, i);
        if (all.empty()) continue;
        std::size_t from = i;
        if (!first) {
            from = all.front().end;
            all.erase(all.begin());
        }
        const Unit* unit = first ? first->parts.front().unit : nullptr;
        const bool counted_first = !unit || unit->dimension == Dimension::count;
        const bool same = unit && !all.empty() && unit->dimension == all.front().unit->dimension && tells_again(*unit, *all.front().unit);
        if (!all.empty() && (!first || (counted_first && all.front().unit->dimension == Dimension::mass) || same))
            take(line, from, all, knowledge, notes);
        return;
    }
}

// "1 pkt frozen spinach, 10 oz, thawed": what the packet weighs, in a clause of its own.
bool take_pack_weight(std::string& line, std::size_t from, const Knowledge& knowledge, LineNotes& notes) {
    for (auto comma = line.find(',', from); comma != std::string::npos; comma = line.find(',', comma + 1)) {
        const std::size_t end = std::min(line.find(',', comma + 1), line.size());
        std::string clause = line.substr(comma + 1, end - comma - 1);
        while (!clause.empty() && clause.back() == ' ') clause.pop_back();
        if (notes.grams || !take_weight(clause, knowledge, notes)) continue;
        blank(line, comma, end);
        return true;
    }
    return false;
}

bool is_of_a_country(const Unit& unit) { return unit.word.starts_with("australian ") || unit.word.starts_with("metric "); }

bool measured_in_ml(const AmountText& amount) {
    const Unit* unit = amount.parts.front().unit;
    return unit && unit->dimension == Dimension::volume && is_metric(*unit);
}

std::string as_written(const std::vector<AmountPart>& parts) {
    std::string all;
    for (const auto& part : parts) all += (all.empty() ? "" : " ") + plain_number(part.number.mid) + " " + std::string(part.unit->word);
    return all;
}

}  // namespace

void take_second_amount(std::string& line, std::size_t start, const Knowledge& knowledge, LineNotes& notes) {
    Cursor cursor(line, start);
    const auto first = amount_at(cursor);
    if (!first || !first->parts.front().unit) return take_columns(line, start, knowledge, notes);
    const Unit& unit = *first->parts.front().unit;
    if (is_container(unit) && take_pack_weight(line, cursor.at(), knowledge, notes)) return;
    if (unit.dimension == Dimension::mass) take_measure_clause(line, cursor.at());
    const std::size_t from = cursor.at();
    cursor.space();
    const bool comma = cursor.eat(",");
    const bool said = cursor.eat_word("or") || (!comma && (cursor.eat("/") || cursor.eat("|")));
    const std::size_t again = cursor.at();
    const auto second = amount_at(cursor);
    const Unit* other = second ? second->parts.front().unit : nullptr;
    if (!other || !(said || tells_again(unit, *other))) return take_columns(line, start, knowledge, notes);
    if (other->dimension == Dimension::count || other->dimension == Dimension::percent) return;
    remember(std::string_view(line).substr(again, cursor.at() - again), other->dimension, knowledge, notes);
    blank(line, from, cursor.at());
}

std::optional<Error> noted_volume(AmountText& amount, const LineNotes& notes) {
    constexpr double within = 0.14;                         // judgement: cups, pints and spoons are rounded when they are told in ml
    constexpr double least_of_it = 0.75, most_of_it = 1.4;  // judgement: spoons of 12 to 20 ml and cups of 180 to 300 ml are sold
    const Unit* unit = amount.parts.front().unit;
    const bool loose = unit && unit->dimension == Dimension::count && unit->size.mid > 0;
    if (loose && !notes.volume.empty()) {  // "1 glass (125 ml)"
        amount.parts = notes.volume;
        return std::nullopt;
    }
    const bool spoon_again = !notes.in_cups.empty() && unit && is_metric(*unit);  // "5 ml (1 metric tsp)"
    if (notes.volume.empty() || (!notes.in_cups.empty() && !spoon_again) || !unit || unit->dimension != Dimension::volume ||
        amount.per_grams > 0)
        return std::nullopt;
    const auto ml = [](const std::vector<AmountPart>& parts, double Band::*end) {
        double sum = 0;
        for (const auto& part : parts) sum += part.number.*end * (part.unit->size.*end);
        return sum;
    };
    const auto& again = notes.volume;
    // What is told of a spoon or a cup in millilitres tells whose spoon it is.
    const bool by_country = unit->word == "tbsp" || unit->word == "cup";
    if (is_of_a_country(*unit) && std::abs(ml(again, &Band::mid) - unit->size.mid) < 1) return std::nullopt;  // "2 tbsp (Aus 20 ml)"
    const double low = by_country ? least_of_it : 1 - within, high = by_country ? most_of_it : 1 + within;
    if (ml(again, &Band::high) < low * ml(amount.parts, &Band::low) || ml(again, &Band::low) > high * ml(amount.parts, &Band::high))
        return Error{Trouble::bad_data,
                     "two measures are told that differ: expected the same one twice, or one",
                     "",
                     {as_written(amount.parts), as_written(again)}};
    if (!is_metric(*unit) && is_metric(*again.front().unit)) amount.parts = again;
    return std::nullopt;
}

void take_volume_of_count(AmountText& amount, const Ingredient& ingredient, LineNotes& notes) {
    if (notes.volume.empty()) return;
    AmountText poured;
    poured.parts = notes.volume;
    poured.of = amount.of;
    poured.per_grams = amount.per_grams;
    if (counts(amount) && !notes.grams && weigh(poured, ingredient, {})) amount = std::move(poured);
    else if (!notes.in_cups.empty() && !contains(notes.passed, notes.in_cups) && !measured_in_ml(amount))
        notes.passed.push_back(notes.in_cups);
}

}  // namespace standin
