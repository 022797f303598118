// What to do about the making.
#include "core/words.hpp"
#include "narrate/quantity.hpp"
#include "narrate/words.hpp"
#include "standin/number_text.hpp"
#include "standin/temperature_text.hpp"

namespace standin {
namespace {

// "8", "4.5"
std::string short_number(double value) { return trimmed_text(value, 2); }

std::string before(const Reason& r) {
    return r.figures.empty() || !r.figures.front().before ? "?" : short_number(*r.figures.front().before);
}

double after(const Reason& r) { return r.figures.empty() ? 0 : r.figures.front().after; }

std::string core(const Reason& r) {
    const Figure* hold = figure(r, "kept for");
    return core_temperature_text(after(r), hold ? hold->after : 0);
}

std::string plate(const Reason& r) {
    const double was = r.figures.empty() ? 0 : r.figures.front().before.value_or(0);
    return "grind through the " + short_number(after(r)) + " mm plate instead of " + short_number(was) + " mm";
}

// Until it is tacky; or, where it is to stay loose, no longer than it must.
std::string mixed(const Reason& r) {
    const bool less = !r.figures.empty() && r.figures.front().before && r.figures.front().after < *r.figures.front().before;
    const Figure* plate = figure(r, "plate");
    if (less)
        return "mix no longer than it takes to hold together, about " + short_number(after(r)) + " min" +
               (plate ? "; grind coarser too, through " + short_number(plate->after) + " mm" : "");
    return "mix " + short_number(after(r)) + " minutes, until it sticks to an upturned palm";
}

std::string making_said(const Reason& r) {
    switch (r.kind) {
        case ReasonKind::order:
            return "salt and lean first, mixed until tacky; the paste next; acid cold and last";
        case ReasonKind::mixing:
            return mixed(r);
        case ReasonKind::salt_late:
            return "put the salt in last, with the rest, and not on the lean beforehand";
        case ReasonKind::cold:
            return "meat and paste at 0-2 C before mixing, no warmer than 4 C after";
        case ReasonKind::plate:
            return plate(r);
        case ReasonKind::rest:
            return "cook it within " + short_number(after(r)) + " hours instead of after " + before(r);
        case ReasonKind::rest_cold:
            return "rest the mass at 0-2 C instead of " + before(r) + " C";
        case ReasonKind::core:
            return "take it off when the middle reaches " + core(r) + ", measured, and no later";
        case ReasonKind::short_blanch:
            return "blanch the " + listed(r.foods) + " " + short_number(after(r)) + " minutes instead of " +
                   short_number(r.figures.empty() ? 0 : r.figures.front().before.value_or(0));
        case ReasonKind::seeds_in:
            return "leave the seeds in the " + listed(r.foods);
        case ReasonKind::squeeze:
            if (r.about == "raw") return "blanch the " + listed(r.foods) + " 1 minute, chill in ice water and squeeze hard";
            if (r.about == "fruit")
                return "roast the " + listed(r.foods) + " until soft and let the juice run off before chopping or blending";
            if (r.about == "grated") return "squeeze the grated " + listed(r.foods) + " hard";
            return "squeeze the " + listed(r.foods) + " hard once it is blanched or thawed";
        case ReasonKind::cook_through:
            return "cook until the middle reaches " + core(r) + ", measured";
        case ReasonKind::without_casing:
            if (r.role == "food")
                return "leave out what stands beside the mass (" + listed(r.foods) + "): take something that holds nothing of it";
            if (r.role == "another" && r.foods.size() == 2)
                return "fill your " + r.foods[1] + " in place of the casings (" + r.foods[0] + "); another width takes another filling";
            return "leave out the casings (" + listed(r.foods) + "): form patties, or fill casings that hold nothing of it";
        default:
            return r.note;
    }
}

}  // namespace

std::string to_do(const Reason& reason, Units units) { return in_units(making_said(reason), units); }

}  // namespace standin
