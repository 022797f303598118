#include "pages/sheet_words.hpp"

#include <cmath>

#include "pages/units.hpp"
#include "words.hpp"

namespace standin::cli {
namespace {

constexpr double enough_to_say = 0.025;  // share of a weight; less is nothing worth a word

std::string spread(const Band& grams, Units units) {
    if (units == Units::us) return about(grams.low, units) + " to " + about(grams.high, units);
    std::string low = about(grams.low, Units::metric);
    low.erase(low.size() - 2);  // the unit is said once
    const std::string metric = low + "-" + about(grams.high, Units::metric);
    return units == Units::metric ? metric : metric + " (" + spread(grams, Units::us) + ")";
}

void say(std::string& text, const std::string& more) { text += (text.empty() ? "" : ", ") + more; }

std::string several(const std::string& unit, double count) {
    if (count == 1) return unit;
    if (unit == "bunch") return "bunches";
    if (unit == "jar or piece") return "jars or pieces";
    return unit + "s";
}

}  // namespace

std::string pieces(const SheetYield& y, Units units) {
    const std::string many = y.shape == "link" ? "links" : "patties";
    std::string text = number(y.pieces, 0) + " " + (y.pieces == 1 ? y.shape : many) + " of " + about(y.piece_g, units) + " raw, " +
                       spread(y.piece_cooked_g, units) + " cooked";
    if (y.length_mm && y.diameter_mm) {
        text += "; " + length(*y.length_mm, units) + " long in a casing of " + length(*y.diameter_mm, units);
        if (y.casing_m) text += ", " + metres(*y.casing_m, units) + " of it";
    }
    return text;
}

std::string measured(const SheetStep& step, Units units) {
    std::string text;
    if (step.minutes) say(text, duration(*step.minutes));
    if (step.plate_mm) say(text, "the " + length(*step.plate_mm, units) + " plate");
    if (step.temperature_c) {
        switch (step.temperature) {
            case TemperatureIs::at:
                say(text, "at " + degrees(*step.temperature_c, units));
                break;
            case TemperatureIs::at_most:
                say(text, "no warmer than " + degrees(*step.temperature_c, units));
                break;
            case TemperatureIs::at_least:
                say(text, "core " + core(*step.temperature_c));
                break;
        }
    }
    if (step.around_c) say(text, (step.how.find("oven") != std::string::npos ? "oven " : "water ") + degrees(*step.around_c, units));
    if (step.stop_c) say(text, "stop and chill at " + degrees(*step.stop_c, units));
    return text;
}

bool changes_weight(const StepPart& p) { return std::abs(p.grams_in - p.grams_out) > enough_to_say * p.grams_in; }

std::string part(const StepPart& p, const Sheet& sheet, Units units) {
    const std::string name = sheet.prediction.lines[p.line].name;
    const double step = sheet.weights[p.line].scale_g;
    const std::string in = weight(p.grams_in, units, step) + " " + name;
    return changes_weight(p) ? in + " gives about " + about(p.grams_out, units) : in;
}

std::string in_and_out(const SheetStep& step, Units units) {
    if (step.grams_in <= 0 || step.parts.size() == 1) return "";
    if (step.grams_out <= 0) return "Takes " + about(step.grams_in, units);
    const bool same = !changes_weight({0, step.grams_in, step.grams_out});
    return same ? "In all " + about(step.grams_in, units) : "In " + about(step.grams_in, units) + ", out " + about(step.grams_out, units);
}

std::string to_buy(const Purchase& p, Units units) {
    if (p.from_the_tap) return "from the tap";
    if (!p.count) {
        if (units == Units::us) return weight(p.buy_us_g, units);
        return number(p.buy_g, 0) + " g" + (units == Units::both ? " (" + weight(p.buy_us_g, Units::us) + ")" : "");
    }
    const std::string text = number(*p.count, 0) + " " + several(p.unit, *p.count);
    const bool packed = p.unit == "packet" || p.unit == "bottle" || p.unit == "jar or piece";
    return packed ? text + " of " + about(p.unit_g, units) : text;
}

std::string what_for(const Purchase& p, Units units) {
    const double step = p.need_g < 20 ? 0.1 : 1;
    std::string text = weight(p.need_g, units, step);
    if (p.bought_g - p.need_g > enough_to_say * p.need_g) text += " ready, " + about(p.bought_g, units) + " as bought";
    return text;
}

std::string how_known(const SheetStep& step) { return step.said ? "" : "usual: the formula does not say"; }

}  // namespace standin::cli
