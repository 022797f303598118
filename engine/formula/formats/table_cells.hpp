// Lines cut into the cells of a table.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace standin {

using Cells = std::vector<std::string>;

enum class Between { pipe, tab, semicolon, comma, blanks };

inline constexpr Between all_between[]{Between::pipe, Between::tab, Between::semicolon, Between::comma, Between::blanks};

/// Trimmed, without the marks of bold type; quotes around a cell keep what stands between them together.
Cells cells_of(std::string_view line, Between between);

/// "|---|---:|"
bool is_rule_of_table(const Cells& cells);

/// "3500", "2,5", "1/2", and no unit.
bool is_bare_number(std::string_view cell);

/// Empty, or a dash for nothing.
bool is_empty_cell(std::string_view cell);

/// What stands for the point in numbers such as these: '.' or ',', or nothing where that is open.
char decimal_sign(const std::vector<std::string>& numbers);

/// "6.000" as "6", "1,250" as "1.2500": a number that can be read in one way only, once it is known what stands for its point.
std::string plain_decimals(std::string number, char sign);

}  // namespace standin
