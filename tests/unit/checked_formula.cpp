// Formulas and requests that a program filled by hand: whatever is wrong is said, nothing crashes.
#include "evaluate/checked_formula.hpp"

#include <cmath>
#include <limits>

#include "standin/engine.hpp"
#include "support/catch.hpp"
#include "support/kitchen.hpp"

using namespace standin;

namespace checked_formula_test {

constexpr double no_number = std::numeric_limits<double>::quiet_NaN(), infinite = std::numeric_limits<double>::infinity();

Formula sound() { return formula({line("pork-shoulder", 1000), line("spinach", 100, {"blanched"}), line("table-salt", 18)}); }

template <class Change>
std::string fault_after(Change change) {
    Formula made = sound();
    change(made);
    const auto faults = faults_in(made, knowledge());
    return faults.empty() ? "" : faults.front();
}

bool has(const std::string& text, const std::string& part) { return text.find(part) != std::string::npos; }

const Engine& engine() {
    static const Engine one = opened(16);
    return one;
}

Setting rules_of(const char* code) {
    Setting setting;
    setting.rules = code;
    return setting;
}

Setting month_of(int month) {
    Setting setting;
    setting.month = month;
    return setting;
}

SheetRequest meat(const char* weight) {
    SheetRequest request;
    request.meat = weight;
    return request;
}

// Every question an engine takes about a formula.
std::size_t refusals(const Formula& made) {
    std::size_t count = 0;
    const auto ask = [&](const auto& answer) { count += !answer.has_value(); };
    ask(engine().predict(made));
    ask(engine().why(made, Property::bind));
    ask(engine().compare({sound(), made}));
    ask(engine().swaps(made, "1"));
    ask(engine().adapt(made, {}));
    ask(engine().sheet(made, {}));
    return count;
}

TEST_CASE("a sound formula has no fault and its foods are at hand") {
    CHECK(faults_in(sound(), knowledge()).empty());
    const auto checked = CheckedFormula::of(sound(), knowledge());
    REQUIRE(checked);
    CHECK(checked->ingredient(1).id == "spinach");
    CHECK(refusals(sound()) == 0);
}

TEST_CASE("what a line may not be") {
    CHECK(has(fault_after([](Formula& f) { f.lines[1].ingredient = "moonstone"; }), "no ingredient has the id \"moonstone\""));
    CHECK(
        has(fault_after([](Formula& f) { f.lines[1].prepared[0].preparation = "bewitched"; }), "no preparation has the id \"bewitched\""));
    CHECK(has(fault_after([](Formula& f) { f.lines[1].prepared[0].minutes = no_number; }), "minutes blanched"));
    CHECK(has(fault_after([](Formula& f) { f.lines[1].prepared[0].minutes = -3; }), "minutes blanched"));
    CHECK(has(fault_after([](Formula& f) { f.lines[0].prepared = {{"seeded", std::nullopt}}; }), "cannot be seeded"));
    CHECK(has(fault_after([](Formula& f) { f.lines[0].grams = exactly(no_number); }), "not a number"));
    CHECK(has(fault_after([](Formula& f) { f.lines[0].grams = exactly(infinite); }), "not a number"));
    CHECK(has(fault_after([](Formula& f) { f.lines[0].grams = exactly(-500); }), "below nothing"));
    CHECK(has(fault_after([](Formula& f) { f.lines[0].grams = exactly(0); }), "grams"));
    CHECK(has(fault_after([](Formula& f) { f.lines[0].grams = exactly(1e9); }), "grams"));
    CHECK(has(fault_after([](Formula& f) { f.lines[0].grams = {900, 1000, 950}; }), "runs backwards"));
    CHECK(has(fault_after([](Formula& f) { f.lines[0].grams = {1100, 1000, 1200}; }), "runs backwards"));
    CHECK(has(fault_after([](Formula& f) { f.lines[0].count = no_number; }), "pieces"));
    CHECK(has(fault_after([](Formula& f) { f.lines[0].count = 0; }), "pieces"));
}

TEST_CASE("what a process may not be") {
    CHECK(has(fault_after([](Formula& f) { f.process.core_c = no_number; }), "core"));
    CHECK(has(fault_after([](Formula& f) { f.process.core_c = 500; }), "core"));
    CHECK(has(fault_after([](Formula& f) { f.process.rest_h = -1; }), "rest"));
    CHECK(has(fault_after([](Formula& f) { f.process.plate_mm = 0; }), "plate"));
    CHECK(has(fault_after([](Formula& f) { f.process.diameter_mm = infinite; }), "diameter"));
    CHECK(has(fault_after([](Formula& f) { f.process.core_curve = {{0, 4}}; }), "two readings"));
    CHECK(has(fault_after([](Formula& f) { f.process.core_curve = {{5, 4}, {2, 70}}; }), "order of time"));
    CHECK(has(fault_after([](Formula& f) { f.process.core_curve = {{0, 4}, {5, no_number}}; }), "temperatures"));
    CHECK(has(fault_after([](Formula& f) { f.process.order = static_cast<Order>(7); }), "order"));
    CHECK(has(fault_after([](Formula& f) { f.process.cook = static_cast<Cook>(-1); }), "cook"));
}

TEST_CASE("text must be text") {
    CHECK(has(fault_after([](Formula& f) { f.title = "\xFF\xFE"; }), "UTF-8"));
    CHECK(has(fault_after([](Formula& f) { f.note = std::string(20000, 'x'); }), "longer"));
    CHECK(has(fault_after([](Formula& f) { f.lines[0].ingredient = "\xC3"; }), "(no text)"));
}

TEST_CASE("every fault is named, and every question refuses the formula") {
    Formula made = sound();
    made.lines[0].grams = exactly(-1);
    made.lines[1].ingredient = "moonstone";
    made.process.core_c = no_number;
    CHECK(faults_in(made, knowledge()).size() == 3);
    const auto refused = engine().predict(made);
    REQUIRE_FALSE(refused);
    CHECK(refused.error().trouble == Trouble::bad_data);
    CHECK(has(refused.error().message, "line 1"));
    CHECK(refused.error().hints.size() == 2);
    CHECK(refusals(made) == 6);
    CHECK(refusals({}) == 6);
    CHECK(refusals(formula({line("spinach", 100), line("pork-shoulder", 5)})) == 6);
}

TEST_CASE("a request is looked at too") {
    AdaptRequest request;
    request.have.emplace();
    request.have->items.push_back({"moonstone", 100.0});
    CHECK_FALSE(engine().adapt(sound(), request));
    request.have->items = {{"spinach", no_number}};
    CHECK_FALSE(engine().adapt(sound(), request));
    request.have->items = {{"spinach", -5.0}};
    CHECK_FALSE(engine().adapt(sound(), request));
    request.have->items.clear();
    request.have->missing = {"moonstone"};
    CHECK_FALSE(engine().adapt(sound(), request));
    request.have.reset();
    request.wants = {"\xFF"};
    CHECK_FALSE(engine().adapt(sound(), request));
    request.wants.clear();
    request.top = 1000000;
    CHECK_FALSE(engine().adapt(sound(), request));
    CHECK_FALSE(engine().sheet(sound(), meat("\xFF")));
    CHECK_FALSE(engine().swaps(sound(), "4"));
    CHECK_FALSE(engine().swaps(sound(), "\xFF\xFF"));
}

TEST_CASE("a question may set its own rules, month and season, and is refused what is not known") {
    CHECK(engine().predict(sound(), rules_of("us")));
    CHECK_FALSE(engine().predict(sound(), rules_of("atlantis")));
    CHECK_FALSE(engine().swaps(sound(), "spinach", {.top = 3}, month_of(13)));
    const auto july = engine().swaps(sound(), "spinach", {.top = 3}, month_of(7));
    REQUIRE(july);
    const auto silent = engine().swaps(sound(), "spinach", {.top = 3});
    REQUIRE(silent);
    CHECK_FALSE(silent->stand_ins.front().in_season);
    std::size_t told = 0;
    AdaptRequest greener;
    greener.wants = {"greener"};
    Setting watched;
    watched.progress = [&](std::size_t, double) { return ++told > 0; };
    REQUIRE(engine().adapt(sound(), greener, watched));
    CHECK(told > 0);
}

}  // namespace checked_formula_test
