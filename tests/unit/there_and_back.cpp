// One food for another and back again: the two doses of a pair agree.
#include <map>
#include <string>
#include <tuple>

#include "substitute/stand_ins.hpp"
#include "support/catch.hpp"
#include "support/kitchen.hpp"

using namespace standin;

namespace there_and_back_test {

constexpr double grams = 10;    // little beside the meat, so that no limit for a kilo of batch comes between
constexpr double farthest = 2;  // how far the two may be from one, together

// A list that is printed goes one way, and another may contradict it.
bool printed(const Swap& swap) {
    const auto is = [](const std::string& id) {
        const SourceRecord* source = knowledge().source(id);
        return source && source->kind == SourceKind::published;
    };
    return is(swap.source) || (swap.ratio && is(swap.ratio->source));
}

using Pair = std::tuple<Role, std::string, std::string>;

// Grams for a gram, of the pairs whose own swap says it: what is prepared loses on the way, and what is bounded follows its bounds.
std::map<Pair, double> doses() {
    const SwapGraph graph(knowledge());
    std::map<Pair, double> all;
    for (const auto& food : knowledge().records().ingredients) {
        const Formula batch = formula({line(food.id, grams), line("pork-shoulder", 5000)});
        for (const auto& c : candidates_for(batch, 0, graph, nominal(), [](const Ingredient&) { return true; }).fit) {
            const bool plain = c.food.ingredient != food.id && c.food.prepared.empty() && !c.bounded && !c.partner && !(c.share < 1);
            if (plain && c.swaps.size() == 1 && !printed(knowledge().records().swaps[c.swaps.front()]))
                all.emplace(Pair(c.role, food.id, c.food.ingredient), c.food.grams.mid / grams);
        }
    }
    return all;
}

TEST_CASE("as much of one for the other as of the other for the one") {
    const auto all = doses();
    REQUIRE(all.size() > 2000);
    std::string apart;
    for (const auto& [pair, there] : all) {
        const auto& [role, one, other] = pair;
        const auto back = all.find(Pair(role, other, one));
        if (one > other || back == all.end()) continue;
        const double round = there * back->second;
        if (round > farthest || round < 1 / farthest)
            apart += "\n  " + one + " -> " + other + " " + std::to_string(there) + ", back " + std::to_string(back->second);
    }
    INFO(apart);
    CHECK(apart.empty());
}

}  // namespace there_and_back_test
