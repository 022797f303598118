// Base and variant beside each other, as the models see them at the middle of every band.
#pragma once

#include <string>
#include <vector>

#include "adapt/variants/variant.hpp"
#include "evaluate/batch.hpp"

namespace standin {

struct Compared {
    Material base, variant;
    State before, after;
    BatchBind bind_before, bind_after;
    std::string missed;  ///< lines that are gone with nothing in their place, named one after another
    std::string unlike;  ///< the stand-in that is least like what it stands for, where the models cannot tell how it tastes
};

/// The base against the variant as weighed out: a stand-in counts as the problem has it, the least like of them is named, and so are the
/// lines of which `lost` says that most is gone with nothing in its place.
Compared compared_with(const Formula& base, const BuiltVariant& built, const Problem& problem, const std::vector<double>& lost,
                       const Context& context);

}  // namespace standin
