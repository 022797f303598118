// Cautions: always, by ingredient, species, property and process; and how hot the middle must get.
#include "safety/cautions.hpp"

#include <algorithm>
#include <set>

#include "safety/core_temperature.hpp"
#include "support/catch.hpp"
#include "support/mixture.hpp"

using namespace standin;

namespace {

const std::vector<std::pair<std::string, double>> plain{{"pork-shoulder", 980}, {"table-salt", 16}};

const CautionText* said(const std::vector<CautionText>& all, std::string_view id) {
    const auto found = std::find_if(all.begin(), all.end(), [&](const CautionText& c) { return c.id == id; });
    return found == all.end() ? nullptr : &*found;
}

std::vector<CautionText> of(const Prediction& p, const Process& process = {}, std::string_view rules = "") {
    Formula formula;
    formula.process = process;
    return cautions_of(p, formula, knowledge(), rules);
}

std::vector<CautionText> with(const char* ingredient) {
    auto lines = plain;
    lines.emplace_back(ingredient, 50);
    return of(mixture(lines));
}

double core(const std::vector<std::pair<std::string, double>>& lines, std::string_view rules = "") {
    return demanded_core(mixture(lines), knowledge(), rules).core_c;
}

}  // namespace

TEST_CASE("what is always said is always said, each with a source that is known") {
    const auto all = of(mixture(plain));
    REQUIRE(!all.empty());
    CHECK(all.front().id == "core-temperature");
    for (const auto* id :
         {"keep-cold", "use-soon", "cook-core", "taste-cooked", "acid-no-preserve", "no-cure", "may-contain", "vulnerable", "defer"}) {
        INFO(id);
        CHECK(said(all, id) != nullptr);
    }
    for (const auto& caution : all) {
        INFO(caution.id);
        CHECK(knowledge().source(caution.source) != nullptr);
    }
    CHECK(all.size() == 10);
}

TEST_CASE("a rule set adds its own, after the general ones") {
    const auto all = of(mixture({{"ground-turkey", 1000}, {"spinach", 50}}), {}, "us");
    const auto place = [&](std::string_view id) {
        const auto* c = said(all, id);
        REQUIRE(c != nullptr);
        return c - all.data();
    };
    CHECK(place("defer") < place("us-sale"));
    CHECK(place("us-sale") < place("poultry-core"));
    CHECK(place("poultry-core") < place("us-poultry-name"));
    CHECK(of(mixture(plain), {}, "general").size() == of(mixture(plain)).size());
}

TEST_CASE("an ingredient's caution is said with its name") {
    const auto spinach = with("spinach");
    REQUIRE(said(spinach, "nitrate-leaf") != nullptr);
    CHECK(said(spinach, "nitrate-leaf")->text.find("Here: spinach.") != std::string::npos);
    CHECK(said(spinach, "oxalate") != nullptr);
    CHECK(said(with("wheat-flour"), "raw-flour") != nullptr);
    CHECK(said(with("egg"), "raw-egg") != nullptr);
    CHECK(said(with("white-wine"), "alcohol") != nullptr);
    CHECK(said(with("garlic"), "garlic-oil") != nullptr);
    CHECK(said(of(mixture(plain)), "garlic-oil") == nullptr);
}

TEST_CASE("species bring their cautions") {
    CHECK(said(with("chicken-thigh"), "poultry-core") != nullptr);
    CHECK(said(with("venison"), "game-source") != nullptr);
    CHECK(said(with("shrimp"), "fish-cold") != nullptr);
    CHECK(said(of(mixture(plain)), "poultry-core") == nullptr);
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
    foretell(p, Property::salt_pct_of_meat, {2.4, 2.6, 2.8});
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
    CHECK(said(all, "long-rest")->source == said(all, "use-soon")->source);
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
    CHECK(core({{"pork-shoulder", 100}}, "us") == 71.1);
    CHECK(core({{"pork-shoulder", 100}}, "uk") == 75);
    CHECK(core({{"spinach", 100}}) == 73.9);
    const auto all = of(mixture({{"pork-shoulder", 95}, {"turkey-skin", 5}}));
    CHECK(all.front().text.rfind("Cook to at least 73.9 C (165 F) in the middle, for the turkey in it.", 0) == 0);
}

TEST_CASE("a temperature is never rounded down") {
    CHECK(shown_temperature(71.1) == "71.1 C (160 F)");
    CHECK(shown_temperature(73.9) == "73.9 C (165 F)");
    CHECK(shown_temperature(68.3) == "68.3 C (155 F)");
    CHECK(shown_temperature(75) == "75 C (167 F)");
    CHECK(shown_temperature(71.11) == "71.2 C (160 F)");
    CHECK(shown_temperature(70) == "70 C (158 F)");
}

TEST_CASE("every condition in the rule sets can come true") {
    Prediction p = mixture({});
    Formula formula;
    formula.process.core_c = 40;
    formula.process.mixed_at_c = 20;
    formula.process.rest_h = 100;
    for (const auto& ingredient : knowledge().records().ingredients) {
        PredictedLine line;
        line.ingredient = ingredient.id;
        line.weighed_g = line.grams = 10;
        p.lines.push_back(line);
    }
    p.meat_g = 100;
    std::set<std::string> seen;
    for (const double step : {0.0, 5.2, 5.4}) {
        for_each_property([&](Property property) { foretell(p, property, {step, step, step}); });
        foretell(p, Property::fat_pct, {90, 90, 90}), foretell(p, Property::heat_mg_kg, {90, 90, 90});
        for (const auto& rules : knowledge().records().rules)
            for (const auto& c : cautions_of(p, formula, knowledge(), rules.code)) seen.insert(c.id);
    }
    const std::set<std::string> borne_by_nothing{"sprout"};  // no sprouts in the knowledge, on purpose
    for (const auto& rules : knowledge().records().rules)
        for (const auto& caution : rules.cautions) {
            INFO(caution.id);
            CHECK((seen.count(caution.id) > 0 || borne_by_nothing.count(caution.id) > 0));
        }
}
