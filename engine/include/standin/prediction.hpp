// What a batch will be.
#pragma once

#include <array>
#include <compare>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "standin/band.hpp"
#include "standin/formula.hpp"
#include "standin/lab.hpp"
#include "standin/property.hpp"
#include "standin/reason.hpp"
#include "standin/vocabulary.hpp"

namespace standin {

struct PredictedLine {
    std::string ingredient;  ///< id
    std::string name;
    std::vector<std::string> prepared;  ///< as people read it: "blanched 3 min"
    double weighed_g = 0;               ///< on the scale, as the formula says
    double grams = 0;                   ///< in the batch, after preparation
    double share = 0;                   ///< of the batch
    std::vector<Role> roles;
    bool keep = false;
    std::vector<Declared> declared{};     ///< allergens the line itself tells of
    std::vector<std::string> may_hold{};  ///< allergens that it may hold for what was done to it before it was bought
    bool weighed_prepared = false;        ///< on the scale after its preparations; else before them
    std::vector<std::string> ready{};     ///< what is done to it already where it lies, by the list
    std::vector<std::string> still{};     ///< of `prepared` what is still to be done
    double lying_g = 0;                   ///< on the scale as it lies, with what is ready done; else as `weighed_g`
    std::string written{};                ///< the amount in the maker's own words
    std::string spoons{};                 ///< a light weight in level spoons: "1 1/4 tsp"; empty where no spoon weight is known
};

/// A colour with the band of each coordinate; `lab` is the middle.
struct PredictedColour {
    Lab lab;
    Band L, a, b;
    std::string hex, word;
    std::string flecks{};  ///< "green" or "olive" where pieces of leaf are seen in it; else empty
};

/// How far the cook kills Salmonella in the core, by published tables: information, never permission.
struct CookLethality {
    bool measured = false;  ///< from the maker's own core readings; else from an estimate of how the core warms
    Band minutes;           ///< until the core is where cooking ends
    Band logs;              ///< log10 reductions, never shown above the cap of the tables
    std::string table;      ///< which table
    Reason reason{};        ///< the table's own time at this core beside it
    std::string says;       ///< in words, in metric
};

/// How long the raw mass stays green, resting as the formula says.
struct GreenLife {
    Band hours;        ///< of rest; 96 stands for that or longer
    Reason reason{};   ///< with what would keep it longer, worked out
    std::string says;  ///< in words, in metric
};

struct Contribution {
    std::size_t line = 0;
    double share = 0;  ///< of the whole
};

struct CautionText {
    std::string id, text, source;      ///< the text in metric
    std::vector<std::string> foods{};  ///< ids of the ingredients that call for it; empty: the batch as a whole
    std::string degree{};              ///< how far it goes, where the same caution can be worse: "over", "73.9 C"
    Reason reason{};
    std::string brief{};  ///< the same in a line for a first page, without its foods; empty: there is no shorter one
};

/// Whether both are the same caution and go as far, whichever foods call for them.
bool is_same(const CautionText& one, const CautionText& other);
/// Whether `one` tells of everything that `other` tells of: the same caution, no less far, for no fewer foods.
bool says_all_of(const CautionText& one, const CautionText& other);
/// Whether both are limits on one value and `one` is the less severe: a pH under 5.3 beside one under 5.0.
bool is_milder(const CautionText& one, const CautionText& other);

/// Whether it is a limit of the rules asked for that the batch breaks, as it is written or as it is usually counted.
bool breaks_the_law(const CautionText& caution);

/// How much of an allergen there is in the mass, where the law wants it declared from an amount on: sulphite.
struct Reckoned {
    double least_mg_kg = 0, most_mg_kg = 0;  ///< by the rule sets, for each reckons wine as its own table does
    std::optional<double> from_mg_kg{};      ///< the least that any of them wants declared

    friend bool operator==(const Reckoned&, const Reckoned&) = default;
};

/// "by reckoning under 10 mg/kg", "by reckoning 8-14 mg/kg; declared from 10 mg/kg on".
std::string in_words(const Reckoned& reckoned);

/// An allergen with the ingredients that bring it and the codes that want it declared, each in its own words.
struct AllergenText {
    std::string allergen;
    std::vector<std::string> from;
    std::vector<std::pair<std::string, std::string>> declare;  ///< code, words
    bool sure = true;                                          ///< false: a bought one often holds it, and the packet decides
    bool beside = false;                                       ///< only foods beside the mass bring it: butter for frying
    std::optional<Reckoned> reckoned{};                        ///< where the amount decides
};

/// How hot the middle must get, and how long it must stay there.
struct CoreAsked {
    double core_c = 0;
    double hold_s = 0;  ///< 0: reaching it is enough

    friend auto operator<=>(const CoreAsked&, const CoreAsked&) = default;
};

/// What must be minded over several batches at once: all their allergens and cautions, the most demanding core.
struct PageSafety {
    std::vector<AllergenText> allergens;
    std::vector<CautionText> cautions;
    CoreAsked core;
};

struct Prediction {
    std::string title;
    double batch_g = 0, meat_g = 0;
    std::vector<PredictedLine> lines;
    std::vector<PredictedLine> beside{};  ///< foods beside the mass, without weight in it
    std::vector<Beside> casings{};
    PerProperty<Band> properties;
    PerProperty<double> nominal;  ///< with every uncertain quantity at the middle of its band: words, tables, notes and cautions go by it
    PredictedColour raw, rested, cooked;
    std::array<double, 6> heat_chances{};  ///< of none, barely, mild, medium, hot, very hot
    std::string heat_word, bind_word, colour_word;
    std::optional<GreenLife> green_life;     ///< absent where it is not green to begin with
    std::optional<CookLethality> lethality;  ///< absent where no published table fits the meat
    std::vector<std::string> aroma;          ///< leading notes
    std::vector<Contribution> green_from, heat_from, acid_from, salt_from, fat_from;
    std::vector<Declared> declared;       ///< allergens that notes and instructions tell of
    std::vector<AllergenText> allergens;  ///< those that a bought food often holds come last, not sure
    std::vector<CautionText> cautions;
    CoreAsked core;
    std::optional<double> warming_h;  ///< of the core between the temperatures at which toxins form; absent: not known
    std::string overlay;              ///< the folder laid over the built-in knowledge; empty: none
    std::string label;                ///< draft ingredient list
    std::vector<Reason> notes;        ///< where a model was stretched beyond its validity
    std::vector<Reason> read_as;      ///< what the reader of the formula took upon itself
};

}  // namespace standin
