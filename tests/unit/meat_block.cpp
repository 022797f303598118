// Lean and fat put each other right when one of them is swapped.
#include "adapt/variants/meat_block.hpp"

#include "support/advising.hpp"
#include "support/catch.hpp"

using namespace standin;

namespace meat_block_test {

Formula base() { return formula({line("pork-shoulder", 1500), line("pork-backfat", 500), line("table-salt", 34)}); }

double total(const Formula& formula, Amount amount) { return NominalBatch(formula, nominal()).total()[amount]; }

// The base with one line's food changed, the block held.
Formula swapped(std::size_t place, const std::string& food, Role role, std::vector<Trim>& trims, double most = 1e9) {
    Advising advising(base(), {});
    Formula variant = base();
    variant.lines[place].ingredient = food;
    trims = hold_meat_block(variant, base(), place, role, most, advising.context());
    return variant;
}

TEST_CASE("leaner meat comes with more fat, and the block keeps its weight and its fat") {
    std::vector<Trim> trims;
    const Formula variant = swapped(0, "pork-leg-lean", Role::lean, trims);
    REQUIRE(trims.size() == 1);
    CHECK(trims.front().line == "pork-backfat");
    CHECK(trims.front().grams_after > trims.front().grams_before);
    CHECK(total(variant, Amount::mass) == Approx(total(base(), Amount::mass)).epsilon(0.002));
    CHECK(total(variant, Amount::fat) == Approx(total(base(), Amount::fat)).epsilon(0.01));
}

TEST_CASE("belly for backfat brings lean along, which the lean line gives up") {
    std::vector<Trim> trims;
    const Formula variant = swapped(1, "pork-belly", Role::fat, trims);
    REQUIRE(trims.size() == 1);
    CHECK(trims.front().line == "pork-shoulder");
    CHECK(trims.front().grams_after < trims.front().grams_before);
    CHECK(variant.lines[1].grams.mid > 500);
    CHECK(total(variant, Amount::fat) == Approx(total(base(), Amount::fat)).epsilon(0.01));
}

TEST_CASE("what is no meat, a kept line or too much of it moves nothing") {
    std::vector<Trim> trims;
    swapped(1, "lard", Role::fat, trims);
    CHECK(trims.empty());
    swapped(1, "pork-belly", Role::fat, trims, 600);
    CHECK(trims.empty());
    Advising advising(base(), {});
    Formula kept = base(), variant = base();
    kept.lines[0].keep = variant.lines[0].keep = true;
    variant.lines[1].ingredient = "pork-belly";
    CHECK(hold_meat_block(variant, kept, 1, Role::fat, 1e9, advising.context()).empty());
}

}  // namespace meat_block_test
