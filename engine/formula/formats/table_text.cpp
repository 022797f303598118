#include "formula/formats/table_text.hpp"

#include <algorithm>
#include <cmath>
#include <optional>

#include "core/names.hpp"
#include "formula/amounts/sheet_size.hpp"
#include "formula/amounts/sheet_unit.hpp"
#include "formula/formats/table_cells.hpp"
#include "formula/lexer/digits.hpp"
#include "formula/lexer/line_words.hpp"
#include "formula/line/line_text.hpp"
#include "formula/words/line_asides.hpp"
#include "formula/words/passed_over.hpp"
#include "knowledge/records/word_list.hpp"

namespace standin {
namespace {

enum class Column { name, weight, amount, unit, per, share, prepared, note, other, unknown };

struct ColumnRead {
    Column is = Column::unknown;
    std::string head;  ///< as written
    std::string unit;  ///< of its numbers, or what they are per: "g", "g per kg"
    bool metric = false;
    char sign = 0;  ///< what stands for the point
};

bool amounts_with_unit(std::string_view cell) {
    Cursor cursor(cell);
    const auto amount = amount_at(cursor);
    if (!amount || !amount->parts.front().unit) return false;
    cursor.space();
    return cursor.done();
}

bool is_unit_word(std::string_view cell) { return unit_named(fold(cell)) != nullptr; }

const Unit* weighing_unit(const std::vector<Word>& words) {
    for (const auto& word : words)
        if (const Unit* unit = unit_named(word.folded);
            unit && (unit->dimension == Dimension::mass || unit->dimension == Dimension::volume))
            return unit;
    return nullptr;
}

ColumnRead column_headed(const std::string& head, const Knowledge& knowledge) {
    ColumnRead column;
    column.head = head;
    std::string text = head;
    std::replace_if(
        text.begin(), text.end(), [](char c) { return std::string_view("()[]/:,").find(c) != std::string_view::npos; }, ' ');
    const auto words = words_of(text);
    const auto says = [&](WordList list) {
        return std::any_of(words.begin(), words.end(), [&](const Word& word) { return knowledge.in_list(list, word.folded); });
    };
    const Unit* unit = weighing_unit(words);
    column.metric = unit && is_metric(*unit);
    const bool slash = head.find('/') != std::string::npos;
    const auto mass_words = std::count_if(words.begin(), words.end(), [](const Word& word) {
        const Unit* one = unit_named(word.folded);
        return one && one->dimension == Dimension::mass;
    });
    const bool number = has_digit(head);
    const bool of_batch = std::all_of(words.begin(), words.end(), [&](const Word& word) {  // "10 kg", "for 5 kg batch", and no food
        return has_digit(word.folded) || unit_named(word.folded) != nullptr || knowledge.in_list(WordList::sheet_size, word.folded) ||
               knowledge.in_list(WordList::column_amount, word.folded) || knowledge.in_list(WordList::percent_word, word.folded) ||
               knowledge.in_list(WordList::sheet_of_meat, word.folded);
    });
    if (number && !of_batch) return column;
    if (head.find('%') != std::string::npos || says(WordList::percent_word)) column.is = Column::share;
    else if (mass_words > 1 && (slash || says(WordList::per))) column = {Column::per, head, head, true, 0};
    else if (says(WordList::column_unit) && !unit) column.is = Column::unit;
    else if (unit && !number) column = {Column::weight, head, std::string(unit->word), column.metric, 0};
    else if (says(WordList::column_name)) column.is = Column::name;
    else if (says(WordList::column_amount) || (unit && number)) column.is = Column::amount;
    else if (says(WordList::column_prepared)) column.is = Column::prepared;
    else if (says(WordList::column_note)) column.is = Column::note;
    else if (says(WordList::column_other) || head == "#") column.is = Column::other;
    return column;
}

struct TableRow {
    const TextLine* line = nullptr;
    Cells cells;
};

class TableReader {
public:
    TableReader(std::vector<TableRow> rows, const Knowledge& knowledge) : rows_(std::move(rows)), knowledge_(knowledge) {}

