// "Pepitas, roasted and salted": of some nuts and seeds the salted ones are a food of their own.
#pragma once

#include <string>
#include <string_view>

#include "knowledge/index/knowledge.hpp"

namespace standin {

/// The line with the salted food in place of the plain one that it says is salted; empty where there is none.
std::string with_salted_form(std::string_view line, const Knowledge& knowledge);

}  // namespace standin
