// "Total meat 5 lb (60% venison, 40% pork belly)": one weight, and what it is made of.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "knowledge/index/knowledge.hpp"

namespace standin {

/// A line for each of the foods; none where the line says anything else, or the shares do not make a hundred.
std::vector<std::string> shares_of_one_weight(std::string_view line, const Knowledge& knowledge);

}  // namespace standin
