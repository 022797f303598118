// What holds for everything on a page, and what a variant brings that its base has not.
#pragma once

#include <vector>

#include "standin/prediction.hpp"

namespace standin {

/// The union over the batches shown, the first of them leading; the core caution is that of the most demanding.
class OnPage {
public:
    void add(const Prediction& prediction);
    const PageSafety& safety() const { return safety_; }

    /// Adds what is offered in place of the others: that is gathered by itself as well.
    void offer(const Prediction& prediction);
    const PageSafety& offered() const { return offered_; }

private:
    PageSafety safety_, offered_;
};

/// Cautions of `variant` that `base` has not: of another kind, of a further degree, or because of a food that is not in the base's own.
std::vector<CautionText> new_cautions(const Prediction& base, const Prediction& variant);

}  // namespace standin
