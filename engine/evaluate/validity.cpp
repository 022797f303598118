#include "evaluate/validity.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

namespace standin {
namespace {

constexpr double most_steps = 4;  // beyond, the band says "anything" already; judgement

/// Where a property ends: indices at 100, a loss at all the water and fat there is. Colour coordinates have no end.
double ceiling_of(Property property, const PerProperty<double>& properties) {
    if (property == Property::bind || property == Property::firmness) return 100;
    if (property == Property::cook_loss_pct) return properties[Property::water_pct] + properties[Property::fat_pct];
    return std::numeric_limits<double>::infinity();
}

/// Moved on the logit scale between nothing and its ceiling, so that no doubt carries it past either; near nothing, and without a ceiling,
/// that is a factor.
double spread(double value, double ceiling, double shift) {
    if (std::isinf(ceiling)) return value * std::exp(shift);
    if (value <= 0 || value >= ceiling) return value;
    const double odds = value / (ceiling - value) * std::exp(shift);
    return ceiling * odds / (1 + odds);
}

}  // namespace

Validity::Validity(const Knowledge& knowledge) : doubt_(knowledge.parameter("validity.doubt").mid) {
    const auto limit = [&](double Reach::*of, const std::string& name, std::vector<Property> widens, Figure what) {
        const std::string id = "validity." + name;
        const auto end = [&](const char* which, double open) {
            return knowledge.has_parameter(id + which) ? knowledge.parameter(id + which).mid : open;
        };
        constexpr double open = std::numeric_limits<double>::infinity();
        limits_.push_back(
            {of, id, end(".low", -open), end(".high", open), knowledge.parameter(id + ".step").mid, std::move(widens), std::move(what)});
    };
    const std::vector<Property> bite{Property::bind, Property::firmness, Property::cook_loss_pct};
    limit(&Reach::ph, "ph", bite, {"pH", {}, 0, ""});
    limit(&Reach::fat_pct, "fat", bite, {"fat", {}, 0, "%"});
    limit(&Reach::salt_pct, "salt", {Property::bind, Property::firmness}, {"salt", {}, 0, "%"});
    limit(&Reach::core_c, "core", {Property::cook_loss_pct}, {"core", {}, 0, "C"});
    limit(&Reach::pigment_mg_kg, "pigment", {Property::greenness}, {"leaf pigment", {}, 0, "mg/kg"});
    limit(&Reach::plate_mm, "plate", bite, {"plate", {}, 0, "mm"});
}

double Validity::steps_outside(const Limit& limit, double value) {
    const double outside = std::max({0.0, limit.low - value, value - limit.high});
    return std::min(most_steps, outside / limit.step);
}

std::vector<Doubts> Validity::doubts(const Draws& draws) const {
    std::vector<Doubts> all(draws.count());
    for (std::size_t l = 0; l < limit_count; ++l) {
        const auto& deviates = draws.of(limits_[l].id);
        for (std::size_t i = 0; i < all.size(); ++i) all[i][l] = deviates[i];
    }
    return all;
}

void Validity::widen(PerProperty<double>& properties, const Reach& reach, const Doubts& doubts) const {
    PerProperty<double> shift;
    for (std::size_t l = 0; l < limit_count; ++l) {
        const double steps = steps_outside(limits_[l], reach.*limits_[l].of);
        for (const auto property : limits_[l].widens) shift[property] += doubt_ * steps * doubts[l];
    }
    for_each_property([&](Property property) {
        if (shift[property] != 0) properties[property] = spread(properties[property], ceiling_of(property, properties), shift[property]);
    });
}

std::vector<Reason> Validity::notes(const Reach& reach) const {
    std::vector<Reason> all;
    for (const auto& limit : limits_) {
        if (steps_outside(limit, reach.*limit.of) <= 0) continue;
        Reason reason;
        reason.kind = ReasonKind::stretched;
        reason.about = limit.id;
        Figure figure = limit.of_what;
        figure.after = reach.*limit.of;
        if (!std::isinf(limit.low)) figure.low = limit.low;
        if (!std::isinf(limit.high)) figure.high = limit.high;
        reason.figures.push_back(std::move(figure));
        for (const auto property : limit.widens) reason.asks.emplace_back(info(property).name);
        all.push_back(std::move(reason));
    }
    return all;
}

}  // namespace standin
