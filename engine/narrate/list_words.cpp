// How a list of what is on hand was read.
#include <cmath>

#include "core/words.hpp"
#include "narrate/words.hpp"
#include "standin/number_text.hpp"

namespace standin {
namespace {

std::string quoted_words(const std::string& words) { return "\"" + words + "\""; }

std::string first_of(const Reason& r) { return r.foods.empty() ? std::string("it") : r.foods.front(); }

std::string grams_of(const Reason& r) { return trimmed_text(std::round(r.figures.empty() ? 0 : r.figures.front().after), 0) + " g"; }

// "spinach, plenty: as much as it takes", "12 foods of that kind: none on hand"
std::string unweighed(const Reason& r) {
    const std::string what = r.figures.empty() ? listed(r.foods) : trimmed_text(r.figures.front().after, 0) + " " + r.figures.front().what;
    if (r.role == "none") return what + ": none on hand";
    return what + (r.role == "plenty" ? ", plenty: as much as it takes" : ", no weight told: as much as it takes");
}

// What is ready where it lies: " before it was blanched and squeezed, which is not done again".
std::string done_already(const Reason& r) {
    std::string steps;
    for (const auto& step : r.by_way) steps += (steps.empty() ? "" : " and ") + step;
    return steps.empty() ? steps : " before it was " + steps + ", which is not done again";
}

std::string taken_for(const Reason& r) {
    const std::string written = quoted_words(r.about);
    switch (r.kind) {
        case ReasonKind::taken_as_amount:
            return written + " taken as " + r.note + done_already(r);
        case ReasonKind::whichever_it_is:
            return written + " is taken for " + listed(r.foods) + ", whichever it is";
        case ReasonKind::juice_and_zest:
            return written + " is taken for its juice and its zest";
        case ReasonKind::takes_in:
            return written + " takes in " + (r.foods.size() == 2 ? r.foods[0] + " and " + r.foods[1] : r.note);
        case ReasonKind::says_nothing_of:
            return "\"no " + r.about + "\" says nothing of " + listed(r.foods) + ", which " + (r.foods.size() > 1 ? "are" : "is") +
                   " taken to be there";
        case ReasonKind::of_the_formula:
            return written + " is taken for the formula's " + listed(r.foods);
        case ReasonKind::dried_unless_leaf:
            return "read as " + first_of(r) + "; if it is the leaf, write " + written;
        default:
            if (r.role == "fruit") return "\"no " + r.note + "\" is said of the fruit: " + written + " is there";
            return "\"no " + r.note + "\" beside " + written + ": both are " + first_of(r) + " here, taken to be on hand";
    }
}

}  // namespace

std::string list_words(const Reason& r, Units units) {
    switch (r.kind) {
        case ReasonKind::list_is_all:
            return "the list is all there is of what it is about";
        case ReasonKind::list_is_beside:
            return "everything that the list does not mention is there";
        case ReasonKind::list_heading:
            return r.role == "none" ? "a heading: what stands below it is not on hand" : "a heading";
        case ReasonKind::stock_weight:
            return in_units(first_of(r) + ", " + grams_of(r) + (r.role == "whole" ? "" : " as picked or bought"), units);
        case ReasonKind::stock_unweighed:
            return unweighed(r);
        case ReasonKind::set_aside:
            if (r.role == "open") return r.note + " (set aside until the list says how much there is, or no)";
            if (r.role == "remark")
                return quoted_words(r.about) + " is set aside and goes into nothing: " + quoted_words(r.note) +
                       " is not understood here. If it tells of its state, or of what is in it, say that in other words; else leave it to "
                       "a " +
                       "line that begins with #";
            return r.note + ": set aside";
        default:
            return in_units(taken_for(r), units);
    }
}

}  // namespace standin
