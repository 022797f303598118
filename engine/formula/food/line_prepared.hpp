// What was done to a line's food, and whether the amount was measured before it or after.
#pragma once

#include <optional>
#include <string_view>

#include "formula/food/line_notes.hpp"
#include "formula/food/name_text.hpp"
#include "formula/lexer/quantity_text.hpp"
#include "standin/formula.hpp"

namespace standin {

struct MeasuredFood {
    const NameRead& name;
    const AmountText& amount;
    const LineNotes& notes;
    const Knowledge& knowledge;
};

/// Things are counted, not weighed or measured by volume.
bool counts(const AmountText& amount);

bool by_weight(const AmountText& amount);

/// Fills `prepared` and `weighed_prepared`, or says why the words leave open what was measured. The error has no place yet.
std::optional<Error> settle_preparations(Line& line, const MeasuredFood& food);

/// "Spinach, blanched and squeezed, 150 g": of what was cooked or squeezed before the weight is told, that is what lies on the scale, as in
/// "squeezed spinach 150 g". Sets `line` so and says whether it did. `behind_amount`: what of the line stands there.
bool took_state_before_amount(const MeasuredFood& food, std::string_view behind_amount, Line& line);

/// Says so of a food that is bought with salt and more in it. `written`: the line.
/// "50 lean pork trimmings, 1000 g"
Error which_amount();

/// "1 chicken (1.8 kg)": bones and skin and all, of which less than half is meat.
std::optional<Error> whole_animal(const MeasuredFood& food);

std::optional<Error> seasoned_already(const NameRead& name, std::string_view written);

/// Says so where an amount like this is more likely of another food: "4 cloves" of garlic, a teaspoon of a ground spice.
/// `in_each_kilo`: so much goes into every kilo, which says nothing of how much it is.
std::optional<Error> means_another(const NameRead& name, const AmountText& amount, bool in_each_kilo, const Knowledge& knowledge);

/// A "green chile" is a finger of 5 g to one cook and a pod of 45 g to another: nine times the heat.
std::optional<Error> chile_of_any_size(const MeasuredFood& food);

/// "Pickled onions", "dried apple": bought so, and reckoned as the fresh one made so at home. Empty where nothing is to be told.
std::optional<Reason> bought_so(const NameRead& name, const Ingredient& ingredient);

}  // namespace standin
