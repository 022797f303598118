// Names as people write them: folded for comparison, and the nearest known one when they slip.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace standin {

/// Lower case, accents of Latin letters off, hyphens, apostrophes and runs of space to one space, each word in the singular.
/// "Jalapeños" and "jalapeno" fold alike. Bad UTF-8 is dropped.
std::string fold(std::string_view text);

/// Edits (insert, delete, replace, swap of neighbours) between two folded names, or `limit + 1` when there are more.
std::size_t edit_distance(std::string_view a, std::string_view b, std::size_t limit);

/// Edits that a slip of the pen may make in a folded name: one letter, two in a long one.
std::size_t slip_limit(std::string_view folded);

/// Up to `most` of `known` (folded) nearest to `wanted` (folded), best first: few edits, or sharing whole words. Indexes into `known`.
std::vector<std::size_t> nearest(std::string_view wanted, const std::vector<std::string_view>& known, std::size_t most = 3);

}  // namespace standin
