// Words makers say of a test patty, and how a mass that is mixed already is mended. Only mending reads them, so they are no part of
// Records.
#pragma once

#include <array>
#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "knowledge/records/records.hpp"
#include "standin/result.hpp"

namespace standin {

/// When a tasted word is read so: bounds on what the models say of the mass as made, both to be kept.
struct TasteWhen {
    std::string property;
    std::optional<double> below, above;
};

/// One way to understand a tasted word.
struct TasteReading {
    std::string says, says_much;  // how it is taken, for the maker; the other where it was said strongly
    std::string says_little;      // where it was said of a little
    std::vector<TasteWhen> when;  // all must hold
    std::vector<WantMove> moves;  // what must move for it; none: no model tastes it
    std::optional<Role> more_of, less_of;
    std::optional<AromaNote> less_note;  // of what brings that note; holds only where the formula has such a food
    std::string less_kind;               // of foods of that kind; likewise
    double by = 1;                       // times the dose of that role
    double much = 2, little = 0.5;       // steps where it was said strongly, or of a little

    /// Whether plain mass without something is what it asks for.
    bool asks_less() const { return less_of || less_note || !less_kind.empty(); }

    double fat = 0;        // of the plain mass: so much cold fat in it, where the mass is lean
    double plain = 0;      // times the mass: so much plain mass is a beginning, where nothing else can be weighed
    bool fish = false;     // only where all the meat is fish
    bool discard = false;  // nothing is mended: `says` tells why
    bool beside = false;   // tried beside the reading before it as well
};

/// A word makers say of a test patty. Of its readings the first that holds counts.
struct TasteWord {
    std::string id, practice, source;  // practice: what makers do that no model can judge
    std::vector<std::string> words, examples;
    std::vector<TasteReading> readings;
    bool loose_water = false;  // said of water that nothing holds
};

/// How a food is brought into a mass that is mixed already, so that it spreads.
struct BringIn {
    std::string id, how, source;
    std::vector<Role> roles;      // main roles; none: any
    std::vector<Tissue> tissues;  // of these; none: any
    double water = 0;             // grams of cold water for a gram of it
    bool wet = false;             // only into a mass whose water is loose
    double round = 0;             // g to a kilo of mass at a time; 0: all at once
};

struct MendStep {
    std::string id, text, source;
    std::optional<bool> worked;  // only where the mass is mixed on until tacky, or only where it is not
};

/// Bounds on what a formula says of its making.
struct MakingWhen {
    std::string field;  // of making_fields
    std::optional<double> below, above;
    bool unsaid = false;  // holds where the formula says nothing of it, and where it is below or above
};

inline constexpr std::array<std::string_view, 5> making_fields{"mixed-at", "rest", "mixing", "plate", "core"};

inline constexpr std::array<std::string_view, 4> bind_costs{"acid", "order", "cold", "mixing"};

/// What is thought away to see how much greener the mass would be: other colours, the minutes of a long blanch, the acid, the rest.
inline constexpr std::array<std::string_view, 4> green_costs{"tint", "blanch", "acid", "rest"};

/// What the making has to do with a tasted word. All that it asks for must hold.
struct CauseOfTaste {
    std::string id, says, first, does, source;  // texts with {value} of the first field, {foods} and figures of the mass
    std::vector<std::string> of;                // ids of tasted words
    std::vector<std::string> beside;            // ids of tasted words of which one must be said as well; none: any
    std::vector<std::string> unless;            // ids of causes beside which it is not told
    std::vector<std::string> orders;            // "salt first", "acid first": the formula says one of them
    std::vector<MakingWhen> process;
    std::vector<TasteWhen> when;
    std::vector<Role> roles;               // main roles of which the formula has a line
    std::optional<double> share_above;     // % of the mass that the lines of these roles make together
    std::optional<double> protease_above;  // g/kg, as raw pineapple
    std::optional<AromaNote> note;         // foods that bring it
    bool acids = false;                    // foods that bring its acid
    bool unsqueezed = false;               // foods that went in with water that squeezing takes
    bool poured = false;                   // water, stock and the like, which no cell holds
    std::optional<bool> fish;              // all its meat is fish, or not all of it
    std::string costs;                     // factor of the bind that tells how much: of bind_costs; of several the costliest first
    std::string greener;                   // of green_costs: foods that keep it from being greener; likewise
    double spare_c = 0;                    // C by which the core is over what the meat needs
    bool ends = false, step_only = false;  // nothing weighed in mends it; what is weighed in is a step
    bool weighed = false;                  // what is weighed in is the remedy, not what comes after it
    bool instead = false;                  // what makers do about the word otherwise is not told beside it
    bool plain_first = false;              // plain mass without the foods that it is about comes before additions
    bool set = false;                      // mixing on does not bind it any more
};

struct Mending {
    std::vector<TasteWord> tasted;
    std::vector<CauseOfTaste> causes;                        // the first comes first
    std::vector<std::string> passed_over, stronger, weaker;  // words beside a tasted one: "it is", "much", "a bit"
    std::vector<BringIn> bring;                              // the first that fits counts
    std::vector<MendStep> fold, plain;                       // always, and where plain mass is made
    std::string sweet, dish;  // with {amount} and {food} of the list: what covers a taste; what is plain and thins it too
};

inline constexpr std::string_view mending_file = "mending.json";

/// `text` of a mending file; `file` names it in messages.
Result<Mending> mending_from(std::string_view text, const std::string& file);

/// What is wrong with it beside the records it goes with: sources that are none, words said twice, examples read otherwise.
std::vector<std::string> faults_in(const Mending& mending, const Records& records);

}  // namespace standin
