// The ways in which a want lets lines go.
#include "adapt/goals/levers.hpp"

#include <algorithm>

#include "adapt/moves/problem.hpp"
#include "support/advising.hpp"
#include "support/catch.hpp"

using namespace standin;

namespace levers_test {

Formula whole() {
    return formula({line("pork-shoulder", 2000), line("pork-backfat", 300), line("table-salt", 38), line("spinach", 300, {"blanched"}),
                    line("serrano", 40), line("white-wine-vinegar", 40)});
}

// Whether some move takes this line of the formula up, or down.
bool goes(const std::string& want, std::size_t number, MoveKind way, Leeway leeway = Leeway::usual) {
    Advising advising(whole(), {want});
    const Context context = advising.context();
    const auto stock = Stock::of(whole(), {}, context);
    const SwapGraph graph(knowledge());
    const Problem problem = make_problem(whole(), *stock, graph, advising.distance(), context, leeway);
    return std::any_of(problem.moves.begin(), problem.moves.end(), [&](const Move& m) { return m.kind == way && m.line == number; });
}

TEST_CASE("levers: who wants it firmer takes fat and acid out, and puts lean in") {
    CHECK(goes("firmer", 1, MoveKind::reduce));
    CHECK_FALSE(goes("firmer", 1, MoveKind::raise));
    CHECK(goes("firmer", 0, MoveKind::raise));
    CHECK_FALSE(goes("firmer", 0, MoveKind::reduce));
    CHECK(goes("firmer", 5, MoveKind::reduce));
    CHECK_FALSE(goes("firmer", 5, MoveKind::raise));
}

TEST_CASE("levers: towards less of it lines go the other way") {
    CHECK(goes("looser", 1, MoveKind::raise, Leeway::all));
    CHECK_FALSE(goes("looser", 1, MoveKind::raise));  // less mixing and less of what sets it come first
    CHECK_FALSE(goes("looser", 3, MoveKind::raise, Leeway::all));
    CHECK_FALSE(goes("looser", 1, MoveKind::reduce, Leeway::all));
    CHECK(goes("milder", 4, MoveKind::reduce));
    CHECK_FALSE(goes("milder", 4, MoveKind::raise));
    CHECK(goes("hotter", 4, MoveKind::raise));
    CHECK_FALSE(goes("hotter", 4, MoveKind::reduce));
}

TEST_CASE("levers: two wants open the ways of both") {
    Advising advising(whole(), {"firmer", "greener"});
    const Context context = advising.context();
    const auto stock = Stock::of(whole(), {}, context);
    const SwapGraph graph(knowledge());
    const Problem problem = make_problem(whole(), *stock, graph, advising.distance(), context);
    for (const MoveKind way : {MoveKind::reduce, MoveKind::raise})
        CHECK(std::any_of(problem.moves.begin(), problem.moves.end(), [&](const Move& m) { return m.kind == way && m.line == 3; }));
}

}  // namespace levers_test
