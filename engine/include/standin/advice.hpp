// What can stand in for what, and the variants that come of it.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "standin/prediction.hpp"
#include "standin/reason.hpp"

namespace standin {

/// Salt, water or acid of another line that follows a swap.
struct Trim {
    std::string line;  ///< id
    double grams_before = 0, grams_after = 0;
};

/// What is weighed in beside a stand-in that does not do it alone.
struct Partner {
    std::string ingredient, name;
    std::vector<std::string> prepared;
    double grams = 0;  ///< as weighed
    Reason reason{};
    std::string why;  ///< in words: "brings the rest of the acid"
};

/// What a distance is called.
enum class Nearness { same, close, differs, another, no_longer };

/// "hardly to be told apart", "close", "a little different", "another sausage, still good", "no longer this sausage".
std::string in_words(Nearness nearness);

/// One stand-in for one line of one formula, the rest of the formula trimmed after it.
struct StandIn {
    std::string ingredient, name;
    std::vector<std::string> prepared;
    Role role = Role::green;
    double grams = 0;  ///< of the stand-in, as weighed, for the whole line's dose
    Band grams_band;   ///< how unsure the dose is
    std::optional<Partner> partner;
    double line_left = 0;                ///< grams of the line that stay: of a strong stand-in only so much is taken
    bool trade = false;                  ///< what makers take without asking
    Reason dose_reason{};                ///< what decides the weight
    std::string dose;                    ///< the same in words, in metric: "213 mg chlorophyll, as the line brings"
    double closeness = 0;                ///< product along the path
    std::vector<Trim> trims;             ///< lines of the formula that move with it
    std::vector<std::string> path;       ///< ids from the line's ingredient to the stand-in
    PerProperty<Band> effects;           ///< variant less base, from the common draws
    Band colour_difference;              ///< CIEDE2000, rested
    double distance = 0;                 ///< noticeable differences, price included
    Nearness nearness = Nearness::same;  ///< what the distance is called
    std::vector<std::string> new_allergens;
    std::vector<CautionText> cautions;  ///< that come with it, beside those of the formula as it is
    std::string note;
    std::optional<double> on_hand;   ///< grams on the list, where they are fewer than asked for
    std::optional<bool> in_season;   ///< in the month asked for; absent: no month, or no season known
    std::vector<std::string> needs;  ///< what the maker must see to, a sentence each
    std::vector<std::string> sources;
    Formula formula;                      ///< with it, trimmed
    std::vector<AllergenText> allergens;  ///< of that formula
    CoreAsked core;                       ///< what that formula must reach in the middle
};

/// What a word of `--without` took in.
struct Excluded {
    std::string word;                  ///< as typed
    std::string takes, note;           ///< in words: what is of that kind; what of it no record can tell
    std::vector<std::string> lines;    ///< ids, of the formula
    std::vector<std::string> casings;  ///< as written, of what stands beside the mass
    std::vector<Reason> notes{};       ///< what `note` says, one by one
};

/// What the maker asks of `swaps`.
struct SwapsRequest {
    std::size_t top = 12;
    std::optional<Inventory> have{};     ///< only what it names stands in; absent: whatever is known
    std::vector<std::string> without{};  ///< as of `adapt`
};

struct SwapsAnswer {
    std::string line;  ///< ingredient id
    std::string name;
    double line_grams = 0;
    std::vector<Role> roles;
    std::vector<StandIn> stand_ins;       ///< in the order a maker would try them
    std::vector<Reason> left_out;         ///< whose condition the formula's own process goes against, and which
    std::vector<AllergenText> allergens;  ///< of the formula as it is
    std::vector<CautionText> cautions;
    CoreAsked core;
    std::vector<Reason> read_as;     ///< what the reader of the formula took upon itself
    PageSafety on_page;              ///< over the formula and every stand-in shown
    std::string overlay;             ///< the folder laid over the built-in knowledge; empty: none
    std::vector<Excluded> excluded;  ///< what was to be left out
    bool nothing_listed = false;     ///< the list that was given names no food that is known: what stands in is none of it
};

/// What was taken to be on hand, or not, without being said.
struct Presumption {
    std::string ingredient;  ///< id; empty: about the list as a whole
    bool on_hand = false;
    bool matters = false;  ///< the answer would be another one were it the other way
    Reason reason{};
    std::string says;  ///< in words, in metric
    std::string add;   ///< the line to add to the list if it is wrong
};

/// The whole formula made larger or smaller before anything else.
struct Scaled {
    double factor = 1;
    double meat_before_g = 0, meat_after_g = 0;
    Reason reason{};
    std::string says;  ///< in words, in metric: "2800 g pork shoulder on hand where 3000 g is asked: the whole batch at 93 %"
};

/// The maker's own idea: this food for that line, by name.
struct UseInstead {
    std::string with, line;
};

/// What the maker asks of `adapt`.
struct AdaptRequest {
    std::optional<Inventory> have;
    std::vector<std::string> wants;    ///< words and conditions as written
    std::vector<std::string> without;  ///< ingredients, allergens, "nuts", "milk", ...
    std::vector<std::string> keep;     ///< lines never to touch
    std::vector<UseInstead> use;       ///< nothing else stands in for these lines
    std::vector<InventoryItem> most;   ///< no more than this of a food
    std::vector<InventoryItem> least;  ///< no less than this of a line
    std::string meat;                  ///< scale to this much meat first: "2.8 kg"; empty: as the formula says
    bool as_much = false;              ///< scale to as much as the weights on the list make
    std::size_t changes = 0;  ///< most moves a variant may make beside losing what is missing and trimming salt or water; 0: no limit
    std::size_t top = 3;
    double sure = 0.5;  ///< a want counts as met when at least this share of the draws meets it
};

enum class EditKind { replace, split, reduce, raise, omit, add, process };
std::string_view word(EditKind kind);

/// A food that would do as well as the one an edit brings, everything else balanced anew.
struct Instead {
    std::string with;                   ///< id
    std::vector<std::string> prepared;  ///< as people read it
    double grams = 0;
    double distance = 0;                 ///< of the variant with it
    std::vector<std::string> allergens;  ///< that it holds, by itself or by what the list says of its packet
};

struct Edit {
    EditKind kind = EditKind::replace;
    std::string line;                   ///< id of the line's ingredient; empty for process
    std::string with;                   ///< id of the stand-in or of what is added; what to do, for process
    std::vector<std::string> prepared;  ///< of the stand-in, as people read it
    double grams_before = 0, grams_after = 0;
    double grams_left = 0;  ///< of the line, where something else is taken for a part of it
    Reason reason;
    std::string why;                    ///< the reason in brief, in metric
    Reason does{};                      ///< process: what to do, of which `with` is the sentence in metric
    std::vector<Instead> alternatives;  ///< nearest first
};

struct WantResult {
    std::string want;
    bool met = false;
    double chance = 0;  ///< share of the common draws in which it is met
    std::string says;   ///< in words, in metric: "bind 48 -> 66, asked for 63 or more"
    Reason reason{};
};

struct Variant {
    std::size_t rank = 0;
    double distance = 0;                 ///< noticeable differences from the base, prices included
    double felt = 0;                     ///< of these, what the models say will be noticed; the rest is the price of trusting swaps
    Nearness nearness = Nearness::same;  ///< what the distance is called
    std::string table;                   ///< one sentence: how it will differ at the table
    Reason table_reason{};
    std::vector<Edit> edits;
    Formula formula;
    Prediction prediction;
    PerProperty<Band> differences;
    Band colour_rested, colour_cooked;  ///< CIEDE2000 from the base
    std::vector<WantResult> wants;
    std::vector<std::string> new_allergens;
    std::vector<CautionText> new_cautions;  ///< that the base does not call for, or not so far
    std::vector<Reason> gives_back;         ///< what brings back something the wants cost
};

struct AdaptAnswer {
    Prediction base;
    bool proved = false;  ///< nothing unvisited can beat the last variant shown
    double gap = 0;       ///< noticeable differences by which something unvisited could still win
    std::size_t plans_visited = 0;
    std::vector<Variant> variants;
    std::vector<Reason> first;          ///< said before all else: a want from which the first variant goes away
    std::vector<Reason> conflict;       ///< the smallest set of demands that cannot all be met, when none can
    std::vector<Reason> would_give;     ///< what would resolve it
    std::vector<Reason> reach;          ///< then: how near each want can be come to, alone and beside the rest
    PageSafety on_page;                 ///< over the base and every variant shown
    PageSafety of_variants;             ///< over the variants alone: what is on the page besides is only of the base
    std::vector<Presumption> presumed;  ///< what matters first
    std::vector<Excluded> excluded;     ///< what each word of `without` took in
    std::optional<Scaled> scaled;       ///< then `base` and all weights are of the formula as scaled
};

/// How far one formula lies from another by the advisor's measure, in noticeable differences; the parts add up as squares.
struct DistanceParts {
    double distance = 0;
    Nearness nearness = Nearness::same;                  ///< what the distance is called
    double felt = 0;                                     ///< what the models say will be noticed
    double lost = 0;                                     ///< lines left out with nothing in their place
    double trusted = 0;                                  ///< swaps to be trusted, more to weigh, new allergens
    std::vector<std::pair<std::string, double>> most{};  ///< what is felt, the most first
};

/// One formula against another.
struct Comparison {
    PerProperty<Band> differences;      ///< of the one less the other, from the common draws
    Band colour_rested, colour_cooked;  ///< CIEDE2000 between them
    DistanceParts apart;                ///< of the one from the first, as if it were a variant of it
};

struct CompareAnswer {
    std::vector<Prediction> formulas;
    PageSafety on_page;                  ///< over all of them
    std::vector<Comparison> from_first;  ///< one a formula after the first: that one less the first
};

}  // namespace standin
