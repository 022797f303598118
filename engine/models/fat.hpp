// How hard the fats of a batch are: what mixing smears and what no cell encloses (knowledge/models/fat.json).
#pragma once

#include "knowledge/index/knowledge.hpp"

namespace standin {

/// Oils, rendered fats and butter: fat that no cell encloses.
bool fat_is_free(const Ingredient& ingredient, const Knowledge& knowledge);

/// The parameter that tells at which temperature half of the food's fat smears: its own, else that of its animal, else that of oils.
std::string softening_of(const Ingredient& ingredient, const Knowledge& knowledge);

}  // namespace standin
