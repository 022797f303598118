#include "render/sentences.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include "render/effects.hpp"
#include "render/text/text_parts.hpp"
#include "render/units.hpp"
#include "render/weights.hpp"
#include "standin/colour_names.hpp"
#include "standin/narrate.hpp"
#include "words.hpp"

namespace standin::cli {
namespace {

std::string a_or_an(const std::string& word) { return (word.find_first_of("aeiou") == 0 ? "an " : "a ") + word; }

std::string roles_of(const SwapsAnswer& a) {
    std::vector<std::string> words;
    for (const auto role : a.roles) words.emplace_back(word(role));
    return words.empty() ? "" : " (" + listed(words) + ")";
}

// The word of the bind; what holds only middling and is firm to the bite is not called tender.
std::string mass_word(const Prediction& p) {
    constexpr double firm = 60;  // of 100; a well made fresh sausage has 50
    return p.bind_word == "tender" && p.properties[Property::firmness].mid >= firm ? "firm, lightly bound" : p.bind_word;
}

}  // namespace

std::string colour_words(const PredictedColour& colour) {
    return colour.word + (colour.flecks.empty() ? "" : " with " + colour.flecks + " flecks");
}

// What it will be, in two sentences.
std::string in_short(const Prediction& p) {
    const auto& q = p.properties;
    const std::string raw = colour_words(p.rested), done = colour_words(p.cooked);
    const std::string colour = raw == done ? raw + " before and after cooking" : raw + " when rested and " + done + " when cooked";
    return capital(a_or_an(mass_word(p))) + " mass, " + colour + ", with " + heat_and_chance(p) + ". Salt is " +
           number(q[Property::salt_pct_of_meat].mid, 2) + " % of meat, pH " + number(q[Property::ph].mid, 2) + ", and it loses " +
           number(q[Property::cook_loss_pct].mid, 0) + " % of its weight on cooking.";
}

std::string heat_basis(const Prediction& p) {
    constexpr double worth_telling = 0.3;  // mg/kg
    const double heat = p.properties[Property::heat_mg_kg].mid, loss = p.properties[Property::cook_loss_pct].mid;
    if (heat < worth_telling || loss >= 100) return "";
    return "Heat is told to a kilo of the raw mass, less what cooking takes of it: " + number(heat, 1) + " mg/kg; a kilo as it is eaten, " +
           number(loss, 0) + " % lighter, has " + number(heat / (1 - loss / 100), 1) + " mg.";
}

std::string said_words(const PredictedColour& colour) {
    constexpr double worth_telling = 0.1;
    std::string text;
    for (const auto& said : said_of(colour))
        if (said.share >= worth_telling) text += (text.empty() ? "" : ", ") + said.word + ' ' + number(100 * said.share, 0) + " %";
    return text;
}

std::string why_no_kill(const Prediction& p, Units units) {
    if (p.lethality) return "";
    for (const auto& note : p.notes)
        if (note.kind == ReasonKind::warms_slowly || note.kind == ReasonKind::no_table || note.kind == ReasonKind::table_ends)
            return in_full(note, units) + ".";
    return "";
}

bool only_pepper(const Prediction& p) {
    return p.properties[Property::heat_mg_kg].high <= 0 && p.properties[Property::burn_mg_kg].high > 0;
}

std::string answer_first(const AdaptAnswer& a) {
    const auto named = [&](const std::string& words) { return a.base.title.empty() ? capital(words) : a.base.title + ": " + words; };
    if (a.variants.empty())
        return named(a.reach.empty() ? "nothing found does what was asked."
                                     : "nothing found does what was asked, or brings it nearer than the formula as it stands.");
    if (!a.conflict.empty())
        return named("nothing found does " + std::string(a.conflict.size() > 1 ? "all that" : "what") +
                     " was asked; what comes nearest is below.");
    const auto n = a.variants.size();
    return named(n == 1 ? "one way to do it." : std::to_string(n) + " ways to do it, the nearest first.");
}

namespace {

// What of the list was not understood.
bool is_first(const Reason& told) {
    if (told.kind == ReasonKind::passed_unknown) return told.role == "list";
    return told.kind == ReasonKind::set_aside && (told.role == "remark" || told.role == "open");
}

}  // namespace

std::vector<std::string> told_first(const std::vector<Reason>& read_as, Units units) {
    std::vector<Reason> first;
    std::copy_if(read_as.begin(), read_as.end(), std::back_inserter(first), is_first);
    auto words = in_full(first, units);
    for (auto& one : words) one = capital(one) + ".";
    return words;
}

std::vector<std::string> said_first(const AdaptAnswer& a, Units units) {
    auto words = in_full(a.first, units);
    for (auto& one : words) one = capital(one) + ".";
    return words;
}

std::vector<Reason> without_cautions(std::vector<Reason> read_as) {
    std::erase_if(read_as,
                  [](const Reason& told) { return told.kind == ReasonKind::hazard_told || told.kind == ReasonKind::cooked_too_cool; });
    return read_as;
}

std::vector<std::string> read_as_words(const std::vector<Reason>& read_as, Units units) {
    std::vector<Reason> rest = without_cautions(read_as);
    std::erase_if(rest, is_first);
    std::vector<std::string> once;
    for (auto& words : in_full(rest, units))
        if (std::find(once.begin(), once.end(), words) == once.end()) once.push_back(std::move(words));
    return once;
}

std::string proof_words(const AdaptAnswer& a) {
    if (a.proved) return "Proved: no plan left out can come nearer than those shown.";
    constexpr double told = 0.05;  // noticeable differences: less is shown as none
    const std::string by = a.gap < told ? "nearer by less than 0.1." : "up to " + number(a.gap, 1) + " nearer.";
    return "Not proved: a plan not looked at could still be " + by;
}

std::string conflict_heading(const AdaptAnswer& a) {
    // What was looked for and not found is nothing that was shown to be impossible.
    if (!a.reach.empty() && !a.proved) return a.conflict.size() > 1 ? "Nothing found meets all of these" : "Nothing found meets this";
    return a.conflict.size() > 1 ? "These demands cannot all be met" : "This cannot be met";
}

std::vector<Help> what_would_help(const AdaptAnswer& a) {
    auto all = a.would_give;
    const bool lone = a.conflict.size() == 1 && a.variants.size() + a.reach.size() > 0;
    if (lone) std::erase_if(all, [](const Reason& r) { return r.kind == ReasonKind::giving_up; });
    // What shops have for a line that is gone comes beside an answer that can be made as it is.
    const auto from_a_shop = [](const Reason& r) { return r.kind == ReasonKind::so_much_on_hand && !r.about.empty(); };
    const auto shops = std::stable_partition(all.begin(), all.end(), [&](const Reason& r) { return !from_a_shop(r); });
    const std::string possible = a.variants.empty() ? "What would make it possible" : "What would make all of it possible";
    return {{a.conflict.empty() ? "What would bring it nearer" : possible, {all.begin(), shops}},
            {"It can be made as it is; nearer, with something bought", {shops, all.end()}}};
}

namespace {

// How far something moved at the table; 0 where nobody would notice.
double noticed(const Variant& variant, std::string_view what) {
    constexpr double least = 0.9;  // of a noticeable difference: a word that turns at a border is no change where nobody would notice one
    for (const auto& f : variant.table_reason.figures)
        if (f.what == what && std::abs(f.after) >= least) return f.after;
    return 0;
}

// "with mild heat", "without heat to speak of"
std::string with_heat(const std::string& phrase) {
    constexpr std::string_view none = "no heat";
    return phrase.starts_with(none) ? "without heat" + phrase.substr(none.size()) : "with " + phrase;
}

std::string joined(const std::vector<std::string>& all) {
    std::string text;
    for (const auto& one : all) text += (text.empty() ? "" : ", ") + one;
    return text;
}

// "loose" that came to be "tender"; what moved and kept its word is told as such: "loose (firmer than before)".
std::string turned(const std::string& before, const std::string& after, double moved, const char* more, const char* less) {
    if (moved == 0) return before;
    return before == after ? after + " (" + (moved > 0 ? more : less) + " than before)" : after;
}

// What is richer, leaner or juicier is so for what it loses in the pan as well.
bool asks_about_fat(const Variant& variant) {
    const auto is_of_fat = [](const WantResult& want) {
        const std::string what = want.reason.figures.empty() ? "" : want.reason.figures.front().what;
        return what == info(Property::fat_pct).name || what == info(Property::fat_pct_of_meat).name || what == info(Property::juice).name;
    };
    return std::any_of(variant.wants.begin(), variant.wants.end(), is_of_fat);
}

// One thing that the table tells of: what it was, what it is now, and when that is seen.
struct Turn {
    std::string before, after, when{};
};

// What is raw pink is not so on the plate: where the two differ, before or after a change, each is told by itself.
void add_colours(std::vector<Turn>& all, const Turn& raw, const Turn& cooked) {
    if (raw.before == cooked.before && raw.after == cooked.after) return all.push_back(raw);
    all.push_back({raw.before, raw.after, " raw"});
    all.push_back({cooked.before, cooked.after, " cooked"});
}

}  // namespace

std::string becomes(const Prediction& b, const Variant& variant) {
    const Prediction& v = variant.prediction;
    const double bind = noticed(variant, "bind"), firm = noticed(variant, "firmness"), heat = noticed(variant, "heat");
    const bool rested = noticed(variant, "colour, rested") != 0 || noticed(variant, "green") != 0;
    const bool cooked = noticed(variant, "colour, cooked") != 0;
    const std::string was = mass_word(b), now_is = mass_word(v);
    const Turn raw{colour_words(b.rested), colour_words(rested ? v.rested : b.rested)},
        done{colour_words(b.cooked), colour_words(cooked ? v.cooked : b.cooked)};
    std::vector<Turn> all{
        {was, bind != 0 ? turned(was, now_is, bind, "better bound", "looser") : turned(was, now_is, firm, "firmer", "softer")}};
    add_colours(all, raw, done);
    all.push_back({heat_phrase(b.heat_word), turned(heat_phrase(b.heat_word), heat_phrase(v.heat_word), heat, "hotter", "milder")});
    const auto& q = v.properties;
    const std::string numbers = "; salt " + number(q[Property::salt_pct_of_meat].mid, 2) + " % of meat, pH " +
                                number(q[Property::ph].mid, 1) +
                                (asks_about_fat(variant) ? ", cook loss " + number(b.properties[Property::cook_loss_pct].mid, 0) + " -> " +
                                                               number(q[Property::cook_loss_pct].mid, 0) + " %."
                                                         : ".");
    // What turned is said with what it was, what moved within its word and what stays by itself. Crumbs are not sliced.
    std::vector<std::string> turns, moved, stays;
    const bool in_crumbs = variant.formula.process.cook == Cook::loose;
    std::string has;
    for (std::size_t i = in_crumbs ? 1 : 0; i < all.size(); ++i) {
        const auto& [before, after, when] = all[i];
        const bool of_heat = all.size() == i + 1, kept_its_word = after.find(" than before)") != std::string::npos;
        if (before == after) stays.push_back(of_heat ? with_heat(after) : after + when);
        else if (kept_its_word && of_heat) has = "has " + after;
        else if (kept_its_word) moved.push_back(after);
        else turns.push_back("from " + before + " to " + after + when);
    }
    std::string text = turns.empty() ? "" : "It turns " + listed(turns);
    if (!moved.empty()) text += (text.empty() ? "It is " : "; it is ") + listed(moved);
    if (!has.empty()) text += (text.empty() ? "It " : moved.empty() ? "; it " : " and ") + has;
    if (!stays.empty()) text += (text.empty() ? "It stays " : "; it stays ") + joined(stays);
    return text + numbers;
}

std::string Names::of_line(const std::string& id) const {
    if (formula_)
        for (const auto& line : formula_->lines)
            if (line.ingredient == id) return line.name;
    return engine_.name_of(id);
}

std::string in_brief(const Edit& e, const Names& names) {
    const std::string line = e.line.empty() ? "" : names.of_line(e.line);
    // The same food made ready otherwise is told by how: "serrano, seeded, for serrano".
    const auto with = [&] { return e.with == e.line ? with_preparations(names.of(e.with), e.prepared) + "," : names.of(e.with); };
    switch (e.kind) {
        case EditKind::replace:
            return with() + " for " + line;
        case EditKind::split:
            return with() + " for part of the " + line;
        case EditKind::reduce:
            return "less " + line;
        case EditKind::raise:
            return "more " + line;
        case EditKind::omit:
            return "no " + line;
        case EditKind::add:
            return "add " + names.of(e.with);
        case EditKind::process:
            return e.with;
    }
    return "";
}

std::string in_brief_with_weight(const Edit& e, const Names& names, Units units) {
    const std::string after = formula_weight(e.grams_after, units) + " ";
    if (e.kind == EditKind::reduce || e.kind == EditKind::raise)
        return after + names.of_line(e.line) + " (was " + formula_weight(e.grams_before, units) + ")";
    if (e.kind == EditKind::add) return "add " + after + names.of(e.with);
    return (e.kind == EditKind::replace || e.kind == EditKind::split ? after : "") + in_brief(e, names);
}

std::string in_words(const Edit& e, const Names& names, Units units) {
    const std::string line = e.line.empty() ? "" : names.of_line(e.line), before = formula_weight(e.grams_before, units),
                      after = formula_weight(e.grams_after, units);
    const auto with = [&] { return after + " " + as_weighed(names.of(e.with), e.prepared); };
    switch (e.kind) {
        case EditKind::replace:
            return "replace " + before + " " + line + " with " + with();
        case EditKind::split:
            return "for part of " + before + " " + line + " take " + with() +
                   (e.grams_left > 0 ? " (" + formula_weight(e.grams_left, units) + " " + line + " stays)" : "");
        case EditKind::reduce:
            return "reduce " + line + " from " + before + " to " + after;
        case EditKind::raise:
            return "raise " + line + " from " + before + " to " + after;
        case EditKind::omit:
            return "leave out " + before + " " + line;
        case EditKind::add:
            return "add " + with();
        case EditKind::process:
            return e.with;
    }
    return "";
}

std::string why_of(const Edit& e, Units units, bool full) {
    if (e.reason == Reason{} && !e.why.empty()) return in_units(e.why, units);  // said in words alone
    return full ? in_full(e.reason, units) : in_brief(e.reason, units);
}

bool is_even(const WantResult& want) {
    constexpr double even = 0.55;  // of the draws: what is met by fewer is a toss of a coin
    return want.met && want.chance < even;
}

std::string all_together(const Variant& variant) {
    if (variant.wants.empty()) return "";
    for (const auto& figure : variant.wants.back().reason.figures)
        if (figure.what == "all together") return " All of it together: in " + number(figure.after, 0) + " of 100 batches.";
    return "";
}

std::string nothing_to_change(const Variant& variant) {
    if (std::none_of(variant.wants.begin(), variant.wants.end(), is_even)) return "Change nothing: it is as you want it.";
    return "As it stands it is an even chance: nothing has to change for that, and every second batch misses it. Who is to have it each "
           "time "
           "takes better odds.";
}

std::string met_words(const WantResult& want) {
    return (is_even(want) ? "met at even odds, " : want.met ? "met, " : "not met, ") + chance(want.chance);
}

std::string cited(const CautionText& c) { return c.text + (c.source.empty() ? "" : " [" + c.source + "]"); }

namespace {

bool is_as_likely_either_way(const Band& change) {
    constexpr double clear = 0.15;  // of the band: judgement
    return change.low < 0 && change.high > 0 && std::abs(change.mid) < clear * (change.high - change.low);
}

}  // namespace

std::string in_words(const PerProperty<Band>& effects, std::size_t most) {
    // mg/kg, % of batch, mg/kg: a choice of this page, nothing is computed from it. A lighter batch alone moves its heat by less.
    constexpr double least_leaf_green = 1, least_salt = 0.06, least_heat = 0.3;
    std::string text;
    std::size_t told = 0;
    for (const auto p : moved(effects)) {
        if (p == Property::ph || p == Property::water_pct || p == Property::protein_pct) continue;  // nobody tastes them by themselves
        // Another weight of meat beside the same salt is nothing for the tongue.
        if (p == Property::salt_pct_of_meat && std::abs(effects[Property::salt_pct].mid) < least_salt) continue;
        if (p == Property::heat_mg_kg && (is_as_likely_either_way(effects[p]) || std::abs(effects[p].mid) < least_heat))
            continue;  // equal doses of pods that differ
        if (told++ == most) break;
        // With no leaf green coming or going it is the red that moved.
        const bool of_red = p == Property::greenness && std::abs(effects[Property::chlorophyll_mg_kg].mid) < least_leaf_green;
        text += (text.empty() ? "" : ", ") + (of_red ? (effects[p].mid < 0 ? "redder" : "less red") : direction(p, effects[p].mid));
    }
    return text.empty() ? "much the same" : text;
}

std::string changes_of(const StandIn& s, std::size_t most) {
    const std::string same = "much the same", words = in_words(s.effects, most);
    if (words != same) return words;
    const bool far = s.nearness == Nearness::another || s.nearness == Nearness::no_longer;
    return far ? "another taste, else " + same : s.nearness == Nearness::differs ? "tastes a little different" : words;
}

std::string grams_with_band(const StandIn& s, Units units) {
    const std::string middle = formula_weight(s.grams, units);
    std::string low = formula_weight(s.grams_band.low, units);
    const std::string high = formula_weight(s.grams_band.high, units);
    if (low == high) return middle;
    if (units != Units::metric) return middle + ", from " + low + " to " + high;
    low.erase(low.size() - 2);  // the unit is said once
    return middle + " (" + low + "-" + high + ")";
}

std::string what_stays(const StandIn& s, Units units) {
    return s.line_left > 0 ? " (" + formula_weight(s.line_left, units) + " of the line stays)" : "";
}

std::string stand_in_named(const StandIn& s, Units units) {
    const std::string name = with_preparations(s.name, s.prepared), stays = what_stays(s, units);
    if (!s.partner) return name + stays;
    return name + " and " + formula_weight(s.partner->grams, units) + " " + with_preparations(s.partner->name, s.partner->prepared) + stays;
}

namespace {

// Of what the formula has already: with the partner and whatever is trimmed after it.
std::string in_all(const StandIn& s, Units units) {
    double grams = 0;
    for (const auto& line : s.formula.lines)
        if (line.ingredient == s.partner->ingredient) grams += line.grams.mid;
    constexpr double told_from = 1.02;  // of the partner by itself
    return grams > told_from * s.partner->grams ? ", " + formula_weight(grams, units) + " of it in all" : "";
}

}  // namespace

std::string in_parts(const StandIn& s, Units units) {
    return s.partner ? capital(s.partner->name) + " " + s.partner->why + in_all(s, units) + "." : "";
}

std::string in_short(const SwapsAnswer& a, const std::string& title, Units units) {
    const std::string line = formula_weight(a.line_grams, units) + " " + a.name + roles_of(a);
    if (a.stand_ins.empty()) return "Nothing known can stand in for " + line + " in " + title + ".";
    const auto& s = a.stand_ins.front();
    if (a.nothing_listed)
        return "The list holds nothing that is known here and can stand in for " + line + " in " + title +
               ": whatever follows would have to be bought or picked.";
    if (s.on_hand)  // never more than there is
        return "In place of " + line + " in " + title + " take the " + formula_weight(*s.on_hand, units) + " " + s.name +
               " on hand, where " + formula_weight(s.grams, units) + " would fill its place: " + in_words(s.nearness) + " (" +
               number(s.distance, 1) + " from the formula as it is, with all of it).";
    return "In place of " + line + " in " + title + " take " + formula_weight(s.grams, units) + " " + stand_in_named(s, units) + ": " +
           in_words(s.nearness) + " (" + number(s.distance, 1) + " from the formula as it is).";
}

std::string letter(std::size_t i) { return i < 26 ? std::string(1, static_cast<char>('A' + i)) : std::to_string(i + 1); }

// One line a caution, with the formulas it is said of unless it is said of all.
std::vector<CautionText> shared_cautions(const std::vector<Prediction>& all) {
    std::vector<CautionText> out;
    for (const auto& p : all)
        for (const auto& c : p.cautions)
            if (std::none_of(out.begin(), out.end(), [&](const CautionText& o) { return says_all_of(o, c) && says_all_of(c, o); }))
                out.push_back(c);
    for (auto& c : out) {
        std::string letters;
        std::size_t n = 0;
        for (std::size_t i = 0; i < all.size(); ++i) {
            const auto& own = all[i].cautions;
            if (std::none_of(own.begin(), own.end(), [&](const CautionText& o) { return says_all_of(o, c) && says_all_of(c, o); }))
                continue;
            letters += (letters.empty() ? "" : ", ") + letter(i);
            ++n;
        }
        if (n < all.size()) c.text = letters + ": " + c.text;
    }
    return out;
}

std::vector<std::string> excluded_in_words(const std::vector<Excluded>& excluded, const Engine& engine) {
    std::vector<std::string> all;
    for (const auto& one : excluded) {
        if (!one.notes.empty() && one.notes.front().about.ends_with("-kept")) {  // told by the formula, not asked for
            all.push_back(one.note);
            continue;
        }
        std::string says = "Without \"" + one.word + "\" leaves out " + one.takes + ".";
        std::vector<std::string> gone;
        for (const auto& id : one.lines) gone.push_back(engine.name_of(id));
        gone.insert(gone.end(), one.casings.begin(), one.casings.end());
        std::string lines;
        for (std::size_t i = 0; i < gone.size(); ++i) lines += (i ? ", " : "") + gone[i];
        says += gone.empty() ? " Nothing of the formula is that." : " Of the formula: " + lines + ".";
        if (!one.note.empty()) says += " " + one.note;
        all.push_back(std::move(says));
    }
    return all;
}

std::vector<std::string> asked_as_understood(const AdaptAnswer& answer, const Engine& engine) {
    std::vector<std::string> all;
    if (answer.scaled) all.push_back(capital(answer.scaled->says) + ".");
    for (auto& line : excluded_in_words(answer.excluded, engine)) all.push_back(std::move(line));
    return all;
}

bool is_of_these_words(const CautionText& caution) {
    constexpr std::array<std::string_view, 14> ids{"core-low",    "slow-warming",  "long-rest",     "warm-rest",     "rice-rest",
                                                   "hazard-told", "guest-clash",   "guest-unknown", "guest-without", "note-promise",
                                                   "core-said",   "title-promise", "title-raw",     "likened"};
    return std::find(ids.begin(), ids.end(), caution.id) != ids.end();
}

}  // namespace standin::cli
