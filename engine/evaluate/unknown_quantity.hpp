// Which quantity of what a draw is of, and whether a maker can find it out.
#pragma once

#include <string>

#include "knowledge/index/knowledge.hpp"
#include "standin/reason.hpp"

namespace standin {

struct UnknownQuantity {
    Reason reason;
    bool kitchen = false;  ///< the maker can find out
};

/// `name` is that of a draw: "pork ph", "spinach chlorophyll", "blanched thin-leaf chlorophyll", "process.mixing_min", "bind.acid.scale".
UnknownQuantity quantity_of(const std::string& name, const Knowledge& knowledge);

}  // namespace standin
