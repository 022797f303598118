#include "substitute/conditions.hpp"

#include <algorithm>

#include "substitute/stand_ins.hpp"
#include "support/catch.hpp"
#include "support/kitchen.hpp"

using namespace standin;

namespace conditions_test {

Swap swap_that_needs(std::vector<std::string> needs) {
    Swap swap;
    swap.needs = std::move(needs);
    return swap;
}

Process mixed_at(double c) {
    Process process;
    process.mixed_at_c = c;
    return process;
}

std::vector<Candidate> stand_ins(const Line& line, const Process& process) {
    static const SwapGraph graph(knowledge());
    Formula batch = formula({line, ::line("pork-shoulder", 2000)});
    batch.process = process;
    return candidates_for(batch, 0, graph, nominal(), [](const Ingredient&) { return true; }).fit;
}

const Candidate* find(const std::vector<Candidate>& all, std::string_view ingredient) {
    const auto found = std::find_if(all.begin(), all.end(), [&](const Candidate& c) { return c.food.ingredient == ingredient; });
    return found == all.end() ? nullptr : &*found;
}

TEST_CASE("a condition on the process rules a swap out only where the maker says otherwise") {
    const Swap soft_fat = swap_that_needs({"kept-cold"});
    CHECK(conditions_allow(soft_fat, {}, knowledge()));
    CHECK(conditions_allow(soft_fat, mixed_at(7), knowledge()));
    CHECK_FALSE(conditions_allow(soft_fat, mixed_at(7.5), knowledge()));
    Process rare;
    rare.core_c = 63;
    CHECK_FALSE(conditions_allow(swap_that_needs({"cooked"}), rare, knowledge()));
    CHECK(conditions_allow(soft_fat, rare, knowledge()));
}

TEST_CASE("the maker is asked to see to what the process does not say") {
    const Swap soft_fat = swap_that_needs({"kept-cold"});
    REQUIRE(conditions_ask(soft_fat, {}, knowledge()).size() == 1);
    CHECK(conditions_ask(soft_fat, {}, knowledge()).front().find("7 C") != std::string::npos);
    CHECK(conditions_ask(soft_fat, mixed_at(2), knowledge()).empty());
    CHECK(conditions_ask(swap_that_needs({"added-late"}), mixed_at(2), knowledge()).size() == 1);
}

TEST_CASE("a condition that a preparation meets prepares the stand-in") {
    CHECK(conditions_prepare(swap_that_needs({"soaked", "ground-fine"}), knowledge()) == std::vector<std::string>{"soaked", "ground"});
    CHECK(conditions_ask(swap_that_needs({"soaked"}), {}, knowledge()).empty());
    const auto all = stand_ins(line("breadcrumb", 100), {});
    const auto* bulgur = find(all, "bulgur");
    REQUIRE(bulgur);
    REQUIRE(bulgur->food.prepared.size() == 1);
    CHECK(bulgur->food.prepared.front().preparation == "soaked");
}

TEST_CASE("stand-ins whose condition the process goes against are not proposed") {
    CHECK(find(stand_ins(line("lard", 100), {}), "duck-fat"));
    CHECK_FALSE(find(stand_ins(line("lard", 100), mixed_at(10)), "duck-fat"));
    CHECK(find(stand_ins(line("lard", 100), mixed_at(10)), "beef-tallow"));
}

}  // namespace conditions_test
