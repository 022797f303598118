// What decides how much is taken: of a stand-in, of plain mass, of a glut.
#include <cmath>

#include "core/words.hpp"
#include "narrate/quantity.hpp"
#include "narrate/words.hpp"
#include "standin/number_text.hpp"
#include "standin/prediction.hpp"

namespace standin {
namespace {

double number(const Reason& r, std::size_t which = 0) { return which < r.figures.size() ? r.figures[which].after : 0; }

std::string times(const Reason& r) { return trimmed_text(number(r), 1); }

std::string dose_said(const Reason& r) {
    const std::string unit = r.figures.empty() ? "" : " " + r.figures.front().unit;
    return three_figures(number(r)) + unit + ", as the line brings";
}

std::string short_of_plain(const Reason& r) {
    const Figure* there = figure(r, "on hand");
    return "Plain mass would take " + figures_text(number(r), 3) + " g of " + listed(r.foods) + ", and there is " +
           (there ? figures_text(there->after, 3) + " g" : std::string("none"));
}

std::string months_said(const Figure& months) {
    const std::string low = trimmed_text(months.low.value_or(months.after), 0), high = trimmed_text(months.high.value_or(months.after), 0);
    return (low == high ? low : low + " to " + high) + " months";
}

std::string keeps_frozen(const Reason& r) {
    const Figure *kilo = figure(r, "a kilo gives"), *months = figure(r, "keeps");
    if (!kilo || !months) return r.note;
    return r.note + " 1 kg as picked gives about " + trimmed_text(kilo->after, 0) + " g; it keeps " + months_said(*months) +
           " at -18 C (0 F).";
}

std::string amount_said(const Reason& r) {
    switch (r.kind) {
        case ReasonKind::same_dose:
            return dose_said(r);
        case ReasonKind::by_weight:
            return "by weight, " + three_figures(number(r)) + " g for each gram";
        case ReasonKind::for_its_bulk:
            return "for its bulk no " + std::string(r.role == "at least" ? "less" : "more") + " than " + times(r) + " times the weight";
        case ReasonKind::times_weight:
            return "no more than " + times(r) + " times the weight";
        case ReasonKind::as_batch:
            return "no more than the batch takes of it";
        case ReasonKind::in_a_kilo:
            return "no more than " + times(r) + " g of it in a kilo";
        case ReasonKind::half_way:
            return "half way between the same weight and the same green";
        case ReasonKind::even_weight:
            return "weight for weight";
        case ReasonKind::brings_rest:
            return "brings the rest of the " + r.role;
        case ReasonKind::too_much_plain:
            return r.about + (r.foods.empty() ? "" : ", down to as much " + listed(r.foods) + " as is good in a kilo") +
                   ": more plain mass would be needed than " + trimmed_text(number(r), 1) +
                   " times what there is. That is a new batch: make it without what is at fault, and use this mass as its seasoning";
        case ReasonKind::fault_in_meat:
            return r.about + ": plain mass of this formula does not bring it down, for what is at fault is in its meat";
        case ReasonKind::short_of_plain:
            return short_of_plain(r);
        case ReasonKind::nothing_brings:
            return r.about + (r.role == "listed" ? ": nothing on the list brings it nearer by as much as is noticed"
                                                 : ": nothing that may come in brings it nearer by as much as is noticed");
        case ReasonKind::none_of_it:
            return r.about + ": the formula has nothing of that kind, so there is no amount to go by";
        case ReasonKind::keeps_frozen:
            return keeps_frozen(r);
        default:
            return r.note;
    }
}

}  // namespace

std::string amount_words(const Reason& reason, Units units) { return in_units(amount_said(reason), units); }

std::string in_words(const Reckoned& reckoned) {
    const auto mg_kg = [](double value) { return trimmed_text(value, 2); };
    if (reckoned.from_mg_kg && reckoned.most_mg_kg < *reckoned.from_mg_kg)
        return "by reckoning under " + mg_kg(*reckoned.from_mg_kg) + " mg/kg";
    const double least = std::floor(reckoned.least_mg_kg), most = std::ceil(reckoned.most_mg_kg);
    return "by reckoning " + (most - least > 1 ? mg_kg(least) + "-" + mg_kg(most) : "up to " + mg_kg(most)) + " mg/kg" +
           (reckoned.from_mg_kg ? "; declared from " + mg_kg(*reckoned.from_mg_kg) + " mg/kg on" : "");
}

}  // namespace standin
