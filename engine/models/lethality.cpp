#include "models/lethality.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace standin {
namespace {

using P = LethalityParameters;

constexpr std::array<double, 5> lean_f{140, 145, 150, 155, 160};
constexpr std::array<double, 10> chicken_5_f{140, 145, 150, 155, 157, 158, 159, 160, 161, 162};
constexpr std::array<double, 9> poultry_12_f{136, 137, 138, 139, 140, 141, 142, 143, 144};

constexpr std::array<Binding<P>, 46> bindings{{
    {"lethality.d70", [](P& p) -> double& { return p.d70_s; }},
    {"lethality.z", [](P& p) -> double& { return p.z_c; }},
    {"lethality.margin", [](P& p) -> double& { return p.margin; }},
    {"lethality.cutoff", [](P& p) -> double& { return p.cutoff_c; }},
    {"lethality.cap", [](P& p) -> double& { return p.cap_logs; }},
    {"lethality.heat.conductivity", [](P& p) -> double& { return p.conductivity; }},
    {"lethality.heat.capacity", [](P& p) -> double& { return p.heat_capacity; }},
    {"lethality.medium.pan", [](P& p) -> double& { return p.medium_c[0]; }},
    {"lethality.medium.grill", [](P& p) -> double& { return p.medium_c[1]; }},
    {"lethality.medium.oven", [](P& p) -> double& { return p.medium_c[2]; }},
    {"lethality.medium.poach", [](P& p) -> double& { return p.medium_c[3]; }},
    {"lethality.medium.loose", [](P& p) -> double& { return p.medium_c[4]; }},
    {"lethality.transfer.pan", [](P& p) -> double& { return p.transfer_w_m2k[0]; }},
    {"lethality.transfer.grill", [](P& p) -> double& { return p.transfer_w_m2k[1]; }},
    {"lethality.transfer.oven", [](P& p) -> double& { return p.transfer_w_m2k[2]; }},
    {"lethality.transfer.poach", [](P& p) -> double& { return p.transfer_w_m2k[3]; }},
    {"lethality.transfer.loose", [](P& p) -> double& { return p.transfer_w_m2k[4]; }},
    {"lethality.chicken-lean.140", [](P& p) -> double& { return p.chicken_lean_s[0]; }},
    {"lethality.chicken-lean.145", [](P& p) -> double& { return p.chicken_lean_s[1]; }},
    {"lethality.chicken-lean.150", [](P& p) -> double& { return p.chicken_lean_s[2]; }},
    {"lethality.chicken-lean.155", [](P& p) -> double& { return p.chicken_lean_s[3]; }},
    {"lethality.chicken-lean.160", [](P& p) -> double& { return p.chicken_lean_s[4]; }},
    {"lethality.turkey-lean.140", [](P& p) -> double& { return p.turkey_lean_s[0]; }},
    {"lethality.turkey-lean.145", [](P& p) -> double& { return p.turkey_lean_s[1]; }},
    {"lethality.turkey-lean.150", [](P& p) -> double& { return p.turkey_lean_s[2]; }},
    {"lethality.turkey-lean.155", [](P& p) -> double& { return p.turkey_lean_s[3]; }},
    {"lethality.turkey-lean.160", [](P& p) -> double& { return p.turkey_lean_s[4]; }},
    {"lethality.chicken-5.140", [](P& p) -> double& { return p.chicken_5_s[0]; }},
    {"lethality.chicken-5.145", [](P& p) -> double& { return p.chicken_5_s[1]; }},
    {"lethality.chicken-5.150", [](P& p) -> double& { return p.chicken_5_s[2]; }},
    {"lethality.chicken-5.155", [](P& p) -> double& { return p.chicken_5_s[3]; }},
    {"lethality.chicken-5.157", [](P& p) -> double& { return p.chicken_5_s[4]; }},
    {"lethality.chicken-5.158", [](P& p) -> double& { return p.chicken_5_s[5]; }},
    {"lethality.chicken-5.159", [](P& p) -> double& { return p.chicken_5_s[6]; }},
    {"lethality.chicken-5.160", [](P& p) -> double& { return p.chicken_5_s[7]; }},
    {"lethality.chicken-5.161", [](P& p) -> double& { return p.chicken_5_s[8]; }},
    {"lethality.chicken-5.162", [](P& p) -> double& { return p.chicken_5_s[9]; }},
    {"lethality.poultry-12.136", [](P& p) -> double& { return p.poultry_12_s[0]; }},
    {"lethality.poultry-12.137", [](P& p) -> double& { return p.poultry_12_s[1]; }},
    {"lethality.poultry-12.138", [](P& p) -> double& { return p.poultry_12_s[2]; }},
    {"lethality.poultry-12.139", [](P& p) -> double& { return p.poultry_12_s[3]; }},
    {"lethality.poultry-12.140", [](P& p) -> double& { return p.poultry_12_s[4]; }},
    {"lethality.poultry-12.141", [](P& p) -> double& { return p.poultry_12_s[5]; }},
    {"lethality.poultry-12.142", [](P& p) -> double& { return p.poultry_12_s[6]; }},
    {"lethality.poultry-12.143", [](P& p) -> double& { return p.poultry_12_s[7]; }},
    {"lethality.poultry-12.144", [](P& p) -> double& { return p.poultry_12_s[8]; }},
}};

constexpr double celsius(double fahrenheit) { return (fahrenheit - 32) / 1.8; }

/// Integral of 10^((T - 70) / z) over `seconds` in which T goes straight from `from` to `to`.
double ramp_f70_s(double seconds, double from, double to, double z) {
    const double start = seconds * std::pow(10.0, (from - 70) / z);
    const double rise = std::numbers::ln10 * (to - from) / z;
    return std::abs(rise) < 1e-9 ? start * (1 + rise / 2) : start * std::expm1(rise) / rise;
}

double segment_f70_s(CorePoint a, CorePoint b, double z, double cutoff) {
    if (a.temperature_c > b.temperature_c) return segment_f70_s({0, b.temperature_c}, {b.time_s - a.time_s, a.temperature_c}, z, cutoff);
    if (b.temperature_c < cutoff) return 0;
    const double seconds = b.time_s - a.time_s;
    if (a.temperature_c >= cutoff) return ramp_f70_s(seconds, a.temperature_c, b.temperature_c, z);
    const double hot = (b.temperature_c - cutoff) / (b.temperature_c - a.temperature_c);
    return ramp_f70_s(seconds * hot, cutoff, b.temperature_c, z);
}

template <std::size_t N>
std::optional<double> interpolate(const std::array<double, N>& rows_f, const std::array<double, N>& seconds, double temperature_c) {
    constexpr double rounding = 1e-9;  // a row's own temperature must find its row
    if (temperature_c < celsius(rows_f.front()) - rounding || temperature_c > celsius(rows_f.back()) + rounding) return std::nullopt;
    std::size_t upper = 1;
    while (upper + 1 < N && celsius(rows_f[upper]) < temperature_c) ++upper;
    const double low = celsius(rows_f[upper - 1]), high = celsius(rows_f[upper]);
    const double share = (temperature_c - low) / (high - low);
    return seconds[upper - 1] * std::pow(seconds[upper] / seconds[upper - 1], share);
}

struct Range {
    double low_c, high_c;
};

Range range_of(PoultryColumn column) {
    switch (column) {
        case PoultryColumn::chicken_5:
            return {celsius(chicken_5_f.front()), celsius(chicken_5_f.back())};
        case PoultryColumn::poultry_12:
            return {celsius(poultry_12_f.front()), celsius(poultry_12_f.back())};
        default:
            return {celsius(lean_f.front()), celsius(lean_f.back())};
    }
}

// Of POSIX: std::cyl_bessel_j sets a global sign on the way, which several threads may not.
double bessel_0(double x) { return ::j0(x); }
double bessel_1(double x) { return ::j1(x); }

/// First root of x J1(x) = biot J0(x).
double first_root(double biot) {
    double low = 0, high = 2.404825557695773;  // first zero of J0
    for (int i = 0; i < 60; ++i) {
        const double x = (low + high) / 2;
        (x * bessel_1(x) < biot * bessel_0(x) ? low : high) = x;
    }
    return (low + high) / 2;
}

/// Core as a share of the start's distance from the medium: first * exp(-rate * time), at most 1.
struct Approach {
    double first = 1, rate_s = 0;
};

Approach approach(double diameter_mm, Cook method, const P& p) {
    const double radius_m = std::max(diameter_mm, 1.0) / 2000;
    const double root = first_root(p.transfer_w_m2k[static_cast<std::size_t>(method)] * radius_m / p.conductivity);
    const double j0 = bessel_0(root), j1 = bessel_1(root);
    return {2 * j1 / (root * (j0 * j0 + j1 * j1)), root * root * p.conductivity / p.heat_capacity / (radius_m * radius_m)};
}

}  // namespace

