// What an uncertain quantity is called at the bench, and how a maker could come to know it.
#pragma once

#include <string>

#include "knowledge/knowledge.hpp"

namespace standin {

struct UnknownWords {
    std::string what, advice;
    bool kitchen = false;  ///< the maker can find out
};

/// `name` is that of a draw: "pork ph", "spinach chlorophyll", "blanched thin-leaf chlorophyll", "process.mixing_min", "bind.acid.scale".
UnknownWords words_for(const std::string& name, const Knowledge& knowledge);

}  // namespace standin
