// What the words beside the lines, or a list, say for somebody's health goes with whatever is made of them.
#include <algorithm>

#include "standin/plan.hpp"
#include "support/catch.hpp"
#include "support/kitchen.hpp"
#include "support/knowledge.hpp"

using namespace standin;

namespace told_everywhere_test {

const Engine& engine() {
    static const Engine opened_once = opened(16);
    return opened_once;
}

Formula read(const std::string& text) { return engine().read_formula(text, "t").value(); }

const std::string mass = "Green, invented\n2 kg pork shoulder\n200 g spinach\n36 g salt\n";

bool has(const std::vector<AllergenText>& all, std::string_view allergen) {
    return std::any_of(all.begin(), all.end(), [&](const AllergenText& one) { return one.allergen == allergen; });
}

TEST_CASE("adapt and plan: an allergen of a note or a method is among those of every variant and its sheet") {
    for (const std::string beside : {"Note: contains sesame.", "\nMethod\nFold in the seasoning, it contains sesame.\n"}) {
        const Formula formula = read(mass + beside + "\n");
        INFO(beside);
        REQUIRE_FALSE(formula.declared.empty());
        AdaptRequest request;
        request.have = engine().read_inventory("chard 400 g\nno spinach\n", "list", &formula).value();
        const auto answer = engine().adapt(formula, request).value();
        REQUIRE_FALSE(answer.variants.empty());
        for (const auto& variant : answer.variants) {
            CHECK(has(variant.prediction.allergens, "sesame"));
            const auto sheet = engine().sheet(variant.formula, {}).value();
            CHECK(has(sheet.prediction.allergens, "sesame"));
            CHECK(sheet.prediction.label.find("SESAME") != std::string::npos);
        }
        PlanRequest planned;
        planned.formulas = {formula};
        planned.have = *request.have;
        const auto shared = plan(engine(), planned).value();
        for (const auto& sausage : shared.sausages) CHECK(has(sausage.prediction.allergens, "sesame"));
    }
}

TEST_CASE("a food that only the method names is perhaps in it, in the head line too") {
    const auto told = engine().predict(read(mass + "\nMethod\nScatter 40 g peanuts over the mass.\n")).value().allergens;
    const auto peanut = std::find_if(told.begin(), told.end(), [](const AllergenText& one) { return one.allergen == "peanut"; });
    REQUIRE(peanut != told.end());
    CHECK_FALSE(peanut->sure);
}

TEST_CASE("without a food that only the words beside the lines tell of is asked back") {
    AdaptRequest request;
    request.without = {"sesame"};
    for (const std::string beside : {"Note: may contain sesame.", "\nMethod\nScatter sesame seeds over it.\n"}) {
        INFO(beside);
        const auto answer = engine().adapt(read(mass + beside + "\n"), request);
        REQUIRE_FALSE(answer);
        CHECK(answer.error().message.find("sesame") != std::string::npos);
    }
    CHECK(engine().adapt(read(mass + "Note: contains no sesame.\n"), request));
}

TEST_CASE("plan: what is to be left out is in no batch, however much of it is on hand") {
    const Formula nuts = read(mass + "100 g walnuts\n2 m hog casings\n");
    PlanRequest request;
    request.have = engine().read_inventory("walnuts 500 g\npork shoulder 3 kg\nspinach 1 kg\n", "list", &nuts).value();
    request.formulas = {nuts};
    request.without = {"nuts"};
    const auto without_nuts = plan(engine(), request).value();
    for (const auto& sausage : without_nuts.sausages)
        for (const auto& line : sausage.batch.lines) CHECK(line.ingredient != "walnut");
    for (const auto& buy : without_nuts.buy_first) CHECK(buy.ingredient != "walnut");
    request.without = {"pork"};
    const Formula lamb = read("Lamb, invented\n2 kg lamb shoulder\n200 g spinach\n36 g salt\n2 m hog casings\n");
    request.formulas = {lamb};
    request.have = engine().read_inventory("lamb shoulder 3 kg\nspinach 1 kg\n", "list", &lamb).value();
    const auto without_pork = plan(engine(), request).value();
    for (const auto& sausage : without_pork.sausages) CHECK(sausage.batch.beside.empty());
}

TEST_CASE("a list's raw milk stays in the line of the food that comes in, written out and read again") {
    const Formula formula = read(mass + "100 ml whole milk\n");
    AdaptRequest request;
    request.have = engine().read_inventory("no milk\nbuttermilk 300 ml (unpasteurised)\n", "list", &formula).value();
    const auto answer = engine().adapt(formula, request).value();
    REQUIRE_FALSE(answer.variants.empty());
    const std::string text = engine().formula_text(answer.variants.front().formula);
    INFO(text);
    CHECK(text.find("buttermilk (unpasteurised)") != std::string::npos);
}

}  // namespace told_everywhere_test
