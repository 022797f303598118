// What hangs above the bench: weights, order of work, what to buy, what it makes.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "standin/band.hpp"
#include "standin/formula.hpp"
#include "standin/prediction.hpp"
#include "standin/process.hpp"
#include "standin/reason.hpp"

namespace standin {

/// How large the batch is to be, in the maker's words: "5 kg", "11 lb", "2400". All empty: as the formula says.
struct SheetRequest {
    std::string meat;                 ///< weight of the meat block, as weighed; excludes `total`
    std::string total;                ///< weight of all lines as weighed
    std::string piece;                ///< raw weight of one link or patty; excludes `link`
    std::vector<std::string> only;    ///< "spinach 400 g": no more than this is to be had of a line; the tightest one decides
    std::string casing{};             ///< "32 mm": stuffed into one so wide, whatever the formula says of its shape
    std::string link{};               ///< "12 cm": length of one link
    std::optional<Inventory> have{};  ///< what is on hand: only what is lacking is to be bought
};

/// One line on the scale.
struct SheetWeight {
    std::size_t line = 0;       ///< index into the formula and the prediction
    double grams = 0;           ///< exact
    double weigh_g = 0;         ///< rounded to what the scale shows
    double scale_g = 1;         ///< the step of that scale: that of the kitchen, 1 where nothing is said, or 0.1
    bool fine = false;          ///< a scale of 1 g would be too far off
    bool after = false;         ///< weighed after its preparation
    double in_the_batch_g = 0;  ///< after preparation
};

enum class TemperatureIs { at, at_most, at_least };

struct StepPart {
    std::size_t line = 0;
    double grams_in = 0, grams_out = 0;
    std::string verb{};  ///< what is done to this part where the step does not do the same to all: "peel"
};

/// What is done at the bench. What, how and why in words is `narrate`'s.
enum class BenchTask {
    preparation,  ///< of the knowledge, in its own words
    weigh,        ///< trim and weigh out
    shell,        ///< what lived in the sea
    soak_casing,
    chill,
    grind,
    blend,           ///< the paste
    salt_meat,       ///< with the dry seasoning
    work_in,         ///< paste and liquid
    work_in_soaked,  ///< likewise, with a binder that soaks in the liquid first
    acid_last,
    acid_first,
    mix_the_rest,  ///< with the meat that lies in acid
    mix_all,       ///< together
    taste,         ///< a fried patty
    stuff,
    shape,  ///< patties, or loose
    rest,
    cook,
    chill_minced,  ///< what comes minced
    blend_sour,    ///< sour fruit by itself
    at_the_plate,  ///< a sauce that brings back what is not in the mass
    cut_small,     ///< by knife, what is too little for a paste
};
std::string_view word(BenchTask task);

/// What, how and why, in the words of the knowledge or the formula.
struct OwnStepWords {
    std::string what, how, why;
};

/// One thing to do. Absent numbers are not known or do not matter.
struct SheetStep {
    std::string id;  ///< stable: a preparation's id, or stand-in buy weigh casing chill grind paste sour mix-salt mix-rest mix-acid mix
                     ///< taste shape rest cook
    BenchTask task = BenchTask::preparation;
    std::optional<Cook> cook;       ///< of BenchTask::cook: where
    OwnStepWords own{};             ///< of a preparation, and of what the formula keeps for the plate
    std::vector<Reason> besides{};  ///< what else is to be minded in this step
    std::string what;               ///< in words, in metric: two or three
    std::string how;                ///< likewise: a sentence, without the numbers below
    std::string why;
    std::vector<StepPart> parts;
    double grams_in = 0, grams_out = 0;
    std::optional<double> minutes;
    std::optional<double> temperature_c;
    TemperatureIs temperature = TemperatureIs::at;
    std::optional<double> around_c;  ///< of the oven, or of the water, about it
    std::optional<double> stop_c;    ///< stop and chill when the mass gets this warm
    std::optional<double> plate_mm;
    std::optional<double> casing_m;  ///< of casing to get ready
    std::optional<double> link_mm;   ///< length of one link
    bool said = true;                ///< the numbers are the formula's or a rule's; false: what is usual
    std::string source;
};

/// How much to ask for in a shop, rounded up to how it is sold there.
struct Sold {
    std::optional<double> count;  ///< of `unit`; absent: by weight
    std::string unit;             ///< bunch, head, piece, packet, bottle, ...
    double unit_g = 0;            ///< what one of them gives, trimmed
    double unit_ml = 0;           ///< volume of one, of what is sold by volume; else 0
    double buy_g = 0;             ///< of all of them
    std::string source;

    friend bool operator==(const Sold&, const Sold&) = default;
};

/// One thing to buy.
struct Purchase {
    std::string ingredient, name;
    double need_g = 0;    ///< as weighed, before any preparation
    double bought_g = 0;  ///< with what is cut away
    Sold metric, us;      ///< in a shop that weighs in grams, and in one that weighs in pounds
    bool from_the_tap = false;
    bool have_all = false;         ///< the list has enough of it
    std::optional<double> have_g;  ///< of what is on hand, as bought; absent: plenty, or no list
    std::optional<double> lack_g;  ///< as bought, of what the list has too little of: `metric` and `us` are for so much
};

struct SheetYield {
    double batch_g = 0;
    Band cooked_g;
    std::string shape;  ///< link or patty
    double piece_g = 0;
    double pieces = 0;  ///< whole ones, the test patty taken off
    Band piece_cooked_g;
    std::optional<double> diameter_mm, length_mm, casing_m;
    bool titled_link = false;                ///< the title speaks of links, and no casing is named
    bool length_said = false;                ///< of a link: by the maker, by its weight or its length
    std::string casing;                      ///< the kind that comes so wide: sheep, hog or beef; empty: no link
    std::optional<double> casing_g_a_metre;  ///< of raw mass in a metre filled full
};

struct Sheet {
    std::string scaled;  ///< in words: "to 5 kg of meat"
    Reason scaling{};    ///< what it was scaled to
    double factor = 1;
    Formula formula;  ///< scaled
    Prediction prediction;
    std::vector<SheetWeight> weights;  ///< in the formula's order
    std::vector<SheetStep> steps;
    std::vector<Purchase> buy;
    SheetYield makes;
    double core_c = 0;          ///< to cook to
    std::string core_says;      ///< the same in words, with the time it must be kept
    std::string core_rule;      ///< its words and source
    std::vector<Reason> notes;  ///< what the sheet decided that the formula did not say
};

}  // namespace standin
