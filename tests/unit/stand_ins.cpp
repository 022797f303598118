// How much of a stand-in is weighed, and what is weighed in beside it.
#include "substitute/stand_ins.hpp"

#include <algorithm>
#include <cmath>

#include "substitute/dose.hpp"
#include "support/catch.hpp"
#include "support/kitchen.hpp"

using namespace standin;

namespace stand_ins_test {

// A line in a kilo of pork, with what else the batch has.
Formula batch(const Line& one, std::vector<Line> others = {}) {
    std::vector<Line> lines{one, line("pork-shoulder", 750), line("pork-backfat", 250), line("table-salt", 16)};
    lines.insert(lines.end(), others.begin(), others.end());
    return formula(std::move(lines));
}

Candidates candidates(
    const Formula& batch, const MayUse& may_use = [](const Ingredient&) { return true; }) {
    static const SwapGraph graph(knowledge());
    return candidates_for(batch, 0, graph, nominal(), may_use);
}

std::vector<Candidate> of(const std::vector<Candidate>& all, std::string_view ingredient) {
    std::vector<Candidate> found;
    std::copy_if(all.begin(), all.end(), std::back_inserter(found), [&](const Candidate& c) { return c.food.ingredient == ingredient; });
    return found;
}

double dose(const Line& food, Role role) { return dose_of(nominal().unit(food), role) * food.grams.mid; }

TEST_CASE("a vegetable's stand-in keeps to its bulk, and a partner brings what is lacking of the acid") {
    const Line tomatillo = line("tomatillo", 300);
    const auto green = of(candidates(batch(tomatillo)).fit, "green-tomato");
    REQUIRE_FALSE(green.empty());
    for (const auto& c : green) {
        if (c.food.prepared.empty()) CHECK(c.food.grams.mid == Approx(300));  // weight for weight, as a partner brings the rest
        CHECK(c.food.grams.mid <= 500);                                       // raw, where roasting takes the water
        REQUIRE(c.partner);
        const double acid = dose(c.food, Role::acid) + dose(c.partner->food, Role::acid);
        CHECK(acid == Approx(dose(tomatillo, Role::acid)).epsilon(0.01));
        CHECK(c.partner->food.grams.mid < 0.15 * 300);
        CHECK_FALSE(in_brief(c.partner->why).empty());
    }
}

TEST_CASE("the partner is what the formula has, where it has one") {
    const auto green = of(candidates(batch(line("tomatillo", 300), {line("cider-vinegar", 20)})).fit, "green-tomato");
    REQUIRE_FALSE(green.empty());
    REQUIRE(green.front().partner);
    CHECK(green.front().partner->food.ingredient == "cider-vinegar");
}

TEST_CASE("a partner that may not be used is not named") {
    const auto may_use = [](const Ingredient& i) { return i.id == "green-tomato" || i.id == "whole-milk"; };
    const auto green = of(candidates(batch(line("tomatillo", 300)), may_use).fit, "green-tomato");
    REQUIRE_FALSE(green.empty());
    CHECK_FALSE(green.front().partner);
    for (const auto& milk : of(candidates(batch(line("buttermilk", 100)), may_use).fit, "whole-milk")) CHECK_FALSE(milk.partner);
}

TEST_CASE("buttermilk is soured milk in two parts") {
    const auto milk = of(candidates(batch(line("buttermilk", 100))).fit, "whole-milk");
    const auto soured =
        std::find_if(milk.begin(), milk.end(), [](const Candidate& c) { return c.partner && c.partner->food.ingredient == "lemon-juice"; });
    REQUIRE(soured != milk.end());
    CHECK(soured->food.grams.mid == Approx(93.4));
    CHECK(soured->partner->food.grams.mid == Approx(6.2));
}

TEST_CASE("a chile without heat is replaced by flesh, never by a pungent one") {
    for (const char* sweet : {"bell-red", "bell-green", "pimiento"})
        for (const auto& c : candidates(batch(line(sweet, 150))).fit) {
            CAPTURE(sweet, c.food.ingredient);
            CHECK(c.food.ingredient != "habanero");
            if (c.role == Role::heat) CHECK(c.food.grams.mid > 5);
            CHECK_FALSE((c.partner && c.role == Role::heat));
        }
}

TEST_CASE("a hot spice is never replaced by what has no heat") {
    for (const char* spice : {"cayenne-powder", "red-pepper-flakes"}) {
        const Line hot = line(spice, 3);
        const auto fit = candidates(batch(hot)).fit;
        CHECK_FALSE(fit.empty());
        for (const auto& c : fit) {
            CAPTURE(spice, c.food.ingredient);
            if (c.role == Role::heat) CHECK(dose(c.food, Role::heat) > 0);
        }
        for (const char* sweet : {"bell-red", "bell-green"}) CHECK(of(fit, sweet).empty());
    }
}

TEST_CASE("a flesh chile is replaced by as much flesh, the heat put right by a hot one") {
    const Line poblano = line("poblano", 200);
    const auto all = candidates(batch(poblano)).fit;
    const auto bell = of(all, "bell-green");
    REQUIRE_FALSE(bell.empty());
    bool mended = false;
    for (const auto& c : bell) {
        CHECK(c.food.grams.mid >= 100);
        CHECK(c.food.grams.mid <= 320);
        if (c.role != Role::heat) continue;
        REQUIRE(c.partner);
        mended = true;
        CHECK(dose(c.food, Role::heat) + dose(c.partner->food, Role::heat) == Approx(dose(poblano, Role::heat)).epsilon(0.01));
    }
    CHECK(mended);
}

TEST_CASE("lean is replaced by the kilo") {
    for (const auto& c : candidates(batch(line("beef-chuck", 500))).fit)
        if (c.role == Role::lean && c.share == 1 && !c.partner) CHECK(c.food.grams.mid == Approx(500));
}

TEST_CASE("no stand-in but meat takes more of the batch than a maker would give it") {
    for (const auto& one :
         {line("spinach", 100), line("onion", 60), line("lemon-juice", 30), line("breadcrumb", 40), line("cheddar", 80)}) {
        const Formula all = batch(one);
        double mass = 0;
        for (const auto& l : all.lines) mass += l.grams.mid;
        for (const auto& c : candidates(all).fit) {
            CAPTURE(one.ingredient, c.food.ingredient);
            if (!knowledge().ingredient(c.food.ingredient)->meat) CHECK(c.food.grams.mid <= 0.151 * mass);
            CHECK(c.food.grams.mid <= c.most_grams * 1.0001);
            CHECK(c.food.grams.mid >= c.least_grams * 0.9999);
        }
    }
}

TEST_CASE("cabbage is replaced by as much of another vegetable, not by a pinch of what is greener") {
    for (const auto& c : candidates(batch(line("cabbage", 200))).fit) {
        CAPTURE(c.food.ingredient);
        if (c.role == Role::green && c.food.prepared.empty()) CHECK(c.food.grams.mid > 50);
    }
    const auto savoy = of(candidates(batch(line("cabbage", 200))).fit, "savoy-cabbage");
    REQUIRE_FALSE(savoy.empty());
    CHECK(savoy.front().food.grams.mid >= 120);
    CHECK(savoy.front().food.grams.mid <= 300);
}

TEST_CASE("no more of a food comes in than its most for a kilo") {
    const Knowledge strict = changed([](Records& r) {
        for (auto& i : r.ingredients)
            if (i.id == "chard") i.most_g_per_kg = Quantity{{20, 20, 20}, "g/kg", "judgement"};
    });
    const Nominal view(strict);
    const SwapGraph graph(strict);
    const Formula all = batch(line("spinach", 120));
    double mass = 0;
    for (const auto& l : all.lines) mass += l.grams.mid;
    bool limited = false;
    for (const auto& c : candidates_for(all, 0, graph, view, [](const Ingredient&) { return true; }).fit) {
        if (c.food.ingredient != "chard") continue;
        limited = true;
        CHECK(c.food.grams.mid <= 20.1 * mass / 1000);
        REQUIRE(c.bounded);
        CHECK(in_full(*c.bounded).find("20 g") != std::string::npos);
    }
    CHECK(limited);
}

TEST_CASE("of a strong stand-in only its share is taken") {
    const auto slick = of(candidates(batch(line("spinach", 120))).fit, "malabar-spinach");
    REQUIRE_FALSE(slick.empty());
    CHECK(slick.front().share == Approx(0.33));
    CHECK(slick.front().food.grams.mid < 0.33 * 1.51 * 120);
}

TEST_CASE("what would take too much is handed back with the reason") {
    bool too_much = false;
    for (const auto& strong : {line("citric-acid", 6), line("juniper-berry", 10), line("cayenne-powder", 5), line("saffron", 1)}) {
        const auto all = candidates(batch(strong)).refused;
        for (const auto& r : all) CHECK_FALSE(in_full(r.why).empty());
        too_much = too_much || std::any_of(all.begin(), all.end(), [](const Refusal& r) { return r.by == Refusal::By::weight; });
    }
    CHECK(too_much);
}

}  // namespace stand_ins_test
