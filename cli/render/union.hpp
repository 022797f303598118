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
    std::vector<AllergenText> allergens;  ///< of which variants, where not of all and the original
    std::vector<CautionText> cautions;    ///< likewise; what only a variant brings comes first

    // What nothing on offer has any more: of the original alone.
    std::string only_of;      ///< "your original"
    std::string core_before;  ///< where the original asked for more; empty: it does not
    std::vector<AllergenText> allergens_before;
    std::vector<CautionText> cautions_before;
};

/// "Cook to 71.1 C (160 F) in the middle, measured, whichever you make."
std::string cook_line(const Together& all);

/// Of the original and every variant shown.
Together together(const AdaptAnswer& answer);

/// Of the mass as it is and every way to mend it.
Together together(const MendAnswer& answer);

/// Of the formula as it is and with each of its stand-ins.
Together together(const SwapsAnswer& answer);

/// "Only your original: milk, perhaps soy." Empty: nothing is.
std::string allergens_before_in_short(const Together& all);
/// "Only your original: part of the alcohol stays after cooking (red wine)." Empty: nothing is.
std::string cautions_before_in_short(const Together& all);
/// Each in full with "only your original" before it, behind those of the variants.
std::vector<CautionText> all_cautions(const Together& all);
std::vector<AllergenText> all_allergens(const Together& all);

/// The first words of a caution, by which it is known again: "this leaf is rich in nitrate (chard)".
std::string title_of(const CautionText& caution);

/// Each with its `brief` whole: the foods that call for it, then what to mind, in a line or so.
std::vector<CautionText> with_briefs(std::vector<CautionText> cautions);

}  // namespace standin::cli
