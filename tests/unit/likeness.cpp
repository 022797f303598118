// A food that is no record, said once to be like one that is.
#include "formula/food/likeness.hpp"

#include "formula/line/line_text.hpp"
#include "standin/engine.hpp"
#include "support/catch.hpp"
#include "support/knowledge.hpp"

using namespace standin;

namespace likeness_test {

Result<ReadLine> read(std::string_view text) { return read_line(text, Origin("f.txt", {1, 1}), knowledge()); }

const Engine& engine() {
    static const Engine made = std::move(*Engine::open({}));
    return made;
}

Formula formula(const std::string& greens) { return *engine().read_formula("A\n1 kg pork shoulder\n17 g salt\n" + greens, "f"); }

TEST_CASE("an unknown food goes by what it is said to be like, under its own name") {
    for (const char* text : {"200 g brindleleaf, like dandelion greens", "brindleleaf, like dandelion greens, 200 g",
                             "200 g brindleleaf like dandelion greens", "200 g brindleleaf (like dandelion greens)"}) {
        INFO(text);
        const auto line = read(text);
        REQUIRE(line);
        CHECK(line->line.ingredient == "dandelion");
        CHECK(line->line.called == "brindleleaf");
        CHECK(line->line.grams.mid == 200);
        CHECK_FALSE(line->line.notes.empty());
    }
    const auto blanched = read("200 g brindleleaf, like dandelion greens, blanched, squeezed");
    REQUIRE(blanched);
    CHECK(blanched->line.called == "brindleleaf");
    CHECK(blanched->line.prepared.size() == 2);
}

TEST_CASE("what is known needs no likeness, and what says none is read as before") {
    for (const char* text :
         {"200 g spinach, like a young one", "sobrindleleafng like 200 g spinach", "200 g cheddar, like the one I like"}) {
        INFO(text);
        const auto line = read(text);
        CHECK((!line || line->line.called.empty()));
    }
}

TEST_CASE("a likeness does not smuggle in what is refused") {
    for (const char* text : {"20 g hemlock, like parsley", "20 g hemlok, like parsley", "1 kg badger, like pork shoulder",
                             "100 g grey webcap, like white mushroom", "5 g pink salt, like table salt", "5 g kurepulver, like table salt",
                             "100 g tepary beans, like cooked white beans", "50 g foxglove, like sage"}) {
        INFO(text);
        CHECK_FALSE(read(text));
    }
}

TEST_CASE("the likeness is told, named as the maker names it, and its bands reach further") {
    const auto plain = engine().predict(formula("200 g dandelion greens")),
               like = engine().predict(formula("200 g brindleleaf, like dandelion greens"));
    REQUIRE(plain);
    REQUIRE(like);
    CHECK(like->lines.back().name == "brindleleaf");
    REQUIRE_FALSE(like->allergens.empty());
    CHECK(like->allergens.back().allergen == "whatever brindleleaf holds");
    CHECK_FALSE(like->allergens.back().sure);
    CHECK(like->label.find("brindleleaf (its own allergens to be declared by the maker)") != std::string::npos);
    const auto width = [](const Prediction& p) {
        const Band& green = p.properties[Property::chlorophyll_mg_kg];
        return green.high / green.low;
    };
    CHECK(width(*like) > 1.3 * width(*plain));
    const auto text = engine().formula_text(formula("200 g brindleleaf, like dandelion greens, blanched"));
    CHECK(text.find("brindleleaf, like dandelion greens") != std::string::npos);
    const auto back = engine().read_formula(text, "f");
    REQUIRE(back);
    CHECK(back->lines.back().called == "brindleleaf");
    CHECK(engine().read_formula(engine().formula_json(*back), "f")->lines.back().called == "brindleleaf");
    CHECK(engine().read_formula(engine().formula_jsonld(*back), "f")->lines.back().called == "brindleleaf");
}

TEST_CASE("a list says by the maker's own name that a food is missing") {
    const auto own = formula("200 g brindleleaf, like dandelion greens");
    const auto stock = engine().read_inventory("no brindleleaf\nspinach 400 g", "g", &own);
    REQUIRE(stock);
    CHECK(stock->missing == std::vector<std::string>{"dandelion"});
}

TEST_CASE("what sounds like a mushroom or a wild plant goes by no likeness, and what goes by one is told first") {
    for (const char* text : {"60 g wild brindle, like spinach", "60 g konvalieblad, like spinach", "60 g xylbrapilz, like spinach",
                             "60 g brindle silvestre, like spinach", "60 g brindle çiçeği, like spinach"}) {
        INFO(text);
        CHECK_FALSE(read(text));
    }
    const auto like = engine().predict(formula("200 g brindleleaf, like dandelion greens")).value();
    REQUIRE(like.cautions.size() > 1);
    CHECK(like.cautions[1].id == "likened");
    CHECK(like.cautions[1].text.find("Gather only") != std::string::npos);
}

TEST_CASE("no wholesome name is offered for a poison, or for what may be one") {
    for (const char* name : {"Lorchel", "inci çiçeği", "liljekonvalj", "gyöngyvirág", "Raukopf", "wild xylbra", "xylbrapilz"}) {
        INFO(name);
        CHECK(knowledge().nearest_ingredients(name).empty());
    }
    CHECK_FALSE(knowledge().nearest_ingredients("spinich").empty());
    CHECK_FALSE(knowledge().nearest_ingredients("corriander").empty());
}

}  // namespace likeness_test
