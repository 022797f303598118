// Blending to a fat: Pearson's square and worked examples, through formulas.
#include <cmath>

#include "support/catch.hpp"
#include "support/kitchen.hpp"

using namespace standin;

namespace pearson_test {

// Two trims of any fat: copies of pork shoulder whose other parts keep their proportion.
Ingredient trim(const Records& records, const std::string& id, double fat) {
    for (const auto& i : records.ingredients) {
        if (i.id != "pork-shoulder") continue;
        Ingredient made = i;
        made.id = id;
        made.names = {id};
        Composition& c = made.composition;
        const double lean = (100 - fat) / (c.water.mid + c.protein.mid + c.ash.mid);
        for (Band* part : {&c.water, &c.protein, &c.ash}) *part = exactly(part->mid * lean);
        c.fat = exactly(fat);
        c.carbohydrate = exactly(0);
        return made;
    }
    throw std::logic_error("no pork shoulder");
}

struct Blend {
    double fat_of_batch = 0, fat_of_meat = 0;
};

Blend blend(double fatter, double fatter_g, double leaner, double leaner_g, double paste_g = 0) {
    const Knowledge known = changed([&](Records& r) {
        r.ingredients.push_back(trim(r, "fatter-trim", fatter));
        r.ingredients.push_back(trim(r, "leaner-trim", leaner));
    });
    const Nominal view(known);
    std::vector<Line> lines{line("fatter-trim", fatter_g), line("leaner-trim", leaner_g)};
    if (paste_g > 0) lines.push_back(line("water", paste_g));
    const State p = nominal_state(formula(std::move(lines)), view);
    return {p.properties[Property::fat_pct], p.properties[Property::fat_pct_of_meat]};
}

double square(double target, double high, double low) { return (target - low) / (high - low); }

TEST_CASE("Pearson's square, worked examples") {
    // Trade worked example (common practice): belly of 30 % and beef of 12 % to 20 %: 8 parts to 10.
    CHECK(square(20, 30, 12) == Approx(8.0 / 18));
    CHECK(blend(30, 8, 12, 10).fat_of_batch == Approx(20));
    // An exercise of course slides, "Meat Calculations": cow meat of 10 % and trim of 25 % to 20 %, 1000 lb.
    CHECK(1000 * square(20, 25, 10) == Approx(666.7).margin(0.05));
    CHECK(blend(25, 666.67, 10, 333.33).fat_of_batch == Approx(20).margin(0.001));
    // Game without fat and pork butt of 30 %, half and half: 15 %.
    CHECK(blend(30, 500, 0, 500).fat_of_batch == Approx(15));
    // Trade worked examples (common practice): 14 lb lean to 40 % fat takes 9.33 lb; 10 lb lean and 3 lb fat are 23.1 %, not 30.
    CHECK(14 / 0.60 - 14 == Approx(9.33).margin(0.005));
    CHECK(blend(100, 9.3333, 0, 14).fat_of_batch == Approx(40).margin(0.001));
    CHECK(blend(100, 3, 0, 10).fat_of_batch == Approx(23.1).margin(0.05));
}

TEST_CASE("the square holds for every pair and target") {
    for (const double high : {30.0, 60.0, 85.0})
        for (const double low : {2.0, 10.0, 22.0})
            for (double target = low; target <= high; target += (high - low) / 4) {
                const double share = square(target, high, low);
                CAPTURE(high, low, target);
                CHECK(blend(high, 1000 * share + 1e-9, low, 1000 * (1 - share) + 1e-9).fat_of_meat == Approx(target).margin(1e-6));
            }
}

TEST_CASE("paste thins the fat of the batch, not of the meat") {
    const Blend with = blend(30, 500, 10, 500, 250);
    CHECK(with.fat_of_meat == Approx(20));
    CHECK(with.fat_of_batch == Approx(16));
}

TEST_CASE("the trims of the knowledge blend by the square too") {
    const double high = knowledge().ingredient("pork-trim-50")->composition.fat.mid,
                 low = knowledge().ingredient("pork-trim-90")->composition.fat.mid;
    for (const double target : {15.0, 25.0, 33.0}) {
        const double share = square(target, high, low);
        const State state =
            nominal_state(formula({line("pork-trim-50", 2000 * share), line("pork-trim-90", 2000 * (1 - share))}), nominal());
        CHECK(state.properties[Property::fat_pct] == Approx(target).margin(1e-6));
    }
}

TEST_CASE("lean and fat blended to the fat of ground pork have its protein and water") {
    // USDA SR28 10219, ground pork: fat 21.19, protein 16.88, water 61.06.
    const double target = knowledge().ingredient("ground-pork")->composition.fat.mid;
    REQUIRE(target == Approx(21.19).margin(0.01));
    const double high = knowledge().ingredient("pork-backfat")->composition.fat.mid,
                 low = knowledge().ingredient("pork-shoulder-lean")->composition.fat.mid;
    const double share = square(target, high, low);
    const State state =
        nominal_state(formula({line("pork-backfat", 1000 * share), line("pork-shoulder-lean", 1000 * (1 - share))}), nominal());
    WARN("blended to 21.2 % fat: protein " << state.properties[Property::protein_pct] << " (16.88), water "
                                           << state.properties[Property::water_pct] << " (61.06)");
    CHECK(state.properties[Property::protein_pct] == Approx(16.88).margin(1.0));
    CHECK(state.properties[Property::water_pct] == Approx(61.06).margin(1.5));
}

TEST_CASE("water follows protein in the ground meats of the food table") {
    // Closure with 1 % ash and 3.65 g water a gram of protein: protein = (99 - fat) / 4.65 (second-hand rule, checked on SR28 rows).
    for (const char* id :
         {"ground-pork", "ground-pork-84", "ground-pork-96", "ground-beef-70", "ground-beef-80", "ground-beef-90", "pork-shoulder"}) {
        const Composition& c = knowledge().ingredient(id)->composition;
        CAPTURE(id, c.fat.mid, c.protein.mid, c.water.mid);
        CHECK(c.protein.mid == Approx((99 - c.fat.mid) / 4.65).margin(1.5));
        CHECK(c.water.mid == Approx(3.65 * (99 - c.fat.mid) / 4.65).margin(2.5));
    }
}

}  // namespace pearson_test
