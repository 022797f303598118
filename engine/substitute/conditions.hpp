// What a swap asks for beside the weight, against how this batch is made.
#pragma once

#include <string>
#include <vector>

#include "knowledge/index/knowledge.hpp"
#include "standin/process.hpp"

namespace standin {

/// False where the maker's own process goes against a condition of `swap`. What the maker leaves open does not.
bool conditions_allow(const Swap& swap, const Process& process, const Knowledge& knowledge);

/// The preparations that conditions of `swap` ask of its stand-in, by id.
std::vector<std::string> conditions_prepare(const Swap& swap, const Knowledge& knowledge);

/// What the maker must see to, a sentence each: conditions that neither a preparation nor the maker's own process takes care of.
std::vector<std::string> conditions_ask(const Swap& swap, const Process& process, const Knowledge& knowledge);

}  // namespace standin
