#include "advise/yardstick.hpp"

#include <cmath>

#include "models/cielab.hpp"

namespace standin {
namespace {

// What is held, with the record of perception.json that measures it.
struct Held {
    Property property;
    std::string_view record, what;
};

constexpr Held held[] = {
    {Property::salt_pct, "salt_pct", "salt"},
    {Property::water_phase_salt_pct, "water_phase_salt_pct", "salt in the water"},
    {Property::sourness_mmol_kg, "sourness_mmol_kg", "sourness"},
    {Property::ph, "ph", "pH"},
    {Property::fat_pct, "fat_pct", "fat"},
    {Property::water_pct, "water_pct", "water"},
    {Property::protein_pct, "protein_pct", "protein"},
    {Property::bind, "bind", "bind"},
    {Property::firmness, "firmness", "firmness"},
    {Property::cook_loss_pct, "cook_loss_pct", "cook loss"},
};
constexpr std::size_t held_count = std::size(held);
static_assert(held_count + 9 == residual_count);

constexpr double least_base = 1e-3;  // a relative step of a property that is next to nothing

struct Dose {
    Amount amount;
    std::string_view what;
};
constexpr Dose doses[] = {
    {Amount::dose_nut, "nuts"}, {Amount::dose_herb, "herbs"}, {Amount::dose_allium, "alliums"}, {Amount::dose_spice, "spices"}};

}  // namespace

Yardstick::Yardstick(const Context& context, const Material& base, const State& state, std::vector<Goal> goals)
    : models_(context.middle.models()), base_(base), state_(state), goals_(std::move(goals)) {
    const auto step_of = [&](std::string_view record) { return context.knowledge().difference(record); };
    for (const auto& h : held) {
        const Difference* d = step_of(h.record);
        if (d)
            steps_[h.property] =
                d->relative ? d->step.band.mid * std::max(std::abs(state.properties[h.property]), least_base) : d->step.band.mid;
    }
    const auto value = [&](std::string_view record) { return step_of(record) ? step_of(record)->step.band.mid : 1.0; };
    colour_step_ = value("colour");
    aroma_step_ = value("aroma");
    dose_step_ = std::log1p(value("dose"));
    batch_step_ = value("batch_g");
    heat_step_ = std::log1p(value("heat_mg_kg"));
    heat_floor_ = context.constant("advice.floor.heat");
    dose_floor_ = context.constant("advice.floor.dose");
    want_weight_ = context.constant("advice.weight.want");
    steps_[Property::heat_mg_kg] = value("heat_mg_kg") * std::max(state.properties[Property::heat_mg_kg], heat_floor_);
    steps_[Property::greenness] = colour_step_;
    for (const auto& goal : goals_) {
        const double now = state.properties[goal.property];
        wanted_[goal.property] = wanted_[goal.property] || !goal.condition || shortfall(goal, now, now) > 0;
    }
}

double Yardstick::relative_change(double value, double base, double floor, double step) const {
    return std::log((value + floor) / (base + floor)) / step;
}

Residuals Yardstick::residuals(const Material& batch, const State& state) const {
    Residuals r;
    std::size_t n = 0;
    const auto put = [&](std::string_view what, double value) { r[n++] = {what, value}; };
    for (const auto& h : held) {
        const bool free = wanted_[h.property] || (h.property == Property::water_phase_salt_pct && wanted_[Property::salt_pct]);
        const bool counted = steps_[h.property] > 0 && !free;
        put(h.what, counted ? (state.properties[h.property] - state_.properties[h.property]) / steps_[h.property] : 0);
    }
    put("heat", wanted_[Property::heat_mg_kg] ? 0
                                              : relative_change(state.properties[Property::burn_mg_kg],
                                                                state_.properties[Property::burn_mg_kg], heat_floor_, heat_step_));
    put("colour, rested", wanted_[Property::greenness] ? 0 : ciede2000(state.rested, state_.rested) / colour_step_);
    put("colour, cooked", wanted_[Property::greenness] ? 0 : ciede2000(state.cooked, state_.cooked) / colour_step_);
    put("aroma", aroma_distance(batch, base_, models_.aroma(0)) / aroma_step_);
    const double mass = batch[Amount::mass], base_mass = base_[Amount::mass];
    for (const auto& d : doses) put(d.what, relative_change(batch[d.amount] / mass, base_[d.amount] / base_mass, dose_floor_, dose_step_));
    put("batch weight", (mass / base_mass - 1) / batch_step_);
    return r;
}

double Yardstick::wants_squared(const State& state) const {
    double sum = 0;
    for (const auto& goal : goals_) {
        const double step = unit(goal.property);
        const double value = state.properties[goal.property], base = state_.properties[goal.property];
        const double miss = want_weight_ * shortfall(goal, value, base) / step;
        // Going further than asked is no aim either: beyond one more step it is held back, whatever was free to move.
        const bool moved = miss <= 0 && wanted_[goal.property];
        const double over = moved ? std::max(0.0, std::abs(value - goal.target(base)) / step - 1) : 0;
        sum += miss * miss + over * over;
    }
    return sum;
}

double Yardstick::distance(const Material& batch, const State& state) const {
    double sum = wants_squared(state);
    for (const auto& residual : residuals(batch, state)) sum += residual.value * residual.value;
    return std::sqrt(sum);
}

}  // namespace standin
