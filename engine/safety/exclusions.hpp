// What a word of `--without` takes in: a kind of food, or one ingredient with its other forms.
#pragma once

#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "knowledge/kinds.hpp"
#include "standin/formula.hpp"

namespace standin {

struct Exclusion {
    std::string word;         ///< as typed
    std::string takes, note;  ///< in words
    const Kind* kind = nullptr;
    std::set<std::string> foods;  ///< ids of all it takes in
    bool allergy = false;         ///< by an allergen, and not for the sake of a diet: nuts, milk, gluten
};

/// What `word` means: "nuts", "gluten-free", "casein", "halal", "parsley". A word that is none, or that no list of foods can answer, is a
/// usage error with the reason; it is never taken for the nearest name.
Result<Exclusion> exclusion_of(std::string_view word, const Knowledge& knowledge);

/// What of the formula's casings is, or may be, of that kind, as written.
std::vector<std::string> casings_excluded(const Formula& formula, const Exclusion& exclusion, const Knowledge& knowledge);

/// Whether `ingredient` is of the kind that `what` names.
bool carries(const Ingredient& ingredient, std::string_view what, const Knowledge& knowledge);

/// `word` without "no", "non", "without", "free of" before it and "free" behind it, folded.
std::string bare_exclusion(std::string_view word);

}  // namespace standin
