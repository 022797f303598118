// Published rules held against made-up batches: 9 CFR 319, Regulation (EU) No 1169/2011, CXS 1-1985, consumer temperature charts.
#include <algorithm>

#include "safety/allergens.hpp"
#include "safety/cap_values.hpp"
#include "safety/caps.hpp"
#include "safety/core_temperature.hpp"
#include "standin/temperature_text.hpp"
#include "support/catch.hpp"
#include "support/mixture.hpp"

using namespace standin;

namespace rules_test {

// Ids of the caps that a batch breaks, however it is counted.
std::vector<std::string> broken(const Prediction& p, std::string_view code) {
    std::vector<std::string> ids;
    for (const auto& c : cap_cautions(p, knowledge(), *knowledge().rules(code)))
        if (c.text.rfind("Over", 0) == 0 || c.text.rfind("Under", 0) == 0) ids.push_back(c.id);
    return ids;
}

Prediction with_fat(Prediction p, double fat) {
    p.properties[Property::fat_pct] = {fat, fat, fat};
    p.nominal[Property::fat_pct] = fat;
    return p;
}

using Ids = std::vector<std::string>;

TEST_CASE("9 CFR 319.141: fresh pork sausage") {
    const auto sausage = [](double water) {
        return with_fat(mixture({{"pork-shoulder", 99.5 - water}, {"water", water}, {"table-salt", 0.5}}, "fresh pork sausage"), 30);
    };
    CHECK(broken(sausage(3.0), "us").empty());
    CHECK(broken(sausage(3.1), "us") == Ids{"us-fresh-pork-water"});
    CHECK(broken(with_fat(sausage(3.0), 50.0), "us").empty());
    CHECK(broken(with_fat(sausage(3.0), 50.1), "us") == Ids{"us-fresh-pork-fat"});
    const auto milky = with_fat(mixture({{"pork-shoulder", 96}, {"milk-powder", 3.5}, {"table-salt", 0.5}}, "fresh pork sausage"), 30);
    CHECK(broken(milky, "us") == Ids{"us-fresh-pork-binder"});
}

TEST_CASE("9 CFR 319.145: Italian sausage") {
    const auto italian = [](double fat, const char* spice) {
        return with_fat(mixture({{"pork-shoulder", 97}, {spice, 0.5}, {"black-pepper", 0.5}, {"table-salt", 2}}, "Italian sausage"), fat);
    };
    CHECK(broken(italian(35.0, "fennel-seed"), "us").empty());
    CHECK(broken(italian(35.0, "anise-seed"), "us").empty());
    CHECK(broken(italian(35.1, "fennel-seed"), "us") == Ids{"us-italian-fat"});
    CHECK(broken(italian(30, "caraway"), "us") == Ids{"us-italian-fennel"});
    CHECK(broken(with_fat(mixture({{"pork-shoulder", 84}, {"spinach", 13}, {"fennel-seed", 1}, {"table-salt", 2}}, "Italian sausage"), 20),
                 "us") == Ids{"us-italian-meat"});
}

TEST_CASE("9 CFR 319.140: binders and isolated soy protein share 3.5 %") {
    struct Row {
        const char* binder;
        double binder_pct, isolate_pct;
        bool passes;
    };
    for (const Row& row : {Row{"milk-powder", 3.5, 0, true}, Row{"milk-powder", 0, 2.0, true}, Row{"rusk", 1.75, 1.0, true},
                           Row{"milk-powder", 2, 1.0, false}, Row{"wheat-flour", 3.6, 0, false}, Row{"wheat-flour", 0, 2.1, false}}) {
        INFO(row.binder << " " << row.binder_pct << " isolate " << row.isolate_pct);
        const double rest = 100 - row.binder_pct - row.isolate_pct;
        const auto p =
            mixture({{"pork-shoulder", rest}, {row.binder, row.binder_pct}, {"soy-protein-isolate", row.isolate_pct}}, "country sausage");
        CHECK(broken(p, "us").empty() == row.passes);
    }
    const auto mixed = mixture({{"pork-shoulder", 97}, {"milk-powder", 2}, {"soy-protein-isolate", 1}});
    const auto share = binder_share(counted(mixed, knowledge()), 3.5, 2.0);
    REQUIRE(share.has_value());
    CHECK(*share == Approx(1.0714).epsilon(1e-4));
}

TEST_CASE("9 CFR 319.281: bockwurst is 70 % meat") {
    CHECK(broken(mixture({{"veal-shoulder", 70}, {"whole-milk", 0}, {"leek", 30}}, "bockwurst"), "us").empty());
    CHECK(broken(mixture({{"veal-shoulder", 69}, {"leek", 31}}, "bockwurst"), "us") == Ids{"us-bockwurst-meat"});
}

TEST_CASE("Regulation (EU) No 1169/2011, Annex VI part B: minced meat") {
    CHECK(broken(with_fat(mixture({{"beef-chuck", 100}}, "minced beef"), 20.1), "eu") == Ids{"eu-beef-mince-fat", "eu-mince-salt"});
    Prediction pork = with_fat(mixture({{"ground-pork", 100}}, "minced pork"), 30);
    pork.properties[Property::salt_pct] = {0, 0, 0};
    pork.nominal[Property::salt_pct] = 0;
    CHECK(broken(pork, "eu").empty());
}

TEST_CASE("meat content at the mixing bowl: 800 g of pork in 1000 g is 80 %") {
    const auto p = mixture({{"ground-pork", 800}, {"water", 120}, {"rusk", 50}, {"table-salt", 30}});
    CHECK(meat_pct(counted(p, knowledge())) == Approx(80));
    CHECK(legal_meat_pct(counted(p, knowledge()), knowledge().rules("eu")->meat_word) == Approx(80));  // 21 % fat, within the 30 % of pork
}

TEST_CASE("sulphites: more than 10 mg/kg in the EU, 10 mg/kg or more in Codex and the United States") {
    const auto declared = [](const char* code, double mg_kg) {
        const auto& rules = knowledge().rules(code)->allergens;
        return declares(*std::find_if(rules.begin(), rules.end(), [](const AllergenRule& r) { return r.allergen == "sulphite"; }), mg_kg);
    };
    for (const auto* code : {"eu", "uk", "codex", "us"}) {
        INFO(code);
        CHECK_FALSE(declared(code, 9.9));
        CHECK(declared(code, 10.1));
    }
    CHECK_FALSE(declared("eu", 10.0));
    CHECK_FALSE(declared("uk", 10.0));
    CHECK(declared("codex", 10.0));
    CHECK(declared("us", 10.0));
}

TEST_CASE("sulphites: 50 g of wine with 200 mg/L in a kilogram make 10.1 mg/kg") {
    Records records;
    for (const char* id : {"meat", "wine"}) {
        Ingredient i;
        i.id = id;
        i.names = {id};
        records.ingredients.push_back(i);
    }
    const double per_kg = 200 / 0.99;  // 200 mg/L at a density of 0.99
    records.ingredients[1].sulphites = Quantity{{per_kg, per_kg, per_kg}, "mg/kg", "judgement"};
    const Knowledge own(std::move(records));
    CHECK(sulphites_mg_kg(mixture({{"meat", 950}, {"wine", 50}}, "", own), own) == Approx(10.1).epsilon(1e-3));
    CHECK(sulphites_mg_kg(mixture({{"meat", 960}, {"wine", 40}}, "", own), own) == Approx(8.1).epsilon(5e-3));
}

TEST_CASE("consumer chart: red meat 160 F, poultry 165 F, and poultry decides a mixture") {
    const auto core = [](const std::vector<std::pair<std::string, double>>& lines) {
        return core_temperature_text(demanded_core(mixture(lines), knowledge(), "us").core_c);
    };
    CHECK(core({{"pork-shoulder", 100}}) == "71.1 C (160 F)");
    CHECK(core({{"beef-chuck", 100}}) == "71.1 C (160 F)");
    CHECK(core({{"ground-chicken", 100}}) == "73.9 C (165 F)");
    CHECK(core({{"pork-shoulder", 99}, {"ground-turkey", 1}}) == "73.9 C (165 F)");
}

TEST_CASE("wine may hold what the law of the country allows: 350 mg/L in the United States, 200 mg/L in Europe") {
    const auto p = mixture({{"pork-shoulder", 970}, {"white-wine", 30}});
    CHECK(sulphites_mg_kg(p, knowledge(), knowledge().rules("us")) == Approx(30 * 350 / 1000.0));
    CHECK(sulphites_mg_kg(p, knowledge(), knowledge().rules("eu")) == Approx(30 * 200 / 1000.0));
    const auto all = allergens_of(p, knowledge());
    REQUIRE(all.size() == 1);
    CHECK(all.front().declare.size() == 1);
    CHECK(all.front().declare.front().first == "us");
}

TEST_CASE("minced fish is held at its temperature for 17 seconds, anything in the United Kingdom for 30") {
    CHECK(shown_core(demanded_core(mixture({{"cod", 100}}), knowledge(), "")) == "68.3 C (155 F), kept for 17 seconds");
    CHECK(shown_core(demanded_core(mixture({{"pork-shoulder", 100}}), knowledge(), "uk")) == "75 C (167 F), kept for 30 seconds");
    CHECK(shown_core(demanded_core(mixture({{"pork-shoulder", 100}}), knowledge(), "us")) == "71.1 C (160 F)");
}

}  // namespace rules_test
