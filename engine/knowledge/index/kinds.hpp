// Kinds of food: what is one, by what a food is and not by what it is called.
#pragma once

#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "knowledge/index/knowledge.hpp"

namespace standin {

/// By any of its names, folded; null when no kind is called so.
const Kind* kind_named(std::string_view word, const Knowledge& knowledge);

/// By a word of another tongue, with or without its article; null when no kind is called so there.
const Kind* kind_in_any_tongue(std::string_view word, const Knowledge& knowledge);

/// By its id; null when no kind has it.
const Kind* kind_of(std::string_view id, const Knowledge& knowledge);

/// Whether a food belongs to a kind, by its plant, beast, allergens, family or name in the list. What a food may hold counts.
bool belongs(const Ingredient& ingredient, const Kind& kind, const Knowledge& knowledge);
bool belongs(const Ingredient& ingredient, std::string_view kind, const Knowledge& knowledge);

/// Whether who is without such a kind is without that allergen. One that is told as a group ("nuts", "gluten") is taken for each of it.
bool takes_allergen(const Kind& kind, std::string_view allergen, const Knowledge& knowledge);

/// Whether an allergen is one of `held`, or a group of which one of `held` is.
bool is_among(std::string_view allergen, const std::vector<std::string>& held, const Knowledge& knowledge);

/// The same plant in the same form of the garden or the store: dried parsley of parsley. Never among chiles, where one plant gives foods
/// as different as bell pepper and cayenne.
bool same_plant(const Ingredient& one, const Ingredient& other);

/// Every allergen that a food holds or may hold, sulphite among them.
std::vector<std::string> allergens_held(const Ingredient& ingredient);

/// Whether the casing that `written` names is, or may be, of such a kind.
bool casing_belongs(std::string_view written, const Kind& kind, const Knowledge& knowledge);

/// What a casing is called by its line: "hog", "collagen"; empty where no word of it is known.
std::string casing_name(std::string_view written, const Knowledge& knowledge);

/// Why such a word is not taken; empty where nothing speaks against it.
std::string refusal_of(std::string_view word, const Knowledge& knowledge);

/// What is wrong with the records of kinds: the record, and what.
std::vector<std::pair<std::string, std::string>> faults_of_kinds(const Records& records);

}  // namespace standin