std::span<const Binding<LethalityParameters>> lethality_bindings() { return bindings; }

double f70_s(std::span<const CorePoint> curve, double z_c, double cutoff_c) {
    double sum = 0;
    for (std::size_t i = 1; i < curve.size(); ++i) sum += segment_f70_s(curve[i - 1], curve[i], z_c, cutoff_c);
    return sum;
}

double log_reductions(std::span<const CorePoint> curve, const LethalityParameters& p) {
    return std::min(p.cap_logs, f70_s(curve, p.z_c, p.cutoff_c) / (p.d70_s * p.margin));
}

std::optional<double> poultry_hold_s(PoultryColumn column, double temperature_c, const LethalityParameters& p) {
    switch (column) {
        case PoultryColumn::chicken_lean:
            return interpolate(lean_f, p.chicken_lean_s, temperature_c);
        case PoultryColumn::turkey_lean:
            return interpolate(lean_f, p.turkey_lean_s, temperature_c);
        case PoultryColumn::chicken_5:
            return interpolate(chicken_5_f, p.chicken_5_s, temperature_c);
        case PoultryColumn::poultry_12:
            return interpolate(poultry_12_f, p.poultry_12_s, temperature_c);
    }
    return std::nullopt;
}

double poultry_table_end_c(PoultryColumn column) { return range_of(column).high_c; }

