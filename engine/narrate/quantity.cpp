#include "narrate/quantity.hpp"

#include <cmath>

#include "standin/number_text.hpp"
#include "standin/quantity_text.hpp"

namespace standin {
namespace {

std::string with_unit(double value, const std::string& unit, Units units) {
    if (unit == "g") return weight_in(value, units);
    if (unit == "C") return temperature_in(value, units);
    return three_figures(value) + (unit.empty() ? "" : " " + unit);
}

std::string joined(const std::string& metric, const std::string& us, Units units) {
    if (units == Units::metric) return metric;
    return units == Units::us ? us : metric + " (" + us + ")";
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
    const bool converts = figure.unit == "g" || figure.unit == "C";
    return figure.what + " " + (converts ? with_unit(*figure.before, figure.unit, units) : three_figures(*figure.before)) + " -> " + after;
}

}  // namespace standin
