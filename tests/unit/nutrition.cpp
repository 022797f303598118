// The nutrition table: mass balance by hand, the rounding of each rule set on its own edges.
#include "worksheet/nutrition.hpp"

#include <algorithm>

#include "standin/engine.hpp"
#include "support/catch.hpp"
#include "support/kitchen.hpp"

using namespace standin;

namespace nutrition_test {

std::string said(double value, const std::string& row, const std::string& unit, const std::string& rules) {
    return rounded_as(value, row, unit, nutrition_rule(knowledge(), rules));
}

Engine& engine() {
    static Engine one = opened(64);
    return one;
}

LabelDraft draft(const Formula& f, const std::string& rules = "") {
    Setting setting;
    if (!rules.empty()) setting.rules = rules;
    auto paper = engine().paper(f, setting);
    REQUIRE(paper);
    return paper->draft;
}

const NutritionRow& row(const LabelDraft& d, const std::string& id) {
    const auto found = std::find_if(d.nutrition.begin(), d.nutrition.end(), [&](const NutritionRow& r) { return r.id == id; });
    REQUIRE(found != d.nutrition.end());
    return *found;
}

TEST_CASE("EU rounding on its edges", "[nutrition]") {
    CHECK(said(0.5, "fat_g", "g", "eu") == "0 g");
    CHECK(said(0.51, "fat_g", "g", "eu") == "0.5 g");
    CHECK(said(9.94, "fat_g", "g", "eu") == "9.9 g");
    CHECK(said(10.4, "fat_g", "g", "eu") == "10 g");
    CHECK(said(0.1, "saturates_g", "g", "eu") == "0 g");
    CHECK(said(0.0125, "salt_g", "g", "eu") == "0 g");
    CHECK(said(0.987, "salt_g", "g", "eu") == "0.99 g");
    CHECK(said(1.46, "salt_g", "g", "eu") == "1.5 g");
    CHECK(said(1043.4, "energy_kj", "kJ", "uk") == "1043 kJ");
}

TEST_CASE("US rounding on its edges", "[nutrition]") {
    CHECK(said(4.9, "energy_kcal", "kcal", "us") == "0 kcal");
    CHECK(said(47, "energy_kcal", "kcal", "us") == "45 kcal");
    CHECK(said(50, "energy_kcal", "kcal", "us") == "50 kcal");
    CHECK(said(254, "energy_kcal", "kcal", "us") == "250 kcal");
    CHECK(said(0.49, "fat_g", "g", "us") == "0 g");
    CHECK(said(4.7, "fat_g", "g", "us") == "4.5 g");
    CHECK(said(17.6, "fat_g", "g", "us") == "18 g");
    CHECK(said(0.7, "sugars_g", "g", "us") == "less than 1 g");
    CHECK(said(138, "sodium_mg", "mg", "us") == "140 mg");
    CHECK(said(587, "sodium_mg", "mg", "us") == "590 mg");
}

TEST_CASE("no rule set, no rounding but a decimal", "[nutrition]") {
    CHECK(said(9.94, "fat_g", "g", "") == "9.9 g");
    CHECK(said(1043.4, "energy_kj", "kJ", "") == "1043 kJ");
}

TEST_CASE("the table is the mass balance of the batch", "[nutrition]") {
    const Formula f = formula({line("pork-shoulder", 1000), line("table-salt", 20)});
    const LabelDraft d = draft(f, "eu");
    const auto& pork = knowledge().ingredient("pork-shoulder")->composition;
    CHECK(row(d, "protein_g").raw.mid == Approx(pork.protein.mid / 1.02).epsilon(0.02));
    CHECK(row(d, "fat_g").raw.mid == Approx(pork.fat.mid / 1.02).epsilon(0.02));
    const double sodium = (20 * 22.990 / 58.443 + 10 * pork.sodium_mg->mid / 1000) / 10.2;
    CHECK(row(d, "salt_g").raw.mid == Approx(2.5 * sodium).epsilon(0.02));
    const double kcal = 9 * row(d, "fat_g").raw.mid + 4 * row(d, "protein_g").raw.mid + 4 * row(d, "carbohydrate_g").raw.mid;
    CHECK(row(d, "energy_kcal").raw.mid == Approx(kcal).epsilon(0.001));
    CHECK(row(d, "saturates_g").raw.mid / row(d, "fat_g").raw.mid == Approx(0.36).margin(0.02));
}

TEST_CASE("cooked, what stays is denser", "[nutrition]") {
    const LabelDraft d = draft(formula({line("pork-shoulder", 1000), line("table-salt", 20), line("breadcrumb", 60)}));
    for (const char* id : {"protein_g", "carbohydrate_g", "salt_g"}) {
        INFO(id);
        CHECK(row(d, id).cooked.mid > row(d, id).raw.mid);
    }
    for (const auto& r : d.nutrition) {
        INFO(r.id);
        CHECK(r.raw.low <= r.raw.mid);
        CHECK(r.raw.mid <= r.raw.high);
        CHECK(r.cooked.low <= r.cooked.mid);
        CHECK(r.cooked.mid <= r.cooked.high);
    }
}

TEST_CASE("each rule set has its own rows, and codes without a table take the general one", "[nutrition]") {
    for (const char* rules : {"", "eu", "uk", "us", "codex"}) {
        INFO(rules);
        const NutritionRule rule = nutrition_rule(knowledge(), rules);
        CHECK(rule.rows.size() >= 8);
        CHECK(rule.energy.size() >= 4);
        CHECK_FALSE(rule.text.empty());
        CHECK(label_lines(knowledge(), rules).size() >= 4);
    }
    CHECK(nutrition_rule(knowledge(), "us").rows.front().id == "energy_kcal");
}

TEST_CASE("the meat and what the title names are told with their share", "[nutrition]") {
    Formula f = formula({line("pork-shoulder", 820), line("spinach", 100), line("water", 60), line("table-salt", 20)});
    f.title = "Pork and spinach sausage";
    const auto named = draft(f, "eu").named;
    REQUIRE(named.size() == 2);
    CHECK(named[0].says == "pork 82 %");
    CHECK(named[1].says == "spinach 10 %");
}

TEST_CASE("offal is told under its own name and is no share of the meat", "[nutrition]") {
    const Formula f = formula({line("pork-shoulder", 760), line("pork-liver", 230), line("table-salt", 10)});
    for (const char* rules : {"", "eu", "uk", "us"}) {
        INFO(rules);
        const auto named = draft(f, rules).named;
        REQUIRE(named.size() == 2);
        CHECK(named[0].says == "pork 76 %");
        CHECK(named[1].says == "pork liver 23 %");
    }
}

}  // namespace nutrition_test
