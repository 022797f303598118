// Lines are kept with what is on hand, at the dose that does the work, and what a word asks for is a step that is tasted. Formulas are
// invented.
#include <algorithm>

#include "standin/mend.hpp"
#include "support/catch.hpp"
#include "support/scenario.hpp"

using namespace standin;
using namespace scenario;

namespace doses_to_hand_test {

AdaptRequest wanting(std::vector<std::string> wants) {
    AdaptRequest request;
    request.wants = std::move(wants);
    return request;
}

bool does(const Variant& v, ReasonKind kind) {
    return std::any_of(v.edits.begin(), v.edits.end(), [&](const Edit& e) { return e.kind == EditKind::process && e.does.kind == kind; });
}

const std::string mass = "1500 g lamb shoulder\n300 g lamb fat\n30 g salt\n60 g water\n";

TEST_CASE("fresh chile and a spoon of paprika stand in for a chile paste") {
    for (const std::string chile : {"jalapeños", "fresno chiles", "serranos"}) {
        CAPTURE(chile);
        const Variant v =
            first_for("Souk (invented)\n" + mass + "60 g harissa\n10 g cumin\n", chile + " 200 g\nsmoked paprika 40 g\nno harissa\n");
        CHECK(grams_in(v, "smoked-paprika") == Approx(8.4).margin(3));
        CHECK(grams_in(v, "jalapeno") + grams_in(v, "fresno") + grams_in(v, "serrano") > 20);
    }
}

TEST_CASE("sweet potato is boiled for chestnut before a nut is brought in") {
    const Variant v =
        first_for("Hearth (invented)\n" + mass + "150 g chestnuts, cooked\n", "walnuts 300 g\nsweet potato 500 g\nno chestnuts\n");
    CHECK(grams_in(v, "sweet-potato") == Approx(150).margin(40));
    CHECK(grams_in(v, "walnut") == 0);
}

TEST_CASE("of starch a third of the dried milk does") {
    const Variant v = first_for("Hearth (invented)\n" + mass + "60 g milk powder\n", "potato starch 100 g\nno milk powder\n");
    CHECK(grams_in(v, "potato-starch") == Approx(21).margin(6));
}

TEST_CASE("without milk, rusk that may hold some is told as that, and what holds none is to be bought") {
    AdaptRequest request;
    request.without = {"milk"};
    const auto answer = answer_to("Crumb (invented)\n" + mass + "40 g rusk\n", "lemons 2\nno rusk\n", request);
    REQUIRE_FALSE(answer.variants.empty());
    bool told = false, shop = false;
    for (const auto& edit : answer.variants.front().edits)
        if (edit.line == "rusk") told = in_full(edit.reason).find("may hold") != std::string::npos;
    for (const auto& give : answer.would_give) shop = shop || in_full(give).find("for the rusk") != std::string::npos;
    CHECK(told);
    CHECK(shop);
}

TEST_CASE("of a milder chile as much comes in as the mass takes for its heat") {
    const std::string formula =
        "Pier (invented)\n1000 g pork shoulder\n400 g pork back fat\n500 g turkey thigh\n9 g thai bird chile\n28 g salt\n";
    CHECK(grams_in(first_for(formula, "serranos 200 g\nno thai bird chile\n"), "serrano") > 28);
}

TEST_CASE("a herb that is there is no filling for another") {
    const Variant v = first_for("Stall (invented)\n" + mass + "15 g cilantro\n110 g parsley\n", "cilantro plenty\nno parsley\n");
    CHECK(grams_in(v, "cilantro") <= 15 * 3.6);
}

TEST_CASE("salt makes up for the bacon that is gone, also where the salt is another") {
    const std::string formula = "Stall (invented)\n2000 g pork shoulder\n450 g bacon\n28 g kosher salt\n";
    const auto read = expect(engine().read_formula(formula, "formula"));
    const double before = expect(engine().predict(read)).properties[Property::salt_pct_of_meat].mid;
    const Variant v = first_for(formula, "pork belly 1 kg\nsea salt plenty\nno bacon\nno kosher salt\n");
    CHECK(v.prediction.properties[Property::salt_pct_of_meat].mid == Approx(before).epsilon(0.05));
}

TEST_CASE("less salty comes down to what is eaten, richer up to what is rich") {
    const Variant less = first_for("Brine (invented)\n1500 g lamb shoulder\n500 g beef chuck\n58 g salt\n", "", wanting({"less-salty"}));
    CHECK(less.prediction.properties[Property::salt_pct].mid < 2.06);
    const std::string game = "Fell (invented)\n2000 g venison\n100 g pork back fat\n34 g salt\n80 g red wine\n";
    CHECK(first_for(game, "", wanting({"richer"})).prediction.properties[Property::fat_pct].mid > 10);
    CHECK(first_for(game, "", wanting({"fat>=20"})).prediction.properties[Property::fat_pct].mid >= 19.9);
}

TEST_CASE("leaves that were frozen are squeezed before anything is bought") {
    const Variant v =
        first_for("Rime (invented)\n2000 g pork shoulder\n600 g frozen spinach, thawed\n34 g salt\n", "", wanting({"firmer"}));
    CHECK(does(v, ReasonKind::squeeze));
}

TEST_CASE("a mass mixed warm is told to be cold, whatever its fat") {
    const std::string formula =
        "Fold (invented)\n2000 g lamb shoulder\n150 g onion\n34 g salt\nplate: 12 mm\nmixing: 1 min\nmixed at: 10 C\n";
    CHECK(does(first_for(formula, "", wanting({"firmer"})), ReasonKind::cold));
}

TEST_CASE("a mass that is nearly half fat is not mended by one step") {
    const auto read = expect(engine().read_formula("Suet (invented)\n1200 g pork shoulder\n1000 g pork back fat\n36 g salt\n", "formula"));
    MendRequest request;
    request.tasted = {"greasy"};
    const auto answer = expect(mend(engine(), read, request));
    for (const auto& way : answer.ways)
        if (way.met) CHECK(way.prediction.properties[Property::fat_pct].mid < 37);
}

TEST_CASE("juicier keeps the water of a mass that is not wet") {
    const std::string formula = "Coop (invented)\n2000 g chicken thigh\n30 g salt\n100 g water\n30 g olive oil\n20 g parsley\n";
    CHECK(grams_in(first_for(formula, "", wanting({"juicier"})), "water") >= 95);
}

}  // namespace doses_to_hand_test
