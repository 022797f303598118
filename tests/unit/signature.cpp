// Which plans are one idea.
#include "adapt/search/signature.hpp"

#include "adapt/moves/equivalents.hpp"
#include "support/catch.hpp"
#include "support/kitchen.hpp"

using namespace standin;

namespace signature_test {

Move move_of(MoveKind kind, std::size_t line_number, Line food) {
    Move move;
    move.kind = kind;
    move.line = line_number;
    move.food = std::move(food);
    move.most = 100;
    if (kind == MoveKind::stand_in) move.stands_for.push_back({line_number, 0.7, 100, Role::green, {}});
    return move;
}

// 0 vinegar down, 1 lemon juice down, 2 salt up (a trim), then binders: 3 potato flake, 4 potato flour, 5 wheat flour, 6 potato starch.
Problem problem() {
    Problem p;
    p.formula = formula({line("pork-shoulder", 1000), line("white-wine-vinegar", 30), line("lemon-juice", 20), line("table-salt", 18)});
    p.moves.push_back(move_of(MoveKind::reduce, 1, p.formula.lines[1]));
    p.moves.push_back(move_of(MoveKind::reduce, 2, p.formula.lines[2]));
    p.moves.push_back(move_of(MoveKind::raise, 3, p.formula.lines[3]));
    p.moves.back().trim = true;
    for (const char* binder : {"potato-flake", "potato-flour", "wheat-flour", "potato-starch"})
        p.moves.push_back(move_of(MoveKind::add, 0, line(binder, 10)));
    find_equivalents(p, knowledge());
    return p;
}

Relation like(const Problem& p, const std::vector<std::size_t>& more, const std::vector<std::size_t>& less) {
    return relation(p, signature_of(p, more), signature_of(p, less));
}

TEST_CASE("idea: near cousins are one, others are not") {
    const Problem p = problem();
    CHECK(like(p, {4}, {3}) == Relation::equivalent);     // potato flour for potato flakes
    CHECK(like(p, {6}, {3}) == Relation::equivalent);     // and starch: the same plan with another flour is one idea
    CHECK(like(p, {4, 0}, {3}) == Relation::equivalent);  // whatever lines move beside it
}

TEST_CASE("idea: a food that brings a new allergen is nobody's cousin") {
    const Problem p = problem();
    for (const auto equivalent : p.moves[4].equivalents) CHECK(equivalent != 5);
    CHECK(p.moves[5].equivalents.empty());
}

TEST_CASE("idea: more of the same is a dusting, less acid is less acid, and a trim is nothing") {
    const Problem p = problem();
    CHECK(like(p, {3, 6}, {3}) == Relation::includes);
    CHECK(like(p, {1}, {0}) == Relation::includes);
    CHECK(like(p, {0}, {1}) == Relation::includes);
    CHECK(like(p, {3}, {0}) == Relation::different);  // bringing something in is another idea than doing without
    CHECK(like(p, {0}, {3}) == Relation::different);
    CHECK(like(p, {0}, {}) == Relation::different);  // anything beside changing nothing
    CHECK(signature_of(p, {2}).empty());
}

}  // namespace signature_test
