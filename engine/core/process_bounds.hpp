// How far each number of a process may go. Bounds catch slips of a digit or a unit, not bad practice: judgement.
#pragma once

#include <array>
#include <optional>
#include <string_view>

#include "standin/process.hpp"

namespace standin {

struct ProcessBounds {
    std::string_view key;  // as in files
    std::optional<double> Process::*field;
    double low, high;
};

inline constexpr std::array process_bounds{
    ProcessBounds{"plate", &Process::plate_mm, 0.5, 50},      ProcessBounds{"mixing", &Process::mixing_min, 0, 120},
    ProcessBounds{"mixed at", &Process::mixed_at_c, -10, 60}, ProcessBounds{"rest", &Process::rest_h, 0, 24 * 60},
    ProcessBounds{"rest at", &Process::rest_at_c, -30, 60},   ProcessBounds{"core", &Process::core_c, 30, 120},
    ProcessBounds{"diameter", &Process::diameter_mm, 5, 250}};

/// Of a reading in a core curve.
inline constexpr double coldest_core_c = -30, hottest_core_c = 150;

}  // namespace standin
