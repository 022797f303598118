#include "bench/makes.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace standin {
namespace {

Band cooked(double raw, const Band& loss) { return {raw * (1 - loss.high / 100), raw * (1 - loss.mid / 100), raw * (1 - loss.low / 100)}; }

}  // namespace

SheetYield makes_of(const Formula& formula, const Prediction& prediction, double piece_g, const Knowledge& knowledge) {
    const auto parameter = [&](const char* id) { return knowledge.parameter(id).mid; };
    const Band& loss = prediction.properties[Property::cook_loss_pct];
    SheetYield y;
    y.batch_g = prediction.batch_g;
    y.cooked_g = cooked(y.batch_g, loss);
    y.diameter_mm = formula.process.diameter_mm;
    const bool link = y.diameter_mm && *y.diameter_mm < parameter("bench.link.widest");
    y.shape = link ? "link" : "patty";
    y.piece_g = piece_g > 0 ? piece_g : parameter("bench.patty");
    if (link) {
        constexpr double mm3_a_ml = 1000;
        const double radius = *y.diameter_mm / 2;
        const double grams_a_mm = parameter("bench.mass.density") * std::numbers::pi * radius * radius / mm3_a_ml;
        y.length_mm = piece_g > 0 ? piece_g / grams_a_mm : parameter("bench.link.length");
        y.piece_g = *y.length_mm * grams_a_mm;
        y.casing_m = parameter("bench.link.casing-over") * y.batch_g / grams_a_mm / 1000;
    }
    y.pieces = std::floor(std::max(0.0, y.batch_g - parameter("bench.taste.patty")) / y.piece_g);
    y.piece_cooked_g = cooked(y.piece_g, loss);
    return y;
}

}  // namespace standin
