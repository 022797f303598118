#include "evaluate/validity.hpp"

#include "core/band.hpp"
#include "support/catch.hpp"
#include "support/kitchen.hpp"

using namespace standin;

namespace validity_test {

struct Widened {
    Band bind;
    std::vector<Reason> notes;
};

Widened at_reach(const Reach& reach, double start = 40) {
    Draws draws(256, 1);
    const Validity validity(knowledge());
    const auto doubts = validity.doubts(draws);
    std::vector<double> values;
    for (std::size_t i = 0; i < draws.count(); ++i) {
        PerProperty<double> p;
        p[Property::bind] = start;
        p[Property::ph] = 5;
        p[Property::cook_loss_pct] = 60;
        p[Property::water_pct] = 55;
        p[Property::fat_pct] = 20;
        validity.widen(p, reach, doubts[i]);
        CHECK(p[Property::ph] == 5);
        CHECK(p[Property::bind] <= 100);
        CHECK(p[Property::cook_loss_pct] < 75);  // all the water and all the fat
        values.push_back(p[Property::bind]);
    }
    return {band_of(std::move(values)), validity.notes(reach)};
}

constexpr Reach usual{5.7, 20, 1.5, 71, 100};

TEST_CASE("inside what the models were made for nothing changes") {
    const auto w = at_reach(usual);
    CHECK(w.bind.low == 40);
    CHECK(w.bind.high == 40);
    CHECK(w.notes.empty());
}

TEST_CASE("outside, the band widens the further it goes, and the note says what is stretched") {
    Reach sour = usual, sourer = usual;
    sour.ph = 4.7;
    sourer.ph = 4.5;
    const auto a = at_reach(sour), b = at_reach(sourer);
    CHECK(a.bind.mid == Approx(40).epsilon(0.01));
    CHECK(a.bind.high > 44);  // half a step, on the logit scale
    CHECK(b.bind.high > a.bind.high);
    REQUIRE(b.notes.size() == 1);
    CHECK(in_full(b.notes.front()).find("pH 4.5, made for 4.8-6.6") == 0);
    CHECK(in_full(b.notes.front()).find("bands are widened") != std::string::npos);
}

TEST_CASE("the furthest reach still leaves a band to read, and its middle stays") {
    const auto low = at_reach({4, 60, 4, 110, 900}, 11), high = at_reach({4, 60, 4, 110, 900}, 90);
    CHECK(low.bind.mid == Approx(11).epsilon(0.1));
    CHECK(low.bind.low > 0);
    CHECK(low.bind.high < 70);
    CHECK(high.bind.mid == Approx(90).epsilon(0.1));
    CHECK(high.bind.low > 30);
    CHECK(high.bind.high < 100);
}

TEST_CASE("each limit has its own note") {
    CHECK(at_reach({4, 60, 4, 110, 900}).notes.size() == 5);
    CHECK(at_reach({7, 1, 1, 50, 0}).notes.size() == 3);
}

}  // namespace validity_test
