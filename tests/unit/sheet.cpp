// The bench sheet: scaling, weights, the mixing order, shopping, what it makes.
#include "standin/sheet.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "standin/engine.hpp"
#include "support/catch.hpp"
#include "support/few_draws.hpp"
#include "support/kitchen.hpp"

using namespace standin;

namespace sheet_test {

using few_draws::engine;

Formula hedge() {
    Formula f = formula({line("pork-shoulder", 2000), line("pork-backfat", 400), line("spinach", 300, {"blanched", "squeezed"}),
                         line("garlic", 20), line("table-salt", 41.3), line("black-pepper", 5.26), line("white-wine-vinegar", 60)});
    f.process.core_c = 71.1;
    return f;
}

Sheet sheet(const Formula& f, const SheetRequest& request = {}) {
    auto made = engine().sheet(f, request);
    REQUIRE(made);
    return *made;
}

std::string refused(const Formula& f, const SheetRequest& request) {
    const auto made = engine().sheet(f, request);
    REQUIRE_FALSE(made);
    return made.error().where + ": " + made.error().message;
}

const SheetStep& step(const Sheet& s, const std::string& id) {
    const auto found = std::find_if(s.steps.begin(), s.steps.end(), [&](const SheetStep& one) { return one.id == id; });
    REQUIRE(found != s.steps.end());
    return *found;
}

bool has(const Sheet& s, const std::string& id) {
    return std::any_of(s.steps.begin(), s.steps.end(), [&](const SheetStep& one) { return one.id == id; });
}

std::size_t place(const Sheet& s, const std::string& id) { return static_cast<std::size_t>(&step(s, id) - s.steps.data()); }

const Purchase& bought(const Sheet& s, const std::string& id) {
    const auto found = std::find_if(s.buy.begin(), s.buy.end(), [&](const Purchase& p) { return p.ingredient == id; });
    REQUIRE(found != s.buy.end());
    return *found;
}

TEST_CASE("a batch is scaled to its meat, to all of it, or as far as one line goes") {
    CHECK(sheet(hedge()).factor == 1);
    const Sheet meat = sheet(hedge(), {"4.8 kg", "", "", {}});
    CHECK(meat.factor == Approx(2));
    CHECK(meat.prediction.meat_g == Approx(4800));
    CHECK(meat.weights[4].grams == Approx(82.6));
    CHECK(sheet(hedge(), {"", "1413.28 g", "", {}}).factor == Approx(0.5).epsilon(1e-4));
    CHECK(sheet(hedge(), {"", "", "", {"spinach 450 g"}}).factor == Approx(1.08));  // 450 g as bought, 72 % of it leaf
    CHECK(sheet(hedge(), {"", "", "", {"spinach 450 g", "pork shoulder 1 kg"}}).factor == Approx(0.5));
    CHECK(sheet(hedge(), {"4.8 kg", "", "", {"spinach 450 g"}}).factor == Approx(1.08));  // the tighter one
    CHECK(sheet(hedge(), {"1.2 kg", "", "", {"spinach 450 g"}}).factor == Approx(0.5));
    CHECK(sheet(hedge(), {"10 lb 8 oz", "", "", {}}).prediction.meat_g == Approx(10.5 * 453.59237));
}

TEST_CASE("what cannot be scaled is said, not guessed") {
    CHECK(refused(hedge(), {"2 kg", "3 kg", "", {}}).find("exclude each other") != std::string::npos);
    CHECK(refused(hedge(), {"2 cups", "", "", {}}).find("request.meat: expected a weight") != std::string::npos);
    CHECK(refused(hedge(), {"0 kg", "", "", {}}).find("request.meat") != std::string::npos);
    CHECK(refused(hedge(), {"900 tons", "", "", {}}).find("request.meat") != std::string::npos);
    CHECK(refused(hedge(), {"", "", "", {"sorrel 100 g"}}).find("no line of") != std::string::npos);
    CHECK(refused(hedge(), {"", "", "", {"spinach plenty"}}).find("request.only") != std::string::npos);
    CHECK(refused(hedge(), {"5", "", "", {}}).find("request.meat: `5` of what: expected a weight with its unit") == 0);
    CHECK(refused(hedge(), {"", "5", "", {}}).find("request.total: `5` of what") == 0);
    CHECK(refused(hedge(), {"", "", "110", {}}).find("request.piece: `110` of what") == 0);
    CHECK(refused(hedge(), {"60 g", "", "", {}}).find("too small") != std::string::npos);
}

TEST_CASE("weights are what the scale can show, and say where whole grams are too coarse") {
    const Sheet s = sheet(hedge());
    CHECK(s.weights[0].weigh_g == 2000);
    CHECK(s.weights[4].weigh_g == Approx(41.3));
    CHECK(s.weights[4].scale_g == 0.1);
    CHECK_FALSE(s.weights[4].fine);  // half a gram of 41 is 1.2 %
    CHECK(s.weights[5].weigh_g == Approx(5.3));
    CHECK(s.weights[5].fine);  // half a gram of 5.3 is 9 %
    CHECK(
        std::any_of(s.notes.begin(), s.notes.end(), [](const Reason& n) { return in_full(n).find("black pepper") != std::string::npos; }));
}

TEST_CASE("salt first and acid last where the formula leaves it open and it helps") {
    const Sheet s = sheet(hedge());
    CHECK(place(s, "mix-salt") < place(s, "mix-rest"));
    CHECK(place(s, "mix-rest") < place(s, "mix-acid"));
    CHECK(
        std::any_of(s.notes.begin(), s.notes.end(), [](const Reason& n) { return in_full(n).find("binds better") != std::string::npos; }));
    Formula mild = hedge();
    mild.lines.pop_back();  // no acid: nothing to gain
    CHECK(has(sheet(mild), "mix"));
    Formula sour = hedge();
    sour.process.order = Order::acid_first;  // said, so kept, and its cost told
    const Sheet kept = sheet(sour);
    CHECK(place(kept, "mix-acid") < place(kept, "mix"));
    CHECK(std::any_of(kept.notes.begin(), kept.notes.end(),
                      [](const Reason& n) { return in_full(n).find("acid first") != std::string::npos; }));
    sour.process.order = Order::all_together;  // said too
    const Sheet mixed = sheet(sour);
    CHECK(has(mixed, "mix"));
    CHECK_FALSE(has(mixed, "mix-salt"));
    CHECK(std::any_of(mixed.notes.begin(), mixed.notes.end(),
                      [](const Reason& n) { return in_full(n).find("The formula mixes all together") == 0; }));
}

TEST_CASE("all that goes into the bowl is the batch, in whatever order") {
    for (const auto order : {Order::salt_first, Order::all_together, Order::acid_first}) {
        Formula f = hedge();
        f.process.order = order;
        const Sheet s = sheet(f);
        const auto mixed = s.steps[place(s, "taste") - 1].grams_out;
        CHECK(mixed == Approx(s.prediction.batch_g).epsilon(1e-9));
        CHECK(step(s, "cook").grams_out == Approx(s.prediction.batch_g * (1 - s.prediction.properties[Property::cook_loss_pct].mid / 100)));
    }
}

TEST_CASE("meat is chilled before it is ground, blanched leaves squeezed before they are blended, a patty fried before all is shaped") {
    const Sheet s = sheet(hedge());
    const std::vector<std::string> order{"weigh",    "blanched", "squeezed", "chill", "grind", "paste", "mix-salt",
                                         "mix-rest", "mix-acid", "taste",    "shape", "rest",  "cook"};
    std::vector<std::string> ids;
    for (const auto& one : s.steps) ids.push_back(one.id);
    CHECK(ids == order);
    for (const auto& one : s.steps) {
        CAPTURE(one.id);
        CHECK_FALSE(one.how.empty());
        CHECK_FALSE(one.why.empty());
    }
}

TEST_CASE("crumbs soak in the liquid there is, and go in dry where there is none") {
    Formula f = formula(
        {line("pork-shoulder", 2000), line("breadcrumb", 90), line("whole-milk", 80), line("cornstarch", 20), line("table-salt", 36)});
    f.process.order = Order::salt_first;
    const auto takes = [](const SheetStep& s, std::size_t n) {
        return std::any_of(s.parts.begin(), s.parts.end(), [&](const StepPart& p) { return p.line == n; });
    };
    const Sheet soaked = sheet(f);
    CHECK_FALSE(takes(step(soaked, "mix-salt"), 1));
    CHECK(takes(step(soaked, "mix-rest"), 1));
    CHECK(step(soaked, "mix-rest").how.find("into the cold liquid") != std::string::npos);
    CHECK(takes(step(soaked, "mix-salt"), 3));  // starch swells in the pan
    f.lines.erase(f.lines.begin() + 2);
    const Sheet dry = sheet(f);
    CHECK(takes(step(dry, "mix-salt"), 1));
    CHECK_FALSE(has(dry, "mix-rest"));
}

TEST_CASE("frozen leaves are to be thawed, and squeezed only where the formula is told") {
    const auto told = [](const Formula& f) {
        const Sheet s = sheet(f);
        return std::any_of(s.notes.begin(), s.notes.end(), [](const auto& n) { return in_full(n).find("Thaw the frozen spinach") == 0; });
    };
    CHECK(told(formula({line("pork-shoulder", 1000), line("spinach-frozen", 150), line("table-salt", 17)})));
    CHECK_FALSE(told(formula({line("pork-shoulder", 1000), line("spinach-frozen", 150, {"squeezed"}), line("table-salt", 17)})));
    CHECK_FALSE(told(hedge()));
}

TEST_CASE("meat bought ground is not ground again") {
    const Sheet s = sheet(formula({line("ground-pork", 1000), line("table-salt", 17)}));
    CHECK_FALSE(has(s, "grind"));
    CHECK_FALSE(has(s, "paste"));
    CHECK(has(s, "chill"));
}

TEST_CASE("fat that the formula chops by hand is not ground") {
    const Sheet s = sheet(formula({line("pork-shoulder", 1000), line("pork-backfat", 200, {"chopped"}), line("table-salt", 17)}));
    CHECK(step(s, "grind").parts.size() == 1);
    CHECK(step(s, "chopped").parts.size() == 1);
    CHECK(step(s, "mix").parts.size() == 3);
}

TEST_CASE("nuts are bought shelled, eggs by the large one") {
    const Sheet s = sheet(formula({line("pork-shoulder", 1000), line("walnut", 80), line("egg", 100), line("table-salt", 17)}));
    CHECK(bought(s, "walnut").bought_g == Approx(80));
    CHECK(*bought(s, "egg").metric.count == 2);
}

TEST_CASE("the core is the rule's where the formula stops short") {
    Formula bird = formula({line("chicken-thigh", 1000), line("table-salt", 17)});
    bird.process.core_c = 65;
    const Sheet s = sheet(bird);
    CHECK(s.core_c == Approx(73.9));
    CHECK(*step(s, "cook").temperature_c == Approx(73.9));
    CHECK(std::any_of(s.notes.begin(), s.notes.end(),
                      [](const Reason& n) { return in_full(n).find("stops at a core") != std::string::npos; }));
    bird.process.core_c = 80;
    CHECK(sheet(bird).core_c == 80);
}

TEST_CASE("the sheet rests no longer than raw sausage keeps, and says so") {
    Formula f = hedge();
    f.process.rest_h = 40;
    CHECK(step(sheet(f), "rest").minutes == 40.0 * 60);
    f.process.rest_h = 120;
    const Sheet s = sheet(f);
    CHECK(step(s, "rest").minutes == 48.0 * 60);
    CHECK(step(s, "rest").how.find("The formula says 120 hours") == 0);
    CHECK(s.formula.process.rest_h == 120.0);  // and what is foretold is still what the formula says
    const auto& cautions = s.prediction.cautions;
    CHECK(std::any_of(cautions.begin(), cautions.end(), [](const CautionText& c) { return c.id == "long-rest"; }));
    CHECK(std::any_of(s.notes.begin(), s.notes.end(),
                      [](const auto& n) { return in_full(n).find("the sheet says 48") != std::string::npos; }));
}

bool notes(const Sheet& s, const std::string& part) {
    return std::any_of(s.notes.begin(), s.notes.end(), [&](const Reason& n) { return in_full(n).find(part) != std::string::npos; });
}

TEST_CASE("the sheet orders no warm rest and no warm mixing, and says that it overrides the formula") {
    Formula f = hedge();
    f.process.rest_h = 40;
    f.process.rest_at_c = 25;
    f.process.mixed_at_c = 18;
    const Sheet s = sheet(f);
    CHECK(*step(s, "rest").temperature_c == Approx(4.4));
    CHECK(notes(s, "The formula rests it at 25 C; the sheet says no warmer than 4.4 C (40 F) instead."));
    CHECK(notes(s, "The formula mixes it up to 18 C"));
    for (const auto& one : s.steps) {
        INFO(one.id);
        if (one.temperature == TemperatureIs::at_most && one.temperature_c) CHECK(*one.temperature_c <= 10);
        if (one.stop_c) CHECK(*one.stop_c <= 10);
    }
    const auto cautioned = [&](const char* id) {
        return std::any_of(s.prediction.cautions.begin(), s.prediction.cautions.end(), [&](const CautionText& c) { return c.id == id; });
    };
    CHECK(cautioned("warm-rest"));
    CHECK(cautioned("mixed-warm"));
    f.process.rest_at_c = 3;
    CHECK(*step(sheet(f), "rest").temperature_c == 3);
}

TEST_CASE("fish, offal and raw shellfish do not rest, whether the formula says so or not") {
    for (const auto* food : {"cod", "shrimp", "pork-liver", "oyster"}) {
        INFO(food);
        Formula f = formula({line("pork-shoulder", 800), line(food, 200), line("table-salt", 16)});
        const Sheet silent = sheet(f);
        CHECK_FALSE(has(silent, "rest"));
        CHECK(notes(silent, "No rest."));
        f.process.rest_h = 12;
        const Sheet said = sheet(f);
        CHECK_FALSE(has(said, "rest"));
        CHECK(notes(said, "the sheet has no rest instead"));
    }
    CHECK(has(sheet(hedge()), "rest"));
}

TEST_CASE("a hold time stands beside the core temperature that needs one") {
    const Sheet fish = sheet(formula({line("cod", 900), line("pork-backfat", 20), line("table-salt", 16)}));
    CHECK(fish.core_c == Approx(71.1));  // the pork in it asks for more, and for no hold
    const Sheet plain = sheet(formula({line("cod", 900), line("table-salt", 16)}));
    CHECK(plain.core_says == "68.3 C (155 F), kept for 17 seconds");
    CHECK(step(plain, "cook").how.find("kept for 17 seconds") != std::string::npos);
}

TEST_CASE("shopping counts what is cut away and rounds up to what is sold") {
    const Sheet s = sheet(hedge());
    CHECK(bought(s, "garlic").bought_g == Approx(20 / 0.87));  // USDA SR28 11215: 13 % refuse
    CHECK(*bought(s, "garlic").metric.count == 1);
    CHECK(bought(s, "garlic").metric.unit == "head");
    CHECK(*bought(s, "spinach").metric.count == 1);  // 300 g of a bunch of 340 (USDA SR28 11457)
    CHECK_FALSE(bought(s, "pork-shoulder").metric.count);
    CHECK(std::fmod(bought(s, "pork-shoulder").metric.buy_g, 50) == Approx(0).margin(1e-9));
    CHECK(bought(s, "pork-shoulder").metric.buy_g >= 2000);
    CHECK(*bought(s, "black-pepper").metric.count == 1);
    for (const auto& p : s.buy) {
        CAPTURE(p.ingredient);
        CHECK(p.bought_g >= p.need_g);
        for (const auto* shop : {&p.metric, &p.us})
            CHECK((shop->count ? *shop->count * shop->unit_g * 1.06 >= p.need_g : shop->buy_g >= p.bought_g));
    }
}

TEST_CASE("a shop that weighs in pounds sells quarters of them, ounces below, and liquids by half pint, pint and quart") {
    constexpr double pound = 453.592, half_pint = 236.588;
    Formula f = hedge();
    f.lines.push_back(line("sunflower-oil", 300));
    f.lines.push_back(line("butter", 150));
    f.lines.push_back(line("chicken-stock", 700));
    f.lines.push_back(line("pork-liver", 60));
    const Sheet s = sheet(f);
    CHECK(bought(s, "pork-shoulder").us.buy_g == Approx(4.5 * pound).epsilon(1e-4));  // 2000 g are 4.41 lb
    CHECK(bought(s, "pork-liver").us.buy_g == Approx(3 * pound / 16).epsilon(1e-3));  // 60 g are 2.12 oz
    CHECK(bought(s, "white-wine-vinegar").us.unit_ml == Approx(half_pint));
    CHECK(bought(s, "sunflower-oil").us.unit_ml == Approx(2 * half_pint));  // lighter than water: over a half pint
    CHECK(bought(s, "chicken-stock").us.unit_ml == Approx(4 * half_pint));
    CHECK(bought(s, "chicken-stock").metric.unit_ml == Approx(250));
    CHECK(*bought(s, "chicken-stock").metric.count == 3);
    CHECK(*bought(s, "butter").us.count == 2);  // sticks of 113 g
    CHECK(bought(s, "butter").us.unit == "stick");
    CHECK(bought(s, "garlic").us == bought(s, "garlic").metric);  // a head is a head
}

TEST_CASE("whatever has to be peeled, stemmed or shelled is told before it is weighed") {
    const Formula f =
        engine()
            .read_formula(
                "Peeling\n1 kg pork shoulder\n5 cloves garlic, peeled\n1 onion, peeled, caramelised\n1 shallot\n4 serranos, roasted\n"
                "2 eggs\n60 g tomatillo\n18 g salt\n",
                "test")
            .value();
    const Sheet s = sheet(f);
    const auto told = [&](const std::string& ingredient) {
        std::string verbs;
        for (const auto& one : s.steps)
            for (const auto& part : one.parts)
                if (f.lines[part.line].ingredient == ingredient && (!part.verb.empty() || one.id == "peeled"))
                    verbs += one.id == "peeled" ? "peel" : part.verb;
        return verbs;
    };
    CHECK(told("garlic") == "peel");
    CHECK(told("onion") == "peel");
    CHECK(told("shallot") == "peel");
    CHECK(told("serrano") == "stem");
    CHECK(told("egg") == "shell");
    CHECK(told("tomatillo") == "husk");
    CHECK(told("pork-shoulder").empty());
    CHECK(bought(s, "garlic").bought_g > 15);  // five cloves of 3 g, and their skins
    CHECK(*bought(s, "onion").metric.count == 1);
    CHECK(*bought(s, "serrano").metric.count == 4);
    CHECK(*bought(s, "egg").metric.count == 2);
}

TEST_CASE("what is cut away is told of every food that has any") {
    for (const auto& ingredient : knowledge().records().ingredients) {
        if (!ingredient.edible || ingredient.edible->band.mid >= 99 || ingredient.roles.front() == Role::nut) continue;
        CAPTURE(ingredient.id);
        const Sheet s = sheet(formula({line("pork-shoulder", 1000), line("table-salt", 17), line(ingredient.id, 40)}));
        const auto& parts = step(s, "weigh").parts;
        REQUIRE(parts.size() == 1);
        CHECK_FALSE(parts.front().verb.empty());
        CHECK(parts.front().grams_in > parts.front().grams_out);
    }
}

TEST_CASE("a food in a can or a jar is bought in one, and not peeled") {
    const Sheet s =
        sheet(formula({line("pork-shoulder", 1000), line("table-salt", 17), line("green-chile-canned", 80), line("pimiento", 60)}));
    CHECK_FALSE(has(s, "weigh"));
    CHECK(bought(s, "green-chile-canned").metric.unit == "jar or can");
    CHECK(bought(s, "pimiento").us.unit == "jar or can");
}

TEST_CASE("a leaf that the formula weighs with its stems is bought at that weight") {
    const Sheet s = sheet(formula({line("pork-shoulder", 1000), line("table-salt", 17), line("spinach", 300, {"stemmed"})}));
    CHECK(bought(s, "spinach").bought_g == Approx(300));
}

TEST_CASE("links are cylinders of their casing, patties of the size asked for") {
    Formula f = hedge();
    f.process.diameter_mm = 26;
    const Sheet links = sheet(f);
    CHECK(links.makes.shape == "link");
    const double grams = 1.03 * std::numbers::pi * 13 * 13 * 120 / 1000;  // density and length of knowledge/models/bench.json
    CHECK(links.makes.piece_g == Approx(grams));
    CHECK(links.makes.pieces == std::floor((links.prediction.batch_g - 20) / grams));
    const double over = knowledge().parameter("bench.casing.over").mid;
    CHECK(*links.makes.casing_m == Approx(over * links.prediction.batch_g / grams * 0.12));
    const Sheet patties = sheet(hedge(), {"", "", "4 oz", {}});
    CHECK(patties.makes.shape == "patty");
    CHECK(patties.makes.piece_g == Approx(4 * 28.349523125));
    CHECK(patties.makes.piece_cooked_g.low < patties.makes.piece_cooked_g.high);
    CHECK(patties.makes.piece_cooked_g.high < patties.makes.piece_g);
}

TEST_CASE("stuffed, though the formula does not say so, into casing that comes so wide") {
    const SheetRequest wide{"", "", "", {}, "34 mm", "15 cm"}, narrow{"", "", "", {}, "22mm", ""};
    const Sheet s = sheet(hedge(), wide);
    CHECK(s.makes.shape == "link");
    CHECK(s.makes.casing == "hog");
    CHECK(*s.makes.length_mm == Approx(150));
    CHECK(s.makes.piece_g == Approx(1.03 * std::numbers::pi * 17 * 17 * 150 / 1000));
    CHECK(*s.makes.casing_g_a_metre == Approx(1.03 * std::numbers::pi * 17 * 17));
    CHECK(place(s, "casing") < place(s, "grind"));  // it soaks while the meat chills
    CHECK(*step(s, "casing").casing_m == *s.makes.casing_m);
    CHECK(*step(s, "shape").link_mm == Approx(150));
    CHECK(step(s, "shape").said);
    CHECK_FALSE(step(sheet(hedge(), narrow), "shape").said);  // as long as links usually are
    CHECK(sheet(hedge(), narrow).makes.casing == "sheep");
    CHECK_FALSE(has(sheet(hedge()), "casing"));
    CHECK(refused(hedge(), {"", "", "", {}, "wide", ""}).find("request.casing: expected a width from 5 to less than 60 mm") !=
          std::string::npos);
    CHECK(refused(hedge(), {"", "", "", {}, "90 mm", ""}).find("request.casing: expected a width from 5 to less than 60 mm") !=
          std::string::npos);
    CHECK(refused(hedge(), {"", "", "", {}, "3 m", ""}).find("request.casing: expected a width from 5 to less than 60 mm") !=
          std::string::npos);
    CHECK(refused(hedge(), {"", "", "", {}, "", "12 cm"}).find("request.link: a link needs a casing") != std::string::npos);
    CHECK(refused(hedge(), {"", "", "80 g", {}, "32 mm", "12 cm"}).find("exclude each other") != std::string::npos);
}

TEST_CASE("casing for a pound of links agrees with what sellers reckon") {
    // Common practice: 2 to 3 feet of hog casing of 32-35 mm to the pound.
    const Sheet s = sheet(hedge(), {"", "", "", {}, "33.5 mm", ""});
    const double feet_a_pound = *s.makes.casing_m / 0.3048 / (s.prediction.batch_g / 453.59237);
    CHECK(feet_a_pound > 2);
    CHECK(feet_a_pound < 3);
}

TEST_CASE("a pork casing round other meat is told") {
    const SheetRequest wide{"", "", "", {}, "34 mm", ""};
    const auto told = [](const Sheet& s) {
        return std::any_of(s.notes.begin(), s.notes.end(),
                           [](const Reason& n) { return in_full(n).find("It is pork") != std::string::npos; });
    };
    Formula chicken = formula({line("chicken-thigh", 1000), line("table-salt", 17)});
    CHECK(sheet(chicken, wide).makes.casing.empty());  // nobody said of which animal
    chicken.beside.push_back({"hog casings", BesideKind::casing});
    CHECK(told(sheet(chicken, wide)));
    CHECK_FALSE(told(sheet(hedge(), wide)));
}

TEST_CASE("safety stands on the sheet like on every page") {
    const Sheet s = sheet(formula({line("pork-shoulder", 1000), line("table-salt", 17), line("walnut", 60, {"toasted"})}));
    CHECK_FALSE(s.prediction.cautions.empty());
    REQUIRE(s.prediction.allergens.size() == 1);
    CHECK(s.prediction.label.find("WALNUT") != std::string::npos);
}

}  // namespace sheet_test
