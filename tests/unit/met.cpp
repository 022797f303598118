// Met is judged on the draws.
#include "adapt/distance/met.hpp"

#include "core/band.hpp"
#include "support/advising.hpp"
#include "support/catch.hpp"

using namespace standin;

namespace met_test {

// Ten draws of a batch whose heat is 1, 2, ... 10.
std::vector<State> draws(double times = 1) {
    std::vector<State> all(10);
    for (std::size_t i = 0; i < all.size(); ++i) all[i].properties[Property::heat_mg_kg] = times * static_cast<double>(i + 1);
    return all;
}

Formula hot() { return formula({line("pork-shoulder", 1000), line("serrano", 20), line("table-salt", 18)}); }

WantResult asked(const std::string& want, double sure) {
    Advising advising(hot(), {want});
    return standin::judged(advising.distance().goals().front(), advising.distance(), 5, exactly(5), draws(), draws(), sure);
}

TEST_CASE("met: yes beside less than an even chance does not exist") {
    for (const char* want : {"heat<=3", "heat<=5", "heat<=8", "heat>=2", "heat>=6", "heat>=9"})
        for (const double sure : {0.5, 0.8}) {
            const WantResult result = asked(want, sure);
            CAPTURE(want, sure, result.chance);
            CHECK(result.met == (result.chance >= sure - 1e-9));
        }
}

TEST_CASE("met: who wants to be surer is told no where half would have done") {
    CHECK(asked("heat<=6", 0.5).met);
    CHECK_FALSE(asked("heat<=6", 0.8).met);
    CHECK(asked("heat<=8", 0.8).met);
}

TEST_CASE("met: a word moves with its base, draw by draw") {
    Advising advising(hot(), {"milder"});
    const Goal& goal = advising.distance().goals().front();
    CHECK(missed_by(goal, advising.distance(), draws(), draws(0.5), 0.99) <= 0);
    CHECK(missed_by(goal, advising.distance(), draws(), draws(0.9), 0.5) > 0);
}

}  // namespace met_test
