// How far a prediction lies from a measurement and how wide it is, in noticeable differences (knowledge/perception.json).
#pragma once

#include <cmath>
#include <limits>
#include <string>

#include "models/cielab.hpp"
#include "support/knowledge.hpp"

namespace calibration {

/// What the models say where something was measured. `colour` is the middle of the colour when the quantity is a coordinate of one.
struct Said {
    standin::Band band;
    standin::Lab colour;
    double standin::Lab::*coordinate = nullptr;
};

/// `error` is positive where the model says more than was measured. Not a number: taste has no distance for the quantity.
struct Distance {
    double error = 0, width = 0;
};

/// The record whose step the quantity is counted in; empty: none.
inline std::string yardstick_of(const std::string& quantity) {
    if (quantity == "cooked_ph" || quantity == "cooked rise") return "ph";
    for (const std::string part : {"water_pct", "fat_pct", "protein_pct"})
        if (quantity == "cooked_" + part) return part;
    if (quantity == "kept") return "dose";
    if (quantity == "capsaicinoids") return "heat_mg_kg";
    return knowledge().difference(quantity) ? quantity : std::string();
}

inline double colour_steps(const Said& said, double from, double to) {
    standin::Lab a = said.colour, b = said.colour;
    a.*said.coordinate = from;
    b.*said.coordinate = to;
    const double away = standin::ciede2000(a, b) / knowledge().difference("colour")->step.band.mid;
    return to < from ? -away : away;
}

inline double steps_between(const Said& said, const std::string& quantity, double from, double to) {
    if (said.coordinate) return colour_steps(said, from, to);
    const std::string record = yardstick_of(quantity);
    if (record.empty()) return std::numeric_limits<double>::quiet_NaN();
    const auto* difference = knowledge().difference(record);
    const double step = difference->step.band.mid;
    return difference->relative ? std::log(to / from) / std::log1p(step) : (to - from) / step;
}

inline Distance distance_of(const Said& said, const std::string& quantity, double measured) {
    return {steps_between(said, quantity, measured, said.band.mid), steps_between(said, quantity, said.band.low, said.band.high)};
}

}  // namespace calibration
