// The knowledge as plain values: what the JSON says after reading, before anything is computed from it.
// Units and meaning of each field are those of knowledge/README.md.
#pragma once

#include <array>
#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "core/band.hpp"
#include "knowledge/records/lexicon.hpp"
#include "knowledge/records/rule_records.hpp"
#include "knowledge/records/vocabulary.hpp"

namespace standin {

struct SourceRecord {
    std::string id;
    SourceKind kind = SourceKind::judgement;
    std::string cite;
    std::string note;
};

/// Per 100 g edible portion. An absent optional is unknown, not zero.
struct Composition {
    std::string source;
    Band water, protein, fat, carbohydrate, ash;
    std::optional<Band> fibre, sugars, sodium_mg, potassium_mg;
    Band alcohol, acid, salt;
    std::string stand_in;
    std::string exception;
};

struct AcidShare {
    Acid acid = Acid::acetic;
    double share = 0;
};

struct Acidity {
    std::optional<Quantity> ph, titratable, buffer;
    std::vector<AcidShare> acids;
};

struct MeatRecord {
    Species species = Species::pork;
    Quantity buffer_scale, bind;
};

struct BindingRecord {
    Quantity water, fat;
    std::string sets;
    std::string gel;                 ///< "made" or "sets" where its own water lies in a gel, at once or when cooked; else empty
    std::optional<Quantity> swells;  ///< share of what it holds when chilled that it holds in the heat as well
};

/// Colour of a pigment other than chlorophyll: K/S in the three bands for each percent of the mass.
struct TintBands {
    double red = 0, green = 0, blue = 0;
};

struct TintRecord {
    double red = 0, green = 0, blue = 0;
    double fades = 0;                   ///< share that cooking takes, 0-1
    std::optional<TintBands> cooked{};  ///< once cooked, where that is no share of the raw
    std::string source;
};

struct MeasureRecord {
    std::string measure;  // cup, tbsp, piece, bunch, clove, ...
    std::string note;     // "chopped", "large"
    Band grams;
    std::string source;
};

struct AromaShare {
    AromaNote note = AromaNote::grassy;
    double intensity = 0;
};

struct Ingredient {
    std::string id, family, latin, note, storage;
    std::vector<std::string> names;
    std::vector<std::string> already;  // preparations it went through before it was bought: they do not carry over to it
    std::string ready_by;              // the preparation that takes off what `edible` leaves out; empty: that of its tissue
    std::vector<std::string> generic;  // trade words that leave the kind open, read as this one with a note
    std::vector<Role> roles;
    Tissue tissue = Tissue::dry;
    Composition composition;
    std::optional<Quantity> chlorophyll, capsaicinoids, pungency, pod_sigma, lot_sigma, strength, edible, sulphites;
    std::optional<Quantity> lutein;  // with zeaxanthin: what the green of a leaf is checked against
    std::string made_of, apart;      // the food it is dried or ground from; why it differs from its kin
    std::optional<Acidity> acidity;
    std::optional<MeatRecord> meat;
    std::optional<BindingRecord> binding;
    std::optional<TintRecord> tint;
    std::vector<MeasureRecord> measures;
    std::vector<AromaShare> aroma;
    std::vector<int> season;
    std::vector<std::string> allergens, cautions, label;
    std::vector<std::string> may_hold;      // allergens that a bought one often holds: the packet decides
    std::optional<Quantity> most_g_per_kg;  // the most of it, as weighed, in a kilo of batch
    std::vector<std::string> kinds;         // ids of kinds it belongs to beside those that take it in by themselves
    std::vector<std::string> free_of;       // ids of kinds that it is taken to be without: nothing of them stands in for it
};

/// A value that may depend on how long the preparation takes.
struct Point {
    std::optional<double> minutes;
    Band value;
};

struct KeptShare {
    Kept what = Kept::solids;
    std::vector<Point> points;
};

/// What one preparation does to one tissue, per gram that goes in.
struct PreparationEffect {
    std::vector<Tissue> tissues;
    std::vector<Point> yield;        // g out / g in; empty where water_left decides
    std::optional<Band> water_left;  // share of water in what comes out, for drying: the solids decide the weight
    std::vector<KeptShare> kept;
    double adds_salt = 0;         // g NaCl per g out
    double adds_acetic_mmol = 0;  // mmol per g out
    std::string source, note;
};

struct Preparation {
    std::string id, instruction, verb, why, note;
    std::vector<std::string> names;
    int order = 0;
    std::optional<double> minutes, temperature_c;
    bool denatures = false;
    std::vector<PreparationEffect> effects;
};

/// What is weighed in beside a stand-in that does not do it alone.
struct SwapPartner {
    std::string ingredient, why;
    std::vector<std::string> prepared;
    Quantity ratio;  // grams for a gram of what is replaced
};

struct Swap {
    Role role = Role::green;
    std::string from, to, note, source;  // neither end: any food of the role for any other, by dose, where nothing better is known
    std::vector<std::string> prepared, needs;
    Basis basis = Basis::dose;
    std::optional<Quantity> ratio;
    std::optional<SwapPartner> partner;
    double closeness = 0;
    double most_share = 1;  // of what is replaced: the rest of it stays
    bool trade = false;     // what makers take without asking
    bool derived = false;
    bool returned = false;  // the way back of one that goes both ways: without a note, which told of the other end

