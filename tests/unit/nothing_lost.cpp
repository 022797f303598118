// What stands where a reader might not look: values that are no text, a first line that is no title, paragraphs, words of other tongues.
#include <algorithm>

#include "formula/hazards/line_beside.hpp"
#include "formula/line/line_text.hpp"
#include "formula/reading.hpp"
#include "standin/engine.hpp"
#include "support/catch.hpp"
#include "support/knowledge.hpp"

using namespace standin;

namespace nothing_lost_test {

Result<Formula> linked(const std::string& ingredients) {
    return read_formula(R"({"@context": "https://schema.org", "@type": "Recipe", "name": "Test", "recipeIngredient": )" + ingredients + "}",
                        "f", knowledge());
}

Result<ReadLine> line(std::string_view text) { return read_line(text, Origin("", {1, 1}), knowledge()); }

bool has(const std::string& text, const std::string& part) { return text.find(part) != std::string::npos; }

bool tells(const std::vector<Reason>& told, const std::string& part) {
    const auto notes = in_full(told);
    return std::any_of(notes.begin(), notes.end(), [&](const std::string& note) { return has(note, part); });
}

TEST_CASE("JSON-LD: every value of the list is read or refused with its place") {
    const auto read = linked(
        R"(["2 kg pork shoulder", {"@value": "40 g almonds"}, {"@type": "PropertyValue", "name": "table salt", "value": 18, "unitText": "g"}])");
    REQUIRE(read);
    REQUIRE(read->lines.size() == 3);
    CHECK(read->lines[1].ingredient == "almond");
    CHECK(read->lines[2].ingredient == "table-salt");
    CHECK(read->lines[2].grams.mid == 18);
    for (const char* value : {"null", "40", "true", R"({"@type": "Thing"})"}) {
        const auto refused = linked(std::string(R"(["2 kg pork shoulder", )") + value + "]");
        INFO(value);
        REQUIRE_FALSE(refused);
        CHECK(has(refused.error().message + refused.error().where, "f:1:"));
    }
}

TEST_CASE("a first line that tells an amount is no title") {
    for (const char* first : {"salt, 1.7 % of meet", "300 g spnch"}) {
        INFO(first);
        CHECK_FALSE(read_formula(std::string(first) + "\n1 kg pork shoulder\n", "f", knowledge()));
    }
    for (const char* first : {"salt 1.8 %", "pork shouder, 2 kg"}) {
        const auto read = read_formula(std::string(first) + "\n1 kg pork shoulder\n", "f", knowledge());
        INFO(first);
        REQUIRE(read);
        CHECK(read->lines.size() == 2);
        CHECK_FALSE(read->lines.front().notes.empty());
    }
    const auto titled = read_formula("Seven hills\n1 kg pork shoulder\n18 g table salt\n", "f", knowledge());
    REQUIRE(titled);
    CHECK(titled->title == "Seven hills");
}

TEST_CASE("a pasted method is left out, and said to be") {
    const auto read = read_formula(
        "Test\n1 kg pork shoulder\n18 g table salt\nMethod\nGrind the meat through a coarse plate and keep it cold.\nFold in the "
        "walnuts.\ncore: 72 C\n",
        "f", knowledge());
    REQUIRE(read);
    CHECK(read->lines.size() == 2);
    CHECK(read->process.core_c == 72.0);
    CHECK(tells(read->read_as, "left out"));
    CHECK(tells(read->read_as, "walnut"));
    const auto kept = read_formula(formula_text(*read, knowledge()), "again", knowledge());
    REQUIRE(kept);
    CHECK(tells(kept->read_as, "walnut"));
}

TEST_CASE("runner beans are no casing") {
    CHECK_FALSE(beside_the_mass("100 g runner beans", knowledge()));
    CHECK(beside_the_mass("2 m beef runners", knowledge()));
}

TEST_CASE("fat said is fat set, and written again") {
    const auto read = line("2 kg pork shoulder (45 % fat)");
    REQUIRE(read);
    REQUIRE(read->line.fat_pct);
    CHECK(read->line.fat_pct->mid == 45);
    CHECK(read->line.fat_pct->low < 45);
    Formula formula;
    formula.title = "Fat";
    formula.lines = {read->line};
    for (const auto& text :
         {formula_text(formula, knowledge()), formula_json(formula, knowledge()), formula_jsonld(formula, knowledge())}) {
        INFO(text);
        const auto back = read_formula(text, "f", knowledge());
        REQUIRE(back);
        REQUIRE(back->lines.front().fat_pct);
        CHECK(back->lines.front().fat_pct->mid == 45);
    }
}

TEST_CASE("amounts are written as the maker wrote them") {
    const auto read = read_formula("Units\n5 lb pork shoulder\n4 garlic cloves\n1 1/2 tsp black pepper\n", "f", knowledge());
    REQUIRE(read);
    for (const auto& text : {formula_text(*read, knowledge()), formula_json(*read, knowledge()), formula_jsonld(*read, knowledge())}) {
        INFO(text);
        CHECK(has(text, "5 lb"));
        CHECK(has(text, "4 clove"));
        CHECK(has(text, "1 1/2 tsp"));
    }
}

TEST_CASE("other tongues are read where English is not") {
    const auto read = line("2 gousses d'ail");
    REQUIRE(read);
    CHECK(read->line.ingredient == "garlic");
    CHECK(line("18 g Salz")->line.ingredient == "table-salt");
    CHECK(line("1 cucchiaio di olio d'oliva")->line.ingredient == "olive-oil");
    CHECK_FALSE(line("200 g lima beans"));
    CHECK_FALSE(line("300 g schwarze Bohnen, roh"));
}

TEST_CASE("a weighed food below the method is a line, and behind a # it is asked about") {
    const std::string mass = "Test\n2 kg pork shoulder\n34 g salt\n";
    const auto below = read_formula(mass + "\nMethod:\nMix and stuff.\n\n75 g ground almonds\n2 tbsp celery salt\n", "f", knowledge());
    REQUIRE(below);
    CHECK(below->lines.size() == 4);
    const auto said_again = read_formula(mass + "\nMethod:\n200 g pork shoulder is minced fine.\n100 g pork shoulder\n", "f", knowledge());
    REQUIRE(said_again);
    CHECK(said_again->lines.size() == 2);
    CHECK_FALSE(read_formula(mass + "# 40 g walnuts\n", "f", knowledge()));
    CHECK(read_formula(mass + "# a note of 40 g of anything\n# walnuts are for the other batch\n", "f", knowledge()));
}

TEST_CASE("what a method adds unweighed stands on the label as perhaps in it") {
    static const auto engine = Engine::open({});
    const auto read =
        engine->read_formula("Test\n2 kg pork shoulder\n34 g salt\n\nMethod:\nFold in a handful of chopped hazelnuts.\n", "f");
    REQUIRE(read);
    CHECK(has(engine->predict(*read)->label, "HAZELNUT"));
}

TEST_CASE("what a heading keeps out of the mass is weighed beside it") {
    for (const std::string heading : {"Coating (not in the mass):", "For dusting:", "Breading:", "To serve, not in the mix:"}) {
        INFO(heading);
        const auto read = read_formula("Test\n2 kg pork shoulder\n34 g salt\n" + heading + "\n80 g panko\n2 eggs\n\n4 g black pepper\n",
                                       "f", knowledge());
        REQUIRE(read);
        CHECK(read->lines.size() == 3);
        CHECK(read->beside.size() == 2);
    }
    const auto pan = read_formula("Test\n2 kg pork shoulder\n34 g salt\nFor the pan: 50 g butter\n", "f", knowledge());
    REQUIRE(pan);
    CHECK(pan->lines.size() == 2);
    CHECK(pan->beside.size() == 1);
}

}  // namespace nothing_lost_test
