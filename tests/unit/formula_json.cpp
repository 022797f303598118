#include "formula/formats/formula_json.hpp"

#include <cmath>

#include "formula/hazards/hazards.hpp"
#include "formula/reading.hpp"
#include "support/catch.hpp"
#include "support/knowledge.hpp"

using namespace standin;

namespace formula_json_test {

constexpr const char* hedgerow = R"({"title": "Hedgerow green",
 "lines": [
  {"ingredient": "pork shoulder", "amount": "2400 g"},
  {"ingredient": "spinach", "amount": "300 g", "prepared": ["blanched 3 min", "squeezed"]},
  {"ingredient": "spinach", "amount": "100 g", "prepared": ["blanched"], "weighed": "after"},
  {"ingredient": "flat-leaf parsley", "amount": "2 bunches", "keep": true},
  {"ingredient": "salt", "amount": "1.8 % of meat", "note": "fine"}],
 "process": {"plate": "10 mm", "mixing": "2 min", "mixed at": "2 C", "rest": "36 h", "order": "salt first", "cook": "grill", "core": "160 F"}})";

std::string trouble(const std::string& text) {
    const auto formula = read_formula(text, "f.json", knowledge());
    REQUIRE_FALSE(formula);
    return formula.error().where + " " + formula.error().message;
}

bool has(const std::string& text, const std::string& part) { return text.find(part) != std::string::npos; }

void same(const Formula& a, const Formula& b) {
    CHECK(a.title == b.title);
    CHECK(a.note == b.note);
    REQUIRE(a.lines.size() == b.lines.size());
    for (std::size_t i = 0; i < a.lines.size(); ++i) {
        const Line &x = a.lines[i], &y = b.lines[i];
        CHECK(x.ingredient == y.ingredient);
        CHECK(x.prepared == y.prepared);
        CHECK(x.weighed_prepared == y.weighed_prepared);
        CHECK(x.keep == y.keep);
        CHECK(x.count == y.count);
        CHECK(std::abs(x.grams.low - y.grams.low) < 1e-6);
        CHECK(std::abs(x.grams.mid - y.grams.mid) < 1e-6);
        CHECK(std::abs(x.grams.high - y.grams.high) < 1e-6);
    }
    CHECK(a.process.order == b.process.order);
    CHECK(a.process.cook == b.process.cook);
    CHECK(a.process.rest_h == b.process.rest_h);
    CHECK(a.process.core_c.value_or(0) == Approx(b.process.core_c.value_or(0)));
}

TEST_CASE("a formula in JSON") {
    const auto formula = read_formula(hedgerow, "f.json", knowledge());
    REQUIRE(formula);
    CHECK(formula->title == "Hedgerow green");
    REQUIRE(formula->lines.size() == 5);
    CHECK(formula->lines[1].prepared[0].minutes == 3.0);
    CHECK_FALSE(formula->lines[1].weighed_prepared);
    CHECK(formula->lines[2].weighed_prepared);
    CHECK(formula->lines[3].ingredient == "parsley");
    CHECK(formula->lines[3].keep);
    CHECK(formula->lines[4].grams.mid == Approx(43.2));
    CHECK(formula->process.plate_mm == 10.0);
    CHECK(formula->process.order == Order::salt_first);
    CHECK(formula->process.core_c == Approx(71.1111).epsilon(1e-4));
}

TEST_CASE("what is written reads back") {
    auto formula = *read_formula(hedgerow, "f.json", knowledge());
    formula.note = "first: try\nsecond";
    formula.lines.push_back({"parsley", {30, 30, 30}, {{"dried", std::nullopt}}, false, false, std::nullopt, ""});
    formula.lines.push_back({"parsley", {30, 30, 30}, {{"dried", std::nullopt}}, true, false, std::nullopt, ""});
    formula.lines.push_back({"serrano", {18.123456, 24.654321, 31.1}, {{"seeded", std::nullopt}}, false, true, 4.0, ""});
    for (const char* title : {"Hedgerow green", "300 g spinach", "rest: 3 h", "# odd", ""}) {
        formula.title = title;
        const auto from_json = read_formula(formula_json(formula, knowledge()), "again.json", knowledge());
        REQUIRE(from_json);
        same(formula, *from_json);
        const auto from_text = read_formula(formula_text(formula, knowledge()), "again.txt", knowledge());
        REQUIRE(from_text);
        same(formula, *from_text);
    }
}

TEST_CASE("every ingredient can be written and read back") {
    Formula formula{"All", "", {}, {}};
    for (const auto& ingredient : knowledge().records().ingredients) {
        const Line line{ingredient.id, {12, 12, 12}, {}, false, false, std::nullopt, ""};
        if (!danger_of_food(ingredient.names.front(), line, knowledge()))
            formula.lines.push_back(line);  // what must be boiled is asked back raw
    }
    const auto again = read_formula(formula_text(formula, knowledge()), "all.txt", knowledge());
    if (!again) FAIL(again.error().message);
    same(formula, *again);
    const auto json = read_formula(formula_json(formula, knowledge()), "all.json", knowledge());
    if (!json) FAIL(json.error().message);
    same(formula, *json);
}

TEST_CASE("typed: unknown keys, wrong types, missing keys, each with its place") {
    const std::string all = trouble(R"({"titel": "x", "lines": [
 {"ingredient": "spnch", "amount": "300 g"},
 {"ingredient": "spinach", "amount": 300},
 {"ingredient": "spinach", "amount": "10 g", "prepared": ["blnhed"], "weighed": "later"},
 {"amount": "10 g"}, 7],
 "process": {"plat": "10 mm", "core": "71", "cook": "by hand"}})");
    CHECK(has(all, "f.json:1:11: unknown key \"titel\""));
    CHECK(has(all, "\"title\""));
    CHECK(has(all, "f.json:2:17: unknown ingredient \"spnch\""));
    CHECK(has(all, "f.json:3:38: \"amount\" must be text"));
    CHECK(has(all, "f.json:4:59: unknown word \"blnhed\""));
    CHECK(has(all, "\"before\" or \"after\""));
    CHECK(has(all, "f.json:5:2: \"ingredient\" is missing"));
    CHECK(has(all, "f.json:5:22: expected an object"));
    CHECK(has(all, "\"plat\""));
    CHECK(has(all, "core: expected a temperature"));
    CHECK(has(all, "cook: expected one of"));
}

TEST_CASE("a document that is no formula") {
    CHECK(has(trouble("{\"title\": \"x\", \"lines\": []}"), "no lines"));
    CHECK(has(trouble("[]"), "object"));
    CHECK(has(trouble("{\"title\": }"), "f.json:1:"));
    CHECK(has(trouble(R"({"title": "x", "lines": [{"ingredient": "salt", "amount": "2 % of meat"}]})"), "no meat line"));
    CHECK(has(trouble(R"({"title": "x", "lines": [{"ingredient": "salt", "amount": "2 % of batch"}]})"), "leave nothing"));
    CHECK(has(
        trouble(
            R"({"title": "x", "lines": [{"ingredient": "pork shoulder", "amount": "800 kg"}, {"ingredient": "pork shoulder", "amount": "800 kg"}]})"),
        "the batch is over 1000 kg"));
}

}  // namespace formula_json_test
