// Numbers that cannot all be had: what is shown goes as far as any weaker number does, and what can be met is met.
#include <cmath>
#include <string>

#include "support/catch.hpp"
#include "support/scenario.hpp"

using namespace standin;
using namespace scenario;

namespace nearest_numbers_test {

const std::string wet =
    "Garden (invented)\n1000 g pork shoulder\n120 g pork backfat\n250 g spinach, blanched 2 min\n120 g parsley\n120 g scallion\n40 g white "
    "wine\n22 g salt\nplate: 10 mm\nmixing: 2 min\nmixed at: 5 C\norder: all together\ncook: grill\ncore: 71.1 C\n";
const std::string salted =
    "Turkey (invented)\n1000 g turkey thigh\n110 g feta\n120 g spinach, blanched 2 min, squeezed\n21 g salt\n10 g garlic\nplate: 6 mm\n"
    "mixing: 3 min\nmixed at: 3 C\norder: salt first\ncook: grill\ncore: 74 C\n";

AdaptAnswer asked(const std::string& formula, std::vector<std::string> wants) {
    static const Engine engine = expect(Engine::open({}));
    const auto read = expect(engine.read_formula(formula, "formula"));
    AdaptRequest request;
    request.wants = std::move(wants);
    return expect(engine.adapt(read, request));
}

double shown(const AdaptAnswer& answer, std::size_t want) { return answer.variants.front().wants.at(want).reason.figures.front().after; }

TEST_CASE("nearest numbers: who asks for less loss never loses more than who asks for a little less") {
    double last = 1e9;
    for (const char* limit : {"loss<=29", "loss<=27", "loss<=25", "loss<=23", "loss<=20", "loss<=15"}) {
        const auto answer = asked(wet, {limit});
        CAPTURE(limit, last);
        REQUIRE_FALSE(answer.variants.empty());
        const double loss = shown(answer, 0);
        CHECK((answer.variants.front().wants.front().met || loss <= last + 0.6));
        last = std::min(last, loss);
    }
}

TEST_CASE("nearest numbers: the number that can be met is met, and the other gets what is left") {
    const auto hard = asked(salted, {"loss<=17", "salt<=1.5"}), weaker = asked(salted, {"loss<=24", "salt<=1.5"});
    REQUIRE_FALSE(hard.variants.empty());
    REQUIRE_FALSE(weaker.variants.empty());
    CHECK(hard.variants.front().wants.at(1).met);
    CHECK(shown(hard, 0) <= shown(weaker, 0) + 0.6);
}

TEST_CASE("nearest numbers: what is met is not told as not to be found, and what is reached is told as that") {
    for (const auto& wants : {std::vector<std::string>{"loss<=17", "salt<=1.5"}, {"loss<=15"}}) {
        const auto answer = asked(salted, wants);
        REQUIRE_FALSE(answer.variants.empty());
        REQUIRE(wants_reached(answer) == wants.size());
        for (std::size_t w = 0; w < wants.size(); ++w) {
            const std::string says = in_full(answer.reach[w]);
            CAPTURE(says);
            if (answer.variants.front().wants[w].met) CHECK(says.find("has it") != std::string::npos);
            const Figure* nearest = nullptr;
            for (const auto& f : answer.reach[w].figures)
                if (f.what == "nearest") nearest = &f;
            REQUIRE(nearest);
            CHECK(
                std::abs(nearest->after -
                         answer.variants.front().prediction.properties[w == 1 ? Property::salt_pct_of_meat : Property::cook_loss_pct].mid) <
                0.01);
        }
    }
}

}  // namespace nearest_numbers_test
