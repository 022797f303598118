// What costs nothing comes first, and what is weighed in is no more than a bench would put in. Formulas are invented.
#include <algorithm>

#include "support/catch.hpp"
#include "support/mended.hpp"

using namespace standin;

namespace mend_cheapest_test {

using namespace mending;

Formula ramp_chicken() {
    return formula({line("chicken-breast", 2000), line("pork-backfat", 300), line("wild-garlic", 200), line("white-wine", 100),
                    line("table-salt", 38), line("white-pepper", 4)});
}

bool told(const MendAnswer& answer, const std::string& id) {
    return std::any_of(answer.causes.begin(), answer.causes.end(), [&](const MakingCause& c) { return c.id == id; });
}

bool is_dry_binder(const Ingoing& in) {
    const Ingredient& food = *knowledge().ingredient(in.ingredient);
    return food.roles.front() == Role::binder && food.tissue == Tissue::dry;
}

TEST_CASE("mend: where nothing is said of mixing, mixing on comes first, and not where it was mixed well", "[mend]") {
    Formula mass = ramp_chicken();
    for (const char* words : {"crumbly", "crumbly, dry", "falls apart in the pan"}) {
        CAPTURE(words);
        const auto answer = mended(mass, words);
        REQUIRE_FALSE(answer.causes.empty());
        CHECK(answer.causes.front().id == "mixing-unsaid");
        CHECK_FALSE(answer.causes.front().first.empty());
        CHECK_FALSE(answer.causes.front().weighed);
        CHECK_FALSE(answer.ways.empty());  // what is weighed comes after
    }
    mass.process.mixing_min = 4;
    const auto mixed = mended(mass, "crumbly");
    CHECK_FALSE(told(mixed, "mixing-unsaid"));
    CHECK(told(mixed, "rest-unsaid"));
    mass.process.rest_h = 6;
    CHECK_FALSE(told(mended(mass, "crumbly"), "rest-unsaid"));
    mass.lines[4] = line("table-salt", 8);  // without salt no mixing helps
    mass.process.mixing_min.reset();
    CHECK_FALSE(told(mended(mass, "crumbly"), "mixing-unsaid"));
    CHECK(told(mended(ramp_chicken(), "dry"), "core-unsaid"));
    Formula cooked = ramp_chicken();
    cooked.process.core_c = 74;
    CHECK_FALSE(told(mended(cooked, "dry"), "core-unsaid"));
    CHECK(told(mended(ramp_chicken(), "watery"), "rest-unsaid"));
}

TEST_CASE("mend: starch goes in stirred into cold water, sifted only where water is loose, and a few spoons of it", "[mend]") {
    const std::vector<Formula> masses{
        ramp_chicken(),
        formula(
            {line("pork-shoulder", 2500), line("table-salt", 40), line("fennel-seed", 15), line("white-wine", 100), line("garlic", 20)}),
        formula({line("beef-chuck", 1500), line("beef-suet", 200), line("kale", 250, {"blanched", "squeezed"}), line("table-salt", 28)})};
    bool any = false, stirred = false;
    for (const auto& mass : masses)
        for (const char* words : {"crumbly", "crumbly, dry", "dry", "watery"}) {
            CAPTURE(words);
            const auto answer = mended(mass, words);
            const std::string said = words;
            const bool dry = said.find("dry") != std::string::npos;
            const bool wet = said == "watery";
            for (const auto& way : answer.ways) {
                double starch = 0;
                for (const auto& in : way.add) {
                    if (!is_dry_binder(in)) continue;
                    any = true;
                    starch += in.grams;
                    const bool sifted = in.how.find("sifted") != std::string::npos;
                    CHECK(sifted == (in.water_g == 0));
                    if (wet) CHECK(sifted);
                    if (dry) CHECK(in.water_g >= in.grams);
                    if (!sifted) stirred = true;
                }
                CHECK(starch <= 0.026 * (answer.made_g + way.plain_g));
            }
        }
    CHECK(any);
    CHECK(stirred);
}

TEST_CASE("mend: a dry mass takes fat as far as it holds together, and no cured fat that nobody named", "[mend]") {
    for (const char* meat : {"turkey-thigh", "chicken-breast", "venison", "pork-loin"}) {
        Formula mass = formula({line(meat, 2000), line("spinach", 150, {"blanched", "squeezed"}), line("parsley", 80),
                                line("table-salt", 30), line("cider-vinegar", 60)});
        const auto answer = mended(mass, "dry");
        CAPTURE(meat);
        REQUIRE_FALSE(answer.ways.empty());
        for (const auto& way : answer.ways) {
            const double was = answer.base.nominal[Property::bind], is = way.prediction.nominal[Property::bind];
            CHECK((is >= 40 || was - is < 9));
            for (const auto& in : way.add) CHECK(knowledge().ingredient(in.ingredient)->already.empty());
        }
    }
}

TEST_CASE("mend: additions that go most of the way come before a second mass", "[mend]") {
    const auto answer = mended(ramp_chicken(), "crumbly, dry");
    REQUIRE_FALSE(answer.ways.empty());
    const auto& way = answer.ways.front();
    CHECK(way.plain.empty());
    double fat = 0, starch = 0;
    for (const auto& in : way.add) {
        fat += in.ingredient == "pork-backfat" ? in.grams : 0;
        starch += is_dry_binder(in) ? in.grams : 0;
    }
    const double kilos = answer.made_g / 1000;
    CHECK(fat / kilos > 35);
    CHECK(fat / kilos < 65);
    CHECK(starch / kilos > 8);
    CHECK(starch / kilos < 25.5);
}

}  // namespace mend_cheapest_test
