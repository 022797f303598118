// A seed that is spice and herb is one seed: what stands in for it is one full dose, and its distance is that of its taste.
#include <algorithm>

#include "published/proposed.hpp"
#include "substitute/dose.hpp"
#include "support/catch.hpp"
#include "support/kitchen.hpp"

using namespace standin;

namespace seasoning_for_seasoning_test {

const StandIn& stand_in(const std::string& line, double grams, const std::string& food) {
    const auto& all = proposed(line, grams);
    const auto found = std::find_if(all.begin(), all.end(), [&](const StandIn& s) { return s.ingredient == food; });
    REQUIRE(found != all.end());
    return *found;
}

TEST_CASE("a seasoning is no worse a stand-in for standing on another shelf") {
    struct Pair {
        const char *line, *food;
        double grams, most;
    };
    for (const Pair& pair : {Pair{"fennel-seed", "fennel-pollen", 8, 3}, Pair{"caraway", "dill-seed", 4, 3},
                             Pair{"fennel-seed", "star-anise", 8, 4}, Pair{"juniper-berry", "rosemary", 3, 4}}) {
        CAPTURE(pair.line, pair.food);
        CHECK(stand_in(pair.line, pair.grams, pair.food).distance < pair.most);
    }
}

TEST_CASE("what is both herb and spice counts once among the seasonings") {
    const Material& seed = nominal().unit(line("fennel-seed", 1));
    CHECK(seed[Amount::dose_herb] > 0);
    CHECK(seed[Amount::dose_seasoning] == Approx(seed[Amount::dose_spice]));
    CHECK(nominal().unit(line("garlic", 1))[Amount::dose_seasoning] == 0);
}

TEST_CASE("counted as flavour, a stand-in brings what a gram of the line brings, and nothing of its own shelf") {
    Material herb = nominal().unit(line("rosemary", 1));
    const Material& seed = nominal().unit(line("juniper-berry", 1));
    count_as_flavour(herb, Role::spice, seed, 0.5);
    CHECK(herb[Amount::dose_seasoning] == Approx(0.5 * seed[Amount::dose_seasoning]));
    CHECK(herb[Amount::dose_herb] == Approx(0.5 * seed[Amount::dose_herb]));
    Material pungent = nominal().unit(line("asafoetida", 1));
    count_as_flavour(pungent, Role::allium, nominal().unit(line("garlic", 1)), 10);
    CHECK(pungent[Amount::dose_seasoning] == 0);
    Material soup = nominal().unit(line("soy-sauce", 1));
    const double own = soup[Amount::dose_spice];
    count_as_flavour(soup, Role::salt, nominal().unit(line("table-salt", 1)), 1);
    CHECK(soup[Amount::dose_spice] == own);
}

}  // namespace seasoning_for_seasoning_test