double poultry_log_reductions(std::span<const CorePoint> curve, PoultryColumn column, const P& p) {
    constexpr int slices = 16;  // of one piece of the curve, each at its middle temperature
    constexpr double table_logs = 7;
    const Range range = range_of(column);
    double logs = 0;
    for (std::size_t i = 1; i < curve.size(); ++i) {
        const double seconds = (curve[i].time_s - curve[i - 1].time_s) / slices;
        for (int s = 0; s < slices; ++s) {
            const double share = (s + 0.5) / slices;
            const double celsius_now = curve[i - 1].temperature_c + share * (curve[i].temperature_c - curve[i - 1].temperature_c);
            if (celsius_now < range.low_c) continue;
            logs += table_logs * seconds / *poultry_hold_s(column, std::min(celsius_now, range.high_c), p);
        }
    }
    return std::min(p.cap_logs, logs);
}

std::optional<PoultryColumn> poultry_column(Species species, double fat_pct) {
    // Fatter birds need longer, so the next column up is the safe one.
    if (species == Species::turkey && fat_pct <= 1) return PoultryColumn::turkey_lean;
    if (species != Species::chicken) return std::nullopt;
    if (fat_pct <= 1) return PoultryColumn::chicken_lean;
    if (fat_pct <= 5) return PoultryColumn::chicken_5;
    if (fat_pct <= 12) return PoultryColumn::poultry_12;
    return std::nullopt;
}

double cylinder_core_c(double time_s, double diameter_mm, double start_c, Cook method, const LethalityParameters& p) {
    const Approach a = approach(diameter_mm, method, p);
    const double medium = p.medium_c[static_cast<std::size_t>(method)];
    return medium + (start_c - medium) * std::min(1.0, a.first * std::exp(-a.rate_s * time_s));
}

std::vector<CorePoint> estimated_core_curve(double diameter_mm, double start_c, double core_c, Cook method, const LethalityParameters& p) {
    constexpr int steps = 200;
    const double medium = p.medium_c[static_cast<std::size_t>(method)];
    std::vector<CorePoint> curve;
    if (core_c >= medium || core_c <= start_c) return curve;
    const Approach a = approach(diameter_mm, method, p);
    const double still = std::log(a.first) / a.rate_s;
    const double end = still + std::log((medium - start_c) / (medium - core_c)) / a.rate_s;
    curve.push_back({0, start_c});
    for (int i = 0; i <= steps; ++i) {
        const double time = still + (end - still) * i / steps;
        curve.push_back({time, medium + (start_c - medium) * a.first * std::exp(-a.rate_s * time)});
    }
    return curve;
}

}  // namespace standin
