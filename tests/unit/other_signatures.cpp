// The parts of a search that are left for other ideas hold every plan that is one, and none of those that is not.
#include "adapt/search/other_signatures.hpp"

#include <algorithm>

#include "oracle/small_problem.hpp"
#include "support/catch.hpp"

using namespace standin;

namespace other_signatures_test {

std::vector<std::size_t> members(std::size_t set, std::size_t moves) {
    std::vector<std::size_t> in;
    for (std::size_t m = 0; m < moves; ++m)
        if (set >> m & 1U) in.push_back(m);
    return in;
}

bool holds(const std::vector<Choice>& part, std::size_t set) {
    for (std::size_t m = 0; m < part.size(); ++m) {
        const bool used = (set >> m & 1U) != 0;
        if ((part[m] == Choice::in && !used) || (part[m] == Choice::out && used)) return false;
    }
    return true;
}

TEST_CASE("every set of moves of another idea lies in a part, and no set that says no more than a plan that brings foods") {
    constexpr std::size_t most_moves = 7;
    std::size_t others = 0, alike = 0;
    for (std::uint64_t number = 300; number < 330; ++number) {
        const SmallProblem small(number, most_moves);
        const std::size_t n = small.problem.moves.size(), sets = std::size_t{1} << n;
        if (std::any_of(small.problem.moves.begin(), small.problem.moves.end(), [](const Move& m) { return !(m.most > 0); })) continue;
        for (std::size_t held = 0; held < sets; held += 5) {
            const Signature idea = signature_of(small.problem, members(held, n));
            const auto parts = parts_with_other_signatures(small.problem, std::vector<Choice>(n, Choice::open), idea);
            for (std::size_t set = 0; set < sets; ++set) {
                const bool different = relation(small.problem, signature_of(small.problem, members(set, n)), idea) == Relation::different;
                const bool kept = std::any_of(parts.begin(), parts.end(), [&](const auto& part) { return holds(part, set); });
                CAPTURE(number, held, set);
                if (different) REQUIRE(kept);
                if (!different && !idea.foods.empty()) REQUIRE_FALSE(kept);
                (different ? others : alike) += 1;
            }
        }
    }
    CHECK(others > 1000);
    CHECK(alike > 1000);
}

}  // namespace other_signatures_test
