// Distance between a variant and the base, counted in noticeable differences: just noticeable differences (JND) of sensory science.
//
// Each held property, the two colours, the aroma, the doses of the roles that no property stands for and the batch weight give one
// residual: its change over the smallest change a taster picks up. Their squares add up, and so do the squares of everything else that
// makes a variant another sausage (lines lost, stand-ins trusted: problem.hpp); a distance is the root of the whole sum. So what is best
// for one line does not depend on how much else is missing. Where better is no fault, more bind and less cook loss, only the worse side
// counts. A want that is missed counts with a weight, and a property that a want moves is held no longer. A condition that the base keeps
// already is only a limit: within it the base holds.
#pragma once

#include <array>
#include <string_view>
#include <vector>

#include "adapt/goals/wants.hpp"
#include "substitute/context.hpp"

namespace standin {

struct Residual {
    std::string_view what;  ///< "salt", "colour, cooked", "seasonings", ...
    double value = 0;       ///< noticeable differences that count, signed where it has a direction
    double change = 0;      ///< the same with what counts for nothing because it is no fault
};

inline constexpr std::size_t residual_count = 18;
using Residuals = std::array<Residual, residual_count>;

class Distance {
public:
    /// The base is measured at the middle; it lends `base` and `process` no longer than this call.
    Distance(const Context& context, const Material& base, const State& state, std::vector<Goal> goals);
    /// The same, with another weight of what is missed of a want.
    Distance(const Context& context, const Material& base, const State& state, std::vector<Goal> goals, double want_weight);

    Residuals residuals(const Material& batch, const State& state) const;

    /// The same as a vector whose length is `of`: each colour as three parts instead of one size, so that all of it is smooth where
    /// nothing has moved; after the residuals two entries a goal, what is missed and what goes too far.
    void rows(const Material& batch, const State& state, std::vector<double>& out) const;
    std::size_t row_count() const;  ///< how many entries that has

    /// How much the missed wants weigh, squared; 0 when all are met.
    double wants_squared(const State& state) const;

    /// The sum of all squares, wants included.
    double square(const Material& batch, const State& state) const;
    /// Its root.
    double of(const Material& batch, const State& state) const;

    /// The smallest noticeable change of a property at the base, in its unit (0: the property has none).
    double step(Property property) const { return steps_[property]; }
    /// The same, and 1 for a property that has none: what a miss of a goal is divided by.
    double unit(Property property) const { return steps_[property] > 0 ? steps_[property] : 1; }
    const State& base() const { return state_; }
    const Material& base_material() const { return base_; }
    const std::vector<Goal>& goals() const { return goals_; }
    bool wanted(Property property) const { return wanted_[property]; }

private:
    // What one goal adds: how far it is missed, and how much further than asked a property went.
    struct GoalResidual {
        double miss, over;
    };

    // How CIEDE2000 grows around one colour, as the factor of a quadratic form: its length is the distance of a small step.
    struct ColourFrame {
        Lab from;
        std::array<double, 6> factor{};  // upper triangle, by rows
        std::array<double, 3> parts(const Lab& to, double size) const;
    };

    double relative_change(double value, double base, double floor, double step) const;
    GoalResidual aim(const Goal& goal, const State& state) const;
    static ColourFrame frame_of(const Lab& base);

    const Models& models_;
    Material base_;
    State state_;
    std::vector<Goal> goals_;
    PerProperty<double> steps_;
    PerProperty<bool> wanted_;
    bool ph_serves_ = false;  // a want of what pH is there for: nobody tastes it, and it counts in sourness, bind and colour
    ColourFrame rested_, cooked_;
    double colour_step_ = 0, aroma_step_ = 0, dose_step_ = 0, batch_step_ = 0, heat_step_ = 0;
    double heat_floor_ = 0, want_weight_ = 0;
    double green_along_ = 0;               // g/g of seasoning leaf that goes with greener
    std::array<double, 3> dose_floors_{};  // of nuts, alliums and seasonings
};

}  // namespace standin
