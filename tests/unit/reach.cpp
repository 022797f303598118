// How near each want can be come to, by itself and beside the rest.
#include "adapt/infeasibility/reach.hpp"

#include "support/advising.hpp"
#include "support/catch.hpp"
#include "support/knowledge.hpp"

using namespace standin;

namespace reach_test {

std::vector<std::string> reach(const std::vector<std::string>& wants, bool salt_may_move) {
    Formula made = formula({line("pork-shoulder", 2000), line("table-salt", 36), line("serrano", 20)});
    for (auto& one : made.lines) one.keep = !salt_may_move || one.ingredient != "table-salt";
    Advising advising(made, wants);
    const Context context = advising.context();
    AdaptRequest request;
    request.have.emplace();  // nothing can be brought in
    const auto stock = Stock::of(made, request, context);
    const SwapGraph graph(knowledge());
    const Problem problem = make_problem(made, *stock, graph, advising.distance(), context);
    const Rebalancer rebalancer(problem, advising.distance(), advising.models());
    const Shown shown = [&](const Plan& plan, const Goal& goal) {
        return rebalancer.state(rebalancer.total(plan.grams), problem.processes[plan.process]).properties[goal.property];
    };
    PerProperty<Band> start;
    for_each_property([&](Property p) {
        const double value = advising.distance().base().properties[p];
        start[p] = {value, value, value};
    });
    return in_full(reach_of_wants(problem, advising.distance(), advising.models(), shown, start, nullptr));
}

TEST_CASE("a want that can be met says so") {
    const auto all = reach({"less-salty"}, true);
    REQUIRE(all.size() == 1);
    CHECK(all.front().find("less-salty: salt is 1.") == 0);
    CHECK(all.front().find("by the reckoning it can be had") != std::string::npos);  // a lone want has no rest to stand beside
    for (const auto* word : {"beside the rest", "by itself", "with all that is asked"}) CHECK(all.front().find(word) == std::string::npos);
}

TEST_CASE("a want that nothing moves comes to what the batch is") {
    const auto all = reach({"milder"}, true);
    REQUIRE(all.size() == 1);
    CHECK(all.front().find("at best") != std::string::npos);
}

TEST_CASE("with two wants each tells how it fares beside the other") {
    const auto all = reach({"less-salty", "milder"}, true);
    REQUIRE(all.size() == 2);
    for (const auto& says : all) CHECK(says.find("with all that is asked") != std::string::npos);
}

TEST_CASE("without wants there is nothing to reach") { CHECK(reach({}, true).empty()); }

}  // namespace reach_test
