// What is called mended is so by the same page's own words: salt, bind, plain mass without the fat, one figure for one thing.
#include <algorithm>
#include <cmath>

#include "standin/mend.hpp"
#include "support/catch.hpp"
#include "support/kitchen.hpp"
#include "support/mended.hpp"

using namespace standin;

namespace mend_amounts_test {

using namespace mending;

double mid(const Prediction& p, Property property) { return p.properties[property].mid; }

Formula beef(double salt) {
    return formula({line("beef-chuck", 4000), line("table-salt", salt), line("garlic", 80), line("black-pepper", 20)});
}

Formula fat_links() {
    return formula({line("pork-shoulder", 1600), line("pork-backfat", 900), line("table-salt", 44), line("black-pepper", 8)});
}

Formula undermixed() {
    Formula made = formula({line("pork-shoulder", 5000), line("pork-backfat", 800), line("table-salt", 45),
                            line("chard", 500, {"blanched", "squeezed"}), line("garlic", 60)});
    made.process.mixing_min = 1;
    made.process.mixed_at_c = 5;
    made.process.order = Order::all_together;
    return made;
}

TEST_CASE("mend: short of salt goes to what most makers put in", "[mend]") {
    for (const char* word : {"flat", "not salty enough"})
        for (const double salt : {24.0, 40.0, 52.0}) {
            const auto answer = mended(beef(salt), word);
            REQUIRE_FALSE(answer.ways.empty());
            const double of_meat = mid(answer.ways.front().prediction, Property::salt_pct_of_meat);
            INFO(word << " " << salt);
            CHECK(of_meat >= 1.5);
            CHECK(of_meat <= 1.75);
        }
}

TEST_CASE("mend: too much salt comes down to what most put in, and no caution is left of it", "[mend]") {
    for (const double salt : {88.0, 104.0, 130.0, 180.0}) {
        const auto answer = mended(beef(salt), "too salty");
        REQUIRE_FALSE(answer.ways.empty());
        const auto& way = answer.ways.front();
        INFO(salt);
        CHECK(way.met);
        CHECK(mid(way.prediction, Property::salt_pct_of_meat) > 1.5);
        CHECK(mid(way.prediction, Property::salt_pct_of_meat) <= 1.92);
        CHECK_FALSE(way.salt_left);
        for (const auto& caution : way.prediction.cautions) CHECK(caution.id != "much-salt");
    }
}

TEST_CASE("mend: how strongly it was said is how it is told", "[mend]") {
    CHECK(mended(beef(70), "too salty").words.front().says.find("one noticeable step") != std::string::npos);
    CHECK(mended(beef(70), "much too salty").words.front().says.find("two noticeable steps") != std::string::npos);
}

TEST_CASE("mend: what crumbles for want of salt and mixing is judged on bind, and mixed on until it is tacky", "[mend]") {
    const auto answer = mended(undermixed(), "crumbly");
    REQUIRE_FALSE(answer.ways.empty());
    const auto& way = answer.ways.front();
    CHECK(way.work_min > 1);
    CHECK(way.formula.process.mixing_min == way.work_min);
    const auto on_bind = [](const WantResult& w) { return w.reason.figures.at(0).what == info(Property::bind).name; };
    CHECK(std::any_of(way.wants.begin(), way.wants.end(), on_bind));
    if (way.met) CHECK(way.prediction.bind_word != "loose");
    CHECK(mid(way.prediction, Property::bind) > mid(answer.base, Property::bind) + 15);
    CHECK(mid(way.prediction, Property::salt_pct_of_meat) > 1.5);
    const auto says = [&](const char* words) {
        return std::any_of(answer.fold.begin(), answer.fold.end(), [&](const auto& s) { return s.find(words) != std::string::npos; });
    };
    CHECK(says("sticks to an upturned palm"));
    CHECK_FALSE(says("no streak shows"));
}

TEST_CASE("mend: a mass mixed until tacky is only folded", "[mend]") {
    Formula mixed = undermixed();
    mixed.process.mixing_min = 4;
    for (const auto& way : mended(mixed, "crumbly").ways) CHECK(way.work_min == 0);
}

TEST_CASE("mend: plain mass without the fat is salted to its own meat and spiced to its own weight", "[mend]") {
    const auto answer = mended(fat_links(), "greasy");
    REQUIRE_FALSE(answer.ways.empty());
    const auto& way = answer.ways.front();
    const auto weighed = [&](const std::string& id) {
        double sum = 0;
        for (const auto& in : way.plain) sum += in.ingredient == id ? in.grams : 0;
        return sum;
    };
    CHECK(weighed("pork-backfat") == 0);
    const double formula_salt = 44.0 / 2500, formula_pepper = 8.0 / 2552;
    REQUIRE(way.plain.front().fresh);  // a lean cut for the shoulder
    CHECK(std::abs(weighed("table-salt") / way.plain.front().grams / formula_salt - 1) < 0.03);
    CHECK(std::abs(weighed("black-pepper") / way.plain_g / formula_pepper - 1) < 0.12);
    const double before = mid(answer.base, Property::salt_pct_of_meat), after = mid(way.prediction, Property::salt_pct_of_meat);
    CHECK(std::abs(after / before - 1) < 0.03);
}

TEST_CASE("mend: a table and a caution tell one figure for one thing", "[mend]") {
    const Formula sour = formula({line("chicken-thigh-skinless", 4000), line("table-salt", 68), line("lime-juice", 400)});
    const auto answer = mended(sour, "too sour");
    for_each_property([&](Property p) { CHECK(answer.base.properties[p].mid == answer.base.nominal[p]); });
    for (const auto& way : answer.ways)
        for_each_property([&](Property p) {
            CHECK(way.prediction.properties[p].mid == way.prediction.nominal[p]);
            if (p != Property::hue_deg) CHECK(std::abs(way.differences[p].mid - (mid(way.prediction, p) - mid(answer.base, p))) < 1e-9);
        });
}

}  // namespace mend_amounts_test
