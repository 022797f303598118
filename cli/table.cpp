#include "table.hpp"

#include <algorithm>
#include <numeric>

#include "words.hpp"

namespace standin::cli {
namespace {

constexpr int gap = 2;
constexpr int narrowest = 8;  // a wrapped column

std::string spaces(int n) { return std::string(static_cast<std::size_t>(std::max(n, 0)), ' '); }

}  // namespace

void Table::row(std::vector<std::string> cells) {
    cells.resize(columns_.size());
    rows_.push_back(std::move(cells));
}

std::vector<int> Table::widths(int room) const {
    std::vector<int> widths;
    for (std::size_t c = 0; c < columns_.size(); ++c) {
        int w = display_width(columns_[c].head);
        for (const auto& row : rows_) w = std::max(w, display_width(row[c]));
        widths.push_back(w);
    }
    const auto total = [&] { return std::accumulate(widths.begin(), widths.end(), gap * (static_cast<int>(widths.size()) - 1)); };
    // No narrower than the longest word of a column, so that none is broken; only where that is not enough are words cut.
    for (const bool whole_words : {true, false})
        while (total() > room) {
            int* widest = nullptr;
            for (std::size_t c = 0; c < widths.size(); ++c) {
                const int least = whole_words ? std::max(narrowest, longest_word(c)) : narrowest;
                if (columns_[c].align == Align::left && widths[c] > least && (!widest || widths[c] > *widest)) widest = &widths[c];
            }
            if (!widest) break;
            --*widest;
        }
    return widths;
}

int Table::longest_word(std::size_t column) const {
    int longest = 0;
    const auto look_at = [&](const std::string& cell) {
        for (std::size_t at = 0; at < cell.size();) {
            const auto end = std::min(cell.find(' ', at), cell.size());
            longest = std::max(longest, display_width(std::string_view(cell).substr(at, end - at)));
            at = end + 1;
        }
    };
    look_at(columns_[column].head);
    for (const auto& row : rows_) look_at(row[column]);
    return longest;
}

std::string Table::line(const std::vector<std::string>& cells, const std::vector<int>& widths, int indent) const {
    std::vector<std::vector<std::string>> parts;
    std::size_t height = 1;
    for (std::size_t c = 0; c < cells.size(); ++c) {
        parts.push_back(display_width(cells[c]) <= widths[c] ? std::vector<std::string>{cells[c]} : wrapped(cells[c], widths[c]));
        height = std::max(height, parts.back().size());
    }
    std::string out;
    for (std::size_t h = 0; h < height; ++h) {
        std::string text = spaces(indent);
        for (std::size_t c = 0; c < cells.size(); ++c) {
            const std::string cell = h < parts[c].size() ? parts[c][h] : "";
            const auto pad = spaces(widths[c] - display_width(cell));
            text += (c == 0 ? "" : spaces(gap)) + (columns_[c].align == Align::right ? pad + cell : cell + pad);
        }
        text.erase(text.find_last_not_of(' ') + 1);
        out += text + "\n";
    }
    return out;
}

std::string Table::page(const Look& look, int indent) const {
    const auto w = widths(look.width - indent);
    std::vector<std::string> heads;
    for (const auto& column : columns_) heads.push_back(column.head);
    std::string out;
    if (std::any_of(heads.begin(), heads.end(), [](const std::string& h) { return !h.empty(); })) {
        auto head = line(heads, w, indent);
        head.pop_back();
        out += look.dim(head) + "\n";
    }
    for (const auto& row : rows_) out += line(row, w, indent);
    return out;
}

}  // namespace standin::cli
