// What must be minded of several batches on one page: the union of it, said before anything else.
#pragma once

#include <string>
#include <vector>

#include "standin/advice.hpp"

namespace standin::cli {

struct Together {
    bool many = false;                    ///< more than one batch
    std::string core;                     ///< the highest temperature that any asks for
    std::vector<AllergenText> allergens;  ///< with all that bring them; of which variants, where not of the original
    std::vector<CautionText> cautions;    ///< each once, likewise
};

/// "Cook to 71.1 C (160 F) in the middle, measured, whichever you make."
std::string cook_line(const Together& all);

/// Of the original and every variant shown.
Together together(const AdaptAnswer& answer);

/// Of the formula as it is and with each of its stand-ins.
Together together(const SwapsAnswer& answer);

}  // namespace standin::cli
