// What an engine holds: the knowledge, and the models over it.
#pragma once

#include <memory>

#include "evaluate/checked_formula.hpp"
#include "evaluate/evaluator.hpp"
#include "knowledge/load.hpp"
#include "standin/engine.hpp"

namespace standin {

/// What a question that is no member asks of an engine: its options as the question has them, and the evaluator for a formula.
struct AskedEngine {
    Options options;
    std::shared_ptr<const Evaluator> evaluator;
    const Kitchen& kitchen;
};
Result<AskedEngine> asked_of(const Engine& engine, const Formula& formula, const Setting& setting);

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

    /// What moves `what`, a property or a part of the colour, of a formula.
    template <class Asked>
    Result<WhyAnswer> why(const Engine& engine, const Formula& formula, Asked what, const Setting& setting) const;

    /// The evaluator for questions about `formula`: what the kitchen has measured of that sausage has moved and narrowed its draws.
    std::shared_ptr<const Evaluator> evaluator_for(const Formula& formula) const;

    static const Inside& of(const Engine& engine) { return *engine.inside_; }
    friend Result<AskedEngine> asked_of(const Engine& engine, const Formula& formula, const Setting& setting) {
        const auto& inside = of(engine);
        auto options = inside.asked(setting);
        if (!options) return Failure(options.error());
        return AskedEngine{std::move(*options), inside.evaluator_for(formula), inside.kitchen};
    }

    Options options;
    Knowledge knowledge;
    Evaluator evaluator;
    Kitchen kitchen{};
    std::shared_ptr<const Inside> general{};  ///< without the kitchen; null: there is none
};

}  // namespace standin
