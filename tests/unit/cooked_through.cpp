// Who writes a core that is too low is told to cook further: loss, yield and pages are of the mass as it will be cooked.
#include <algorithm>

#include "standin/engine.hpp"
#include "support/catch.hpp"
#include "support/few_draws.hpp"

using namespace standin;

namespace cooked_through_test {

using few_draws::engine;

Formula breast(const std::string& core) {
    return engine()
        .read_formula("Weir test sausage, invented\n3000 g chicken breast, skinless\n48 g salt\n90 g white wine\ncook: pan\n" + core,
                      "test.txt")
        .value();
}

double loss_of(const Formula& formula) { return engine().predict(formula).value().properties[Property::cook_loss_pct].mid; }

TEST_CASE("a core under the rule: the loss is told for the core that the page asks for") {
    const double as_asked = loss_of(breast("core: 73.9 C\n"));
    CHECK(loss_of(breast("core: 63 C\n")) == Approx(as_asked));
    CHECK(loss_of(breast("")) >= as_asked - 0.5);  // unsaid: the usual, and at least that
    CHECK(loss_of(breast("core: 80 C\n")) > as_asked + 1);
}

TEST_CASE("a core under the rule: what the maker wrote is still minded, and what it kills is not counted at more than that") {
    const auto low = engine().predict(breast("core: 63 C\n")).value(), high = engine().predict(breast("core: 73.9 C\n")).value();
    const auto minded = [](const Prediction& p) {
        return std::any_of(p.cautions.begin(), p.cautions.end(),
                           [](const CautionText& c) { return c.text.find("63 C instead of 73.9 C") != std::string::npos; });
    };
    CHECK(minded(low));
    CHECK_FALSE(minded(high));
}

TEST_CASE("a core under the rule: the sheet's yield is that of the core it asks for") {
    const auto low = engine().sheet(breast("core: 63 C\n"), {}).value(), high = engine().sheet(breast("core: 73.9 C\n"), {}).value();
    CHECK(low.core_c == Approx(73.9).margin(0.1));
    CHECK(low.prediction.properties[Property::cook_loss_pct].mid == Approx(high.prediction.properties[Property::cook_loss_pct].mid));
}

TEST_CASE("a core under the rule: a variant is weighed against its base at one core") {
    AdaptRequest request;
    request.wants = {"saltier"};
    const auto low = engine().adapt(breast("core: 63 C\n"), request).value(),
               high = engine().adapt(breast("core: 73.9 C\n"), request).value();
    REQUIRE_FALSE(low.variants.empty());
    REQUIRE_FALSE(high.variants.empty());
    CHECK(low.base.properties[Property::cook_loss_pct].mid == Approx(high.base.properties[Property::cook_loss_pct].mid));
    CHECK(low.variants.front().prediction.properties[Property::cook_loss_pct].mid ==
          Approx(high.variants.front().prediction.properties[Property::cook_loss_pct].mid));
}

std::string all_text(const Sheet& sheet) {
    std::string text = sheet.core_says;
    const Paper paper = engine().paper(sheet.formula).value();
    for (const auto& line : paper.draft.lines) text += "\n" + line.text;
    for (const auto& caution : sheet.prediction.cautions)
        if (caution.id == "core") text += "\n" + caution.text;
    return text;
}

TEST_CASE("a core over the rule is one figure on the whole sheet") {
    const auto formula = breast("core: 80 C\n");
    const auto sheet = engine().sheet(formula, {}).value();
    CHECK(sheet.core_c == 80);
    CHECK(all_text(sheet).find("73.9") == std::string::npos);
    CHECK(engine().predict(formula).value().core.core_c == 80);
}

TEST_CASE("a title that names those whom germs harm most asks for their core, and tells what is not for them") {
    for (const std::string title : {"Liver links for mums-to-be and toddlers", "Care home bangers", "Saucisses pour les enfants",
                                    "School bangers", "Bratwurst für Schwangere"}) {
        INFO(title);
        const auto formula =
            engine().read_formula(title + "\n1200 g pork shoulder\n500 g pork liver\n60 g honey\n30 g salt\n", "f").value();
        const auto p = engine().predict(formula).value();
        CHECK(p.core.core_c == 73.9);
        const auto says = [&](const std::string& part) {
            return std::any_of(p.cautions.begin(), p.cautions.end(),
                               [&](const CautionText& c) { return c.id == "title-promise" && c.text.find(part) != std::string::npos; });
        };
        CHECK(says("pork liver"));
        CHECK(says("vitamin A"));
        CHECK(engine().sheet(formula, {}).value().core_c == 73.9);
    }
    for (const std::string title : {"Kid and rosemary", "Garden links", "Banger of the house"}) {
        INFO(title);
        const auto formula = engine().read_formula(title + "\n1200 g pork shoulder\n20 g salt\n", "f").value();
        CHECK(engine().predict(formula).value().core.core_c == 71.1);
    }
}

}  // namespace cooked_through_test
