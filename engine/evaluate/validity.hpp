// Where the models are stretched beyond what they were made for (knowledge/models/validity.json): bands widen there, and a note says so.
#pragma once

#include <array>
#include <string>
#include <vector>

#include "core/draws.hpp"
#include "knowledge/index/knowledge.hpp"
#include "standin/lab.hpp"
#include "standin/property.hpp"
#include "standin/reason.hpp"

namespace standin {

/// What a limit is about.
struct Reach {
    double ph = 0, fat_pct = 0, salt_pct = 0, core_c = 0, pigment_mg_kg = 0, plate_mm = 8;
};

inline constexpr std::size_t limit_count = 6;

/// How far one draw lies off the middle of each limit's doubt, in standard deviations.
using Doubts = std::array<double, limit_count>;

class Validity {
public:
    explicit Validity(const Knowledge& knowledge);

    /// One a draw.
    std::vector<Doubts> doubts(const Draws& draws) const;

    /// Spreads what rests on a stretched model, within what is physical; inside all limits nothing changes. Without doubts it stays where
    /// it is.
    void widen(PerProperty<double>& properties, const Reach& reach, const Doubts& doubts) const;

    /// One for each limit that `reach` lies beyond.
    std::vector<Reason> notes(const Reach& reach) const;

private:
    struct Limit {
        double Reach::*of;
        std::string id;  // "validity.ph"
        double low, high, step;
        std::vector<Property> widens;
        Figure of_what;  // as it is called, and its unit
    };
    static double steps_outside(const Limit& limit, double value);

    double doubt_;
    std::vector<Limit> limits_;
};

}  // namespace standin
