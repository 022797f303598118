// Words put together for people to read.
#pragma once

#include <string>
#include <vector>

namespace standin {

/// "salt, pepper, sage"
std::string listed(const std::vector<std::string>& words);

/// As people say it: "40 minutes", "120 hours".
std::string shown_hours(double hours);

}  // namespace standin
