#include "render/mend_words.hpp"

#include <algorithm>

#include "render/effects.hpp"
#include "render/kilos.hpp"
#include "render/text/text_parts.hpp"
#include "render/units.hpp"
#include "words.hpp"

namespace standin::cli {
namespace {

std::string parts(const std::vector<Ingoing>& all, Units units, int of = 1) {
    std::vector<std::string> texts;
    for (const auto& in : all)
        texts.push_back(formula_weight(in.grams / of, units) + " " + in.name +
                        (in.rounds > 1 ? " in " + std::to_string(in.rounds) + " rounds" : ""));
    return listed(texts);
}

// The meat and the fat that plain mass takes: who reads no further knows what it costs.
std::string meat_of(const MendWay& way, Units units) {
    std::vector<Ingoing> meat;
    std::copy_if(way.plain.begin(), way.plain.end(), std::back_inserter(meat), [](const Ingoing& in) { return in.meat; });
    if (meat.empty()) return "";
    const bool unlisted = std::any_of(meat.begin(), meat.end(), [](const Ingoing& in) { return in.unlisted; });
    return " (" + parts(meat, units, way.plain_rounds) + (unlisted ? ", not on the list: to be bought" : "") + ")";
}

std::string in_short(const MendWay& way, Units units) {
    std::string text;
    if (!way.plain.empty())
        text = "fold in " + kilos(way.plain_g / way.plain_rounds, units) + " of plain mass" +
               (way.plain_leaner.empty() ? "" : " with " + listed(way.plain_leaner) + " for its meat") + meat_of(way, units);
    if (way.plain_rounds > 1)
        text += ", fry a patty, and " + std::string(way.plain_rounds > 2 ? "so on by parts" : "as much again") +
                " only where that is not enough (" + kilos(way.plain_g, units) + " in all)";
    const bool step = !way.plain.empty() && way.add.empty() && !way.step_only.empty() && !way.met;
    if (step) text += " as a step";
    const bool for_taste =
        std::any_of(way.plain_for.begin(), way.plain_for.end(), [](const PlainFor& p) { return p.property == Property::ph; });
    if (for_taste && way.met) text += " for the taste alone";
    if (!way.add.empty()) text += (text.empty() ? "add " : ", and add ") + parts(way.add, units);
    if (!(way.work_min > 0)) return text;
    // What was mixed too little may want nothing else.
    const std::string on = "mix it on, cold, until it is tacky";
    // Salt that is short is put in for certain, and before the mixing: without it none dissolves what holds the mass.
    std::vector<Ingoing> salt, rest;
    for (const auto& in : way.add) (in.first ? salt : rest).push_back(in);
    if (!salt.empty() && way.plain.empty())
        return "put in " + parts(salt, units) + ", " + on + ", and fry a patty of it" +
               (rest.empty() ? std::string() : "; where that still falls apart, add " + parts(rest, units));
    return text.empty() ? on : on + ", and fry a patty of it; where that still falls apart, " + text;
}

const MakingCause* first_cause(const MendAnswer& a) {
    for (const auto& cause : a.causes)
        if (!cause.first.empty() || cause.weighed) return &cause;
    return nullptr;
}

// What is to be done before the weighing that another cause asks for.
const MakingCause* next_cause(const MendAnswer& a, const MakingCause& cause) {
    for (const auto& other : a.causes)
        if (&other != &cause && other.tasted == cause.tasted && !other.weighed && !other.first.empty()) return &other;
    return nullptr;
}

// The list may have it yet, or a thermometer, or the pan.
std::string nothing_mends(const MendAnswer& a) {
    const auto is_judged = [](const TastedWord& word) { return word.judged || word.there; };
    if (!a.words.empty() && std::none_of(a.words.begin(), a.words.end(), is_judged))
        return "no amount is worked out for that; why, and what makers do, stands below";
    return a.only_listed ? "nothing on the list that can be weighed out mends this" : "nothing that can be weighed out mends this";
}

// The heat that is left, where less was asked for.
std::string heat_left(const MendWay& way, const MendAnswer& a) {
    const std::string heat(info(Property::heat_mg_kg).name);
    const auto less = [&](const WantResult& want) {
        return want.reason.role == "at most" && !want.reason.figures.empty() && want.reason.figures.front().what == heat;
    };
    if (std::none_of(way.wants.begin(), way.wants.end(), less)) return "";
    const std::string was = heat_phrase(a.base.heat_word), now = heat_phrase(way.prediction.heat_word);
    return was == now
               ? "With less heat than before it is still what most call " + now + ": where that is too hot yet, fold in as much again."
               : "It is then what most call " + now + "; it was " + was + ".";
}

bool of_the_bite(const TastedWord& word) { return word.id == "rubbery" || word.id == "gummy"; }

std::string figures_of(double value) { return number(value, value < 3 ? 1 : 0); }

// Why what was asked, and is so, is a step all the same.
std::string still_wrong(const std::string& tasted, const MendWay& way) {
    std::string text;
    for (const auto& over : way.still_over)
        if (over.tasted == tasted)
            text += over.food.empty() ? ", and still over the " + figures_of(over.most) + " above which this page warns"
                                      : ", and still more " + over.food + " than is good in a kilo: " + figures_of(over.value) +
                                            " g, where " + figures_of(over.most) + " g is the most";
    if (!way.colour_left.empty()) text += ", and it is still " + way.colour_left + " when raw";
    return text;
}

// Of a word that no figure stands for: how much thinner what was tasted is then, and how the bite moves.
std::vector<std::string> verdicts_without_figures(const MendWay& way, const MendAnswer& a) {
    std::vector<std::string> all;
    if (!(way.plain_g > 0)) return all;
    const double left = 100 * a.made_g / (a.made_g + way.plain_g);
    for (const auto& word : a.words) {
        const auto figured = [&](const MendWay& some) {
            return std::any_of(some.wants.begin(), some.wants.end(), [&](const WantResult& w) { return w.want == word.written; });
        };
        const bool told = std::any_of(a.ways.begin(), a.ways.end(), figured);
        if (told || !word.judged || word.more || word.there || word.beside) continue;
        std::string text = word.written + ": a kilo of the whole then holds " + number(left, 0) + " % of the mass that was tasted";
        const auto moves = [&](Property p) {
            return std::string(info(p).name) + " " + number(a.base.properties[p].mid, 0) + " -> " +
                   number(way.prediction.properties[p].mid, 0);
        };
        if (of_the_bite(word)) text += " (" + moves(Property::firmness) + ", " + moves(Property::bind) + " of 100)";
        all.push_back(text + ". A step, and no model tastes it: fry a patty before you make more.");
    }
    return all;
}

// Nothing that is in comes out: a part, a patty, and the next part.
std::string by_parts(const MendWay& way, Units units) {
    std::vector<std::string> then;
    for (const auto& after : way.after_first) {
        const auto& about = info(after.property);
        then.push_back(std::string(about.name) + " " + number(after.value, about.decimals) +
                       (about.unit.empty() ? "" : " " + std::string(about.unit)));
    }
    return "Make and fold in one part of " + std::to_string(way.plain_rounds) + " (" + kilos(way.plain_g / way.plain_rounds, units) +
           "), rest it cold, fry a patty" + (then.empty() ? "" : " (" + listed(then) + " by then)") +
           ", and go on only where that is not enough.";
}

std::string plain_for(const PlainFor& more, const MendWay& way, Units units) {
    const std::string much = more.plain_g > 0 ? kilos(more.plain_g, units) + " of plain mass" : "";
    if (more.property == Property::fat_pct)
        return much.empty() ? "" : much + " brings its fat to " + number(more.value, 0) + " %, the most that a coarse sausage holds.";
    return "Its pH is then " + number(way.prediction.nominal[Property::ph], 2) + ", where meat hardly binds: " +
           (much.empty() ? "to bring it to " + number(more.value, 1) + " is a batch of its own."
                         : much + " in all brings it to " + number(more.value, 1) + ".");
}

}  // namespace

std::string answer_first(const MendAnswer& a, Units units) {
    const std::string mass = (a.base.title.empty() ? "" : a.base.title + ", ") + kilos(a.made_g, units) + " of mass";
    if (!a.discard.empty()) return mass + ": do not mend it.";
    if (!a.opposed.empty())
        return mass + ": \"" + listed(a.opposed) + "\" pull against each other. Fry two more patties and let somebody else taste.";
    std::string text = mass + ": ";
    // What the making did comes before anything that is weighed, or is what the weighing is for.
    const MakingCause* cause = first_cause(a);
    if (cause) text += in_units(cause->says, units) + (cause->first.empty() ? "" : ": " + in_units(cause->first, units));
    const MakingCause* next = cause && cause->first.empty() ? next_cause(a, *cause) : nullptr;
    if (next) text += "; " + in_units(next->says, units) + ": " + in_units(next->first, units);
    if (a.ways.empty()) return cause && !cause->first.empty() ? text + "." : text + (cause ? ": " : "") + nothing_mends(a) + ".";
    if (next) text += "; then ";
    else if (cause) text += !cause->weighed ? "; then, where that is not enough, " : cause->first.empty() ? ": " : ", and ";
    for (std::size_t i = 0; i < a.ways.size(); ++i) text += (i ? "; or " : "") + in_short(a.ways[i], units);
    const bool met = std::any_of(a.ways.begin(), a.ways.end(), [](const MendWay& w) { return w.met; });
    return text + "." + (met ? "" : " That brings it nearer, but not all the way.");
}

std::vector<std::string> causes(const MendAnswer& a, Units units) {
    std::vector<std::string> all;
    for (const auto& cause : a.causes)
        all.push_back(cause.tasted + ": " + in_units(cause.says, units) + ". " + in_units(cause.does, units));
    return all;
}

std::string as_taken(const TastedWord& word) {
    if (word.there)
        return word.written + ": by the formula it is so already (" + word.says +
               "). Check that everything was weighed in, fry another patty, and measure if you can.";
    if (word.beside) return word.written + ", taken another way: " + word.says + ".";
    return word.written + ": " + word.says + (word.judged ? "." : ". No amount is worked out for that.");
}

std::string as_measured(const MeasuredValue& m) {
    const int decimals = info(m.property).decimals;
    const std::string name(info(m.property).name), unit = info(m.property).unit.empty() ? "" : " " + std::string(info(m.property).unit);
    const std::string value = number(m.value, std::max(decimals, 1));
    return name + " " + value + unit + " measured, where the formula says " + band(m.predicted, decimals) + ": what follows goes by " +
           value + "." + (m.far ? " That is far apart: measure once more, and think what may have been weighed twice or left out." : "");
}

std::vector<std::string> practices(const MendAnswer& a, Units units) {
    std::vector<std::string> all;
    for (const auto& word : a.words)
        if (!word.practice.empty()) all.push_back(word.written + ": " + in_units(word.practice, units));
    return all;
}

std::vector<std::string> steps(const std::vector<std::string>& metric, Units units) {
    std::vector<std::string> all;
    for (const auto& step : metric) all.push_back(in_units(step, units));
    return all;
}

std::string heading_of(const MendWay& way) {
    switch (way.kind) {
        case MendKind::add:
            return "Add to the mass";
        case MendKind::blend:
            return "Make plain mass and fold it in";
        case MendKind::blend_and_add:
            return "Make plain mass, fold it in, and add";
        case MendKind::work:
            return "Mix it on until it is tacky";
    }
    return "";
}

std::string then_into_all(const MendWay& way) {
    return way.plain_rounds > 1 ? "Then into all of it, with each part its share:" : "Then into all of it:";
}

std::string how_in(const Ingoing& in, Units units) {
    std::string how = (in.weighed_raw ? "weighed raw; " : "") + in.how;
    if (in.water_g > 0) {
        const auto at = how.find("cold water");
        if (at != std::string::npos) how.insert(at, formula_weight(in.water_g, units) + " ");
    }
    if (in.rounds > 1)
        how += "; in " + std::to_string(in.rounds) + " equal rounds, " + formula_weight(in.grams / in.rounds, units) +
               " at a time: fry a patty after each, and stop where it is enough";
    return how;
}

std::string plain_in_short(const MendWay& way, Units units) {
    return kilos(way.plain_g, units) + " in all: the formula once more" +
           (way.plain_lacks.empty() ? std::string() : ", without " + listed(way.plain_lacks)) +
           (way.plain_less.empty() ? std::string() : ", with a part of its " + listed(way.plain_less)) +
           (way.plain_leaner.empty() ? std::string() : ", its meat as " + listed(way.plain_leaner)) + ".";
}

std::string want_in_short(const WantResult& want, const MendWay& way) {
    const bool step = std::find(way.step_only.begin(), way.step_only.end(), want.want) != way.step_only.end();
    const std::string figures_said = " (" + want.says.substr(0, want.says.find("; ")) + ")";
    if (step && want.met) return want.want + ": as far as was asked, " + chance(want.chance) + figures_said + still_wrong(want.want, way);
    if (step) return want.want + ": a step, and not mended by it" + figures_said + still_wrong(want.want, way);
    std::string how = want.met ? ": mended, " + chance(want.chance) : ": not all the way";
    const auto& figures = want.reason.figures;
    if (!want.met && figures.size() > 1 && figures[0].before) {
        constexpr double whole = 0.95;
        const double asked = figures[1].after - *figures[0].before, moved = figures[0].after - *figures[0].before;
        if (asked != 0 && moved / asked < whole) how = ": " + number(std::max(0.0, 100 * moved / asked), 0) + " % of the way";
        else how += ", " + chance(want.chance);
    }
    return want.want + how + figures_said;
}

std::vector<std::string> beside_wants(const MendWay& way, const MendAnswer& a, Units units) {
    std::vector<std::string> all;
    if (way.plain_rounds > 1) all.push_back(by_parts(way, units));
    if (const std::string heat = heat_left(way, a); !heat.empty()) all.push_back(heat);
    for (auto& verdict : verdicts_without_figures(way, a)) all.push_back(std::move(verdict));
    if (way.work_min > 0)
        all.push_back("Mix it on until it is tacky, about " + number(way.work_min, 0) + " minutes: " + "that is reckoned with here.");
    if (!way.salt_left && a.base.nominal[Property::salt_pct_of_meat] > 0) {
        const std::string was = number(a.base.nominal[Property::salt_pct_of_meat], 2),
                          is = number(way.prediction.nominal[Property::salt_pct_of_meat], 2);
        all.push_back("Salt is then " + is + " % of the meat" + (was == is ? ", as before." : "; it was " + was + " %."));
    }
    if (way.held_for)
        all.push_back("No more at once: it would " + std::string(*way.held_for == Property::bind ? "fall apart" : "have no bite") + ".");
    if (way.salt_left) {
        const SaltLeft& left = *way.salt_left;
        all.push_back("Salt is then " + number(left.pct_of_meat, 2) + " % of the meat, still more than most makers put in (" +
                      number(left.usual_most, 1) + " % at most): " +
                      (left.plain_g > 0
                           ? kilos(left.plain_g, units) + " of plain mass in all brings it to " + number(left.enough, 1) + " %."
                           : "to bring it to " + number(left.enough, 1) + " % is a batch of its own."));
    }
    for (const auto& more : way.plain_for)
        if (std::string said = plain_for(more, way, units); !said.empty()) all.push_back(std::move(said));
    for (const auto& caution : way.new_cautions)  // not further down than the weights
        if (breaks_the_law(caution)) all.push_back("Against the rules asked for: " + in_units(caution.text, units));
    if (!way.new_animals.empty())
        all.push_back("Brings " + listed(way.new_animals) + ", which the formula has not: say so to whoever eats it.");
    return all;
}

std::vector<Property> rows_of(const MendWay& way, bool full) {
    auto rows = moved(way.differences);
    if (!full)
        std::erase_if(rows, [](Property p) { return !at_the_bench(p) && p != Property::sourness_mmol_kg && p != Property::salt_pct; });
    return rows;
}

}  // namespace standin::cli
