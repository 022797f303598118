// What a word of `--without` takes in: a kind of food, or one ingredient with its other forms.
#pragma once

#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "knowledge/index/kinds.hpp"
#include "standin/formula.hpp"

namespace standin {

struct Exclusion {
    std::string word;            ///< as typed
    std::string takes;           ///< in words: what is of that kind
    std::optional<Reason> note;  ///< what of it no record can tell
    const Kind* kind = nullptr;
    std::set<std::string> foods;  ///< ids of all it takes in
    bool allergy = false;         ///< by an allergen, and not for the sake of a diet: nuts, milk, gluten
};

/// What `word` means: "nuts", "gluten-free", "casein", "halal", "parsley". A word that is none, or that no list of foods can answer, is a
/// usage error with the reason; it is never taken for the nearest name.
Result<Exclusion> exclusion_of(std::string_view word, const Knowledge& knowledge);

/// Whether what a line or a list says of a food ("may contain nuts") is of the kind that is left out.
bool tells_of_it(const Exclusion& exclusion, const std::vector<Declared>& declared, const Knowledge& knowledge);

/// Whether a line is of it: by its food, by what the line says that it holds, or by what is done to its food before it is bought.
bool takes_line(const Exclusion& exclusion, const Line& line, const Knowledge& knowledge);

/// Whether what stands beside the mass is, or may be, of that kind: a casing by its beast, a food by all that it holds.
bool takes_beside(const Exclusion& exclusion, const Beside& beside, const Knowledge& knowledge);

/// What of that kind stands beside the mass, as written.
std::vector<std::string> beside_excluded(const Formula& formula, const Exclusion& exclusion, const Knowledge& knowledge);

/// A casing, by its line; never a food.
bool is_casing(const Beside& beside);

/// Whether `ingredient` is of the kind that `what` names.
bool carries(const Ingredient& ingredient, std::string_view what, const Knowledge& knowledge);

/// `word` without "no", "non", "without", "free of" before it and "free" behind it, folded.
std::string bare_exclusion(std::string_view word);

}  // namespace standin
