#include "knowledge/index/swap_graph.hpp"

#include <algorithm>
#include <map>
#include <set>

#include "support/catch.hpp"
#include "support/knowledge.hpp"

using namespace standin;

namespace swap_graph_test {

using Food = std::pair<std::string, std::vector<std::string>>;  // the stand-in and how it is prepared

// The closest way to every food by trying all chains of one and two swaps.
std::map<Food, double> by_hand(const std::vector<Swap>& swaps, Role role, const std::string& from) {
    std::map<Food, double> best;
    for (const auto& first : swaps) {
        if (first.role != role || first.from != from || first.partner) continue;
        if (first.to != from || !first.prepared.empty())
            best[{first.to, first.prepared}] = std::max(best[{first.to, first.prepared}], first.closeness);
        for (const auto& second : swaps) {
            if (second.role != role || second.from != first.to || second.to == from || second.partner) continue;
            auto& held = best[{second.to, second.prepared}];
            held = std::max(held, first.closeness * second.closeness);
        }
    }
    return best;
}

const Records& records() { return knowledge().records(); }

TEST_CASE("the graph finds what trying all chains of one and two swaps finds, for every ingredient and role") {
    const SwapGraph graph(knowledge());
    std::size_t compared = 0, missing = 0, less = 0;
    std::string example;
    for (std::size_t r = 0; r < role_count; ++r) {
        const Role role = static_cast<Role>(r);
        for (std::size_t i = 0; i < records().ingredients.size(); ++i) {
            const auto expected = by_hand(records().swaps, role, records().ingredients[i].id);
            std::map<Food, double> found;
            for (const auto& path : graph.from(role, i)) {
                if (records().swaps[path.swaps.back()].partner) continue;  // a pair stands beside the plain swap
                const Food food{records().ingredients[path.to].id, records().swaps[path.swaps.back()].prepared};
                CHECK(found.emplace(food, path.closeness).second);
            }
            for (const auto& [food, closeness] : expected) {
                ++compared;
                const auto same = found.find(food);
                const bool there = same != found.end();
                missing += !there;
                less += there && same->second < closeness * (1 - 1e-12);
                if (!there && example.empty()) {
                    example = std::string(word(role)) + ": " + records().ingredients[i].id + " > " + food.first;
                    for (const auto& step : food.second) example += ", " + step;
                }
                if (there) CHECK(same->second <= closeness * (1 + 1e-12));
            }
            for (const auto& [food, closeness] : found) CHECK(expected.count(food) == 1);
        }
    }
    WARN("compared " << compared << " ways from one food to another; missing " << missing << ", less close than possible " << less);
    CHECK(compared > 500);
    CAPTURE(example);
    CHECK(missing == 0);
    CHECK(less == 0);
}

TEST_CASE("every path is a chain of at most two swaps of the role, nearest first, and its closeness is their product") {
    const SwapGraph graph(knowledge());
    for (std::size_t r = 0; r < role_count; ++r)
        for (std::size_t i = 0; i < records().ingredients.size(); ++i) {
            double last = 1;
            for (const auto& path : graph.from(static_cast<Role>(r), i)) {
                REQUIRE((path.swaps.size() == 1 || path.swaps.size() == 2));
                std::string at = records().ingredients[i].id;
                double product = 1;
                for (const auto s : path.swaps) {
                    const Swap& swap = records().swaps[s];
                    CHECK(swap.role == static_cast<Role>(r));
                    CHECK(swap.from == at);
                    at = swap.to;
                    product *= swap.closeness;
                }
                CHECK(at == records().ingredients[path.to].id);
                CHECK(path.closeness == Approx(product));
                CHECK(path.closeness <= last);
                last = path.closeness;
                if (path.to == i) CHECK_FALSE(records().swaps[path.swaps.back()].prepared.empty());
            }
        }
}

// A small graph of one's own: enough of an ingredient for the graph to stand on.
Knowledge made_of(const std::vector<Swap>& swaps) {
    Records r;
    std::set<std::string> ids;
    for (const auto& s : swaps) ids.insert({s.from, s.to});
    for (const auto& id : ids) {
        Ingredient i;
        i.id = id;
        i.names = {id};
        i.roles = {Role::green};
        r.ingredients.push_back(std::move(i));
    }
    r.swaps = swaps;
    return Knowledge(std::move(r));
}

Swap edge(const char* from, const char* to, double closeness, std::vector<std::string> prepared = {}, Role role = Role::green) {
    Swap s;
    s.role = role;
    s.from = from;
    s.to = to;
    s.closeness = closeness;
    s.prepared = std::move(prepared);
    return s;
}

std::map<Food, double> found(const std::vector<Swap>& swaps, const char* from) {
    const Knowledge small = made_of(swaps);
    const SwapGraph graph(small);
    std::size_t index = 0;
    while (small.records().ingredients[index].id != from) ++index;
    std::map<Food, double> all;
    for (const auto& path : graph.from(Role::green, index))
        all[{small.records().ingredients[path.to].id, swaps[path.swaps.back()].prepared}] = path.closeness;
    return all;
}

TEST_CASE("two close swaps beat one that is further") {
    const auto all = found({edge("a", "c", 0.4), edge("a", "b", 0.9), edge("b", "c", 0.9)}, "a");
    CHECK(all.at({"c", {}}) == Approx(0.81));
}

TEST_CASE("three swaps are too many, and roles do not mix") {
    CHECK(found({edge("a", "b", 1), edge("b", "c", 1), edge("c", "d", 1)}, "a").size() == 2);
    CHECK(found({edge("a", "b", 1), edge("b", "c", 1, {}, Role::heat)}, "a").size() == 1);
}

TEST_CASE("there and back again is no stand-in, another preparation of the same is") {
    CHECK(found({edge("a", "b", 1), edge("b", "a", 1)}, "a").size() == 1);
    CHECK(found({edge("a", "a", 0.9, {"seeded"})}, "a").at({"a", {"seeded"}}) == Approx(0.9));
}

TEST_CASE("each way of preparing a stand-in counts once, reached by one swap or by two") {
    CHECK(found({edge("a", "b", 0.9), edge("a", "b", 0.8, {"dried"})}, "a").size() == 2);
    const auto two = found({edge("a", "b", 0.9), edge("b", "c", 0.9), edge("b", "c", 0.8, {"dried"})}, "a");
    CHECK(two.count({"c", {}}) == 1);
    CHECK(two.count({"c", {"dried"}}) == 1);
}

}  // namespace swap_graph_test
