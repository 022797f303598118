// How far a cook kills Salmonella at the core.
//
//   F70 = integral of 10^((T - 70) / z) dt over the core's time above the cut-off
//   log reductions = F70 / (D70 * margin), shown up to a cap
//
// D70 and z are a least-squares fit of log10(time) to rows 130-157 F of USDA-FSIS Appendix A (red meat). The rows at 158 F and up say
// "instant" by convention and are never fitted. Salt and fat raise heat resistance, hence the margin. Poultry needs longer and does not
// follow one straight line: its published times are interpolated in log10(time), and outside the table there is no answer.
//
// Where no core curve was measured: an infinite cylinder of constant properties in a medium of constant temperature, first term of the
// series with a surface coefficient (Carslaw and Jaeger). The first term is good from Fourier number 0.2; before that the core is taken
// as still at its start. Coefficients and media are judgement: for a feeling of minutes, never for a lower end temperature.
#pragma once

#include <array>
#include <optional>
#include <span>
#include <vector>

#include "knowledge/records/vocabulary.hpp"
#include "models/parameters.hpp"
#include "standin/process.hpp"

namespace standin {

struct CorePoint {
    double time_s = 0;
    double temperature_c = 0;
};

/// Columns of the poultry table as published; the last does not name its bird.
enum class PoultryColumn { chicken_lean, turkey_lean, chicken_5, poultry_12 };

struct LethalityParameters {
    double d70_s, z_c;  // s, C
    double margin;      // factor on D70 for salt and fat
    double cutoff_c, cap_logs;
    double conductivity;                                     // W/(m K)
    double heat_capacity;                                    // J/(m3 K)
    std::array<double, cook_ways> medium_c, transfer_w_m2k;  // by Cook
    std::array<double, 5> chicken_lean_s, turkey_lean_s;
    std::array<double, 10> chicken_5_s;
    std::array<double, 9> poultry_12_s;
};

std::span<const Binding<LethalityParameters>> lethality_bindings();

/// Seconds at 70 C that do the same as `curve` (times rising, straight between points) above `cutoff_c`.
double f70_s(std::span<const CorePoint> curve, double z_c, double cutoff_c);

/// Log10 reductions of Salmonella in red meat, with the margin, at most the cap.
double log_reductions(std::span<const CorePoint> curve, const LethalityParameters& parameters);

/// Seconds at a constant `temperature_c` for 7 logs in poultry, or nothing outside the table.
std::optional<double> poultry_hold_s(PoultryColumn column, double temperature_c, const LethalityParameters& parameters);

/// Log10 reductions of Salmonella in poultry over `curve`: each moment counts as its share of the time the column asks for 7 logs. Below
/// the column nothing counts, above it no more than its last row. At most the cap.
double poultry_log_reductions(std::span<const CorePoint> curve, PoultryColumn column, const LethalityParameters& parameters);

/// The hottest row of a column, in degrees C: what is hotter has no time of its own.
double poultry_table_end_c(PoultryColumn column);

/// The published column that is safe for this bird and fat; nothing where none is (no row above 12 % fat, none for fatter turkey).
std::optional<PoultryColumn> poultry_column(Species species, double fat_pct);

/// Core temperature after `time_s` of a cylinder of `diameter_mm` that starts at `start_c`.
double cylinder_core_c(double time_s, double diameter_mm, double start_c, Cook method, const LethalityParameters& parameters);

/// The core from `start_c` until it reaches `core_c`; empty where the medium is not hot enough.
std::vector<CorePoint> estimated_core_curve(double diameter_mm, double start_c, double core_c, Cook method,
                                            const LethalityParameters& parameters);

}  // namespace standin
