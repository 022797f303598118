#include "formula/formats/formula_jsonld.hpp"

#include "formula/reading.hpp"
#include "support/catch.hpp"
#include "support/knowledge.hpp"

using namespace standin;

namespace formula_jsonld_test {

Formula good(const std::string& text) {
    INFO(text);
    auto formula = read_formula(text, "p.html", knowledge());
    if (!formula) FAIL(formula.error().where + " " + formula.error().message);
    return std::move(*formula);
}

std::string trouble(const std::string& text) {
    const auto formula = read_formula(text, "p.html", knowledge());
    REQUIRE_FALSE(formula);
    return formula.error().where + " " + formula.error().message;
}

bool has(const std::string& text, const std::string& part) { return text.find(part) != std::string::npos; }

const std::string recipe =
    R"({"@type": "Recipe", "name": "Orchard", "recipeYield": "12 links", "recipeIngredient": ["1 kg pork shoulder", "18 g salt"]})";

std::string page(const std::string& script) {
    return "<!DOCTYPE html>\n<html><head>\n<script type=\"application/ld+json\">" + script + "</script></head><body>1 < 2</body></html>";
}

TEST_CASE("a recipe wherever JSON-LD may keep it") {
    for (const auto& text :
         {recipe, "[" + recipe + "]", R"({"@context": "https://schema.org", "@graph": [{"@type": "WebPage"}, )" + recipe + "]}",
          R"({"@type": "WebPage", "mainEntity": )" + recipe + "}", R"([{"@type": "Thing"}, [)" + recipe + "]]", page(recipe),
          page(R"({"@type": "WebSite"})") + page("[" + recipe + "," + recipe + "]"),
          std::string(R"({"@type": ["Thing", "http://schema.org/Recipe"], "name": "Orchard", "recipeYield": ["12", "12 links"],
              "ingredients": "1 kg pork shoulder", "x": 1})")}) {
        const Formula f = good(text);
        CHECK(f.title == "Orchard");
        CHECK(f.note == "yield: 12 links");
        CHECK(f.lines.front().ingredient == "pork-shoulder");
    }
}

TEST_CASE("entities, tags and instructions in the strings") {
    const Formula f = good(page(
        R"({"@type": "Recipe", "name": "Salt &amp; sage", "recipeIngredient": ["1&frac12; kg <b>pork shoulder</b>", " ", "18&nbsp;g salt"],
            "recipeInstructions": [{"@type": "HowToStep", "text": "plate: grind it"}, "rest: 36 h"]})"));
    CHECK(f.title == "Salt & sage");
    REQUIRE(f.lines.size() == 2);
    CHECK(f.lines[0].grams.mid == 1500);
    CHECK(f.process.rest_h == 36.0);
    CHECK_FALSE(f.process.plate_mm);
}

TEST_CASE("entities of HTML 5 that the library does not know") {
    const Formula f = good(page(
        R"({"@type": "Recipe", "name": "Thirds", "recipeIngredient": ["1&frac13; kg pork shoulder", "&frac58; kg pork belly", "9 g salt &lpar;fine&rpar;", "For the casing:", "2 m hog casings"]})"));
    REQUIRE(f.lines.size() == 3);
    CHECK(f.lines[0].grams.mid == Approx(4000.0 / 3));
    CHECK(f.lines[1].grams.mid == 625);
    CHECK(f.beside.size() == 1);
}

TEST_CASE("places are those in the page") {
    const std::string bad = trouble(page("\n{\"@type\": \"Recipe\",\n \"recipeIngredient\": [\"1 kg pork shoulder\", \"300 g spnch\"]}"));
    CHECK(has(bad, "p.html:5:45"));
    CHECK(has(bad, "unknown ingredient \"spnch\""));
    CHECK(has(trouble(page("{\"@type\": \"Recipe\", ")), "p.html:3:"));
}

TEST_CASE("what is no single recipe") {
    CHECK(has(trouble("<html><p>Nothing"), "no recipe in this page"));
    CHECK(has(trouble(page("{}")), "no recipe in this page"));
    CHECK(has(trouble(R"({"@graph": []})"), "no Recipe"));
    CHECK(has(trouble("[" + recipe + R"(, {"@type": "Recipe", "recipeIngredient": ["2 eggs"]}])"), "several recipes"));
    CHECK(has(trouble(R"({"@type": "Recipe", "recipeIngredient": []})"), "no Recipe"));
}

TEST_CASE("a broken script beside a good one does no harm") {
    CHECK(good(page("{broken") + page(recipe)).lines.size() == 2);
    CHECK(good("<script>if (a < b) {}</script>" + page(recipe)).lines.size() == 2);
}

TEST_CASE("pages as they come") {
    CHECK(good(page("\n//<![CDATA[\n" + recipe + "\n//]]>\n")).lines.size() == 2);
    CHECK(good(page(recipe + ";")).lines.size() == 2);
    CHECK(
        good(
            page("{\"@type\": \"Recipe\", \"description\": \"two\nlines\", \"recipeIngredient\": [\"18 g salt\", \"1 kg pork shoulder\"]}"))
            .lines.size() == 2);
    CHECK(good(R"({"@type": "Recipe", "recipeIngredient": "1 kg pork shoulder\n\n18 g salt\n"})").lines.size() == 2);
    std::string many = "<html>";
    for (int i = 0; i < 5000; ++i) many += "<script type=\"application/ld+json\">{broken</script>";
    CHECK(has(trouble(many), "JSON"));
}

}  // namespace formula_jsonld_test
