// Two complaints at once: the cure of one makes no fault of the other, and neither is answered worse than alone.
#include <algorithm>
#include <string>

#include "standin/mend.hpp"
#include "support/catch.hpp"
#include "support/kitchen.hpp"
#include "support/mended.hpp"

using namespace standin;

namespace mend_together_test {

using namespace mending;

MendAnswer with_list(const Formula& mass, const std::string& tasted, const std::vector<InventoryItem>& items, bool nothing_else = false) {
    MendRequest request;
    request.tasted = {tasted};
    request.have.emplace();
    request.have->items = items;
    if (nothing_else) request.have->complete = true;
    return mend(engine(), mass, request).value();
}

double of(const Prediction& p, Property property) { return p.nominal[property]; }

Formula hot(double salt) {
    return formula({line("pork-shoulder", 2500), line("pork-backfat", 400), line("jalapeno", 150), line("serrano", 80),
                    line("cilantro", 150), line("table-salt", salt), line("garlic", 15)});
}

const Ingoing* find(const std::vector<Ingoing>& all, const std::string& id) {
    const auto found = std::find_if(all.begin(), all.end(), [&](const Ingoing& in) { return in.ingredient == id; });
    return found == all.end() ? nullptr : &*found;
}

TEST_CASE("mend: plain mass against heat does not wash the salt out of a mass that is salty too", "[mend]") {
    for (const double salt : {60.0, 70.0, 85.0})
        for (const char* tasted : {"too hot, too salty", "much too hot, salty", "too salty, too spicy"}) {
            const auto answer = mended(hot(salt), tasted);
            INFO(salt << " " << tasted);
            REQUIRE_FALSE(answer.ways.empty());
            for (const auto& way : answer.ways) {
                CHECK(of(way.prediction, Property::salt_pct_of_meat) >= 1.5);
                CHECK(of(way.prediction, Property::salt_pct_of_meat) < of(answer.base, Property::salt_pct_of_meat));
            }
        }
}

TEST_CASE("mend: a mass that is called salty is not thinned below what its meat binds with", "[mend]") {
    for (const double salt : {45.0, 50.0, 55.0}) {
        const auto answer = mended(formula({line("pork-shoulder", 3000), line("table-salt", salt), line("parsley", 60)}), "too salty");
        INFO(salt);
        for (const auto& way : answer.ways) CHECK(of(way.prediction, Property::salt_pct_of_meat) >= 1.49);
        if (salt < 48) CHECK(answer.ways.empty());
    }
}

TEST_CASE("mend: heat that is asked for comes in with its seeds, and leaf is blanched briefly whatever the formula did", "[mend]") {
    Formula mild = formula({line("pork-shoulder", 2500), line("pork-backfat", 400), line("spinach", 80, {"blanched", "squeezed"}),
                            line("jalapeno", 20, {"seeded"}), line("table-salt", 46)});
    mild.lines[2].prepared.front().minutes = 5;
    const auto answer = with_list(mild, "not green, not hot enough", {{"parsley", 300.0}, {"spinach", 500.0}, {"serrano", 100.0}});
    REQUIRE_FALSE(answer.ways.empty());
    const auto& way = answer.ways.front();
    const Ingoing *pod = find(way.add, "serrano"), *leaf = find(way.add, "spinach");
    REQUIRE(pod);
    CHECK(pod->prepared.empty());
    REQUIRE(leaf);
    CHECK(leaf->weighed_raw);
    for (const auto& step : leaf->prepared) CHECK(step.find("5 min") == std::string::npos);
    for (const auto& want : way.wants) CHECK(want.met);
    // No less leaf than for the green alone.
    const auto alone = with_list(mild, "not green", {{"parsley", 300.0}, {"spinach", 500.0}, {"serrano", 100.0}});
    REQUIRE_FALSE(alone.ways.empty());
    const Ingoing* by_itself = find(alone.ways.front().add, "spinach");
    REQUIRE(by_itself);
    CHECK(leaf->grams >= 0.8 * by_itself->grams);
    // The want for green asks for no more heat.
    CHECK(of(way.prediction, Property::heat_mg_kg) < 2.0);
}

TEST_CASE("mend: leaf for a grey mass is what was asked or told as a step, and powder goes in stirred", "[mend]") {
    const Formula grey = formula({line("pork-shoulder", 2500), line("pork-backfat", 400), line("parsley", 120), line("table-salt", 46)});
    const auto answer = with_list(grey, "grey, not green", {{"spinach", 500.0}, {"spirulina", 20.0}});
    REQUIRE_FALSE(answer.ways.empty());
    REQUIRE(find(answer.ways.front().add, "spinach"));  // fresh leaf before its powder
    // As much as was asked and no more; where that is no green to look at yet it is told.
    for (const auto& want : answer.ways.front().wants) CHECK(want.met);
    CHECK((answer.ways.front().met || !answer.ways.front().colour_left.empty()));
    const auto dried = with_list(grey, "grey, not green", {{"spirulina", 20.0}});
    REQUIRE_FALSE(dried.ways.empty());
    const Ingoing* powder = find(dried.ways.front().add, "spirulina");
    REQUIRE(powder);
    CHECK(powder->how.find("pressed dry") == std::string::npos);
    CHECK(powder->water_g > 0);
    CHECK(answer.words.front().written == "grey, not green");
}

TEST_CASE("mend: leaf that stood in acid overnight is told", "[mend]") {
    Formula sour = formula({line("pork-shoulder", 2500), line("pork-backfat", 400), line("parsley", 120), line("white-wine-vinegar", 60),
                            line("table-salt", 46)});
    sour.process.rest_h = 12;
    const auto told = [](const MendAnswer& answer) {
        return std::any_of(answer.causes.begin(), answer.causes.end(),
                           [](const MakingCause& c) { return c.says.find("vinegar") != std::string::npos; });
    };
    CHECK(told(mended(sour, "not green")));
    sour.process.rest_h = 1;
    CHECK_FALSE(told(mended(sour, "not green")));
}

TEST_CASE("mend: plain mass that needs meat off a closed list says so, and a smaller fold stands beside a large one", "[mend]") {
    const Formula mass = formula(
        {line("pork-shoulder", 2500), line("pork-backfat", 400), line("serrano", 150), line("cilantro", 200), line("table-salt", 46)});
    const auto answer = with_list(mass, "much too hot", {{"spinach", 1000.0}}, true);
    REQUIRE(answer.ways.size() == 2);
    CHECK(answer.ways[1].plain_g < 0.8 * answer.ways[0].plain_g);
    CHECK_FALSE(answer.ways[1].met);
    for (const auto& way : answer.ways) {
        const Ingoing* meat = find(way.plain, "pork-shoulder");
        REQUIRE(meat);
        CHECK(meat->meat);
        CHECK(meat->unlisted);
    }
    CHECK(find(answer.ways[1].plain, "spinach"));
    const auto listed = with_list(mass, "much too hot", {{"pork-shoulder", 9000.0}, {"pork-backfat", 2000.0}}, true);
    REQUIRE_FALSE(listed.ways.empty());
    CHECK_FALSE(find(listed.ways.front().plain, "pork-shoulder")->unlisted);
}

TEST_CASE("mend: rubbery gets a third of plain mass, weighed out, and lean that bites tight is told", "[mend]") {
    Formula tight = formula({line("pork-loin", 2800), line("pork-backfat", 100), line("parsley", 120), line("table-salt", 58)});
    tight.process.mixing_min = 12;
    const auto answer = mended(tight, "rubbery");
    REQUIRE(answer.ways.size() == 1);
    CHECK(answer.ways.front().plain_g > 0.3 * answer.made_g);
    CHECK(answer.ways.front().plain_g < 0.4 * answer.made_g);
    CHECK_FALSE(answer.ways.front().met);
    CHECK(std::any_of(answer.causes.begin(), answer.causes.end(),
                      [](const MakingCause& c) { return c.says.find("bites tight") != std::string::npos; }));
}

}  // namespace mend_together_test
