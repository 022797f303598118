// In what order a maker would try stand-ins, and how a leaf or a colour chile is weighed.
#include "substitute/standing.hpp"

#include <algorithm>
#include <cmath>

#include "support/catch.hpp"
#include "support/kitchen.hpp"

using namespace standin;

namespace standing_test {

Candidate candidate(const std::string& food, double closeness, Role role = Role::green) {
    Candidate c;
    c.role = role;
    c.food = line(food, 100);
    c.closeness = closeness;
    return c;
}

double standing(const Candidate& c, const std::string& for_line, double felt = 1) {
    return standing_of(c, line(for_line, 100), felt, 0, knowledge());
}

double grams_for(const Line& one, std::string_view stand_in) {
    static const SwapGraph graph(knowledge());
    const Formula batch = formula({one, line("pork-shoulder", 750), line("pork-backfat", 250), line("table-salt", 16)});
    const auto all = candidates_for(batch, 0, graph, nominal(), [](const Ingredient&) { return true; }).fit;
    const auto found = std::find_if(all.begin(), all.end(), [&](const Candidate& c) { return c.food.ingredient == stand_in; });
    REQUIRE(found != all.end());
    return found->food.grams.mid;
}

TEST_CASE("what any shop sells is tried before what must be gathered or ordered, unless the line is such a food itself") {
    CHECK(standing(candidate("chard", 0.7), "spinach") < standing(candidate("nettle", 0.7), "spinach"));
    CHECK(standing(candidate("chard", 0.7), "spinach") < standing(candidate("ugu-leaf", 0.7), "spinach"));
    CHECK(standing(candidate("ugu-leaf", 0.7), "spinach") < standing(candidate("nettle", 0.7), "spinach"));
    CHECK(standing(candidate("chard", 0.7), "dock") == Approx(standing(candidate("nettle", 0.7), "dock")));
}

TEST_CASE("the closer, the less felt and the trade's own stand first; part of a line stands back") {
    CHECK(standing(candidate("chard", 0.8), "spinach") < standing(candidate("chard", 0.7), "spinach"));
    CHECK(standing(candidate("chard", 0.7), "spinach", 1) < standing(candidate("chard", 0.7), "spinach", 2));
    Candidate trade = candidate("chard", 0.7), part = trade;
    trade.trade = true;
    part.share = 0.3;
    CHECK(standing(trade, "spinach") < standing(candidate("chard", 0.7), "spinach"));
    CHECK(standing(candidate("chard", 0.7), "spinach") < standing(part, "spinach"));
}

TEST_CASE("two swaps of the trade in a row are half a custom") {
    Candidate none = candidate("pasilla", 0.5, Role::heat), by_way = none, itself = none;
    by_way.trade = itself.trade = true;
    by_way.swaps = {0, 1};
    itself.swaps = {0};
    CHECK(standing(itself, "poblano") < standing(by_way, "poblano"));
    CHECK(standing(by_way, "poblano") < standing(none, "poblano"));
}

TEST_CASE("what does it alone stands before what needs a second food, unless a swap names the pair") {
    Candidate alone = candidate("verjuice", 0.6, Role::acid), helped = alone, pair = alone;
    helped.partner = PartnerFood{line("citric-acid", 1), {}};
    pair.partner = helped.partner;
    pair.partner->named = true;
    CHECK(standing(alone, "lemon-juice") < standing(helped, "lemon-juice"));
    CHECK(standing(alone, "lemon-juice") == Approx(standing(pair, "lemon-juice")));
}

TEST_CASE("for what is bought ground, ground meat stands before a cut") {
    for (const char* line : {"ground-pork", "ground-beef-80", "ground-lamb", "ground-venison"})
        CHECK(standing(candidate("ground-turkey", 0.5, Role::lean), line) < standing(candidate("turkey-thigh", 0.5, Role::lean), line));
    CHECK(standing(candidate("ground-turkey", 0.5, Role::lean), "pork-shoulder") ==
          Approx(standing(candidate("turkey-thigh", 0.5, Role::lean), "pork-shoulder")));
}

TEST_CASE("fat that is cut gives way to solid fat before lard or oil") {
    CHECK(standing(candidate("beef-suet", 0.6, Role::fat), "pork-backfat") < standing(candidate("lard", 0.6, Role::fat), "pork-backfat"));
    CHECK(standing(candidate("beef-suet", 0.6, Role::fat), "butter") == Approx(standing(candidate("lard", 0.6, Role::fat), "butter")));
}

TEST_CASE("a leaf is weighed half way between the same weight and the same green, never as a pinch") {
    const double arugula = grams_for(line("spinach", 200), "arugula");
    const double green =
        200 * knowledge().ingredient("spinach")->chlorophyll->band.mid / knowledge().ingredient("arugula")->chlorophyll->band.mid;
    CHECK(arugula == Approx(std::sqrt(200 * green)).epsilon(0.02));
    CHECK(grams_for(line("bok-choy", 200), "chard") >= 0.66 * 200);
}

TEST_CASE("red chiles taken by the spoon give way by the spoon, the hotter ones in less") {
    CHECK(grams_for(line("gochugaru", 15), "kashmiri-chile-powder") == Approx(15).epsilon(0.1));
    const double aleppo = grams_for(line("hot-paprika", 8), "aleppo-pepper");
    CHECK(aleppo >= 0.45 * 8);
    CHECK(aleppo < 8);
}

TEST_CASE("after the first cuts of the line's own animal others are seen beside them") {
    const auto pork = Species::pork, beef = Species::beef;
    const std::vector<double> standings{0.0, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 1.1, 1.2};
    const std::vector<std::optional<Species>> animals{pork, pork, pork, pork, pork, pork, pork, beef, beef};
    const auto order = order_of(standings, animals, pork, knowledge());
    REQUIRE(order.size() == standings.size());
    const auto place = [&](std::size_t i) { return std::find(order.begin(), order.end(), i) - order.begin(); };
    for (std::size_t i = 0; i + 1 < 4; ++i) CHECK(place(i) < place(i + 1));
    CHECK(place(7) < place(6));  // the first beef before the last pork
    CHECK(place(8) > place(6));  // the second beef after it
    const std::vector<std::optional<Species>> none(standings.size());
    const auto plain = order_of(standings, none, std::nullopt, knowledge());
    CHECK(std::is_sorted(plain.begin(), plain.end()));
}

}  // namespace standing_test
