// Weights that no swap says: the way back of one that is said, and the pod that brings the rest of the heat.
#include "support/catch.hpp"
#include "support/kitchen.hpp"

using namespace standin;

namespace weights_by_rule_test {

const Swap& swap_of(const char* from, const char* to) {
    for (const auto& swap : knowledge().records().swaps)
        if (swap.from == from && swap.to == to && swap.basis == Basis::weight) return swap;
    FAIL(from << " > " << to);
    throw;
}

TEST_CASE("a weight that only the way back says is its reciprocal") {
    for (const auto& [one, other] : {std::pair("asafoetida", "garlic-powder"), std::pair("lovage", "celery-leaf"),
                                     std::pair("bell-pepper-flakes", "bell-green"), std::pair("cardamom", "ginger")}) {
        CAPTURE(one, other);
        const Band there = swap_of(one, other).ratio->band, back = swap_of(other, one).ratio->band;
        CHECK(there.mid * back.mid == Approx(1));
        CHECK(there.low * back.high == Approx(1));
        CHECK(swap_of(one, other).ratio->source == swap_of(other, one).ratio->source);
    }
}

TEST_CASE("sweet flesh with a hot pod beside it is as hot as the chile it stands in for") {
    std::size_t pairs = 0;
    const auto heat = [](const std::string& id) {
        const auto& held = knowledge().ingredient(id)->capsaicinoids;
        return held ? held->band.mid : 0;
    };
    for (const auto& swap : knowledge().records().swaps) {
        // What is said has a spread; what is reckoned has none of its own.
        if (swap.role != Role::heat || !swap.partner || swap.partner->ratio.band.low < swap.partner->ratio.band.mid) continue;
        CAPTURE(swap.from, swap.to, swap.partner->ingredient);
        CHECK(swap.ratio->band.mid * heat(swap.to) + swap.partner->ratio.band.mid * heat(swap.partner->ingredient) ==
              Approx(heat(swap.from)).epsilon(0.01));
        ++pairs;
    }
    CHECK(pairs > 30);
}

}  // namespace weights_by_rule_test
