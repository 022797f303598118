// One doubt of a formula after the other, asked and answered line by line.
#pragma once

#include <iosfwd>
#include <string>

#include "standin/engine.hpp"
#include "terminal.hpp"

namespace standin::cli {

struct Talked {
    std::string text;         ///< the formula with what was answered
    bool broken_off = false;  ///< the answers ended before the doubts did
};

/// Asks on `out` and takes answers from `in`, one a line.
Talked talk_over(std::string text, const std::string& file, const Engine& engine, std::istream& in, std::ostream& out, const Look& look);

}  // namespace standin::cli
