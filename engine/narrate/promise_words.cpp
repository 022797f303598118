// What a title promises against what is in the batch, a casing's animal, a legal limit.
#include "core/words.hpp"
#include "narrate/words.hpp"
#include "standin/number_text.hpp"

namespace standin {
namespace {

bool is_of_a_note(const Reason& r) { return r.about == "note-promise"; }

std::string title_says(const Reason& r) { return (is_of_a_note(r) ? "Your words say \"" : "The title says \"") + r.role + "\""; }

std::string of_animals(const Reason& r) {
    if (r.about == "title-food") return "The title says " + r.role + ", and none is in it now: name it after what is.";
    if (r.kind == ReasonKind::title_without_animal)
        return "The title says " + r.role + ", and no line is of it" + (r.foods.empty() ? "." : ": the meat is " + listed(r.foods) + ".") +
               " A name must not mislead about the animal: change the title or the lines.";
    if (r.kind == ReasonKind::title_beside_animal)
        return "Beside the " + r.role + " of the title there is meat or fat of another animal in it: " + listed(r.foods) +
               ". Say so in the name: it matters to those who do not eat it.";
    const std::string of = r.by_way.size() > 1 ? r.by_way[0] + " or " + r.by_way[1] : listed(r.by_way);
    const bool pork = !r.by_way.empty() && r.by_way.front() == "pork";
    return "The casing " + std::string(r.role == "perhaps" ? "may be" : "is") + " of " + of +
           ", which the mass is not: " + listed(r.foods) +
           ". Name it on the label and tell whoever eats none; sheep casings, or collagen stated to be of " +
           (pork ? "beef" : "another beast") + ", do as well.";
}

std::string shown_share(double value, const std::string& unit) { return trimmed_text(value, 2) + (unit.empty() ? "" : " " + unit); }

std::string against_limit(const std::string& verdict) {
    if (verdict == "under") return "Under the limit";
    if (verdict == "over") return "Over the limit";
    return verdict == "nearly" ? "Just within the limit" : "Over the limit as it is usually counted";
}

// "Over the limit: fat 31 % (29-33); most 30 %. ..."
std::string cap_words(const Reason& r) {
    const Figure *limit = figure(r, "limit"), *with_liquids = figure(r, "with liquids");
    if (r.figures.empty() || !limit) return r.note;
    const Figure& value = r.figures.front();
    std::string text = against_limit(r.role) + ": " + value.what + " " + shown_share(value.after, value.unit);
    if (value.low && value.high && *value.high > *value.low)
        text += " (" + trimmed_text(*value.low, 2) + "-" + trimmed_text(*value.high, 2) + ")";
    if (with_liquids) text += ", " + shown_share(with_liquids->after, value.unit) + " with wine, vinegar, juice, milk and stock";
    return text + (limit->low ? "; least " : "; most ") + shown_share(limit->after, value.unit) + ". " + r.note;
}

std::string begun(std::string text) {
    if (!text.empty() && text[0] >= 'a' && text[0] <= 'z') text[0] = static_cast<char>(text[0] - 'a' + 'A');
    return text;
}

// Of somebody who eats it and must go without a food.
std::string of_a_guest(const Reason& r) {
    const std::string says = (r.by_way.empty() ? "your words say \"" : "the title says \"") + r.role + "\"";
    if (r.about == "guest-clash")
        return begun(listed(r.foods)) + (r.foods.size() > 1 ? " are" : " is") + " in it, or may be in it: " + says +
               ". Whoever must go without it must not eat this: leave it out, or make theirs apart with clean tools.";
    if (r.about == "guest-kept") return begun(says) + ": no stand-in brings in " + r.note + ".";
    if (r.about == "guest-without")
        return begun(says) + ". Nothing that goes in is known to hold " + r.note +
               ". Lines alone do not keep it: look at every packet, keep grinder, board and hands clean of it; whoever sells it so must "
               "be able to show it.";
    return begun(says) +
           ". What it names is not known here, so that no line is held against it: ask them, and look at every line and "
           "packet yourself.";
}

std::string promise_said(const Reason& r) {
    if (r.about == "raw-kept")
        return begun(listed(r.foods)) +
               " on the list is not brought in: it is not for those whom the words name. Boil it, or take pasteurised.";
    if (r.about.starts_with("guest-")) return of_a_guest(r);
    switch (r.kind) {
        case ReasonKind::title_raw:
            return title_says(r) +
                   ", which is eaten raw. Nothing here makes raw meat or fish safe to eat, however fresh, cold, salted or sour it is: it "
                   "carries E. coli, Salmonella and parasites. Cook it to the core temperature above, or change the title.";
        case ReasonKind::title_not_fresh:
            return title_says(r) +
                   ", which is cured, dried, fermented, smoked or kept, and often not cooked. What is worked out here is a fresh sausage: "
                   "keep it cold, cook it to the core temperature above, and neither hang nor smoke nor keep it. That other sausage is "
                   "made "
                   "by a tested recipe of its own; for this one change the title.";
        case ReasonKind::title_broken:
            if (is_of_a_note(r))
                return title_says(r) + ", and the batch has what they are advised to leave, or may: " + listed(r.foods) +
                       ". Make theirs without it.";
            return title_says(r) + ", but the batch has what that takes in, or may: " + listed(r.foods) +
                   ". Change the title or the lines.";
        case ReasonKind::title_of_no_allergen:
            return title_says(r) + ", but the batch holds allergens, or may: " + listed(r.foods) +
                   ". No sausage is free of every allergen: change the title.";
        case ReasonKind::title_to_be_shown:
            return title_says(r) +
                   ". No line breaks that, but lines alone do not keep it: what shared a grinder, mill or packing line is not known here, "
                   "and whoever sells it so must be able to show it.";
        case ReasonKind::title_of_diet:
            return title_says(r) + ". " + r.note;
        case ReasonKind::own_records:
            return "Worked out with your own records (" + r.role + ") laid over the built-in ones.";
        case ReasonKind::cap:
            return cap_words(r);
        default:
            return of_animals(r);
    }
}

}  // namespace

std::string promise_words(const Reason& r, Units units) { return in_units(promise_said(r), units); }

}  // namespace standin