    bool any() const { return from.empty() && to.empty(); }
};

/// What a swap may ask for beside the weight: a preparation of the stand-in, or a bound on how the batch is made, or just care.
struct Condition {
    std::string id, says, source, note;
    std::string preparation;  // id; empty: none
    std::optional<ProcessField> process;
    std::optional<double> least, most;  // of the process field, in its own unit
};

struct Parameter {
    std::string id, note;
    Quantity quantity;
};

struct Difference {
    std::string property, note;
    bool relative = false;
    Quantity step;
};

struct WantMove {
    std::string property;
    bool times = false;
    double by = 0;
    std::optional<double> least, most;  // where the target must at least lie, whatever the base
};

struct WantRecord {
    std::string word, note, source;
    std::vector<WantMove> moves;
    std::vector<std::string> also;  // other words for the same
};

/// A kind of food, by the words people type who want to be without it. Any of its lists is enough to take a food in.
struct Kind {
    std::string id, takes, note, source;
    std::vector<std::string> names;
    std::vector<std::string> in_tongues;         // words for it in other tongues, as hazard_fold leaves them
    std::vector<std::string> free;               // how a title says that it is without: patterns of hazard words, "bezgluten*"
    std::vector<std::string> foods, but, kinds;  // ids; `but` stays out whatever else says
    std::vector<std::string> plants, allergens;  // `plants` as the Latin name begins
    std::vector<std::string> families;
    std::vector<Tissue> tissues;  // with `families`: of those only these
    std::vector<Species> species;
    std::vector<std::string> sold_clean;   // allergens of it that are sold free of its others
    std::string clean_says, clean_source;  // what is asked of them where a title promises that it is without
    bool alcohol = false;                  // whatever holds any
    bool untreated = false;                // of families and tissues only what has not been prepared before it was bought
    bool diet = false;                     // its name by itself is a promise: halal
};

/// What a casing may be made of, by the words that name it; no words: a casing of which nothing is told.
struct CasingKind {
    std::string name;  // "hog"; empty: the written word tells no sort
    std::vector<std::string> words, kinds;
    std::string note;
};

/// Words people type that no list of foods can answer, and why.
struct RefusedWord {
    std::vector<std::string> names;
    std::string says;
};

struct Records {
    std::vector<SourceRecord> sources;
    std::vector<Ingredient> ingredients;
    std::vector<Preparation> preparations;
    std::vector<Swap> swaps;
    std::vector<Condition> conditions;
    std::vector<Parameter> parameters;
    std::vector<Difference> perception;
    std::vector<WantRecord> wants;
    std::vector<Allergen> allergens;
    std::vector<RuleSet> rules;
    std::vector<Kind> kinds;
    std::vector<CasingKind> casings;
    std::vector<RefusedWord> refused;
    Lexicon lexicon;
};

}  // namespace standin
