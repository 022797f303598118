// Where the engine's log goes.
#pragma once

#include <functional>
#include <string_view>

#include "command.hpp"

namespace standin::cli {

/// Takes one line and writes it, with the time, to standard error.
std::function<void(std::string_view)> log_to_errors(ColourChoice colour);

}  // namespace standin::cli
