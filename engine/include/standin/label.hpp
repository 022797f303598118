// What a draft label holds beside the ingredient list.
#pragma once

#include <string>
#include <vector>

#include "standin/band.hpp"
#include "standin/reason.hpp"

namespace standin {

/// An ingredient whose share is to be named, or is worth naming: the meat, and what the title speaks of.
struct NamedShare {
    std::string name;  ///< as it stands on the label
    double pct = 0;    ///< of all that goes into the bowl
    std::string says;  ///< "pork 82 %"
    std::string why;   ///< in words
    Reason reason{};
};

/// One row of the nutrition table, per 100 g.
struct NutritionRow {
    std::string id;          ///< energy_kj energy_kcal fat_g saturates_g carbohydrate_g sugars_g fibre_g protein_g salt_g sodium_mg
    std::string name, unit;  ///< as the rules call it
    Band raw, cooked;
    std::string raw_says, cooked_says;  ///< rounded as the rules round
};

/// A line to fill in: net weight, lot, keep, cook.
struct LabelLine {
    std::string id, text, source;
};

struct LabelDraft {
    std::string rules;  ///< code of the rule set whose words and rounding it keeps to
    std::vector<NamedShare> named;
    std::string named_says, named_source;
    std::vector<LabelLine> lines;
    std::vector<NutritionRow> nutrition;
    std::string nutrition_says, nutrition_source;  ///< how it is counted and rounded
};

}  // namespace standin
