#include "evaluate/validity.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

#include "standin/number_text.hpp"

namespace standin {
namespace {

constexpr double most_steps = 4;  // beyond, the band says "anything" already; judgement

std::string figures(double value) { return figures_text(value, 3); }

}  // namespace

Validity::Validity(const Knowledge& knowledge) : doubt_(knowledge.parameter("validity.doubt").mid) {
    const auto limit = [&](double Reach::*of, const std::string& name, std::vector<Property> widens, std::string says) {
        const std::string id = "validity." + name;
        const auto end = [&](const char* which, double open) {
            return knowledge.has_parameter(id + which) ? knowledge.parameter(id + which).mid : open;
        };
        constexpr double open = std::numeric_limits<double>::infinity();
        limits_.push_back(
            {of, id, end(".low", -open), end(".high", open), knowledge.parameter(id + ".step").mid, std::move(widens), std::move(says)});
    };
    limit(&Reach::ph, "ph", {Property::bind, Property::firmness, Property::cook_loss_pct},
          "pH %, made for %: bind, firmness and cook loss are stretched; a sour mass sets by acid instead of binding");
    limit(&Reach::fat_pct, "fat", {Property::bind, Property::firmness, Property::cook_loss_pct},
          "% % fat, made for %: bind, firmness and cook loss are stretched");
    limit(&Reach::salt_pct, "salt", {Property::bind, Property::firmness}, "% % salt, made for %: bind and firmness are stretched");
    limit(&Reach::core_c, "core", {Property::cook_loss_pct}, "A core of % C, made for %: cook loss is stretched");
    limit(&Reach::pigment_mg_kg, "pigment", {Property::greenness}, "% mg/kg of leaf pigment, made for %: the colour is stretched");
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

std::vector<std::string> Validity::notes(const Reach& reach) const {
    std::vector<std::string> all;
    for (const auto& limit : limits_) {
        if (steps_outside(limit, reach.*limit.of) <= 0) continue;
        std::string range = std::isinf(limit.low)    ? "up to " + figures(limit.high)
                            : std::isinf(limit.high) ? figures(limit.low) + " and more"
                                                     : figures(limit.low) + "-" + figures(limit.high);
        std::string text = limit.says;
        text.replace(text.find('%'), 1, figures(reach.*limit.of));
        text.replace(text.rfind('%'), 1, range);
        all.push_back(text + "; its band is widened");
    }
    return all;
}

}  // namespace standin
