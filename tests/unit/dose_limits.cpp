// What no maker would weigh in: heat that nobody asked for, a pinch in place of a filling, more of a seasoning than the paste takes.
#include <algorithm>
#include <string>

#include "substitute/stand_ins.hpp"
#include "support/catch.hpp"
#include "support/kitchen.hpp"

using namespace standin;

namespace dose_limits_test {

std::vector<Candidate> fit(const Line& one) {
    static const SwapGraph graph(knowledge());
    const Formula batch = formula({one, line("pork-shoulder", 750), line("pork-backfat", 250), line("table-salt", 16)});
    return candidates_for(batch, 0, graph, nominal(), [](const Ingredient&) { return true; }).fit;
}

bool offered(const Line& one, const std::string& stand_in) {
    const auto all = fit(one);
    return std::any_of(all.begin(), all.end(), [&](const Candidate& c) { return c.food.ingredient == stand_in; });
}

double most_grams(const Line& one, const std::string& stand_in) {
    double most = 0;
    for (const auto& c : fit(one))
        if (c.food.ingredient == stand_in) most = std::max(most, c.food.grams.mid);
    return most;
}

TEST_CASE("nothing hot stands in for a sweet pepper") {
    for (const char* sweet : {"bell-red", "bell-green", "bell-yellow", "pimiento", "cubanelle", "banana-pepper"})
        for (const char* hot :
             {"jalapeno", "serrano", "fresno", "red-chile", "cayenne-fresh", "habanero", "aji-amarillo", "hungarian-wax"}) {
            CAPTURE(sweet, hot);
            CHECK_FALSE(offered(line(sweet, 100), hot));
        }
    CHECK(offered(line("bell-green", 100), "poblano"));
    CHECK_FALSE(offered(line("paprika", 15), "cayenne-powder"));
}

TEST_CASE("a sour or spiced line brings no heat that it had not") {
    CHECK_FALSE(offered(line("cider-vinegar", 40), "hot-pepper-sauce"));
    CHECK_FALSE(offered(line("seasoned-salt", 17), "cajun-seasoning"));
    CHECK(offered(line("black-pepper", 3), "white-pepper"));
}

TEST_CASE("a pinch does not fill the place of a food with body") {
    CHECK_FALSE(offered(line("sorrel", 60), "citric-acid"));
    CHECK_FALSE(offered(line("buttermilk", 100), "citric-acid"));
    CHECK(offered(line("lemon-juice", 30), "citric-acid"));
}

TEST_CASE("a seasoning outweighs its line by no more than the paste takes") {
    const double batch = 750 + 250 + 16;
    for (const char* stand_in : {"grapefruit-juice", "kiwifruit", "buttermilk"})
        CHECK(most_grams(line("lemon-juice", 60), stand_in) <= 60 + 0.06 * batch);
    CHECK(most_grams(line("arbol", 3), "jalapeno") <= 3 + 0.06 * batch);
}

TEST_CASE("fat that brings much lean or water is not piled up") {
    CHECK(most_grams(line("cream", 100), "half-and-half") <= 120.5);
    for (const char* stand_in : {"pork-trim-50", "duck-skin-on", "pork-belly"})
        CHECK(most_grams(line("pork-jowl", 200), stand_in) <= 440.5);
}

}  // namespace dose_limits_test
