// Model constants at the middle of their bands.
#pragma once

#include "models/parameters.hpp"
#include "support/knowledge.hpp"

template <class P>
P middle_parameters(std::span<const standin::Binding<P>> bindings) {
    standin::Draws middle = standin::Draws::middle();
    return standin::draw_parameters(knowledge(), bindings, middle).front();
}
