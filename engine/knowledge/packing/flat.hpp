// The records as two flat arrays, numbers and text: quick to compile into the program and quick to read back at its start.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "knowledge/records/records.hpp"

namespace standin {

struct FlatKnowledge {
    std::vector<double> numbers;
    std::string text;
};

FlatKnowledge flatten(const Records& records);

/// The inverse of flatten. The arrays come from the program itself, so a mismatch is a broken build: throws std::logic_error.
Records unflatten(const double* numbers, std::size_t count, std::string_view text);

}  // namespace standin
