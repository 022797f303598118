// Lists of English words that the reader treats alike: records of knowledge/lexicon/lists.json.
#pragma once

#include <string>
#include <string_view>

#include "knowledge/knowledge.hpp"

namespace standin {

/// Where the words of a list stand among those of the tongues: by this and its id in place of a language.
inline constexpr std::string_view list_prefix = "list:";

/// Whether the list `id` holds a word or a turn of phrase, folded.
bool in_list(const Knowledge& knowledge, std::string_view id, std::string_view folded);

}  // namespace standin
