// Lethality against published times.
#include "models/lethality.hpp"

#include <array>

#include "published/rows.hpp"
#include "support/catch.hpp"
#include "support/parameters.hpp"

using namespace standin;

namespace lethality_test {

LethalityParameters middle() { return middle_parameters(lethality_bindings()); }

double celsius(double fahrenheit) { return (fahrenheit - 32) / 1.8; }

/// Uncapped logs without the margin: the tables are of the meat itself.
double table_logs(double fahrenheit, double seconds) {
    const auto p = middle();
    const double c = celsius(fahrenheit);
    return f70_s(std::array<CorePoint, 2>{{{0, c}, {seconds, c}}}, p.z_c, 0) / p.d70_s;
}

TEST_CASE("USDA-FSIS Appendix A: 6.5 and 7 logs, every row from 130 to 157 F") {
    const auto rows = published_rows("appendix_a.csv", 0);
    REQUIRE(rows.size() == 28);
    for (const auto& row : rows) {
        INFO(row.values[0] << " F");
        CHECK(table_logs(row.values[0], row.values[1]) == Approx(6.5).epsilon(0.11));  // worst row 10 % (139 F, rounded to a minute)
        CHECK(table_logs(row.values[0], row.values[2]) == Approx(7.0).epsilon(0.07));
    }
}

TEST_CASE("holds of the Food Code for ground meat come to 5 logs or more (3-401.11; the 5 log label is a training sheet's)") {
    CHECK(table_logs(155, 17) == Approx(5.05).epsilon(0.01));
    CHECK(table_logs(150, 60) == Approx(5.64).epsilon(0.01));
    CHECK(table_logs(145, 180) == Approx(5.36).epsilon(0.01));
}

TEST_CASE("poultry takes longer than red meat, turkey longer than chicken, fat longer than lean (USDA-FSIS 2005 tables)") {
    const auto p = middle();
    const auto hold = [&](PoultryColumn column, double f) { return poultry_hold_s(column, celsius(f), p).value(); };
    for (double f : {140.0, 145.0, 150.0, 155.0, 160.0}) {
        CHECK(hold(PoultryColumn::turkey_lean, f) > hold(PoultryColumn::chicken_lean, f));
        CHECK(hold(PoultryColumn::chicken_5, f) > hold(PoultryColumn::chicken_lean, f));
        CHECK(table_logs(f, hold(PoultryColumn::chicken_lean, f)) > 7);
    }
    CHECK(hold(PoultryColumn::poultry_12, 140) > hold(PoultryColumn::chicken_5, 140));
    CHECK(hold(PoultryColumn::poultry_12, 140) == Approx(35 * 60));
}

TEST_CASE("71 C reached slowly at the core is far past 7 logs, margin and all") {
    const auto p = middle();
    CHECK(log_reductions(std::array<CorePoint, 2>{{{0, 54.4}, {501, 71.1}}}, p) == p.cap_logs);  // 2 C a minute
}

}  // namespace lethality_test
