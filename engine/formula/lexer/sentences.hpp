// A text cut into its sentences.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace standin {

/// A sentence ends at ".", ";" or "!" before a blank; "3/8." or "ca. 5" within one do not matter much. None is empty.
std::vector<std::string> sentences_of(std::string_view text);

}  // namespace standin
