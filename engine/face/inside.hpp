// What an engine holds: the knowledge, and the models over it.
#pragma once

#include "evaluate/evaluator.hpp"
#include "knowledge/load.hpp"
#include "standin/engine.hpp"

namespace standin {

struct Engine::Inside {
    Inside(Options chosen, Knowledge known)
        : options(std::move(chosen)), knowledge(std::move(known)), evaluator(knowledge, options.draws, options.seed) {}
    Inside(const Inside&) = delete;
    Inside& operator=(const Inside&) = delete;

    /// The options as one question has them, or what is wrong with that.
    Result<Options> asked(const Setting& setting) const;

    Options options;
    Knowledge knowledge;
    Evaluator evaluator;
};

}  // namespace standin
