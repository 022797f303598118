// A first line that names the sausage and says how much of it is made is a title; one that names a food is a line.
#include "support/catch.hpp"
#include "support/scenario.hpp"

using namespace standin;

namespace titles_with_a_weight_test {

Formula read(const std::string& first) {
    return scenario::expect(scenario::engine().read_formula(first + "\n4 kg pork shoulder\n300 g spinach\n80 g salt\n", "made.txt"));
}

TEST_CASE("the name of a sausage before a weight is a title") {
    for (const std::string first : {"Wild garlic bratwurst, 5 kg", "B\u00e4rlauch-Bratwurst, 5 kg", "Salsiccia verde, 3 kg",
                                    "Nettle links 2.5 kg", "Saucisse verte, 4 kg", "Green breakfast patties, 4 lb"}) {
        INFO(first);
        const Formula formula = read(first);
        CHECK(formula.title.substr(0, 5) == first.substr(0, 5));
        CHECK(formula.lines.size() == 3);
    }
}

TEST_CASE("a food before a weight stays a line") {
    const auto asked = scenario::engine().read_formula("sausage meat, 500 g\n1 kg pork shoulder\n18 g salt\n", "made.txt");
    if (asked) CHECK(asked->lines.size() == 3);
    const auto liver = scenario::engine().read_formula("pork shoulder, 500 g\n1 kg pork belly\n18 g salt\n", "made.txt");
    REQUIRE(liver);
    CHECK(liver->lines.size() == 3);
}

}  // namespace titles_with_a_weight_test
