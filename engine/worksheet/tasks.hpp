// What a stand-in asks of whoever handles it, told in the step where it is done.
#pragma once

#include <string_view>

#include "knowledge/index/knowledge.hpp"
#include "standin/sheet.hpp"

namespace standin {

/// Whether a clause of a note tells what to do: "strip the ribs", not "earthier, a little saltier".
bool tells_what_to_do(std::string_view clause, const Knowledge& knowledge);

/// Puts each task of the formula behind the words of the step that it belongs to. What only tells how the food tastes has no place at
/// the bench.
void tell_tasks(Sheet& sheet, const Knowledge& knowledge);

}  // namespace standin
