// What the wants came to, what stands in their way and what would help.
#include <array>
#include <cmath>

#include "core/words.hpp"
#include "narrate/quantity.hpp"
#include "narrate/words.hpp"
#include "standin/advice.hpp"
#include "standin/number_text.hpp"

namespace standin {
namespace {

constexpr std::string_view of_one_want = "of one want";  // note of what is within reach: nothing else was asked

std::string bound_word(const std::string& role) { return role == "at least" ? " or more" : role == "at most" ? " or less" : ""; }

std::string with_sign(double value) { return (value > 0 ? "+" : "") + three_figures(value); }

// Where a wish begins to count as met.
double enough(const Reason& r, const Figure& target) {
    const Figure* slack = figure(r, "slack");
    if (!slack || r.role == "equal") return target.after;
    return target.after + (r.role == "at least" ? -slack->after : slack->after);
}

std::string from_to(const Figure& moved, const std::string& unit) {
    return moved.what + " " + (moved.before ? three_figures(*moved.before) + " -> " : "") + three_figures(moved.after) +
           (unit.empty() ? "" : " " + unit);
}

std::string asked_for(const Reason& r, const Figure& target) {
    return "asked for " + three_figures(enough(r, target)) + bound_word(r.role);
}

// Of a wish how far it moves beside how far it was to: that is what its chance is of.
std::string likely(const Reason& r, const Figure& value, const Figure& target) {
    const Figure* moved = figure(r, "moved by");
    if (moved && moved->low && moved->high && value.before)
        return ", a change of likely " + with_sign(*moved->low) + " to " + with_sign(*moved->high) + " where " +
               with_sign(enough(r, target) - *value.before) + " is asked";
    if (!value.low || !value.high) return "";
    return ", likely " + three_figures(*value.low) + " to " + three_figures(*value.high);
}

std::string want(const Reason& r) {
    if (r.figures.size() < 2) return r.about;
    const Figure &moved = r.figures[0], &target = r.figures[1];
    const Figure* together = figure(r, "all together");
    return from_to(moved, moved.unit) + likely(r, moved, target) + "; " + asked_for(r, target) +
           (together ? "; all that is asked together: in " + fixed_text(together->after, 0) + " of 100 batches" : "");
}

std::string comes_back_as_bite(const Reason& r, Units units) {
    std::vector<std::string> foods;
    for (const auto& food : r.figures) foods.push_back(weight_in(food.after, units) + " " + food.what);
    return "Some bite comes back without chile, by one of these for each kilo (2.2 lb): " + listed(foods) +
           ". Each has a taste of its own.";
}

std::string salt_would_bind(const Reason& r, Units units) {
    if (r.figures.size() < 4) return "Salt would bind more than all of this.";
    const Figure &salt = r.figures[0], &more = r.figures[1], &bind = r.figures[2], &loss = r.figures[3];
    if (r.about == "salted")
        return "Salted first: at " + fixed_text(salt.before.value_or(0), 1) +
               " % of the meat little protein dissolves, and that is the glue. The salt by itself brings bind from " +
               fixed_text(bind.before.value_or(0), 0) + " to " + fixed_text(bind.after, 0) +
               " of 100. Who leaves salt out on purpose leaves out salt, or keeps the line, and asks again.";
    return "What it lacks first is salt: at " + fixed_text(salt.before.value_or(0), 1) +
           " % of the meat little protein dissolves, and that is the glue. " + weight_in(more.after, units) + " more " + more.what + " (" +
           fixed_text(salt.after, 1) + " % of the meat) would by itself bring bind from " + fixed_text(bind.before.value_or(0), 0) +
           " to " + fixed_text(bind.after, 0) + " of 100 and cook loss from " + fixed_text(loss.before.value_or(0), 0) + " to " +
           fixed_text(loss.after, 0) + " %. Salt moves only where it is asked for: want saltier.";
}

std::string comes_back_outside(const Reason& r, Units units) {
    if (r.figures.size() < 2)
        return "The sharpness itself comes back with the acid left out: poured, brushed on after cooking; of fruit, as a salsa beside it.";
    const Figure &acid = r.figures[0], &oil = r.figures[1];
    if (r.role == "more")
        return "Or as sharp with a mass that holds better: leave the acid as it was, stir for each kilo of raw mass " +
               weight_in(acid.after, units) + " " + acid.what + " with " + weight_in(oil.after, units) + " " + oil.what +
               " and brush it on after cooking, or serve it beside.";
    return "The sharpness itself comes back at the plate: for each kilo of raw mass stir " + weight_in(acid.after, units) + " " +
           acid.what + " with " + weight_in(oil.after, units) + " " + oil.what + ", brush it on after cooking or serve it beside.";
}

// "To stay above, mix in no more than 110 g lime juice and 40 g vinegar of what is weighed and serve the rest over the plate."
std::string acid_to_hold(const Reason& r, Units units) {
    if (r.figures.empty()) return "";
    std::string text = "Under pH " + fixed_text(r.figures.front().after, 1) + " meat sets in its acid and hardly binds: ";
    std::vector<std::string> acids;
    for (std::size_t f = 1; f < r.figures.size(); ++f) acids.push_back(weight_in(r.figures[f].after, units) + " " + r.figures[f].what);
    // Beside an answer that does what was asked, and puts more of it in: the other way to do it.
    if (r.role == "more" && !acids.empty())
        return text + "who wants one that holds takes no more than " + listed(acids) +
               " in all, and has the rest of the sharpness at the plate.";
    if (acids.empty()) return text + "it stays above only without its acid, which then goes over the plate.";
    return text + "to stay above, mix in no more than " + listed(acids) + " of what is weighed and serve the rest over the plate.";
}

std::string not_green_yet(const Reason& r, Units units) {
    if (r.figures.size() < 2)
        return "Greener, and not green: the colour of the meat lies over so little leaf, and as much as would cover it is no sausage.";
    return "Greener, and not green: the colour of the meat lies over so little leaf. Green takes about " +
           weight_in(r.figures[0].after, units) + " " + listed(r.foods) +
           ", blanched a minute or two, chilled and squeezed: " + fixed_text(r.figures[1].after, 0) + " % of the batch.";
}

std::string demand(const Reason& r) { return r.role + (r.about.empty() ? "" : " " + r.about); }

// "giving up "keep lemon juice": about 35 g of it would do"
std::string giving_up(const Reason& r, Units units) {
    const std::string text = "giving up \"" + demand(r) + "\"";
    if (r.figures.empty()) return text;
    const double grams = r.figures.front().after;
    return text +
           (grams > 0 ? ": with about " + weight_in(grams, units) + " of it the rest can be met" : ": without it the rest can be met");
}

// "what is on hand (spinach: none of 320 g)"
std::string short_of(const Reason& r, Units units) {
    std::string lines;
    for (const auto& f : r.figures)
        lines += (lines.empty() ? "" : "; ") + f.what + ": " + (f.after > 0 ? weight_in(f.after, units) : std::string("none")) +
                 (f.before ? " of " + weight_in(*f.before, units) : "");
    return "what is on hand" + (lines.empty() ? "" : " (" + lines + ")");
}

// "chicken skin goes no further: 200 g in a kilo is the most that is good in a sausage"
std::string held_at_most(const Reason& r, Units units) {
    const double most = r.figures.front().after;
    if (r.role == "binders")
        return "flour, crumbs and starch go no further: together " + three_figures(most) + " % of such a batch is the most";
    const std::string food = listed(r.foods) + " goes no further: ";
    if (r.role == "list") return food + "all " + weight_in(most, units) + " that there is are in it";
    if (r.role == "kilo") return food + three_figures(most) + " g in a kilo is the most that is good in a sausage";
    return food + "of a binder that was not in it, " + three_figures(most) + " % of such a batch is the most";
}

// "salt is 1.80 % of batch, asked for 1.50; by itself it can be met, with all that is asked it comes to 1.62."
std::string within_reach(const Reason& r) {
    const Figure *now = r.figures.empty() ? nullptr : &r.figures.front(), *asked = figure(r, "asked for");
    if (!now || !asked) return r.about + ": how near it can be come to is not known.";
    const auto comes_to = [&](std::string_view what) {
        const Figure* found = figure(r, what);
        return "it comes to " + three_figures(found ? found->after : now->after);
    };
    const auto met = [&](std::string_view where) { return r.role.find(where) != std::string::npos; };
    std::string text = r.about + ": " + now->what + " is " + three_figures(now->after) + ", asked for " + three_figures(asked->after) +
                       (now->unit.empty() ? "" : " " + now->unit) + "; ";
    const bool only = !figure(r, "beside");
    if (met("nearest")) return text + "what comes nearest has it: " + comes_to("nearest") + ".";
    const Figure* nearest = figure(r, "nearest");
    if (only && nearest && met("alone"))
        return text + "what comes nearest has " + three_figures(nearest->after) + ": nearer was not found.";
    if (only && nearest && r.note != of_one_want) {
        // What was found is no worse than what was reckoned.
        const Figure* alone = figure(r, "alone");
        const double is = alone ? std::abs(alone->after - asked->after) : 0, found = std::abs(nearest->after - asked->after);
        if (!alone || found <= is) return text + "what comes nearest has " + three_figures(nearest->after) + ": nearer was not found.";
        return text + "the nearest found for it alone is " + three_figures(alone->after) + "; what comes nearest has " +
               three_figures(nearest->after) + ".";
    }
    if (met("alone") && (only || met("beside")))
        return text + "by the reckoning it can be had, but at the odds asked for no batch was found that has it.";
    if (!only && r.note == of_one_want)
        return text +
               (met("alone") ? "were this all that the word asks it could be had"
                             : "were this all that the word asks it came to at best " +
                                   three_figures(figure(r, "alone") ? figure(r, "alone")->after : now->after)) +
               ", beside the rest of the word " + (met("beside") ? std::string("too") : comes_to("beside")) + ".";
    text += only ? comes_to("alone") + " at best, of all that was looked at"
                 : "by itself " + (met("alone") ? std::string("it can be met") : comes_to("alone") + " at best");
    if (!only) text += ", with all that is asked " + (met("beside") ? std::string("too") : comes_to("beside"));
    return text + ".";
}

// "hotter cannot be had from what is there: what comes nearest is milder than your formula, capsaicinoids 1.34 -> 0.56 mg/kg; with 54 g
// jalapeño beside it, it would be as asked"
std::string goes_away(const Reason& r, Units units) {
    if (r.figures.empty()) return r.about + " cannot be had from what is there";
    std::string text = r.about + " cannot be had from what is there: what comes nearest is " +
                       (r.note.empty() ? "further from it" : r.note) + " than your formula, " +
                       from_to(r.figures.front(), r.figures.front().unit);
    for (std::size_t f = 1; f < r.figures.size(); ++f)
        text += (f == 1 ? "; with " : ", or ") + weight_in(r.figures[f].after, units) + " " + r.figures[f].what;
    return text + (r.figures.size() > 1 ? " beside what is below it would be as asked" : "");
}

std::string trimmed_of(const Reason& r) {
    if (r.foods.size() < 2) return "";
    const std::string off = r.role == "skin" ? "without its skin" : "with its fat cut off";
    return "The " + r.foods.front() + " is the " + r.foods.back() + " of your list " + off + ": weigh it as it is then.";
}

std::string weight_for_weight(const Reason& r) {
    const std::string with = r.foods.empty() ? "it" : r.foods.front(), of = r.foods.size() < 2 ? "the line" : r.foods[1];
    return "taking " + with + " for " + of + " weight for weight, unbalanced: " + r.note + " (" +
           fixed_text(r.figures.empty() ? 0 : r.figures.front().after, 1) + " from the original)";
}

std::string so_much(const Reason& r, Units units) {
    if (r.figures.empty()) return listed(r.foods) + " on hand";
    const Figure& f = r.figures.front();
    if (!r.about.empty()) {
        const Figure* itself = figure(r, "itself");
        const std::string same = itself ? weight_in(itself->after, units) + " " + r.about : "";
        if (r.foods.empty()) return "from a shop: " + same;
        const std::string other = weight_in(f.after, units) + " " + r.foods.front() +
                                  (r.foods.size() > 1 ? " and " + weight_in(r.figures[1].after, units) + " " + r.foods[1] : "");
        return same.empty() ? "from a shop, for the " + r.about + ": " + other : "from a shop: " + same + ", or " + other;
    }
    return "about " + weight_in(f.after, units) + " " + listed(r.foods) + " on hand" +
           (f.before && *f.before > 0 ? " in place of " + weight_in(*f.before, units) : "");
}

}  // namespace

std::string want_in_brief(const Reason& r) {
    if (r.figures.size() < 2) return r.about;
    const Figure &moved = r.figures[0], &target = r.figures[1];
    return from_to(moved, moved.unit) + ", " + asked_for(r, target);
}

std::string advice_words(const Reason& r, Units units) {
    switch (r.kind) {
        case ReasonKind::want:
            return want(r);
        case ReasonKind::comes_back_as_aroma:
            if (r.role == "more") return "More of the scent, without acid in the mass: " + listed(r.foods) + ", 2-4 g to the kilogram.";
            return "Some of the sharpness comes back as aroma, without acid in the mass: " + listed(r.foods) + ", 2-4 g to the kilogram.";
        case ReasonKind::comes_back_as_allium:
            return "Some of the garlic and onion comes back with " + weight_in(r.figures.front().after, units) + " " + listed(r.foods) +
                   " more, which you have: taste a fried patty.";
        case ReasonKind::comes_back_as_bite:
            return comes_back_as_bite(r, units);
        case ReasonKind::salt_would_bind:
            return salt_would_bind(r, units);
        case ReasonKind::part_way:
            if (r.role == "hardly")
                return "Hardly any of the way: with what is there all of it would cost the sausage itself, as told next.";
            return "Part of the way, and still near your sausage: who wants all of it has another one, told next.";
        case ReasonKind::goes_away:
            return goes_away(r, units);
        case ReasonKind::trimmed_of:
            return trimmed_of(r);
        case ReasonKind::by_making:
            return "Nothing to buy or weigh: this goes most of the way. Try it first, fry a little, and take the next where it is not "
                   "enough.";
        case ReasonKind::comes_back_outside:
            return comes_back_outside(r, units);
        case ReasonKind::acid_to_hold:
            return acid_to_hold(r, units);
        case ReasonKind::not_green_yet:
            return not_green_yet(r, units);
        case ReasonKind::demand:
            return demand(r);
        case ReasonKind::short_of:
            return short_of(r, units);
        case ReasonKind::giving_up:
            return giving_up(r, units);
        case ReasonKind::more_on_hand:
            return "more on hand of what is short" + (r.figures.empty() ? ""
                                                                        : ", or a batch of " + three_figures(r.figures.front().after) +
                                                                              " % of the size, which the meat on hand makes");
        case ReasonKind::so_much_on_hand:
            return so_much(r, units);
        case ReasonKind::within_reach:
            return within_reach(r);
        case ReasonKind::held_at_most:
            return held_at_most(r, units);
        case ReasonKind::stopped_before:
            return "the search was stopped before it found a plan that meets every want";
        case ReasonKind::none_within_limits:
            return "no plan that was found within the limits meets every want";
        case ReasonKind::nothing_to_taste:
            return "giving up " + r.about + ": there is next to no " + listed(r.foods) + " in it as it is";
        case ReasonKind::giving_up_one:
            return "giving up one of them";
        case ReasonKind::weight_for_weight:
            return weight_for_weight(r);
        case ReasonKind::weighing_it_apart:
            return "weighing it yourself, in a formula of its own: compare holds it against this one";
        default:
            return r.note;
    }
}

std::string in_words(Nearness nearness) {
    constexpr std::array words{"hardly to be told apart", "close", "a little different", "another sausage, still good",
                               "no longer this sausage"};
    return words.at(static_cast<std::size_t>(nearness));
}

}  // namespace standin
