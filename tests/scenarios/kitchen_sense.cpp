// What a practised maker would never be told, asked of answers to shortages.
#include <algorithm>
#include <cmath>

#include "support/catch.hpp"
#include "support/scenario.hpp"

using namespace standin;
using namespace scenario;

namespace kitchen_sense_test {

AdaptAnswer with(const std::string& formula, const std::string& inventory, AdaptRequest request = {}) {
    auto engine = expect(Engine::open({}));
    const auto read = expect(engine.read_formula(text_of(formula), formula));
    if (!inventory.empty()) request.have = expect(engine.read_inventory(inventory, "inventory"));
    return expect(engine.adapt(read, request));
}

double grams_of(const Formula& formula, const std::string& ingredient) {
    double sum = 0;
    for (const auto& line : formula.lines)
        if (line.ingredient == ingredient) sum += line.grams.mid;
    return sum;
}

TEST_CASE("wine does not drown the sausage that lacks its vinegar") {
    const auto answer = with("firmer/formula.txt", "no cider vinegar\nno tomatillo\n");
    REQUIRE_FALSE(answer.variants.empty());
    for (const auto& v : answer.variants) {
        double total = 0;
        for (const auto& line : v.formula.lines) total += line.grams.mid;
        CHECK(grams_of(v.formula, "white-wine") < 0.06 * total);
    }
}

TEST_CASE("an allium that is milder than garlic comes in at more than its weight, as the swaps have it") {
    const auto answer = with("garden/formula.txt", "no garlic\nramps plenty\n");
    REQUIRE_FALSE(answer.variants.empty());
    CHECK(grams_of(answer.variants.front().formula, "ramps-leaf") > 44);  // four to one in the knowledge; garlic is 22 g
}

TEST_CASE("no stand-in for a missing acid or green lets the salt go") {
    for (const char* inventory : {"no white wine vinegar\n", "chard 260 g\nlime 2\n", "nettle 300 g\nchard 100 g\n"}) {
        const auto answer = with("garden/formula.txt", inventory);
        CAPTURE(inventory);
        for (const auto& v : answer.variants)
            CHECK(v.prediction.properties[Property::salt_pct].mid > 0.93 * answer.base.properties[Property::salt_pct].mid);
    }
}

TEST_CASE("what a kept line is made of is not used for another") {
    const auto answer = with("garden/formula.txt", "chard 260 g\n");
    REQUIRE_FALSE(answer.variants.empty());
    for (const auto& v : answer.variants) CHECK(grams_of(v.formula, "parsley") == 120);
}

TEST_CASE("poultry in place of pork is cooked as poultry") {
    AdaptRequest request;
    request.without = {"pork"};
    const auto answer = with("garden/formula.txt", "", request);
    REQUIRE_FALSE(answer.variants.empty());
    bool poultry = false;
    for (const auto& v : answer.variants) {
        if (std::none_of(v.formula.lines.begin(), v.formula.lines.end(), [](const Line& l) { return l.ingredient.find("chicken") == 0; }))
            continue;
        poultry = true;
        REQUIRE(v.formula.process.core_c);
        CHECK(*v.formula.process.core_c >= 73.8);  // 165 F, USDA FSIS
        CHECK(has_edit(v, EditKind::process));
    }
    CHECK(poultry);
}

TEST_CASE("lard may stand in for backfat that is not to be had") {
    const auto answer = with("garden/formula.txt", "no pork backfat\nlard plenty\n");
    REQUIRE_FALSE(answer.variants.empty());
    CHECK(answer.conflict.empty());
    CHECK(grams_of(answer.variants.front().formula, "lard") > 200);
}

TEST_CASE("swaps tells the cautions that a stand-in brings") {
    auto engine = expect(Engine::open({}));
    const auto formula = expect(engine.read_formula(text_of("garden/formula.txt"), "garden"));
    const auto answer = expect(engine.swaps(formula, "spinach", {.top = 30}));
    const auto wild =
        std::find_if(answer.stand_ins.begin(), answer.stand_ins.end(), [](const StandIn& s) { return s.ingredient == "lambsquarters"; });
    REQUIRE(wild != answer.stand_ins.end());
    CHECK_FALSE(wild->cautions.empty());
}

TEST_CASE("nobody is told that leek for garlic goes unnoticed") {
    const auto answer = with("garden/formula.txt", "no garlic\nleek plenty\neverything else\n");
    for (const auto& v : answer.variants)
        if (grams_of(v.formula, "leek") > 0) CHECK(v.table.find("Least alike") != std::string::npos);
}

TEST_CASE("a milder chile comes in for a hot one that is missing, as far as a maker would go with it") {
    auto engine = expect(Engine::open({}));
    const auto formula =
        expect(engine.read_formula("Invented\n2 kg pork shoulder\n300 g pork backfat\n38 g salt\n20 g habanero\n", "formula"));
    AdaptRequest request;
    request.have = expect(engine.read_inventory("no habanero\n6 jalapeños\n", "inventory"));
    const auto answer = expect(engine.adapt(formula, request));
    REQUIRE_FALSE(answer.variants.empty());
    const double grams = grams_of(answer.variants.front().formula, "jalapeno");
    CHECK(grams >= 40);
    CHECK(grams <= 100);
}

}  // namespace kitchen_sense_test
