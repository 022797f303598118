// What may be used and how much of it: inventory, exclusions, and what has to be presumed where the maker does not say.
#pragma once

#include <map>
#include <optional>
#include <set>
#include <string>
#include <vector>

#include "substitute/context.hpp"

namespace standin {

/// What one ingredient offers.
struct Offer {
    bool excluded = false;  ///< by --without
    bool on_hand = true;
    std::optional<double> grams;  ///< no more than this; absent: plenty
};

class Stock {
public:
    /// Without an inventory everything in the knowledge is to be had. With one, only what it lists can be brought in. A formula's own
    /// ingredients that it does not mention: lines marked keep and roles of which it lists nothing are presumed on hand; where it lists
    /// other greens, herbs, chiles, alliums, nuts, acids or binders, the list is taken to be all there is of that role.
    /// With a month in `options`, what is out of season can only be brought in where the inventory lists it.
    static Result<Stock> of(const Formula& formula, const AdaptRequest& request, const Context& context);

    Offer offer(const Ingredient& ingredient) const;
    /// Whether `ingredient` could be brought into the formula. Who names an allergen to be left out cooks for someone it matters to: then
    /// nothing is brought in that carries an allergen the formula does not have already.
    bool can_bring(const Ingredient& ingredient) const;
    bool listed() const { return listed_; }
    const std::vector<std::string>& presumed() const { return presumed_; }

private:
    void guard_allergens(const Formula& formula, const Knowledge& knowledge);

    std::map<std::string, std::optional<double>> have_;
    std::map<std::string, bool> missing_;
    std::vector<std::string> without_;
    std::vector<std::string> presumed_;
    std::optional<std::set<std::string>> only_allergens_;  // absent: any may come in
    std::optional<int> month_;
    int season_shift_ = 0;
    bool listed_ = false;
    bool everything_ = false;
};

}  // namespace standin