    // Whether it is one, and what its columns are.
    bool read() {
        for (const auto& row : rows_) width_ = std::max(width_, row.cells.size());
        take_head();
        if (!headed_ && !even()) return false;
        columns_.resize(width_);
        for (std::size_t i = 0; i < width_; ++i) judge(i);
        settle_name();
        if (!name_) return false;
        for (std::size_t i = 0; i < width_; ++i)
            if (columns_[i].is == Column::per) take_whole_column(i);
        const bool figures = std::any_of(columns_.begin(), columns_.end(), [](const ColumnRead& column) {
            return column.is == Column::weight || column.is == Column::per || column.is == Column::share || column.is == Column::amount;
        });
        constexpr std::size_t needs_no_table = 2;
        return figures && (headed_ || width_ > needs_no_table);
    }

    void write(PlainTables& out) {
        if (headed_) out.passed.push_back(*rows_[head_].line);
        for (std::size_t i = 0; i < rows_.size(); ++i)
            if (!(headed_ && i == head_) && !is_rule_of_table(rows_[i].cells)) write_row(rows_[i], out);
        for (const auto& column : columns_)
            if (column.is == Column::share) {
                const Whole whole = whole_in_words(column.head, knowledge_);
                if (whole != Whole::unsaid) out.shares_of = whole;
            }
        if (!used_) return;
        Reason told = reason_about(ReasonKind::from_table, head_of(*used_));
        for (std::size_t i = 0; i < width_; ++i)
            if (i != *used_ && i != *name_ && columns_[i].is != Column::unit && columns_[i].is != Column::prepared &&
                columns_[i].is != Column::note && !columns_[i].head.empty())
                told.foods.push_back("\"" + columns_[i].head + "\"");
        out.told.push_back(std::move(told));
    }

private:
    std::string head_of(std::size_t i) const { return columns_[i].head.empty() ? std::to_string(i + 1) : columns_[i].head; }

    // The first row, where its cells are words for columns.
    void take_head() {
        if (rows_.empty() || read_line(rows_[head_].line->text, Origin("", {1, 1}), knowledge_)) return;
        std::size_t known = 0, filled = 0;
        std::vector<ColumnRead> heads;
        for (const auto& cell : rows_[head_].cells) {
            heads.push_back(column_headed(cell, knowledge_));
            filled += cell.empty() ? 0 : 1;
            known += heads.back().is == Column::unknown ? 0 : 1;
        }
        const bool names_food = std::any_of(rows_[head_].cells.begin(), rows_[head_].cells.end(), [&](const std::string& cell) {
            return knowledge_.ingredient_named(cell) != nullptr || is_bare_number(cell);
        });
        const bool figures = std::any_of(heads.begin(), heads.end(), [](const ColumnRead& head) {
            return head.is == Column::weight || head.is == Column::amount || head.is == Column::share || head.is == Column::per ||
                   head.is == Column::unit;
        });
        headed_ = !names_food && figures && known >= 1 && 2 * known >= filled && !is_row_of_food(heads);
        if (headed_) columns_ = std::move(heads);
    }

    // "Peanut powder  40 g", "Truffle  q.s.": an amount beside words that are none of columns is a row whose food is not understood.
    bool is_row_of_food(const std::vector<ColumnRead>& heads) const {
        bool figures_alone = true, words_of_columns = true;
        for (const auto& head : heads) {
            if (head.head.empty()) continue;
            const bool figure = has_digit(head.head);
            const bool amount = (figure && head.is != Column::unknown) || is_vague(head.head);  // "Chives, cut 3 mm" is none
            if (amount) continue;
            const bool names_foods = head.is == Column::name || head.is == Column::unknown;
            if (!names_foods) figures_alone = false;
            else words_of_columns = words_of_columns && all_said_of_columns(head.head);
        }
        return figures_alone && !words_of_columns;
    }

