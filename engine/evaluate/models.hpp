// All models with their constants, one set a draw, and what they say of a batch.
#pragma once

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

/// A batch as the models see it, at one draw.
struct State {
    PerProperty<double> properties;
    Lab raw, rested, cooked;
};

class Models {
public:
    Models(const Knowledge& knowledge, Draws& draws);

    std::size_t count() const { return acid_.size(); }
    const std::vector<AcidParameters>& acid() const { return acid_; }
    const HeatParameters& heat(std::size_t draw) const { return heat_[draw]; }
    const std::vector<LethalityParameters>& lethality() const { return lethality_; }
    const AromaParameters& aroma(std::size_t draw) const { return aroma_[draw]; }

    const Validity& validity() const { return validity_; }

    /// Everything the models say of `batch` (with mass) made as `process`, at `draw`.
    State state(const Material& batch, const ProcessState& process, std::size_t draw) const;

    /// Bind with the factors that made it, for explanations.
    BatchBind bind(const Material& batch, const ProcessState& process, std::size_t draw) const;

private:
    std::vector<AcidParameters> acid_;
    std::vector<AcidConstants> acid_ready_;
    std::vector<SaltParameters> salt_;
    std::vector<ColourParameters> colour_;
    std::vector<HeatParameters> heat_;
    std::vector<BindParameters> bind_;
    std::vector<CookingParameters> cooking_;
    std::vector<AromaParameters> aroma_;
    std::vector<LethalityParameters> lethality_;
    Validity validity_;
};

}  // namespace standin
