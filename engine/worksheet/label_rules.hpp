// What the rules of a country make of a label, read from knowledge/models/label.json: which rows a nutrition table has, how energy is
// counted, how numbers are rounded, what lines there are. A set that is silent on something leaves it to the general one.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "knowledge/index/knowledge.hpp"
#include "standin/label.hpp"

namespace standin {

/// Energy in a gram of fat, protein, carbohydrate, fibre or alcohol.
struct EnergyFactor {
    std::string of;
    double kj = 0, kcal = 0;
};

/// To the nearest `to`, and below `fine_below` to the nearest `fine_to`.
struct RoundingRule {
    std::string of;           // a row
    double nothing_upto = 0;  // so little is written as none
    double little_below = 0;  // from there to here it is "less than" this; 0: no such thing
    double fine_below = 0, fine_to = 0;
    double to = 0;
};

struct NutritionLine {
    std::string id, name;
};

struct NutritionRule {
    std::string text, source;
    bool fibre_in_carbohydrate = false;
    double salt_per_sodium = 0;  // g/g
    std::vector<NutritionLine> rows;
    std::vector<EnergyFactor> energy;
    std::vector<RoundingRule> rounding;  // of a row without one a decimal, of energy and sodium none
};

struct NamedShareRule {
    std::string text, source;
    double to = 1;  // %, the nearest
};

/// `rules` is a code; empty or unknown here: the general set.
NutritionRule nutrition_rule(const Knowledge& knowledge, std::string_view rules);
NamedShareRule named_share_rule(const Knowledge& knowledge, std::string_view rules);
/// The general lines, then those of the set; words in braces still to be filled in.
std::vector<LabelLine> label_lines(const Knowledge& knowledge, std::string_view rules);

}  // namespace standin
