// Two complaints that pull apart, and a mass mixed without its salt: what one word forbids the other does not bring.
#include <algorithm>
#include <string>

#include "standin/mend.hpp"
#include "support/catch.hpp"
#include "support/kitchen.hpp"
#include "support/mended.hpp"

using namespace standin;

namespace mend_apart_test {

using namespace mending;

Formula with_leaf(const std::string& bitter, double acid) {
    return formula({line("pork-shoulder", 1800), line("pork-backfat", 350), line(bitter, 280, {"blanched", "squeezed"}),
                    line("cider-vinegar", acid), line("table-salt", 36), line("garlic", 12)});
}

bool brings(const MendWay& way, const std::string& id) {
    const auto is = [&](const Ingoing& in) { return in.ingredient == id; };
    return std::any_of(way.add.begin(), way.add.end(), is) || std::any_of(way.plain.begin(), way.plain.end(), is);
}

bool tells(const MendAnswer& answer, const std::string& cause) {
    return std::any_of(answer.causes.begin(), answer.causes.end(), [&](const MakingCause& one) { return one.id == cause; });
}

TEST_CASE("mend: what is bitter is not brought for the green, and it is said that the two pull apart", "[mend]") {
    for (const char* leaf : {"mustard-greens", "dandelion"})
        for (const char* tasted : {"bitter, not green", "not green, too bitter"})
            for (const double acid : {20.0, 80.0}) {
                const auto answer = mended(with_leaf(leaf, acid), tasted);
                INFO(leaf << " " << tasted << " " << acid);
                REQUIRE_FALSE(answer.ways.empty());
                for (const auto& way : answer.ways) CHECK_FALSE(brings(way, leaf));
                CHECK(tells(answer, "bitter-leaf-green"));
            }
    CHECK_FALSE(tells(mended(with_leaf("mustard-greens", 40), "not green"), "bitter-leaf-green"));
}

TEST_CASE("mend: no leaf goes into a mass whose acid turns it, whatever else was tasted", "[mend]") {
    for (const char* tasted : {"too sour, not green", "too salty, not green", "bitter, not green"}) {
        Formula mass = with_leaf("dandelion", 80);
        if (std::string(tasted).find("salty") != std::string::npos) mass.lines[4] = line("table-salt", 58);
        const auto answer = mended(mass, tasted);
        INFO(tasted);
        REQUIRE(tells(answer, "acid-on-leaf"));
        for (const auto& way : answer.ways) {
            for (const auto& in : way.add) CHECK(knowledge().ingredient(in.ingredient)->roles.front() != Role::green);
            CHECK_FALSE(brings(way, "cider-vinegar"));
        }
    }
}

TEST_CASE("mend: salt that was forgotten goes in and is mixed on, with nothing else and no second kind of salt", "[mend]") {
    for (const double minutes : {2.0, 3.0, 4.0}) {
        Formula mass = formula(
            {line("pork-shoulder", 3000), line("pork-backfat", 600), line("spinach", 300, {"blanched", "squeezed"}), line("garlic", 30)});
        mass.process.mixing_min = minutes;
        mass.process.mixed_at_c = 3;
        const auto answer = mended(mass, "flat, crumbly");
        INFO(minutes);
        REQUIRE(answer.ways.size() == 1);
        const MendWay& way = answer.ways.front();
        CHECK(way.work_min > 0);
        REQUIRE(way.add.size() == 1);
        CHECK(way.add.front().ingredient == "table-salt");
    }
}

TEST_CASE("mend: salt goes in as far as salt is asked for, not on to where it binds", "[mend]") {
    Formula fish = formula({line("cod", 1000), line("cream", 100), line("dill", 60), line("table-salt", 12)});
    fish.process.mixing_min = 2;
    for (const auto& answer : {mended(fish, "crumbly"), mended(fish, "crumbly, flat")})
        for (const auto& way : answer.ways) CHECK(way.prediction.nominal[Property::salt_pct_of_meat] <= 2.01);
}

TEST_CASE("mend: plain mass against a tight bite is as much as makers fold in, and told once", "[mend]") {
    Formula mass =
        formula({line("pork-shoulder", 1000), line("pork-backfat", 100), line("breadcrumb", 80), line("egg", 150), line("table-salt", 24)});
    mass.process.mixing_min = 8;
    const auto answer = mended(mass, "rubbery");
    REQUIRE_FALSE(answer.ways.empty());
    CHECK(answer.ways.front().plain_g > 0.33 * answer.made_g);
    CHECK(answer.ways.front().plain_g < 0.5 * answer.made_g);
    CHECK(tells(answer, "mixed-long-tight"));
    for (const auto& cause : answer.causes)
        if (cause.id == "firm-binders") CHECK(cause.first.empty());
}

TEST_CASE("mend: what a kitchen's meter does not tell apart is not called far off", "[mend]") {
    for (const char* measured : {"salt 2.1 %", "salt 2.6 %"}) {
        MendRequest request;
        request.tasted = {"too salty"};
        request.measured = {measured};
        const auto answer =
            mend(engine(), formula({line("pork-shoulder", 1800), line("pork-backfat", 150), line("table-salt", 40)}), request).value();
        REQUIRE(answer.measured.size() == 1);
        CHECK(answer.measured.front().far == (std::string(measured) == "salt 2.6 %"));
    }
}

}  // namespace mend_apart_test
