// How long a text may be that comes from outside.
#pragma once

#include <cstddef>

namespace standin {

constexpr std::size_t longest_text = std::size_t{16} << 20;  // bytes; a formula has a thousand, all knowledge two million

}  // namespace standin
