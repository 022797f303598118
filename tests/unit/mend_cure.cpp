// What is called mended tastes right: what the page itself still calls too much is a step and no cure.
#include <algorithm>
#include <cmath>

#include "standin/mend.hpp"
#include "support/catch.hpp"
#include "support/kitchen.hpp"
#include "support/mended.hpp"

using namespace standin;

namespace mend_cure_test {

using namespace mending;

double mid(const Prediction& p, Property property) { return p.properties[property].mid; }

double in_a_kilo(const Formula& formula, const std::string& id) {
    double grams = 0, all = 0;
    for (const auto& line : formula.lines) {
        all += line.grams.mid;
        if (line.ingredient == id) grams += line.grams.mid;
    }
    return 1000 * grams / all;
}

bool minds(const std::vector<CautionText>& cautions, const std::string& id) {
    return std::any_of(cautions.begin(), cautions.end(), [&](const CautionText& c) { return c.id == id; });
}

TEST_CASE("mend: too sour goes to the acid's own most and a pH that binds", "[mend]") {
    for (const char* acid : {"lime-juice", "lemon-juice", "white-wine-vinegar"}) {
        const auto answer =
            mended(formula({line("pork-shoulder", 3000), line("table-salt", 52), line(acid, 260), line("cilantro", 100)}), "too sour");
        REQUIRE_FALSE(answer.ways.empty());
        const auto& way = answer.ways.front();
        INFO(acid);
        CHECK(way.met);
        CHECK(way.prediction.nominal[Property::ph] >= 5.29);
        CHECK_FALSE(minds(way.new_cautions, "acid-crumbly"));
        CHECK_FALSE(minds(way.prediction.cautions, "over-most"));
    }
}

TEST_CASE("mend: a caution that was there before and is milder now is not new", "[mend]") {
    const Formula sour = formula({line("pork-shoulder", 3000), line("table-salt", 52), line("lime-juice", 300)});
    const auto answer = mended(sour, "too sour");
    REQUIRE_FALSE(answer.ways.empty());
    for (const auto& caution : answer.ways.front().new_cautions) CHECK(caution.id.find("acid-") != 0);
    CHECK(minds(answer.base.cautions, "acid-set"));
}

TEST_CASE("mend: too hot comes to half the heat, and below the chile's own most", "[mend]") {
    const Formula hot = formula({line("chicken-thigh", 2000), line("habanero", 40), line("table-salt", 32), line("cilantro", 80)});
    const auto answer = mended(hot, "too hot");
    REQUIRE(answer.ways.size() == 1);
    const auto& way = answer.ways.front();
    CHECK(mid(way.prediction, Property::heat_mg_kg) <= 0.51 * mid(answer.base, Property::heat_mg_kg));
    const double most = knowledge().ingredient("habanero")->most_g_per_kg->band.mid;
    CHECK(way.met == (in_a_kilo(way.formula, "habanero") <= most + 1e-6));
}

TEST_CASE("mend: what it takes another batch to mend is offered as a step, and said to be one", "[mend]") {
    const auto answer = mended(formula({line("pork-shoulder", 2000), line("table-salt", 170)}), "too salty");
    REQUIRE_FALSE(answer.ways.empty());
    CHECK_FALSE(answer.ways.front().met);
    CHECK(answer.ways.front().step_only == std::vector<std::string>{"too salty"});
    CHECK_FALSE(answer.cannot.empty());
}

TEST_CASE("mend: fat comes down by lean of the same animal, not by the cut that brought it", "[mend]") {
    for (const auto& [meat, fat] : {std::pair("pork-shoulder", "pork-backfat"), std::pair("beef-chuck", "beef-fat")}) {
        const auto answer = mended(formula({line(meat, 2000), line(fat, 900), line("table-salt", 48)}), "greasy");
        REQUIRE_FALSE(answer.ways.empty());
        const auto& way = answer.ways.front();
        INFO(meat);
        CHECK(way.met);
        CHECK_FALSE(way.plain_leaner.empty());
        CHECK(mid(way.prediction, Property::fat_pct) <= 30.5);
        CHECK(way.plain_g < 0.8 * answer.made_g);
    }
}

TEST_CASE("mend: lean game that is dry gets firm fat, 12 to 15 % of it", "[mend]") {
    for (const char* game : {"venison", "rabbit"})
        for (const bool pork : {true, false}) {
            Formula lean = formula({line(game, 2000), line("table-salt", 36), line("red-wine", 40)});
            if (pork) lean.lines.push_back(line("pork-shoulder", 200));
            const auto answer = mended(lean, "much too dry");
            REQUIRE_FALSE(answer.ways.empty());
            const auto& way = answer.ways.front();
            INFO(game << pork);
            CHECK(mid(way.prediction, Property::fat_pct) > 11.5);
            CHECK(mid(way.prediction, Property::fat_pct) < 16);
            for (const auto& in : way.add) CHECK(in.ingredient != "pork-leaf-fat");
            CHECK((pork || !way.new_animals.empty()));
        }
}

}  // namespace mend_cure_test
