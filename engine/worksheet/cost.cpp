#include "worksheet/cost.hpp"

#include <algorithm>
#include <cmath>
#include <map>

#include "core/band.hpp"
#include "evaluate/predict.hpp"
#include "knowledge/index/edible.hpp"
#include "models/as_bought.hpp"
#include "models/ready.hpp"
#include "worksheet/parts.hpp"

namespace standin {
namespace {

constexpr double grams_a_kilo = 1000, percent = 100;

const Price* price_of(const std::string& ingredient, const PriceList& prices) {
    const auto found = std::find_if(prices.prices.begin(), prices.prices.end(), [&](const Price& p) { return p.ingredient == ingredient; });
    return found == prices.prices.end() ? nullptr : &*found;
}

bool from_the_tap(const std::string& ingredient) { return ingredient == "water" || ingredient == "ice"; }

// Of a line what a price is for: as it is bought, or without what is cut away.
double paid_grams(const Line& line, const Price& price, const Knowledge& knowledge) {
    const double raw = raw_grams(line, knowledge), share = edible_share(*knowledge.ingredient(line.ingredient));
    const bool untrimmed = weighed_untrimmed(line);
    if (price.trimmed) return untrimmed ? raw * share : raw;
    return untrimmed ? raw : raw / share;
}

// Few grams for the money make it dear.
Band money_for(double grams, const Price& price) {
    return {grams * price.money / price.grams.high, grams * price.money / price.grams.mid, grams * price.money / price.grams.low};
}

// Adds up what is unsure for reasons of its own each time: ends as the root of the squares.
class Sum {
public:
    void add(const Band& one) {
        mid_ += one.mid;
        below_ += (one.mid - one.low) * (one.mid - one.low);
        above_ += (one.high - one.mid) * (one.high - one.mid);
    }
    Band band() const { return {mid_ - std::sqrt(below_), mid_, mid_ + std::sqrt(above_)}; }

private:
    double mid_ = 0, below_ = 0, above_ = 0;
};

// A kilo of what is left of so much raw.
Band cooked_kilo(const Band& raw_kg, const Band& loss_pct) {
    const auto left = [&](double loss) { return 1 - loss / percent; };
    const double mid = raw_kg.mid / left(loss_pct.mid);
    Sum sum;
    sum.add(scaled(raw_kg, 1 / left(loss_pct.mid)));
    sum.add({raw_kg.mid / left(loss_pct.low) - mid, 0, raw_kg.mid / left(loss_pct.high) - mid});
    return sum.band();
}

void add_name(std::vector<std::string>& names, const std::string& name) {
    if (std::find(names.begin(), names.end(), name) == names.end()) names.push_back(name);
}

// Grams of each food in a kilo of the raw mass, as they are paid for.
std::map<std::string, double> in_a_kilo(const Formula& formula, const PriceList& prices, const Knowledge& knowledge) {
    const double batch = weights_only(formula, knowledge).batch_g;
    std::map<std::string, double> all;
    for (const auto& line : formula.lines) {
        const Price* price = price_of(line.ingredient, prices);
        all[line.ingredient] += (price ? paid_grams(line, *price, knowledge) : raw_grams(line, knowledge)) * grams_a_kilo / batch;
    }
    return all;
}

}  // namespace

Cost cost_of(const Formula& formula, const Prediction& prediction, const SheetYield& makes, const PriceList& prices,
             const Knowledge& knowledge) {
    Cost cost;
    cost.list = prices.name;
    cost.currency = prices.currency;
    cost.notes = prices.notes;
    Sum sum;
    for (std::size_t n = 0; n < formula.lines.size(); ++n) {
        const Line& line = formula.lines[n];
        if (const Price* price = price_of(line.ingredient, prices)) {
            cost.lines.push_back({n, money_for(paid_grams(line, *price, knowledge), *price)});
            sum.add(cost.lines.back().money);
        } else if (!from_the_tap(line.ingredient)) {
            add_name(cost.unpriced, knowledge.ingredient(line.ingredient)->names.front());
        }
    }
    cost.batch = sum.band();
    cost.raw_kg = scaled(cost.batch, grams_a_kilo / prediction.batch_g);
    cost.cooked_kg = cooked_kilo(cost.raw_kg, prediction.properties[Property::cook_loss_pct]);
    cost.piece = makes.shape;
    cost.piece_g = makes.piece_g;
    cost.piece_money = scaled(cost.raw_kg, makes.piece_g / grams_a_kilo);
    return cost;
}

CostChange cost_change(const Formula& base, const Formula& variant, const PriceList& prices, const Knowledge& knowledge) {
    constexpr double worth_naming = 0.05;  // share of its weight; a line that only rides along is not new
    CostChange change;
    change.currency = prices.currency;
    const auto before = in_a_kilo(base, prices, knowledge), after = in_a_kilo(variant, prices, knowledge);
    std::map<std::string, double> moved = after;
    for (const auto& [food, grams] : before) moved[food] -= grams;
    Sum sum;
    for (const auto& [food, grams] : moved) {
        if (const Price* price = price_of(food, prices)) {
            const Band money = money_for(std::abs(grams), *price);
            sum.add(grams < 0 ? Band{-money.high, -money.mid, -money.low} : money);
            continue;
        }
        const auto was = before.find(food);
        const double least = was == before.end() ? 0 : worth_naming * was->second;
        if (std::abs(grams) > least && !from_the_tap(food)) add_name(change.unpriced, knowledge.ingredient(food)->names.front());
    }
    change.raw_kg = sum.band();
    return change;
}

}  // namespace standin
