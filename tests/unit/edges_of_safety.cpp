// Places where a small slip would go unnoticed: two readings of a core, a curve of several pieces, a binder by itself, a hair off a
// condition.
#include "adapt/distance/met.hpp"
#include "evaluate/predict.hpp"
#include "models/lethality.hpp"
#include "safety/cap_values.hpp"
#include "support/advising.hpp"
#include "support/catch.hpp"
#include "support/kitchen.hpp"
#include "support/mixture.hpp"

using namespace standin;

TEST_CASE("two readings are a curve of the maker's own, and go before any estimate", "[edges]") {
    const Evaluator evaluator(knowledge(), 16, 1);
    Formula made = formula({line("pork-shoulder", 1000), line("table-salt", 16)});
    made.process.core_c = 74;
    made.process.diameter_mm = 32;
    const auto estimated = predict_formula(made, evaluator).lethality;
    made.process.core_curve = {{0, 5}, {40, 56}};
    const auto read = predict_formula(made, evaluator).lethality;
    REQUIRE(estimated);
    REQUIRE(read);
    CHECK(read->measured);
    CHECK(read->minutes.mid == Approx(40));
    CHECK(read->logs.mid < estimated->logs.mid);
}

TEST_CASE("what a curve kills in poultry is what its pieces kill", "[edges]") {
    const Evaluator evaluator(knowledge(), 16, 1);
    const LethalityParameters& p = evaluator.nominal().models().lethality();
    const std::vector<CorePoint> all{{0, 20}, {60, 60}, {90, 58.5}, {120, 61}}, first{all[0], all[1]}, second{all[1], all[2]},
        third{all[2], all[3]};
    const auto killed = [&](const std::vector<CorePoint>& curve) { return poultry_log_reductions(curve, PoultryColumn::chicken_5, p); };
    const double sum = killed(first) + killed(second) + killed(third);
    CHECK(sum > 0);
    CHECK(sum < p.cap_logs);
    CHECK(killed(all) == Approx(sum));
}

TEST_CASE("a share of binders used up is spoken of only where two kinds share one limit", "[edges]") {
    const auto share = [](const std::vector<std::pair<std::string, double>>& lines) {
        const Prediction p = mixture(lines);
        return binder_share(counted(p, knowledge()), 3.5, 2);
    };
    CHECK_FALSE(share({{"pork-shoulder", 98}, {"soy-protein-isolate", 2}}));
    CHECK_FALSE(share({{"pork-shoulder", 98}, {"rusk", 2}}));
    REQUIRE(share({{"pork-shoulder", 97}, {"rusk", 1.75}, {"soy-protein-isolate", 1}}));
    CHECK(*share({{"pork-shoulder", 97.25}, {"rusk", 1.75}, {"soy-protein-isolate", 1}}) == Approx(1.75 / 3.5 + 1.0 / 2));
}

TEST_CASE("a condition may be missed by a five-hundredth part and no more", "[edges]") {
    for (const auto* condition : {"salt<=1.5", "heat>=4"}) {
        Advising advising(formula({line("pork-shoulder", 1000), line("serrano", 20), line("table-salt", 18)}), {condition});
        const Goal& goal = advising.distance().goals().front();
        CHECK(allowed(goal, advising.distance()) == Approx(goal.limit / 500));
    }
}
