// What may be meant by a word for a whole kind of food.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "knowledge/index/knowledge.hpp"

namespace standin {

/// A fresh one, a dried one, a ground one, of those that `word` names where it names any.
std::vector<std::string> one_of_each_form(const Kind& kind, std::string_view word, const Knowledge& knowledge);

}  // namespace standin
