// Quantities in sentences that were written in metric.
#include <cmath>

#include "core/written_quantity.hpp"
#include "narrate/quantity.hpp"
#include "standin/number_text.hpp"
#include "standin/quantity_text.hpp"
#include "standin/temperature_text.hpp"

namespace standin {
namespace {

std::string one_in_us(double value, std::string_view unit) {
    if (unit == "C") return fixed_text(value * 1.8 + 32, 0) + " F";
    if (unit == "mm") return inches_text(value);
    constexpr double kilo = 1000;
    return ounces_text(unit == "kg" ? kilo * value : value);
}

std::string in_us(const WrittenQuantity& q) {
    const std::string last = one_in_us(q.last, q.unit);
    if (!q.first) return last;
    std::string first = one_in_us(*q.first, q.unit);
    const auto unit = last.substr(last.rfind(' '));
    if (first.size() > unit.size() && first.substr(first.size() - unit.size()) == unit) first.erase(first.size() - unit.size());
    return first + (q.unit == "C" ? "-" : " to ") + last;
}

std::string never_warmer(double celsius) {
    constexpr double given_back = 0.09;  // a rule in whole degrees Fahrenheit stands in the knowledge to 0.1 C
    return fixed_text(std::floor(celsius * 1.8 + 32 + given_back), 0) + " F";
}

std::string in_both_or_one(const std::string& metric, const std::string& us, Units units) {
    return units == Units::metric ? metric : units == Units::us ? us : metric + " (" + us + ")";
}

std::string in_braces(std::string_view inside, Units units) {
    const auto mark = marked_quantity(inside);
    if (!mark) return std::string(inside);
    const WrittenQuantity& q = mark->quantity;
    if (mark->core) return core_temperature_text(q.last);
    if (!mark->or_colder) return in_both_or_one(std::string(inside), in_us(q), units);
    return in_both_or_one(std::string(inside.substr(0, q.end)), never_warmer(q.last), units) + std::string(inside.substr(q.end));
}

// Outside braces.
std::string plainly(std::string_view text, Units units) {
    if (units == Units::metric) return std::string(text);
    std::string out;
    std::size_t done = 0, at = 0;
    while (const auto q = next_quantity(text, at)) {
        out += text.substr(done, at - done);
        out += in_both_or_one(std::string(text.substr(at, q->end - at)), in_us(*q), units);
        done = at = q->end;
    }
    return out + std::string(text.substr(done));
}

}  // namespace

std::string in_units(const std::string& sentence, Units units) {
    std::string out;
    std::string_view rest = sentence;
    while (!rest.empty()) {
        const auto open = rest.find('{'), close = rest.find('}', open == std::string_view::npos ? 0 : open);
        if (open == std::string_view::npos || close == std::string_view::npos) break;
        out += plainly(rest.substr(0, open), units) + in_braces(rest.substr(open + 1, close - open - 1), units);
        rest.remove_prefix(close + 1);
    }
    return out + plainly(rest, units);
}

}  // namespace standin
