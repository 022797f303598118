#include "evaluate/validity.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

namespace standin {
namespace {

constexpr double most_steps = 4;  // beyond, the band says "anything" already; judgement

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
    constexpr double whole = 100;  // indices and percentages end here
    for (std::size_t l = 0; l < limit_count; ++l) {
        const Limit& limit = limits_[l];
        const double steps = steps_outside(limit, reach.*limit.of);
        if (steps <= 0) continue;
        const double factor = std::exp(doubt_ * steps * doubts[l]);
        for (const auto property : limit.widens) properties[property] = std::min(whole, properties[property] * factor);
    }
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
