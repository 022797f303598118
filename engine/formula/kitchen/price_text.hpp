// One line of a price list taken apart, before it is known of what.
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace standin {

struct PriceText {
    double money = 0;
    std::string_view currency;  ///< as written; empty: none
    std::string
        amount;  ///< what one gets for it, as a line of a formula has it: "1 kg", "1 bunch", "40 g"; empty: the food's own text says
    std::size_t amount_at = 0;  ///< where that stands in the line
    std::string_view food;      ///< the rest
    bool unclear = false;       ///< "1,234" may be a thousand or a little more than one
};

/// Nothing where no price stands in the line.
std::optional<PriceText> price_text(std::string_view line);

/// The currency that a line names by itself: "currency: EUR", "prices in EUR"; nothing where it does not.
std::optional<std::string_view> currency_line(std::string_view line);

/// Whether two words or signs mean the same currency: EUR and euro.
bool same_currency(std::string_view a, std::string_view b);

}  // namespace standin
