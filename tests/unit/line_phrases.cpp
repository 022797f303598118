#include "formula/food/line_phrases.hpp"

#include "formula/line/line_text.hpp"
#include "support/catch.hpp"
#include "support/knowledge.hpp"

using namespace standin;

namespace line_phrases_test {

Result<ReadLine> read(std::string_view text) { return read_line(text, Origin("f.txt", {1, 1}), knowledge()); }

Line good(std::string_view text) {
    INFO(std::string(text));
    const auto line = read(text);
    if (!line) FAIL(line.error().message);
    return line->line;
}

std::string asked(std::string_view text) {
    INFO(std::string(text));
    const auto line = read(text);
    REQUIRE_FALSE(line);
    return line.error().message;
}

bool has(const std::string& text, const std::string& part) { return text.find(part) != std::string::npos; }

TEST_CASE("bullets, numbering, leaders and tick boxes say nothing") {
    for (const char* text : {"• 18 g salt", "- [ ] 18 g salt", "☐ 18 g salt", "1. 18 g salt", "2) 18 g salt", "(3) 18 g salt",
                             "– 18 g salt", "salt ..... 18 g", "Salt\t18 g", "4. salt, 18 g", "salt (18 g)"})
        CHECK(good(text).grams == Band{18, 18, 18});
    CHECK(good("2 eggs").count == 2.0);
}

TEST_CASE("parts of a fruit or an egg") {
    CHECK(good("juice of 2 limes").ingredient == "lime-juice");
    CHECK(good("juice of 2 limes").grams == good("2 limes, juiced").grams);
    CHECK(good("Juice of half a lemon").grams.mid == Approx(24));
    CHECK(good("finely grated zest of 1 lemon").ingredient == "lemon-zest");
    CHECK(good("zest of 1/2 an orange").grams.mid == Approx(good("1 orange, zest only").grams.mid / 2));
    CHECK(good("yolks of 2 eggs").grams.mid == 34);
    CHECK(good("leaves from 6 sprigs thyme").prepared.front().preparation == "stemmed");
    CHECK(has(asked("zest and juice of 1 lemon"), "two ingredients"));
}

TEST_CASE("the same amount told twice") {
    for (const char* text : {"500g/1lb 2oz pork shoulder", "500 g / 1 lb 2 oz pork shoulder", "500 g (1 lb 2 oz) pork shoulder"})
        CHECK(good(text).grams == Band{500, 500, 500});
    CHECK(good("1 cup / 125 g wheat flour").grams == Band{125, 125, 125});
    CHECK(good("100ml/3½fl oz white wine").grams.mid == Approx(99.4).epsilon(0.01));
    CHECK(has(asked("500 g / 2 lb pork shoulder"), "the same weight twice"));
}

TEST_CASE("what comes on top is passed over, the amount is not") {
    const auto salt = read("2 tsp salt, plus more to taste");
    REQUIRE(salt);
    CHECK(salt->line.grams.mid == 12);
    CHECK(salt->doubts.size() == 2);
    CHECK(has(asked("salt, or to taste"), "to taste"));
}

TEST_CASE("piece weights are without skin already") {
    const Line peeled = good("5 cloves garlic, peeled");
    CHECK(peeled.weighed_prepared);
    CHECK(peeled.grams == good("5 cloves garlic").grams);
    const Line roasted = good("1 onion, peeled and caramelised");
    REQUIRE(roasted.prepared.size() == 1);
    CHECK(roasted.prepared.front().preparation == "caramelised");
    CHECK_FALSE(roasted.weighed_prepared);
    CHECK_FALSE(good("100 g garlic, peeled").weighed_prepared);
    CHECK_FALSE(good("2 tomatoes, peeled").weighed_prepared);
}

TEST_CASE("sprigs and chopped leaves are of the fresh plant") {
    CHECK(good("6 sprigs thyme").ingredient == "fresh-thyme");
    CHECK(good("1 tbsp chopped sage").ingredient == "fresh-sage");
    CHECK(good("1 tbsp sage").ingredient == "dried-sage");
    CHECK(good("1 bunch coriander").ingredient == "cilantro");
    CHECK(good("1 tsp coriander").ingredient == "coriander-seed");
}

TEST_CASE("what could be two things is asked back") {
    CHECK(has(asked("4 cloves"), "cloves of garlic, or the spice"));
    CHECK(good("4 whole cloves").ingredient == "clove");
    CHECK(has(asked("1 tsp red pepper"), "ground spice"));
    CHECK(good("1 red pepper, diced").ingredient == "bell-red");
    CHECK(has(asked("150 g bread, soaked in 100 ml milk"), "two ingredients"));
    CHECK(has(asked("1 kg pork shoulder and 500 g back fat"), "two ingredients"));
    CHECK(good("one 400 g tin white beans, drained").grams.mid == Approx(240));  // what is drained off such a tin is known
    CHECK(good("one 400 g jar capers, drained").grams.mid == Approx(240));
    CHECK(has(asked("1 tsp salt and pepper"), "two ingredients"));
}

TEST_CASE("a fat share is passed where it is that of the meat") {
    CHECK(good("2 kg ground beef, 80% lean").ingredient == "ground-beef-80");
    CHECK(good("2 kg ground beef, 95% lean").ingredient == "ground-beef-95");
    CHECK(good("85% lean ground beef, 2 lb").ingredient == "ground-beef-85");
    CHECK(good("7 lb ground turkey, not over 15 % fat").ingredient == "ground-turkey-85");
    CHECK(good("2 kg beef chuck, 20 % fat").ingredient == "beef-chuck");
    REQUIRE(good("2 kg pork shoulder, 40 % fat").fat_pct);  // what the maker knows of the cut goes before the table
    CHECK(good("2 kg pork shoulder, 40 % fat").fat_pct->mid == 40.0);
    CHECK(good("1-1/2 lbs ground pork (80/20)").count == std::nullopt);
}

TEST_CASE("words that tell nothing new, and names that do") {
    CHECK(good("3 pounds pork butt, cut into 1-inch cubes").ingredient == "pork-shoulder");
    CHECK(good("1 lb lean fresh pork").ingredient == "pork-shoulder-lean");
    CHECK(good("4 lb chicken thighs, boneless and skinless").ingredient == "chicken-thigh-skinless");
    CHECK(good("1 kg coarsely minced pork shoulder").ingredient == "pork-shoulder");
    CHECK(good("1 kg pork shoulder, minced").ingredient == "pork-shoulder");
    CHECK(good("3 kg wild boar shoulder").ingredient == "wild-boar");
    CHECK(good("1 lb hog's liver").ingredient == "pork-liver");
    CHECK(good("serranos x 4").count == 4.0);
    CHECK(has(asked("green chillies x 4"), "may weigh 5 g or 45 g"));
    CHECK(good("3 lb pork, half lean and half fat").ingredient == "pork-shoulder");
    REQUIRE(good("3 lb pork, half lean and half fat").fat_pct);
}

TEST_CASE("one of a thing needs no number, nor does a part need an \"of\"") {
    CHECK(good("small bunch sage, leaves picked").ingredient == "fresh-sage");
    CHECK(good("finely grated zest 1 lemon").grams == good("zest of 1 lemon").grams);
    CHECK(good("juice 1/2 lemon").grams.mid == 24);
    CHECK(good("one-quarter teaspoon cinnamon").grams.mid == Approx(0.65));
    CHECK(good("2 bunches scallions, white and light green parts only, sliced").ingredient == "scallion");
    CHECK(good("2 g clove powder").ingredient == "clove");
}

}  // namespace line_phrases_test
