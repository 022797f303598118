// A dry patty: firm fat folded in with the salt its meat has, water held where there is no fat, and never an untrue reason.
#include <algorithm>
#include <cmath>

#include "standin/mend.hpp"
#include "support/catch.hpp"
#include "support/kitchen.hpp"

using namespace standin;

namespace mend_dry_test {

const Engine& engine() {
    static const Engine opened_once = opened(128);
    return opened_once;
}

MendAnswer dry(const Formula& mass, std::optional<Inventory> have = {}) {
    MendRequest request;
    request.tasted = {"dry"};
    request.have = std::move(have);
    return mend(engine(), mass, request).value();
}

Formula turkey() { return formula({line("turkey-breast", 4000), line("table-salt", 68), line("parsley", 120), line("garlic", 60)}); }

double added(const MendWay& way, const std::string& id) {
    double sum = 0;
    for (const auto& in : way.add) sum += in.ingredient == id ? in.grams : 0;
    return sum;
}

double salt_of_meat(const Prediction& p) { return p.properties[Property::salt_pct_of_meat].mid; }

TEST_CASE("mend: back fat on the list mends lean meat that is dry, and the animal it brings is told", "[mend]") {
    Inventory have;
    have.items = {{"pork-backfat", 1000.0}};
    const auto answer = dry(turkey(), have);
    REQUIRE_FALSE(answer.ways.empty());
    const auto& way = answer.ways.front();
    CHECK(way.met);
    const double of_mass = added(way, "pork-backfat") / answer.made_g;
    CHECK(of_mass > 0.1);
    CHECK(of_mass < 0.17);
    CHECK(way.prediction.properties[Property::fat_pct].mid > 12);
    CHECK(way.new_animals == std::vector<std::string>{"pork"});
    CHECK(std::abs(salt_of_meat(way.prediction) / salt_of_meat(answer.base) - 1) < 0.03);
    CHECK(answer.only_listed);
}

TEST_CASE("mend: without a list lean meat gets fat of its own animal, no other", "[mend]") {
    const auto answer = dry(turkey());
    REQUIRE_FALSE(answer.ways.empty());
    // Fat is what it lacks: that stands first, and goes most of the way.
    CHECK(answer.ways.front().prediction.properties[Property::fat_pct].mid > 9);
    for (const auto& way : answer.ways) CHECK(way.new_animals.empty());
}

TEST_CASE("mend: oil and soft fat that the list names are fat, and lean fish takes a little oil", "[mend]") {
    Inventory have;
    have.items = {{"sunflower-oil", 300.0}, {"chicken-fat", 300.0}, {"potato-starch", 100.0}};
    const auto bird = dry(turkey(), have);
    REQUIRE_FALSE(bird.ways.empty());
    CHECK(added(bird.ways.front(), "sunflower-oil") + added(bird.ways.front(), "chicken-fat") > 250);
    CHECK(added(bird.ways.front(), "potato-starch") == 0);
    have.items = {{"olive-oil", 300.0}, {"potato-starch", 100.0}};
    const auto fish = dry(formula({line("cod", 2000), line("dill", 60), line("table-salt", 30)}), have);
    REQUIRE_FALSE(fish.ways.empty());
    CHECK(added(fish.ways.front(), "olive-oil") > 50);
    CHECK(added(fish.ways.front(), "olive-oil") < 180);
}

TEST_CASE("mend: what holds the juice of a dry mass goes in with water", "[mend]") {
    Inventory have;
    have.items = {{"potato-starch", 200.0}};
    for (const char* meat : {"turkey-breast", "chicken-breast", "salmon"}) {
        const auto answer = dry(formula({line(meat, 2500), line("table-salt", 45), line("parsley", 100)}), have);
        INFO(meat);
        for (const auto& way : answer.ways)
            for (const auto& in : way.add)
                if (in.ingredient == "potato-starch") CHECK(in.water_g >= in.grams);
    }
}

TEST_CASE("mend: fat that is in the formula is raised all the way", "[mend]") {
    const Formula stag = formula({line("venison", 1700), line("pork-backfat", 300), line("table-salt", 33), line("red-wine", 80)});
    Inventory have;
    have.items = {{"pork-backfat", 1000.0}};
    const auto answer = dry(stag, have);
    REQUIRE_FALSE(answer.ways.empty());
    CHECK(answer.ways.front().met);
    CHECK(added(answer.ways.front(), "pork-backfat") > 80);
    CHECK(answer.ways.front().prediction.properties[Property::fat_pct].mid < 25);
    CHECK(std::abs(salt_of_meat(answer.ways.front().prediction) / salt_of_meat(answer.base) - 1) < 0.03);
}

TEST_CASE("mend: fat in short supply goes part of the way, and that is not called mended", "[mend]") {
    Inventory have;
    have.items = {{"pork-backfat", 90.0}};
    const auto answer = dry(turkey(), have);
    REQUIRE_FALSE(answer.ways.empty());
    CHECK_FALSE(answer.ways.front().met);
    CHECK(added(answer.ways.front(), "pork-backfat") <= 90);
    CHECK(added(answer.ways.front(), "pork-backfat") > 40);
}

}  // namespace mend_dry_test
