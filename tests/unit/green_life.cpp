#include "evaluate/green_life.hpp"

#include "support/catch.hpp"
#include "support/kitchen.hpp"

using namespace standin;

namespace green_life_test {

std::optional<GreenLife> life(double vinegar, double rest_at_c, double spinach = 700) {
    static const Evaluator evaluator(knowledge(), 256, 1);
    Formula made = formula({line("pork-shoulder", 1000), line("table-salt", 17)});
    if (spinach > 0) made.lines.push_back(line("spinach", spinach, {"blanched"}));
    if (vinegar > 0) made.lines.push_back(line("cider-vinegar", vinegar));
    made.process.rest_at_c = rest_at_c;
    return green_life_of(made, NominalBatch(made, evaluator.nominal()), SampledBatch(made, evaluator.sampled()), evaluator);
}

TEST_CASE("acid and warmth shorten the time that a mass stays green") {
    const auto mild = life(0, 3), sour = life(90, 3), warm = life(90, 12);
    REQUIRE(mild);
    REQUIRE(sour);
    REQUIRE(warm);
    CHECK(sour->hours.mid <= mild->hours.mid);
    CHECK(warm->hours.mid <= sour->hours.mid);
    CHECK(warm->hours.mid < mild->hours.mid);
    CHECK(warm->says.find("at 0 C") != std::string::npos);
    CHECK(mild->hours.low <= mild->hours.mid);
}

TEST_CASE("what is not green to begin with has no such time, nor what is called khaki") {
    CHECK_FALSE(life(40, 3, 0));
    CHECK_FALSE(life(0, 3, 150));
}

}  // namespace green_life_test
