// What the moves together must keep to.
#include "adapt/moves/constraints.hpp"

#include <algorithm>

#include "support/advising.hpp"
#include "support/catch.hpp"

using namespace standin;

namespace constraints_test {

Formula crumbed() {
    return formula({line("pork-shoulder", 1800), line("table-salt", 36), line("breadcrumb", 60), line("spinach", 200, {"blanched"}),
                    line("white-wine-vinegar", 40)});
}

struct Asked {
    explicit Asked(const std::vector<std::string>& wants) : advising(crumbed(), wants) {
        const Context context = advising.context();
        const auto stock = Stock::of(crumbed(), {}, context);
        const SwapGraph graph(knowledge());
        problem = make_problem(crumbed(), *stock, graph, advising.distance(), context);
    }
    bool kept(const std::vector<double>& grams) const {
        return std::all_of(problem.constraints.begin(), problem.constraints.end(),
                           [&](const LinearConstraint& l) { return l.violation(grams) <= 1e-9; });
    }
    Advising advising;
    Problem problem;
};

TEST_CASE("limits: nothing moved keeps all of them") {
    for (const char* want : {"firmer", "milder", "greener", "saltier", "leaner"}) {
        const Asked asked({want});
        CHECK(asked.kept(std::vector<double>(asked.problem.moves.size(), 0.0)));
    }
}

TEST_CASE("limits: the maker's own binder counts with the one that comes in") {
    const Asked asked({"firmer"});
    std::vector<double> grams(asked.problem.moves.size(), 0.0);
    bool tried = false;
    for (std::size_t m = 0; m < grams.size(); ++m) {
        const Move& move = asked.problem.moves[m];
        if (move.kind != MoveKind::add || knowledge().ingredient(move.food.ingredient)->tissue != Tissue::dry) continue;
        grams[m] = 10;  // with 60 g crumbs in 2.1 kg: under 3.5 %
        CHECK(asked.kept(grams));
        grams[m] = 40;  // 100 g: over
        CHECK_FALSE(asked.kept(grams));
        grams[m] = 0;
        tried = true;
    }
    CHECK(tried);
}

TEST_CASE("limits: who wants it firmer is not told to take the crumbs out") {
    const Asked asked({"firmer"});
    for (const auto& move : asked.problem.moves) CHECK_FALSE((move.kind == MoveKind::reduce && move.food.ingredient == "breadcrumb"));
}

TEST_CASE("limits: salt has a ceiling however salty it is wanted") {
    const Asked asked({"saltier"});
    std::vector<double> grams(asked.problem.moves.size(), 0.0);
    bool tried = false;
    for (std::size_t m = 0; m < grams.size(); ++m)
        if (asked.problem.moves[m].kind == MoveKind::raise && asked.problem.moves[m].food.ingredient == "table-salt") {
            grams[m] = 40;  // 76 g in 2.1 kg
            CHECK_FALSE(asked.kept(grams));
            tried = true;
        }
    CHECK(tried);
}

}  // namespace constraints_test
