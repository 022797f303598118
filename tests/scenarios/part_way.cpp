// Wants that would cost the sausage what it is, and wants beside a list: a practised maker goes part of the way, and takes what the list
// holds whatever is wanted besides. Formulas are invented.
#include <algorithm>

#include "support/catch.hpp"
#include "support/scenario.hpp"

using namespace standin;
using namespace scenario;

namespace part_way_test {

AdaptAnswer asked(const std::string& formula, const std::string& inventory, const std::vector<std::string>& wants) {
    static const Engine engine = expect(Engine::open({}));
    const auto read = expect(engine.read_formula(formula, "formula"));
    AdaptRequest request;
    if (!inventory.empty()) request.have = expect(engine.read_inventory(inventory, "list", &read));
    request.wants = wants;
    return expect(engine.adapt(read, request));
}

Variant first_of(const AdaptAnswer& answer) {
    REQUIRE_FALSE(answer.variants.empty());
    return answer.variants.front();
}

bool goes_part_way(const Variant& v) {
    return std::any_of(v.gives_back.begin(), v.gives_back.end(), [](const Reason& r) { return r.kind == ReasonKind::part_way; });
}

bool meets_all(const Variant& v) {
    return std::all_of(v.wants.begin(), v.wants.end(), [](const WantResult& w) { return w.met; });
}

const std::string sour =
    "Lime kiln (invented)\n2000 g pork shoulder\n200 g back fat\n300 g tomatillo, chopped\n150 g lime juice\n200 g spinach\n"
    "60 g cilantro\n34 g salt\n";

TEST_CASE("part way: a sour sausage that is to be firmer keeps its sourness first, and all of the firmness stands after it") {
    const auto answer = asked(sour, "", {"firmer"});
    const Variant first = first_of(answer);
    CHECK(goes_part_way(first));
    CHECK(grams_in(first, "lime-juice") >= 75);  // half of it
    CHECK(first.prediction.properties[Property::bind].mid > answer.base.properties[Property::bind].mid + 10);
    REQUIRE(answer.variants.size() > 1);
    CHECK(meets_all(answer.variants[1]));
    CHECK_FALSE(goes_part_way(answer.variants[1]));
    CHECK(first.distance <= answer.variants[1].distance);
    CHECK(answer.conflict.empty());
}

TEST_CASE("part way: a number that was asked for is met, whatever it takes") {
    const auto answer = asked(sour, "", {"bind>=50"});
    CHECK_FALSE(goes_part_way(first_of(answer)));
    CHECK(meets_all(first_of(answer)));
}

TEST_CASE("part way: what is met near the sausage is not gone half of") {
    const auto answer = asked("Plain (invented)\n2000 g pork shoulder\n400 g back fat\n40 g salt\n6 g black pepper\n", "", {"firmer"});
    CHECK_FALSE(goes_part_way(first_of(answer)));
    CHECK(meets_all(first_of(answer)));
}

TEST_CASE("a list and a want: what is on hand stands in for what is missing all the same") {
    const std::string formula =
        "Barge (invented)\n1800 g chicken thigh, skin on\n280 g green mango, grated\n60 g cilantro\n6 g Thai chile\n36 g fish sauce\n"
        "6 g salt\n56 g peanuts, roasted\n";
    const std::string list =
        "granny smith apple 3\nlime 4\nculantro 60 g\njalapeno 85 g\ncashews plenty\nno green mango\nno cilantro\nno thai chile\nno "
        "peanuts\n";
    const Variant first = first_of(asked(formula, list, {"hotter"}));
    CHECK(grams_in(first, "granny-smith-apple") > 100);
    CHECK(grams_in(first, "culantro") > 10);
    CHECK(grams_in(first, "cashew") > 40);
    CHECK(grams_in(first, "jalapeno") > 70);
}

TEST_CASE("leaner: a mass of nothing but fat cuts gets lean, and the back fat goes before the belly") {
    const std::string fat_cuts = "Ledge (invented)\n3000 g pork belly\n1000 g back fat\n60 g salt\n12 g black pepper\n";
    for (const std::string want : {"leaner", "fat<=42"}) {
        CAPTURE(want);
        const auto answer = asked(fat_cuts, "", {want});
        CHECK(answer.conflict.empty());
        const Variant first = first_of(answer);
        CHECK(meets_all(first));
        CHECK(grams_in(first, "pork-backfat") < 400);
        CHECK(grams_in(first, "pork-belly") > 2400);
    }
    for (const auto& v : asked(fat_cuts, "", {"leaner"}).variants) CHECK(grams_in(v, "pork-liver") == 0);
}

TEST_CASE("part way: a want that the list cannot serve does not throw out what the list has") {
    const auto answer = asked(
        "Sharp (invented)\n2000 g pork shoulder\n300 g pork backfat\n200 g mustard greens, blanched\n80 g chives\n"
        "50 g jalapeño\n70 g sunflower seeds, toasted\n50 g sherry vinegar\n38 g salt\n",
        "chinese broccoli 400 g\ngarlic chives 200 g\nfresno 100 g\nblack vinegar\npeanuts 300 g\npea shoots 200 g\n"
        "no mustard greens\nno chives\nno jalapeño\nno sunflower seeds\nno sherry vinegar\n",
        {"greener"});
    REQUIRE_FALSE(answer.variants.empty());
    const Variant& first = answer.variants.front();
    CHECK(first.nearness != Nearness::no_longer);
    for (const auto& edit : first.edits) CHECK(edit.kind != EditKind::omit);
    for (const char* food : {"fresno", "peanut", "black-vinegar"}) CHECK(grams_in(first, food) > 0);
    // That it does not go all the way is told.
    CHECK((goes_part_way(first) || !answer.conflict.empty()));
}

TEST_CASE("part way: nothing that the list stands in for is left out for the sake of a word") {
    const std::string hen =
        "Breadfruit yard (invented)\n2000 g chicken thigh\n12 g culantro\n20 g chives\n35 g pimento seasoning pepper\n9 g scotch bonnet\n"
        "80 g lime juice\n12 g garlic\n34 g salt\n55 g breadcrumbs\n";
    const std::string yard =
        "chicken thigh 1500 g\ncilantro 2 bunches\ncubanelle 3\nbird's eye chillies 12\nspring onions 2 bunches\nlimes 5\nno culantro\n"
        "no chives\nno pimento peppers\nno scotch bonnet\n";
    for (const char* want : {"firmer", "juicier", "greener"}) {
        CAPTURE(want);
        const Variant v = first_of(asked(hen, yard, {want}));
        for (const auto& edit : v.edits) {
            CAPTURE(edit.line);
            CHECK_FALSE((edit.reason.kind == ReasonKind::not_there && !edit.reason.foods.empty()));
        }
    }
}

}  // namespace part_way_test
