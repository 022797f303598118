// What the clauses of a list line say of the food before them: allergens that they name, and words that may tell of its state.
#pragma once

#include <functional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "formula/food/remark.hpp"
#include "knowledge/index/knowledge.hpp"
#include "standin/formula.hpp"

namespace standin {

/// Whether a piece of a list line is a food of its own, with or without an amount.
using IsItem = std::function<bool(std::string_view)>;

/// Takes out of `line`, as blanks, the clauses that name an allergen which the food before them is not made of: "shares a scoop with the
/// peanuts", "(peanut!)", "roasted in peanut oil". A clause that is an item stays; a lone name behind one weighed food tells of it.
std::vector<Declared> take_remarks(std::string& line, const IsItem& is_item, const Knowledge& knowledge);

/// What stands in a bracket behind a name and is no word that is known here; empty where there is none.
std::string_view unknown_bracket(std::string_view names, const Knowledge& knowledge);

/// The line with the kinds that a bracket names in place of the word that takes them in, and without the day something thawed.
std::string in_kinds(std::string_view line, const Knowledge& knowledge);

/// What a part of a list line is to the food that the first part names.
RemarkIs remark_of_part(const std::vector<std::string_view>& parts, std::string_view part, const Knowledge& knowledge);

/// Which of the parts of a list line are to be set aside: those that are neither a food nor a remark that can be passed over, each with the
/// food that it stands behind.
std::set<std::size_t> odd_parts(const std::vector<std::string_view>& parts, const IsItem& is_item, const Knowledge& knowledge);

}  // namespace standin
