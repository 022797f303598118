#include "standin/number_text.hpp"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>

namespace standin {
namespace {

using Digits = std::array<char, 400>;  // the longest double without an exponent has 309 digits before the point

template <class... How>
std::string text_of(double value, How... how) {
    Digits digits;
    const auto [end, fault] = std::to_chars(digits.data(), digits.data() + digits.size(), value, how...);
    return fault == std::errc{} ? std::string(digits.data(), end) : "?";
}

void drop_sign_of_nothing(std::string& text) {
    if (text.front() == '-' && text.find_first_of("123456789") == std::string::npos) text.erase(0, 1);
}

void drop_idle_zeros(std::string& text) {
    if (text.find('.') == std::string::npos) return;
    text.erase(text.find_last_not_of('0') + 1);
    if (text.back() == '.') text.pop_back();
}

}  // namespace

std::optional<double> take_number(std::string_view& text) {
    double number = 0;
    const auto [end, fault] = std::from_chars(text.data(), text.data() + text.size(), number);
    if (fault != std::errc{} || !std::isfinite(number)) return std::nullopt;
    text.remove_prefix(static_cast<std::size_t>(end - text.data()));
    return number;
}

std::optional<double> number_in(std::string_view text) {
    if (text.starts_with('+') && !text.starts_with("+-")) text.remove_prefix(1);
    const auto number = take_number(text);
    return text.empty() ? number : std::nullopt;
}

std::string fixed_text(double value, int decimals) {
    if (!std::isfinite(value)) return "?";
    std::string text = text_of(value, std::chars_format::fixed, decimals);
    drop_sign_of_nothing(text);
    return text;
}

std::string trimmed_text(double value, int decimals) {
    std::string text = fixed_text(value, decimals);
    drop_idle_zeros(text);
    return text;
}

std::string figures_text(double value, int figures) {
    if (!std::isfinite(value)) return "?";
    if (value == 0) return "0";
    // Rounded to its figures first: 9.996 to three of them is 10.0, which has one place less behind the point.
    double rounded = value;
    const std::string scientific = text_of(value, std::chars_format::scientific, figures - 1);
    std::from_chars(scientific.data(), scientific.data() + scientific.size(), rounded);
    const int before = static_cast<int>(std::floor(std::log10(std::abs(rounded)))) + 1;
    return trimmed_text(rounded, std::max(0, figures - before));
}

std::string exact_text(double value) {
    if (!std::isfinite(value)) return "?";
    std::string text = text_of(value);
    drop_sign_of_nothing(text);
    return text;
}

double rounded_up(double value, int decimals) {
    constexpr double rounding = 1e-6;  // what arithmetic may have added
    const double scale = std::pow(10.0, decimals);
    return std::ceil(value * scale - rounding) / scale;
}

}  // namespace standin
