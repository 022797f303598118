#include "render/sheet_words.hpp"

#include <algorithm>
#include <cmath>

#include "render/units.hpp"
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
    if (unit == "jar or can") return "jars or cans";
    return unit + "s";
}

// "250 ml"; of a US bottle "half pint", "quart".
std::string volume(double ml, Units units) {
    constexpr double fluid_ounce = 3785.411784 / 128;  // mL, exact: NIST Handbook 44 appendix C
    if (units == Units::metric) return ml < 1000 ? number(ml, 0) + " ml" : trimmed_number(ml / 1000, 2) + " l";
    return trimmed_number(ml / fluid_ounce, 0) + " fl oz";
}

// In the units of one shop: "2 bunches", "700 g", "1 packet of 30 g", "1 1/4 lb".
std::string sold(const Sold& s, Units units) {
    if (!s.count) return units == Units::us ? shop_pounds(s.buy_g) : number(s.buy_g, 0) + " g";
    const std::string text = number(*s.count, 0) + " " + several(s.unit, *s.count);
    if (s.unit_ml > 0) return text + " of " + volume(s.unit_ml, units);
    const bool packed = s.unit == "packet" || s.unit == "can" || s.unit.find(" or ") != std::string::npos;
    if (!packed) return text;
    return text + " of " + (units == Units::us ? shop_pounds(s.unit_g) : about(s.unit_g, units));
}

// How finely the list of weights shows this food: what is bought and trimmed of it is rounded alike.
double step_of(const std::string& ingredient, const Sheet& sheet) {
    double step = 1;
    for (const auto& w : sheet.weights)
        if (sheet.prediction.lines[w.line].ingredient == ingredient) step = std::min(step, w.scale_g);
    return step;
}

bool changes_weight(const StepPart& p) { return std::abs(p.grams_in - p.grams_out) > enough_to_say * p.grams_in; }

// "320 g spinach, about 300 g after", "22 g garlic", "25 g garlic to 22 g".
std::string part(const StepPart& p, const Sheet& sheet, Units units) {
    const std::string name = sheet.prediction.lines[p.line].name;
    const double step = p.verb.empty() ? sheet.weights[p.line].scale_g : step_of(sheet.prediction.lines[p.line].ingredient, sheet);
    const std::string in = weight(p.grams_in, units, step) + " " + name, out = weight(p.grams_out, units, step);
    if (!p.verb.empty()) return in + " to " + out;
    return changes_weight(p) ? in + ", about " + out + " after" : in;
}

// Blended and mixed in by the same figure; a paste of one food weighs what that food does.
std::string paste_of(double grams, Units units) { return weight(grams, units, 1); }

// "In all 5100 g" of what comes together, "In 5100 g, out 3700 g" of what goes through as one.
std::string in_and_out(const SheetStep& step, Units units) {
    const bool together =
        step.parts.empty() || step.id == "chill" || step.id == "paste" || step.id == "sour" || step.id.rfind("mix", 0) == 0;
    if (step.grams_in <= 0 || step.parts.size() == 1 || !together) return "";
    if (step.grams_out <= 0) return "Takes " + about(step.grams_in, units);
    const bool same = !changes_weight({0, step.grams_in, step.grams_out, {}});
    if (same && (step.id == "paste" || step.id == "sour")) return "In all " + paste_of(step.grams_in, units);
    if (same) return step.parts.empty() ? "" : "In all " + about(step.grams_in, units);
    return "In " + about(step.grams_in, units) + ", out " + about(step.grams_out, units);
}

}  // namespace

std::string pieces(const SheetYield& y, Units units) {
    const std::string many = y.shape == "link" ? "links" : "patties";
    std::string text = number(y.pieces, 0) + " " + (y.pieces == 1 ? y.shape : many) + " of " + about(y.piece_g, units) + " raw, " +
                       spread(y.piece_cooked_g, units) + " cooked";
    if (y.length_mm && y.diameter_mm) text += "; " + length(*y.length_mm, units) + " long in " + casing(y, units);
    return text;
}

std::string casing(const SheetYield& y, Units units) {
    return y.diameter_mm ? y.casing + (y.casing.empty() ? "casing of " : " casing of ") + length(*y.diameter_mm, units) : "";
}

std::string casing_needed(const SheetYield& y, Units units) {
    if (!y.casing_m || !y.casing_g_a_metre) return "";
    return "filled full, " + per_length(*y.casing_g_a_metre, units);
}

