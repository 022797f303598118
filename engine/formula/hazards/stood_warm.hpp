// How long meat or mass was out of the cold, in any words.
#pragma once

#include <string>
#include <string_view>

#include "knowledge/index/knowledge.hpp"

namespace standin {

/// The clause that says it stood somewhere warm for longer than two hours: "the mass stood on the bench overnight", "was at 20 C from
/// morning to evening", "est restée toute la journée dans la cuisine". Empty where none does, where it was cold, or where the clause tells
/// of what may stand warm: soaking beans, dough, butter, the cook.
std::string stood_warm(std::string_view text, const Knowledge& knowledge);

}  // namespace standin
