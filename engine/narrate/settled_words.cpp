// What a bench sheet settled that the formula does not say, or says otherwise.
#include <cmath>

#include "core/words.hpp"
#include "narrate/words.hpp"
#include "standin/number_text.hpp"
#include "standin/temperature_text.hpp"

namespace standin {
namespace {

std::string said_number(double value) { return trimmed_text(value, 2); }

// "bind 41.2 -> 48.5 of 100"
std::string gain(const Reason& r) {
    const Figure* bind = figure(r, "bind");
    if (!bind || !bind->before) return "bind";
    const auto tenths = [](double value) { return said_number(std::round(value * 10) / 10); };
    return "bind " + tenths(*bind->before) + " -> " + tenths(bind->after) + " of 100";
}

std::string order_costs(const Reason& r) {
    const std::string says = r.role == "acid first" ? "puts the acid first" : "mixes all together";
    return "The formula " + says + ". Salt first and acid last would bind better: " + gain(r) + ".";
}

std::string core_raised(const Reason& r) {
    const Figure *core = figure(r, "core"), *hold = figure(r, "kept for");
    if (!core || !core->before) return "The sheet cooks as hot as the rule says.";
    return "The formula stops at a core of " + core_temperature_text(*core->before) + "; the sheet says " +
           core_temperature_text(core->after, hold ? hold->after : 0) + ", as the rule does.";
}

std::string wet_leaves(const Reason& r) {
    const std::string food = listed(r.foods);
    return "Thaw the " + food + " in the cold. The formula does not squeeze it, so all its water goes in: if you squeeze it, write `" +
           food + ", squeezed` there, for the weights and the mass change.";
}

// A casing is of an animal too.
std::string casing_named(const Reason& r) {
    if (r.role.empty())
        return "Nothing says of which animal the casing is, and who must not eat that animal must not eat it: the packet tells. It is an "
               "ingredient: name it on the label.";
    std::string note = "A " + r.role + " casing is an ingredient: name it on the label.";
    if (r.about == "pork")
        note += " It is pork, which this formula is not: for whoever eats none take sheep, or collagen stated to be of beef.";
    if (r.about == "pork, perhaps") note += " It may be of pigs, which this formula is not: the packet tells.";
    if (r.about == "beef") note += " It is beef, which this formula is not.";
    return note;
}

// "The formula rests it at 8 C; the sheet says no warmer than 4 C (39 F) instead."
std::string against_the_formula(const Reason& r, double said, double most) {
    if (r.role == "rest")
        return "The formula rests it " + shown_hours(said) + "; the sheet " + (most <= 0 ? "has no rest" : "says " + shown_hours(most)) +
               " instead. ";
    return std::string("The formula ") + (r.role == "rest at" ? "rests it at " : "mixes it up to ") + said_number(said) +
           " C; the sheet says no warmer than " + core_temperature_text(most) + " instead. ";
}

std::string kept_to_rule(const Reason& r, Units units) {
    const Figure *said = figure(r, "said"), *most = figure(r, "most");
    std::string before;
    if (said && most) before = against_the_formula(r, said->after, most->after);
    else if (r.role == "rest" && most && most->after <= 0) before = "No rest. ";
    return in_units(before, units) + caution_words(r, units);
}

}  // namespace

std::string settled_words(const Reason& r, Units units) {
    switch (r.kind) {
        case ReasonKind::order_costs:
            return order_costs(r);
        case ReasonKind::order_chosen:
            return "The formula does not say what goes in first; the sheet salts first" +
                   std::string(r.role == "no acid" ? "" : " and adds acid last") + ", which binds better: " + gain(r) + ".";
        case ReasonKind::core_raised:
            return in_units(core_raised(r), units);
        case ReasonKind::wet_leaves:
            return wet_leaves(r);
        case ReasonKind::fine_scale:
            return "A scale that shows whole grams is too coarse for " + listed(r.foods) +
                   ": use one that shows tenths of a gram, or weigh a batch of the dry ones ten times as large and take a tenth.";
        case ReasonKind::casing_named:
            return casing_named(r);
        case ReasonKind::width_unsaid:
            return std::string(r.role == "title" ? "The title speaks of links" : "A casing stands beside the mass") +
                   ", and nothing says how wide: this sheet makes patties. For links say how wide the casing is, or write "
                   "`diameter: 32 mm` in the formula.";
        case ReasonKind::kept_to_rule:
            return kept_to_rule(r, units);
        default:
            return r.note;
    }
}

}  // namespace standin
