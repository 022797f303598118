// What an answer takes to be there, or missing, of what the list does not name: said so that the maker can put it right.
#pragma once

#include <string>
#include <vector>

#include "standin/advice.hpp"
#include "standin/engine.hpp"

namespace standin::cli {

/// How much is told of each food: with its kin of the list; what keeps dry in one; all that is there in one.
enum class PresumedAs { with_kin, dry_in_one, by_name_what_matters };

/// What was taken for granted, with the line to add to the list where that is wrong.
std::vector<std::string> presumed_in_words(const AdaptAnswer& answer);

/// The same in two or three sentences, what matters first: all of it, however briefly.
std::string presumed_sentence(const AdaptAnswer& answer, const Engine& engine, PresumedAs as);

}  // namespace standin::cli
