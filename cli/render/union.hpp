// What must be minded of several batches on one page, said before anything else: the engine's union, and which of them it is said of.
#pragma once

#include <string>
#include <vector>

#include "standin/advice.hpp"
#include "standin/mend.hpp"

namespace standin::cli {

struct Together {
    bool many = false;                    ///< more than one batch
    std::string core;                     ///< the highest temperature that any asks for, and how long
    std::vector<AllergenText> allergens;  ///< of which variants, where not of the original
    std::vector<CautionText> cautions;    ///< likewise; what only a variant brings comes first
};

/// "Cook to 71.1 C (160 F) in the middle, measured, whichever you make."
std::string cook_line(const Together& all);

/// Of the original and every variant shown.
Together together(const AdaptAnswer& answer);

/// Of the mass as it is and every way to mend it.
Together together(const MendAnswer& answer);

/// Of the formula as it is and with each of its stand-ins.
Together together(const SwapsAnswer& answer);

}  // namespace standin::cli
