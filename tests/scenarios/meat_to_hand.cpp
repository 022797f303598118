// Meat that is short or left out: other meat on hand fills its place, or the batch gets smaller as a whole. Formulas are invented.
#include "support/catch.hpp"
#include "support/scenario.hpp"

using namespace standin;
using namespace scenario;

namespace meat_to_hand_test {

AdaptRequest without(const std::string& kind) {
    AdaptRequest request;
    request.without = {kind};
    return request;
}

struct Case {
    std::string meat, fat, kind, first, first_id, second, second_id;
};

const Case cases[] = {
    {"pork shoulder", "pork back fat", "pork", "chicken thigh", "chicken-thigh", "lamb shoulder", "lamb-shoulder"},
    {"pork shoulder", "pork back fat", "pork", "turkey thigh", "turkey-thigh", "beef chuck", "beef-chuck"},
    {"beef chuck", "beef suet", "beef", "lamb shoulder", "lamb-shoulder", "pork shoulder", "pork-shoulder"},
    {"lamb shoulder", "lamb fat", "lamb", "beef chuck", "beef-chuck", "chicken thigh", "chicken-thigh"},
};

std::string formula_of(const Case& c) {
    return "Plain (invented)\n2000 g " + c.meat + "\n300 g " + c.fat +
           "\n200 g spinach, blanched, squeezed\n40 g parsley\n60 g white wine vinegar\n37 g salt\n12 g garlic\n";
}

TEST_CASE("meat to hand: what one meat leaves short another on hand fills") {
    for (const auto& c : cases) {
        CAPTURE(c.meat, c.first, c.second);
        const auto answer = answer_to(formula_of(c), c.first + " 1500 g\n" + c.second + " 2 kg\nduck fat 500 g\nsalt\n", without(c.kind));
        REQUIRE_FALSE(answer.variants.empty());
        CHECK_FALSE(answer.scaled.has_value());
        const auto& v = answer.variants.front();
        CHECK(grams_in(v, c.first_id) + grams_in(v, c.second_id) > 1900);
        CHECK(grams_in(v, c.first_id) + grams_in(v, c.second_id) < 2250);
    }
}

TEST_CASE("meat to hand: where no other meat fills it the whole batch gets smaller") {
    for (const auto& c : cases) {
        CAPTURE(c.meat, c.first);
        const auto answer = answer_to(formula_of(c), c.first + " 1500 g\nduck fat 500 g\nsalt\n", without(c.kind));
        REQUIRE_FALSE(answer.variants.empty());
        REQUIRE(answer.scaled.has_value());
        CHECK(answer.scaled->factor == Approx(0.75).margin(0.01));
        const auto& v = answer.variants.front();
        CHECK(grams_in(v, c.first_id) >= 1300);
        CHECK(grams_in(v, "white-wine-vinegar") == Approx(45).margin(3));
        CHECK(grams_in(v, "spinach") == Approx(150).margin(10));
    }
    const auto gone = answer_to(formula_of(cases[0]), "turkey thigh 1 kg\nduck fat 500 g\nno pork shoulder\n");
    REQUIRE(gone.scaled.has_value());
    CHECK(gone.scaled->factor == Approx(0.5).margin(0.01));
}

}  // namespace meat_to_hand_test
