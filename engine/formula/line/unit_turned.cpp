#include "formula/line/unit_turned.hpp"

#include "core/names.hpp"
#include "formula/food/line_phrases.hpp"
#include "formula/lexer/line_words.hpp"
#include "formula/lexer/measures.hpp"
#include "formula/lexer/number_text.hpp"
#include "knowledge/records/word_list.hpp"

namespace standin {
namespace {

bool weighs(const Unit& unit) { return unit.dimension == Dimension::mass || unit.dimension == Dimension::volume; }

// "/kg 3", "per kg 3", "18 g": there the unit belongs to what stands before it.
bool belongs_before(const std::string& line, const std::vector<Word>& words, std::size_t i, const Knowledge& knowledge) {
    const auto& before = words[i - 1];
    Cursor cursor(line, before.begin);
    const bool number = number_at(cursor, false).has_value();
    return number || knowledge.in_list(WordList::per_word, before.folded) || (words[i].begin > 0 && line[words[i].begin - 1] == '/');
}

// Behind the name: a metric unit, a number, and nothing that the number counts.
void turn_unit_behind(std::string& line, const Knowledge& knowledge) {
    const auto words = words_of(line);
    for (std::size_t i = 1; i + 1 < words.size(); ++i) {
        const Unit* unit = unit_named(words[i].folded);
        if (!unit || !weighs(*unit) || !is_metric(*unit) || belongs_before(line, words, i, knowledge)) continue;
        Cursor cursor(line, words[i].end);
        cursor.eat(".");
        cursor.space();
        const std::size_t from = cursor.at();
        if (from != words[i + 1].begin || !cursor.digit() || !number_at(cursor, false)) continue;
        const std::size_t end = cursor.at();
        if (!cursor.done() && std::string_view(" ,;()").find(cursor.rest().front()) == std::string_view::npos) continue;
        if (unit_at(cursor)) continue;
        const std::string count = line.substr(from, end - from);
        line.replace(words[i].begin, end - words[i].begin, count + " " + words[i].raw);
        return;
    }
}

}  // namespace

void turn_unit_first(std::string& line, const Knowledge& knowledge) {
    const std::size_t start = line_start(line);
    Cursor cursor(line, start);
    if (number_at(cursor, false)) return;
    turn_unit_behind(line, knowledge);
    cursor = Cursor(line, start);
    const auto unit = unit_at(cursor);
    if (!unit || (unit->unit->dimension != Dimension::mass && unit->unit->dimension != Dimension::volume)) return;
    const std::size_t number = cursor.at();
    Cursor behind(line, number);
    behind.eat(".");
    behind.space();
    const std::size_t digits = behind.at();
    if (!number_at(behind, false) || line.find_first_of("0123456789", behind.at()) != std::string::npos) return;
    if (!behind.done() && behind.rest().front() != ' ') return;
    const std::string said = line.substr(start, number - start), count = line.substr(digits, behind.at() - digits);
    line.replace(start, behind.at() - start, count + " " + said);
}

void write_kilos(std::string& line) {
    const auto digit = [&](std::size_t i) { return i < line.size() && line[i] >= '0' && line[i] <= '9'; };
    for (std::size_t i = line.find('k'); i != std::string::npos; i = line.find('k', i + 1)) {
        const bool ends = i + 1 == line.size() || std::string_view(" ,;)").find(line[i + 1]) != std::string_view::npos;
        if (i > 0 && digit(i - 1) && ends) line.replace(i, 1, " kg");
    }
}

}  // namespace standin
