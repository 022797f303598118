#include "formula/line/line_doubts.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include "core/names.hpp"
#include "formula/line/process_text.hpp"

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

struct TakenAs {
    std::string_view word, text;
    bool always;  // told on every page: the other one differs by a fifth
};
constexpr std::array taken{TakenAs{"cup", "a cup taken as the US cup, 237 ml (metric: 250 ml)", false},
                           TakenAs{"gill", "a gill taken as the US gill, 118 ml (imperial: 142 ml)", true},
                           TakenAs{"fl-oz", "a fluid ounce taken as the US one, 29.6 ml (imperial: 28.4 ml)", false},
                           TakenAs{"pint", "a pint taken as the US pint, 473 ml (imperial: 568 ml)", true},
                           TakenAs{"quart", "a quart taken as the US quart, 946 ml (imperial: 1137 ml)", true},
                           TakenAs{"gallon", "a gallon taken as the US gallon, 3785 ml (imperial: 4546 ml)", true}};

void add_units(const AmountText& amount, std::vector<LineDoubt>& out) {
    for (const auto& part : amount.parts)
        for (const auto& as : taken)
            if (part.unit && part.unit->word == as.word) out.push_back({Confidence::likely, std::string(as.text), as.always});
}

std::string counted_word(const AmountText& amount) {
    const Unit* unit = amount.parts.front().unit;
    return unit ? std::string(unit->word) : "piece";
}

std::string rounded(double grams) {
    const double step = grams < 10 ? 0.1 : 1;
    return plain_number(std::round(grams / step) * step);
}

std::string grams_span(const Band& grams) {
    if (!(grams.low < grams.high)) return "";
    return ", " + rounded(grams.low) + " to " + rounded(grams.high) + " g";
}

std::string in_container(const NameRead& name) { return "in a " + std::string(name.preserved_in->word) + ": "; }

bool same_name(const Ingredient& ingredient, const std::string& passed) {
    return std::any_of(ingredient.names.begin(), ingredient.names.end(), [&](const auto& name) { return fold(name) == fold(passed); });
}

std::vector<LineDoubt> with_passed(std::vector<LineDoubt> out, const NameRead& name, const LineNotes& notes) {
    for (const auto* said : {&name.before, &name.after})
        for (const auto& word : said->unknown)
            out.push_back(
                {Confidence::unsure, name.ingredient->names.front() + ": not known here and passed over: \"" + word + "\"", true});
    for (const auto* all : {&notes.passed, &name.before.passed, &name.after.passed})
        for (const auto& passed : *all)
            if (!same_name(*name.ingredient, passed))
                out.push_back({Confidence::likely, name.ingredient->names.front() + ": passed over: \"" + passed + "\"", true});
    return out;
}

// So much of a herb by weight is the fresh leaf, whatever else the name may mean.
bool plainly_fresh(const Ingredient& ingredient, const AmountText& amount) {
    constexpr double spice_grams = 10;  // judgement
    const Unit* unit = amount.parts.front().unit;
    const bool leaf = ingredient.tissue == Tissue::thin_leaf || ingredient.tissue == Tissue::thick_leaf;
    return leaf && unit && unit->dimension == Dimension::mass && amount.parts.front().number.mid * unit->size.mid >= spice_grams;
}

}  // namespace

std::string generic_note(const NameRead& name) {
    return "\"" + name.generic + "\" read as " + name.ingredient->names.front() + "; say which if it is another";
}

std::vector<LineDoubt> doubts_about_line(const NameRead& name, const AmountText& amount, const Weighed& weighed, const LineNotes& notes) {
    std::vector<LineDoubt> out;
    const Ingredient& ingredient = *name.ingredient;
    if (!name.generic.empty())
        out.push_back({decides_fat(ingredient) || counted_for_its_juice(ingredient, amount) ? Confidence::unsure : Confidence::likely,
                       generic_note(name), true});
    if (name.presumed)
        out.push_back(
            {Confidence::unsure, "presumed to be " + ingredient.names.front() + ", the usual one by the spoon; say fresh if it is", true});
    else if (name.by_share)
        out.push_back({Confidence::unsure,
                       "read as " + ingredient.names.front() + ", for there is too little of it in the batch to be the fresh one", true});
    else if (name.fresh_by_share)
        out.push_back({Confidence::likely,
                       "read as " + ingredient.names.front() + ", for so much of the dried one would be several times the usual dose",
                       true});
    else if (!name.other_form.empty() && !plainly_fresh(ingredient, amount))
        out.push_back({Confidence::likely, "read as " + ingredient.names.front() + ", not " + name.other_form, true});
    if (name.preserved_in)
        out.push_back(name.preserved_form ? LineDoubt{Confidence::likely, in_container(name) + "read as " + ingredient.names.front(), true}
                                          : LineDoubt{Confidence::unsure,
                                                      in_container(name) + "that form of it is not known here, so it is read as fresh " +
                                                          ingredient.names.front() + "; what is kept so is often softer and saltier",
                                                      true});
    const bool settled = notes.grams && !notes.range_only;
    if (weighed.packed && !settled)
        out.push_back({Confidence::likely,
                       ingredient.names.front() + ", packed: how firmly leaves are pressed differs from hand to hand, so the band is wide",
                       true});
    const Unit* unit = amount.parts.front().unit;
    const bool by_weight = unit && (unit->dimension == Dimension::mass || unit->dimension == Dimension::percent);
    if (!by_weight && !settled) {
        add_units(amount, out);
        const bool exact_enough = weighed.grams.low > 0 && weighed.grams.high < narrow * weighed.grams.low;
        if (exact_enough) return with_passed(std::move(out), name, notes);
        constexpr double by_crystals = 1.5;  // highest over lowest weight of a spoon of salt from here on. Judgement
        const bool by_crystal = ingredient.composition.salt.mid > 50 && weighed.grams.high > by_crystals * weighed.grams.low;
        const bool loose = weighed.grams.low <= 0 || weighed.grams.high > wide * weighed.grams.low;
        out.push_back({loose ? Confidence::unsure : Confidence::likely,
                       "the weight is what a " + counted_word(amount) + " of " + ingredient.names.front() + " usually weighs" +
                           grams_span(weighed.grams) + (by_crystal ? ": crystals differ from maker to maker, so weigh it" : ""),
                       loose || ingredient.composition.salt.mid > 50});
    } else if (by_weight && !notes.grams && amount.parts.front().number.low < amount.parts.front().number.high)
        out.push_back({Confidence::likely, ingredient.names.front() + ": a range, the middle is taken", true});
    return with_passed(std::move(out), name, notes);
}

}  // namespace standin
