// Foods that come in for others only where the list names them: grains that stay hard, cured meat.
#pragma once

#include "substitute/context.hpp"

namespace standin {

/// Grains and pulses that stay hard in a patty unless somebody boils them first.
bool hard_grain(const Ingredient& food, const Knowledge& knowledge);

/// A dry binder of which a kilo takes little: a gum, a gel or a husk.
bool is_gum(const Ingredient& food, const Context& context);

/// Of which a batch may hold only so much: by its own most, or by the cap on dry binders.
bool is_capped(const Ingredient& food);

/// Bacon, salt pork: nobody who asks for a fresh sausage leaner or fatter is given cured meat for it.
bool cured(const Ingredient& food, const Context& context);

}  // namespace standin
