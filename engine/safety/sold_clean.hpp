// What a promise of a title takes in, but is sold free of the rest of it: oats in what is called gluten-free.
#pragma once

#include <string>
#include <vector>

#include "knowledge/index/knowledge.hpp"
#include "standin/formula.hpp"

namespace standin {

/// The names of the foods in it that are of such a kind for nothing but what is sold clean.
std::vector<std::string> sold_clean_in(const Formula& formula, const Kind& kind, const Knowledge& knowledge);

/// Those of them whose every line says that it is: "gluten-free oats".
std::vector<std::string> said_clean_in(const Formula& formula, const Kind& kind, const Knowledge& knowledge);

}  // namespace standin
