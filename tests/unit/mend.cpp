// Mending one mass, from what was said of its patty to what goes in.
#include "standin/mend.hpp"

#include <algorithm>
#include <cmath>

#include "support/catch.hpp"
#include "support/kitchen.hpp"

using namespace standin;

namespace mend_test {

Formula green(double salt = 36, double vinegar = 45, double serrano = 60) {
    Formula made = formula({line("pork-shoulder", 2000), line("spinach", 200, {"blanched", "squeezed"}), line("parsley", 60),
                            line("garlic", 20), line("table-salt", salt), line("black-pepper", 5)});
    if (vinegar > 0) made.lines.push_back(line("white-wine-vinegar", vinegar));
    if (serrano > 0) made.lines.push_back(line("serrano", serrano));
    return made;
}

const Engine& engine() {
    static const Engine opened_once = opened(128);
    return opened_once;
}

MendAnswer mended(const Formula& mass, const std::string& tasted, MendRequest request = {}) {
    request.tasted = {tasted};
    return mend(engine(), mass, request).value();
}

double grams(const std::vector<Ingoing>& all, const std::string& id) {
    double sum = 0;
    for (const auto& in : all) sum += in.ingredient == id ? in.grams : 0;
    return sum;
}

TEST_CASE("mend: salt that is lacking goes in dissolved", "[mend]") {
    const auto answer = mended(green(24), "needs salt");
    REQUIRE_FALSE(answer.ways.empty());
    const auto& way = answer.ways.front();
    CHECK(way.kind == MendKind::add);
    CHECK(way.met);
    REQUIRE(way.add.size() == 1);
    CHECK(way.add[0].ingredient == "table-salt");
    CHECK(way.add[0].grams > 3);
    CHECK(way.add[0].grams < 9);
    CHECK(std::abs(way.add[0].water_g - 3 * way.add[0].grams) < 1);
    CHECK(way.add[0].how.find("dissolved") != std::string::npos);
}

TEST_CASE("mend: too much salt only plain mass without salt takes down", "[mend]") {
    const auto answer = mended(green(50), "too salty");
    REQUIRE(answer.ways.size() == 1);
    const auto& way = answer.ways.front();
    CHECK(way.kind == MendKind::blend);
    CHECK(way.met);
    CHECK(grams(way.plain, "table-salt") == 0);
    CHECK(grams(way.plain, "pork-shoulder") > 300);
    CHECK(way.plain_lacks == std::vector<std::string>{"table salt"});
    CHECK(way.prediction.properties[Property::salt_pct].mid < answer.base.properties[Property::salt_pct].mid);
}

TEST_CASE("mend: the plain mass for a mass too hot is seasoned but for the chile", "[mend]") {
    const auto answer = mended(green(), "too hot");
    REQUIRE(answer.ways.size() == 1);
    const auto& way = answer.ways.front();
    CHECK(grams(way.plain, "serrano") == 0);
    CHECK(grams(way.plain, "table-salt") > 0);
    CHECK(grams(way.plain, "garlic") > 0);
    CHECK(std::abs(way.differences[Property::salt_pct].mid) < 0.05);
    CHECK_FALSE(answer.plain.empty());
}

TEST_CASE("mend: two faults may ask for both plain mass and an addition", "[mend]") {
    const auto answer = mended(green(24), "too hot, needs salt");
    REQUIRE_FALSE(answer.ways.empty());
    const auto& way = answer.ways.front();
    CHECK(way.kind == MendKind::blend_and_add);
    CHECK(way.met);
    CHECK(grams(way.add, "table-salt") > 0);
    CHECK(grams(way.plain, "serrano") == 0);
}

TEST_CASE("mend: amounts follow the mass that was made", "[mend]") {
    MendRequest large;
    large.made = "9.6 kg";
    const auto small = mended(green(24), "needs salt"), big = mended(green(24), "needs salt", large);
    CHECK(std::abs(big.made_g - 9600) < 1);
    const double times = big.made_g / small.made_g;
    CHECK(std::abs(big.ways.at(0).add.at(0).grams / small.ways.at(0).add.at(0).grams - times) < 0.1 * times);
    CHECK(std::abs(big.ways.at(0).formula.lines.at(0).grams.mid - 2000 * times) < 1);
}

TEST_CASE("mend: what was measured is where it starts from", "[mend]") {
    MendRequest measured;
    measured.measured = {"pH 5.2", "salt 2.4 %"};
    const auto answer = mended(green(), "too salty", measured);
    for (const auto& [property, value] : {std::pair(Property::ph, 5.2), std::pair(Property::salt_pct, 2.4)}) {
        const Band& band = answer.base.properties[property];
        CHECK(std::abs(band.mid - value) < 0.01);
        CHECK(band.high - band.low < 0.02);
    }
    REQUIRE(answer.measured.size() == 2);
    REQUIRE_FALSE(answer.ways.empty());
    CHECK(answer.ways.front().met);
    CHECK(answer.ways.front().prediction.properties[Property::salt_pct].mid < 2.4 * 0.8 + 0.1);
    CHECK(answer.ways.front().prediction.properties[Property::salt_pct_of_meat].mid > 1.7);
}

TEST_CASE("mend: measurements that no sausage mass has are refused", "[mend]") {
    for (const char* text : {"pH 2.9", "pH 8", "salt 14 %", "fat 20 %", "pH", "4.9", "pH warm", ""}) {
        INFO(text);
        MendRequest request;
        request.tasted = {"flat"};
        request.measured = {text};
        const auto answer = mend(engine(), green(), request);
        REQUIRE_FALSE(answer);
        CHECK(answer.error().trouble == Trouble::usage);
    }
}

TEST_CASE("mend: spoilage is thrown out, whatever else was said", "[mend]") {
    const auto answer = mended(green(), "flat, slimy");
    CHECK_FALSE(answer.discard.empty());
    CHECK(answer.ways.empty());
    CHECK_FALSE(mended(green(36, 0), "too sour").discard.empty());
    for (const char* said : {"grey green and sticky", "stood out overnight", "gas bubbles", "green spots"}) {
        INFO(said);
        CHECK_FALSE(mended(green(), said).discard.empty());
    }
}

TEST_CASE("mend: harm in the mouth stops everything and calls for help", "[mend]") {
    for (const char* said : {"flat, Tom's lips are tingling and swelling", "metallic, burning tongue, numb", "salzig, Zunge taub",
                             "fade, lèvres gonflées", "soso, labios hinchados", "my throat feels tight"}) {
        INFO(said);
        const auto answer = mended(green(), said);
        CHECK(answer.discard.find("emergency") != std::string::npos);
        CHECK(answer.ways.empty());
    }
}

TEST_CASE("mend: where no model tastes it there is practice and no amount", "[mend]") {
    const auto answer = mended(green(), "bitter");
    CHECK(answer.ways.empty());
    REQUIRE(answer.words.size() == 1);
    CHECK_FALSE(answer.words[0].judged);
    CHECK_FALSE(answer.words[0].practice.empty());
}

TEST_CASE("mend: a list holds what may come in", "[mend]") {
    MendRequest request;
    request.have.emplace();
    request.have->items = {{"lime-juice", 100.0}, {"pork-shoulder", 100.0}};
    request.have->missing = {"white-wine-vinegar"};
    const auto sour = mended(green(), "not sour enough", request);
    REQUIRE_FALSE(sour.ways.empty());
    for (const auto& way : sour.ways)
        for (const auto& in : way.add) CHECK(in.ingredient == "lime-juice");
    const auto hot = mended(green(), "too hot", request);
    CHECK(hot.ways.empty());
    REQUIRE_FALSE(hot.cannot.empty());
    CHECK(in_full(hot.cannot.front()).find("pork shoulder") != std::string::npos);
}

TEST_CASE("mend: more of a seasoning is a share more of it, without any model", "[mend]") {
    const auto answer = mended(green(), "needs garlic");
    REQUIRE(answer.ways.size() == 1);
    REQUIRE(answer.ways[0].add.size() == 1);
    CHECK(answer.ways[0].add[0].ingredient == "garlic");
    CHECK(std::abs(answer.ways[0].add[0].grams - 7) < 0.6);
    CHECK_FALSE(mended(formula({line("pork-shoulder", 1000), line("table-salt", 18)}), "needs garlic").cannot.empty());
}

}  // namespace mend_test
