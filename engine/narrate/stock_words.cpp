// What was taken for granted of what is on hand, and how the batch was scaled.
#include "core/words.hpp"
#include "narrate/quantity.hpp"
#include "narrate/words.hpp"
#include "standin/number_text.hpp"

namespace standin {
namespace {

std::string grams(const Reason& r, std::size_t which, Units units) {
    return which < r.figures.size() ? weight_in(r.figures[which].after, units) : std::string("some");
}

std::string whole_batch(const Reason& r) {
    const Figure* share = figure(r, "batch");
    return share ? ": the whole batch at " + figures_text(share->after, 2) + " %" : "";
}

std::string there(const std::vector<std::string>& foods) {
    if (foods.empty()) return "";
    const std::vector<std::string> kin(foods.begin() + 1, foods.end());
    return foods.front() + " is not on the list" + (kin.empty() ? "" : ", though " + listed(kin) + (kin.size() == 1 ? " is" : " are")) +
           ": taken to be there";
}

std::string missing(const std::vector<std::string>& foods) {
    if (foods.empty()) return "";
    const std::vector<std::string> others(foods.begin() + 1, foods.end());
    return foods.front() + " is not on the list, but " + listed(others) + (others.size() == 1 ? " is" : " are") + ": taken to be missing";
}

}  // namespace

std::string stock_words(const Reason& r, Units units) {
    switch (r.kind) {
        case ReasonKind::scaled_as_asked:
            return "made to " + grams(r, 0, units) + " of meat, as asked" + whole_batch(r);
        case ReasonKind::scaled_to_list:
            return "as much as the list makes, up to the end of " + grams(r, 0, units) + " " + listed(r.foods) + whole_batch(r);
        case ReasonKind::scaled_to_meat:
            return grams(r, 0, units) + " " + listed(r.foods) + " on hand where " + grams(r, 1, units) + " is asked" + whole_batch(r);
        case ReasonKind::presumed_there:
            return there(r.foods);
        case ReasonKind::taken_for_enough:
            return "your " + listed(r.foods) + ", not weighed, is taken to be enough: " + grams(r, 0, units) + " as bought";
        case ReasonKind::presumed_missing:
            return missing(r.foods);
        case ReasonKind::all_that_is_there:
            if (r.about == "missing") return "and taken to be missing: " + listed(r.foods);
            return "\"nothing else\" is taken of what the list is about; taken to be there all the same: " + listed(r.foods);
        case ReasonKind::only_the_list:
            return "only what the list names can come in; without a list everything known can, and what is to be left out can be said";
        case ReasonKind::not_known_here:
            return "not known here, and set aside: " + listed(r.foods);
        case ReasonKind::no_new_allergens:
            return "no allergen that is not in the formula may come in, since something was named to be left out";
        default:
            return "";
    }
}

}  // namespace standin
