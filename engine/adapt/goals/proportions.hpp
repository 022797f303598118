// Shares of the batch that bound what a move may bring, by the records of the advisor: a plain kitchen's sense of proportion.
#pragma once

#include "models/material.hpp"
#include "substitute/context.hpp"
#include "substitute/dose.hpp"

namespace standin {

struct Proportions {
    /// Fish alone takes more flour and starch than meat.
    Proportions(const Formula& formula, const Context& context);

    /// Of the batch, of more of a food that is there.
    double of_batch(Role role) const;

    /// Of the batch, of a food that comes in by itself.
    double added(Role role) const;

    /// Of the batch, of a fat that pours or spreads and comes in beside the meat: as fat no more than of oil, and wet no more than a mass
    /// takes up.
    double poured_fat(const Material& per_gram) const;

    double paste, leaves, binder, acid, sour_pour, oil, liquid, poured;  ///< of the batch
    double raise;                                                        ///< of a line that goes up for a want
    double dose;                                                         ///< times the equal dose

private:
    Proportions(const Context& context, bool fish);

    double new_binder_, new_liquid_, new_fat_, new_lean_, new_seasoning_;
};

/// Whether what one food brings in a role is the same thing in another: more cumin is no mustard.
inline bool interchangeable(Role role) { return !amount_of_dose(role) && role != Role::sweet; }

}  // namespace standin
