#include "adapt/distance/difference.hpp"

#include "core/band.hpp"
#include "models/cielab.hpp"

namespace standin {

Differences differences_between(const std::vector<State>& base, const std::vector<State>& variant) {
    std::vector<double> values(base.size());
    const auto over = [&](auto get) {
        for (std::size_t i = 0; i < values.size(); ++i) values[i] = get(variant[i], base[i]);
        return band_of(values);
    };
    Differences d;
    for_each_property(
        [&](Property p) { d.properties[p] = over([&](const State& a, const State& b) { return a.properties[p] - b.properties[p]; }); });
    d.rested = over([](const State& a, const State& b) { return ciede2000(a.rested, b.rested); });
    d.cooked = over([](const State& a, const State& b) { return ciede2000(a.cooked, b.cooked); });
    return d;
}

}  // namespace standin