    bool is_vague(const std::string& cell) const {
        return knowledge_.in_list(WordList::vague, fold(cell)) || !vague_amount(cell, knowledge_).empty();
    }

    bool all_said_of_columns(const std::string& head) const {
        const auto words = words_of(head);
        return std::all_of(words.begin(), words.end(), [&](const Word& word) {
            return knowledge_.in_list(WordList::column_name, word.folded) || knowledge_.in_list(WordList::column_amount, word.folded) ||
                   knowledge_.in_list(WordList::column_other, word.folded) || knowledge_.in_list(WordList::sheet_of_meat, word.folded) ||
                   knowledge_.in_list(WordList::heading, word.folded) || knowledge_.in_list(WordList::sheet_size, word.folded);
        });
    }

    bool even() const {
        return std::all_of(rows_.begin(), rows_.end(), [&](const TableRow& row) { return row.cells.size() == width_; });
    }

    std::vector<std::string> body(std::size_t column) const {
        std::vector<std::string> all;
        for (std::size_t i = 0; i < rows_.size(); ++i)
            if (!(headed_ && i == head_) && !is_rule_of_table(rows_[i].cells) && column < rows_[i].cells.size() &&
                !is_empty_cell(rows_[i].cells[column]))
                all.push_back(rows_[i].cells[column]);
        return all;
    }

    // What a column is by what stands in it, where its head does not say.
    void judge(std::size_t i) {
        ColumnRead& column = columns_[i];
        const auto cells = body(i);
        const auto most = [&](auto is) {
            const auto count = std::count_if(cells.begin(), cells.end(), is);
            return !cells.empty() && 2 * static_cast<std::size_t>(count) > cells.size();
        };
        column.sign = decimal_sign(cells);
        if (column.is == Column::unknown || column.is == Column::amount) {
            if (most(is_unit_word)) column.is = Column::unit;
            else if (most(amounts_with_unit)) {
                Cursor cursor(cells.front());
                const auto amount = amount_at(cursor);
                const Unit* unit = amount ? amount->parts.front().unit : nullptr;
                column.is = unit && unit->dimension == Dimension::percent ? Column::share : Column::weight;
                column.metric = unit && is_metric(*unit);
            } else if (most(is_bare_number)) {
                column.is = column.is == Column::amount || !headed_ ? Column::amount : Column::other;
            }
        }
    }

    void settle_name() {
        std::size_t best = 0;
        for (std::size_t i = 0; i < width_; ++i) {
            if (columns_[i].is == Column::name) {
                name_ = i;
                return;
            }
            if (columns_[i].is != Column::unknown) continue;
            const auto cells = body(i);
            const auto words = static_cast<std::size_t>(std::count_if(cells.begin(), cells.end(), [](const std::string& cell) {
                return !is_bare_number(cell) && !amounts_with_unit(cell) && !is_unit_word(cell);
            }));
            if (words > best) {
                best = words;
                name_ = i;
            }
        }
    }

    // "g/kg meat" above the meat itself, or above all of the batch: what adds up to the base is weights.
    void take_whole_column(std::size_t i) {
        constexpr double rounded = 0.02;  // judgement
        const auto told = unit_in_title(columns_[i].head, knowledge_);
        if (!told || !told->per) return;
        double all = 0, meat = 0;
        for (std::size_t k = 0; k < rows_.size(); ++k) {
            const auto& cells = rows_[k].cells;
            if ((headed_ && k == head_) || i >= cells.size() || *name_ >= cells.size() || !is_bare_number(cells[i])) continue;
            const std::string figure = plain_decimals(cells[i], columns_[i].sign);
            Cursor number(figure);
            const auto value = number_at(number, false);
            const auto row = read_line("100 g " + cells[*name_], Origin("", rows_[k].line->place), knowledge_);
            if (!value || !row) continue;
            all += value->band.mid * told->unit->size.mid;
            if (knowledge_.ingredient(row->line.ingredient)->meat) meat += value->band.mid * told->unit->size.mid;
        }
        const auto is_base = [&](double grams) { return std::abs(grams - told->per->grams) <= rounded * told->per->grams; };
        if (!is_base(all) && !is_base(meat)) return;
        columns_[i].is = Column::weight;
        columns_[i].unit = std::string(told->unit->word);
    }

