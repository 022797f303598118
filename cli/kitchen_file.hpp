// Which kitchen file a call goes by.
#pragma once

#include <optional>
#include <string>

#include "command.hpp"

namespace standin::cli {

/// The file of --kitchen, else a kitchen.txt beside the first formula; nothing where there is none or the call wants none.
std::optional<std::string> kitchen_of(const Call& call);

}  // namespace standin::cli
