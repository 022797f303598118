#include "formula/line/own_share.hpp"

#include <cmath>

#include "formula/line/process_text.hpp"

namespace standin {

std::vector<std::string> shares_of_own(const AmountText& amount, double grams) {
    if (amount.per_grams > 0) {
        const double a_kilo = 1000 * grams / amount.per_grams, step = a_kilo < 10 ? 0.01 : 0.1;
        const std::string own = plain_number(std::round(a_kilo / step) * step);
        return {own + " g per kg of meat", own + " g per kg of batch"};
    }
    const std::string figure = plain_number(amount.parts.front().number.mid) + " %";
    return {figure + " of meat", figure + " of batch"};
}

}  // namespace standin
