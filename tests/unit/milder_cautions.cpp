// A caution that was there before and is less severe now is not new; a core that is right but for rounding is no fault.
#include <algorithm>

#include "safety/page.hpp"
#include "standin/engine.hpp"
#include "support/catch.hpp"
#include "support/kitchen.hpp"

using namespace standin;

namespace milder_cautions_test {

const Engine& engine() {
    static const Engine opened_once = opened(64);
    return opened_once;
}

Prediction of(double lime, double core = 71.1) {
    Formula mass = formula({line("pork-shoulder", 1000), line("table-salt", 18), line("lime-juice", lime)});
    mass.process.core_c = core;
    return engine().predict(mass).value();
}

const CautionText* found(const std::vector<CautionText>& all, const std::string& start) {
    const auto at = std::find_if(all.begin(), all.end(), [&](const CautionText& c) { return c.id.starts_with(start); });
    return at == all.end() ? nullptr : &*at;
}

TEST_CASE("cautions: a milder limit on the same value is not new, a harder one is", "[cautions]") {
    const Prediction sour = of(130), less = of(70);
    const CautionText *set = found(sour.cautions, "acid-set"), *softer = found(less.cautions, "acid-crumbly");
    REQUIRE(set);
    REQUIRE(softer);
    CHECK(is_milder(*softer, *set));
    CHECK_FALSE(is_milder(*set, *softer));
    CHECK_FALSE(found(new_cautions(sour, less), "acid-crumbly"));
    CHECK(found(new_cautions(less, sour), "acid-set"));
}

TEST_CASE("cautions: 71 C is the core that 160 F asks for, 70 C is below it", "[cautions]") {
    CHECK_FALSE(found(of(20, 71).cautions, "core-low"));
    const Prediction low = of(20, 70);
    REQUIRE(found(low.cautions, "core-low"));
    CHECK(found(low.cautions, "core-low")->text.find("told for 71.1 C") != std::string::npos);
}

}  // namespace milder_cautions_test
