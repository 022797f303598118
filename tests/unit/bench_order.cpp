// Preparations put in order: nothing lost, nothing out of turn, alike done together.
#include <map>

#include "support/catch.hpp"
#include "support/kitchen.hpp"
#include "worksheet/order.hpp"

using namespace standin;

namespace bench_order_test {

std::vector<std::string> words(const std::vector<Job>& jobs, const std::vector<Chain>& chains) {
    std::vector<std::string> all;
    for (const auto& job : jobs) {
        std::string word = job.step.preparation + ":";
        for (const auto& [chain, step] : job.of) word += " " + std::to_string(chains[chain].line);
        all.push_back(word);
    }
    return all;
}

std::vector<std::string> order_of(const std::vector<Line>& lines) {
    const auto chains = chains_of(formula(lines), knowledge());
    return words(jobs_of(chains, knowledge()), chains);
}

TEST_CASE("leaves that are blanched alike are blanched together, though one has to be stemmed first") {
    CHECK(order_of({line("spinach", 300, {"blanched", "squeezed"}), line("chard", 200, {"stemmed", "blanched", "squeezed"})}) ==
          std::vector<std::string>{"stemmed: 1", "blanched: 0 1", "squeezed: 0 1"});
}

TEST_CASE("other minutes are another pot") {
    auto chard = line("chard", 200);
    chard.prepared = {{"blanched", 3.0}};
    CHECK(order_of({line("spinach", 300, {"blanched"}), chard}) == std::vector<std::string>{"blanched: 1", "blanched: 0"});
}

TEST_CASE("what takes longest begins first, the knife comes last") {
    CHECK(order_of({line("parsley", 100, {"chopped"}), line("pumpkin-seed", 80, {"toasted"}), line("breadcrumb", 100, {"soaked"}),
                    line("poblano", 300, {"roasted-peeled"})}) ==
          std::vector<std::string>{"soaked: 2", "roasted-peeled: 3", "toasted: 1", "chopped: 0"});
}

TEST_CASE("two lines that want the same two steps in opposite order come to an end") {
    const std::vector<Line> lines{line("spinach", 100, {"blanched", "chopped"}), line("chard", 100, {"chopped", "blanched"})};
    const auto chains = chains_of(formula(lines), knowledge());
    std::map<std::size_t, std::size_t> next;
    std::size_t done = 0;
    for (const auto& job : jobs_of(chains, knowledge()))
        for (const auto& [chain, step] : job.of) {
            CHECK(next[chain]++ == step);
            ++done;
        }
    CHECK(done == 4);
}

TEST_CASE("weights follow the preparations; what was weighed prepared is reckoned back") {
    auto weighed_after = line("spinach", 160, {"blanched", "squeezed"});
    weighed_after.weighed_prepared = true;
    const auto chains = chains_of(formula({line("spinach", 300, {"blanched", "squeezed"}), weighed_after}), knowledge());
    REQUIRE(chains.size() == 2);
    CHECK(chains[0].grams.front() == Approx(300));
    CHECK(chains[0].grams[1] == Approx(0.97 * 300).epsilon(0.01));  // blanched thin leaf: yield 0.97 in knowledge/preparations.json
    CHECK(chains[1].grams.back() == Approx(160));
    CHECK(chains[1].grams.front() / 160 == Approx(300 / chains[0].grams.back()));
}

TEST_CASE("a little herb and garlic is chopped, much leaf is blended") {
    static const auto engine = Engine::open({});
    const auto task = [&](const std::string& beside) {
        const auto read = engine->read_formula("Hill sausage\n4 kg pork shoulder\n1 kg pork back fat\n85 g salt\n" + beside, "f");
        const Sheet sheet = engine->sheet(read.value(), {}).value();
        const auto made = std::find_if(sheet.steps.begin(), sheet.steps.end(), [](const SheetStep& s) { return s.id == "paste"; });
        return made == sheet.steps.end() ? BenchTask::weigh : made->task;
    };
    CHECK(task("30 g rosemary\n30 g garlic\n80 g walnuts\n") == BenchTask::cut_small);
    CHECK(task("30 g parsley, pureed\n30 g garlic\n") == BenchTask::blend);
    CHECK(task("600 g spinach, blanched, squeezed\n30 g garlic\n") == BenchTask::blend);
    CHECK(task("600 g poblano, roasted and peeled\n30 g garlic\n") == BenchTask::blend);
}

TEST_CASE("what the grinder or the blender does anyway is no step of its own") {
    CHECK(order_of({line("pork-shoulder", 1000, {"chilled", "ground"}), line("spinach", 100, {"raw"}), line("sorrel", 80, {"pureed"})})
              .empty());
}

}  // namespace bench_order_test
