// Quantities with a metric unit where they stand in a sentence: "60 C", "0-2 C", "5 g".
#pragma once

#include <cstddef>
#include <optional>
#include <string_view>

namespace standin {

struct WrittenQuantity {
    std::optional<double> first;  ///< of a range
    double last = 0;
    std::string_view unit;  ///< "C", "mm", "g" or "kg"
    std::size_t end = 0;    ///< where the sentence goes on
};

/// What stands in `text` from `at` on; nothing where that is no number with such a unit.
std::optional<WrittenQuantity> quantity_at(std::string_view text, std::size_t at);

/// The next one from `at` on that reads otherwise in other units: no share ("2 g to the kilogram", "9 g in 100 g"), no difference
/// ("by 80 C"), nothing said in both already ("71.1 C (160 F)"), nothing quoted. `at` becomes its place.
std::optional<WrittenQuantity> next_quantity(std::string_view text, std::size_t& at);

/// What stands in braces in the text of a record: "60 C", "2 C or colder" (never said warmer), "core 73.9 C" (never said colder).
struct MarkedQuantity {
    WrittenQuantity quantity;
    bool core = false, or_colder = false;
};

/// Nothing where `inside` is no such mark.
std::optional<MarkedQuantity> marked_quantity(std::string_view inside);

}  // namespace standin
