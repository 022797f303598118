// What the reader of a formula took upon itself.
#include <cmath>

#include "core/words.hpp"
#include "narrate/quantity.hpp"
#include "narrate/words.hpp"
#include "standin/number_text.hpp"
#include "standin/quantity_text.hpp"

namespace standin {
namespace {

std::string quoted(const std::string& words) { return "\"" + words + "\""; }

std::string food(const Reason& r, std::size_t which = 0) { return which < r.foods.size() ? r.foods[which] : std::string("it"); }

double number(const Reason& r, std::size_t which = 0) { return which < r.figures.size() ? r.figures[which].after : 0; }

std::string not_in_the_mass(const Reason& r) {
    switch (r.kind) {
        case ReasonKind::casing_beside:
            return "a casing: it holds the mass and is not counted in its weight";
        case ReasonKind::wrapping_beside:
            return "it wraps the mass and is not counted in its weight; what is ground into the mass needs a line with its weight";
        case ReasonKind::purpose_beside:
            return r.note +
                   ": it stays outside the mass and is not counted in its weight, but its allergens are; what goes into the mass needs a "
                   "line without these words";
        default:
            return "no food of the mass: not counted in its weight";
    }
}

std::string plain(double value) { return trimmed_text(value, 7); }

std::string whole(double value) { return trimmed_text(std::round(value), 0); }

// "spinach: passed over: ...", or without a food "passed over: ...".
std::string of_food(const Reason& r, const std::string& said) { return (r.foods.empty() ? "" : r.foods.front() + ": ") + said; }

std::string rounded(double grams) {
    const double step = grams < 1 ? 0.01 : grams < 10 ? 0.1 : 1;
    return plain(std::round(grams / step) * step);
}

std::string by_measure(const Reason& r) {
    std::string span;
    if (!r.figures.empty() && r.figures.front().low && r.figures.front().high)
        span = ", " + rounded(*r.figures.front().low) + " to " + rounded(*r.figures.front().high) + " g";
    const std::string name = food(r);
    const bool juice = r.role == "piece" && name.ends_with(" juice");  // of a fruit
    const bool volume = r.role == "ml" || r.role == "cl" || r.role == "dl" || r.role == "l";
    if (volume) return "the weight is what that volume of " + name + " usually weighs" + span;
    const std::string what = juice ? "the juice of one " + name.substr(0, name.rfind(' '))
                                   : (r.role.find_first_of("aeiou") == 0 ? "an " : "a ") + r.role + " of " + name;
    return "the weight is what " + what + " usually weighs" + span +
           (r.about == "crystals" ? ": crystals differ from maker to maker, so weigh it" : "");
}

// "a pint taken as the US pint, 473 ml (imperial: 568 ml)"
std::string measure_of_country(const Reason& r) {
    if (r.figures.size() < 2) return r.role;
    const Figure &taken = r.figures[0], &other = r.figures[1];
    const std::string again = r.role.find(' ') == std::string::npos ? r.role : "one";
    return "a " + r.role + " taken as the " + taken.what + " " + again + ", " + plain(taken.after) + " ml (" + other.what + ": " +
           plain(other.after) + " ml)";
}

std::string base(const Reason& r) {
    constexpr double kilo = 1000, close = 0.5, grams_a_pound = 16 * grams_an_ounce;
    const double grams = number(r), pounds = grams / grams_a_pound;
    const bool in_pounds = grams != kilo && std::abs(pounds - std::round(pounds)) * grams_a_pound < close;
    const std::string amount = in_pounds       ? plain(std::round(pounds)) + " lb"
                               : grams >= kilo ? plain(grams / kilo) + " kg"
                                               : rounded(grams) + " g";
    return amount + " of " + r.role;
}

std::string share_presumed(const Reason& r) {
    return food(r) + ": taken as " + r.about + (r.role == "meat" ? ", the usual base" : ", as the other shares are") + "; write " +
           quoted(r.note) + " if it is of that";
}

std::string and_more(const Reason& r) { return number(r) > 0 ? " and " + whole(number(r)) + " more" : ""; }

std::string lines_of(const Reason& r) {
    std::vector<std::string> lines;
    for (const auto& line : r.foods) lines.push_back(quoted(line));
    return listed(lines) + and_more(r);
}

// "plate 10 mm, core 71 C, kale blanched 3 min"
std::string from_method(const Reason& r) {
    std::vector<std::string> all;
    for (const auto& f : r.figures) all.push_back(f.what + " " + plain(f.after) + " " + f.unit);
    all.insert(all.end(), r.foods.begin(), r.foods.end());
    return (r.role == "line" ? "read from the lines: " : "read from the method: ") + listed(all) + "; say so if it is meant otherwise";
}

std::string heat_of_dried(const Reason& r) {
    return food(r) + ": " + exact_text(number(r)) +
           " SHU taken as of the dried pod, as laboratories tell it: " + figures_text(number(r, 1), 2) +
           " mg/kg in the fresh one (write \"SHU fresh\" if it was that)";
}

// Which food, and which form of it.
std::string which_food(const Reason& r) {
    const std::string in = "in a " + r.role + ": ";
    switch (r.kind) {
        case ReasonKind::meant_as:
            if (!r.figures.empty())
                return quoted(r.about) + " taken with " + plain(std::round(number(r))) + " % fat; say how fat it is where it is another";
            return quoted(r.about) + " read as " + food(r) + "; say which if it is another";
        case ReasonKind::usual_by_spoon:
            return "presumed to be " + food(r) + ", the usual one by the spoon; say fresh if it is";
        case ReasonKind::dried_by_share:
            return "read as " + food(r) + ", for there is too little of it in the batch to be the fresh one";
        case ReasonKind::fresh_by_share:
            return "read as " + food(r) + ", for so much of the dried one would be several times the usual dose";
        case ReasonKind::not_the_other:
            return "read as " + food(r) + ", not " + food(r, 1);
        case ReasonKind::from_container:
            return in + "read as " + food(r);
        case ReasonKind::form_not_known:
            return in + "that form of it is not known here, so it is read as fresh " + food(r) +
                   "; what is kept so is often softer and saltier";
        case ReasonKind::slip_mended:
            return of_food(r, quoted(r.about) + " taken for " + quoted(r.note));
        case ReasonKind::translated:
            return "read " + (r.role.empty() ? "" : r.role + " ") + "as " + quoted(r.about);
        default:
            return food(r) + " is not known here: reckoned as " + food(r, 1) +
                   (r.role == "bracket" ? ", as the bracket says," : ", as the line says,") +
                   " with wider bands. Whether it is safe to eat, and its allergens, are yours to check and to declare";
    }
}

std::string shares_of_sheet(const Reason& r) {
    const std::string weight = whole(number(r)) + " g";
    const std::string of = r.role == "meat" ? "the meat" : r.role == "batch" ? "the batch" : "what adds up to 100 %, " + r.role;
    return "the percentages are read as shares of " + of + ", which add up to 100 %: " + weight +
           (r.about.empty() ? ", presumed, for no line tells how much is made" : ", by " + quoted(r.about));
}

// How much of it.
std::string how_much(const Reason& r) {
    switch (r.kind) {
        case ReasonKind::packed_leaves:
            return food(r) + ", packed: how firmly leaves are pressed differs from hand to hand, so the band is wide";
        case ReasonKind::by_measure:
            return by_measure(r);
        case ReasonKind::measure_of_country:
            return measure_of_country(r);
        case ReasonKind::middle_of_range:
            return food(r) + ": a range, the middle is taken";
        case ReasonKind::weights_differ:
            return "two weights are told that differ: the first is taken, the band spans both";
        case ReasonKind::per_by_heading:
            return "reckoned per " + base(r) + ", as the heading says";
        case ReasonKind::amounts_per:
            return "the amounts under " + quoted(r.about) + " are reckoned per " + base(r);
        case ReasonKind::unit_presumed:
            return "a number without a unit, read as " + r.about + (r.role == "heading" ? ", as the heading says" : "");
        case ReasonKind::first_of_two:
            return quoted(r.about) + ": the first is taken; write the one you use";
        case ReasonKind::share_presumed:
            return share_presumed(r);
        case ReasonKind::shares_of_sheet:
            return shares_of_sheet(r);
        case ReasonKind::weighed_by_sheet:
            return "a share, weighed by what the whole sheet makes";
        case ReasonKind::tin_with_water:
            return "a " + r.role + " tells its weight with the water: reckoned drained, " + whole(number(r)) + " g";
        case ReasonKind::tin_to_drain:
            return "a " + r.role + " tells its weight before draining: reckoned drained, " + whole(number(r)) +
                   " g; its label tells the drained weight";
        case ReasonKind::tin_with_brine:
            return "a " + r.role + " often tells its weight with the brine: taken as the drained weight";
        case ReasonKind::soaked_as_water:
            return food(r) + ": soaked in " + food(r, 1) + ", reckoned as in water; to count the " + food(r, 1) +
                   ", give it a line with its weight";
        case ReasonKind::soaked_counted_in:
            return quoted(r.about) + ": all of the " + food(r) + " is counted in" +
                   (r.role.empty() ? "" : "; weigh what is squeezed out, and take it off the line of the " + food(r));
        default:
            return "a share, weighed against the lines that were understood";
    }
}

// What is known of this lot.
std::string what_it_is_like(const Reason& r) {
    switch (r.kind) {
        case ReasonKind::fat_as_said:
            return food(r) + ": reckoned with " + plain(number(r)) + " % fat, as the line says";
        case ReasonKind::fact_as_said:
            return food(r) + ": reckoned with " + r.about + ", as the line says";
        case ReasonKind::with_its_skin:
            return food(r) + " taken with its skin, " + whole(number(r)) + " % fat; write \"skinless\" where it is without";
        case ReasonKind::cut_not_apart:
            return food(r) + ": the " + r.about + " is not told apart here; taken as its meat as a whole, " + whole(number(r)) +
                   " % fat; say the fat where you know it";
        case ReasonKind::heat_of_dried:
            return heat_of_dried(r);
        case ReasonKind::bought_pickled:
            return food(r) + ", pickled: reckoned as " + food(r) +
                   " pickled at home; a bought one brings its own salt, sugar and acid, so read its jar";
        case ReasonKind::bought_dried:
            return food(r) + ", dried: reckoned as " + food(r) +
                   " dried brittle at home; a bought one is softer, and often holds sulphite or sugar: read its packet";
        default:
            return food(r) + ": some are salted, and some hold sulphite: read the packet";
    }
}

// What was counted and what was not.
std::string counted_or_not(const Reason& r) {
    switch (r.kind) {
        case ReasonKind::passed_unknown:
            return of_food(r, "not known here and passed over: " + quoted(r.about));
        case ReasonKind::passed_over:
            if (r.role == "part") return of_food(r, quoted(r.about) + ": the weight is that of the whole; weigh the part that goes in");
            if (r.role == "part weighed") return of_food(r, quoted(r.about) + ": reckoned as the whole plant");
            return of_food(r, "passed over: " + quoted(r.about));
        case ReasonKind::counted_allergen:
            return of_food(r, "counted among " + std::string(r.role == "list" ? "its" : "the") + " allergens: " + quoted(r.about));
        case ReasonKind::hazard_told:
            return quoted(r.about) + ": " + r.note;
        case ReasonKind::title_told:
            if (!r.about.empty()) return "the title: \"" + r.about + "\" is taken for a name, and nothing of it goes in";
            return "the title: " + r.note;
        case ReasonKind::outside_counted_in:
            return r.about + ": counted into the mass; take the line out if it stays outside";
        case ReasonKind::optional_counted_in:
            return food(r) + ", optional: counted in";
        case ReasonKind::other_tongue:
            return "read word for word from another tongue: " + lines_of(r) + "; `standin convert` shows how";
        case ReasonKind::of_the_recipe:
            if (r.role == "guests") return "said of who eats it, and minded: " + lines_of(r);
            if (r.role == "goes-without") return "said of who must go without, and minded: " + lines_of(r);
            return "passed over, as said of the recipe and not of the mass: " + lines_of(r);
        case ReasonKind::headings:
            return "taken for headings: " + lines_of(r);
        case ReasonKind::allergen_beside:
            return quoted(r.about) + " (" + r.role +
                   ") stands in the words beside the lines and in no line: counted among what may be in it. If it goes into the batch, "
                   "give it a line";
        case ReasonKind::meat_beside:
            return quoted(food(r)) +
                   " stands in the words beside the lines and in no line: if it goes into the batch, give it a line, "
                   "for the core temperature too";
        case ReasonKind::from_table:
            return "read as a table, by its column " + quoted(r.about) + (r.foods.empty() ? "" : "; not by " + listed(r.foods));
        case ReasonKind::several_in_line:
            return quoted(r.about) + " is read as " + whole(static_cast<double>(r.foods.size())) + " lines: " + lines_of(r);
        case ReasonKind::part_of_method:
            return "left out, as part of the method: " + quoted(r.about);
        case ReasonKind::method_kept:
            return "the method, " + whole(number(r)) + (number(r) == 1 ? " step" : " steps") +
                   ", is kept beside the lines: what it adds to them is not counted in";
        case ReasonKind::cooked_too_cool:
            return "the method or a note cooks at, or stops at, " + plain(std::round(10 * number(r)) / 10) +
                   " C: in no more heat than that the middle never reaches the core temperature on "
                   "this page. Cook to that, and measure it";
        case ReasonKind::from_method:
            return from_method(r);
        case ReasonKind::casing_beside:
        case ReasonKind::wrapping_beside:
        case ReasonKind::goods_beside:
        case ReasonKind::purpose_beside:
            return (r.about.empty() ? "" : quoted(r.about) + ": ") + not_in_the_mass(r);
        default:
            return r.note;
    }
}

}  // namespace

// Before all other dangers: nothing is known of what goes under another's name.
std::string not_known_at_all(const Reason& r) {
    return quoted(r.foods.front()) + " is not known here and only weighs as " + r.foods.back() +
           ": whether it is poisonous and which allergens it holds nobody has looked at. " +
           (r.role == "grows" ? "Gather only what you, or who knows it, can name for certain as food, and tell everyone that it is in."
                              : "Use it only where you know it for certain as food, and tell everyone that it is in.");
}

std::string reading_words(const Reason& r, Units units) {
    if (r.kind == ReasonKind::likened && !r.about.empty()) return not_known_at_all(r);
    switch (r.kind) {
        case ReasonKind::meant_as:
        case ReasonKind::usual_by_spoon:
        case ReasonKind::dried_by_share:
        case ReasonKind::fresh_by_share:
        case ReasonKind::not_the_other:
        case ReasonKind::from_container:
        case ReasonKind::form_not_known:
        case ReasonKind::slip_mended:
        case ReasonKind::translated:
        case ReasonKind::likened:
            return in_units(which_food(r), units);
        case ReasonKind::packed_leaves:
        case ReasonKind::by_measure:
        case ReasonKind::measure_of_country:
        case ReasonKind::middle_of_range:
        case ReasonKind::weights_differ:
        case ReasonKind::per_by_heading:
        case ReasonKind::amounts_per:
        case ReasonKind::unit_presumed:
        case ReasonKind::first_of_two:
        case ReasonKind::share_presumed:
        case ReasonKind::shares_of_sheet:
        case ReasonKind::weighed_by_sheet:
        case ReasonKind::tin_with_water:
        case ReasonKind::tin_to_drain:
        case ReasonKind::tin_with_brine:
        case ReasonKind::soaked_as_water:
        case ReasonKind::soaked_counted_in:
        case ReasonKind::weighed_by_rest:
            return in_units(how_much(r), units);
        case ReasonKind::fat_as_said:
        case ReasonKind::fact_as_said:
        case ReasonKind::with_its_skin:
        case ReasonKind::cut_not_apart:
        case ReasonKind::heat_of_dried:
        case ReasonKind::bought_pickled:
        case ReasonKind::bought_dried:
        case ReasonKind::bought_salted:
            return what_it_is_like(r);
        default:
            return in_units(counted_or_not(r), units);
    }
}

}  // namespace standin
