// Law and guidance as values: what the rule sets say, read and understood once.
#pragma once

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "core/band.hpp"
#include "knowledge/records/vocabulary.hpp"
#include "standin/property.hpp"

namespace standin {

/// A number with its 5th and 95th percentile, its unit and the id of its source (perhaps with "#row").
struct Quantity {
    Band band;
    std::string unit;
    std::string source;
};

/// An allergen of the list. Its words are those that, standing in a name, say it.
struct Allergen {
    std::string id, name;
    std::vector<std::string> words;
};

// When a caution or a rule of the making holds. The words they are written with stand in knowledge/README.md.
struct IngredientBears {
    std::string word;  // among the cautions of an ingredient
    friend bool operator==(const IngredientBears&, const IngredientBears&) = default;
};
struct AllergenInside {
    std::string allergen;
    friend bool operator==(const AllergenInside&, const AllergenInside&) = default;
};
struct RoleInside {
    Role role = Role::green;  // the main one of a line
    double above = 0;         // % of the batch that such lines make together
    friend bool operator==(const RoleInside&, const RoleInside&) = default;
};
struct SpeciesInside {
    std::string word;  // a species, or a group of them that a rule set names
    friend bool operator==(const SpeciesInside&, const SpeciesInside&) = default;
};
struct SpeciesAbsent {
    std::string word;
    friend bool operator==(const SpeciesAbsent&, const SpeciesAbsent&) = default;
};
struct PropertyBeyond {
    Property property = Property::ph;
    bool below = false;
    double limit = 0;  // at the middle of the band
    friend bool operator==(const PropertyBeyond&, const PropertyBeyond&) = default;
};
struct ProcessBeyond {
    ProcessField field = ProcessField::rest;
    bool below = false;
    double limit = 0;
    friend bool operator==(const ProcessBeyond&, const ProcessBeyond&) = default;
};
struct CoreBelowRule {
    friend bool operator==(CoreBelowRule, CoreBelowRule) = default;
};
// an ingredient that often holds an allergen of its own accord
struct PacketMayHold {
    friend bool operator==(PacketMayHold, PacketMayHold) = default;
};
// more of an ingredient than its most in a kilo
struct OverMostInAKilo {
    friend bool operator==(OverMostInAKilo, OverMostInAKilo) = default;
};
// the core stays longer where toxins form than the rule for warming allows
struct WarmsTooSlowly {
    friend bool operator==(WarmsTooSlowly, WarmsTooSlowly) = default;
};
// leaf that goes in raw, more of it than so many percent of the batch
struct RawLeafOver {
    double above = 0;
    friend bool operator==(const RawLeafOver&, const RawLeafOver&) = default;
};
// acid that meets the meat before the salt, as the formula says
struct AcidFirst {
    friend bool operator==(AcidFirst, AcidFirst) = default;
};
// what must hold together when it is cooked: a link or a patty, and no crumbs in the pan
struct HoldsTogether {
    friend bool operator==(HoldsTogether, HoldsTogether) = default;
};
using When = std::variant<IngredientBears, AllergenInside, RoleInside, SpeciesInside, SpeciesAbsent, PropertyBeyond, ProcessBeyond,
                          CoreBelowRule, PacketMayHold, OverMostInAKilo, WarmsTooSlowly, RawLeafOver, AcidFirst, HoldsTogether>;

/// Said when any of the conditions holds; without one, of every batch.
struct Caution {
    std::string id, text, source;
    std::vector<When> when;
    std::string brief{};       // the same in a line, for a first page; empty: the text is short enough
    std::vector<When> only{};  // all of these must hold besides
    std::string salted{};      // what is said instead where the formula mixes salt and lean first, so that there is no need to say it
};

/// The furthest that the making may go: the bench sheet keeps to it, and a formula that goes beyond is cautioned.
struct MakingRule {
    std::string id, text, source;
    ProcessField field = ProcessField::rest;
    double most = 0;
    std::vector<When> when;
    std::string keeps{};  // of a limit on the rest: how long the raw mass keeps, in words, for the caution that tells it
};

struct AllergenRule {
    std::string allergen, declare, source;
    std::optional<double> from_mg_kg, over_mg_kg;  // declared from this on, or above it; neither: always
};

struct CapRule {
    std::string id, text, clause, source;
    CapProperty property = CapProperty::fat_pct;
    std::vector<std::string> names;  // product names the cap belongs to; empty: any fresh sausage
    double limit = 0;
    bool at_least = false;
};

struct CookRule {
    std::vector<Species> species;
    std::vector<std::string> marks;  // cautions of the foods it is for, whatever meat they are in; it is for species, for foods or for both
    double core_c = 0;
    double hold_s = 0;  // to be kept there; 0: reaching it is enough
    std::string text, source;
    std::optional<double> at_once_c{};  // from this on reaching it is enough
};

/// Animals that rules speak of by one word.
struct SpeciesGroup {
    std::string word;
    std::vector<Species> species;
};

/// How much fat the word meat covers, for meat of these species alone; without species: for any other.
struct MeatWord {
    std::vector<Species> species;
    double most_fat_pct = 0;
    std::string source;
};

struct RuleSet {
    std::string code, title, edition;
    std::vector<AllergenRule> allergens;
    std::vector<CapRule> caps;
    std::vector<CookRule> cooking;
    std::vector<MakingRule> making;
    std::vector<Caution> cautions;
    std::vector<SpeciesGroup> groups;
    std::vector<MeatWord> meat_word;         // empty: all meat counts as meat, fat and all
    std::optional<Quantity> wine_sulphites;  // the most that wine may hold by this law
    std::optional<Quantity> hot_holding;     // C: what is held hot is held at this or hotter
};

}  // namespace standin
