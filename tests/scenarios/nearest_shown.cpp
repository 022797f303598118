// What is shown where a want is met, or is not: the nearest, each want with its figures, and numbers that agree. Formulas are invented.
#include <cmath>
#include <set>

#include "core/contains.hpp"
#include "support/catch.hpp"
#include "support/scenario.hpp"

using namespace standin;
using namespace scenario;

namespace nearest_shown_test {

AdaptAnswer asked(const std::string& formula, std::vector<std::string> wants, const std::string& inventory = "",
                  std::vector<std::string> without = {}) {
    static const Engine engine = expect(Engine::open({}));
    const auto read = expect(engine.read_formula(formula, "formula"));
    AdaptRequest request;
    request.wants = std::move(wants);
    request.without = std::move(without);
    if (!inventory.empty()) request.have = expect(engine.read_inventory(inventory, "list", &read));
    return expect(engine.adapt(read, request));
}

const std::string made = "mixing: 3 min\nmixed at: 3 C\nrest: 4 h\norder: salt first\ncook: pan\ncore: 73.9 C\n";
const std::string chicken =
    "Chicken (invented)\n2000 g skinless chicken thigh\n400 g frozen spinach\n100 g cilantro\n34 g salt\n30 g serrano\n15 g garlic\n30 g "
    "lime juice\n" +
    made;
const std::string venison =
    "Venison (invented)\n2500 g venison\n500 g pork backfat\n150 g parsley\n48 g salt\n100 g red wine\n15 g garlic\n" + made;
const std::string salmon =
    "Salmon (invented)\n1500 g salmon\n150 g spinach, blanched, squeezed\n60 g dill\n22 g salt\n40 g lemon juice\n80 g dry "
    "breadcrumbs\n100 g egg\nmixing: 2 min\nmixed at: 2 C\nrest: 1 h\norder: salt first\ncook: pan\ncore: 63 C\n";
const std::string breast = "Breast (invented)\n1800 g chicken breast\n200 g chicken skin\n120 g ramps\n34 g salt\n100 g milk\n" + made;
const std::string belly = "Belly (invented)\n3000 g pork belly\n800 g pork backfat\n200 g parsley\n60 g salt\n20 g garlic\n" + made;
const std::string lamb =
    "Lamb (invented)\n2200 g lamb shoulder\n200 g lamb fat\n150 g mint\n200 g sorrel\n60 g white wine vinegar\n40 g salt\n15 g "
    "garlic\n" +
    made;

TEST_CASE("nearest shown: whatever cannot be met together, the nearest is shown") {
    const std::string list = "kale 300 g\npoblano 200 g\nparsley 2 bunches\nno spinach\n";
    const std::vector<std::vector<std::string>> all{
        {"hotter", "greener"}, {"firmer", "greener"}, {"greener", "heat>=40"}, {"greener", "ph>=7"}};
    for (const auto& wants : all) {
        CAPTURE(wants);
        CHECK_FALSE(asked(chicken, wants, list).variants.empty());
    }
}

TEST_CASE("nearest shown: every want is told, with its figures, also where two are about one thing") {
    for (const std::vector<std::string>& wants :
         {std::vector<std::string>{"richer", "juicier"}, {"juicier", "richer"}, {"firmer", "greener"}, {"juicier", "sharper"}}) {
        CAPTURE(wants);
        const auto answer = asked(venison, wants);
        REQUIRE_FALSE(answer.variants.empty());
        for (const auto& variant : answer.variants) {
            std::set<std::string> told;
            for (const auto& want : variant.wants)
                if (!want.reason.figures.empty()) told.insert(want.want);
            CHECK(told.size() == wants.size());
        }
    }
}

// Whether the number shown is on the side of the bound that the word beside it says.
void numbers_agree(const AdaptAnswer& answer) {
    for (const auto& variant : answer.variants)
        for (const auto& want : variant.wants) {
            const auto& figures = want.reason.figures;
            REQUIRE(figures.size() >= 2);
            const double slack = figures.size() > 2 && figures[2].what == "slack" ? figures[2].after : 1e-3 + 0.002 * figures[1].after;
            const double hair = 1e-6 + 1e-3 * std::abs(figures[1].after);
            CAPTURE(want.want, figures[0].what, figures[0].after, figures[1].after, slack, want.met);
            const double over = want.reason.role == "at most" ? figures[1].after - figures[0].after : figures[0].after - figures[1].after;
            if (want.reason.role == "equal") continue;
            if (want.met) CHECK(over + slack >= -hair);
            else CHECK(over + slack <= hair);
        }
}

TEST_CASE("nearest shown: what is shown as met lies within what was asked, and what is not does not") {
    numbers_agree(asked(salmon, {"greener", "firmer"}));
    numbers_agree(asked(salmon, {"greener"}));
    numbers_agree(asked(venison, {"richer", "juicier"}));
    numbers_agree(asked(lamb, {"sharper"}));
    numbers_agree(asked(belly, {"leaner"}));
    numbers_agree(asked(chicken, {"hotter", "greener"}, "kale 300 g\npoblano 200 g\nno spinach\n"));
}

TEST_CASE("nearest shown: the number beside a verdict is the one it goes by, and what is further off stands behind") {
    const std::string cheese =
        "Cheese (invented)\n2 kg pork shoulder\n400 g pork belly\n200 g dry breadcrumbs\n120 g cheddar\n25 g sage\n38 g salt\n";
    for (const auto& answer : {asked(cheese, {}, "", {"dairy", "gluten"}), asked(belly, {"leaner"}), asked(breast, {"richer"}),
                               asked(salmon, {"greener", "firmer"})}) {
        double last = 0;
        for (const auto& variant : answer.variants) {
            const double shown = std::round(10 * variant.distance) / 10;
            const double limits[] = {0.75, 1.4, 3.3, 10.0};
            for (std::size_t n = 0; n < 4; ++n) CHECK((shown <= limits[n]) == (static_cast<std::size_t>(variant.nearness) <= n));
            CHECK(shown >= last - 0.11);
            last = shown;
        }
    }
}

TEST_CASE("nearest shown: cream or oil on the list comes before more skin for who wants it richer") {
    for (const char* fat : {"cream 500 g\n", "canola oil 500 g\n", "cream 500 g\ncanola oil 500 g\n"}) {
        CAPTURE(fat);
        const auto answer = asked(breast, {"richer"}, std::string(fat) + "chicken breast\nchicken skin\nsalt\nramps 200 g\nmilk\n");
        REQUIRE_FALSE(answer.variants.empty());
        const Variant& first = answer.variants.front();
        CHECK(grams_in(first, "cream") + grams_in(first, "canola-oil") > 50);
        CHECK(grams_in(first, "chicken-skin") <= 270);
    }
}

TEST_CASE("nearest shown: more of the maker's own egg before another bird's, and no leaf changed that is there") {
    const auto answer = asked(salmon, {"greener", "firmer"});
    REQUIRE_FALSE(answer.variants.empty());
    for (const auto& variant : answer.variants) {
        for (const char* other : {"duck-egg", "quail-egg", "liquid-egg"}) CHECK(grams_in(variant, other) == 0);
        // Another leaf comes beside the one that is there, not for it.
        const bool another = std::any_of(variant.edits.begin(), variant.edits.end(), [](const Edit& edit) {
            return (edit.kind == EditKind::add && edit.with != "egg") || edit.kind == EditKind::replace || edit.kind == EditKind::split;
        });
        if (another) CHECK(grams_in(variant, "spinach") >= 150);
    }
}

TEST_CASE("nearest shown: who wants it leaner takes out the fat before any meat is changed, and is told of what is still too fat") {
    const auto leaner = asked(belly, {"leaner"});
    REQUIRE_FALSE(leaner.variants.empty());
    const auto& cautions = leaner.variants.front().prediction.cautions;
    CHECK(std::any_of(cautions.begin(), cautions.end(), [](const CautionText& caution) { return caution.id == "much-fat"; }));
    for (const char* want : {"leaner", "fat<=40", "fat<=30"}) {
        CAPTURE(want);
        for (const auto& variant : asked(belly, {want}).variants)
            CHECK(grams_in(variant, "pork-backfat") / 800 <= grams_in(variant, "pork-belly") / 3000 + 0.02);
    }
}

TEST_CASE("nearest shown: a mass that sets in its acid is made sharper at the plate and by the scent first") {
    const auto has = [](const AdaptAnswer& answer, ReasonKind kind) {
        REQUIRE_FALSE(answer.variants.empty());
        const auto& all = answer.variants.front().gives_back;
        return std::any_of(all.begin(), all.end(), [&](const Reason& reason) { return reason.kind == kind; });
    };
    const auto set = asked(lamb, {"sharper"}, "lemon 3\nparsley 200 g\n");
    CHECK(has(set, ReasonKind::acid_to_hold));
    CHECK(has(set, ReasonKind::comes_back_as_aroma));
    const auto mild = asked("Mild (invented)\n2 kg pork shoulder\n300 g pork backfat\n30 g lime juice\n36 g salt\n" + made, {"sharper"});
    CHECK_FALSE(has(mild, ReasonKind::acid_to_hold));
}

TEST_CASE("nearest shown: the plain leaf of a pair claims none of the bite that the garlic beside it brings") {
    const auto answer = asked(breast, {}, "spinach 300 g\ngarlic 2 heads\nno ramps\n");
    REQUIRE_FALSE(answer.variants.empty());
    for (const auto& variant : answer.variants)
        for (const auto& edit : variant.edits)
            if (edit.with == "spinach") CHECK(edit.why.find("bite of garlic") == std::string::npos);
}

}  // namespace nearest_shown_test
