// A request made ready: keep marks on the formula's lines, and when a want counts as met.
#pragma once

#include <string_view>

#include "substitute/context.hpp"

namespace standin {

/// A word counts as met within this part of a noticeable difference of its target.
inline constexpr double met_within = 0.25;

/// ... and the search aims a little inside that, so that rounding to kitchen weights does not undo it.
inline constexpr double aimed_within = 0.15;

/// `formula` with the lines that `request` keeps marked; a name that is no line is a usage error.
Result<Formula> with_keep_marks(Formula formula, const AdaptRequest& request, const Knowledge& knowledge);

/// Lines of one food, prepared and weighed alike, as one: how a maker splits a weight among lines changes nothing.
Formula with_equal_lines_merged(Formula formula);

/// The line that `text` means: its number from 1, or a name of its ingredient. A usage error names the lines there are.
Result<std::size_t> line_named(const Formula& formula, std::string_view text, const Knowledge& knowledge);

}  // namespace standin
