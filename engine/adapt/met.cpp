#include "adapt/met.hpp"

#include <algorithm>
#include <cmath>

#include "adapt/explain.hpp"
#include "adapt/request.hpp"

namespace standin {

double allowed(const Goal& goal, const Yardstick& yardstick) {
    const bool strict = goal.condition && goal.kind != Goal::Kind::equal;
    return strict ? 0.002 * std::abs(goal.limit) : met_within * yardstick.unit(goal.property);
}

WantResult judged(const Goal& goal, const Yardstick& yardstick, double before, double after, const std::vector<State>& base,
                  const std::vector<State>& variant) {
    const double slack = allowed(goal, yardstick);
    std::size_t met = 0;
    for (std::size_t i = 0; i < variant.size(); ++i)
        met += shortfall(goal, variant[i].properties[goal.property], base[i].properties[goal.property]) <= slack;
    WantResult result{
        goal.want, shortfall(goal, after, before) <= slack, static_cast<double>(met) / static_cast<double>(variant.size()), {}};
    const char* asked = goal.kind == Goal::Kind::at_least ? " or more" : goal.kind == Goal::Kind::at_most ? " or less" : "";
    const std::string unit(info(goal.property).unit);
    result.says = std::string(info(goal.property).name) + " " + figures(before) + " -> " + figures(after) +
                  (unit.empty() ? "" : " " + unit) + "; asked for " + figures(goal.target(before)) + asked;
    if (!goal.condition) result.says += ", within " + figures(slack) + " counts as met";
    return result;
}

bool meets_all(const Variant& v) {
    return std::all_of(v.wants.begin(), v.wants.end(), [](const WantResult& w) { return w.met; });
}

}  // namespace standin
