// What a food that comes in costs beside what is felt of it, in squared noticeable differences: one more thing to weigh, allergens and
// animals that the formula has not, and what has to be hunted for.
#pragma once

#include <set>
#include <string>

#include "adapt/distance/distance.hpp"
#include "substitute/context.hpp"
#include "substitute/stock.hpp"

namespace standin {

class FoodPrice {
public:
    FoodPrice(const Formula& formula, const Stock& stock, const Context& context);

    /// Whether the formula has it.
    bool in_formula(const Ingredient& food) const;
    /// Whether an animal comes in with it that the formula has not.
    bool brings_a_beast(const Ingredient& food) const;
    /// For each allergen that the formula does not have already.
    double of_allergens(const Ingredient& food) const;
    /// For each that a packet of it may hold, where the maker has none by him to look at.
    double of_doubts(const Ingredient& food) const;
    /// Gathered wild, seldom sold, or a gum that is weighed by the pinch; nothing where the maker's list names it.
    double of_finding(const Ingredient& food) const;

    /// A stand-in of that closeness; `asked_for` by a want, in place of a line that is there. What the list names is there to be used.
    double of_stand_in(const Ingredient& food, double closeness, bool asked_for) const;
    /// What comes in beside a stand-in, of which the two make one.
    double of_second_part(const Ingredient& food) const;
    /// What a maker reaches for only after what is there already: another cut before more of the formula's own lean, another chile before
    /// less of the one that is in, oil before firm fat of the list, a gum before the starch of the list.
    double passed_over(const Ingredient& food, Role role, const Distance& distance) const;
    /// A food by itself. `rare`: 0 where stand-ins of its role name it most, 1 where they never do.
    double of_addition(const Ingredient& food, bool asked_for, double rare) const;

private:
    const Formula& formula_;
    const Stock& stock_;
    const Context& context_;
    std::set<std::string> allergens_;
};

}  // namespace standin
