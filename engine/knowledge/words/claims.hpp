// Promises that nobody can keep for a food out of a packet: "gluten-free" is the maker's word, never this knowledge's.
#pragma once

#include <string>
#include <string_view>

namespace standin {

/// The words of `text` that promise the absence of something ("free", "contains no", "suitable for"); empty when it promises nothing.
std::string promise_in(std::string_view text);

}  // namespace standin
