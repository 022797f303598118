// Where each line of a formula goes at the bench.
#pragma once

#include <string_view>
#include <vector>

#include "knowledge/index/knowledge.hpp"
#include "standin/formula.hpp"
#include "standin/sheet.hpp"

namespace standin {

/// meat: to be ground; minced: meat that comes ground or is cut by hand; dry: spices, sugar, binders that swell only in the heat; soaking:
/// dry binders that take up water cold (crumbs, oats); paste: to be blended; folded: goes in as cut; sour: fruit to be blended, acid: what
/// is poured or stirred in, and sour fruit that is cut. Both go in last where the salt goes first.
enum class Part { meat, minced, salt, dry, soaking, paste, folded, liquid, acid, sour };

/// By role and tissue, and by how the line is cut.
Part part_of(const Line& line, const Knowledge& knowledge);

/// The same in its formula: fat that is diced is cut for the grinder where other meat goes through it, and goes in as it is where none
/// does.
Part part_in(const Formula& formula, std::size_t line, const Knowledge& knowledge);

/// What is done to a line at the bench, one after another. Left out: what changes nothing, what the shop has done, and what a later step
/// of the sheet does anyway (meat is chilled and ground, paste blended).
struct Chain {
    std::size_t line = 0;
    std::vector<Prepared> steps;
    std::vector<double> grams;  ///< before each step, and after the last
};
std::vector<Chain> chains_of(const Formula& formula, const Knowledge& knowledge);

/// The preparation that takes off what the edible share of a food leaves out: its record's own, or that of its tissue.
std::string_view ready_by(const Ingredient& ingredient);

/// Grams of the line after all preparations.
double ready_grams(const Line& line, const Knowledge& knowledge);

}  // namespace standin
