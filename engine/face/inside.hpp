// What an engine holds: the knowledge, and the models over it.
#pragma once

#include <memory>

#include "evaluate/checked_formula.hpp"
#include "evaluate/evaluator.hpp"
#include "knowledge/load.hpp"
#include "standin/engine.hpp"

namespace standin {

struct Engine::Inside {
    Inside(Options chosen, Knowledge known)
        : options(std::move(chosen)), knowledge(std::move(known)), evaluator(knowledge, options.draws, options.seed) {}
    /// With the facts of a kitchen: `known` has them laid over already.
    Inside(Kitchen own, Knowledge known, std::shared_ptr<const Inside> base)
        : options(base->options),
          knowledge(std::move(known)),
          evaluator(knowledge, options.draws, options.seed, {}, &base->evaluator),
          kitchen(std::move(own)),
          general(std::move(base)) {}
    Inside(const Inside&) = delete;
    Inside& operator=(const Inside&) = delete;

    /// The options as one question has them, or what is wrong with that.
    Result<Options> asked(const Setting& setting) const;

    /// The evaluator for questions about `formula`: what the kitchen has measured of that sausage has moved and narrowed its draws.
    std::shared_ptr<const Evaluator> evaluator_for(const Formula& formula) const;

    Options options;
    Knowledge knowledge;
    Evaluator evaluator;
    Kitchen kitchen{};
    std::shared_ptr<const Inside> general{};  ///< without the kitchen; null: there is none
};

}  // namespace standin
