// Finding what is predicted by whatever it is called.
#pragma once

#include <cstddef>
#include <optional>
#include <span>
#include <string_view>

#include "standin/property.hpp"

namespace standin {

/// Where in `table` the entry of that key, condition word or name on screens stands, in capitals or not.
std::optional<std::size_t> called(std::span<const PropertyInfo> table, std::string_view text);

}  // namespace standin
