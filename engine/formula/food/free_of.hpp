// "Gluten-free stock" is stock: what it is free from, it does not hold.
#pragma once

#include <string>

#include "knowledge/index/knowledge.hpp"

namespace standin {

/// Takes "X-free" off a line whose foods do not hold X: "dairy-free butter" stays, and so does "alcohol-free wine".
void take_free_of(std::string& line, const Knowledge& knowledge);

}  // namespace standin
