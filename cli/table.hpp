// Columns that line up.
#pragma once

#include <string>
#include <vector>

#include "terminal.hpp"

namespace standin::cli {

enum class Align { left, right };

struct Column {
    std::string head;
    Align align = Align::left;
};

/// Left-aligned columns wrap where the page is too narrow, the widest first, between words.
class Table {
public:
    explicit Table(std::vector<Column> columns) : columns_(std::move(columns)) {}

    void row(std::vector<std::string> cells);
    bool empty() const { return rows_.empty(); }

    /// Each line indented and ended; heads only where any column has one.
    std::string page(const Look& look, int indent = 2) const;

private:
    std::vector<int> widths(int room) const;
    int longest_word(std::size_t column) const;
    std::string line(const std::vector<std::string>& cells, const std::vector<int>& widths, int indent) const;

    std::vector<Column> columns_;
    std::vector<std::vector<std::string>> rows_;
};

}  // namespace standin::cli
