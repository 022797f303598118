// Every place in the knowledge that names a source.
#pragma once

#include <string>
#include <vector>

#include "knowledge/records/records.hpp"

namespace standin {

struct Reference {
    std::string record;  // "ingredient spinach"
    std::string what;    // "chlorophyll"
    std::string source;  // as written, with its "#row"
};

std::vector<Reference> references_in(const Records& records);

/// The sources one ingredient's record names, each once, in the order of the record.
std::vector<std::string> sources_of(const Ingredient& ingredient);

/// "swap green spinach > chard, blanched": how a swap is called in messages.
std::string swap_key(const Swap& swap);

}  // namespace standin
