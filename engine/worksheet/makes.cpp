#include "worksheet/makes.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <optional>

#include "knowledge/index/kinds.hpp"
#include "safety/casings.hpp"
#include "safety/exclusions.hpp"

namespace standin {
namespace {

// What the formula itself names goes before what is sold so wide.
std::optional<std::string> casing_beside(const Formula& formula, const Knowledge& knowledge) {
    for (const auto& beside : formula.beside)
        if (is_casing(beside))
            if (std::string name = casing_name(beside.written, knowledge); !name.empty()) return name;
    return std::nullopt;
}

Band cooked(double raw, const Band& loss) { return {raw * (1 - loss.high / 100), raw * (1 - loss.mid / 100), raw * (1 - loss.low / 100)}; }

}  // namespace

SheetYield makes_of(const Formula& formula, const Prediction& prediction, const PieceAsked& asked, const Knowledge& knowledge) {
    const auto parameter = [&](const char* id) { return knowledge.parameter(id).mid; };
    const Band& loss = prediction.properties[Property::cook_loss_pct];
    SheetYield y;
    y.batch_g = prediction.batch_g;
    y.cooked_g = cooked(y.batch_g, loss);
    y.diameter_mm = formula.process.diameter_mm;
    const bool link = y.diameter_mm && *y.diameter_mm < parameter("bench.link.widest");
    y.shape = link ? "link" : "patty";
    y.piece_g = asked.grams.value_or(parameter("bench.patty"));
    if (link) {
        constexpr double mm3_a_ml = 1000;
        const double radius = *y.diameter_mm / 2;
        const double grams_a_mm = parameter("bench.mass.density") * std::numbers::pi * radius * radius / mm3_a_ml;
        y.length_mm = asked.grams ? *asked.grams / grams_a_mm : asked.link_mm.value_or(parameter("bench.link.length"));
        y.length_said = asked.grams || asked.link_mm;
        y.piece_g = *y.length_mm * grams_a_mm;
        y.casing = casing_beside(formula, knowledge).value_or(casing_presumed(formula, knowledge));
        y.casing_g_a_metre = 1000 * grams_a_mm;
        y.casing_m = parameter("bench.casing.over") * y.batch_g / *y.casing_g_a_metre;
    }
    y.pieces = std::floor(std::max(0.0, y.batch_g - parameter("bench.taste.patty")) / y.piece_g);
    y.piece_cooked_g = cooked(y.piece_g, loss);
    return y;
}

}  // namespace standin
