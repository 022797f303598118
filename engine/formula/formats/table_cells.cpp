#include "formula/formats/table_cells.hpp"

#include <algorithm>
#include <cctype>

#include "formula/lexer/digits.hpp"

namespace standin {
namespace {

bool is_figure(char c) { return c >= '0' && c <= '9'; }

std::string plain_cell(std::string_view text) {
    constexpr std::string_view marks = " \t*_\"";
    const auto first = text.find_first_not_of(marks);
    if (first == std::string_view::npos) return {};
    return std::string(text.substr(first, text.find_last_not_of(marks) - first + 1));
}

// How many letters of the sign between cells stand here; 0: none.
std::size_t sign_at(std::string_view line, std::size_t at, Between between) {
    constexpr std::size_t fewest_blanks = 2;
    switch (between) {
        case Between::pipe:
            return line[at] == '|';
        case Between::tab:
            return line[at] == '\t';
        case Between::semicolon:
            return line[at] == ';';
        case Between::comma:
            return line[at] == ',';
        case Between::blanks: {
            const auto end = std::min(line.find_first_not_of(' ', at), line.size());
            return end - at >= fewest_blanks ? end - at : 0;
        }
    }
    return 0;
}

// Figures behind the last `sign`; none where it does not stand once in the number.
std::size_t figures_behind(std::string_view number, char sign) {
    const auto at = number.find(sign);
    if (at == std::string_view::npos || number.find(sign, at + 1) != std::string_view::npos) return 0;
    const auto behind = number.substr(at + 1);
    return std::all_of(behind.begin(), behind.end(), is_figure) ? behind.size() : 0;
}

}  // namespace

Cells cells_of(std::string_view line, Between between) {
    Cells cells;
    std::string cell;
    bool quoted = false;
    for (std::size_t i = 0; i < line.size();) {
        const bool quotes = between == Between::comma || between == Between::semicolon || between == Between::tab;
        if (quotes && line[i] == '"') quoted = !quoted;
        const std::size_t sign = quoted ? 0 : sign_at(line, i, between);
        if (sign > 0) {
            cells.push_back(plain_cell(cell));
            cell.clear();
        } else {
            cell += line[i];
        }
        i += std::max<std::size_t>(sign, 1);
    }
    cells.push_back(plain_cell(cell));
    if (between == Between::pipe) {
        if (!cells.empty() && cells.front().empty()) cells.erase(cells.begin());
        if (!cells.empty() && cells.back().empty() && plain_cell(line).back() == '|') cells.pop_back();
    }
    return cells;
}

bool is_rule_of_table(const Cells& cells) {
    return std::all_of(cells.begin(), cells.end(),
                       [](const std::string& cell) { return cell.find_first_not_of("-:=+ ") == std::string::npos; }) &&
           std::any_of(cells.begin(), cells.end(), [](const std::string& cell) { return cell.size() > 1; });
}

bool is_bare_number(std::string_view cell) {
    if (!has_digit(cell)) return false;
    return cell.find_first_not_of("0123456789.,/ ") == std::string_view::npos;
}

bool is_empty_cell(std::string_view cell) {
    return cell.find_first_not_of("-. ") == std::string_view::npos || cell == "\u2013" || cell == "\u2014";
}

char decimal_sign(const std::vector<std::string>& numbers) {
    constexpr std::size_t thousand = 3;  // figures
    for (const char sign : {'.', ','}) {
        const bool told = std::any_of(numbers.begin(), numbers.end(), [&](const std::string& number) {
            const std::size_t figures = figures_behind(number, sign);
            return figures > 0 && (figures != thousand || number.front() == '0' || number.front() == sign);
        });
        if (told) return sign;
    }
    return 0;
}

std::string plain_decimals(std::string number, char sign) {
    constexpr std::size_t thousand = 3;
    if (sign == 0 || figures_behind(number, sign) == 0) return number;
    std::replace(number.begin(), number.end(), sign, '.');
    if (number.size() - number.find('.') == thousand + 1) number += '0';
    while (number.back() == '0' && number.find_last_not_of('0') == number.find('.')) number.pop_back();
    if (number.back() == '.') number.pop_back();
    return number;
}

}  // namespace standin