std::string measured(const SheetStep& step, Units units) {
    std::string text;
    if (step.casing_m) say(text, metres(*step.casing_m, units));
    if (step.link_mm) say(text, "links " + length(*step.link_mm, units) + " long");
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
    if (step.around_c) say(text, (step.cook == Cook::oven ? "oven " : "water ") + degrees(*step.around_c, units));
    if (step.stop_c) say(text, "stop and chill at " + degrees(*step.stop_c, units));
    return text;
}

std::string amounts(const SheetStep& step, const Sheet& sheet, Units asked) {
    const Units units = asked == Units::both ? Units::metric : asked;  // both stand in the weights; here they would bury the work
    const auto made = std::find_if(sheet.steps.begin(), sheet.steps.end(), [](const SheetStep& s) { return s.id == "paste"; });
    const bool mixes = step.id.rfind("mix", 0) == 0 && made != sheet.steps.end();
    const auto in_paste = [&](const StepPart& p) {
        return std::any_of(made->parts.begin(), made->parts.end(), [&](const StepPart& m) { return m.line == p.line; });
    };
    std::string text;
    double paste = 0;
    const auto add = [&](const std::string& what, const char* between) { text += (text.empty() ? "" : between) + what; };
    for (const auto& p : step.parts) {
        if (mixes && in_paste(p)) paste += p.grams_in;
        else if (p.verb.empty()) add(part(p, sheet, units), "; ");
    }
    for (std::size_t i = 0; i < step.parts.size(); ++i) {  // a verb once, then all it is done to
        const auto& verb = step.parts[i].verb;
        const auto first = std::find_if(step.parts.begin(), step.parts.end(), [&](const StepPart& p) { return p.verb == verb; });
        if (verb.empty() || &*first != &step.parts[i]) continue;
        add(verb + " " + part(step.parts[i], sheet, units), "; ");
        for (std::size_t k = i + 1; k < step.parts.size(); ++k)
            if (step.parts[k].verb == verb) add(part(step.parts[k], sheet, units), ", ");
    }
    if (paste > 0)
        text += (text.empty() ? "" : "; ") + paste_of(paste, units) +
                (made->task == BenchTask::cut_small ? " of what was chopped" : " of the paste");
    const std::string sum = in_and_out(step, units);
    return text + (text.empty() || sum.empty() ? "" : ". ") + sum + (text.empty() && sum.empty() ? "" : ".");
}

std::string to_buy(const Purchase& p, Units units) {
    if (p.from_the_tap) return "from the tap";
    if (units == Units::metric) return sold(p.metric, Units::metric);
    const std::string us = sold(p.us, Units::us);
    if (units == Units::us) return us;
    const std::string metric = sold(p.metric, Units::metric);
    if (metric == us) return us;
    const auto size = us.find(" of ");  // "1 packet of 30 g (1 oz)"
    const bool alike = size != std::string::npos && metric.compare(0, size, us, 0, size) == 0;
    return metric + " (" + (alike ? us.substr(size + 4) : us) + ")";
}

std::string untrimmed(const Purchase& p, const Sheet& sheet, Units units) {
    if (p.bought_g - p.need_g <= enough_to_say * p.need_g) return "";
    return weight(p.bought_g, units == Units::both ? Units::metric : units, step_of(p.ingredient, sheet)) + " untrimmed";
}

std::string what_for(const Purchase& p, const Sheet& sheet, Units units) {
    const std::string whole = untrimmed(p, sheet, units);
    return whole.empty() ? weight(p.need_g, units, step_of(p.ingredient, sheet)) : whole;
}

std::string on_hand(const Purchase& p, const Sheet& sheet, Units units) {
    const bool list = std::any_of(sheet.buy.begin(), sheet.buy.end(), [](const Purchase& one) { return one.have_all || one.lack_g; });
    if (!p.lack_g) return list && !p.have_all && !p.from_the_tap ? ", not on your list" : "";
    return p.have_g.value_or(0) > 0 ? ", " + about(*p.have_g, units) + " there" : ", none there";
}

std::string how_known(const SheetStep& step) { return step.said ? "" : "usual"; }

std::string what_usual_means(const Sheet& sheet) {
    const bool any = std::any_of(sheet.steps.begin(), sheet.steps.end(), [](const SheetStep& s) { return !s.said; });
    return any ? "Usual: the formula does not say, so common practice stands here." : "";
}

}  // namespace standin::cli
