#include "evaluate/lethality_of.hpp"

#include <algorithm>

#include "support/catch.hpp"
#include "support/kitchen.hpp"

using namespace standin;

namespace lethality_of_test {

Prediction cooked(const std::string& meat, const Process& process) {
    static const Evaluator evaluator(knowledge(), 128, 1);
    Formula made = formula({line(meat, 1000), line("table-salt", 16)});
    made.process = process;
    return predict_formula(made, evaluator);
}

Process core(double celsius) {
    Process process;
    process.core_c = celsius;
    process.diameter_mm = 32;
    return process;
}

TEST_CASE("a hotter core kills more, up to the cap of the tables") {
    const auto warm = cooked("pork-shoulder", core(60)).lethality, hot = cooked("pork-shoulder", core(71)).lethality;
    REQUIRE(warm);
    REQUIRE(hot);
    CHECK(warm->logs.mid < 1);
    CHECK(hot->logs.mid > 6);
    CHECK(hot->logs.high <= 7);
    CHECK(hot->minutes.mid > warm->minutes.mid);
    CHECK(hot->says.find("not permission") != std::string::npos);
}

TEST_CASE("the maker's own readings count before any estimate") {
    Process process = core(71);
    process.core_curve = {{0, 4}, {10, 62}, {40, 62}};
    const auto held = cooked("pork-shoulder", process).lethality;
    REQUIRE(held);
    CHECK(held->measured);
    CHECK(held->minutes.mid == Approx(40));
    // 30 minutes at 62 C are 30 * 60 * 10^((62-70)/5.56) = 65 s at 70 C, over 1.69 s and the margin of 1.5: past the cap
    CHECK(held->logs.mid == Approx(7));
    process.core_curve = {{0, 4}, {10, 61}, {11, 61}};
    const auto brief = cooked("pork-shoulder", process).lethality;
    CHECK(brief->logs.mid < 1.5);
    CHECK(brief->logs.mid > 0.2);
}

TEST_CASE("poultry goes by its own table, and where there is none nothing is said") {
    const auto chicken = cooked("chicken-breast", core(73)).lethality, pork = cooked("pork-shoulder", core(73)).lethality;
    REQUIRE(chicken);
    CHECK(chicken->table.find("poultry") != std::string::npos);
    CHECK(chicken->logs.low <= pork->logs.low);
    const auto duck = cooked("duck", core(74));
    CHECK_FALSE(duck.lethality);
    REQUIRE_FALSE(duck.notes.empty());
    CHECK(in_full(duck.notes.back()).find("No published table") != std::string::npos);
}

TEST_CASE("game, rabbit, liver and fish go by no red meat table") {
    for (const auto* meat : {"venison", "rabbit", "pork-liver", "cod", "shrimp"}) {
        INFO(meat);
        CHECK_FALSE(cooked(meat, core(74)).lethality);
    }
    CHECK(cooked("beef-chuck", core(72)).lethality);
}

TEST_CASE("a core that warms longer than the rule allows gets no figure, and says why") {
    Process process = core(72);
    process.cook = Cook::poach;
    process.diameter_mm = 250;
    const auto slow = cooked("pork-shoulder", process);
    CHECK_FALSE(slow.lethality);
    REQUIRE(slow.warming_h);
    CHECK(*slow.warming_h > 6);
    CHECK(std::any_of(slow.notes.begin(), slow.notes.end(), [](const auto& n) { return in_full(n).find("toxins") != std::string::npos; }));
    process.diameter_mm = 32;
    const auto quick = cooked("pork-shoulder", process);
    CHECK(quick.lethality);
    CHECK(*quick.warming_h < 1);
    process.core_curve = {{0, 4}, {600, 60}, {620, 72}};
    CHECK(*cooked("pork-shoulder", process).warming_h == Approx(10 * (54.4 - 10) / 56));
}

TEST_CASE("where the table for fat poultry ends there is no figure instead of a small one") {
    static const Evaluator evaluator(knowledge(), 64, 1);
    for (const double skin : {0.0, 60.0, 120.0, 200.0}) {
        Formula made = formula({line("chicken-breast", 1000 - skin), line("chicken-skin", skin), line("table-salt", 16)});
        made.process = core(74);
        const auto p = predict_formula(made, evaluator);
        INFO(skin);
        if (p.lethality) CHECK(p.lethality->logs.mid == Approx(7));
        else CHECK(in_full(p.notes.back()).find("only the core temperature counts") != std::string::npos);
    }
}

TEST_CASE("no more is promised than the low end of the band bears") {
    for (double celsius = 60; celsius <= 76; celsius += 1) {
        const auto found = cooked("pork-shoulder", core(celsius)).lethality;
        REQUIRE(found);
        INFO(found->says);
        CHECK(found->says.find("at least") == std::string::npos);
        CHECK((found->says.find("where the count stops") != std::string::npos) == (found->logs.mid >= 6.95));
        if (found->logs.low < 6.9 && found->logs.high >= 6.95) CHECK(found->says.find("-7.0)") != std::string::npos);
    }
}

}  // namespace lethality_of_test
