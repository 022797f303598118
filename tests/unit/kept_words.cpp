// What raised a caution stays with the formula: told of it, and of whatever is written of it.
#include <algorithm>
#include <cmath>

#include "standin/engine.hpp"
#include "support/catch.hpp"

using namespace standin;

namespace kept_words_test {

const Engine& engine() {
    static const Result<Engine> engine = Engine::open({});
    return *engine;
}

Formula with(const std::string& line) {
    const auto formula = engine().read_formula("Test\n1 kg pork shoulder\n200 g pork backfat\n18 g salt\n" + line + "\n", "f");
    INFO(line);
    REQUIRE(formula.has_value());
    return *formula;
}

std::size_t told(const Formula& formula, const std::string& id) {
    const auto cautions = engine().predict(formula).value().cautions;
    return static_cast<std::size_t>(std::count_if(cautions.begin(), cautions.end(), [&](const CautionText& c) { return c.id == id; }));
}

TEST_CASE("a line beside the recipe that raised a caution is kept as a note by every format") {
    for (const std::string line :
         {"Hinweis: drei Wochen trocknen", "Serve at 50 C, pink.", "Tip: smoke cold", "opmerking: koud roken", "Serving: raw on toast",
          "# hang for three weeks in the cellar", "Nota: servir a 58 °C, rosado", "Uwaga: wędzić na zimno"}) {
        CAPTURE(line);
        const Formula formula = with(line);
        const std::size_t cautions = told(formula, "hazard-told");
        CHECK(cautions > 0);
        for (const auto& text : {engine().formula_text(formula), engine().formula_json(formula), engine().formula_jsonld(formula)}) {
            const auto again = engine().read_formula(text, "f");
            INFO(text);
            REQUIRE(again.has_value());
            CHECK(told(*again, "hazard-told") == cautions);
        }
    }
}

TEST_CASE("pink at a heat that is too low is both pink and too cool") {
    CHECK(told(with("note: servir a 58 °C, rosado"), "hazard-told") == 2);
}

TEST_CASE("a guest with favism is held against broad beans") {
    const Formula formula = with("200 g broad beans, cooked\nnote: Uncle Nico has G6PD deficiency");
    CHECK(told(formula, "guest-clash") == 1);
    CHECK(told(formula, "favism") == 1);
    CHECK(told(with("200 g broad beans, cooked\nnote: mein Onkel hat Favismus"), "guest-clash") == 1);
    CHECK(told(with("200 g cooked chickpeas\nnote: Uncle Nico has G6PD deficiency"), "guest-clash") == 0);
}

TEST_CASE("raw milk brings milk, and nothing that nobody knows") {
    const auto p = engine().predict(with("150 g raw milk")).value();
    for (const auto& one : p.allergens) CHECK(one.allergen.find("whatever") == std::string::npos);
}

TEST_CASE("cocoa butter is a fat of its own without milk") {
    const auto p = engine().predict(with("20 g cocoa butter")).value();
    CHECK(p.lines.back().ingredient == "cocoa-butter");
    CHECK(p.allergens.empty());
}

TEST_CASE("a weight between two steps of the scale is weighed as it is written") {
    const auto sheet = engine().sheet(with("6.25 g black pepper"), {}).value();
    CHECK(std::abs(sheet.weights.back().weigh_g - 6.2) < 1e-9);
}

}  // namespace kept_words_test
