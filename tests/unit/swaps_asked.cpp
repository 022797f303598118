// What the maker leaves out or has on hand when asking for stand-ins of one line.
#include <algorithm>

#include "standin/engine.hpp"
#include "support/catch.hpp"

using namespace standin;

namespace swaps_asked_test {

const char* const nutty =
    "Quarry test sausage, invented\n2000 g pork shoulder\n100 g spinach, blanched 2 min\n80 g walnut, toasted\n60 g breadcrumbs\n"
    "34 g salt\n";

const Engine& engine() {
    static const Engine built_in = [] {
        Options options;
        options.draws = 32;
        return Engine::open(std::move(options)).value();
    }();
    return built_in;
}

Formula read() { return engine().read_formula(nutty, "test.txt").value(); }

bool offers(const SwapsAnswer& answer, std::string_view food) {
    return std::any_of(answer.stand_ins.begin(), answer.stand_ins.end(),
                       [&](const StandIn& s) { return s.ingredient == food || (s.partner && s.partner->ingredient == food); });
}

TEST_CASE("swaps: what is left out is not offered, beside nothing of its kind, and no new allergen comes in its place") {
    const Formula formula = read();
    const auto all = engine().swaps(formula, "walnut", {.top = 100}).value();
    const auto without = engine().swaps(formula, "walnut", {.top = 100, .without = {"nuts"}}).value();
    CHECK(offers(all, "hazelnut"));
    CHECK_FALSE(offers(without, "hazelnut"));
    CHECK_FALSE(offers(without, "almond"));
    CHECK_FALSE(offers(without, "sesame-seed"));
    CHECK(offers(without, "pumpkin-seed"));
    REQUIRE(without.excluded.size() == 1);
    CHECK(without.excluded.front().lines == std::vector<std::string>{"walnut"});
    CHECK(all.excluded.empty());
}

TEST_CASE("swaps: bread sold as gluten-free stands in where gluten is left out, and its packet is to be looked at") {
    const auto answer = engine().swaps(read(), "breadcrumb", {.top = 100, .without = {"gluten"}}).value();
    CHECK(offers(answer, "gluten-free-breadcrumb"));
    for (const auto wheat : {"panko", "rusk", "wheat-flour", "fresh-breadcrumb"}) CHECK_FALSE(offers(answer, wheat));
}

TEST_CASE("swaps: of a list only what it names, and where there is too little of it that is said") {
    const Formula formula = read();
    SwapsRequest request;
    request.have = engine().read_inventory("chard 60 g\nkale plenty\n", "list", &formula).value();
    const auto answer = engine().swaps(formula, "spinach", request).value();
    REQUIRE(offers(answer, "chard"));
    CHECK(offers(answer, "kale"));
    CHECK_FALSE(offers(answer, "nettle"));
    for (const auto& s : answer.stand_ins) CHECK(s.on_hand.has_value() == (s.ingredient == "chard"));
}

TEST_CASE("swaps: a word to leave out that nothing is known by is refused") {
    CHECK_FALSE(engine().swaps(read(), "walnut", {.without = {"zorble"}}));
}

}  // namespace swaps_asked_test
