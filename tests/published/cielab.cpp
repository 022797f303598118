// CIEDE2000 and sRGB against numbers of others.
#include "models/cielab.hpp"

#include "published/rows.hpp"
#include "support/catch.hpp"

using namespace standin;

TEST_CASE("the 34 CIEDE2000 pairs of Sharma, Wu, Dalal 2005, Table 1, in both orders") {
    const auto rows = published_rows("ciede2000_pairs.csv", 0);
    REQUIRE(rows.size() == 34);
    for (const auto& [text, v] : rows) {
        REQUIRE(v.size() == 7);
        const Lab one{v[0], v[1], v[2]}, other{v[3], v[4], v[5]};
        CHECK(ciede2000(one, other) == Approx(v[6]).epsilon(0).margin(1e-4));
        CHECK(ciede2000(other, one) == Approx(v[6]).epsilon(0).margin(1e-4));
    }
}

TEST_CASE("sRGB primaries, as printed in two public test files") {
    struct Row {
        int r, g, b;
        Lab lab;
    };
    // they use finer matrices than IEC 61966-2-1's four digits: 0.03 apart
    for (const Row& row : {Row{255, 0, 0, {53.24, 80.09, 67.20}}, Row{0, 255, 0, {87.73, -86.18, 83.18}},
                           Row{0, 0, 255, {32.30, 79.19, -107.86}}, Row{255, 255, 255, {100, 0, 0}}}) {
        const Lab lab = lab_of_bytes(row.r, row.g, row.b);
        CHECK(lab.L == Approx(row.lab.L).epsilon(0).margin(0.03));
        CHECK(lab.a == Approx(row.lab.a).epsilon(0).margin(0.03));
        CHECK(lab.b == Approx(row.lab.b).epsilon(0).margin(0.03));
    }
}

// A second implementation (Python) with the same matrices: guards the port, proves no standard.
TEST_CASE("sRGB rows worked out independently") {
    const auto near = [](int r, int g, int b, const Lab& lab) { return ciede2000(lab_of_bytes(r, g, b), lab) < 1e-3; };
    CHECK(near(119, 119, 119, {50.034, 0.003, -0.006}));
    CHECK(near(85, 107, 47, {42.234, -18.828, 30.597}));
    CHECK(near(107, 142, 35, {54.651, -28.223, 49.691}));
    CHECK((srgb_bytes({49.30, -3.43, 23.26}) == std::array<int, 3>{126, 118, 78}));
    CHECK((srgb_bytes({63.33, 8.69, 11.05}) == std::array<int, 3>{176, 147, 134}));
    CHECK(hex_of({63.33, 8.69, 11.05}) == "#b09386");
}
