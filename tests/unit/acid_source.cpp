#include <array>
#include <vector>

#include "models/acid.hpp"
#include "support/catch.hpp"
#include "support/parameters.hpp"

using namespace standin;

namespace acid_source_test {

const AcidParameters& middle() {
    static const AcidParameters parameters = middle_parameters(acid_bindings());
    return parameters;
}

double ph_of(const Material& m) { return batch_acid(m, middle()).ph; }

TEST_CASE("clear acids and the ideal buffer") {
    const auto ph = [](Acid acid, double mol, double strong, bool ideal) {
        const auto j = static_cast<std::size_t>(acid);
        const Dissolved only[] = {{std::span(middle().pka[j]).first(basicity[j]), mol}};
        return solve_solution(only, strong, middle(), ideal).ph;
    };
    CHECK(ph(Acid::citric, 0.01, 0, false) == Approx(2.623).margin(0.002));
    CHECK(ph(Acid::citric, 0.1, 0, false) == Approx(2.083).margin(0.002));
    CHECK(ph(Acid::oxalic, 0.05, 0, false) == Approx(1.537).margin(0.002));
    CHECK(ph(Acid::ascorbic, 0.1, 0, true) == Approx(2.556).margin(0.002));
    CHECK(ph(Acid::acetic, 0.2, 0.1, true) == Approx(4.757).margin(0.001));  // Henderson-Hasselbalch
    CHECK(ph(Acid::acetic, 0.2, 0.1, false) == Approx(4.650).margin(0.002));
    CHECK(solve_solution({}, 0, middle()).ph == Approx(7).margin(0.01));
    CHECK(solve_solution({}, 0.01, middle(), true).ph == Approx(11.997).margin(0.001));
    CHECK(solve_solution({}, -0.01, middle(), true).ph == Approx(2).margin(0.001));
}

TEST_CASE("titratable acid in its units") {
    CHECK(titratable_mmol_kg(250, "mmol/kg").value() == 250);
    CHECK(titratable_mmol_kg(12.3, "g/kg citric").value() == Approx(192.1).margin(0.1));
    CHECK(titratable_mmol_kg(50, "g/kg acetic").value() == Approx(832.6).margin(0.1));
    CHECK(titratable_mmol_kg(6, "g/kg tartaric").value() == Approx(79.95).margin(0.01));
    for (const char* unit : {"", "g/kg", "g/kg ", "g/kg lemon", "g/L citric", "%"}) CHECK(!titratable_mmol_kg(1, unit));
}

TEST_CASE("an acid ingredient keeps its titratable acid and its pH") {
    struct Row {
        double ph, titratable;
        std::vector<AcidShare> shares;
    };
    const Row rows[] = {{2.42, 833, {{Acid::acetic, 1}}},
                        {2.3, 750, {{Acid::citric, 0.95}, {Acid::malic, 0.05}}},
                        {3.87, 192, {{Acid::citric, 0.9}, {Acid::malic, 0.1}}},
                        {3.4, 80, {{Acid::tartaric, 0.6}, {Acid::malic, 0.3}, {Acid::lactic, 0.1}}},
                        {4.4, 100, {{Acid::lactic, 1}}},
                        {5.0, 400, {{Acid::acetic, 1}}},
                        {3.7, 178, {{Acid::oxalic, 0.5}, {Acid::phosphoric, 0.2}}}};
    for (const auto& row : rows) {
        const AcidBase base = decompose(row.ph, row.titratable, row.shares, middle(), 0.93);
        Material m;
        m[Amount::mass] = 1000;
        m[Amount::water] = 930;
        m[Amount::strong_ions] = base.strong;
        m[Amount::plant_buffer] = base.buffer;
        m[Amount::plant_buffer_ph] = base.buffer * row.ph;
        for (std::size_t j = 0; j < count_of<Acid>; ++j) m[static_cast<Acid>(j)] = base.acids[j];
        CAPTURE(row.ph);
        CHECK(base.buffer >= 0);
        CHECK(ph_of(m) == Approx(row.ph).margin(0.07));  // the batch takes another ionic strength than the ingredient alone
        // Alkali as titrated ends at 8.2; the activities differ a little between the two, hence the 2 %.
        m[Amount::strong_ions] = base.strong + 0.98 * row.titratable;
        CHECK(ph_of(m) < 8.2);
        m[Amount::strong_ions] = base.strong + 1.02 * row.titratable;
        CHECK(ph_of(m) > 8.2);
    }
}

TEST_CASE("fermented milk is not taken for lactate: protein and phosphate are buffer") {
    const std::array<AcidShare, 1> lactic{{{Acid::lactic, 1}}};
    const AcidBase yoghurt = decompose(4.4, 100, lactic, middle());
    CHECK(yoghurt.acids[1] == Approx(200));
    CHECK(yoghurt.buffer > 10);
    const std::array<AcidShare, 1> citric{{{Acid::citric, 1}}};
    CHECK(decompose(3.87, 192.1, citric, middle()).buffer == Approx(0).margin(1e-6));
}

}  // namespace acid_source_test
