#include "adapt/distance/distance.hpp"

#include <algorithm>
#include <cmath>

#include "adapt/goals/levers.hpp"
#include "adapt/goals/request.hpp"
#include "models/cielab.hpp"

namespace standin {
namespace {

// What is held, with the record of perception.json that measures it.
struct Held {
    Property property;
    std::string_view record, what;
    int better = 0;  // the side on which more of it is no fault: 1 up, -1 down
};

constexpr Held held[] = {
    {Property::salt_pct, "salt_pct", "salt"},
    {Property::water_phase_salt_pct, "water_phase_salt_pct", "salt in the water"},
    {Property::sourness_mmol_kg, "sourness_mmol_kg", "sourness"},
    {Property::ph, "ph", "pH"},
    {Property::fat_pct, "fat_pct", "fat"},
    {Property::water_pct, "water_pct", "water"},
    {Property::protein_pct, "protein_pct", "protein"},
    {Property::bind, "bind", "bind", 1},
    {Property::firmness, "firmness", "firmness"},
    {Property::juice, "juice", "juice", 1},
};
constexpr std::size_t held_count = std::size(held);
static_assert(held_count + 8 == residual_count);
constexpr std::size_t rested_at = held_count + 1, cooked_at = held_count + 2;  // the colours among the residuals

constexpr double word_past = 0.2;     // noticeable differences past a word that nobody minds; judgement
constexpr double lot_past = 1.5;      // the same of heat that is to rise: one pod is three times as hot as the next; judgement
constexpr double past_weight = 1.4;   // who asks for a little less salt wants neither more nor less than that
constexpr double along_weight = 0.6;  // of the aroma that a greener one brings along; judgement
constexpr double least_base = 1e-3;   // a relative step of a property that is next to nothing

struct Dose {
    Amount amount;
    std::string_view what, floor;
};
// A herb for a spice is one seasoning for another: how unlike they taste is told by the aroma, not by which shelf they stand on.
constexpr Dose doses[] = {{Amount::dose_nut, "nuts", "advice.floor.nut"},
                          {Amount::dose_allium, "alliums", "advice.floor.dose"},
                          {Amount::dose_seasoning, "seasonings", "advice.floor.dose"}};

}  // namespace

Distance::Distance(const Context& context, const Material& base, const State& state, std::vector<Goal> goals)
    : models_(context.nominal().models()),
      base_(base),
      state_(state),
      goals_(std::move(goals)),
      rested_(frame_of(state.rested)),
      cooked_(frame_of(state.cooked)) {
    const auto step_of = [&](std::string_view record) { return context.knowledge().difference(record); };
    // A share of next to nothing is no step: where no acid or salt is tasted, the first that is tasted counts as one.
    const auto least = [&](Property property) {
        if (property == Property::sourness_mmol_kg) return context.constant("advice.floor.sourness");
        if (property == Property::salt_pct || property == Property::water_phase_salt_pct) return context.constant("advice.floor.salt");
        return 0.0;
    };
    for (const auto& h : held) {
        const Difference* d = step_of(h.record);
        if (!d || !(d->step.band.mid > 0)) continue;
        const double now = std::max(std::abs(state.properties[h.property]), least_base);
        steps_[h.property] = d->relative ? std::max(d->step.band.mid * now, least(h.property)) : d->step.band.mid;
    }
    const auto value = [&](std::string_view record) { return step_of(record) ? step_of(record)->step.band.mid : 1.0; };
    colour_step_ = value("colour");
    aroma_step_ = value("aroma");
    dose_step_ = std::log1p(value("dose"));
    batch_step_ = value("batch_g");
    heat_step_ = std::log1p(value("heat_mg_kg"));
    heat_floor_ = context.constant("advice.floor.heat");
    for (std::size_t d = 0; d < std::size(doses); ++d) dose_floors_[d] = context.constant(doses[d].floor);
    want_weight_ = context.constant("advice.weight.want");
    steps_[Property::heat_mg_kg] = value("heat_mg_kg") * std::max(state.properties[Property::heat_mg_kg], heat_floor_);
    steps_[Property::greenness] = colour_step_;
    steps_[Property::cook_loss_pct] = value("cook_loss_pct");
    for (const Property of_meat : {Property::salt_pct_of_meat, Property::fat_pct_of_meat})
        if (const double now = state.properties[of_batch(of_meat)]; now > 0)
            steps_[of_meat] = steps_[of_batch(of_meat)] * state.properties[of_meat] / now;
    for (const auto& goal : goals_) {
        const double now = state.properties[goal.property];
        const bool moves = !goal.condition || shortfall(goal, now, now) > 0;
        for (const Property property : {goal.property, of_batch(goal.property)}) wanted_[property] = wanted_[property] || moves;
    }
    if (any_asks(goals_, Property::greenness, Goal::Kind::at_least)) green_along_ = context.constant("advice.floor.handful");
    ph_serves_ =
        wanted_[Property::bind] || wanted_[Property::firmness] || wanted_[Property::sourness_mmol_kg] || wanted_[Property::greenness];
}

Distance::Distance(const Context& context, const Material& base, const State& state, std::vector<Goal> goals, double want_weight)
    : Distance(context, base, state, std::move(goals)) {
    want_weight_ = want_weight;
}

double Distance::relative_change(double value, double base, double floor, double step) const {
    return std::log((value + floor) / (base + floor)) / step;
}

Residuals Distance::residuals(const Material& batch, const State& state) const {
    Residuals r;
    std::size_t n = 0;
    const auto put = [&](std::string_view what, double value) { r[n++] = {what, value, value}; };
    for (const auto& h : held) {
        const bool free = wanted_[h.property] || (h.property == Property::water_phase_salt_pct && wanted_[Property::salt_pct]) ||
                          (h.property == Property::ph && ph_serves_) ||
                          (h.property == Property::juice && wanted_[Property::fat_pct]);  // who wants it leaner knows that it is drier
        const bool counted = steps_[h.property] > 0 && !free;
        put(h.what, counted ? (state.properties[h.property] - state_.properties[h.property]) / steps_[h.property] : 0);
        if (h.better * r[n - 1].value > 0) r[n - 1].value = 0;
    }
    put("heat", wanted_[Property::heat_mg_kg] ? 0
                                              : relative_change(state.properties[Property::burn_mg_kg],
                                                                state_.properties[Property::burn_mg_kg], heat_floor_, heat_step_));
    // Raw and cooked it is one colour that another leaf changes: each counts half.
    const auto put_colour = [&](std::string_view what, const Lab& now, const Lab& was) {
        put(what, wanted_[Property::greenness] ? 0 : ciede2000(now, was) / colour_step_);
        r[n - 1].value *= std::sqrt(0.5);
    };
    put_colour("colour, rested", state.rested, state_.rested);
    put_colour("colour, cooked", state.cooked, state_.cooked);
    put("aroma", aroma_distance(batch, base_, models_.aroma()) / aroma_step_);
    if (green_along_ > 0) r[n - 1].value *= along_weight;
    const double mass = batch[Amount::mass], base_mass = base_[Amount::mass];
    for (std::size_t d = 0; d < std::size(doses); ++d) {
        const double was = base_[doses[d].amount] / base_mass, now = batch[doses[d].amount] / mass;
        // Who wants it greener takes the taste of a handful of parsley along.
        const double along = doses[d].amount == Amount::dose_nut ? 0 : green_along_;
        put(doses[d].what, relative_change(now > was ? std::max(was, now - along) : now, was, dose_floors_[d], dose_step_));
    }
    put("batch weight", (mass / base_mass - 1) / batch_step_);
    return r;
}

Distance::GoalResidual Distance::aim(const Goal& goal, const State& state) const {
    const double step = unit(goal.property);
    const double value = state.properties[goal.property], base = state_.properties[goal.property];
    // What lies within the slack of a word is met: no more is gained by going the last bit.
    const double slack = goal.condition ? 0 : aimed_within * step;
    const double miss = want_weight_ * std::max(0.0, shortfall(goal, value, base) - slack) / step;
    // Going further than asked is no aim either: it is held back, whatever was free to move. Bind and juice past the word are no fault.
    const bool by_lots = goal.property == Property::heat_mg_kg && goal.kind == Goal::Kind::at_least;
    const double further = by_lots && !goal.condition ? lot_past : goal.condition || of_the_whole_mass(goal.property) ? 1 : word_past;
    const double target = goal.target(base);
    // Heat is tasted by its ratio: who wants it milder does not want a tenth of it.
    const bool milder = goal.property == Property::heat_mg_kg && goal.kind == Goal::Kind::at_most;
    const double above = milder ? relative_change(value, target, heat_floor_, heat_step_) : (value - target) / step;
    const double past = goal.kind == Goal::Kind::at_most ? -above : goal.kind == Goal::Kind::at_least ? above : 0;
    return {miss, wanted_[goal.property] ? past_weight * std::max(0.0, past - further) : 0};
}

double Distance::wants_squared(const State& state) const {
    double sum = 0;
    for (const auto& goal : goals_) {
        const GoalResidual a = aim(goal, state);
        sum += a.miss * a.miss + a.over * a.over;
    }
    return sum;
}

double Distance::square(const Material& batch, const State& state) const {
    double sum = wants_squared(state);
    for (const auto& residual : residuals(batch, state)) sum += residual.value * residual.value;
    return sum;
}

double Distance::of(const Material& batch, const State& state) const { return std::sqrt(square(batch, state)); }

void Distance::rows(const Material& batch, const State& state, std::vector<double>& out) const {
    const Residuals all = residuals(batch, state);
    out.clear();
    for (std::size_t r = 0; r < all.size(); ++r) {
        const double size = all[r].value;
        if (r != rested_at && r != cooked_at) out.push_back(size);
        else
            for (const double part : r == rested_at ? rested_.parts(state.rested, size) : cooked_.parts(state.cooked, size))
                out.push_back(part);
    }
    for (const auto& goal : goals_) {
        const GoalResidual a = aim(goal, state);
        out.push_back(a.miss);
        out.push_back(a.over);
    }
}

std::size_t Distance::row_count() const {
    constexpr std::size_t colours = 2, more_parts = 2, a_goal = 2;
    return residual_count + colours * more_parts + a_goal * goals_.size();
}

// The direction is that of the small steps, the length the true one: near the base the parts are linear in L, a and b.
std::array<double, 3> Distance::ColourFrame::parts(const Lab& to, double size) const {
    const double l = to.L - from.L, a = to.a - from.a, b = to.b - from.b;
    std::array<double, 3> v{factor[0] * l + factor[1] * a + factor[2] * b, factor[3] * a + factor[4] * b, factor[5] * b};
    const double length = std::sqrt(v[0] * v[0] + v[1] * v[1] + v[2] * v[2]);
    for (auto& part : v) part *= length > 0 ? size / length : 0;
    return v;
}

Distance::ColourFrame Distance::frame_of(const Lab& base) {
    constexpr double step = 0.01;  // of L, a, b; far below what can be told apart, far above rounding
    const auto square = [&](double l, double a, double b) {
        const double d = ciede2000(base, {base.L + step * l, base.a + step * a, base.b + step * b}) / step;
        return d * d;
    };
    const double ll = square(1, 0, 0), aa = square(0, 1, 0), bb = square(0, 0, 1);
    const double la = (square(1, 1, 0) - ll - aa) / 2, lb = (square(1, 0, 1) - ll - bb) / 2, ab = (square(0, 1, 1) - aa - bb) / 2;
    constexpr double least = 1e-3;  // keeps the form definite where rounding would not
    const double u = std::sqrt(std::max(ll, least)), ua = la / u, ub = lb / u;
    const double v = std::sqrt(std::max(aa - ua * ua, least)), vb = (ab - ua * ub) / v;
    return {base, {u, ua, ub, v, vb, std::sqrt(std::max(bb - ub * ub - vb * vb, least))}};
}

}  // namespace standin
