// Raw fruit that digests meat: by its dose and the hours of rest, and not once it was cooked.
#include <algorithm>

#include "evaluate/bind_factors.hpp"
#include "formula/reading.hpp"
#include "support/catch.hpp"
#include "support/kitchen.hpp"

using namespace standin;

namespace bind_enzyme_test {

Formula with(const std::string& fruit, double grams, double rest_h, std::vector<std::string> prepared = {}) {
    Formula mass = formula({line("pork-shoulder", 2000), line("table-salt", 36)});
    if (grams > 0) mass.lines.push_back(line(fruit, grams, std::move(prepared)));
    mass.process.plate_mm = 5;
    mass.process.mixing_min = 4;
    mass.process.mixed_at_c = 3;
    mass.process.order = Order::salt_first;
    mass.process.rest_h = rest_h;
    return mass;
}

double of(const Formula& mass, Property property) { return nominal_state(mass, nominal()).properties[property]; }

TEST_CASE("enzyme: raw fruit takes the bind within hours, more of it and longer the more", "[bind]") {
    for (const char* fruit : {"pineapple", "kiwifruit", "green-papaya"}) {
        INFO(fruit);
        double before = of(with(fruit, 200, 0), Property::bind);
        for (const double hours : {4.0, 12.0, 24.0}) {
            const double now = of(with(fruit, 200, hours), Property::bind);
            CHECK(now < before - 3);
            before = now;
        }
        CHECK(before < 25);
        CHECK(of(with(fruit, 200, 12), Property::bind) < of(with(fruit, 60, 12), Property::bind) - 5);
        CHECK(of(with(fruit, 200, 24), Property::firmness) < of(with(fruit, 200, 0), Property::firmness) - 8);
        CHECK(of(with(fruit, 200, 24), Property::cook_loss_pct) > of(with(fruit, 200, 0), Property::cook_loss_pct) + 2);
    }
}

TEST_CASE("enzyme: a pinch of ginger overnight costs little, cooked fruit nothing", "[bind]") {
    CHECK(of(with("ginger", 10, 12), Property::bind) > of(with("ginger", 0, 12), Property::bind) - 4);
    for (const double hours : {0.0, 24.0})
        CHECK(std::abs(of(with("kiwifruit", 200, hours, {"cooked"}), Property::bind) -
                       of(with("kiwifruit", 200, 0, {"cooked"}), Property::bind)) < 4);
}

TEST_CASE("enzyme: fruit from a tin leaves the meat alone", "[bind]") {
    CHECK(of(with("canned-pineapple", 200, 24), Property::bind) > of(with("canned-pineapple", 200, 0), Property::bind) - 4);
    const Formula read = read_formula("Tin\n1000 g pork shoulder\n18 g salt\n100 g tinned pineapple\n", "", knowledge()).value();
    CHECK(read.lines[2].ingredient == "canned-pineapple");
}

TEST_CASE("enzyme: why the bind is what it is names it", "[bind]") {
    const auto named = [](const Formula& mass) {
        const auto all = bind_factors(mass, nominal());
        return std::any_of(all.begin(), all.end(),
                           [](const Factor& f) { return f.what.find("digests meat") != std::string::npos && f.gives_back > 10; });
    };
    CHECK(named(with("pineapple", 200, 12)));
    CHECK_FALSE(named(with("eating-apple", 200, 12)));
}

}  // namespace bind_enzyme_test
