// "X or Y", words of quality and cut beside a food, and lines that are no ingredient.
#include <algorithm>

#include "formula/line/line_text.hpp"
#include "standin/engine.hpp"
#include "support/catch.hpp"
#include "support/knowledge.hpp"
#include "support/read_line.hpp"

using namespace standin;

namespace or_and_remarks_test {

using namespace reading_a_line;

TEST_CASE("of two foods the first is taken and both are told") {
    const auto is = [](const std::string& text, const std::string& id) {
        const auto line = line_of(text);
        INFO(text);
        CHECK(line.ingredient == id);
        const auto notes = in_full(line.notes);
        CHECK(
            std::any_of(notes.begin(), notes.end(), [](const auto& note) { return note.find("the first is taken") != std::string::npos; }));
    };
    is("1/3 cup pine nuts or slivered almonds", "pine-nut");
    is("60 ml cold water or beer", "water");
    is("200 g kale or chard", "kale");
    is("30 ml lemon or lime juice", "lemon-juice");
    is("1 tsp dried thyme OR 1 tbsp fresh", "dried-thyme");
    const auto nuts = line_of("50 g pumpkin seeds or walnuts");
    CHECK(std::any_of(nuts.declared.begin(), nuts.declared.end(), [](const Declared& told) { return told.words == "or walnuts"; }));
}

TEST_CASE("a choice in brackets is a choice") {
    for (const std::string line : {"60 g pecans (or walnuts), toasted", "20 g butter (or margarine)"}) {
        INFO(line);
        const auto read = read_line(line, Origin("", {1, 1}), knowledge());
        REQUIRE(read);
        CHECK((read->line.ingredient == "pecan" || read->line.ingredient == "butter"));
        CHECK(std::any_of(read->doubts.begin(), read->doubts.end(), [](const LineDoubt& doubt) {
            return doubt.what.kind == ReasonKind::first_of_two && doubt.confidence == Confidence::unsure;
        }));
    }
}

TEST_CASE("two foods that are not alike, a danger or an unknown one are asked about") {
    for (const char* text : {"300 g spinach or garlic", "300 g spinach or zorbles", "300 g venison or goat",
                             "1 kg pork shoulder or ground pork", "1 cup stock, or about 200 ml wine", "20 g salt or curing salt",
                             "300 g wild garlic or lily of the valley", "100 g milk, no cream or butter"}) {
        INFO(text);
        CHECK_FALSE(with_line(text));
    }
}

TEST_CASE("words of quality, cut and form beside a food that is known are no question") {
    const auto is = [](const std::string& text, const std::string& id) {
        INFO(text);
        CHECK(line_of(text).ingredient == id);
    };
    is("500 g spinach, IQF chopped, thawed", "spinach-frozen");
    is("20 g black pepper, half ground, half cracked", "black-pepper");
    is("200 g onions, grated, juice squeezed out", "onion");
    is("100 ml sparkling mineral water", "water");
    is("2 bu. cilantro, chopped", "cilantro");
    is("20 g white sesame seeds, toasted", "hulled-sesame");
    is("4 green chiles (jalapeño type)", "jalapeno");
    is("200 g pork jowl, derinded", "pork-jowl");
}

TEST_CASE("what is said to the reader and what is to be done is no ingredient") {
    const auto read = engine().read_closely(
        "Links\nfrom my kitchen to yours!\n1 kg pork shoulder\n18 g salt\nNB lime next time instead of wine\nForm patties 100 g each.\n"
        "Steam or pan-fry.\nMix all.\nFat content of batch: 28-32%\nI pick mine in April with gloves on.\n"
        "Poach at 75 C to a core of 70 C.",
        "f");
    REQUIRE(read);
    REQUIRE(read->formula);
    CHECK(read->formula->lines.size() == 2);
    for (const char* text :
         {"Zorbles from my garden 40 g", "I use a handful of zorbles.", "NB a handful of walnuts", "Tip zorbles q.s.", "NB 40 g walnuts"}) {
        INFO(text);
        CHECK_FALSE(with_line(text));
    }
}

TEST_CASE("one weight and what it is made of, and a liquid that goes in with a food") {
    const auto read = engine().read_formula("Links\nTotal meat 5 lb (60% venison, 40% pork belly)\n36 g salt", "f");
    REQUIRE(read);
    REQUIRE(read->lines.size() == 3);
    CHECK(read->lines[0].grams.mid == Approx(1360.8).epsilon(0.001));
    CHECK(read->lines[1].grams.mid == Approx(907.2).epsilon(0.001));
    CHECK_FALSE(engine().read_formula("Links\nTotal meat 5 lb (60% venison, 30% pork belly)\n36 g salt", "f"));
    CHECK_FALSE(engine().read_formula("Links\nTotal meat 5 lb (60% venison, 40% zorble)\n36 g salt", "f"));
    const auto cherries = with_line("60 g dried cherries, plumped in 60 ml gin");
    REQUIRE(cherries);
    CHECK(cherries->lines.size() == 4);
    const auto starch = with_line("10 g cornflour mixed with 45 ml cold water");
    REQUIRE(starch);
    CHECK(starch->lines.size() == 4);
    CHECK_FALSE(with_line("40 g garlic, infused in 100 ml olive oil"));
}

TEST_CASE("leaves by the spoon are told as unsure") {
    const auto read = engine().read_closely("Links\n1 kg pork shoulder\n18 g salt\n2 tsp marjoram leaves", "f");
    REQUIRE(read);
    CHECK(read->lines.back().confidence == Confidence::unsure);
}

}  // namespace or_and_remarks_test
