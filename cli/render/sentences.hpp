// What text and HTML pages say alike.
#pragma once

#include <string>
#include <vector>

#include "standin/engine.hpp"

namespace standin::cli {

/// What it will be, in two sentences.
std::string in_short(const Prediction& prediction);

/// Its word, with the pieces of leaf that are seen in it: "pale pink with green flecks".
std::string colour_words(const PredictedColour& colour);

/// To what the heat is told, and what that is as it is eaten; empty where there is next to none.
std::string heat_basis(const Prediction& prediction);

/// "khaki 48 %, olive 26 %, green 22 %": what at least one in ten would say of the swatch. Empty: the survey has no names for it.
std::string said_words(const PredictedColour& colour);

/// Why no figure is told of what the cook kills; empty where one is.
std::string why_no_kill(const Prediction& prediction, Units units);

/// Whether all that bites is pepper, ginger and the like.
bool only_pepper(const Prediction& prediction);

/// What is said of the heat of one that has no chile in it.
inline constexpr std::string_view no_chile_in_it =
    "There is no chile in it: what bites is pepper, ginger or the like, and it fades sooner.";

std::string answer_first(const AdaptAnswer& answer);

/// How a formula was read but for what stands among the cautions of the same page.
std::vector<Reason> without_cautions(std::vector<Reason> read_as);

/// What of the reading stands before everything else: what of a list is not used, for it may not be fit to be eaten.
std::vector<std::string> told_first(const std::vector<Reason>& read_as, Units units);
/// The rest of it, but for what stands among the cautions.
/// What of an answer is said before all else.
std::vector<std::string> said_first(const AdaptAnswer& answer, Units units);
std::vector<std::string> read_as_words(const std::vector<Reason>& read_as, Units units);

/// Whether anything not looked at could still be nearer.
std::string proof_words(const AdaptAnswer& answer);

/// Over the demands that cannot all be met, or the one that cannot be met at all.
std::string conflict_heading(const AdaptAnswer& answer);
/// What would help, under the heading that is true of it.
struct Help {
    std::string heading;
    std::vector<Reason> reasons;
};
/// What would resolve it, and what is nearer where it can be made as it is; to give up all that was asked is no help.
std::vector<Help> what_would_help(const AdaptAnswer& answer);

/// What each word of --without took in.
std::vector<std::string> excluded_in_words(const std::vector<Excluded>& excluded, const Engine& engine);
/// What comes before the variants: how the batch was scaled, what each word of --without took in.
std::vector<std::string> asked_as_understood(const AdaptAnswer& answer, const Engine& engine);
/// "It stays crumbly and green, ..." or what it turns into.
std::string becomes(const Prediction& base, const Variant& variant);

/// Names of foods; with the formula at hand those of its lines as the maker calls them.
class Names {
public:
    Names(const Engine& engine) : engine_(engine) {}  // NOLINT(google-explicit-constructor): an engine alone names all but the maker's own
    Names(const Engine& engine, const Prediction& formula) : engine_(engine), formula_(&formula) {}

    std::string of(const std::string& id) const { return engine_.name_of(id); }
    std::string of_line(const std::string& id) const;

private:
    const Engine& engine_;
    const Prediction* formula_ = nullptr;
};

/// "chard for spinach", "less table salt".
std::string in_brief(const Edit& edit, const Names& names);
/// "260 g chard for spinach", "44 g table salt (was 46 g)".
std::string in_brief_with_weight(const Edit& edit, const Names& names, Units units);
/// "Replace 320 g spinach with 260 g chard, blanched 2 min".
std::string in_words(const Edit& edit, const Names& names, Units units);

/// Why, in the maker's units; `full` with the numbers behind it.
std::string why_of(const Edit& edit, Units units, bool full);

/// Whether it is as likely met as not.
bool is_even(const WantResult& want);
/// " All of it together in 32 of 100 batches."; empty where one want is asked for, or not all are met.
std::string all_together(const Variant& variant);
/// Of a variant without any edit: that it is as it was asked for, and where only every second batch is.
std::string nothing_to_change(const Variant& variant);

/// "met, 78 %", "met at even odds, 50 %", "not met, 12 %".
std::string met_words(const WantResult& want);

/// With its source in brackets.
std::string cited(const CautionText& caution);

/// "260 g (210-330 g)".
std::string grams_with_band(const StandIn& stand_in, Units units);
/// " (13 g of the line stays)" of what stands in for a part; empty of what stands for the whole line.
std::string what_stays(const StandIn& stand_in, Units units);
/// "green tomatoes and 12 g lime juice", "potassium chloride (13 g of the line stays)".
std::string stand_in_named(const StandIn& stand_in, Units units);
/// What the partner brings; empty where there is none. How much of the line stays is told with the name.
std::string in_parts(const StandIn& stand_in, Units units);
std::string in_short(const SwapsAnswer& answer, const std::string& title, Units units);
/// What changes with a stand-in, in words, the most first.
std::string in_words(const PerProperty<Band>& effects, std::size_t most);
/// The same of a stand-in; one that is far off by its taste alone is not said to be much the same.
std::string changes_of(const StandIn& stand_in, std::size_t most);

/// A, B, ... for formulas side by side.
std::string letter(std::size_t i);
/// One line a caution, with the formulas it is said of unless it is said of all.
std::vector<CautionText> shared_cautions(const std::vector<Prediction>& all);

/// Whether a caution is of what the maker's own words say: who eats it, what a title promises, a danger that they name.
bool is_of_these_words(const CautionText& caution);

}  // namespace standin::cli
