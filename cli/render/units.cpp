#include "render/units.hpp"

#include <cctype>
#include <cmath>
#include <initializer_list>
#include <string_view>

#include "standin/number_text.hpp"
#include "standin/quantity_text.hpp"
#include "standin/temperature_text.hpp"
#include "words.hpp"

namespace standin::cli {
namespace {

std::string join(std::string metric, std::string us, Units units) {
    if (units == Units::metric) return metric;
    if (units == Units::us) return us;
    return metric + " (" + us + ")";
}

// Whether one of the words stands in the text with no letter at its sides.
bool says(const std::string& text, std::initializer_list<std::string_view> words) {
    const auto letter = [&](std::size_t i) { return i < text.size() && std::isalpha(static_cast<unsigned char>(text[i])); };
    for (const auto word : words)
        for (auto at = text.find(word); at != std::string::npos; at = text.find(word, at + 1))
            if ((at == 0 || !letter(at - 1)) && !letter(at + word.size())) return true;
    return false;
}

}  // namespace

Units units_of(const Formula& formula) {
    int metric = 0, us = 0;
    for (const auto& line : formula.lines) {
        metric += says(line.written, {"g", "kg", "gram", "grams", "ml", "l"});
        us += says(line.written, {"lb", "lbs", "oz", "pound", "pounds", "ounce", "ounces"});
    }
    return us > metric ? Units::us : Units::metric;
}

bool says_weight(const std::string& written) {
    return written.find('%') != std::string::npos || says(written, {"g", "kg", "gram", "grams", "kilo", "kilos", "mg"}) ||
           says(written, {"lb", "lbs", "oz", "pound", "pounds", "ounce", "ounces"});
}

std::string formula_weight(double value, Units units) {
    if (units == Units::us) return ounces_text(value);
    return join(grams(value), ounces_text(value), units);
}

std::string weight(double grams, Units units, double step) {
    constexpr double bare_ounces_from = 50;  // grams
    const int decimals = step >= 1 ? 0 : grams < 0.05 ? 2 : 1;
    const std::string metric = number(grams, decimals) + " g";
    if (units == Units::us && grams < bare_ounces_from) return ounces_text(grams) + " (" + metric + ")";
    return join(metric, ounces_text(grams), units);
}

std::string about(double grams, Units units) {
    const double step = grams >= 1000 ? 10 : grams >= 100 ? 5 : 1;
    return join(number(std::round(grams / step) * step, 0) + " g", ounces_text(grams), units);
}

std::string degrees(double celsius, Units units) {
    constexpr double oven_from = 100, oven_step = 5;  // nobody sets an oven or a pan to one degree
    double fahrenheit = celsius * 1.8 + 32;
    if (celsius > oven_from) fahrenheit = std::round(fahrenheit / oven_step) * oven_step;
    return join(number(celsius, 0) + " C", number(fahrenheit, 0) + " F", units);
}

std::string core(double celsius) { return core_temperature_text(celsius); }

std::string core(const CoreAsked& asked) {
    constexpr double minute = 60;
    if (asked.hold_s <= 0) return core(asked.core_c);
    const bool minutes = asked.hold_s >= 2 * minute;
    return core(asked.core_c) + ", kept for " + number(std::ceil(minutes ? asked.hold_s / minute : asked.hold_s), 0) +
           (minutes ? " min" : " s");
}

std::string length(double mm, Units units) { return join(number(mm, 0) + " mm", inches_text(mm), units); }

std::string metres(double m, Units units) {
    constexpr double feet_a_metre = 1 / 0.3048;
    return join(number(m, 1) + " m", number(std::ceil(m * feet_a_metre), 0) + " ft", units);
}

std::string per_length(double grams_a_metre, Units units) {
    constexpr double metres_a_foot = 0.3048;
    return join(about(grams_a_metre, Units::metric) + " to the metre", about(grams_a_metre * metres_a_foot, Units::us) + " to the foot",
                units);
}

std::string shop_pounds(double grams) {
    constexpr double near = 0.02;  // of a quarter pound: sizes of packets are given in whole grams here and there
    const double quarters = grams / grams_an_ounce / 4, whole = std::round(quarters);
    if (whole < 1 || std::abs(quarters - whole) > near)
        return trimmed_number(grams / grams_an_ounce, grams < grams_an_ounce ? 2 : 1) + " oz";
    const int pounds = static_cast<int>(whole) / 4, rest = static_cast<int>(whole) % 4;
    static const char* const parts[] = {"", "1/4", "1/2", "3/4"};
    return (pounds > 0 ? std::to_string(pounds) + (rest ? " " : "") : std::string()) + parts[rest] + " lb";
}

std::string trimmed_number(double value, int most) { return trimmed_text(value, most); }

std::string duration(double minutes) {
    const double hours = std::floor(minutes / 60), rest = minutes - 60 * hours;
    if (hours < 1) return number(minutes, minutes == std::floor(minutes) ? 0 : 1) + " min";
    return number(hours, 0) + " h" + (rest >= 0.5 ? " " + number(rest, 0) + " min" : "");
}

}  // namespace standin::cli
