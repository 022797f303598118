// Cautions: always, by ingredient, species, property and process; and how hot the middle must get.
#include "safety/cautions.hpp"

#include <algorithm>
#include <set>

#include "safety/allergens.hpp"
#include "safety/core_temperature.hpp"
#include "safety/making_limits.hpp"
#include "safety/page.hpp"
#include "safety/safety.hpp"
#include "standin/temperature_text.hpp"
#include "support/catch.hpp"
#include "support/mixture.hpp"

using namespace standin;

namespace cautions_test {

const std::vector<std::pair<std::string, double>> plain{{"pork-shoulder", 980}, {"table-salt", 16}};

const CautionText* said(const std::vector<CautionText>& all, std::string_view id) {
    const auto found = std::find_if(all.begin(), all.end(), [&](const CautionText& c) { return c.id == id; });
    return found == all.end() ? nullptr : &*found;
}

std::vector<CautionText> of(Prediction p, const Process& process = {}, std::string_view rules = "") {
    p.allergens = allergens_of(p, knowledge());
    return cautions_of(p, process, knowledge(), rules);
}

std::vector<CautionText> with(const char* ingredient) {
    auto lines = plain;
    lines.emplace_back(ingredient, 50);
    return of(mixture(lines));
}

double core(const std::vector<std::pair<std::string, double>>& lines, std::string_view rules = "") {
    return demanded_core(mixture(lines), knowledge(), rules).core_c;
}

TEST_CASE("what is always said is always said, each with a source that is known, and a plain batch reads short") {
    const auto all = of(mixture(plain));
    REQUIRE(!all.empty());
    CHECK(all.front().id == "core-temperature");
    for (const auto* id : {"core-temperature", "keep-cold", "hands", "vulnerable", "defer"}) {
        INFO(id);
        CHECK(said(all, id) != nullptr);
    }
    for (const auto& caution : all) {
        INFO(caution.id);
        CHECK(knowledge().source(caution.source) != nullptr);
    }
    CHECK(all.size() == 5);
}

TEST_CASE("the core is said once, and nobody is told to taste it raw") {
    for (const auto* code : {"", "us", "uk", "eu", "codex"}) {
        const auto all = of(mixture(plain), {}, code);
        CHECK(std::count_if(all.begin(), all.end(),
                            [](const CautionText& c) { return c.text.find("Cook to at least") != std::string::npos; }) == 1);
        CHECK(all.front().text.find("Never taste it raw") != std::string::npos);
    }
}

TEST_CASE("what is special to the batch comes before what is said of every batch, the general rules before those of the set") {
    const auto all = of(mixture({{"ground-turkey", 1000}, {"spinach", 50}}), {}, "us");
    const auto place = [&](std::string_view id) {
        const auto* c = said(all, id);
        INFO(id);
        REQUIRE(c != nullptr);
        return c - all.data();
    };
    CHECK(place("core-temperature") == 0);
    CHECK(place("poultry-core") < place("us-poultry-name"));
    CHECK(place("us-poultry-name") < place("keep-cold"));
    CHECK(place("keep-cold") < place("us-sale"));
    CHECK(of(mixture(plain), {}, "general").size() == of(mixture(plain)).size());
}

TEST_CASE("a caution is printed only where its subject is in the batch") {
    CHECK(said(of(mixture(plain)), "acid-no-preserve") == nullptr);
    CHECK(said(with("cider-vinegar"), "acid-no-preserve") != nullptr);
    CHECK(said(of(mixture(plain), {}, "eu"), "eu-emphasis") == nullptr);
    CHECK(said(of(mixture({{"pork-shoulder", 900}, {"feta", 40}}), {}, "eu"), "eu-emphasis") != nullptr);
    CHECK(said(of(mixture(plain), {}, "us"), "us-sulphite") == nullptr);
    CHECK(said(of(mixture({{"pork-shoulder", 900}, {"white-wine", 100}}), {}, "us"), "us-sulphite") != nullptr);
}

TEST_CASE("a caution of allergens names the foods of all of them") {
    const auto all = of(mixture({{"pork-shoulder", 900}, {"whole-milk", 60}, {"hazelnut", 40}, {"tahini", 30}}), {}, "eu");
    const auto* told = said(all, "eu-emphasis");
    REQUIRE(told != nullptr);
    for (const std::string food : {"milk", "hazelnut", "tahini"}) CHECK(told->text.find(food) != std::string::npos);
}

TEST_CASE("a number in a caution is that of the batch") {
    Prediction p = mixture(plain);
    foretell(p, Property::ph, {4.0, 4.07, 4.1});
    REQUIRE(said(of(p), "acid-set") != nullptr);
    CHECK(said(of(p), "acid-set")->text.find("pH 4.07 raw, under 5:") == 0);
    for (const auto& caution : of(p)) CHECK(caution.text.find('{') == std::string::npos);
}

TEST_CASE("almond is warned of bitter ones, walnut is not") {
    CHECK(said(with("almond"), "bitter-almond") != nullptr);
    CHECK(said(with("walnut"), "bitter-almond") == nullptr);
    CHECK(said(with("walnut"), "nut-bitter") != nullptr);
    CHECK(said(with("walnut"), "nut-bitter")->text.find("cyanide") == std::string::npos);
}

TEST_CASE("more of a food than its most in a kilo is cautioned of, with both doses") {
    Records records = knowledge().records();
    for (auto& i : records.ingredients)
        if (i.id == "nutmeg") i.most_g_per_kg = Quantity{{2, 2, 2}, "g/kg", "judgement"};
    const Knowledge own(std::move(records));
    const auto over = [&](double grams) {
        return cautions_of(mixture({{"pork-shoulder", 1000 - grams}, {"nutmeg", grams}}, "", own), Process{}, own, "");
    };
    CHECK(said(over(2), "over-most") == nullptr);
    REQUIRE(said(over(5), "over-most") != nullptr);
    CHECK(said(over(5), "over-most")->text.find("nutmeg (5 g in a kilo of batch, at most 2 g)") != std::string::npos);
    CHECK(said(over(5), "over-most")->foods == std::vector<std::string>{"nutmeg"});
}

TEST_CASE("cautions of a variant are new by what they are: the kind, how far it goes, and the foods") {
    const auto marked = [](const std::vector<std::pair<std::string, double>>& lines) {
        Prediction p = mixture(lines);
        mark_safety(p, Formula{}, knowledge(), "");
        return p;
    };
    const auto ids = [](const std::vector<CautionText>& all) {
        std::set<std::string> found;
        for (const auto& c : all) found.insert(c.id);
        return found;
    };
    const auto base = marked({{"pork-shoulder", 900}, {"spinach", 100}});
    CHECK(new_cautions(base, base).empty());
    CHECK(ids(new_cautions(base, marked({{"pork-shoulder", 900}, {"spinach", 50}, {"chard", 50}}))).count("nitrate-leaf") == 1);
    CHECK(ids(new_cautions(base, marked({{"pork-shoulder", 800}, {"chicken-thigh", 100}, {"spinach", 100}}))) ==
          std::set<std::string>{"core-temperature", "poultry-core", "poultry-raw"});
    CHECK(new_cautions(marked({{"chicken-thigh", 900}}), marked({{"pork-shoulder", 900}})).empty());
}

TEST_CASE("what stands first on a page holds for everything on it") {
    OnPage page;
    for (const auto& lines : {std::vector<std::pair<std::string, double>>{{"pork-shoulder", 900}, {"spinach", 50}},
                              {{"pork-shoulder", 800}, {"chicken-thigh", 100}, {"almond", 40}},
                              {{"pork-shoulder", 900}, {"feta", 40}}}) {
        Prediction p = mixture(lines);
        mark_safety(p, Formula{}, knowledge(), "");
        page.add(p);
    }
    const auto& safety = page.safety();
    CHECK(std::count_if(safety.allergens.begin(), safety.allergens.end(), [](const AllergenText& a) { return a.sure; }) == 2);
    CHECK(safety.core.core_c == 73.9);
    REQUIRE(said(safety.cautions, "core-temperature") != nullptr);
    CHECK(said(safety.cautions, "core-temperature")->text.find("73.9 C (165 F)") != std::string::npos);
    CHECK(said(safety.cautions, "nitrate-leaf") != nullptr);
    CHECK(said(safety.cautions, "bitter-almond") != nullptr);
    CHECK(std::count_if(safety.cautions.begin(), safety.cautions.end(), [](const CautionText& c) { return c.id == "keep-cold"; }) == 1);
}

TEST_CASE("a warm rest is cautioned of; fish, offal and raw shellfish rest not at all") {
    Process process;
    process.rest_h = 12;
    process.rest_at_c = 4.4;
    CHECK(said(of(mixture(plain), process), "warm-rest") == nullptr);
    CHECK(said(of(mixture({{"pork-shoulder", 900}, {"cod", 100}}), process), "no-rest") != nullptr);
    CHECK(said(of(mixture({{"pork-shoulder", 900}, {"pork-liver", 100}}), process), "no-rest") != nullptr);
    CHECK(said(of(mixture({{"pork-shoulder", 900}, {"oyster", 100}}), process), "no-rest") != nullptr);
    CHECK(said(of(mixture(plain), process), "no-rest") == nullptr);
    process.rest_at_c = 25;
    REQUIRE(said(of(mixture(plain), process), "warm-rest") != nullptr);
    CHECK(said(of(mixture(plain), process), "warm-rest")->text.find("Here: 25 C.") != std::string::npos);
}

TEST_CASE("core readings that end low are cautioned of like a core that is low") {
    Process process;
    process.core_curve = {{0, 5}, {10, 40}, {20, 62}};
    REQUIRE(said(of(mixture(plain), process), "core-low") != nullptr);
    CHECK(said(of(mixture(plain), process), "core-low")->text.find("Here the core readings end at 62 C") != std::string::npos);
    process.core_curve.back().celsius = 72;
    CHECK(said(of(mixture(plain), process), "core-low") == nullptr);
}

TEST_CASE("an ingredient's caution is said with its name") {
    const auto spinach = with("spinach");
    REQUIRE(said(spinach, "nitrate-leaf") != nullptr);
    CHECK(said(spinach, "nitrate-leaf")->text.find("Here: spinach.") != std::string::npos);
    CHECK(said(spinach, "oxalate") != nullptr);
    CHECK(said(with("wheat-flour"), "raw-flour") != nullptr);
    CHECK(said(with("egg"), "raw-egg") != nullptr);
    CHECK(said(with("white-wine"), "alcohol") != nullptr);
    CHECK(said(with("garlic"), "garlic-oil") == nullptr);  // nothing to keep it in
    CHECK(said(of(mixture({{"pork-shoulder", 950}, {"garlic", 20}, {"olive-oil", 30}})), "garlic-oil") != nullptr);
    CHECK(said(of(mixture(plain)), "garlic-oil") == nullptr);
}

TEST_CASE("species bring their cautions") {
    CHECK(said(with("chicken-thigh"), "poultry-core") != nullptr);
    CHECK(said(with("venison"), "game-source") != nullptr);
    CHECK(said(with("shrimp"), "raw-fish") != nullptr);
    CHECK(said(of(mixture(plain)), "poultry-core") == nullptr);
}

TEST_CASE("raw meat is kept off hands and boards, and raw poultry is not rinsed") {
    CHECK(said(of(mixture(plain)), "hands")->text.find("wash hands, boards, knives") != std::string::npos);
    CHECK(said(of(mixture(plain)), "poultry-raw") == nullptr);
    for (const auto* bird : {"chicken-thigh", "ground-turkey"}) {
        REQUIRE(said(with(bird), "poultry-raw") != nullptr);
        CHECK(said(with(bird), "poultry-raw")->text.find("Do not rinse raw poultry") == 0);
    }
}

TEST_CASE("the liver of poultry is warned of for what it carries, the liver of pigs for what that carries") {
    REQUIRE(said(with("chicken-liver"), "poultry-liver") != nullptr);
    for (const auto* word : {"Campylobacter", "Salmonella", "73.9 C", "pink"})
        CHECK(said(with("chicken-liver"), "poultry-liver")->text.find(word) != std::string::npos);
    CHECK(said(with("chicken-liver"), "hepatitis-e") == nullptr);
    CHECK(said(with("pork-liver"), "hepatitis-e") != nullptr);
    for (const auto* liver : {"chicken-liver", "pork-liver", "beef-liver"})
        CHECK(said(with(liver), "liver")->text.find("vitamin A, which harms the unborn: none for the pregnant") != std::string::npos);
    CHECK(said(with("chicken-liver"), "offal") != nullptr);
    CHECK(said(with("pork-liver"), "liver") != nullptr);
    CHECK(said(with("pork-liver"), "poultry-liver") == nullptr);
}

TEST_CASE("pods that burn the skin ask for gloves, and sprouts for the heat") {
    for (const auto* pod : {"habanero", "thai-bird-chile", "piquin"}) {
        REQUIRE(said(with(pod), "hot-pod") != nullptr);
        CHECK(said(with(pod), "hot-pod")->text.find("gloves") != std::string::npos);
    }
    CHECK(said(with("jalapeno"), "hot-pod") == nullptr);
    REQUIRE(said(with("bean-sprout"), "sprout") != nullptr);
    CHECK(said(with("bean-sprout"), "sprout")->text.find("cook them through") != std::string::npos);
    CHECK(said(with("brussels-sprout"), "sprout") == nullptr);
}

TEST_CASE("of several thresholds of one property only the worst is said") {
    const auto at_ph = [](double ph) {
        Prediction p = mixture(plain);
        foretell(p, Property::ph, {ph - 0.2, ph, ph + 0.2});
        std::set<std::string> ids;
        for (const auto& c : of(p))
            if (c.id == "acid-soft" || c.id == "acid-crumbly" || c.id == "acid-set") ids.insert(c.id);
        return ids;
    };
    using Ids = std::set<std::string>;
    CHECK(at_ph(5.5) == Ids{});
    CHECK(at_ph(5.49) == Ids{"acid-soft"});
    CHECK(at_ph(5.2) == Ids{"acid-crumbly"});
    CHECK(at_ph(4.9) == Ids{"acid-set"});
}

TEST_CASE("salt, fat and heat are held against their thresholds") {
    Prediction p = mixture(plain);
    CHECK(said(of(p), "much-salt") == nullptr);
    foretell(p, Property::salt_pct, {2.0, 2.2, 2.4});  // of the whole: half of a mass may be vegetables
    foretell(p, Property::fat_pct, {48, 51, 55});
    foretell(p, Property::heat_mg_kg, {20, 36, 60});
    const auto all = of(p);
    CHECK(said(all, "much-salt") != nullptr);
    CHECK(said(all, "little-salt") == nullptr);
    CHECK(said(all, "much-fat") != nullptr);
    CHECK(said(all, "very-hot") != nullptr);
    foretell(p, Property::salt_pct_of_meat, {0.8, 0.9, 1.0});
    CHECK(said(of(p), "little-salt") != nullptr);
}

TEST_CASE("the process is held against the rule") {
    Process process;
    CHECK(said(of(mixture(plain), process), "core-low") == nullptr);
    process.core_c = 68;
    process.mixed_at_c = 12;
    const auto low = of(mixture(plain), process);
    REQUIRE(said(low, "core-low") != nullptr);
    CHECK(said(low, "core-low")->text.find("68 C instead of 71.1 C (160 F)") != std::string::npos);
    CHECK(said(low, "mixed-warm") != nullptr);
    process.core_c = 71.1;
    process.mixed_at_c = 10;
    CHECK(said(of(mixture(plain), process), "core-low") == nullptr);
    CHECK(said(of(mixture(plain), process), "mixed-warm") == nullptr);
    CHECK(said(of(mixture({{"pork-shoulder", 900}, {"chicken-skin", 100}}), process), "core-low") != nullptr);
    CHECK(said(of(mixture(plain), process, "uk"), "core-low") != nullptr);
}

TEST_CASE("a nut that no list of tree nuts names is told of all the same") {
    const auto all = with("chestnut");
    REQUIRE(said(all, "chestnut") != nullptr);
    CHECK(said(all, "chestnut")->text.find("Here: chestnut.") != std::string::npos);
    CHECK(knowledge().source(said(all, "chestnut")->source)->kind == SourceKind::published);
    CHECK(said(with("walnut"), "chestnut") == nullptr);
}

TEST_CASE("what an ingredient carries by itself is told without what is said of every batch") {
    const auto of_spinach = cautions_of_ingredient(*knowledge().ingredient("spinach"), knowledge(), "us");
    CHECK(said(of_spinach, "nitrate-leaf") != nullptr);
    CHECK(said(of_spinach, "oxalate") != nullptr);
    CHECK(said(of_spinach, "keep-cold") == nullptr);
    CHECK(of_spinach.size() == knowledge().ingredient("spinach")->cautions.size());
    CHECK(cautions_of_ingredient(*knowledge().ingredient("table-salt"), knowledge(), "").empty());
}

TEST_CASE("a rest longer than raw sausage keeps is warned of, unless it is frozen") {
    Process process;
    CHECK(said(of(mixture(plain), process), "long-rest") == nullptr);
    process.rest_h = 48;
    CHECK(said(of(mixture(plain), process), "long-rest") == nullptr);
    process.rest_h = 120;
    const auto all = of(mixture(plain), process);
    REQUIRE(said(all, "long-rest") != nullptr);
    CHECK(said(all, "long-rest")->text.find("Here: 120 hours.") != std::string::npos);
    CHECK(said(all, "long-rest")->source == said(all, "keep-cold")->source);
    CHECK(said(cautions_of_process(process, knowledge(), "eu"), "long-rest") != nullptr);
    process.rest_at_c = 0;
    CHECK(said(of(mixture(plain), process), "long-rest") != nullptr);
    process.rest_at_c = -18;
    CHECK(said(of(mixture(plain), process), "long-rest") == nullptr);
    CHECK(cautions_of_process(process, knowledge(), "").empty());
    process.mixed_at_c = 12;
    CHECK(said(cautions_of_process(process, knowledge(), ""), "mixed-warm") != nullptr);
}

TEST_CASE("the most demanding meat decides the core temperature, a rule set only when it asks for more") {
    CHECK(core({{"pork-shoulder", 100}}) == 71.1);
    CHECK(core({{"pork-shoulder", 95}, {"turkey-skin", 5}}) == 73.9);
    CHECK(core({{"cod", 100}}) == 68.3);
    CHECK(core({{"cod", 50}, {"pork-backfat", 50}}) == 71.1);
    CHECK(core({{"venison", 50}, {"pork-backfat", 50}}) == 73.9);
    CHECK(core({{"pork-shoulder", 90}, {"oyster", 10}}) == 90);
    CHECK(core({{"spinach", 90}, {"oyster", 10}}) == 90);
    CHECK(core({{"pork-shoulder", 100}}, "us") == 71.1);
    CHECK(core({{"pork-shoulder", 100}}, "uk") == 75);
    CHECK(core({{"spinach", 100}}) == 73.9);
    const auto all = of(mixture({{"pork-shoulder", 95}, {"turkey-skin", 5}}));
    CHECK(all.front().text.rfind("Cook to at least 73.9 C (165 F), measured in the middle", 0) == 0);
    CHECK(all.front().text.find("For the turkey skin in it.") != std::string::npos);
}

TEST_CASE("a temperature is never rounded down") {
    CHECK(core_temperature_text(71.1) == "71.1 C (160 F)");
    CHECK(core_temperature_text(73.9) == "73.9 C (165 F)");
    CHECK(core_temperature_text(68.3) == "68.3 C (155 F)");
    CHECK(core_temperature_text(75) == "75 C (167 F)");
    CHECK(core_temperature_text(71.11) == "71.2 C (160 F)");
    CHECK(core_temperature_text(70) == "70 C (158 F)");
}

// Everything at once: each food, each property far out, a process that goes wrong everywhere. A new record that nothing can trigger, or
// that is lost on the way, fails here.
TEST_CASE("every caution, every limit of the making and every cap can come true") {
    Records records = knowledge().records();
    for (auto& i : records.ingredients) {
        if (i.id == "nutmeg") i.most_g_per_kg = Quantity{{0.1, 0.1, 0.1}, "g/kg", "judgement"};
        if (i.id == "chicken-stock") i.may_hold = {"celery"};
    }
    const Knowledge own(std::move(records));
    Prediction p = mixture({});
    Process process;
    process.order = Order::acid_first;
    process.core_c = 40;
    process.mixed_at_c = 20;
    process.mixing_min = 20;
    process.rest_h = 100;
    process.rest_at_c = 25;
    Process hardly_mixed = process;
    hardly_mixed.mixing_min = 0;
    hardly_mixed.mixed_at_c = -4;
    for (const auto& ingredient : own.records().ingredients) {
        PredictedLine line;
        line.ingredient = ingredient.id;
        line.weighed_g = line.grams = 10;
        p.lines.push_back(line);
    }
    p.meat_g = 100;
    p.warming_h = 20;
    p.allergens = allergens_of(p, own);
    const Prediction meat = mixture(plain, "", own);
    Prediction sulphited = mixture({{"pork-shoulder", 900}, {"white-wine", 100}}, "", own);
    sulphited.allergens = allergens_of(sulphited, own);
    const Prediction with_rice =
        mixture({{"pork-shoulder", 900}, {"rice-cooked", 100}}, "", own);  // with seafood the stricter limit is told
    const Prediction leafy = mixture({{"pork-shoulder", 600}, {"spinach", 400}}, "", own);
    const Prediction beety = mixture({{"beef-chuck", 600}, {"beetroot", 400}}, "", own);
    Prediction prawns = mixture({{"shrimp", 1000}}, "", own);  // under another law than meat
    prawns.allergens = allergens_of(prawns, own);
    std::set<std::string> seen;
    for (const double step : {0.0, 2.5, 5.2, 5.4}) {
        for_each_property([&](Property property) { foretell(p, property, {step, step, step}); });
        for (const auto property : {Property::fat_pct, Property::heat_mg_kg, Property::fat_pct_of_meat})
            foretell(p, property, {90, 90, 90});
        for (const auto& rules : own.records().rules) {
            for (const auto& c : cautions_of(p, process, own, rules.code)) seen.insert(c.id);
            for (const auto& c : cautions_of(meat, hardly_mixed, own, rules.code)) seen.insert(c.id);
            for (const Prediction* one : std::initializer_list<const Prediction*>{&meat, &sulphited, &with_rice, &leafy, &beety, &prawns})
                for (const auto& c : cautions_of(*one, process, own, rules.code)) seen.insert(c.id);
        }
    }
    for (const auto& rules : own.records().rules) {
        for (const auto& caution : rules.cautions) {
            INFO(caution.id);
            CHECK(seen.count(caution.id) > 0);
        }
        for (const auto& making : rules.making) {
            INFO(making.id);
            CHECK(seen.count(making.id) > 0);
        }
    }
}

TEST_CASE("every food with a most in a kilo is cautioned of when it is over it, and not at it") {
    for (const auto& food : knowledge().records().ingredients) {
        if (!food.most_g_per_kg || food.most_g_per_kg->band.mid >= 700) continue;
        const double most = food.most_g_per_kg->band.mid;
        const auto in_a_kilo = [&](double grams) {
            const auto all = cautions_of(mixture({{"pork-shoulder", 1000 - grams}, {food.id, grams}}), Process{}, knowledge(), "");
            const auto* over = said(all, "over-most");
            return over && std::find(over->foods.begin(), over->foods.end(), food.id) != over->foods.end();
        };
        INFO(food.id);
        CHECK(in_a_kilo(1.3 * most));
        if (food.id != "pork-shoulder") CHECK_FALSE(in_a_kilo(most));
    }
}

TEST_CASE("whatever a bought food may hold stands among the allergens and in a caution, and never as none of the listed ones") {
    for (const auto& food : knowledge().records().ingredients) {
        if (food.may_hold.empty()) continue;
        INFO(food.id);
        Prediction p = mixture({{"pork-shoulder", 900}, {food.id, 100}});
        mark_safety(p, Formula{}, knowledge(), "");
        REQUIRE(said(p.cautions, "check-label") != nullptr);
        CHECK(said(p.cautions, "check-label")->text.find(food.names.front()) != std::string::npos);
        for (const auto& allergen : food.may_hold)
            CHECK(std::any_of(p.allergens.begin(), p.allergens.end(), [&](const AllergenText& a) { return a.allergen == allergen; }));
    }
}

TEST_CASE("every leaf that goes in raw is warned of, and none that was heated") {
    for (const auto* leaf : {"spinach", "kale", "lettuce-romaine", "parsley", "chard"}) {
        CAPTURE(leaf);
        Prediction p = mixture({{"pork-shoulder", 900}, {leaf, 60}});
        CHECK(said(of(p), "raw-produce") != nullptr);
        p.lines.back().prepared = {"blanched 2 min", "squeezed"};
        CHECK(said(of(p), "raw-produce") == nullptr);
    }
    CHECK(said(with("dried-oregano"), "raw-produce") == nullptr);
}

TEST_CASE("a trace of acid, nitrate or oxalate is not warned of") {
    CHECK(said(of(mixture({{"pork-shoulder", 1000}, {"cider-vinegar", 4}})), "acid-no-preserve") == nullptr);
    CHECK(said(of(mixture({{"pork-shoulder", 1000}, {"spinach", 5}})), "nitrate-leaf") == nullptr);
    CHECK(said(of(mixture({{"pork-shoulder", 1000}, {"spinach", 5}})), "oxalate") == nullptr);
}

TEST_CASE("no caution speaks of a cooler core or a longer rest than the batch allows") {
    const auto uk = of(mixture(plain), {}, "uk");
    REQUIRE(said(uk, "vulnerable") != nullptr);
    CHECK(said(uk, "vulnerable")->text.find("73.9") == std::string::npos);
    CHECK(said(uk, "vulnerable")->text.find("75 C") != std::string::npos);
    CHECK(said(of(mixture(plain)), "vulnerable")->text.find("73.9 C") != std::string::npos);
    const auto liver = of(mixture({{"pork-shoulder", 900}, {"pork-liver", 100}}));
    CHECK(said(liver, "keep-cold")->text.find("1-2 days") == std::string::npos);
    CHECK(said(of(mixture(plain)), "keep-cold")->text.find("1-2 days") != std::string::npos);
}

TEST_CASE("cured meat, boar, shot game and wild garlic are told what is true of them") {
    CHECK(said(with("bacon"), "cured-meat") != nullptr);
    CHECK(said(with("pork-belly"), "cured-meat") == nullptr);
    CHECK(said(with("wild-boar"), "trichinella")->text.find("hepatitis E") != std::string::npos);
    CHECK(said(with("wild-boar"), "game-parasite") == nullptr);  // said by the line before
    CHECK(said(with("pheasant"), "shot-lead") != nullptr);
    CHECK(said(with("pheasant"), "game-source") != nullptr);
    CHECK(said(with("ramps-leaf"), "look-alike-ramps")->text.find("lily of the valley") != std::string::npos);
    CHECK(said(with("nettle"), "wild-gathered")->text.find("kill") == std::string::npos);
    CHECK(said(with("chanterelle"), "look-alike-chanterelle") != nullptr);
}

}  // namespace cautions_test
