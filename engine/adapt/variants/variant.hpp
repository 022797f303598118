// A plan as a formula a maker can weigh out, and the list of edits that leads there.
#pragma once

#include <vector>

#include "adapt/search/search.hpp"

namespace standin {

/// One edit before it is put into words.
struct PlainEdit {
    EditKind kind = EditKind::reduce;
    std::size_t line = none;          ///< of the base formula
    std::size_t move = none;          ///< the stand-in or addition
    double before = 0, after = 0;     ///< grams as weighed
    const Reason* process = nullptr;  ///< what to do about the making; of the problem
    double left = 0;                  ///< grams of the line that stay beside a stand-in
    bool second = false;              ///< the second part of the stand-in
    static constexpr std::size_t none = static_cast<std::size_t>(-1);
};

struct BuiltVariant {
    Formula formula;
    std::vector<PlainEdit> edits;
};

/// Weights are rounded as one weighs (5 g from 100 g, 1 g from 10 g, 0.1 g from 1 g, 0.01 g below), down where stock is short. A plan of
/// another problem is a mistake in the program.
BuiltVariant build_variant(const Problem& problem, const Plan& plan, const Stock& stock, const Knowledge& knowledge);

/// Grams as one weighs them; `down` never rounds up.
/// `step` of the scale in the kitchen: coarser ones count for what is heavy enough for them.
double kitchen_grams(double grams, bool down, double step = 0);

}  // namespace standin
