// Numbers as text and back, the same under every locale: a decimal point, no grouping. The one place where digits are made or read.
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace standin {

/// The whole of `text` as a finite number ("5.5", "-3", "1e-3"); nothing where anything else stands in it.
std::optional<double> number_in(std::string_view text);

/// The finite number that `text` starts with; `text` then goes on behind it. Untouched where it starts with none.
std::optional<double> take_number(std::string_view& text);

/// So many decimals: "1.50". Nothing rounds to "-0".
std::string fixed_text(double value, int decimals);

/// At most so many decimals, none at the end that are zero: "1.5", "2".
std::string trimmed_text(double value, int decimals);

/// So many figures that count, without an exponent and without idle zeros behind the point: "1230", "0.0123".
std::string figures_text(double value, int figures);

/// As short as reads back to the very same number.
std::string exact_text(double value);

/// The next number of so many decimals, never down: for what must not be undercut, such as a core temperature.
double rounded_up(double value, int decimals);

}  // namespace standin
