// The allergens that words beside a food name: in it, or on something that it touched.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "knowledge/index/knowledge.hpp"
#include "standin/formula.hpp"

namespace standin {

/// An allergen that a remark names, surely in the food or perhaps.
struct NamedAllergen {
    std::string allergen;
    bool contained = false;
};

/// The allergens that a remark names, by themselves or by a food that holds them, and does not deny.
std::vector<NamedAllergen> allergens_of_remark(std::string_view said, const Knowledge& knowledge);

/// What a text beside the lines says is or may be in the food; of what only shares a place with it "may contain" stands before the words.
std::vector<Declared> declared_beside(std::string_view text, const std::vector<std::string>& sentences, const Knowledge& knowledge);

/// The allergens of the foods that a sentence names, each with the food's name.
std::vector<Declared> foods_with_allergens(std::string_view sentence, const Knowledge& knowledge);

/// The allergens of the remark that `own` does not bring already, in words that say so plainly in front of the remark's own: so that
/// they stay with the line wherever it is written.
std::vector<Declared> told_by_remark(std::string_view said, const std::vector<const Ingredient*>& own, const Knowledge& knowledge);

}  // namespace standin
