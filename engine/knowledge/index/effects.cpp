#include "knowledge/index/effects.hpp"

#include <algorithm>

namespace standin {

bool has_step(const std::vector<Prepared>& steps, std::string_view preparation) {
    return std::any_of(steps.begin(), steps.end(), [&](const Prepared& step) { return step.preparation == preparation; });
}

const PreparationEffect* effect_on(const Preparation& preparation, Tissue tissue) {
    const PreparationEffect* fallback = nullptr;
    for (const auto& effect : preparation.effects) {
        if (effect.tissues.empty()) fallback = &effect;
        if (std::find(effect.tissues.begin(), effect.tissues.end(), tissue) != effect.tissues.end()) return &effect;
    }
    return fallback;
}

Band at_minutes(const std::vector<Point>& points, std::optional<double> minutes) {
    if (points.empty()) return {1, 1, 1};
    const auto later =
        std::find_if(points.begin(), points.end(), [&](const Point& p) { return !minutes || !p.minutes || *p.minutes >= *minutes; });
    if (later == points.end()) return points.back().value;
    if (later == points.begin() || !minutes) return later->value;
    const Point& a = *(later - 1);
    const double share = (*minutes - *a.minutes) / (*later->minutes - *a.minutes);
    const auto between = [&](double x, double y) { return x + share * (y - x); };
    return {between(a.value.low, later->value.low), between(a.value.mid, later->value.mid), between(a.value.high, later->value.high)};
}

Band kept_share(const PreparationEffect& effect, Kept what, std::optional<double> minutes) {
    for (const auto& kept : effect.kept)
        if (kept.what == what) return at_minutes(kept.points, minutes);
    return {1, 1, 1};
}

}  // namespace standin
