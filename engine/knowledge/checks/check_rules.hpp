// Cross checks of law and guidance: every word of a condition means something.
#pragma once

#include <functional>
#include <string>
#include <vector>

#include "knowledge/records/records.hpp"

namespace standin {

/// Gets a record ("rules us caution us-sale", "ingredient oats"), what is wrong with it, and hints.
using Complain = std::function<void(const std::string& record, std::string message, std::vector<std::string> hints)>;

void check_rules(const Records& records, const Complain& complain);

}  // namespace standin
