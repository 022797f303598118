// What a maker expects of an answer before reading any number in it, on small invented formulas.
#include <algorithm>
#include <cmath>

#include "support/catch.hpp"
#include "support/scenario.hpp"

using namespace standin;
using namespace scenario;

namespace bench_sense_test {

AdaptAnswer asked(const std::string& formula, const std::string& inventory, AdaptRequest request = {}) {
    static const Engine engine = expect(Engine::open({}));
    const auto read = expect(engine.read_formula(formula, "formula"));
    if (!inventory.empty()) request.have = expect(engine.read_inventory(inventory, "list", &read));
    return expect(engine.adapt(read, request));
}

AdaptRequest wanting(const std::string& want) {
    AdaptRequest request;
    request.wants = {want};
    return request;
}

TEST_CASE("bench: back fat and salt stand in for salt pork") {
    const auto answer = asked("Smoky (invented)\n2 kg pork shoulder\n400 g salt pork\n40 g parsley\n20 g garlic\n20 g salt\n",
                              "no salt pork\npork backfat 1 kg\nparsley 1 bunch\n");
    REQUIRE_FALSE(answer.variants.empty());
    const Variant& v = answer.variants.front();
    CHECK(grams_in(v, "pork-backfat") > 250);
    CHECK(v.prediction.properties[Property::salt_pct_of_meat].mid ==
          Approx(answer.base.properties[Property::salt_pct_of_meat].mid).epsilon(0.04));
}

TEST_CASE("bench: salt that goes with the capers is weighed in again") {
    const auto answer = asked("Caper lamb (invented)\n2 kg lamb shoulder\n300 g lamb fat\n60 g capers\n100 g green olives\n24 g salt\n",
                              "no capers\nno green olives\nblack olives, a jar\n");
    REQUIRE_FALSE(answer.variants.empty());
    CHECK(answer.variants.front().prediction.properties[Property::salt_pct_of_meat].mid ==
          Approx(answer.base.properties[Property::salt_pct_of_meat].mid).epsilon(0.05));
}

TEST_CASE("bench: what comes first does not hang on how many ways are shown") {
    const std::string formula =
        "Verde (invented)\n3 kg pork shoulder\n600 g pork backfat\n250 g poblano, roasted and peeled\n200 g tomatillo\n100 g cilantro\n"
        "60 g serrano\n60 g distilled vinegar\n30 g garlic\n62 g salt\n";
    const std::string list = "no poblanos\nno tomatillos\nno serranos\n10 jalapeños\n2 kg green tomatoes\n5 limes\nanaheim chiles 400 g\n";
    std::vector<std::string> first;
    for (const std::size_t top : {1, 2, 3}) {
        AdaptRequest request;
        request.top = top;
        const auto answer = asked(formula, list, request);
        REQUIRE_FALSE(answer.variants.empty());
        CHECK(answer.variants.size() <= top);
        std::string edits;
        for (const auto& edit : answer.variants.front().edits)
            edits += edit.line + ">" + edit.with + " " + std::to_string(std::lround(edit.grams_after)) + "; ";
        first.push_back(edits);
    }
    CHECK(first[1] == first[0]);
    CHECK(first[2] == first[0]);
}

TEST_CASE("bench: beef suet from the maker's own list comes in for pork fat that is left out") {
    AdaptRequest request;
    request.without = {"pork"};
    const auto answer = asked("Two meats (invented)\n1.5 kg beef chuck\n400 g pork backfat\n30 g salt\n10 g garlic\n",
                              "beef chuck 2 kg\nbeef suet 1 kg\n", request);
    REQUIRE_FALSE(answer.variants.empty());
    CHECK(grams_in(answer.variants.front(), "beef-suet") > 200);
}

TEST_CASE("bench: as much lemon as is asked for goes into a mass without acid") {
    const auto answer = asked("Plain (invented)\n2 kg pork shoulder\n400 g pork belly\n38 g salt\n15 g garlic\n", "", wanting("sharper"));
    REQUIRE_FALSE(answer.variants.empty());
    CHECK(answer.variants.front().wants.front().met);
}

TEST_CASE("bench: a tough leaf that comes in for its green is blanched") {
    AdaptRequest request = wanting("greener");
    const auto answer = asked("Basil hill (invented)\n1.8 kg pork shoulder\n200 g pork belly\n150 g basil\n60 g olive oil\n28 g salt\n",
                              "kale 400 g\nbasil 150 g\n", request);
    REQUIRE_FALSE(answer.variants.empty());
    std::size_t leaves = 0;
    for (const auto& v : answer.variants)
        if (const Line* kale = line_of(v.formula, "kale")) {
            ++leaves;
            CHECK(std::any_of(kale->prepared.begin(), kale->prepared.end(), [](const Prepared& p) { return p.preparation == "blanched"; }));
        }
    CHECK(leaves > 0);
}

TEST_CASE("bench: the back fat goes before the belly") {
    const auto answer = asked("Ridge (invented)\n1.2 kg pork shoulder\n600 g pork belly\n200 g pork backfat\n32 g salt\n10 g garlic\n", "",
                              wanting("leaner"));
    REQUIRE_FALSE(answer.variants.empty());
    const Variant& v = answer.variants.front();
    CHECK(grams_in(v, "pork-backfat") / 200 <= grams_in(v, "pork-belly") / 600 + 0.02);
}

TEST_CASE("bench: a lean mass is made juicier by fat as well") {
    const auto answer = asked("Glen (invented)\n2 kg venison\n150 g pork backfat\n30 g salt\n12 g garlic\n", "", wanting("juicier"));
    REQUIRE_FALSE(answer.variants.empty());
    CHECK(answer.variants.front().prediction.properties[Property::fat_pct].mid > answer.base.properties[Property::fat_pct].mid + 2);
}

const Prepared* step_of(const Variant& variant, const std::string& food, const std::string& step) {
    const Line* line = line_of(variant.formula, food);
    if (!line) return nullptr;
    const auto found = std::find_if(line->prepared.begin(), line->prepared.end(), [&](const Prepared& p) { return p.preparation == step; });
    return found == line->prepared.end() ? nullptr : &*found;
}

TEST_CASE("bench: greener shortens a blanch that is too long before it buys a leaf") {
    const auto answer =
        asked("Mill lane (invented)\n1.8 kg pork shoulder\n300 g spinach, blanched 5 min, squeezed\n40 g lemon juice\n30 g salt\n", "",
              wanting("greener"));
    REQUIRE_FALSE(answer.variants.empty());
    for (const auto& v : answer.variants) {
        const Prepared* blanch = step_of(v, "spinach", "blanched");
        if (!blanch) continue;
        CHECK(blanch->minutes == 2);
        CHECK(std::count_if(v.edits.begin(), v.edits.end(), [](const Edit& e) { return e.does.kind == ReasonKind::short_blanch; }) == 1);
    }
    CHECK(step_of(answer.variants.front(), "spinach", "blanched") != nullptr);
}

TEST_CASE("bench: firmer squeezes a wet leaf; what is kept and what is fine already stay as they are") {
    const std::string mass =
        "Brook (invented)\n1.8 kg pork shoulder\n300 g pork backfat\n500 g spinach, blanched 2 min\n30 g lime juice\n36 g salt\n";
    const auto answer = asked(mass, "", wanting("firmer"));
    REQUIRE_FALSE(answer.variants.empty());
    CHECK(step_of(answer.variants.front(), "spinach", "squeezed") != nullptr);
    AdaptRequest keeping = wanting("firmer");
    keeping.keep = {"spinach"};
    for (const auto& v : asked(mass, "", keeping).variants) CHECK(step_of(v, "spinach", "squeezed") == nullptr);
    for (const auto& v : asked(mass, "", wanting("milder")).variants) CHECK(step_of(v, "spinach", "squeezed") == nullptr);
}

TEST_CASE("bench: who leaves out every chile is told what bites without one") {
    AdaptRequest request;
    request.without = {"chiles"};
    const auto answer = asked("Hill (invented)\n2 kg pork shoulder\n300 g pork backfat\n40 g serrano\n34 g salt\n", "", request);
    REQUIRE_FALSE(answer.variants.empty());
    const auto& back = answer.variants.front().gives_back;
    CHECK(std::any_of(back.begin(), back.end(),
                      [](const Reason& r) { return r.kind == ReasonKind::comes_back_as_bite && !r.figures.empty(); }));
}

TEST_CASE("bench: salt is weighed to the meat that came in") {
    const auto answer = asked("Ridge venison (invented)\n2 kg venison\n700 g pork backfat\n47 g salt\n8 g black pepper\n",
                              "no pork backfat\npork belly 2.5 kg\n");
    REQUIRE_FALSE(answer.variants.empty());
    CHECK(answer.variants.front().prediction.properties[Property::salt_pct_of_meat].mid ==
          Approx(answer.base.properties[Property::salt_pct_of_meat].mid).epsilon(0.035));
}

TEST_CASE("bench: soaked oats are counted dry, and bind as much as the crumbs did") {
    const auto answer = asked("Crumb (invented)\n750 g pork shoulder\n250 g pork backfat\n16 g salt\n40 g water\n40 g dry breadcrumbs\n",
                              "no dry breadcrumbs\nrolled oats plenty\n");
    REQUIRE_FALSE(answer.variants.empty());
    CHECK(grams_in(answer.variants.front(), "rolled-oat") > 22);
}

TEST_CASE("bench: a strong herb comes in as far as it goes where there is no other") {
    const auto answer =
        asked("Leaf (invented)\n750 g pork shoulder\n250 g pork backfat\n16 g salt\n60 g cilantro\n", "no cilantro\nculantro plenty\n");
    REQUIRE_FALSE(answer.variants.empty());
    CHECK(grams_in(answer.variants.front(), "culantro") > 15);
}

TEST_CASE("bench: another starch comes in as far as the cap on binders leaves room") {
    const auto answer = asked(
        "Bound (invented)\n2000 g pork shoulder\n400 g pork belly\n240 g kale, blanched, squeezed\n80 g potato starch\n"
        "40 g skim milk powder\n100 g water\n40 g salt\n",
        "no potato starch\ncornstarch some\n");
    REQUIRE_FALSE(answer.variants.empty());
    CHECK(grams_in(answer.variants.front(), "cornstarch") >= 55);
}

TEST_CASE("bench: a milder chile comes in for a hotter one by half as much again, and what there is of a hot one may still be less") {
    const std::string green = "Green (invented)\n2000 g pork shoulder\n400 g pork backfat\n150 g parsley\n60 g serrano\n36 g salt\n";
    const auto answer = asked(green, "no serrano\njalapeños 500 g\n");
    REQUIRE_FALSE(answer.variants.empty());
    CHECK(grams_in(answer.variants.front(), "jalapeno") >= 80);
    const auto mild =
        asked("Hot (invented)\n2000 g pork shoulder\n400 g pork backfat\n30 g habanero\n36 g salt\n", "habanero 25 g\n", wanting("milder"));
    REQUIRE_FALSE(mild.variants.empty());
    CHECK(mild.conflict.empty());
    CHECK(grams_in(mild.variants.front(), "habanero") < 20);
}

TEST_CASE("bench: near kin and another form of the same plant come in first, whatever else is missing") {
    const std::string spiced =
        "Spiced (invented)\n3 kg beef chuck\n600 g beef fat\n100 ml malt vinegar\n30 g coriander seed\n20 g rosemary\n60 g salt\n";
    for (const std::string more : {"", "no coriander seed\ncaraway 50 g\n"}) {
        CAPTURE(more);
        const auto answer =
            asked(spiced, "no malt vinegar\ncider vinegar 500 ml\nlemons 3\nno rosemary\ndried rosemary 15 g\ndried thyme 20 g\n" + more);
        REQUIRE_FALSE(answer.variants.empty());
        const Variant& v = answer.variants.front();
        CHECK(grams_in(v, "cider-vinegar") > 60);
        CHECK(grams_in(v, "lemon-juice") == 0);
        CHECK(grams_in(v, "dried-rosemary") > 2);
        CHECK(grams_in(v, "dried-thyme") == 0);
    }
}

TEST_CASE("bench: a salty line that is missing leaves no batch without an answer, however much of it there was") {
    for (int grams = 10; grams <= 80; grams += 5) {
        CAPTURE(grams);
        const auto answer = asked("Creamy (invented)\n750 g pork shoulder\n250 g pork backfat\n16 g salt\n40 g water\n5 g garlic\n" +
                                      std::to_string(grams) + " g mayonnaise\n",
                                  "no mayonnaise\nsour cream plenty\n");
        REQUIRE_FALSE(answer.variants.empty());
        CHECK(answer.conflict.empty());
    }
}

TEST_CASE("bench: where the list has nothing for a line, what a shop would give is said, without what is missing or excluded") {
    const std::string sour = "Sour leaf (invented)\n2000 g pork shoulder\n300 g pork backfat\n150 g sorrel\n60 g dill\n38 g salt\n";
    const auto bought = [](const AdaptAnswer& answer, const char* line) -> std::string {
        for (const auto& reason : answer.would_give)
            if (reason.kind == ReasonKind::so_much_on_hand && reason.about == line) return reason.foods.front();
        return "";
    };
    const auto answer = asked(sour, "no sorrel\nno dill\npotatoes 2 kg\n");
    CHECK(bought(answer, "sorrel") == "spinach");
    CHECK_FALSE(bought(answer, "dill").empty());
    CHECK(answer.conflict.empty());
    const auto without = asked(sour, "no sorrel\nno spinach\npotatoes 2 kg\n");
    CHECK_FALSE(bought(without, "sorrel").empty());
    CHECK(bought(without, "sorrel") != "spinach");
    CHECK(bought(asked(sour, "no sorrel\nspinach 300 g\nlemons 2\n"), "sorrel").empty());
}

TEST_CASE("bench: what one word says is missing turns no other line into one that is there") {
    const std::string green = "Green (invented)\n2000 g pork shoulder\n300 g pork backfat\n80 g parsley\n60 g mint\n38 g salt\n";
    for (const std::string word : {"", "no mint\n", "no vinegar\n"}) {
        INFO(word);
        const auto told = asked(green, word + "dried mint 40 g\ncilantro 200 g\n");
        REQUIRE_FALSE(told.variants.empty());
        CHECK(grams_in(told.variants.front(), "parsley") == 0);
        CHECK(grams_in(told.variants.front(), "cilantro") > 40);
    }
    const auto wanted = asked(green, "cilantro 200 g\n", wanting("greener"));
    REQUIRE_FALSE(wanted.variants.empty());
    CHECK(grams_in(wanted.variants.front(), "parsley") >= 80);
}

TEST_CASE("bench: a want word goes no further than it asks") {
    const std::string green =
        "Green (invented)\n2400 g pork shoulder\n300 g pork backfat\n250 g spinach, blanched, squeezed\n40 g white wine vinegar\n"
        "44 g salt\n";
    AdaptRequest both;
    both.wants = {"juicier", "less-salty"};
    const auto answer = asked(green, "", both);
    REQUIRE_FALSE(answer.variants.empty());
    const double salt = grams_in(answer.variants.front(), "table-salt");
    CHECK(salt < 41);
    CHECK(salt > 32);
    const auto lean = asked(green, "pork loin 2 kg\npork shoulder 2.4 kg\n", wanting("leaner"));
    CHECK(lean.conflict.empty());
    REQUIRE_FALSE(lean.variants.empty());
    CHECK(grams_in(lean.variants.front(), "pork-backfat") < 200);
}

}  // namespace bench_sense_test
