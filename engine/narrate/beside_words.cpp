// How large a sheet is, what is named on its label, why a stand-in is left out and why another is not.
#include "core/words.hpp"
#include "narrate/words.hpp"
#include "standin/number_text.hpp"

namespace standin {
namespace {

std::string asked_for_all(const Reason& r) {
    std::string all = r.foods.empty() ? "" : listed(r.foods) + ": ";
    for (std::size_t i = 0; i < r.asks.size(); ++i) all += (i == 0 ? "" : "; ") + r.asks[i];
    return all;
}

std::string against_each_other(const Reason& r) {
    const std::vector<std::string> held(r.foods.begin() + (r.foods.empty() ? 0 : 1), r.foods.end());
    return "the two go against each other: \"" + r.about + "\" leaves out " + (r.foods.empty() ? "it" : r.foods.front()) +
           ", which is of it or may hold it." + (held.empty() ? "" : " It brings an allergen: " + listed(held) + ".");
}

// A sheet and its label.
std::string of_sheet(const Reason& r) {
    switch (r.kind) {
        case ReasonKind::as_the_formula:
            return "as the formula says";
        case ReasonKind::to_meat:
            return "to " + r.about + " of meat";
        case ReasonKind::to_total:
            return "to " + r.about + " on the scale in all";
        case ReasonKind::as_far_as:
            return "as far as " + r.about + " goes";
        case ReasonKind::named_in_title:
            return "the title names it";
        case ReasonKind::meat_named:
            return "a meat is named with its share";
        case ReasonKind::meat_always_named:
            return "a meat is always named with its share";
        default:
            return "fat beyond what the word meat covers is named apart";
    }
}

}  // namespace

std::string beside_words(const Reason& r) {
    switch (r.kind) {
        case ReasonKind::asks_of_making:
            return asked_for_all(r);
        case ReasonKind::too_heavy:
            return (r.foods.empty() ? "" : listed(r.foods) + ": ") + "it would take " +
                   trimmed_text(r.figures.empty() ? 0 : r.figures.front().after, 1) + " times the weight";
        case ReasonKind::makes_up_liquid:
            return "makes up the liquid";
        case ReasonKind::kept_by_packet:
            return "Kept: " + listed(r.foods) + ". A bought one may hold it: read the packet, and use only one that says it holds none.";
        case ReasonKind::off_the_list:
            return "Of your list it leaves out " + listed(r.foods) + ".";
        case ReasonKind::perhaps_off_the_list:
            if (r.about == "last")
                return "Of your list " + listed(r.foods) + " may hold it, one packet in many: taken only where nothing else will do.";
            return "Of your list it leaves out " + listed(r.foods) + ", which may hold it as bought; a packet that names none would do.";
        case ReasonKind::list_tells_of_it:
            return "Of your list it leaves out " + listed(r.foods) + ": \"" + r.about + "\".";
        case ReasonKind::only_that_food:
            return "Only that food: others with " + listed(r.foods) + " stay. If it is an allergy, say " + listed(r.foods) + ".";
        case ReasonKind::against_each_other:
            return against_each_other(r);
        default:
            return of_sheet(r);
    }
}

}  // namespace standin
