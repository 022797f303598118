#include "narrate/quantity.hpp"

#include <cmath>

#include "standin/number_text.hpp"
#include "standin/quantity_text.hpp"

namespace standin {
namespace {

std::string joined(const std::string& metric, const std::string& us, Units units) {
    if (units == Units::metric) return metric;
    return units == Units::us ? us : metric + " (" + us + ")";
}

// " salt" of "g salt"; empty where it is no weight, or a share: "g in 100 g".
std::string_view grams_of(std::string_view unit) {
    if (!unit.starts_with("g ") || unit.starts_with("g in ") || unit.starts_with("g for ")) return {};
    return unit.substr(1);
}

std::string with_unit(double value, const std::string& unit, Units units) {
    if (unit == "g") return weight_in(value, units);
    if (unit == "C") return temperature_in(value, units);
    if (const auto of = grams_of(unit); units != Units::metric && !of.empty())
        return joined(three_figures(value) + " " + unit, ounces_text(value) + std::string(of), units);
    return three_figures(value) + (unit.empty() ? "" : " " + unit);
}

}  // namespace

std::string three_figures(double value) {
    const double size = std::abs(value);
    return fixed_text(value, size >= 100 ? 0 : size >= 10 ? 1 : 2);
}

std::string weight_in(double grams, Units units) {
    const std::string metric = trimmed_text(grams, grams >= 100 ? 0 : grams >= 10 ? 1 : 2);
    return joined(metric + " g", ounces_text(grams), units);
}

std::string temperature_in(double celsius, Units units) {
    const double rounded = std::round(celsius);
    return joined(fixed_text(celsius, std::abs(celsius - rounded) < 0.05 ? 0 : 1) + " C", fixed_text(celsius * 1.8 + 32, 0) + " F", units);
}

bool is_nil(const Figure& figure) { return figure.before && three_figures(*figure.before) == three_figures(figure.after); }

std::string moves(const Figure& figure, Units units) {
    const std::string after = with_unit(figure.after, figure.unit, units);
    if (!figure.before || is_nil(figure)) return figure.what + " " + after;
    const bool weight = figure.unit == "g" || (units != Units::metric && !grams_of(figure.unit).empty());
    const std::string before = weight               ? weight_in(*figure.before, units)
                               : figure.unit == "C" ? temperature_in(*figure.before, units)
                                                    : three_figures(*figure.before);
    return figure.what + " " + before + " -> " + after;
}

}  // namespace standin
