// Reasons as sentences.
#include <array>
#include <cmath>

#include "core/words.hpp"
#include "narrate/directions.hpp"
#include "narrate/quantity.hpp"
#include "narrate/words.hpp"
#include "standin/formula.hpp"
#include "standin/number_text.hpp"

namespace standin {
namespace {

// How near a dose or a property must stay to be called the same; a choice of words, nothing is computed from it.
constexpr double same_dose = 0.1, same_property = 0.03;

void say(std::string& text, const std::string& more, const char* between = "; ") {
    if (more.empty()) return;
    if (text.empty()) text = more;
    else text += (text.back() == '.' ? std::string(" ") : std::string(between)) + more;
}

// What a role is called in "as much green".
std::string dose_word(const std::string& role) {
    constexpr std::array<std::pair<std::string_view, std::string_view>, 8> words{{{"lean", "meat protein"},
                                                                                  {"nut", "nut"},
                                                                                  {"binder", "binding"},
                                                                                  {"allium", "bite of garlic and onion"},
                                                                                  {"herb", "herb flavour"},
                                                                                  {"spice", "flavour"},
                                                                                  {"sweet", "sweetness"},
                                                                                  {"liquid", "liquid"}}};
    for (const auto& [of, called] : words)
        if (role == of) return std::string(called);
    return role;
}

// "as much green as before", "half its green", "1.4 times its green".
std::string share_of_dose(const Reason& r) {
    if (r.figures.empty() || !r.figures.front().before || !(*r.figures.front().before > 0)) return "";
    const double share = r.figures.front().after / *r.figures.front().before;
    const std::string what = dose_word(r.role);
    if (std::abs(share - 1) <= same_dose) return "brings as much " + what;
    constexpr double much_greener = 3;  // savoy for white cabbage is there for its bulk; what it does to the colour is told with that
    if (share > much_greener && r.role == "green") return "";
    if (share > 1) return "brings " + fixed_text(share, share < 9.95 ? 1 : 0) + " times the " + what;
    constexpr double hardly = 0.05;  // savoy for parsley is there for its bulk
    if (share < 0.01) return "";
    if (share < hardly) return "fills its place, with hardly any " + what;
    const double percent = share < 0.1 ? std::round(100 * share) : std::round(20 * share) * 5;
    return "brings " + std::to_string(std::lround(percent)) + " % of the " + what;
}

// "brings 45 % of the binding; as far as a sausage takes it, the rest is left out".
std::string stands_in(const Reason& r) {
    std::string text = share_of_dose(r);
    const Figure* share = figure(r, "capped");
    if (!share) return text;
    text += text.empty() ? "" : ": ";
    return text + "as much of it as a sausage takes, for about " + fixed_text(5 * std::round(share->after / 5), 0) + " % of the line";
}

bool holds(const Reason& r) {
    if (r.figures.empty() || !r.figures.front().before) return false;
    const Figure& f = r.figures.front();
    return is_nil(f) || std::abs(f.after - *f.before) <= same_property * std::abs(*f.before);
}

bool rises(const Reason& r) {
    return !r.figures.empty() && r.figures.front().before && r.figures.front().after > *r.figures.front().before;
}

std::string moved(const Reason& r, const char* held, const char* more, const char* less) {
    return holds(r) ? held : rises(r) ? more : less;
}

// What has its moment, however often it is said.
std::string how_it_goes_in(const std::string& role) {
    if (role == "acid") return ", cold and last, once the lean is salted and tacky";
    return role == "liquid" ? ", ice-cold once the salt is in: salted meat takes it up" : "";
}

std::string not_there(const Reason& r, Units units) {
    if (r.role == "covered") return "none on hand; the " + r.about + " that comes in takes its place";
    if (r.figures.empty() || r.figures.front().after <= 0)
        return r.foods.empty() ? "none on hand, and nothing there stands in for it"
                               : "none on hand; nearer without it than with what swaps names for it (" + listed(r.foods) + ")";
    const Figure* listed = figure(r, "on the list");
    return "only " + weight_in(r.figures.front().after, units) + " to be had" +
           (listed ? ", which " + weight_in(listed->after, units) + " as bought come to once trimmed" : "");
}

std::string salt(const Reason& r, Units units) {
    if (r.figures.empty()) return "salt follows the other changes";
    const Figure& f = r.figures.front();
    if (!holds(r) && r.role != "near") return moves(f, units);
    return "keeps " + moves({f.what + (holds(r) ? "" : " near"), {}, f.after, f.unit}, units);
}

std::string serves(const Reason& r) {
    if (r.figures.empty() || !r.figures.front().before) return "";
    const Figure& f = r.figures.front();
    const std::string_view says = direction(f.what, f.after - *f.before);
    return says.empty() ? "" : "makes it " + std::string(says);
}

constexpr const char* glue = "dissolved protein is the glue";

// Without numbers, asks and notes.
std::string gist(const Reason& r, Units units) {
    switch (r.kind) {
        case ReasonKind::stands_in:
            return stands_in(r);
        case ReasonKind::not_there:
            return not_there(r, units);
        case ReasonKind::unwanted:
            if (r.role == "perhaps") return "as bought it may hold what you leave out; where the packet names none, keep the line";
            return "you asked for none of it";
        case ReasonKind::less_acid:
            return "less acid lets the meat bind";
        case ReasonKind::sourness:
            return moved(r, "keeps it as sharp as it was", "makes it sharper", "makes it less sharp");
        case ReasonKind::heat:
            return moved(r, "keeps it as hot as it was", "makes it hotter", "makes it milder");
        case ReasonKind::salt:
            return salt(r, units);
        case ReasonKind::fat:
            if (r.role == "firmness") return rises(r) ? "fat stays soft, lean sets firm" : "lean sets firm, fat stays soft";
            return moved(r, "keeps it as rich as it was", "makes it richer", "makes it leaner");
        case ReasonKind::green:
            return moved(r, "keeps it as green as it was", "makes it greener", "makes it less green");
        case ReasonKind::drier_paste:
            return "less wet paste, so the meat's protein is less diluted";
        case ReasonKind::makes_room:
            return "what comes in for other lines brings it too";
        case ReasonKind::balance:
            return "balances the rest";
        case ReasonKind::binder:
            return "holds the loose water, so the mass sets";
        case ReasonKind::addition:
            return "for its " + dose_word(r.role) + how_it_goes_in(r.role);
        case ReasonKind::order:
            return r.role == "green" ? "acid that lies on the leaf turns it olive"
                                     : "acid that meets unsalted meat keeps its protein from dissolving";
        case ReasonKind::mixing:
            return moved(r, glue, glue, "less protein is dissolved, and that is the glue");
        case ReasonKind::cold:
            return r.role == "fish" ? "cold fish stays firm and gives the salt more to hold it by" : "cold fat does not smear";
        case ReasonKind::plate:
            return "the plate decides how much protein is opened and how coarse the bite is";
        case ReasonKind::rest:
            return "acid turns leaf green to olive, hour by hour";
        case ReasonKind::rest_cold:
            return "the colder, the slower acid turns leaf green to olive";
        case ReasonKind::core:
            return r.role == "green" ? "what is cooked hotter loses more, of its green too" : "what is cooked hotter loses more";
        case ReasonKind::short_blanch:
            return "each minute in the pot takes green away";
        case ReasonKind::seeds_in:
            return "seeds and ribs hold most of the heat";
        case ReasonKind::squeeze:
            return r.role == "green" ? "less water thins the green" : "less wet paste, so the meat's protein is less diluted";
        case ReasonKind::cook_through:
            return "the meat that comes in asks for it";
        case ReasonKind::acid_loosens:
            return r.role == "wet" ? "acid and water loosen the bind" : "acid loosens the bind";
        case ReasonKind::less_binder:
            return "less of what sets it";
        case ReasonKind::salt_late:
            return "meat that is salted early gives up the protein that makes it tight";
        case ReasonKind::serves:
            return serves(r);
        case ReasonKind::keeps_weight:
            return "so that the meat weighs what it did";
        case ReasonKind::lean_comes_along:
            return r.role == "water" ? "what comes in for something dry brings its own water" : "as much lean comes in with the fat";
        default:
            return "";
    }
}

bool lies(ReasonKind kind, ReasonKind first, ReasonKind last) { return kind >= first && kind <= last; }

// What is said of a batch or of an answer is said in one way, brief or in full.
std::string one_way(const Reason& r, Units units) {
    if (lies(r.kind, ReasonKind::asks_of_making, ReasonKind::fat_named_apart)) return in_units(beside_words(r), units);
    if (lies(r.kind, ReasonKind::not_known_well, ReasonKind::worth_measuring)) return unknown_words(r);
    if (lies(r.kind, ReasonKind::title_raw, ReasonKind::cap)) return promise_words(r, units);
    if (lies(r.kind, ReasonKind::own_board, ReasonKind::asked_of_it)) return beside_step_words(r, units);
    if (lies(r.kind, ReasonKind::meant_as, ReasonKind::kitchen_fact)) return reading_words(r, units);
    if (lies(r.kind, ReasonKind::taken_as_amount, ReasonKind::set_aside)) return list_words(r, units);
    switch (r.kind) {
        case ReasonKind::caution:
            return caution_words(r, units);
        case ReasonKind::stretched:
        case ReasonKind::shape_unknown:
        case ReasonKind::cold_green:
        case ReasonKind::leaf_cut:
        case ReasonKind::warms_slowly:
        case ReasonKind::no_table:
        case ReasonKind::table_ends:
            return limit_words(r, units);
        case ReasonKind::kills:
            return kills_words(r, units);
        case ReasonKind::keeps_green:
            return keeps_green_words(r, units);
        case ReasonKind::scaled_as_asked:
        case ReasonKind::scaled_to_list:
        case ReasonKind::scaled_to_meat:
        case ReasonKind::presumed_there:
        case ReasonKind::taken_for_enough:
        case ReasonKind::presumed_missing:
        case ReasonKind::all_that_is_there:
        case ReasonKind::only_the_list:
        case ReasonKind::not_known_here:
        case ReasonKind::no_new_allergens:
            return stock_words(r, units);
        case ReasonKind::table:
            return table_words(r);
        case ReasonKind::without_casing:
            return "they are, or may be, what \"" + r.about + "\" leaves out";
        case ReasonKind::order_costs:
        case ReasonKind::order_chosen:
        case ReasonKind::core_raised:
        case ReasonKind::wet_leaves:
        case ReasonKind::fine_scale:
        case ReasonKind::casing_named:
        case ReasonKind::width_unsaid:
        case ReasonKind::kept_to_rule:
            return settled_words(r, units);
        case ReasonKind::sets_cold:
            return sets_cold_words(r);
        case ReasonKind::said:
            return in_units(r.note, units);
        default:
            return r.kind >= ReasonKind::same_dose ? amount_words(r, units) : advice_words(r, units);
    }
}

bool is_of_an_edit(ReasonKind kind) { return kind <= ReasonKind::lean_comes_along; }

// A sentence of its own: "Earthier, a little saltier; strip the ribs."
void add_note(std::string& text, const std::string& note, Units units) {
    if (note.empty()) return;
    if (!text.empty() && text.back() != '.') text += ".";
    text += (text.empty() ? "" : " ") + in_units(note, units);
}

}  // namespace

bool is_told(const Reason& reason) { return reason.kind != ReasonKind::balance; }

Reason make_reason(ReasonKind kind, std::vector<Figure> figures, std::vector<std::string> foods) {
    Reason reason;
    reason.kind = kind;
    reason.figures = std::move(figures);
    reason.foods = std::move(foods);
    return reason;
}

Reason reason_about(ReasonKind kind, std::string about, std::vector<std::string> foods) {
    Reason reason = make_reason(kind, {}, std::move(foods));
    reason.about = std::move(about);
    return reason;
}

Reason why_beside(const Beside& beside) {
    constexpr std::array kinds{ReasonKind::casing_beside, ReasonKind::wrapping_beside, ReasonKind::goods_beside,
                               ReasonKind::purpose_beside};
    Reason reason = make_reason(kinds.at(static_cast<std::size_t>(beside.kind)));
    reason.note = beside.purpose;
    return reason;
}

Reason said(std::string words) {
    Reason reason;
    reason.kind = ReasonKind::said;
    reason.note = std::move(words);
    return reason;
}

std::vector<std::string> in_full(const std::vector<Reason>& reasons, Units units) {
    std::vector<std::string> all;
    for (const auto& reason : reasons) all.push_back(in_full(reason, units));
    return all;
}

std::string in_brief(const Reason& r, Units units) {
    if (r.kind == ReasonKind::want) return want_in_brief(r);
    if (!is_of_an_edit(r.kind)) return one_way(r, units);
    std::string text = gist(r, units);
    for (const auto& ask : r.asks) say(text, in_units(ask, units));
    add_note(text, r.note, units);
    if (!text.empty()) return text;
    return r.kind == ReasonKind::stands_in ? "fills its place" : "balances the rest";
}

std::string in_full(const Reason& r, Units units) {
    if (!is_of_an_edit(r.kind)) return one_way(r, units);
    std::string text = gist(r, units);
    for (const auto& figure : r.figures)
        if (!is_nil(figure) && !(r.kind == ReasonKind::not_there || r.kind == ReasonKind::salt)) say(text, moves(figure, units));
    std::string by_way;
    for (const auto& food : r.by_way) by_way += (by_way.empty() ? "" : ", ") + food;
    if (!by_way.empty()) say(text, "by way of " + by_way);
    for (const auto& ask : r.asks) say(text, in_units(ask, units));
    add_note(text, r.note, units);
    return text.empty() ? "balances the rest" : text;
}

}  // namespace standin
