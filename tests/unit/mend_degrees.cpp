// How much was said is how much is done; and no verdict goes against the figures beside it.
#include <algorithm>

#include "standin/mend.hpp"
#include "support/catch.hpp"
#include "support/kitchen.hpp"
#include "support/mended.hpp"

using namespace standin;

namespace mend_degrees_test {

using namespace mending;

Formula sour() {
    Formula mass = formula({line("pork-shoulder", 2000), line("pork-belly", 400), line("lime-juice", 150), line("distilled-vinegar", 80),
                            line("cilantro", 200), line("table-salt", 40)});
    mass.process.order = Order::acid_first;
    return mass;
}

double plain_for(const Formula& mass, const std::string& tasted) {
    const auto answer = mended(mass, tasted);
    REQUIRE_FALSE(answer.ways.empty());
    return answer.ways.front().plain_g;
}

TEST_CASE("mend: a little asks for less, much asks for more", "[mend]") {
    const Formula salty = formula({line("pork-shoulder", 2000), line("table-salt", 66)});
    const Formula hot = formula({line("pork-shoulder", 2000), line("table-salt", 36), line("habanero", 12)});
    const Formula fat = formula({line("pork-shoulder", 1000), line("pork-backfat", 900), line("table-salt", 34)});
    for (const auto& [mass, word] : {std::pair(&salty, "too salty"), std::pair(&hot, "too hot"), std::pair(&fat, "greasy")}) {
        const double plain = plain_for(*mass, word);
        INFO(word);
        CHECK(plain_for(*mass, std::string("a little ") + word) < 0.7 * plain);
        CHECK(plain_for(*mass, std::string("slightly ") + word) < 0.7 * plain);
        CHECK(plain_for(*mass, std::string("much ") + word) > 1.1 * plain);
    }
}

TEST_CASE("mend: a little too sour is thinned for the taste, and what the pH would take is told", "[mend]") {
    const auto whole = mended(sour(), "too sour"), little = mended(sour(), "a little too sour");
    REQUIRE(whole.ways.size() == 2);
    REQUIRE(little.ways.size() == 1);
    const auto& way = little.ways.front();
    CHECK(way.met);
    CHECK(way.plain_g < 0.4 * whole.ways.front().plain_g);
    CHECK(way.plain_g > 0.1 * whole.ways.front().plain_g);
    CHECK(whole.ways.back().plain_g == way.plain_g);
    REQUIRE_FALSE(way.plain_for.empty());
    CHECK(way.plain_for.front().property == Property::ph);
    CHECK(std::abs(way.plain_for.front().plain_g - whole.ways.front().plain_g) < 1);
}

TEST_CASE("mend: salt that is brought to what most put in is called so", "[mend]") {
    for (const double salt : {8.0, 14.0, 20.0}) {
        const auto answer = mended(
            formula({line("pork-shoulder", 2000), line("pork-backfat", 300), line("spinach", 200), line("table-salt", salt)}), "flat");
        REQUIRE_FALSE(answer.ways.empty());
        INFO(salt);
        CHECK(answer.ways.front().met);
        const double of_meat = answer.ways.front().prediction.properties[Property::salt_pct_of_meat].mid;
        CHECK(of_meat > 1.5);
        CHECK(of_meat < 1.75);
    }
}

TEST_CASE("mend: nobody is told to weigh in what nobody notices", "[mend]") {
    for (const double salt : {8.0, 16.0, 24.0})
        for (const char* word : {"crumbly", "wet", "mushy"}) {
            const auto answer = mended(formula({line("pork-shoulder", 2000), line("pork-backfat", 300), line("table-salt", salt)}), word);
            for (const auto& way : answer.ways)
                for (const auto& in : way.add)
                    if (knowledge().ingredient(in.ingredient)->roles.front() == Role::binder) CHECK(in.grams >= 0.0039 * answer.made_g);
        }
}

TEST_CASE("mend: what is called a step has not reached what was asked, or is over what is good in a kilo", "[mend]") {
    Formula hot = formula(
        {line("pork-shoulder", 2000), line("pork-backfat", 300), line("table-salt", 42), line("habanero", 72), line("serrano", 36)});
    for (const char* word : {"too hot", "much too hot"}) {
        const auto answer = mended(hot, word);
        for (const auto& way : answer.ways) {
            REQUIRE(way.wants.size() == 1);
            if (way.met) CHECK(way.step_only.empty());
            if (!way.step_only.empty()) CHECK((!way.wants[0].met || !way.still_over.empty() || !answer.cannot.empty()));
            for (const auto& in : way.plain) CHECK(in.ingredient != "serrano");
        }
    }
}

TEST_CASE("mend: a bland mass gets salt, and one that hardly holds no acid", "[mend]") {
    Formula wet = formula({line("pork-shoulder", 1500), line("pork-backfat", 200), line("zucchini", 700),
                           line("spinach", 300, {"blanched"}), line("table-salt", 30)});
    for (const char* word : {"bland", "flat", "no flavour", "insipid"}) {
        const auto answer = mended(wet, word);
        INFO(word);
        REQUIRE_FALSE(answer.ways.empty());
        for (const auto& in : answer.ways.front().add) CHECK(in.ingredient == "table-salt");
    }
    wet.lines.back() = line("table-salt", 48);
    for (const auto& way : mended(wet, "bland").ways)
        for (const auto& in : way.add) CHECK(knowledge().ingredient(in.ingredient)->roles.front() != Role::acid);
}

}  // namespace mend_degrees_test