    std::optional<std::size_t> unit_column(const TableRow& row, std::size_t amount) const {
        for (const std::size_t i : {amount + 1, amount - 1})
            if (i < row.cells.size() && columns_[i].is == Column::unit && is_unit_word(row.cells[i])) return i;
        return std::nullopt;
    }

    // The amount that column `i` gives to a row; empty where it gives none.
    std::string amount_in(const TableRow& row, std::size_t i) const {
        if (i >= row.cells.size() || is_empty_cell(row.cells[i])) return {};
        const std::string& cell = row.cells[i];
        const ColumnRead& column = columns_[i];
        if (!is_bare_number(cell)) return amounts_with_unit(cell) ? cell : std::string();
        const std::string number = plain_decimals(cell, column.sign);
        if (column.is == Column::share) return number + " %";
        if (column.is == Column::per) return number + " " + column.unit;
        if (const auto unit = unit_column(row, i)) return number + " " + row.cells[*unit];
        return column.unit.empty() ? std::string() : number + " " + column.unit;
    }

    // Weights before shares, grams before ounces, the first before the next.
    std::vector<std::size_t> by_preference() const {
        std::vector<std::size_t> all;
        const auto take = [&](auto fits) {
            for (std::size_t i = 0; i < width_; ++i)
                if (fits(columns_[i])) all.push_back(i);
        };
        const auto weighs = [](const ColumnRead& column) { return column.is == Column::weight || column.is == Column::amount; };
        take([&](const ColumnRead& column) { return weighs(column) && (column.metric || column.is == Column::amount); });
        take([&](const ColumnRead& column) { return weighs(column) && !column.metric && column.is != Column::amount; });
        take([](const ColumnRead& column) { return column.is == Column::per; });
        take([](const ColumnRead& column) { return column.is == Column::share; });
        return all;
    }

    void keep(std::string text, const TableRow& row, PlainTables& out) {
        out.rewritten.push_back(std::move(text));
        out.lines.push_back({out.rewritten.back(), row.line->place});
    }

    // Words that are in no line may still hold something that can hurt.
    void pass_others(const TableRow& row, PlainTables& out) const {
        std::string others;
        for (std::size_t i = 0; i < row.cells.size(); ++i)
            if (columns_[i].is == Column::other && !is_bare_number(row.cells[i]) && !amounts_with_unit(row.cells[i]) &&
                !is_empty_cell(row.cells[i]))
                others += (others.empty() ? "" : ", ") + row.cells[i];
        pass(std::move(others), row, out);
    }

    static void pass(std::string text, const TableRow& row, PlainTables& out) {
        if (text.empty()) return;
        out.rewritten.push_back(std::move(text));
        out.passed.push_back({out.rewritten.back(), row.line->place});
    }

    // "roasted, chopped", "in brine, drained": what a note says of the food goes with it. A clause that is not understood beside it is
    // passed over where it cannot change the food: "from the market".
    std::string with_note(const std::string& text, const std::string& note, const TableRow& row, PlainTables& out) const {
        const auto reads = [&](const std::string& line) { return read_line(line, Origin("", row.line->place), knowledge_).has_value(); };
        if (reads(text + ", " + note) || !reads(text)) return text + ", " + note;
        std::string taken = text, passed;
        for (const auto& clause : cells_of(note, Between::comma)) {
            if (clause.empty()) continue;
            const bool tells = changes_or_prepares(clause);
            if (tells || reads(taken + ", " + clause)) taken += ", " + clause;
            else passed += (passed.empty() ? "" : ", ") + clause;
        }
        pass(std::move(passed), row, out);
        return taken;
    }

