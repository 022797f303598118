// What an engine holds: the knowledge, the models at every draw and at their middle, and the materials worked out so far.
#pragma once

#include "evaluate/batch.hpp"
#include "knowledge/load.hpp"
#include "standin/engine.hpp"

namespace standin {

/// Knowledge with models and materials at one set of draws.
struct Bench {
    Bench(const Knowledge& knowledge, Draws drawn) : draws(std::move(drawn)), models(knowledge, draws), pantry(knowledge, models, draws) {}
    Bench(const Bench&) = delete;
    Bench& operator=(const Bench&) = delete;

    Draws draws;
    Models models;
    Pantry pantry;
};

struct Engine::Inside {
    Inside(Options chosen, Knowledge known)
        : options(std::move(chosen)),
          knowledge(std::move(known)),
          drawn(knowledge, Draws(options.draws, options.seed)),
          middle(knowledge, Draws::middle()) {}

    Options options;
    Knowledge knowledge;
    Bench drawn;   // bands
    Bench middle;  // searching
};

}  // namespace standin
