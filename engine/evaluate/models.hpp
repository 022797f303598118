// All models with one set of their constants, and what they say of a batch.
#pragma once

#include <memory>
#include <vector>

#include "core/draws.hpp"
#include "evaluate/process_state.hpp"
#include "evaluate/validity.hpp"
#include "models/acid.hpp"
#include "models/aroma.hpp"
#include "models/bind.hpp"
#include "models/colour.hpp"
#include "models/cooking.hpp"
#include "models/heat.hpp"
#include "models/lethality.hpp"
#include "models/salt.hpp"
#include "standin/lab.hpp"
#include "standin/property.hpp"

namespace standin {

/// A batch as the models see it, nominally or at one draw.
struct State {
    PerProperty<double> properties;
    Lab raw, rested, cooked;
};

/// One value of every constant.
struct Constants {
    AcidParameters acid;
    SaltParameters salt;
    ColourParameters colour;
    HeatParameters heat;
    BindParameters bind;
    CookingParameters cooking;
    AromaParameters aroma;
    LethalityParameters lethality;
    Doubts doubts{};
};

class Models {
public:
    Models(const Constants& constants, std::shared_ptr<const Validity> validity);

    const AcidParameters& acid() const { return constants_.acid; }
    const ColourParameters& colour_parameters() const { return constants_.colour; }
    const HeatParameters& heat() const { return constants_.heat; }
    const AromaParameters& aroma() const { return constants_.aroma; }
    const LethalityParameters& lethality() const { return constants_.lethality; }
    const Validity& validity() const { return *validity_; }

    /// Everything the models say of `batch` (with mass) made as `process`.
    State state(const Material& batch, const ProcessState& process) const;

    /// Bind with the factors that made it, for explanations.
    BatchBind bind(const Material& batch, const ProcessState& process) const;

    /// The pH alone, and of a batch of that pH the colours alone.
    double ph(const Material& batch) const;
    BatchColour colour(const Material& batch, double ph, const ProcessState& process) const;

private:
    Constants constants_;
    AcidConstants acid_ready_;
    std::shared_ptr<const Validity> validity_;
};

/// One set a draw.
std::vector<Models> models_of(const Knowledge& knowledge, const Draws& draws);

}  // namespace standin
