// Lines and lists as makers write them: read as meant, or asked back.
#include "formula/hazards/line_beside.hpp"
#include "formula/reading.hpp"
#include "support/inventory.hpp"
#include "support/judged.hpp"

using namespace standin;

namespace lines_of_makers_test {

FormulaReading reading_of(const std::string& line) {
    auto read = read_closely("Test\n2000 g pork shoulder\n" + line + "\n", "", knowledge());
    REQUIRE(read);
    return std::move(*read);
}

// "cumin 2.1, coriander-seed 1.8": what the lines below the meat became.
std::string became(const std::string& line) {
    std::string out;
    const auto reading = reading_of(line);
    for (std::size_t i = 1; i < reading.lines.size(); ++i) {
        const auto& one = reading.lines[i];
        out += (out.empty() ? "" : ", ") + (one.beside ? std::string("beside") : one.line ? one.line->ingredient : std::string("asked"));
    }
    return out;
}

Inventory list_of(const std::string& text) {
    auto read = read_inventory(text, "", knowledge());
    INFO(text);
    REQUIRE(read);
    return std::move(*read);
}

double grams_on(const std::string& line, const std::string& id) {
    const auto list = list_of("basil 10 g\n" + line + "\n");
    const auto* one = item(list, id);
    INFO(line);
    REQUIRE(one);
    return one->grams.value_or(-1);
}

TEST_CASE("lines of makers are read as they were meant") {
    auto score = judged::score(judged::rows("unit/lines_of_makers.csv"));
    INFO(score.told());
    CHECK(score.total.right == score.total.all);
    CHECK(score.total.all >= 65);
}

TEST_CASE("one amount goes to each of several foods") {
    CHECK(became("1 tsp each cumin and caraway") == "cumin, caraway");
    CHECK(became("3 g each of black pepper, cumin and nutmeg") == "black-pepper, cumin, nutmeg");
    CHECK(became("je 3 g Pfeffer und Kümmel") == "black-pepper, caraway");
    CHECK(became("Pfeffer und Kümmel, je 3 g") == "black-pepper, caraway");
    CHECK(became("table salt & black pepper, 5 g each") == "table-salt, black-pepper");
    CHECK(became("½ tsp each: nutmeg, mace") == "nutmeg, mace");
    CHECK(became("1 bunch each parsley & mint") == "parsley, mint");
    CHECK(became("2 g each dried thyme and oregano") == "dried-thyme, dried-oregano");
    CHECK(became("cumin and fennel seed, 2 g each, toasted and ground") == "cumin, fennel-seed");
    const auto reading = reading_of("cumin and fennel seed, 2 g each, toasted");
    REQUIRE(reading.lines.size() == 3);
    for (std::size_t i : {1u, 2u}) {
        REQUIRE(reading.lines[i].line);
        CHECK(reading.lines[i].line->grams.mid == 2);
        CHECK(reading.lines[i].line->prepared.size() == 1);
    }
    CHECK(became("2 g each black pepper and quillo") == "asked");
    CHECK(became("black pepper and cumin, 5 g") == "asked");
}

TEST_CASE("what bread soaks up is counted or told") {
    const auto measured = reading_of("100 g white bread soaked in 100 ml milk and squeezed");
    REQUIRE(measured.lines.size() == 3);
    REQUIRE(measured.formula);
    CHECK(measured.formula->lines[1].ingredient == "fresh-breadcrumb");
    CHECK(measured.formula->lines[1].prepared.empty());
    CHECK(measured.formula->lines[2].ingredient == "whole-milk");
    CHECK_FALSE(measured.formula->read_as.empty());
    const auto soaked = reading_of("3 slices white bread, crusts removed, soaked in milk");
    REQUIRE(soaked.formula);
    const auto& line = soaked.formula->lines[1];
    REQUIRE(line.declared.size() == 1);
    CHECK(line.declared[0].allergen == "milk");
    CHECK(soaked.lines[1].confidence == Confidence::unsure);
}

TEST_CASE("a caul by the sheet wraps the mass, by weight it is fat") {
    CHECK(became("1 sheet caul") == "beside");
    CHECK(became("2 pieces of caul fat, rinsed") == "beside");
    CHECK(became("200 g caul fat for wrapping") == "beside");
    CHECK(became("200 g caul fat") == "pork-caul");
    const auto reading = reading_of("1 sheet caul");
    REQUIRE(reading.formula);
    REQUIRE(reading.formula->beside.size() == 1);
    CHECK(reading.formula->beside.front().ingredient == "pork-caul");
}

TEST_CASE("a line with a base in front is no heading and no line of the recipe's yield") {
    CHECK(became("per kg 16 g salt") == "table-salt");
    CHECK(became("je kg 16 g Salz") == "table-salt");
    CHECK(became("por kilo 3 g de ajo") == "garlic");
    CHECK(became("Für 4 bis 6 Personen").empty());
    CHECK(became("pour 2 kg").empty());
}

TEST_CASE("the heads of a table and its footnotes are no lines") {
    for (const std::string head : {"Ingredient\tU.S.\tMetric", "| Ingredient | Amount | % |", "* Lightly crush in a mortar."}) {
        INFO(head);
        CHECK(became(head).empty());
    }
    CHECK(became("Spices per 1000 g (1 kg) of meat").empty());
}

TEST_CASE("a title with a nut in it is a title") {
    const auto read = read_closely("Kale and Walnut\n1000 g pork shoulder\n17 g salt\n", "", knowledge());
    REQUIRE(read);
    CHECK(read->title == "Kale and Walnut");
}

TEST_CASE("what a list says is missing is missing") {
    for (const std::string line : {"sorrel – don't have any", "sorrel - have none", "sorrel, not this week", "sorrel: none left"}) {
        const auto list = list_of("basil 10 g\n" + line + "\n");
        INFO(line);
        CHECK(list.missing == std::vector<std::string>{"sorrel"});
    }
    const auto both = list_of("spinach 300 g\nno coriander\n");
    CHECK(among("cilantro", both.missing.front() + "|" + both.missing.back()));
    CHECK(both.missing.size() == 2);
    CHECK(looks_like_stock("kein Koriander\nMangold 300 g\n", "", knowledge()));
    CHECK(looks_like_stock("pas de persil\n", "", knowledge()));
}

TEST_CASE("no sage beside dried sage means the leaf") {
    for (const std::string text : {"dried sage 50 g\nno sage\n", "no sage\ndried sage 50 g\n"}) {
        const auto list = list_of(text);
        INFO(text);
        CHECK(item(list, "dried-sage"));
        CHECK(list.missing == std::vector<std::string>{"fresh-sage"});
    }
    CHECK_FALSE(read_inventory("sage 5 g\nno sage\n", "", knowledge()));
    CHECK_FALSE(read_inventory("no sage\nsage 5 g\n", "", knowledge()));
    const auto formula = read_formula("T\n1000 g pork shoulder\n3 g dried sage\n17 g salt\n", "", knowledge());
    REQUIRE(formula);
    CHECK(read_inventory("dried sage 50 g\nno sage\n", "", knowledge(), &*formula));
}

TEST_CASE("a little and a few on a list are no plenty") {
    for (const auto& [line, id] : std::vector<std::pair<std::string, std::string>>{{"almonds, not many", "almond"},
                                                                                   {"a few walnuts", "walnut"},
                                                                                   {"quelques noix", "walnut"},
                                                                                   {"dried thyme, a little", "dried-thyme"},
                                                                                   {"un peu de persil", "parsley"}}) {
        const double grams = grams_on(line, id);
        INFO(line);
        CHECK(grams > 0);
        CHECK(grams < 150);
    }
}

TEST_CASE("a container or a bunch on a list is weighed by what it usually holds") {
    CHECK(grams_on("Tin of chickpeas", "chickpea-cooked") == 240);
    CHECK(grams_on("1 punnet cherry tomatoes", "tomato") == 250);
    CHECK(grams_on("cider vinegar, 1 bottle", "cider-vinegar") == 500);
    CHECK(grams_on("chives a bunch", "chives") > 0);
    CHECK(grams_on("chervil half a bunch", "chervil") < grams_on("chervil one bunch", "chervil"));
    CHECK(grams_on("thyme a bunch", "fresh-thyme") > 0);
    CHECK(grams_on("handful of parsley left", "parsley") < 60);
    CHECK(grams_on("200 ml white wine left in the bottle", "white-wine") < 210);
    CHECK(grams_on("1/2 bag rocket (about 30g)", "arugula") == 30);
    CHECK(grams_on("1 jar capers (90 g)", "caper") == 90);
    CHECK(grams_on("plenty of thyme", "fresh-thyme") == -1);
    CHECK(list_of("basil 10 g\nplenty of everything else\n").complete == false);
}

}  // namespace lines_of_makers_test
