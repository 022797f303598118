// What every part of the advisor works with.
#pragma once

#include "evaluate/batch.hpp"
#include "standin/engine.hpp"

namespace standin {

struct Context {
    const Evaluator& evaluator;
    const Options& options;

    const Knowledge& knowledge() const { return evaluator.knowledge(); }
    const Nominal& nominal() const { return evaluator.nominal(); }  ///< for searching
    const Sampled& sampled() const { return evaluator.sampled(); }  ///< for bands and chances
    double constant(std::string_view id) const { return knowledge().parameter(id).mid; }
};

}  // namespace standin
