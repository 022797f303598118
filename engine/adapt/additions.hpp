// Foods that may come in by themselves for what a goal asks for, the usual ones first.
#pragma once

#include <vector>

#include "adapt/food_price.hpp"

namespace standin {

struct Addition {
    const Ingredient* food = nullptr;
    double rare = 0;  ///< 0 where stand-ins of its role name it most, 1 where they never do
};

std::vector<Addition> usual_additions(Role role, const Formula& formula, const Stock& stock, const FoodPrice& price,
                                      const Knowledge& knowledge);

}  // namespace standin
