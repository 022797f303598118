// Aroma: a distance that behaves like one, and the leading notes.
#include "models/aroma.hpp"

#include <cmath>
#include <initializer_list>
#include <random>
#include <utility>

#include "support/catch.hpp"
#include "support/parameters.hpp"

using namespace standin;

namespace aroma_test {

AromaParameters middle() { return middle_parameters(aroma_bindings()); }

Material blend(std::initializer_list<std::pair<AromaNote, double>> notes, double mass = 1000) {
    Material m;
    m[Amount::mass] = mass;
    for (const auto& [note, amount] : notes) m[note] = amount;
    return m;
}

TEST_CASE("distance: zero to itself, symmetric, between 0 and 1") {
    std::mt19937_64 random(5);
    std::uniform_real_distribution<double> unit(0, 1);
    const auto p = middle();
    for (int i = 0; i < 1000; ++i) {
        Material a = blend({}), b = blend({});
        for (std::size_t n = 0; n < count_of<AromaNote>; ++n) {
            if (unit(random) < 0.3) a[static_cast<AromaNote>(n)] = 200 * unit(random);
            if (unit(random) < 0.3) b[static_cast<AromaNote>(n)] = 200 * unit(random);
        }
        const double d = aroma_distance(a, b, p);
        REQUIRE((d >= 0 && d <= 1));
        REQUIRE(d == Approx(aroma_distance(b, a, p)).margin(1e-12));
        REQUIRE(aroma_distance(a, a, p) == 0);
    }
    CHECK(aroma_distance(Material{}, Material{}, p) == 0);
}

TEST_CASE("cousins are near, strangers far, and losing the seasoning shows") {
    const auto p = middle();
    const auto fennel = blend({{AromaNote::anise, 80}, {AromaNote::warm, 20}});
    const auto anise = blend({{AromaNote::anise, 85}, {AromaNote::warm, 10}});
    const auto cumin = blend({{AromaNote::earthy, 60}, {AromaNote::warm, 40}});
    CHECK(aroma_distance(fennel, anise, p) < 0.03);
    CHECK(aroma_distance(fennel, cumin, p) > 0.4);
    CHECK(aroma_distance(fennel, blend({}), p) > 0.5);
    const auto half = blend({{AromaNote::anise, 40}, {AromaNote::warm, 10}});
    CHECK(aroma_distance(fennel, half, p) > aroma_distance(fennel, anise, p));
    CHECK(aroma_distance(fennel, half, p) < aroma_distance(fennel, cumin, p));
}

TEST_CASE("a trace in a bland mass hardly counts, and the way there is smooth") {
    const auto p = middle();
    const auto bland = blend({});
    double before = 0, slope_before = 0;
    for (int i = 1; i <= 400; ++i) {
        const double d = aroma_distance(bland, blend({{AromaNote::minty, 0.1 * i}}), p);
        CHECK(d > before);
        if (i > 1) {
            CHECK(std::abs(d - before - slope_before) < 1e-3);
        }
        slope_before = d - before;
        before = d;
    }
    CHECK(aroma_distance(bland, blend({{AromaNote::minty, 0.1}}), p) < 0.001);
}

TEST_CASE("aroma is a share of the batch, whatever its size") {
    const auto p = middle();
    const auto a = blend({{AromaNote::allium, 30}}), b = blend({{AromaNote::allium, 20}, {AromaNote::grassy, 15}});
    Material small;
    small.add(a, 0.2);
    CHECK(aroma_distance(small, b, p) == Approx(aroma_distance(a, b, p)));
}

TEST_CASE("the leading notes come strongest first; a faint blend has none") {
    const auto p = middle();
    const auto lead = aroma_words(blend({{AromaNote::allium, 30}, {AromaNote::grassy, 60}, {AromaNote::nutty, 5}}), p);
    REQUIRE(lead.count == 2);
    CHECK(lead.notes[0] == AromaNote::grassy);
    CHECK(lead.notes[1] == AromaNote::allium);
    CHECK(aroma_words(blend({{AromaNote::minty, 1}}), p).count == 0);
    CHECK(aroma_words(Material{}, p).count == 0);
    const auto many = blend({{AromaNote::minty, 50}, {AromaNote::warm, 50}, {AromaNote::citrus, 50}, {AromaNote::woody, 50}});
    CHECK(aroma_words(many, p).count == 3);
}

}  // namespace aroma_test
