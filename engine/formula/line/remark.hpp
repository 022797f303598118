// What is said of a food in passing, as the reader hands it back: whether it is known to say nothing of its state.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "knowledge/knowledge.hpp"
#include "standin/formula.hpp"
#include "standin/reason.hpp"
#include "standin/result.hpp"

namespace standin {

/// What a remark stands behind: nothing where that is not known.
struct SaidOfFood {
    const Ingredient* food = nullptr;
    std::string_view written{};  ///< the whole line
};

/// Whether every word of it tells only of size, colour, quality, where it is from, how it is cut or packed, or that it was got today or
/// yesterday; of a food that keeps for months, how old it is; and whether it is the name of a sort or of a maker. Anything else may tell
/// that it is spoiled, and is no plain remark.
bool is_plain_remark(std::string_view said, const Knowledge& knowledge, const SaidOfFood& of = {});

/// Of what a reader passed over, the first that is no plain remark; empty: there is none.
std::string remark_not_plain(const std::vector<Reason>& notes, const Knowledge& knowledge, const SaidOfFood& of = {});

/// Likewise of a line of a formula: a name is no remark there, nor is a word on shopping or on what to do ("preferably", "plus more").
std::string remark_to_ask(const std::vector<Reason>& notes, const Knowledge& knowledge, const SaidOfFood& of = {});

/// What is asked of a remark that is not plain.
Error remark_unknown(std::string_view said, std::string_view food, std::string where);

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
