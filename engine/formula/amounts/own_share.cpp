#include "formula/amounts/own_share.hpp"

#include <algorithm>
#include <cmath>

#include "formula/amounts/process_text.hpp"

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

bool figure_may_describe(const Ingredient& ingredient, double figure, const std::vector<FactText>& facts) {
    constexpr double far_below = 0.5;                                   // of the food's own figure, judgement
    constexpr double least_acid = 1, least_alcohol = 1, least_fat = 1;  // g in 100 g, judgement
    if (std::any_of(facts.begin(), facts.end(), [](const FactText& fact) { return fact.kind == FactKind::acid_pct; })) return false;
    const auto& c = ingredient.composition;
    if (ingredient.family == "dairy-and-egg" && c.fat.mid >= least_fat) return true;
    const bool of_acid = c.acid.mid >= least_acid && ingredient.tissue == Tissue::liquid && figure >= far_below * c.acid.mid;
    return of_acid || (c.alcohol.mid >= least_alcohol && figure >= far_below * c.alcohol.mid);
}

}  // namespace standin
