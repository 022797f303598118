// Ways of making as levers: what a want makes worth doing otherwise.
#include "adapt/moves/making.hpp"

#include <algorithm>

#include "support/advising.hpp"
#include "support/catch.hpp"

using namespace standin;

namespace making_test {

using About = ReasonKind;

Formula mass(const Process& process) {
    Formula made =
        formula({line("pork-shoulder", 2000), line("table-salt", 36), line("spinach", 300, {"blanched"}), line("cider-vinegar", 60)});
    made.process = process;
    return made;
}

bool changes(const ProcessOption& way, About about) {
    return std::any_of(way.changes.begin(), way.changes.end(), [&](const Reason& c) { return c.kind == about; });
}

Process hasty() {
    Process process;
    process.order = Order::all_together;
    process.mixing_min = 1;
    process.mixed_at_c = 8;
    return process;
}

Process careful() {
    Process process;
    process.order = Order::salt_first;
    process.mixing_min = 3;
    process.mixed_at_c = 2;
    return process;
}

std::vector<ProcessOption> ways(const Process& process, const std::vector<std::string>& wants, const Knowledge& known = knowledge()) {
    Advising advising(mass(process), wants, known);
    return ways_of_making(advising.formula(), advising.distance(), advising.context());
}

TEST_CASE("without a want the batch is made as it was, at no price") {
    const auto all = ways(hasty(), {});
    REQUIRE(all.size() == 1);
    CHECK(all.front().changes.empty());
    CHECK(all.front().price == 0);
    CHECK(all.front().process.mixing_min == 1);
}

TEST_CASE("who wants it firmer is told to salt first, mix longer and colder, once for all and only where it is not done") {
    const auto all = ways(hasty(), {"firmer"});
    for (const auto& way : all) {
        CHECK(changes(way, About::order));
        CHECK(changes(way, About::mixing));
        CHECK(changes(way, About::cold));
        CHECK(way.process.mixing_min == 3);
    }
    CHECK(all.front().price == knowledge().parameter("advice.price.process").mid);
    const auto done = ways(careful(), {"firmer"});
    CHECK(done.front().changes.empty());
    CHECK(done.front().price == 0);
}

TEST_CASE("the state of a way is that of its own process") {
    const auto all = ways(hasty(), {"firmer"});
    for (const auto& way : all) CHECK(way.state.mixing_min == nominal().process(way.process).mixing_min);
}

TEST_CASE("a finer plate is offered only where the models say that it moves what is wanted") {
    Process coarse = careful();
    coarse.plate_mm = 10;
    const auto offers_plate = [](const std::vector<ProcessOption>& all) {
        return std::any_of(all.begin(), all.end(), [](const ProcessOption& way) { return changes(way, About::plate); });
    };
    const auto with_power = [](double power) {
        return changed([&](Records& r) {
            for (auto& p : r.parameters)
                if (p.id == "bind.plate.power" || p.id == "bind.firmness.plate") p.quantity.band = {power, power, power};
        });
    };
    const Knowledge none = with_power(0), strong = with_power(-0.6);
    CHECK_FALSE(offers_plate(ways(coarse, {"firmer"}, none)));
    const auto all = ways(coarse, {"firmer"}, strong);
    REQUIRE(offers_plate(all));
    CHECK_FALSE(changes(all.front(), About::plate));
    for (const auto& way : all)
        if (changes(way, About::plate)) {
            CHECK(*way.process.plate_mm < 10);
            CHECK(*way.process.plate_mm >= 4.5);
            CHECK(way.price == Approx(all.front().price + strong.parameter("advice.price.plate").mid));
        }
    CHECK_FALSE(offers_plate(ways(coarse, {"milder"}, strong)));
}

TEST_CASE("greener rests cold and, where that tells, shorter; never below what is said already") {
    Process process;
    process.rest_h = 36;
    process.rest_at_c = 6;
    const auto all = ways(process, {"greener"});
    for (const auto& way : all) {
        CHECK(changes(way, About::rest_cold));
        CHECK(*way.process.rest_at_c == 2);
        CHECK(*way.process.rest_h <= 36);
    }
    process.rest_at_c = 1;
    for (const auto& way : ways(process, {"greener"})) CHECK_FALSE(changes(way, About::rest_cold));
}

TEST_CASE("who wants it juicier cooks no hotter than the most demanding meat needs, and never cooler") {
    Process process;
    process.core_c = 82;
    const auto all = ways(process, {"juicier"});
    REQUIRE(changes(all.front(), About::core));
    CHECK(*all.front().process.core_c == Approx(71.1).margin(0.2));  // ground pork, USDA FSIS
    process.core_c = 71.1;
    CHECK_FALSE(changes(ways(process, {"juicier"}).front(), About::core));
    Formula poultry = mass({});
    poultry.process.core_c = 82;
    poultry.lines.push_back(line("chicken-thigh", 500));
    Advising advising(poultry, {"juicier"});
    const auto with_poultry = ways_of_making(advising.formula(), advising.distance(), advising.context());
    CHECK(*with_poultry.front().process.core_c == Approx(73.9).margin(0.2));  // poultry, USDA FSIS
}

}  // namespace making_test
