#include "formula/stock/stock_table.hpp"

#include <algorithm>
#include <array>
#include <optional>

#include "core/contains.hpp"
#include "core/names.hpp"
#include "formula/formats/table_cells.hpp"
#include "formula/hazards/hazards.hpp"
#include "formula/lexer/digits.hpp"
#include "formula/lexer/line_words.hpp"
#include "formula/stock/stock_doubt.hpp"
#include "knowledge/records/word_list.hpp"

namespace standin {
namespace {

enum class StockColumn { name, amount, unit, note, place, place_or_note };

struct StockHead {
    Between between = Between::tab;
    std::vector<StockColumn> columns;
    std::size_t name = 0, amount = 0;
    bool says_there = false;  ///< in words of what is on hand, as no formula has them
};

std::optional<StockColumn> column_called(const std::string& head, const Knowledge& knowledge) {
    const std::string folded = fold(head);
    const auto is = [&](WordList list) { return knowledge.in_list(list, folded); };
    if (is(WordList::column_name)) return StockColumn::name;
    if (is(WordList::column_unit)) return StockColumn::unit;
    if (is(WordList::column_amount) || is(WordList::stock_some) || is(WordList::stock_heading)) return StockColumn::amount;
    if (is(WordList::column_note) || is(WordList::column_prepared)) return StockColumn::note;
    if (is(WordList::column_other)) return StockColumn::place;
    return std::nullopt;
}

std::optional<StockHead> head_cut_by(std::string_view line, Between between, const Knowledge& knowledge) {
    const auto cells = cells_of(line, between);
    if (cells.size() < 2) return std::nullopt;
    StockHead head;
    head.between = between;
    bool named = false, amounts = false;
    for (std::size_t i = 0; i < cells.size(); ++i) {
        const auto column = cells[i].empty() ? std::optional(StockColumn::note) : column_called(cells[i], knowledge);
        if (!column) return std::nullopt;
        head.columns.push_back(*column);
        if (*column == StockColumn::name && !named) head.name = i, named = true;
        if (*column != StockColumn::amount || amounts) continue;
        head.amount = i;
        amounts = true;
        head.says_there = !knowledge.in_list(WordList::column_amount, fold(cells[i]));
    }
    return named && amounts ? std::optional(head) : std::nullopt;
}

std::optional<StockHead> stock_head(std::string_view line, const Knowledge& knowledge) {
    for (const auto between : all_between)
        if (auto head = head_cut_by(line, between, knowledge)) return head;
    return std::nullopt;
}

bool says_none(const std::string& cell, const Knowledge& knowledge) {
    return !cell.empty() && (is_empty_cell(cell) || knowledge.in_list(WordList::stock_none_after, fold(cell)));
}

bool says_only_there(const std::string& cell, const Knowledge& knowledge) {
    return cell.empty() || cell == "✓" || cell == "✔" || knowledge.in_list_as_written(WordList::tick_word, cell) ||
           knowledge.in_list_as_written(WordList::tick_word, fold(cell));
}

// Where it stands says nothing of it, unless it warns.
bool warns(const std::string& cell, const Knowledge& knowledge) {
    return danger_in(cell, knowledge).has_value() || never_set_aside_but_for_looks(cell, knowledge);
}

// "bed 3", "greenhouse"; but "dried" is none.
bool names_a_place(const std::string& cell, const Knowledge& knowledge) {
    const auto words = words_of(cell);
    return std::any_of(words.begin(), words.end(), [&](const Word& word) {
        return knowledge.in_list(WordList::stock_heading, word.folded) || knowledge.in_list(WordList::garden_bed, word.folded);
    });
}

std::string line_of_row(const Cells& cells, const StockHead& head, const Knowledge& knowledge) {
    const auto cell = [&](std::size_t i) { return i < cells.size() ? cells[i] : std::string(); };
    const std::string name = cell(head.name), amount = cell(head.amount);
    if (says_none(amount, knowledge)) return "no " + name;
    if (amount == "?") return name + "?";
    std::string line = name;
    if (!says_only_there(amount, knowledge)) {
        const auto unit = std::find(head.columns.begin(), head.columns.end(), StockColumn::unit);
        const std::string measure = unit == head.columns.end() || !is_bare_number(amount)
                                        ? std::string()
                                        : cell(static_cast<std::size_t>(unit - head.columns.begin()));
        line = amount + (measure.empty() ? "" : " " + measure) + " " + name;
    }
    for (std::size_t i = 0; i < cells.size() && i < head.columns.size(); ++i) {
        if (is_empty_cell(cells[i])) continue;
        const StockColumn is = head.columns[i];
        const bool place = is == StockColumn::place || (is == StockColumn::place_or_note && names_a_place(cells[i], knowledge));
        const bool told = is == StockColumn::note || is == StockColumn::place_or_note || is == StockColumn::place;
        if (!told || (place && !warns(cells[i], knowledge))) continue;
        line += ", " + cells[i];
    }
    for (std::size_t i = head.columns.size(); i < cells.size(); ++i)  // below no head
        if (!is_empty_cell(cells[i])) line += ", " + cells[i];
    return line;
}

// Without a head: the food, how much there is, where it stands, with tabs between them in every line.
std::optional<StockHead> head_by_rows(const std::vector<TextLine>& lines, const Knowledge& knowledge) {
    constexpr std::size_t fewest = 3, name_and_amount = 2;
    std::size_t width = 0, told = 0;
    for (const auto& line : lines) {
        const auto cells = cells_of(line.text, Between::tab);
        if (cells.size() < name_and_amount || has_digit(cells.front())) return std::nullopt;
        width = std::max(width, cells.size());
        const std::string& amount = cells[1];
        const bool digit = !amount.empty() && amount.front() >= '0' && amount.front() <= '9';
        told += digit || amount == "?" || says_none(amount, knowledge) || knowledge.in_list(WordList::stock_some, fold(amount)) ? 1 : 0;
    }
    if (lines.size() < fewest || 2 * told <= lines.size()) return std::nullopt;
    StockHead head;
    head.columns.assign(width, StockColumn::place_or_note);
    head.columns[0] = StockColumn::name;
    head.columns[1] = StockColumn::amount;
    head.amount = 1;
    return head;
}

}  // namespace

bool heads_stock_table(std::string_view line, const Knowledge& knowledge) {
    const auto head = stock_head(line, knowledge);
    return head && head->says_there;
}

std::vector<TextLine> without_stock_table(const std::vector<TextLine>& lines, std::deque<std::string>& rewritten,
                                          const Knowledge& knowledge) {
    std::vector<TextLine> out;
    std::optional<StockHead> head = head_by_rows(lines, knowledge);
    for (const auto& line : lines) {
        if (auto next = stock_head(line.text, knowledge)) {
            head = std::move(next);
            continue;
        }
        auto cells = head ? cells_of(line.text, head->between) : Cells();
        if (cells.size() < 2 || cells.size() <= head->name || cells[head->name].empty()) {
            out.push_back(line);
            continue;
        }
        if (is_rule_of_table(cells)) continue;
        rewritten.push_back(line_of_row(cells, *head, knowledge));
        out.push_back({rewritten.back(), line.place});
    }
    return out;
}

}  // namespace standin
