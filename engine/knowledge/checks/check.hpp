// Cross checks: what no single record can get wrong alone.
#pragma once

#include <string>
#include <vector>

#include "knowledge/readers/reading.hpp"

namespace standin {

struct Finding {
    bool error = true;
    std::string where, message;
    std::vector<std::string> hints;
};

/// Dangling ids, sources and names used twice, composition that does not add up, preparations that would leave less than no water.
/// Errors come first.
std::vector<Finding> check_records(const Records& records, const Places& places);

}  // namespace standin
