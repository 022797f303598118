// Which published column a bird goes by, right at its limits, and that the choice goes by the nominal fat of the batch.
#include "models/lethality.hpp"
#include "support/catch.hpp"
#include "support/kitchen.hpp"

using namespace standin;

TEST_CASE("a column holds up to its fat and no further") {
    constexpr double hair = 1e-9;
    CHECK(poultry_column(Species::chicken, 1) == PoultryColumn::chicken_lean);
    CHECK(poultry_column(Species::chicken, 1 + hair) == PoultryColumn::chicken_5);
    CHECK(poultry_column(Species::chicken, 5) == PoultryColumn::chicken_5);
    CHECK(poultry_column(Species::chicken, 5 + hair) == PoultryColumn::poultry_12);
    CHECK(poultry_column(Species::chicken, 12) == PoultryColumn::poultry_12);
    CHECK_FALSE(poultry_column(Species::chicken, 12 + hair));
    CHECK(poultry_column(Species::turkey, 1) == PoultryColumn::turkey_lean);
    CHECK_FALSE(poultry_column(Species::turkey, 1 + hair));
}

TEST_CASE("fat added until a table ends: the answer changes where the nominal fat crosses, for every seed alike") {
    // 12 % of fat in the whole batch is where the last column of chicken ends.
    const auto fat_of = [](double oil) {
        return nominal_state(formula({line("chicken-breast", 1000), line("olive-oil", oil), line("table-salt", 16)}), nominal())
            .properties[Property::fat_pct];
    };
    double below = 0, above = 400;
    for (int halved = 0; halved < 40; ++halved) (fat_of((below + above) / 2) < 12 ? below : above) = (below + above) / 2;
    const auto table_at = [](double oil, std::uint64_t seed) {
        Formula made = formula({line("chicken-breast", 1000), line("olive-oil", oil), line("table-salt", 16)});
        made.process.core_c = 60;  // within the table
        const auto lethality = predict_formula(made, Evaluator(knowledge(), 32, seed)).lethality;
        return lethality ? lethality->table : std::string();
    };
    for (std::uint64_t seed = 1; seed <= 10; ++seed) {
        CAPTURE(seed);
        CHECK(table_at(below - 0.5, seed) != "");
        CHECK(table_at(above + 0.5, seed) == "");
    }
}
