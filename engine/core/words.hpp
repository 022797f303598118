// Words put together for people to read.
#pragma once

#include <string>
#include <vector>

namespace standin {

/// "salt, pepper, sage"
std::string listed(const std::vector<std::string>& words);

}  // namespace standin
