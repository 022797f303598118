// Foods that may come in by themselves for what a goal asks for, the usual ones first.
#pragma once

#include <vector>

#include "adapt/moves/food_price.hpp"

namespace standin {

struct Addition {
    const Ingredient* food = nullptr;
    double rare = 0;  ///< 0 where stand-ins of its role name it most, 1 where they never do
};

std::vector<Addition> usual_additions(Role role, const Formula& formula, const Stock& stock, const FoodPrice& price,
                                      const Knowledge& knowledge);

/// Of the batch: a spoonful of starch in a tub of mass is no remedy; what binds is weighed in by so much that it is felt.
double least_worth_adding(const Ingredient& food, Role role, const Context& context);

}  // namespace standin
