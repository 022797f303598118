// Who asks for more of a number gets nothing nearer than who asks for less of it, and where a most stops it the page says which. Formulas
// are invented.
#include <algorithm>

#include "standin/narrate.hpp"
#include "support/catch.hpp"
#include "support/scenario.hpp"

using namespace standin;
using namespace scenario;

namespace steps_of_a_number_test {

AdaptAnswer asked(const std::string& formula, const std::string& want) {
    AdaptRequest request;
    request.wants = {want};
    return answer_to(formula, "", request);
}

const std::string bulk =
    "Orchard bulk (invented)\n2400 g pork shoulder\n450 g pork backfat\n45 g red wine vinegar\n18 g ancho powder\n12 g sweet paprika\n"
    "8 g dried oregano\n22 g garlic\n50 g salt\nplate: 8 mm\nmixing: 1 min\nmixed at: 5 C\norder: salt first\ncook: loose\ncore: 71.1 C\n";
const std::string wet =
    "Low field green (invented)\n1900 g pork shoulder\n250 g pork backfat\n420 g tomatillo, roasted\n240 g spinach, blanched 2 min, "
    "squeezed, "
    "pureed\n220 g cilantro, pureed\n60 g serrano, roasted\n38 g white wine vinegar\n18 g garlic\n36 g salt\nplate: 8 mm\nmixing: 3 min\n"
    "mixed at: 4 C\norder: all together\ncook: pan\ncore: 71.1 C\n";
const std::string hen =
    "Coop (invented)\n1500 g skinless chicken thigh\n220 g chicken skin\n110 g parsley, chopped\n30 g lemon juice\n27 g salt\n"
    "plate: 6 mm\nmixing: 3 min\nmixed at: 3 C\norder: salt first\ncook: grill\ncore: 74 C\n";
const std::string fish =
    "Quay link (invented)\n1200 g haddock\n250 g salmon\n90 g egg white\n60 g breadcrumbs\n70 g parsley, chopped\n60 g butter\n24 g salt\n"
    "plate: 4 mm\nmixing: 3 min\nmixed at: 2 C\norder: salt first\ncook: pan\ncore: 68.3 C\n";

TEST_CASE("steps of a number: a harder one is no nearer than a softer one") {
    constexpr double rounding = 0.25;  // noticeable differences, of weights as rounded
    const std::vector<std::pair<const std::string*, std::vector<std::string>>> ladders{
        {&bulk, {"heat>=3", "heat>=3.5", "heat>=3.7", "heat>=4", "heat>=4.3", "heat>=5"}}, {&wet, {"bind>=40", "bind>=42", "bind>=44"}}};
    for (const auto& [formula, steps] : ladders) {
        double before = 0;
        for (const auto& want : steps) {
            CAPTURE(want);
            const auto answer = asked(*formula, want);
            REQUIRE_FALSE(answer.variants.empty());
            CHECK(answer.variants.front().wants.front().met);
            CHECK(answer.variants.front().distance >= before - rounding);
            before = answer.variants.front().distance;
        }
    }
}

TEST_CASE("steps of a number: where a food goes no further, which and how far is told") {
    const auto answer = asked(hen, "fat>=14");
    const auto held =
        std::find_if(answer.reach.begin(), answer.reach.end(), [](const Reason& r) { return r.kind == ReasonKind::held_at_most; });
    REQUIRE(held != answer.reach.end());
    CHECK(held->foods == std::vector<std::string>{"chicken skin"});
    CHECK(in_full(*held).find("200 g in a kilo") != std::string::npos);
    const auto near = asked(hen, "fat>=9");
    CHECK(std::none_of(near.reach.begin(), near.reach.end(), [](const Reason& r) { return r.kind == ReasonKind::held_at_most; }));
}

TEST_CASE("steps of a number: fish alone takes more starch beside its crumbs than meat does") {
    const auto answer = asked(fish, "bind>=63");
    REQUIRE_FALSE(answer.variants.empty());
    const Variant& v = answer.variants.front();
    CHECK(v.wants.front().met);
    double starch = 0, mass = 0;
    for (const auto& line : v.formula.lines) {
        mass += line.grams.mid;
        if (line.ingredient == "potato-starch" || line.ingredient == "breadcrumb") starch += line.grams.mid;
    }
    CHECK(starch / mass > 0.035);
    CHECK(starch / mass < 0.072);
}

}  // namespace steps_of_a_number_test
