// What freezing does to a raw mass, by knowledge/models/cold_store.json.
#pragma once

#include <vector>

#include "knowledge/index/knowledge.hpp"
#include "standin/cold_store.hpp"
#include "standin/prediction.hpp"

namespace standin {

/// What holds always, then what holds for the roles that are in the batch. `prediction` needs its lines alone.
std::vector<FreezingNote> freezing_of(const Prediction& prediction, const Knowledge& knowledge);

}  // namespace standin
