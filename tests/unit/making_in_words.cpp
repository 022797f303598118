// What sentences below the lines tell of the making: the order of salt and acid, the mixing, the cold.
#include <string>

#include "formula/reading.hpp"
#include "standin/engine.hpp"
#include "support/catch.hpp"
#include "support/kitchen.hpp"

using namespace standin;

namespace making_in_words_test {

const std::string lines =
    "Green sausage\n1500 g pork shoulder\n500 g pork back fat\n34 g salt\n30 g white wine vinegar\n40 g parsley\n5 g black pepper\n";

Process made(const std::string& sentence) {
    CAPTURE(sentence);
    const auto read = read_formula(lines + sentence + "\n", "", knowledge());
    REQUIRE(read);
    CHECK(read->lines.size() == 6);
    return read->process;
}

TEST_CASE("a method in words tells the order of salt and acid") {
    for (const auto* sentence : {"Mix the salt in until sticky, add the vinegar last.", "Work in the salt first, the vinegar at the end.",
                                 "Mix with the salt until tacky. Then add the greens and the vinegar.", "Add the vinegar after the salt.",
                                 "Knead the meat with the salt, then pour in the white wine vinegar."})
        CHECK(made(sentence).order == Order::salt_first);
    for (const auto* sentence :
         {"Pour the vinegar over the meat first and leave overnight, then grind, add the salt and mix.",
          "Add the vinegar first, then the salt.", "Marinate the meat in the vinegar overnight. Grind and mix with the salt.",
          "Add the vinegar before the salt."})
        CHECK(made(sentence).order == Order::acid_first);
    for (const auto* sentence : {"Mix everything well.", "Do not add the vinegar first.", "Grind through the 8 mm plate."})
        CHECK_FALSE(made(sentence).order);
}

TEST_CASE("what stands in acid before it is mixed is no rest") {
    CHECK_FALSE(made("Pour the vinegar over the meat and leave overnight, then grind, add the salt and mix.").rest_h);
    CHECK(made("Mix, then rest overnight.").rest_h);
}

TEST_CASE("a method in words tells how far it is mixed and how cold") {
    const auto sticky = made("Mix with the salt until sticky at 2 C.");
    CHECK(sticky.mixing_min == knowledge().parameter("reading.mixed-until-it-binds").mid);
    CHECK(sticky.mixed_at_c == 2);
    const auto hardly = made("Stir just to combine, meat at 18 C.");
    CHECK(hardly.mixing_min == knowledge().parameter("reading.mixed-hardly").mid);
    CHECK(hardly.mixed_at_c == 18);
    CHECK(made("Mix 4 minutes until sticky.").mixing_min == 4);  // a figure goes before a word
    // A limit is no measure: who mixes until it is tacky and then stops has mixed it.
    CHECK(made("Mix with the salt until tacky, do not overmix.").mixing_min == sticky.mixing_min);
    CHECK(made("Work it until sticky. Add the parsley and mix, just until combined.").mixing_min == sticky.mixing_min);
    CHECK_FALSE(made("Mix the meat and the salt, do not overmix.").mixing_min);
    CHECK_FALSE(made("Mix and chill to 2 C.").mixing_min);
    CHECK_FALSE(made("Cook to 72 C and serve.").mixed_at_c);
}

TEST_CASE("a sentence of the method that names foods of the formula is no line") {
    made("Grind and mix with salt.");
    made("Mix the meat with salt and pepper");
    made("Grind at 2 C and mix.");
    // A food that the formula does not have waits for its weight.
    CHECK_FALSE(read_formula(lines + "Add the spinach and mix.\n", "", knowledge()));
    CHECK_FALSE(read_formula(lines + "Roast garlic\n", "", knowledge()));
}

TEST_CASE("the order that a method tells moves bind and cook loss") {
    const auto engine = Engine::open({});
    const auto predicted = [&](const std::string& sentence) {
        auto read = read_formula(lines + sentence + "\n", "", knowledge());
        return engine->predict(*read).value();
    };
    const auto careful = predicted("Mix with the salt until sticky at 2 C, add the vinegar last.");
    const auto careless = predicted("Pour the vinegar over the meat first. Grind at 18 C, add the salt and stir just to combine.");
    CHECK(careful.nominal[Property::bind] > careless.nominal[Property::bind] + 10);
    CHECK(careful.nominal[Property::cook_loss_pct] < careless.nominal[Property::cook_loss_pct]);
}

}  // namespace making_in_words_test
