// What follows a swap: salt, water and acid of the other lines.
#include "adapt/variants/trims.hpp"

#include "support/advising.hpp"
#include "support/catch.hpp"

using namespace standin;

namespace trims_test {

Formula base() {
    return formula({line("pork-shoulder", 2000), line("table-salt", 36), line("spinach", 300, {"blanched"}), line("cider-vinegar", 60),
                    line("water", 100)});
}

Trimmed after(const Formula& swapped, std::size_t number) {
    Advising advising(base(), {});
    const Context context = advising.context();
    return trimmed_after(swapped, number, context.nominal().unit(swapped.lines[number]), advising.distance(), context);
}

TEST_CASE("where nothing was swapped nothing follows") {
    const Trimmed same = after(base(), 2);
    CHECK(same.trims.empty());
    CHECK(same.distance == Approx(0).margin(1e-6));
}

TEST_CASE("a salty stand-in takes salt out of the salt line, and out of no other but salt, water and acid") {
    Formula swapped = base();
    swapped.lines[2] = line("soy-sauce", 150);
    const Trimmed trimmed = after(swapped, 2);
    REQUIRE_FALSE(trimmed.trims.empty());
    double salt = 0;
    for (const auto& trim : trimmed.trims) {
        CHECK((trim.line == "table-salt" || trim.line == "water" || trim.line == "cider-vinegar"));
        if (trim.line != "table-salt") CHECK(std::abs(trim.grams_after - trim.grams_before) <= 0.45 * trim.grams_before);
        else salt = trim.grams_after - trim.grams_before;
    }
    CHECK(salt < 0);
    const auto salt_in = [](const Formula& mass) { return NominalBatch(mass, nominal()).total()[Amount::salt]; };
    CHECK(std::abs(salt_in(trimmed.formula) - salt_in(base())) < 0.6);  // all of it is closed
    CHECK(trimmed.formula.lines[0].grams.mid == 2000);
    CHECK(trimmed.formula.lines[2].grams.mid == 150);
}

TEST_CASE("trimming never ends further from the base than leaving it alone") {
    for (const char* food : {"soy-sauce", "kale", "chard", "feta", "sauerkraut"}) {
        CAPTURE(food);
        if (!knowledge().ingredient(food)) continue;
        Formula swapped = base();
        swapped.lines[2] = line(food, 200);
        Advising advising(base(), {});
        const NominalBatch batch(swapped, nominal());
        const double untouched = advising.distance().of(batch.total(), batch.state());
        CHECK(after(swapped, 2).distance <= untouched + 0.05);  // weights are rounded to what a scale shows
    }
}

TEST_CASE("a kept line does not follow") {
    Formula swapped = base();
    swapped.lines[1].keep = true;
    swapped.lines[2] = line("soy-sauce", 150);
    for (const auto& trim : after(swapped, 2).trims) CHECK(trim.line != "table-salt");
}

}  // namespace trims_test
