// What the maker measured of the mass, and the mass as the models see it once they agree with that.
//
// At every draw what is wrong is put down to one thing in the mass as made: grams of salt for a measured salt, strong ions for a measured
// pH (acid got in or out, meat or paste of another pH: the charge balance does not tell these apart). That much stays in the mass whatever
// is added to it, so it is thinned by additions as the rest is.
#pragma once

#include "evaluate/batch.hpp"
#include "standin/mend.hpp"
#include "substitute/context.hpp"

namespace standin {

struct MassReading {
    Property property = Property::ph;
    double value = 0;
};

/// "pH 4.9", "salt 2.4 %". Other properties, and values that no fresh sausage has, are usage errors.
Result<std::vector<MassReading>> read_measured(const std::vector<std::string>& measured, const Context& context);

class MassAsMade {
public:
    MassAsMade(const Formula& mass, const std::vector<MassReading>& readings, const Context& context);

    /// The middle of everything: the whole batch of `formula`, which holds the mass, and what the models say of it.
    Material total(const Formula& formula) const;
    State state(const Formula& formula) const;
    /// At every draw.
    std::vector<State> states(const Formula& formula) const;
    /// A prediction of `formula` with its safety; `states` are those of it.
    Prediction predicted(const Formula& formula, const std::vector<State>& states) const;

    /// What there is beside what the formula says, at the middle.
    const Material& beside() const { return middle_; }

private:
    Material missing(Material total, const ProcessState& process, const Models& models, const std::vector<MassReading>& readings) const;

    const Context& context_;
    Material middle_;
    std::vector<Material> drawn_;  // empty: nothing was measured
};

}  // namespace standin
