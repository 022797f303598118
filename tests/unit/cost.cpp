// What a batch costs, and what a variant saves, worked out by hand beside it.
#include "worksheet/cost.hpp"

#include "standin/engine.hpp"
#include "support/catch.hpp"
#include "support/kitchen.hpp"

using namespace standin;

namespace cost_test {

Engine& engine() {
    static Engine one = opened(64);
    return one;
}

PriceList list(const std::string& text) {
    auto read = engine().read_prices(text, "prices.txt");
    REQUIRE(read);
    return *read;
}

Cost cost(const Formula& f, const std::string& prices) {
    auto made = engine().cost(f, list(prices));
    REQUIRE(made);
    return *made;
}

TEST_CASE("a batch costs what its lines cost", "[cost]") {
    const Formula f = formula({line("pork-shoulder", 1000), line("table-salt", 18), line("water", 30)});
    const Cost c = cost(f, "pork shoulder 6.00/kg\nsalt 1.00/kg");
    CHECK(c.batch.mid == Approx(6.018));
    CHECK(c.raw_kg.mid == Approx(6.018 / 1.048));
    CHECK(c.raw_kg.low == Approx(c.raw_kg.high));
    CHECK(c.cooked_kg.low < c.cooked_kg.mid);
    CHECK(c.cooked_kg.mid > c.raw_kg.mid);
    CHECK(c.unpriced.empty());  // water comes from the tap
    CHECK(c.piece_money.mid == Approx(c.raw_kg.mid * c.piece_g / 1000));
}

TEST_CASE("what is cut away is paid for by weight, not by the bunch", "[cost]") {
    const Formula f = formula({line("pork-shoulder", 1000), line("spinach", 100)});
    const double share = knowledge().ingredient("spinach")->edible->band.mid / 100;
    CHECK(cost(f, "spinach 5.00/kg").batch.mid == Approx(0.5 / share));
    const Cost bunch = cost(f, "spinach 1.50 a bunch");
    CHECK(bunch.batch.low < bunch.batch.mid);
    CHECK(bunch.unpriced == std::vector<std::string>{"pork shoulder"});
}

TEST_CASE("a variant saves the difference and no more", "[cost]") {
    const Formula dear = formula({line("pork-shoulder", 1000), line("pine-nut", 100)});
    const Formula cheap = formula({line("pork-shoulder", 1000), line("sunflower-seed", 100)});
    const PriceList prices = list("pork shoulder 6.00/kg\npine nuts 40/kg\nsunflower seeds 5/kg");
    const auto change = engine().cost_change(dear, cheap, prices);
    REQUIRE(change);
    CHECK(change->raw_kg.mid == Approx((0.5 - 4.0) / 1.1));
    CHECK(change->unpriced.empty());
    const auto back = engine().cost_change(cheap, dear, prices);
    REQUIRE(back);
    CHECK(back->raw_kg.mid == Approx(-change->raw_kg.mid));
    const auto unknown = engine().cost_change(dear, cheap, list("pork shoulder 6.00/kg\npine nuts 40/kg"));
    REQUIRE(unknown);
    CHECK(unknown->unpriced == std::vector<std::string>{knowledge().ingredient("sunflower-seed")->names.front()});
}

TEST_CASE("cost does not care how large the batch is", "[cost]") {
    const Formula one = formula({line("pork-shoulder", 1000), line("spinach", 100)});
    const Formula ten = formula({line("pork-shoulder", 10000), line("spinach", 1000)});
    const std::string prices = "pork shoulder 6.00/kg\nspinach 5.00/kg";
    CHECK(cost(one, prices).raw_kg.mid == Approx(cost(ten, prices).raw_kg.mid));
    CHECK(cost(ten, prices).batch.mid == Approx(10 * cost(one, prices).batch.mid));
}

}  // namespace cost_test
