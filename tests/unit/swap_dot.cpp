#include "knowledge/index/swap_dot.hpp"

#include "standin/engine.hpp"
#include "support/catch.hpp"
#include "support/knowledge.hpp"

using namespace standin;

namespace swap_dot_test {

Ingredient food(const char* id, const char* name, Role role) {
    Ingredient i;
    i.id = id;
    i.names = {name};
    i.roles = {role};
    return i;
}

Swap edge(const char* from, const char* to, double closeness, Role role = Role::green) {
    Swap s;
    s.role = role;
    s.from = from;
    s.to = to;
    s.closeness = closeness;
    return s;
}

Records four() {
    Records r;
    r.ingredients = {food("a", "leaf \"a\"", Role::green), food("b", "b\\b", Role::green), food("c", "chili", Role::heat),
                     food("d", "d", Role::green)};
    r.swaps = {edge("a", "b", 0.9), edge("b", "a", 0.9), edge("b", "d", 0.5), edge("a", "c", 0.25, Role::heat)};
    Preparation wilted;
    wilted.id = "wilted-leaf";
    wilted.names = {"wilted"};
    r.preparations = {wilted};
    return r;
}

bool has(const std::string& text, std::string_view part) { return text.find(part) != std::string::npos; }

TEST_CASE("the whole graph names every swap, its closeness, and no ingredient without one") {
    Records r = four();
    r.ingredients.push_back(food("idle", "idle", Role::nut));
    const auto text = swap_dot(r, nullptr, std::nullopt);
    CHECK(text.rfind("digraph standin {\n", 0) == 0);
    CHECK(text.substr(text.size() - 2) == "}\n");
    CHECK(has(text, "\"b\" -> \"d\" [label=\"0.50\""));
    CHECK(has(text, "\"a\" -> \"c\" [label=\"0.25\""));
    CHECK_FALSE(has(text, "idle"));
    CHECK(text == swap_dot(r, nullptr, std::nullopt));
}

TEST_CASE("quotes and backslashes of names are escaped") {
    const auto text = swap_dot(four(), nullptr, std::nullopt);
    CHECK(has(text, R"(label="leaf \"a\"")"));
    CHECK(has(text, R"(label="b\\b")"));
}

TEST_CASE("a swap that says the same both ways is one arrow with two heads, from the centre where there is one") {
    const Records r = four();
    const auto whole = swap_dot(r, nullptr, std::nullopt);
    CHECK(has(whole, "\"a\" -> \"b\""));
    CHECK_FALSE(has(whole, "\"b\" -> \"a\""));
    CHECK(has(whole, "dir=both"));
    CHECK(has(swap_dot(r, &r.ingredients[1], std::nullopt), "\"b\" -> \"a\""));
    Records unlike = r;
    unlike.swaps[1].closeness = 0.8;
    CHECK_FALSE(has(swap_dot(unlike, nullptr, std::nullopt), "dir=both"));
}

TEST_CASE("a neighbourhood holds what touches its centre, a role what is in it") {
    const Records r = four();
    const auto near = swap_dot(r, &r.ingredients[0], std::nullopt);
    CHECK(has(near, "\"c\" [label"));
    CHECK_FALSE(has(near, "\"d\""));
    const auto green = swap_dot(r, &r.ingredients[0], Role::green);
    CHECK_FALSE(has(green, "\"c\" [label"));
    CHECK(has(green, "role green"));
    CHECK(swap_dot(r, nullptr, Role::nut).empty());
}

TEST_CASE("a stand-in that must be prepared, or needs something, says so") {
    Records r = four();
    r.swaps[2].prepared = {"wilted-leaf"};
    r.swaps[2].needs = {"cooked"};
    const auto text = swap_dot(r, nullptr, std::nullopt);
    CHECK(has(text, "label=\"0.50 wilted (cooked)\""));
    CHECK(has(text, "style=dashed"));
}

TEST_CASE("the shape tells the main role") {
    const auto text = swap_dot(four(), nullptr, std::nullopt);
    CHECK(has(text, "label=\"chili\", shape=invtrapezium"));
    CHECK(has(text, "label=\"d\", shape=ellipse"));
}

TEST_CASE("an engine draws what a word means, or says what is near") {
    Options options;
    options.draws = 16;
    const auto engine = Engine::open(options);
    REQUIRE(engine);
    REQUIRE(engine->graph("Spinach"));
    CHECK(has(*engine->graph("Spinach"), "\"spinach\" -> \"chard\""));
    CHECK(has(*engine->graph("", Role::salt), "\"table-salt\""));
    const auto unknown = engine->graph("spinich");
    REQUIRE_FALSE(unknown);
    CHECK(unknown.error().trouble == Trouble::unmet);
    REQUIRE_FALSE(unknown.error().hints.empty());
    CHECK_FALSE(engine->graph("spinach", Role::lean));
}

}  // namespace swap_dot_test
