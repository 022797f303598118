// Cautions that go by what the formula says of its own making: they are not told where it is done already, and not at a hotter core.
#include <algorithm>

#include "safety/allergens.hpp"
#include "safety/cautions.hpp"
#include "safety/safety.hpp"
#include "support/catch.hpp"
#include "support/kitchen.hpp"
#include "support/mixture.hpp"

using namespace standin;

namespace cautions_of_making_test {

std::string text(const Prediction& p, const Process& process, std::string_view id) {
    const auto all = cautions_of(p, process, knowledge(), "");
    const auto found = std::find_if(all.begin(), all.end(), [&](const CautionText& c) { return c.id == id; });
    return found == all.end() ? std::string() : found->text;
}

TEST_CASE("fish is kept at the core that its rule names, and not at a hotter one") {
    const auto asked = [](double core) {
        Formula made = formula({line("cod", 980), line("table-salt", 16)});
        made.process.core_c = core;
        Prediction p = mixture({{"cod", 980}, {"table-salt", 16}});
        mark_safety(p, made, knowledge(), "");
        return p.core;
    };
    CHECK(asked(60).core_c == Approx(68.3));
    CHECK(asked(60).hold_s == Approx(17));
    CHECK(asked(69).hold_s == Approx(17));
    CHECK(asked(71.1).hold_s == 0);
    CHECK(asked(75).hold_s == 0);
}

TEST_CASE("what a formula does already is not told to it, and what is hardly mixed is") {
    Prediction p = mixture({{"pork-shoulder", 980}, {"table-salt", 16}});
    p.nominal[Property::ph] = 5.42;
    Process process;
    CHECK(text(p, process, "acid-soft").find("Mix salt and lean tacky first") != std::string::npos);
    process.order = Order::salt_first;
    CHECK(text(p, process, "acid-soft").find("first, then") == std::string::npos);
    CHECK(text(p, process, "mixed-little").empty());
    process.mixing_min = 0;
    CHECK_FALSE(text(p, process, "mixed-little").empty());
    process.cook = Cook::loose;
    CHECK(text(p, process, "mixed-little").empty());
}

}  // namespace cautions_of_making_test
