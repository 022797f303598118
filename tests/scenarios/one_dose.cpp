// One dose for one thing, whoever asks; enough for the heat; herbs as they lie on the board. Formulas are invented.
#include "support/catch.hpp"
#include "support/scenario.hpp"

using namespace standin;
using namespace scenario;

namespace one_dose_test {

double swapped(const std::string& formula, const std::string& line, const std::string& food) {
    const auto read = expect(engine().read_formula(formula, "formula"));
    SwapsRequest request;
    request.top = 100;
    for (const auto& s : expect(engine().swaps(read, line, request)).stand_ins)
        if (s.ingredient == food && !s.partner) return s.grams;
    return 0;
}

const std::string mass = "Plain (invented)\n2000 g pork shoulder\n400 g pork backfat\n40 g parsley\n20 g garlic\n42 g salt\n";

TEST_CASE("one dose: swaps and adapt weigh the same") {
    struct Case {
        const char *line, *name, *food, *id;
    };
    for (const auto& [line, name, food, id] :
         {Case{"10 g juniper berries", "juniper berries", "rosemary", "rosemary"},
          Case{"8 g dried marjoram", "dried marjoram", "dried oregano", "dried-oregano"},
          Case{"8 g dried marjoram", "dried marjoram", "dried thyme", "dried-thyme"}, Case{"20 g tarragon", "tarragon", "dill", "dill"},
          Case{"40 g basil", "basil", "rosemary", "rosemary"}, Case{"40 g cilantro", "cilantro", "tarragon", "tarragon"}}) {
        CAPTURE(line, food);
        const double alone = swapped(mass + line + "\n", name, id);
        const double there = grams_in(first_for(mass + line + "\n", std::string(food) + "\nno " + name + "\n"), id);
        CAPTURE(alone, there);
        if (alone == 0) continue;  // too far to be named
        CHECK(there > 0.75 * alone);
        CHECK(there < 1.25 * alone);
    }
}

TEST_CASE("one dose: dried for dried by strength") {
    const std::string herbs = mass + "12 g dried marjoram\n";
    const double oregano = swapped(herbs, "dried marjoram", "dried-oregano");
    CHECK(oregano > 5);
    CHECK(oregano < 9);
    const double back = swapped(mass + "6 g dried oregano\n", "dried oregano", "dried-marjoram");
    CHECK(back > 7);
    CHECK(back < 13);
    const double rosemary = swapped(mass + "10 g juniper berries\n", "juniper berries", "rosemary");
    CHECK(rosemary > 4);
    CHECK(rosemary <= 10);
    const double dill = swapped(mass + "15 g tarragon\n", "tarragon", "dill");
    CHECK(dill > 14);
    CHECK(dill < 25);
}

TEST_CASE("heat reaches what was, where there are pods enough") {
    const std::string chiles = mass + "40 g serranos, seeded and minced\n";
    const auto v = first_for(chiles, "jalapeños 12\nparsley 2 bunches\nno serranos\n");
    CHECK(grams_in(v, "jalapeno") > 60);
    CHECK(grams_in(v, "jalapeno") < 120);
    CHECK(v.prediction.nominal[Property::heat_mg_kg] > 0.85 * answer_to(chiles, "").base.nominal[Property::heat_mg_kg]);
}

TEST_CASE("herbs are weighed for the list as for the formula, and a bunch that may be enough is taken for it") {
    const std::string lamb =
        "Lamb with mint (invented)\n1500 g lamb shoulder\n250 g lamb fat\n60 g mint\n60 g parsley\n32 g salt\n80 g pistachios\n";
    for (const std::string mint : {"mint 80 g", "mint 60 g", "mint 1 bunch"}) {
        CAPTURE(mint);
        const auto v = first_for(lamb, mint + "\nparsley 2 bunches\npumpkin seeds 200 g\nno pistachios\n");
        CHECK(grams_in(v, "mint") > 55);
    }
    const auto scarce = first_for(lamb, "mint 30 g\nparsley 2 bunches\npumpkin seeds 200 g\nno pistachios\n");
    CHECK(grams_in(scarce, "mint") < 33);
}

TEST_CASE("no more of it counts as the formula counts") {
    const std::string nettle =
        "Nettle (invented)\n3 kg pork shoulder\n500 g pork belly\n300 g nettles, blanched 2 min, squeezed\n60 g salt\n";
    AdaptRequest request;
    const auto read = expect(engine().read_formula(nettle, "formula"));
    request.most = expect(engine().read_inventory("spinach 300 g", "--most", &read)).items;
    const auto v = first_for(nettle, "spinach 700 g\nparsley 2 bunches\nno nettles\n", request);
    CHECK(grams_in(v, "spinach") > 285);
    CHECK(grams_in(v, "spinach") < 305);
}

TEST_CASE("second halves: zest with lemon balm, garlic with chives, coconut milk with lemon, cream with water") {
    struct Case {
        const char *line, *list, *first, *second;
        double first_from, first_to, second_from, second_to;
    };
    for (const auto& c :
         {Case{"40 g lemongrass", "limes 6\nlemon balm 2 bunches\nno lemongrass\n", "lemon-balm", "lime-zest", 20, 40, 3, 8},
          Case{"80 g wild garlic", "chives 4 bunches\ngarlic 1 head\nno wild garlic\n", "chives", "garlic", 40, 70, 24, 32},
          Case{"60 g yogurt", "coconut milk 400 g\nlemons 4\nno yogurt\n", "coconut-milk", "lemon-juice", 40, 65, 4, 12},
          Case{"150 g milk", "cream 200 g\nno milk\n", "cream", "water", 30, 75, 60, 120}}) {
        CAPTURE(c.line);
        const auto v = first_for(mass + c.line + "\n", c.list);
        CHECK(grams_in(v, c.first) >= c.first_from);
        CHECK(grams_in(v, c.first) <= c.first_to);
        CHECK(grams_in(v, c.second) >= c.second_from);
        CHECK(grams_in(v, c.second) <= c.second_to);
    }
}

TEST_CASE("balsamic vinegar comes after the cleaner sour") {
    const auto v = first_for(
        "Goat (invented)\n1400 g goat shoulder\n400 g lamb fat\n30 g oregano\n40 g red wine vinegar\n30 g green olives\n18 g garlic\n"
        "32 g salt\n4 g black pepper\n",
        "balsamic vinegar 1 bottle\nlemons 3\nno red wine vinegar\n");
    CHECK(grams_in(v, "lemon-juice") > 25);
    CHECK(grams_in(v, "balsamic-vinegar") == 0);
}

TEST_CASE("whole fruit in another tongue has its zest too") {
    const auto read =
        expect(engine().read_formula("Wurst (erfunden)\n1000 g Schweineschulter\n18 g Salz\n6 g Zitronenschale\n", "formula"));
    const auto list = expect(engine().read_inventory("Zitronen 3\n", "list", &read));
    CHECK(list.items.size() == 2);
}

}  // namespace one_dose_test
