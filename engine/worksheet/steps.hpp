// The order of work, in two halves: getting each line ready, and making the mass.
#pragma once

#include <initializer_list>
#include <vector>

#include "knowledge/index/knowledge.hpp"
#include "safety/core_temperature.hpp"
#include "standin/sheet.hpp"
#include "worksheet/parts.hpp"

namespace standin {

/// Trimming what was bought, then every preparation, merged and ordered (bench/order).
std::vector<SheetStep> preparing_steps(const Sheet& sheet, const Knowledge& knowledge);

/// Chill, grind, blend, mix by the order of the formula's process, taste, shape, rest, cook. `sheet` has its formula, prediction, what it
/// makes and its core temperature.
std::vector<SheetStep> making_steps(const Sheet& sheet, const Knowledge& knowledge);

/// The mixing alone: one step, or salt, rest and acid apart.
std::vector<SheetStep> mixing_steps(const Sheet& sheet, const Knowledge& knowledge);

/// Adds a line with its grams.
void add_part(SheetStep& step, std::size_t line, double in, double out);

/// A step of common practice.
SheetStep plain_step(const char* id, BenchTask task);

/// Whether what is sour is kept apart until the end of mixing.
bool acid_goes_last(const Sheet& sheet);

/// Adds every line that is one of `parts`, as it is after its preparations.
void take_in(SheetStep& step, const Sheet& sheet, const Knowledge& knowledge, std::initializer_list<Part> parts);

/// A number of the process: the formula's own, or what is usual; `said` turns false for the latter.
double process_value(const std::optional<double>& said, const char* parameter, const Knowledge& knowledge, SheetStep& step);

}  // namespace standin
