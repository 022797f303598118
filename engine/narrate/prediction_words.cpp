// What is said of a batch beside its numbers.
#include <algorithm>

#include "core/words.hpp"
#include "narrate/quantity.hpp"
#include "narrate/words.hpp"
#include "standin/number_text.hpp"

namespace standin {
namespace {

std::string whole(double value) { return fixed_text(value, 0); }
std::string tenths(double value) { return fixed_text(value, 1); }
std::string three(double value) { return figures_text(value, 3); }

double after(const Reason& r, std::string_view what) {
    const Figure* f = figure(r, what);
    return f ? f->after : 0;
}

// "bind, firmness and cook loss"
std::string all_of(const std::vector<std::string>& words) {
    if (words.size() < 2) return words.empty() ? "" : words.front();
    return listed({words.begin(), words.end() - 1}) + " and " + words.back();
}

// "11-35 %", "5.4 and more", "up to 71 C"
std::string range_words(const Figure& f, Units units) {
    const bool celsius = f.unit == "C";
    const auto one = [&](double value) { return celsius ? temperature_in(value, units) : three(value); };
    const std::string unit = celsius || f.unit.empty() ? "" : " " + f.unit;
    if (!f.low) return f.high ? "up to " + one(*f.high) + unit : "";
    if (!f.high) return one(*f.low) + unit + " and more";
    if (!celsius) return three(*f.low) + "-" + three(*f.high) + unit;
    return in_units(three(*f.low) + "-" + three(*f.high) + " C", units);
}

std::string stretched(const Reason& r, Units units) {
    const Figure& f = r.figures.front();
    const std::string value = f.unit == "C" ? temperature_in(f.after, units) : three(f.after) + (f.unit.empty() ? "" : " " + f.unit);
    const std::string subject = f.unit.empty()                    ? f.what + " " + value
                                : f.unit == "C" || f.unit == "mm" ? "a " + f.what + " of " + value
                                                                  : value + " " + f.what;
    std::string text =
        subject + ", made for " + range_words(f, units) + ": " + all_of(r.asks) + (r.asks.size() > 1 ? " are" : " is") + " stretched";
    if (r.about == "validity.ph") text += "; a sour mass sets by acid instead of binding";
    if (r.about == "validity.plate") text += "; worked long with ice it sets as an emulsion, mostly firmer than said here";
    if (text.front() == 'a') text.front() = 'A';
    return text + (r.asks.size() > 1 ? "; their bands are widened" : "; its band is widened");
}

std::string time_words(double seconds) {
    return seconds < 1 ? "under a second" : seconds < 100 ? whole(seconds) + " s" : whole(seconds / 60) + " min";
}

// Words by the middle, the spread in brackets; never "at least" what the low end does not bear.
std::string logs_in_words(const Figure& logs, double cap) {
    constexpr double near_cap = 0.05;  // half of the last digit shown
    const double low = logs.low.value_or(logs.after), high = logs.high.value_or(logs.after);
    const std::string spread = low < high - near_cap ? " (" + tenths(low) + "-" + tenths(high) + ")" : "";
    return tenths(logs.after) + " log reductions of Salmonella" + (logs.after >= cap - near_cap ? ", where the count stops" : "") + spread;
}

std::string hours_word(double hours, const Reason& r) {
    if (hours <= 0) return "under " + whole(after(r, "least told")) + " h";
    return (hours >= after(r, "most told") ? "over " : "") + whole(hours) + " h";
}

}  // namespace

const Figure* figure(const Reason& reason, std::string_view what) {
    const auto found = std::find_if(reason.figures.begin(), reason.figures.end(), [&](const Figure& f) { return f.what == what; });
    return found == reason.figures.end() ? nullptr : &*found;
}

// What is presumed of raw leaf, and what to write where it is another.
std::string leaf_cut_words(const Reason& r) {
    const std::string nobody = "Nobody says how " + all_of(r.foods) + " is cut: ";
    if (r.role == "ground") return nobody + "taken as ground with the meat, which colours it through; write chopped if it is, for flecks";
    if (r.role == "blended") return nobody + "taken as blended to a paste, as there is so much of it; write chopped if it is, for flecks";
    const std::string paste = "; write pureed if it is blended, which colours the mass through";
    if (r.role == "chopped") return nobody + "taken as chopped, which leaves flecks" + paste;
    return nobody + "taken as partly chopped and partly a paste; write chopped or pureed for the one or the other";
}

std::string limit_words(const Reason& r, Units units) {
    const std::string only_core = ": only the core temperature counts";
    switch (r.kind) {
        case ReasonKind::stretched:
            return r.figures.empty() ? "" : stretched(r, units);
        case ReasonKind::leaf_cut:
            return leaf_cut_words(r);
        case ReasonKind::shape_unknown:
            return "How wide it is moves no figure of the cook loss: thin links, thick ones and patties lose differently, and no "
                   "measurement with their width was found. Weigh one before and after, and write what it lost into kitchen.txt";
        case ReasonKind::cold_green:
            return "How the green keeps in the cold is extrapolated from measurements at " +
                   temperature_in(after(r, "measured from"), units) + " and above";
        case ReasonKind::warms_slowly:
            return "The core warms too slowly for any figure of what the cook kills: toxins formed on the way stay";
        case ReasonKind::no_table:
            return "No published table of cooking times fits this meat and fat" + only_core;
        case ReasonKind::table_ends:
            return "The published table of cooking times for poultry as fat as this ends at " +
                   temperature_in(after(r, "table end"), units) + only_core;
        default:
            return "";
    }
}

std::string kills_words(const Reason& r, Units units) {
    const Figure *logs = figure(r, "log reductions"), *minutes = figure(r, "minutes");
    if (!logs || !minutes) return "";
    const std::string core = in_units(whole(after(r, "core")) + " C", units);
    std::string text = r.role == "measured"
                           ? "By your core readings"
                           : "By an estimate, " + whole(minutes->after) + " minutes (" + whole(minutes->low.value_or(minutes->after)) +
                                 "-" + whole(minutes->high.value_or(minutes->after)) + ") to a core of " + core;
    text += ": " + logs_in_words(*logs, after(r, "counted up to"));
    if (const Figure* time = figure(r, "table time")) text += "; at a steady " + core + " the table asks for " + time_words(time->after);
    else if (const Figure* end = figure(r, "table end"))
        text += "; the table ends at " + temperature_in(end->after, units) + ", and hotter is counted as that";
    else text += "; the table has no time for " + core;
    return text + ". Information, not permission: what counts is the core temperature shown below, measured.";
}

std::string keeps_green_words(const Reason& r, Units units) {
    if (r.figures.empty()) return "";
    const Figure& rest = r.figures.front();
    // From less than the first rest to more than the last says only that nobody knows.
    const bool anything = rest.low.value_or(rest.after) < after(r, "least told") && rest.high.value_or(rest.after) >= after(r, "most told");
    std::string text = "Raw it stays green for " + hours_word(rest.after, r) + " of rest (" + hours_word(rest.low.value_or(rest.after), r) +
                       " to " + hours_word(rest.high.value_or(rest.after), r) +
                       (anything ? ", which is to say that nobody knows: look at a spoonful of it in the fridge each morning" : "") +
                       "), then turns olive";
    if (rest.after >= after(r, "most told")) return text + ".";
    if (const Figure* colder = figure(r, "colder"))
        text += "; at " + temperature_in(after(r, "at"), units) + " " + hours_word(colder->after, r);
    if (const Figure* milder = figure(r, "without acid")) text += "; with the acid left out until the pan " + hours_word(milder->after, r);
    return text + ". More leaf holds longer too.";
}

std::string sets_cold_words(const Reason& r) {
    const auto instead = [&](std::string_view what) {
        const Figure* f = figure(r, what);
        return f && f->before ? whole(f->after) + " instead of " + whole(*f->before) : std::string("more");
    };
    return "Gelatin, agar and their like melt in the heat and bind nothing hot. Served cold they set: bind " + instead("bind") +
           ", firmness " + instead("firmness");
}

}  // namespace standin
