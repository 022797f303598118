// What the list has enough of fills every line that it can; cheese gives way to what is salty; meat is cut to fit. Formulas are invented.
#include <algorithm>

#include "support/catch.hpp"
#include "support/scenario.hpp"

using namespace standin;
using namespace scenario;

namespace one_food_for_several_test {

const std::string courgette =
    "Vegetable-rich courgette pork (invented)\n1200 g pork shoulder\n300 g pork backfat\n400 g zucchini, grated, salted and squeezed\n"
    "60 g breadcrumbs\n2 eggs\n40 g basil\n24 g salt\n3 g black pepper\n";

TEST_CASE("one food: flour for the crumbs and seed for the egg, and nothing is dropped while there is more of it") {
    AdaptRequest request;
    request.without = {"eggs"};
    const auto answer = answer_to(courgette, "flaxseed, ground 100 g\nrice flour 300 g\nno eggs\n", request);
    REQUIRE_FALSE(answer.variants.empty());
    const auto& v = answer.variants.front();
    CHECK_FALSE(has_edit(v, EditKind::omit));
    CHECK(grams_in(v, "rice-flour") > 40);
    CHECK(grams_in(v, "flaxseed") > 8);
    for (const auto& reason : answer.would_give) {
        CAPTURE(reason.foods);
        CHECK(std::find(reason.foods.begin(), reason.foods.end(), "rice flour") == reason.foods.end());
    }
}

TEST_CASE("one food: ground seed for an egg tastes of no nuts") {
    for (const std::string seed : {"flaxseed", "chia seed"}) {
        CAPTURE(seed);
        const auto v = first_for(courgette, seed + " 100 g\nno eggs\n");
        CHECK_FALSE(has_edit(v, EditKind::omit, "egg"));
        CHECK(v.distance < 4);
    }
}

TEST_CASE("one food: flour for two lines shares what a kilo takes of it") {
    const auto v = first_for("Plain (invented)\n1200 g pork shoulder\n300 g pork backfat\n60 g breadcrumbs\n100 g egg\n24 g salt\n",
                             "rice flour 300 g\nno eggs\nno breadcrumbs\n");
    CHECK_FALSE(has_edit(v, EditKind::omit));
    CHECK(grams_in(v, "rice-flour") > 40);
}

TEST_CASE("cheese goes to something salty on hand rather than to nothing") {
    AdaptRequest request;
    request.without = {"milk"};
    for (const std::string cheese : {"blue cheese", "feta", "goat cheese", "parmesan"})
        for (const std::string salty : {"green olives 200 g", "capers 100 g"}) {
            CAPTURE(cheese, salty);
            const auto v = first_for(
                "Plain (invented)\n2000 g pork shoulder\n300 g pork backfat\n120 g " + cheese + "\n80 g parsley\n18 g garlic\n34 g salt\n",
                salty + "\n", request);
            CHECK_FALSE(has_edit(v, EditKind::omit));
            CHECK(grams_in(v, salty.find("olive") == std::string::npos ? "caper" : "green-olive") > 10);
        }
}

const std::string four_kilos = "Short (invented)\n4 kg pork shoulder\n800 g pork backfat\n300 g chard, blanched, squeezed\n85 g salt\n";

TEST_CASE("short of meat: belly before bacon, and the shoulder is used up") {
    const auto answer = answer_to(four_kilos, "pork shoulder 2.5 kg\nbacon 300 g\npork belly 500 g\nchard 1 kg\nno pork backfat\n");
    REQUIRE_FALSE(answer.variants.empty());
    const auto& v = answer.variants.front();
    CHECK(grams_in(v, "pork-shoulder") > 2450);
    CHECK(grams_in(v, "pork-belly") > 450);
    CHECK(grams_in(v, "bacon") == 0);
    const auto bacon = first_for(four_kilos, "pork shoulder 4 kg\nbacon 300 g\nchard 1 kg\nno pork backfat\n");
    CHECK(grams_in(bacon, "bacon") > 100);  // where there is nothing else
}

TEST_CASE("short of meat: the batch is as large as lean and fat cut together make it") {
    const auto answer = answer_to(four_kilos, "pork shoulder 2.5 kg\npork belly 1.5 kg\nchard 1 kg\nno pork backfat\n");
    REQUIRE(answer.scaled);
    CHECK(answer.scaled->factor > 0.7);
    CHECK(answer.scaled->factor < 0.85);
    REQUIRE_FALSE(answer.variants.empty());
    const auto& v = answer.variants.front();
    CHECK(grams_in(v, "pork-shoulder") > 2450);
    CHECK(grams_in(v, "pork-belly") > 900);
    CHECK(grams_in(v, "pork-belly") <= 1500);
}

TEST_CASE("starch for starch: chestnut gives way to potato before a nut that is new") {
    for (const std::string potato : {"potatoes 1 kg", "boiled potato 500 g"}) {
        CAPTURE(potato);
        const auto answer =
            answer_to("Wild boar and chestnut (invented)\n2000 g wild boar\n600 g pork backfat\n200 g cooked chestnuts\n44 g salt\n",
                      potato + "\nwalnuts 200 g\nno chestnuts\n");
        REQUIRE_FALSE(answer.variants.empty());
        const auto& v = answer.variants.front();
        CHECK(grams_in(v, "walnut") == 0);
        CHECK(grams_in(v, potato.front() == 'p' ? "potato" : "potato-cooked") > 140);
        CHECK(v.new_allergens.empty());
        // The title promises chestnut, and that is said.
        CHECK(std::any_of(v.prediction.cautions.begin(), v.prediction.cautions.end(),
                          [](const CautionText& c) { return c.text.find("The title says chestnut") != std::string::npos; }));
    }
}

TEST_CASE("no new allergen where something harmless that is near enough will do") {
    const std::string fish = "Fine fish (invented)\n900 g salmon fillet\n300 g scallops\n80 g egg whites\n17 g salt\n";
    const auto v = first_for(fish, "shrimp 500 g\nsalmon fillet 1.5 kg\nno scallops\n");
    CHECK(v.new_allergens.empty());
    CHECK(grams_in(first_for(fish, "shrimp 500 g\nsalmon fillet 900 g\nno scallops\n"), "shrimp") > 200);
}

}  // namespace one_food_for_several_test
