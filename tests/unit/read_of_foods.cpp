// Foods and shares of fat under the names that writers give them, and words that are no danger.
#include "standin/engine.hpp"
#include "support/catch.hpp"
#include "support/read_line.hpp"

using namespace standin;

namespace read_of_foods_test {

using namespace reading_a_line;

TEST_CASE("foods by other names") {
    const auto is = [](const std::string& text, const std::string& id) {
        INFO(text);
        CHECK(line_of(text).ingredient == id);
    };
    is("20 g black sesame", "sesame-seed");
    is("2 tsp nigella", "nigella-seed");
    is("1 tsp boukovo", "red-pepper-flakes");
    is("100 ml Apfelwein", "hard-cider");
    is("20 g salt-packed capers", "caper-salted");
    is("20 g capers", "caper");
    is("2 tsp New Mexico chile powder", "new-mexico-chile-dried");
    is("1 tsp red chile powder (pure, not the blend)", "new-mexico-chile-dried");
    is("1 tsp red chilli powder", "cayenne-powder");
    is("80 g salted almonds", "salted-almond");
    is("80 g peanuts, salted", "salted-peanut");
    is("400 g lamb breast", "lamb-breast");
    is("40 g garlic paste", "garlic");
}

TEST_CASE("shares of fat in another dress") {
    for (const char* text :
         {"1 kg lamb shoulder (70% lean / 30% fat)", "1 kg lamb shoulder (visual lean 70%)", "1 kg lamb shoulder 70VL"}) {
        INFO(text);
        REQUIRE(line_of(text).fat_pct);
        CHECK(line_of(text).fat_pct->mid == Approx(30));
    }
    CHECK(line_of("Cream, 35%   0.1 l").grams.mid == Approx(100).epsilon(0.03));
    CHECK_FALSE(with_line("100 ml cream (12% fat)"));
}

TEST_CASE("a drink and a word that says nothing are no slips for a danger") {
    const auto sambuca = with_line("20 ml sambuca");
    REQUIRE_FALSE(sambuca);
    CHECK(sambuca.error().message.find("elder") == std::string::npos);
    CHECK(line_of("1 tsp pure chile powder").ingredient == "new-mexico-chile-dried");
    for (const char* text : {"20 ml sambuco", "20 g pure #1", "1 tsp cure", "1 tsp cuer"}) {
        INFO(text);
        CHECK_FALSE(with_line(text));
    }
}

TEST_CASE("an amount that nobody can weigh is asked back, dotted or not") {
    for (const char* text : {"Zorble peelings . . . . . . . . . . . . q.s.", "Walnut pieces . . . . . . . . . . . . to taste."}) {
        INFO(text);
        CHECK_FALSE(with_line(text));
    }
}

}  // namespace read_of_foods_test