    bool changes_or_prepares(const std::string& clause) const {
        const auto words = words_of(clause);
        for (std::size_t i = 0; i < words.size(); ++i)
            if (changes_food(words[i].folded, knowledge_) || knowledge_.preparation_named(words[i].raw)) return true;
        return false;
    }

    void write_row(const TableRow& row, PlainTables& out) {
        const std::string name = *name_ < row.cells.size() ? row.cells[*name_] : std::string();
        const bool alone =
            std::all_of(row.cells.begin(), row.cells.end(), [&](const std::string& cell) { return is_empty_cell(cell) || cell == name; });
        if (name.empty()) return out.passed.push_back(*row.line);
        if (alone) return keep(name + (name.back() == ':' ? "" : ":"), row, out);
        const std::size_t weights = static_cast<std::size_t>(std::count_if(row.cells.begin(), row.cells.end(), amounts_with_unit));
        const bool reads = !headed_ && read_line(row.line->text, Origin("", row.line->place), knowledge_).has_value();
        if (reads || weights + 1 == row.cells.size())
            return out.lines.push_back(*row.line);  // reads by itself, each amount held against the other
        for (const auto i : by_preference()) {
            const std::string amount = amount_in(row, i);
            if (amount.empty()) continue;
            if (!used_) used_ = i;
            std::string text = columns_[i].is == Column::share || columns_[i].is == Column::per ? name + " " + amount : amount + " " + name;
            for (std::size_t k = 0; k < row.cells.size(); ++k) {
                const bool told = k != i && k != *name_ && !is_empty_cell(row.cells[k]);
                if (!told || (columns_[k].is != Column::prepared && columns_[k].is != Column::unknown)) continue;
                text += ", " + row.cells[k];
            }
            for (std::size_t k = 0; k < row.cells.size(); ++k)
                if (k != i && k != *name_ && columns_[k].is == Column::note && !is_empty_cell(row.cells[k]))
                    text = with_note(text, row.cells[k], row, out);
            pass_others(row, out);
            return keep(std::move(text), row, out);
        }
        out.lines.push_back(*row.line);
    }

    std::vector<TableRow> rows_;
    const Knowledge& knowledge_;
    std::vector<ColumnRead> columns_;
    std::size_t width_ = 0, head_ = 0;
    bool headed_ = false;
    std::optional<std::size_t> name_, used_;
};

// The lines from `first` on that are cut into cells in this way.
std::vector<TableRow> rows_from(const std::vector<TextLine>& lines, std::size_t first, Between between) {
    std::vector<TableRow> rows;
    for (std::size_t i = first; i < lines.size(); ++i) {
        if (i > first && lines[i].place.line > lines[i - 1].place.line + 1) break;
        auto cells = cells_of(lines[i].text, between);
        if (cells.size() < 2) break;
        rows.push_back({&lines[i], std::move(cells)});
    }
    return rows;
}

}  // namespace

PlainTables without_tables(const std::vector<TextLine>& lines, const Knowledge& knowledge) {
    constexpr std::size_t fewest_rows = 3;
    PlainTables out;
    for (std::size_t i = 0; i < lines.size();) {
        std::size_t taken = 0;
        for (const auto between : all_between) {
            auto rows = rows_from(lines, i, between);
            if (rows.size() < fewest_rows) continue;
            const std::size_t count = rows.size();
            TableReader table(std::move(rows), knowledge);
            if (!table.read()) continue;
            table.write(out);
            taken = count;
            break;
        }
        if (taken == 0) out.lines.push_back(lines[i]);
        i += std::max<std::size_t>(taken, 1);
    }
    return out;
}

}  // namespace standin
