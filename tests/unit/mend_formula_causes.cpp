// What in the formula itself is at fault is named before anything is weighed in, and what is weighed in goes by it.
#include <algorithm>

#include "standin/mend.hpp"
#include "support/catch.hpp"
#include "support/kitchen.hpp"
#include "support/mended.hpp"

using namespace standin;

namespace mend_formula_causes_test {

using namespace mending;

using Ids = std::vector<std::string>;

Formula with(std::vector<Line> more, Order order = Order::salt_first) {
    Formula mass = formula({line("pork-shoulder", 2000), line("pork-backfat", 250), line("table-salt", 40)});
    mass.lines.insert(mass.lines.end(), more.begin(), more.end());
    mass.process.plate_mm = 8;
    mass.process.mixing_min = 3;
    mass.process.mixed_at_c = 3;
    mass.process.core_c = 71.1;
    mass.process.rest_h = 1;
    mass.process.order = order;
    return mass;
}

Ids ids(const MendAnswer& answer) {
    Ids all;
    for (const auto& cause : answer.causes) all.push_back(cause.id);
    return all;
}

bool says(const std::string& text, const char* words) { return text.find(words) != std::string::npos; }

double plain_of(const MendWay& way, const std::string& id) {
    double sum = 0;
    for (const auto& in : way.plain) sum += in.ingredient == id ? in.grams : 0;
    return sum;
}

TEST_CASE("mend: a patty cooked too hot is to come off at the core that its meat needs, and the page says no other", "[mend]") {
    for (const auto& [meat, core, told] : {std::tuple("turkey-breast", 80.0, "73.9 C"), std::tuple("pork-loin", 80.0, "71.1 C"),
                                           std::tuple("chicken-thigh", 85.0, "73.9 C"), std::tuple("beef-chuck", 77.0, "71.1 C")}) {
        Formula mass = formula({line(meat, 2000), line("table-salt", 34)});
        mass.process.core_c = core;
        for (const char* word : {"dry", "rubbery"}) {
            const auto answer = mended(mass, word);
            INFO(meat << " " << word);
            REQUIRE_FALSE(answer.causes.empty());
            CHECK(answer.causes.front().id == "cooked-hot");
            CHECK(says(answer.causes.front().first, told));
            CHECK(answer.on_page.core.core_c < core);
            CHECK(answer.on_page.core.core_c >= 71);
            CHECK_FALSE(says(answer.causes.front().first, "above"));
        }
    }
}

TEST_CASE("mend: acid that went in first is named for what crumbles, fresh mass without it comes first, and mixing on does not", "[mend]") {
    for (const char* word : {"crumbly", "weeping"}) {
        Formula mass = with({line("lime-juice", 150), line("cilantro", 100)}, Order::acid_first);
        mass.process.mixing_min = 1;
        const auto answer = mended(mass, word);
        INFO(word);
        REQUIRE(ids(answer) == Ids{"acid-first"});
        REQUIRE_FALSE(answer.ways.empty());
        const auto& way = answer.ways.front();
        CHECK(plain_of(way, "pork-shoulder") > 300);
        CHECK(plain_of(way, "lime-juice") == 0);
        CHECK(plain_of(way, "cilantro") > 0);
        CHECK(way.work_min == 0);
        for (const auto& one : answer.words) CHECK(one.practice.empty());
    }
    CHECK(ids(mended(with({line("distilled-vinegar", 130)}), "crumbly")) == Ids{"acid-low"});
    CHECK(ids(mended(with({line("lime-juice", 15)}, Order::acid_first), "crumbly")).empty());
}

TEST_CASE("mend: water that was not squeezed out is named, and raw herbs are not asked to be squeezed", "[mend]") {
    const auto wet = mended(with({line("zucchini", 600), line("spinach", 300, {"blanched"}), line("parsley", 100)}), "wet");
    REQUIRE_FALSE(wet.causes.empty());
    CHECK(wet.causes.front().id == "unsqueezed");
    CHECK(says(wet.causes.front().says, "zucchini and spinach"));
    CHECK_FALSE(says(wet.causes.front().says, "parsley"));
    CHECK(ids(mended(with({line("spinach", 300, {"blanched", "squeezed"}), line("cilantro", 200)}), "wet")).empty());
}

TEST_CASE("mend: much too fat is told with the lean that brings it down, whatever there is of other meat", "[mend]") {
    Formula mass = formula({line("pork-shoulder", 1000), line("pork-backfat", 1200), line("table-salt", 38)});
    mass.process.mixed_at_c = 3;
    const auto answer = mended(mass, "greasy");
    CHECK(ids(answer) == Ids{"too-fat"});
    REQUIRE_FALSE(answer.ways.empty());
    const auto& way = answer.ways.front();
    CHECK(way.met);
    CHECK(way.prediction.properties[Property::fat_pct].mid < 31);
    CHECK(plain_of(way, "pork-backfat") == 0);
    REQUIRE(way.plain_for.size() == 1);
    CHECK(way.plain_for.front().value == 35);
    CHECK(way.plain_for.front().plain_g > 800);
    CHECK(way.plain_for.front().plain_g < way.plain_g);
}

TEST_CASE("mend: lean meat on the list is what takes the fat down", "[mend]") {
    Formula mass = formula({line("pork-shoulder", 1000), line("pork-backfat", 1200), line("table-salt", 38)});
    mass.process.mixed_at_c = 3;
    MendRequest request;
    request.tasted = {"greasy"};
    request.have.emplace();
    request.have->items = {{"pork-loin", 3000.0}, {"pork-shoulder", 4000.0}, {"table-salt", 500.0}};
    const auto answer = mend(engine(), mass, request).value();
    REQUIRE_FALSE(answer.ways.empty());
    CHECK(plain_of(answer.ways.front(), "pork-loin") > 500);
}

TEST_CASE("mend: what covers the green most is named for it, and what moves nothing is not", "[mend]") {
    const auto covered =
        mended(with({line("spinach", 200, {"blanched", "squeezed"}), line("guajillo", 30), line("lemon-juice", 40)}), "not green");
    REQUIRE_FALSE(covered.causes.empty());
    CHECK(covered.causes.front().id == "red-masks");
    for (const auto& id : ids(covered)) CHECK(id != "acid-on-leaf");
    for (const auto& way : covered.ways)
        if (!way.colour_left.empty()) CHECK_FALSE(way.met);

    Formula boiled = with({line("spinach", 250, {"blanched", "squeezed"})});
    boiled.lines.back().prepared.front().minutes = 12;
    const auto long_blanched = mended(boiled, "grey");
    REQUIRE_FALSE(long_blanched.causes.empty());
    CHECK(long_blanched.causes.front().id == "blanched-long");
}

TEST_CASE("mend: a mass without leaf is not mended green", "[mend]") {
    for (const auto& more : {std::vector<Line>{}, std::vector<Line>{line("guajillo", 60)}}) {
        const auto answer = mended(with(more), "not green");
        CHECK(answer.ways.empty());
        CHECK_FALSE(answer.words.front().judged);
    }
}

TEST_CASE("mend: bitter food is named and plain mass without it weighed; without any it is practice", "[mend]") {
    for (const char* leaf : {"dandelion", "chicory-greens", "radicchio", "kale"}) {
        const auto answer = mended(with({line(leaf, 300, {"blanched", "squeezed"}), line("parsley", 60)}), "bitter");
        INFO(leaf);
        REQUIRE(ids(answer) == Ids{"bitter-foods"});
        CHECK(says(answer.causes.front().says, knowledge().ingredient(leaf)->names.front().c_str()));
        REQUIRE(answer.ways.size() == 1);
        CHECK(plain_of(answer.ways.front(), leaf) == 0);
        CHECK(plain_of(answer.ways.front(), "parsley") > 0);
    }
    CHECK(mended(with({line("parsley", 100)}), "bitter").ways.empty());
}

TEST_CASE("mend: all that digests the meat is named, and nothing says to fold anything in", "[mend]") {
    Formula mass = with({line("pineapple", 150), line("ginger", 60)});
    mass.process.rest_h = 18;
    const auto answer = mended(mass, "mushy");
    REQUIRE(ids(answer) == Ids{"digested"});
    CHECK(says(answer.causes.front().says, "pineapple"));
    CHECK(says(answer.causes.front().says, "ginger"));
    for (const auto& word : answer.words) CHECK(word.practice.empty());
}

}  // namespace mend_formula_causes_test
