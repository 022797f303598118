// What is weighed out is what the words say, in the steps that a maker takes, and no advice names what is left out. Formulas are invented.
#include <algorithm>

#include "safety/left_out_words.hpp"
#include "standin/mend.hpp"
#include "support/catch.hpp"
#include "support/kitchen.hpp"
#include "support/mended.hpp"

using namespace standin;

namespace mend_rounds_test {

using namespace mending;

MendAnswer asked(const Formula& mass, const std::string& tasted, std::vector<InventoryItem> items = {},
                 std::vector<std::string> without = {}) {
    MendRequest request;
    request.tasted = {tasted};
    if (!items.empty()) request.have = Inventory{};
    if (!items.empty()) request.have->items = std::move(items);
    request.without = std::move(without);
    return mend(engine(), mass, request).value();
}

const Ingoing* find(const std::vector<Ingoing>& all, const std::string& id) {
    const auto found = std::find_if(all.begin(), all.end(), [&](const Ingoing& in) { return in.ingredient == id; });
    return found == all.end() ? nullptr : &*found;
}

Formula hot() {
    return formula({line("goat", 3600), line("beef-fat", 700), line("habanero", 60), line("onion", 300), line("table-salt", 75)});
}

TEST_CASE("mend: no advice names what is left out, and what that is stands with the answer", "[mend]") {
    const auto free = asked(hot(), "too hot");
    CHECK(free.words.front().practice.find("yoghurt") != std::string::npos);
    for (const char* word : {"milk", "dairy"}) {
        const auto answer = asked(hot(), "too hot", {}, {word});
        CAPTURE(word);
        REQUIRE_FALSE(answer.excluded.empty());
        for (const auto& said : answer.words)
            for (const char* food : {"yoghurt", "yogurt", "cheese"}) CHECK(said.practice.find(food) == std::string::npos);
        CHECK(answer.words.front().practice.find("sugar") != std::string::npos);  // the rest of it stays
    }
}

TEST_CASE("left out: only the part of the advice that names the food goes") {
    const auto no_milk = [](const Ingredient& food) { return food.allergens.empty(); };
    const auto kept = [&](const char* text) { return without_what_is_left_out(text, no_milk, knowledge()); };
    CHECK(kept("Serve it hot. Yogurt beside it cools; ice does not.") == "Serve it hot. Ice does not.");
    CHECK(kept("Butter softens it") == "");
    CHECK(kept("Fry a patty of it.") == "Fry a patty of it.");
    CHECK(kept("") == "");
}

TEST_CASE("mend: what of the list is plain or sweet is told with its weight", "[mend]") {
    const auto answer = asked(hot(), "too hot", {{"goat", 4000.0}, {"beef-fat", 900.0}, {"honey", 300.0}, {"rice-cooked", 3000.0}});
    const std::string& practice = answer.words.front().practice;
    CAPTURE(practice);
    CHECK(practice.find("honey") != std::string::npos);
    CHECK(practice.find("rice") != std::string::npos);
    CHECK(practice.find('{') == std::string::npos);
}

TEST_CASE("mend: less of a taste is told to where it was promised, without slack", "[mend]") {
    const auto answer = asked(hot(), "much too hot");
    REQUIRE_FALSE(answer.ways.empty());
    for (const auto& want : answer.ways.front().wants) {
        CHECK(std::none_of(want.reason.figures.begin(), want.reason.figures.end(), [](const Figure& f) { return f.what == "slack"; }));
        const auto& figures = want.reason.figures;
        REQUIRE(figures.size() > 1);
        CHECK(figures[1].after == Approx(0.354 * *figures[0].before).epsilon(0.02));  // a third
    }
}

TEST_CASE("mend: firm fat goes in a round at a time", "[mend]") {
    const auto answer = asked(formula({line("venison", 4000), line("onion", 300), line("red-wine", 100), line("table-salt", 70)}), "dry");
    bool any = false;
    for (const auto& way : answer.ways)
        for (const auto& in : way.add) {
            if (knowledge().ingredient(in.ingredient)->roles.front() != Role::fat) continue;
            any = true;
            CHECK(in.grams / in.rounds <= 0.09 * answer.made_g);
            CHECK(in.rounds >= 2);
        }
    CHECK(any);
}

TEST_CASE("mend: a lean mass that bites tight is given plain mass with cold fat in it", "[mend]") {
    Formula tight = formula({line("chicken-breast", 3500), line("egg-white", 300), line("potato-starch", 150), line("table-salt", 75)});
    tight.process.mixing_min = 14;
    const auto answer = asked(tight, "rubbery");
    REQUIRE_FALSE(answer.ways.empty());
    const MendWay& way = answer.ways.front();
    double fat = 0, all = 0;
    for (const auto& in : way.plain) {
        all += in.grams;
        if (knowledge().ingredient(in.ingredient)->roles.front() == Role::fat) fat += in.grams;
    }
    CHECK(fat >= 0.15 * all);
    CHECK(fat <= 0.27 * all);
    CHECK(way.new_animals.empty());
    CHECK(way.prediction.properties[Property::firmness].mid < answer.base.properties[Property::firmness].mid);
}

TEST_CASE("mend: fresh leaf on the list goes in before its powder, and no more than was asked", "[mend]") {
    Formula grey = formula(
        {line("pork-shoulder", 3000), line("pork-backfat", 500), line("spinach", 300), line("lime-juice", 60), line("table-salt", 56)});
    grey.process.rest_h = 36;
    const auto answer = asked(grey, "not green", {{"spinach", 2000.0}, {"spinach-powder", 200.0}});
    REQUIRE_FALSE(answer.ways.empty());
    for (const auto& way : answer.ways) {
        CHECK_FALSE(find(way.add, "spinach-powder"));
        for (const auto& want : way.wants) {
            const auto& figures = want.reason.figures;
            REQUIRE(figures.size() > 1);
            CHECK(figures[0].after - *figures[0].before <= 2.6 * (figures[1].after - *figures[0].before));
        }
    }
}

TEST_CASE("mend: where more plain mass is weighed out than there is, a smaller step stands beside it", "[mend]") {
    Formula sour = formula({line("pork-shoulder", 4000), line("pork-backfat", 500), line("tomatillo", 350), line("white-wine-vinegar", 220),
                            line("cilantro", 180), line("table-salt", 70)});
    sour.process.rest_h = 12;
    const auto answer = asked(sour, "crumbly, too sour");
    REQUIRE_FALSE(answer.ways.empty());
    const auto more_than_there_is = [&](const MendWay& way) { return way.plain_g > 1.1 * answer.made_g; };
    if (std::any_of(answer.ways.begin(), answer.ways.end(), more_than_there_is))
        CHECK(std::any_of(answer.ways.begin(), answer.ways.end(),
                          [&](const MendWay& way) { return way.plain_g > 0 && way.plain_g <= 1.05 * answer.made_g; }));
}

}  // namespace mend_rounds_test
