#include "formula/line/line_text.hpp"

#include <algorithm>

#include "support/catch.hpp"
#include "support/knowledge.hpp"

using namespace standin;

namespace line_text_test {

Result<ReadLine> read(std::string_view text) { return read_line(text, Origin("f.txt", {7, 3}), knowledge()); }

Line good(std::string_view text) {
    INFO(std::string(text));
    const auto line = read(text);
    if (!line) FAIL(line.error().where + " " + line.error().message);
    return line->line;
}

void bad(std::string_view text, const std::string& where, const std::string& part) {
    INFO(std::string(text));
    const auto line = read(text);
    REQUIRE_FALSE(line);
    CHECK(line.error().where == where);
    CHECK(line.error().message.find(part) != std::string::npos);
}

TEST_CASE("amount first, name first, amount behind") {
    for (const char* text : {"18 g salt", "salt, 18 g", "salt: 18 g", "salt - 18 g", "salt 18 g", "• 18 g salt", "- 18 g of salt"}) {
        CHECK(good(text).ingredient == "table-salt");
        CHECK(good(text).grams == Band{18, 18, 18});
    }
    CHECK(good("2½ lb pork shoulder").grams.mid == Approx(2.5 * 453.59237));
    CHECK(good("pork shoulder 2.4 kg").ingredient == "pork-shoulder");
    CHECK(good("2 kg 80/20 pork trim").grams.mid == 2000);
    CHECK(good("80/20 pork trim, 2 kg").grams.mid == 2000);
}

TEST_CASE("preparations before the name are weighed, behind a comma still to do") {
    const Line before = good("300 g blanched spinach");
    REQUIRE(before.prepared.size() == 1);
    CHECK(before.prepared[0].preparation == "blanched");
    CHECK(before.weighed_prepared);
    const Line after = good("300 g spinach, blanched for 3 minutes and squeezed");
    REQUIRE(after.prepared.size() == 2);
    CHECK(after.prepared[0].minutes == 3.0);
    CHECK(after.prepared[1].preparation == "squeezed");
    CHECK_FALSE(after.weighed_prepared);
    CHECK(good("300 g spinach (blanched 3 min)").prepared.size() == 1);
    CHECK(good("300 g spinach, blanched [weighed prepared]").weighed_prepared);
    CHECK(good("300 g roasted jalapeno, peeled").weighed_prepared);  // the skin goes with the roasting
    bad("300 g roasted jalapeno, chopped, dried", "f.txt:7:3", "between two preparations");
}

TEST_CASE("counts, bunches and cups") {
    CHECK(good("4 serranos, seeded").count == 4.0);
    CHECK(good("2-3 jalapeño peppers").count == 2.5);
    CHECK(good("4 garlic cloves, minced").grams == good("4 cloves garlic, minced").grams);
    CHECK_FALSE(good("2 bunches flat-leaf parsley").count);
    CHECK(good("1 1/2 cups chopped parsley").grams.low < good("1 1/2 cups chopped parsley").grams.mid);
    CHECK(good("handful parsley").grams.mid > 5);
    CHECK(good("a pinch of salt").grams.mid < 1);
    CHECK(good("4 serranos (24 g), seeded").grams == Band{24, 24, 24});
    CHECK(good("24 g (20 to 30 g) serrano").grams == Band{20, 24, 30});
    CHECK(good("2 tbsp white wine vinegar").ingredient == "white-wine-vinegar");
}

TEST_CASE("marks and notes") {
    CHECK(good("300 g spinach [keep]").keep);
    CHECK(good("300 g spinach (keep)").keep);
    CHECK_FALSE(good("300 g spinach (from the garden shop)").keep);
    CHECK(good("300 g fresh organic spinach leaves, finely chopped").ingredient == "spinach");
    CHECK(good("300 g (about 10 oz) spinach").grams == Band{300, 300, 300});
}

TEST_CASE("a bracket is read as far as it belongs to the words") {
    CHECK(good("300 g spinach (blanched, preferably young)").prepared.front().preparation == "blanched");
    CHECK(good("300 g spinach (preferably young)").prepared.empty());
    CHECK(good("300 g spinach (blanched weight)").weighed_prepared);
    bad("2 kg pork belly (bone in)", "f.txt:7:20", "bone");
    bad("300 g spinach (boiled in milk)", "f.txt:7:25", "two ingredients");
}

TEST_CASE("what a later clause tells in passing is told, and changes nothing") {
    const auto line = read("12 g fennel seeds, preferably wild");
    REQUIRE(line);
    REQUIRE_FALSE(line->doubts.empty());
    CHECK(in_full(line->doubts.front().what).find("preferably wild") != std::string::npos);
    CHECK(good("10 g lemon zest from about 3 lemons").grams.mid == 10);
    bad("2 kg pork belly, half smoked", "f.txt:7:20", "half");
    bad("20 g salt, oak smoked", "f.txt:7:14", "oak");
    bad("100 g walnuts, glazed with honey", "f.txt:7:18", "glazed");
    bad("500 g spinach, water 100 ml", "f.txt:7:18", "two ingredients");
    bad("3 tbsp olive oil, plus 2 tbsp water", "f.txt:7:21", "");
}

TEST_CASE("a can holds the canned food where it is known, and is doubted where it is not") {
    const auto doubts = [](std::string_view text) {
        const auto line = read(text);
        REQUIRE(line);
        return line->doubts;
    };
    const auto told = [&](std::string_view text, const std::string& part) {
        const auto all = doubts(text);
        return std::any_of(all.begin(), all.end(), [&](const LineDoubt& d) { return in_full(d.what).find(part) != std::string::npos; });
    };
    for (const char* text : {"1 (4 oz) can chopped green chiles", "1 4-oz can green chiles", "1 can (4 oz) green chiles"}) {
        INFO(text);
        CHECK(good(text).ingredient == "green-chile-canned");
        CHECK(good(text).grams.mid == Approx(4 * 28.349523125));
        CHECK(told(text, "in a can: read as canned green chiles"));
    }
    CHECK(good("4 oz chopped green chiles").ingredient == "green-chile");
    const auto unknown = doubts("1 (8 oz) can zucchini");
    CHECK(good("1 (8 oz) can zucchini").ingredient == "zucchini");
    CHECK(std::any_of(unknown.begin(), unknown.end(), [](const LineDoubt& d) { return d.confidence == Confidence::unsure && d.always; }));
    CHECK_FALSE(told("1 (14 oz) can coconut milk", "in a can"));
    CHECK_FALSE(told("8 oz zucchini", "in a can"));
}

TEST_CASE("packed leaves weigh more than loose ones, and nobody knows how much") {
    const Band loose = good("1 cup spinach").grams;
    for (const char* text : {"1 cup packed spinach", "1 cup spinach, packed", "1 packed cup spinach", "1 cup firmly packed spinach",
                             "1 firmly packed cup spinach"}) {
        INFO(text);
        const Band packed = good(text).grams;
        CHECK(packed.mid == Approx(1.5 * loose.mid));
        CHECK(packed.low > loose.low);
        CHECK(packed.high / packed.low > 1.5 * loose.high / loose.low);
    }
    CHECK(good("1 cup loosely packed spinach").grams == loose);
    CHECK(good("1 loosely packed cup spinach").grams == loose);
    const Band cut = good("1 cup chopped parsley").grams;
    CHECK(good("1 cup packed parsley leaves").grams.mid == Approx(cut.mid));
    CHECK(good("1 cup packed parsley leaves").grams.low < 0.8 * cut.low);
    CHECK(good("1 cup packed chopped parsley").grams.mid == Approx(1.2 * cut.mid));
    CHECK(good("1 cup packed brown sugar").grams == good("1 packed cup brown sugar").grams);
    CHECK(good("1 cup packed brown sugar").grams.mid == Approx(220));
}

TEST_CASE("what is for the pan is counted, and said to be") {
    const auto line = read("1 tbsp olive oil, for frying");
    REQUIRE(line);
    REQUIRE_FALSE(line->line.notes.empty());
    CHECK(in_full(line->line.notes.back()).find("for frying") != std::string::npos);
    CHECK(in_full(read("12 g fennel seed, for depth")->line.notes) == std::vector<std::string>{"fennel seed: passed over: \"for depth\""});
}

TEST_CASE("a root by the teaspoon is presumed ground, by the tablespoon asked back") {
    const auto line = read("1 tsp ginger");
    REQUIRE(line);
    CHECK(line->line.ingredient == "ground-ginger");
    REQUIRE_FALSE(line->line.notes.empty());
    CHECK(in_full(line->line.notes.front()).find("presumed") != std::string::npos);
    CHECK(good("1 tsp grated ginger").ingredient == "ginger");
    CHECK(good("1 tsp minced fresh ginger").ingredient == "ginger");
    CHECK(good("10 g ginger").ingredient == "ginger");
    bad("1 tbsp ginger", "f.txt:7:3", "fresh and grated, or ground ginger");
}

TEST_CASE("a piece of a root by its length") {
    for (const char* text : {"2 inch piece of ginger", "2-inch knob ginger", "1 (2-inch) piece fresh ginger", "2\" piece ginger",
                             "5.08 cm piece of ginger", "2 inches ginger"})
        CHECK(good(text).grams.mid == Approx(20));
    CHECK(good("1 inch ginger").grams.low < 6);
    bad("2 inches salt", "f.txt:7:3", "no weight is known");
}

TEST_CASE("temperatures are no amounts") {
    for (const char* text : {"300 ml water at 4 °C", "300 ml water, cooled to 4C", "300 ml water (at 39 F)"})
        CHECK(good(text).grams == good("300 ml water").grams);
    CHECK(good("1 to 2 C milk").grams.mid == Approx(1.5 * 244).epsilon(0.05));
}

TEST_CASE("two weights that differ are both in the band") {
    const auto line = read("1 lb / 500 g pork belly");
    REQUIRE(line);
    CHECK(line->line.grams.mid == Approx(453.6).epsilon(0.001));
    CHECK(line->line.grams.high == 500);
    CHECK(line->doubts.size() == 1);
    CHECK(good("salt | 18 g | 3 tsp").grams == Band{18, 18, 18});
    CHECK(good("pork shoulder 500 g 1.10 lb.").grams.mid == 500);
    CHECK(good("1 small onion, chopped 30 g 2 Tbsp.").grams == Band{30, 30, 30});
}

TEST_CASE("a food of its own behind a comma") {
    CHECK(good("2 g thyme, dried").ingredient == "dried-thyme");
    CHECK(good("100 g parsley, dried [weighed first]").ingredient == "parsley");
}

TEST_CASE("shares are kept for later") {
    for (const char* text :
         {"salt 1.8 % of meat", "1.8% of the meat salt", "18 g salt per kg of meat", "18 g/kg of meat salt", "1.8 % salt (of meat)"}) {
        INFO(text);
        const auto line = read(text);
        REQUIRE(line);
        REQUIRE(line->share);
        CHECK(line->share->of == Whole::meat);
        CHECK(line->share->fraction.mid == Approx(0.018));
    }
    bad("1.8 % salt", "f.txt:7:3", "of meat");
    bad("18 g salt per kg", "f.txt:7:3", "of meat");
}

TEST_CASE("nothing is guessed") {
    bad("300 g spnch", "f.txt:7:9", "unknown ingredient \"spnch\"");
    CHECK(in_full(read("300 g spinch")->doubts.back().what) ==
          "\"spinch\" taken for \"spinach\"");  // one letter off, and nothing else near
    bad("300 g spinach, blnhed", "f.txt:7:18", "unknown word \"blnhed\"");
    CHECK(read("300 g spinach, blnhed").error().hints.front() == "blanched");
    bad("300 g wilder spinach", "f.txt:7:9", "unknown word");
    bad("300 g spinach, seeded", "f.txt:7:18", "not done to spinach");
    bad("300 g spinach and garlic", "f.txt:7:21", "two ingredients");
    bad("300 g spinach or garlic", "f.txt:7:17", "\"or\"");
    bad("3 bunches jalapeno", "f.txt:7:3", "no weight is known for a bunch");
    bad("2 cups pork shoulder", "f.txt:7:3", "no weight is known for a cup");
    bad("salt to taste", "f.txt:7:3", "to taste");
    bad("a little salt", "f.txt:7:3", "a little");
    bad("spinach", "f.txt:7:3", "no amount");
    bad("300 g", "f.txt:7:3", "no ingredient");
    bad("0 g salt", "f.txt:7:3", "more than zero");
    bad("-5 g salt", "f.txt:7:3", "more than zero");
    bad("0.0001 g salt", "f.txt:7:3", "under 0.001 g");
    bad("1200 kg pork shoulder", "f.txt:7:3", "over 1000 kg");
    bad("1 cup roasted carrot", "f.txt:7:3", "expected grams");
    bad("10 oz (400 g) spinach", "f.txt:7:3", "the same weight twice");
    bad(std::string(5000, '('), "f.txt:7:3", "2000 letters");
}

}  // namespace line_text_test
