// Wants that there is nothing to be done about: milder, where nobody tastes any heat.
#pragma once

#include <vector>

#include "adapt/distance/distance.hpp"
#include "standin/reason.hpp"

namespace standin {

struct Nothing {
    std::vector<Reason> conflict, would_give;  ///< empty where every want has something to take away
};

/// A word that asks for less of what nobody tastes anyway is not met by changing nothing: there is nothing to take away.
Nothing nothing_to_take(const Distance& distance, const Context& context);

}  // namespace standin
