// How many days a text says that sausage keeps in the cold, in any words.
#pragma once

#include <string_view>

#include "knowledge/index/knowledge.hpp"

namespace standin {

enum class KeptFor {
    not_said,     ///< no days of keeping, or of something else than sausage
    long_enough,  ///< as long as it may be kept, raw or cooked as it is said to be, or it is frozen
    too_long      ///< longer than that; longer than raw where nobody says that it is cooked
};

struct KeptDays {
    KeptFor kept = KeptFor::not_said;
    bool cooked = false;  ///< it is kept after it was cooked
};

/// Of a sentence and the one before it, which may have the links cooked: "Fry the links. They keep 3 days in the fridge."
KeptDays kept_days(std::string_view sentence, std::string_view before, const Knowledge& knowledge);

}  // namespace standin
