// What of a glut is worth freezing, how it is got ready, what is left of it and how long it keeps.
#pragma once

#include <vector>

#include "knowledge/index/knowledge.hpp"
#include "standin/cold_store.hpp"
#include "standin/formula.hpp"

namespace standin {

/// Of what a list says there is plenty of, in its order; foods that no rule knows how to freeze are left out.
std::vector<KeepForLater> glut_of(const Inventory& stock, const Knowledge& knowledge);

}  // namespace standin
