// An engine whose bands are rough and quick: for what does not hang on them.
#pragma once

#include "standin/engine.hpp"

namespace few_draws {

inline standin::Engine& engine() {
    static standin::Engine opened = [] {
        standin::Options options;
        options.draws = 64;
        return standin::Engine::open(options).value();
    }();
    return opened;
}

}  // namespace few_draws
