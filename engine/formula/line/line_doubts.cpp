#include "formula/line/line_doubts.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include "core/names.hpp"
#include "formula/amounts/process_text.hpp"
#include "knowledge/records/tissue.hpp"

namespace standin {
namespace {

constexpr double narrow = 1.05;  // up to here a measured volume is as good as a weight. Judgement
constexpr double wide = 2.0;     // highest over lowest weight from here on: unsure. Judgement

// "1 lemon": its juice, its zest, or all of it.
bool counted_for_its_juice(const Ingredient& ingredient, const AmountText& amount) {
    const Unit* unit = amount.parts.front().unit;
    return ingredient.tissue == Tissue::liquid && (!unit || unit->dimension == Dimension::count);
}

bool decides_fat(const Ingredient& ingredient) { return ingredient.meat.has_value(); }

// In millilitres: ours is the US one.
struct TakenAs {
    std::string_view word, name, other;
    double us_ml, other_ml;
    bool always;  // told on every page: the other one differs by a fifth
};
constexpr std::array taken{TakenAs{"cup", "cup", "metric", 237, 250, false},
                           TakenAs{"gill", "gill", "imperial", 118, 142, true},
                           TakenAs{"fl-oz", "fluid ounce", "imperial", 29.6, 28.4, false},
                           TakenAs{"pint", "pint", "imperial", 473, 568, true},
                           TakenAs{"quart", "quart", "imperial", 946, 1137, true},
                           TakenAs{"gallon", "gallon", "imperial", 3785, 4546, true}};

Reason taken_as(const TakenAs& as) {
    Reason reason =
        make_reason(ReasonKind::measure_of_country, {{"US", {}, as.us_ml, "ml"}, {std::string(as.other), {}, as.other_ml, "ml"}});
    reason.role = as.name;
    return reason;
}

void add_units(const AmountText& amount, std::vector<LineDoubt>& out) {
    for (const auto& part : amount.parts)
        for (const auto& as : taken)
            if (part.unit && part.unit->word == as.word) out.push_back({Confidence::likely, taken_as(as), as.always});
}

std::string counted_word(const AmountText& amount) {
    const Unit* unit = amount.parts.front().unit;
    return unit ? std::string(unit->word) : "piece";
}

Reason by_measure(const Ingredient& ingredient, const AmountText& amount, const Band& grams, bool by_crystal) {
    Reason reason = make_reason(ReasonKind::by_measure, {{"weight", {}, grams.mid, "g"}}, {ingredient.names.front()});
    if (grams.low < grams.high) reason.figures.front().low = grams.low, reason.figures.front().high = grams.high;
    reason.role = counted_word(amount);
    if (by_crystal) reason.about = "crystals";
    return reason;
}

Reason in_container(ReasonKind kind, const NameRead& name) {
    Reason reason = make_reason(kind, {}, {name.ingredient->names.front()});
    reason.role = name.preserved_in->word;
    return reason;
}

bool same_name(const Ingredient& ingredient, const std::string& passed) {
    return std::any_of(ingredient.names.begin(), ingredient.names.end(), [&](const auto& name) { return fold(name) == fold(passed); });
}

std::vector<LineDoubt> with_passed(std::vector<LineDoubt> out, const NameRead& name, const LineNotes& notes) {
    for (const auto* said : {&name.before, &name.after})
        for (const auto& word : said->unknown)
            out.push_back({Confidence::unsure, reason_about(ReasonKind::passed_unknown, word, {name.ingredient->names.front()}), true});
    for (const auto* all : {&notes.passed, &name.before.passed, &name.after.passed})
        for (const auto& passed : *all)
            if (!same_name(*name.ingredient, passed))
                out.push_back({Confidence::likely, reason_about(ReasonKind::passed_over, passed, {name.ingredient->names.front()}), true});
    return out;
}

// "6 scallions, green parts only": what a record weighs is the whole, but where it says so itself ("2 leeks, white part only").
void tell_part(const std::string& part, const Ingredient& ingredient, const AmountText& amount, const LineNotes& notes,
               std::vector<LineDoubt>& out) {
    const Unit* unit = amount.parts.front().unit;
    const bool weighed = notes.grams || (unit && unit->dimension == Dimension::mass);
    const auto words = fold(part);
    const bool of_record = std::any_of(ingredient.measures.begin(), ingredient.measures.end(), [&](const auto& record) {
        return (" " + fold(record.note) + " ").find(" white part ") != std::string::npos && words.starts_with("white");
    });
    if (of_record) return;
    Reason told = reason_about(ReasonKind::passed_over, part, {ingredient.names.front()});
    told.role = weighed ? "part weighed" : "part";
    out.push_back({weighed ? Confidence::likely : Confidence::unsure, std::move(told), true});
}

// So much of a herb by weight is the fresh leaf, whatever else the name may mean.
bool plainly_fresh(const Ingredient& ingredient, const AmountText& amount) {
    constexpr double spice_grams = 10;  // judgement
    const Unit* unit = amount.parts.front().unit;
    const bool leaf = is_leaf(ingredient.tissue);
    return leaf && unit && unit->dimension == Dimension::mass && amount.parts.front().number.mid * unit->size.mid >= spice_grams;
}

// "2 tsp marjoram leaves" stand among dried spices as often as among fresh herbs.
bool leaf_by_the_spoon(const NameRead& name, const AmountText& amount) {
    const Unit* unit = amount.parts.front().unit;
    return unit && unit->word == "tsp" && !name.said_fresh && !name.words.empty() && name.words.back() == "leaf";
}

// "2-3 kg"; "about 3 kg" has as much room on both sides and is no range.
bool is_a_range(const Band& number) {
    constexpr double about = 0.1, rounding = 1e-6;
    const bool said_about = std::abs(number.low - (1 - about) * number.mid) < rounding * number.mid &&
                            std::abs(number.high - (1 + about) * number.mid) < rounding * number.mid;
    return number.low < number.high && !said_about;
}

}  // namespace

Reason generic_note(const NameRead& name) { return reason_about(ReasonKind::meant_as, name.generic, {name.ingredient->names.front()}); }

std::vector<LineDoubt> doubts_about_line(const NameRead& name, const AmountText& amount, const Weighed& weighed, const LineNotes& notes) {
    std::vector<LineDoubt> out;
    const Ingredient& ingredient = *name.ingredient;
    const std::string& food = ingredient.names.front();
    const auto read_so = [&](Confidence confidence, ReasonKind kind) { out.push_back({confidence, make_reason(kind, {}, {food}), true}); };
    const bool fat_told = name.before.fat_told || name.after.fat_told;
    if (!name.generic.empty())
        out.push_back(
            {(decides_fat(ingredient) && !fat_told) || counted_for_its_juice(ingredient, amount) ? Confidence::unsure : Confidence::likely,
             generic_note(name), true});
    if (!name.of_any_fat.empty() && !fat_told) {
        Reason taken_so = reason_about(ReasonKind::meant_as, name.of_any_fat, {food});
        taken_so.figures = {{"fat", {}, ingredient.composition.fat.mid, "%"}};
        out.push_back({Confidence::likely, std::move(taken_so), true});
    }
    for (const auto& part : name.after.part_only) tell_part(part, ingredient, amount, notes, out);
    if (name.presumed) read_so(Confidence::unsure, ReasonKind::usual_by_spoon);
    else if (name.by_share) read_so(Confidence::unsure, ReasonKind::dried_by_share);
    else if (name.fresh_by_share) read_so(name.perhaps_fresh ? Confidence::unsure : Confidence::likely, ReasonKind::fresh_by_share);
    else if (!name.other_form.empty() && !plainly_fresh(ingredient, amount))
        out.push_back({leaf_by_the_spoon(name, amount) ? Confidence::unsure : Confidence::likely,
                       make_reason(ReasonKind::not_the_other, {}, {food, name.other_form}), true});
    if (name.preserved_in)
        out.push_back(name.preserved_form ? LineDoubt{Confidence::likely, in_container(ReasonKind::from_container, name), true}
                                          : LineDoubt{Confidence::unsure, in_container(ReasonKind::form_not_known, name), true});
    const bool settled = notes.grams && !notes.range_only;
    if (weighed.packed && !settled) read_so(Confidence::likely, ReasonKind::packed_leaves);
    const Unit* unit = amount.parts.front().unit;
    const bool by_weight = unit && (unit->dimension == Dimension::mass || unit->dimension == Dimension::percent);
    if (!by_weight && !settled) {
        add_units(amount, out);
        const bool exact_enough = weighed.grams.low > 0 && weighed.grams.high < narrow * weighed.grams.low;
        if (exact_enough) return with_passed(std::move(out), name, notes);
        constexpr double by_crystals = 1.5;  // highest over lowest weight of a spoon of salt from here on. Judgement
        const bool by_crystal = ingredient.composition.salt.mid > 50 && weighed.grams.high > by_crystals * weighed.grams.low;
        const bool loose = weighed.grams.low <= 0 || weighed.grams.high > wide * weighed.grams.low;
        out.push_back({loose ? Confidence::unsure : Confidence::likely, by_measure(ingredient, amount, weighed.grams, by_crystal),
                       loose || ingredient.composition.salt.mid > 50});
    } else if (by_weight && !notes.grams && is_a_range(amount.parts.front().number))
        read_so(Confidence::likely, ReasonKind::middle_of_range);
    return with_passed(std::move(out), name, notes);
}

}  // namespace standin
