// What a list of what is on hand says of a formula's lines that it does not mention.
#pragma once

#include <string>
#include <vector>

#include "knowledge/index/knowledge.hpp"
#include "standin/advice.hpp"

namespace standin {

/// One with its sentence.
Presumption presumption(std::string ingredient, bool on_hand, bool matters, ReasonKind kind, std::vector<std::string> foods,
                        std::string add);

/// One for each ingredient of `formula` that the list does not mention.
///   "everything else"   all of them are there.
///   nothing said        fresh produce is missing where the list names fresh kin of it (the same family and role); all else is there.
///   "nothing else"      closes what the list is about: fresh produce, where it names any; produce that keeps (garlic, onions, roots),
///                       where it names any; meat and fat, where it names any; what keeps in the kitchen, where it names any of that.
///                       Salt, water and ice are there unless the list says no.
/// Lines marked keep are there unless "nothing else" closes them. What needs no telling has no sentence.
std::vector<Presumption> presumed_of(const Formula& formula, const Inventory& have, bool for_a_want, const Knowledge& knowledge);

}  // namespace standin
