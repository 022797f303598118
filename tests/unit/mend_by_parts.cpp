// Plain mass goes in by parts, and thins no taste that was not asked about further than was asked. Formulas are invented.
#include <algorithm>
#include <cmath>

#include "core/contains.hpp"
#include "support/catch.hpp"
#include "support/mended.hpp"

using namespace standin;

namespace mend_by_parts_test {

using namespace mending;

Formula jerk() {
    return formula({line("pork-shoulder", 2000), line("pork-backfat", 300), line("scallion", 100), line("habanero", 40, {"seeded"}),
                    line("dried-thyme", 10), line("allspice", 6), line("rum", 38), line("lime-juice", 30), line("brown-sugar", 15),
                    line("table-salt", 40)});
}

double of_plain(const MendWay& way, const std::string& id) {
    double sum = 0;
    for (const auto& in : way.plain) sum += in.ingredient == id ? in.grams : 0;
    return sum;
}

TEST_CASE("mend: no part of plain mass that makes a taste less is two thirds of the mass or more", "[mend]") {
    const std::vector<std::pair<Formula, const char*>> cases{
        {jerk(), "too hot"},
        {jerk(), "too hot, too sour"},
        {formula({line("lamb-shoulder", 1800), line("lamb-fat", 300), line("table-salt", 34), line("cayenne-powder", 12)}), "burns"},
        {formula({line("pork-shoulder", 2000), line("table-salt", 90)}), "much too salty"},
        {formula({line("turkey-thigh", 2000), line("table-salt", 34), line("cider-vinegar", 160)}), "sour"},
        {formula({line("pork-shoulder", 1000), line("pork-backfat", 900), line("table-salt", 34)}), "greasy"}};
    std::size_t by_parts = 0;
    for (const auto& [mass, words] : cases) {
        CAPTURE(words);
        const auto answer = mended(mass, words);
        REQUIRE_FALSE(answer.ways.empty());
        for (const auto& way : answer.ways) {
            if (way.plain.empty()) continue;
            CHECK(way.plain_rounds >= 1);
            CHECK(way.plain_g / way.plain_rounds < 0.68 * answer.made_g);
            by_parts += way.plain_rounds > 1;
            if (way.plain_rounds == 1) continue;
            REQUIRE_FALSE(way.after_first.empty());
            for (const auto& after : way.after_first) {  // between the two
                CHECK(after.value <= answer.base.nominal[after.property] + 1e-9);
                CHECK(after.value >= way.prediction.nominal[after.property] - 1e-9);
            }
        }
    }
    CHECK(by_parts > 2);
}

TEST_CASE("mend: against heat and sour at once as much acid goes back as keeps the sour right", "[mend]") {
    const auto answer = mended(jerk(), "too hot, too sour");
    REQUIRE_FALSE(answer.ways.empty());
    const auto& way = answer.ways.front();
    CHECK(way.met);
    CHECK(of_plain(way, "habanero") == 0);
    CHECK(of_plain(way, "lime-juice") > 5);
    CHECK(of_plain(way, "lime-juice") < 27);
    CHECK(contains(way.plain_less, std::string("lime juice")));
    CHECK_FALSE(contains(way.plain_lacks, std::string("lime juice")));
    const double was = answer.base.nominal[Property::sourness_mmol_kg], is = way.prediction.nominal[Property::sourness_mmol_kg];
    CHECK(is <= 0.785 * was);
    CHECK(is > 0.6 * was);  // a step, and not two
    // Alone no acid goes back: all of it is what was too much.
    for (const auto& alone : mended(jerk(), "too sour").ways) CHECK(alone.plain_less.empty());
}

TEST_CASE("mend: leaf is no acid, and stays in the plain mass of a sour one; sorrel does not", "[mend]") {
    for (const char* leaf : {"cilantro", "parsley", "spinach"}) {
        CAPTURE(leaf);
        const auto answer = mended(formula({line("pork-shoulder", 2000), line("pork-backfat", 300), line("table-salt", 40),
                                            line("cider-vinegar", 60), line(leaf, 200)}),
                                   "too sour");
        REQUIRE_FALSE(answer.ways.empty());
        CHECK(of_plain(answer.ways.front(), leaf) > 0);
        CHECK(of_plain(answer.ways.front(), "cider-vinegar") == 0);
    }
    const auto sorrel =
        mended(formula({line("pork-shoulder", 2000), line("table-salt", 36), line("cider-vinegar", 60), line("sorrel", 200)}), "too sour");
    REQUIRE_FALSE(sorrel.ways.empty());
    CHECK(of_plain(sorrel.ways.front(), "sorrel") == 0);
}

TEST_CASE("mend: where the list is short of what plain mass takes, it is told and nothing else", "[mend]") {
    MendRequest request;
    request.tasted = {"too salty"};
    request.have = Inventory{};
    request.have->items = {{"pork-backfat", 100.0}};
    request.have->complete = true;
    const auto mass = formula({line("pork-shoulder", 800), line("pork-backfat", 200), line("table-salt", 32), line("spinach", 80)});
    const auto answer = mend(engine(), mass, request).value();
    CHECK(answer.ways.empty());
    REQUIRE(answer.cannot.size() == 1);
    CHECK(answer.cannot.front().foods == std::vector<std::string>{"pork shoulder"});
}

TEST_CASE("mend: plain mass for one that is too salty and dry keeps its fat; for a greasy one it does not", "[mend]") {
    const auto cevap = formula({line("beef-chuck", 2000), line("beef-fat", 400), line("parsley", 40), line("onion", 150),
                                line("table-salt", 52), line("black-pepper", 8)});
    for (const auto& way : mended(cevap, "too salty, dry").ways)
        if (!way.plain.empty()) CHECK(of_plain(way, "beef-fat") > 0);
    for (const auto& way : mended(cevap, "too salty, greasy").ways)
        if (!way.plain.empty()) CHECK(of_plain(way, "beef-fat") == 0);
}

}  // namespace mend_by_parts_test
