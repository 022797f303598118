// Small wording shared by this room.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/words.hpp"
#include "knowledge/index/knowledge.hpp"
#include "standin/prediction.hpp"

namespace standin {

/// A caution with its reason's words.
CautionText caution_text(Reason reason, std::string source, std::vector<std::string> foods = {}, std::string degree = {});
/// And with those of a first page.
CautionText caution_text(Reason reason, const Reason& brief, std::string source, std::vector<std::string> foods = {},
                         std::string degree = {});

/// Whether the folded `words` stand in the folded `text`, as whole words in a row.
bool has_words(std::string_view text, std::string_view words);

/// At most two decimals, none that are zero.
std::string shown(double value);

/// The general rules, then the rule set `rules`, where it is another.
std::vector<const RuleSet*> sets_of(const Knowledge& knowledge, std::string_view rules);

/// The shown names of ingredients and allergens by their ids; an unknown id is its own name.
std::vector<std::string> names_of(const std::vector<std::string>& ids, const Knowledge& knowledge);
std::string allergen_name(const std::string& id, const Knowledge& knowledge);

/// A line that is in the batch, with what it is made of.
struct Present {
    const PredictedLine* line;
    const Ingredient* ingredient;
};

/// The lines of some weight, in their order.
std::vector<Present> present(const Prediction& prediction, const Knowledge& knowledge);
/// What is eaten with the mass and is no part of it.
std::vector<Present> present_beside(const Prediction& prediction, const Knowledge& knowledge);

}  // namespace standin
