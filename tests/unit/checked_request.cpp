// Requests that a program filled by hand: every question looks at its own, and nothing crashes.
#include "evaluate/checked_request.hpp"

#include <limits>

#include "standin/engine.hpp"
#include "support/catch.hpp"
#include "support/kitchen.hpp"

using namespace standin;

namespace checked_request_test {

constexpr double no_number = std::numeric_limits<double>::quiet_NaN();

Formula sound() { return formula({line("pork-shoulder", 1000), line("spinach", 100, {"blanched"}), line("table-salt", 18)}); }

const Engine& engine() {
    static const Engine one = opened(16);
    return one;
}

template <class Request, class Change>
std::string fault_after(Request request, Change change) {
    change(request);
    const auto faults = faults_in(request, knowledge());
    return faults.empty() ? "" : faults.front();
}

bool has(const std::string& text, const std::string& part) { return text.find(part) != std::string::npos; }

MendRequest salty() {
    MendRequest request;
    request.tasted = {"too salty"};
    return request;
}

PlanRequest one_batch() {
    PlanRequest request;
    request.formulas = {sound()};
    return request;
}

TEST_CASE("most and least of a food that nobody knows, and of no number") {
    const auto adapt = [](auto change) { return fault_after(AdaptRequest{}, change); };
    CHECK(has(adapt([](AdaptRequest& r) { r.least = {{"moonstone", 5.0}}; }), "moonstone"));
    CHECK(has(adapt([](AdaptRequest& r) { r.most = {{"moonstone", 5.0}}; }), "moonstone"));
    CHECK(has(adapt([](AdaptRequest& r) { r.most = {{"spinach", no_number}}; }), "grams"));
    CHECK(has(adapt([](AdaptRequest& r) { r.least = {{"spinach", -1.0}}; }), "grams"));
    CHECK(adapt([](AdaptRequest& r) { r.most = {{"spinach", 50.0}}; }).empty());
    AdaptRequest request;
    request.least = {{"moonstone", 5.0}};
    CHECK_FALSE(engine().adapt(sound(), request));
}

TEST_CASE("an idea of one's own is text, and sure is a share") {
    const auto adapt = [](auto change) { return fault_after(AdaptRequest{}, change); };
    CHECK(has(adapt([](AdaptRequest& r) { r.use = {{"\xFF", "spinach"}}; }), "UTF-8"));
    CHECK(has(adapt([](AdaptRequest& r) { r.use = {{"chard", "\xFF"}}; }), "UTF-8"));
    CHECK(has(adapt([](AdaptRequest& r) { r.sure = no_number; }), "share"));
    CHECK(has(adapt([](AdaptRequest& r) { r.sure = 1.5; }), "share"));
    AdaptRequest request;
    request.use = {{"moonstone", "spinach"}};
    CHECK_FALSE(engine().adapt(sound(), request));
    request.use = {{"chard", "moonstone"}};
    CHECK_FALSE(engine().adapt(sound(), request));
}

TEST_CASE("mending and planning look at their requests too") {
    const auto mending = [](auto change) { return fault_after(salty(), change); };
    CHECK(mending([](MendRequest&) {}).empty());
    CHECK(has(mending([](MendRequest& r) { r.sure = -0.1; }), "share"));
    CHECK(has(mending([](MendRequest& r) { r.tasted = {"\xFF"}; }), "UTF-8"));
    CHECK(has(mending([](MendRequest& r) { r.top = 1000; }), "variants"));
    MendRequest request = salty();
    request.have.emplace();
    request.have->missing = {"moonstone"};
    CHECK_FALSE(mend(engine(), sound(), request));
    request = salty();
    request.made = "\xFF";
    CHECK_FALSE(mend(engine(), sound(), request));

    const auto planning = [](auto change) { return fault_after(one_batch(), change); };
    CHECK(planning([](PlanRequest&) {}).empty());
    CHECK(has(planning([](PlanRequest& r) { r.make = {{1, "1 kg"}}; }), "no formula"));
    CHECK(has(planning([](PlanRequest& r) { r.without = {"\xFF"}; }), "UTF-8"));
    PlanRequest plan_request = one_batch();
    plan_request.have.items = {{"moonstone", 5.0}};
    CHECK_FALSE(plan(engine(), plan_request));
}

TEST_CASE("a list is read for a sound formula alone, and no property is beyond the last") {
    Formula broken = sound();
    broken.lines[1].ingredient = "moonstone";
    CHECK_FALSE(engine().read_inventory("spinach 200 g\n", "list", &broken));
    const Formula whole = sound();
    CHECK(engine().read_inventory("spinach 200 g\n", "list", &whole));
    CHECK_FALSE(engine().why(sound(), static_cast<Property>(property_count)));
    // Written out, a food that nobody knows keeps its id.
    CHECK(has(engine().formula_text(broken), "moonstone"));
    CHECK(has(engine().formula_json(broken), "moonstone"));
    CHECK(has(engine().formula_jsonld(broken), "moonstone"));
    broken.process.order = static_cast<Order>(7);
    broken.process.cook = static_cast<Cook>(9);
    CHECK(has(engine().formula_text(broken), "moonstone"));
}

}  // namespace checked_request_test
