// What can be reached has no holes: whatever is met at one threshold is met at every easier one.
#include <algorithm>
#include <cmath>

#include "support/cases.hpp"
#include "support/catch.hpp"

using namespace standin;

namespace reach_test {

constexpr std::uint64_t formulas = 30;

Engine& engine() {
    static Engine opened = [] {
        Options options;
        options.draws = 16;
        return std::move(*Engine::open(options));
    }();
    return opened;
}

struct Scale {
    Property property;
    const char* asks;             ///< "firmness>="
    std::vector<double> further;  ///< from the base, easiest first: added, or times where `times`
    bool times = false;
};

bool met(const Formula& f, const std::string& want) {
    AdaptRequest request;
    request.wants = {want};
    request.top = 1;
    const auto answer = engine().adapt(f, request).value();
    return !answer.variants.empty() && answer.conflict.empty() &&
           std::all_of(answer.variants.front().wants.begin(), answer.variants.front().wants.end(),
                       [](const WantResult& w) { return w.met; });
}

TEST_CASE("reach: whatever is met at a threshold is met at every easier one", "[reach]") {
    const std::vector<Scale> scales{{Property::firmness, "firmness>=", {4, 9, 14, 20, 28}},
                                    {Property::bind, "bind>=", {5, 12, 20, 30, 42}},
                                    {Property::fat_pct, "fat<=", {0.95, 0.85, 0.7, 0.5}, true},
                                    {Property::sourness_mmol_kg, "sourness>=", {1.1, 1.3, 1.8, 2.5}, true},
                                    {Property::heat_mg_kg, "heat<=", {0.9, 0.6, 0.3, 0.1}, true},
                                    {Property::cook_loss_pct, "loss<=", {-1, -3, -5, -8}}};
    std::size_t asked = 0, refused = 0, holed = 0;
    std::string holes;
    for (std::uint64_t n = 900; n < 900 + formulas; ++n) {
        CaseMaker make(n);
        const Formula f = make.formula();
        const auto base = engine().predict(f).value();
        const Scale& scale = scales[n % scales.size()];
        const double from = base.properties[scale.property].mid;
        if (scale.times && from < 0.2) continue;
        bool easier = true;
        std::string before;
        for (const double step : scale.further) {
            const std::string want = scale.asks + std::to_string(scale.times ? from * step : from + step);
            const bool now = met(f, want);
            if (!easier && now) holes += "\n  " + std::to_string(n) + ": " + before + " refused, " + want + " met";
            holed += !easier && now;
            easier = now;
            before = want;
            ++asked;
            refused += !now;
        }
    }
    WARN(asked << " thresholds, " << refused << " refused, " << holed << " refused though one further was met:" << holes);
    CHECK(static_cast<double>(holed) <= 0.02 * static_cast<double>(asked));
    CHECK(asked > 80);
}

}  // namespace reach_test
