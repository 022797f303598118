// Wants, in the order in which a maker would meet them: care, what is there, then what is on the list. Formulas are invented.
#include <algorithm>
#include <cmath>

#include "support/catch.hpp"
#include "support/scenario.hpp"

using namespace standin;
using namespace scenario;

namespace wants_as_makers_test {

AdaptRequest wanting(const std::vector<std::string>& wants) {
    AdaptRequest request;
    request.wants = wants;
    return request;
}

TEST_CASE("as makers: back fat that the list has comes before oil where it is to be juicier, and none into fish") {
    for (const std::string lean : {"turkey breast", "chicken breast"}) {
        CAPTURE(lean);
        const auto v = first_for("Lean (invented)\n2000 g " + lean + "\n100 g chard, blanched, squeezed\n30 g salt\ncook: pan\n",
                                 "pork backfat 500 g\nolive oil 500 ml\nchard 500 g\n", wanting({"juicier"}));
        CHECK(grams_in(v, "pork-backfat") > 60);
        CHECK(grams_in(v, "olive-oil") == 0);
    }
    for (const auto& v : answer_to("Fish (invented)\n1000 g cod\n60 g dill\n14 g salt\ncook: pan\n",
                                   "pork backfat 500 g\nolive oil 500 ml\n", wanting({"juicier"}))
                             .variants)
        CHECK(grams_in(v, "pork-backfat") == 0);
}

TEST_CASE("as makers: who wants it greener gets more of the leaf that comes in, and keeps the wine") {
    const auto v = first_for(
        "Green (invented)\n2500 g pork shoulder\n500 g pork belly\n250 g chard, blanched, squeezed\n60 g basil\n"
        "100 g white wine\n45 g salt\n",
        "spinach 600 g\nparsley 2 bunches\nno chard\n", wanting({"greener"}));
    CHECK(grams_in(v, "spinach") > 250);
    CHECK(grams_in(v, "white-wine") >= 45);
    CHECK(v.wants.front().met);
}

TEST_CASE("as makers: of fat belly and lean loin the belly goes before another lean is bought") {
    const auto v = first_for("Dry (invented)\n1000 g pork loin\n250 g pork belly\n100 g parsley\n20 g salt\n10 g garlic\ncook: grill\n", "",
                             wanting({"juicier", "leaner"}));
    CHECK(1 - grams_in(v, "pork-belly") / 250 > 1 - grams_in(v, "pork-loin") / 1000 - 0.02);
    CHECK(grams_in(v, "pork-belly") < 200);
}

TEST_CASE("as makers: nothing that is no meat moves by a few per cent") {
    const auto v = first_for("Pond (invented)\n1300 g duck\n120 g scallion\n60 g orange juice\n24 g salt\nmixing: 2 min\n",
                             "psyllium husk\n", wanting({"firmer"}));
    for (const auto& edit : v.edits)
        if (edit.kind == EditKind::reduce || edit.kind == EditKind::raise) {
            INFO(edit.line);
            if (edit.line == "orange-juice" || edit.line == "scallion")
                CHECK(std::abs(edit.grams_after - edit.grams_before) > 0.08 * edit.grams_before);
        }
}

TEST_CASE("as makers: what sours goes before the fat where meat sets in its acid") {
    const auto v = first_for(
        "Wet (invented)\n1000 g pork shoulder\n120 g pork backfat\n300 g chard, blanched 2 min\n250 g tomatillo, roasted\n"
        "40 g white wine vinegar\n12 g garlic\n18 g salt\nmixing: 2 min\nmixed at: 4 C\norder: all together\n",
        "", wanting({"firmer"}));
    const double fat_gone = 1 - grams_in(v, "pork-backfat") / 120, sour_gone = 1 - grams_in(v, "tomatillo") / 250;
    CHECK(fat_gone <= std::max(0.0, sour_gone) + 0.02);
}

TEST_CASE("as makers: more leaf makes it greener, whatever else is asked") {
    const auto answer = answer_to(
        "Verde (invented)\n2000 g pork shoulder\n300 g pork backfat\n200 g poblano, roasted and peeled\n60 g serrano\n"
        "100 g cilantro\n40 g lime juice\n36 g salt\n",
        "jalapeños 10\ncilantro 3 bunches\nno serrano\n", wanting({"milder", "greener"}));
    REQUIRE_FALSE(answer.variants.empty());
    for (const auto& v : answer.variants)
        for (const auto& edit : v.edits)
            if (edit.line == "cilantro" && edit.kind == EditKind::raise) CHECK(edit.why.find("milder") == std::string::npos);
}

TEST_CASE("as makers: how likely two wants are met together is told with them") {
    const auto answer = answer_to(
        "Marsh (invented)\n1000 g pork shoulder\n150 g pork backfat\n250 g chard, blanched 5 min\n"
        "100 g zucchini, grated\n17 g salt\nmixing: 2 min\norder: all together\n",
        "", wanting({"greener", "firmer"}));
    int told = 0;
    for (const auto& v : answer.variants) {
        if (std::any_of(v.wants.begin(), v.wants.end(), [](const WantResult& w) { return !w.met; })) continue;
        const auto& last = v.wants.back();
        const auto together =
            std::find_if(last.reason.figures.begin(), last.reason.figures.end(), [](const Figure& f) { return f.what == "all together"; });
        REQUIRE(together != last.reason.figures.end());
        for (const auto& w : v.wants) CHECK(together->after <= 100 * w.chance + 1e-9);
        CHECK(last.says.find("together") != std::string::npos);
        ++told;
    }
    CHECK(told > 0);
}

TEST_CASE("as makers: fat that comes in for some lean keeps the salt to the meat") {
    for (const std::string there : {"double cream 300 ml\n", "pork backfat 500 g\n"}) {
        CAPTURE(there);
        const auto answer = answer_to("Hutch (invented)\n1000 g rabbit\n80 g parsley\n18 g salt\ncook: pan\n", there, wanting({"juicier"}));
        REQUIRE_FALSE(answer.variants.empty());
        const double before = answer.base.properties[Property::salt_pct_of_meat].mid;
        CHECK(answer.variants.front().prediction.properties[Property::salt_pct_of_meat].mid == Approx(before).epsilon(0.045));
    }
}

TEST_CASE("as makers: one plain oil stands beside the next, and is no other way") {
    const auto answer = answer_to("Fish (invented)\n1000 g cod\n60 g dill\n14 g salt\ncook: pan\n", "", wanting({"juicier"}));
    const auto oils = [](const Variant& v) {
        double grams = 0;
        for (const char* oil : {"sunflower-oil", "safflower-oil", "grapeseed-oil", "canola-oil", "avocado-oil"}) grams += grams_in(v, oil);
        return grams;
    };
    CHECK(std::count_if(answer.variants.begin(), answer.variants.end(), [&](const Variant& v) { return oils(v) > 0; }) <= 1);
}

}  // namespace wants_as_makers_test
