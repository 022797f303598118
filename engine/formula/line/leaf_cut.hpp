// What a recipe's method says of how raw leaf is cut: "blend the herbs to a paste", "fold in the chopped dill", "mince it with the meat".
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "knowledge/index/knowledge.hpp"
#include "knowledge/records/word_list.hpp"

namespace standin {

/// A part of a sentence that has leaf cut, and the preparation that is: "pureed", "minced" or "chopped".
struct CutInMethod {
    std::string clause;
    std::string_view preparation;
};

/// In the order of the method; what is forbidden there is left out.
std::vector<CutInMethod> leaf_cuts_in_method(const std::vector<std::string>& method, const Knowledge& knowledge);

/// A part of a sentence that has something done to foods over heat.
struct HeatedInMethod {
    std::string clause;
    bool peels = false;  ///< it or the next sentence takes the skin off
};

/// The parts of sentences that hold a word of `heats` and name no meat.
std::vector<HeatedInMethod> heated_in_method(const std::vector<std::string>& method, WordList heats, const Knowledge& knowledge);

/// Whether the clause is of this leaf: by its name, or as one of the herbs or greens.
bool clause_cuts(const CutInMethod& cut, const Ingredient& leaf, const Knowledge& knowledge);

}  // namespace standin
