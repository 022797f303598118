// A mass that is mixed and does not taste right: what may still be added, and what plain mass would do.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "standin/engine.hpp"

namespace standin {

struct MendRequest {
    std::vector<std::string> tasted;    ///< what was said of the test patty: "flat, too sour"
    std::vector<std::string> measured;  ///< of the mass: "pH 4.9", "salt 2.4 %"
    std::string made;                   ///< how much of it there is: "9.6 kg"; empty: as the formula says
    std::optional<Inventory> have;      ///< nothing else may come in
    std::vector<std::string> without;
    double sure = 0.7;    ///< a taste counts as mended when at least this share of the draws has it so
    std::size_t top = 2;  ///< ways of adding to tell at most
};

/// One word of the maker's, and what was made of it.
struct TastedWord {
    std::string written;   ///< as the maker said it
    std::string id;        ///< of the record
    std::string says;      ///< how it was taken
    bool judged = false;   ///< a model or a dose stands behind it; else only what makers do
    bool more = false;     ///< more of a seasoning answers it, which no model tastes
    bool there = false;    ///< what it asks for is so already, by the formula
    bool beside = false;   ///< another way to take a word that stands before it
    std::string practice;  ///< what makers do that no model judges
    std::string source;    ///< of the record
};

/// What the formula's own making has to do with what was tasted: it comes before anything is weighed in.
struct MakingCause {
    std::string id, tasted;  ///< of the record; the maker's word
    std::string says;        ///< "it was mixed at 15 C, where its fat smears"
    std::string first;       ///< what to do about it, in a few words; empty: what is said of the ways tells it
    std::string does;        ///< the same at length, and what to do next time
    bool ends = false;       ///< nothing that is weighed in mends it
    bool weighed = false;    ///< what is weighed in is the remedy, and not what comes after it
    std::string source;
};

/// What the maker measured, against what was predicted.
struct MeasuredValue {
    Property property = Property::ph;
    double value = 0;
    Band predicted;
    bool far = false;  ///< well outside the band: a second look is due
};

/// One thing that goes into the mass, or into the plain mass.
struct Ingoing {
    std::string ingredient, name;
    std::vector<std::string> prepared;
    double grams = 0;          ///< as weighed
    double water_g = 0;        ///< cold water to dissolve or stir it in
    std::string how;           ///< so that it spreads
    int rounds = 1;            ///< in so many equal parts, a patty fried after each
    bool fresh = false;        ///< the formula has none of it
    bool first = false;        ///< salt that is short in a mass that is mixed on: it goes in before the mixing
    bool weighed_raw = false;  ///< and prepared after that
    bool meat = false;         ///< meat or fat
    bool unlisted = false;     ///< meat or fat that a list which says "nothing else" does not name
};

enum class MendKind { add, blend, blend_and_add, work };
std::string_view word(MendKind kind);

/// Salt that stays above what most makers put in.
struct SaltLeft {
    double pct_of_meat = 0, usual_most = 0;
    double enough = 0;   ///< % of meat, well within what is usual
    double plain_g = 0;  ///< plain mass in all that brings it there; 0: more than it is worth
};

/// How much plain mass in all brings one property to a value that the way does not come to, or goes beyond.
struct PlainFor {
    Property property = Property::ph;
    double value = 0;
    double plain_g = 0;  ///< 0: more than it is worth
};

/// What a property is once the first part of the plain mass is in.
struct AfterFirst {
    Property property = Property::ph;
    double value = 0;
};

/// A food of which there is still more in a kilo than is good; without a food, what was tasted over a limit that the page warns of.
struct StillOver {
    std::string tasted, food;
    double value = 0, most = 0;  ///< g/kg of the food, else in the unit of what was tasted
};

/// One way to mend it.
struct MendWay {
    MendKind kind = MendKind::add;
    double work_min = 0;                    ///< mixed on so long, cold, until it is tacky; 0: only folded
    std::vector<Ingoing> add;               ///< into the mass, or into both together
    std::vector<Ingoing> plain;             ///< the plain mass, made apart
    double plain_g = 0;                     ///< of all of it, prepared
    std::vector<std::string> plain_lacks;   ///< names of the formula's foods that it leaves out
    std::vector<std::string> plain_less;    ///< names of those of which it has a part, so that another taste is not thinned too far
    int plain_rounds = 1;                   ///< in so many equal parts, a patty fried after each
    std::vector<AfterFirst> after_first;    ///< of what was to become less, where it goes in by parts
    std::vector<std::string> plain_leaner;  ///< names of lean cuts that stand in it for fatter ones
    std::vector<WantResult> wants;          ///< one a property that was to move
    std::vector<std::string> step_only;     ///< words that are nearer by it and not right: what is still too much, or stays in the pan
    bool met = false;                       ///< all of them, and none a step only
    std::optional<Property> held_for;       ///< what more of it would spoil: it goes no further than that bears
    std::optional<SaltLeft> salt_left;      ///< told where it was too salty
    std::vector<PlainFor> plain_for;        ///< what less of it does, or more
    std::vector<StillOver> still_over;
    std::string colour_left;               ///< word of the raw mass, where green was asked and it is none
    std::vector<std::string> new_animals;  ///< that the formula has not
    Formula formula;                       ///< of the mended mass
    Prediction prediction;
    PerProperty<Band> differences;  ///< of the mended mass less the mass as it is
    std::vector<std::string> new_allergens;
    std::vector<CautionText> new_cautions;
};

struct MendAnswer {
    Prediction base;  ///< of the mass as made, by what was measured
    double made_g = 0;
    std::vector<TastedWord> words;
    std::vector<MakingCause> causes;  ///< the first comes first
    std::vector<MeasuredValue> measured;
    std::string discard;               ///< the mass is not to be mended, and why; then there is nothing else
    std::vector<std::string> opposed;  ///< two words that pull against each other
    std::vector<MendWay> ways;
    bool only_listed = false;              ///< a list said what there is, and nothing else was looked at
    std::vector<Reason> cannot;            ///< what was asked and is not to be had this way
    std::vector<std::string> fold, plain;  ///< how, step by step
    std::vector<Presumption> presumed;
    std::vector<Excluded> excluded;
    PageSafety on_page;      ///< over the mass as it is and every way to mend it
    PageSafety of_variants;  ///< over the ways alone
};

/// A usage error names the word that is not understood.
Result<MendAnswer> mend(const Engine& engine, const Formula& formula, const MendRequest& request, const Setting& setting = {});

}  // namespace standin
