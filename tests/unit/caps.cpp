// Legal limits: which hold for a title, what each counts, and what is said.
#include "safety/caps.hpp"

#include <algorithm>

#include "safety/cap_values.hpp"
#include "support/catch.hpp"
#include "support/mixture.hpp"

using namespace standin;

namespace caps_test {

std::vector<std::string> ids(std::string_view title, std::string_view code) {
    std::vector<std::string> all;
    for (const auto* cap : caps_for(title, *knowledge().rules(code))) all.push_back(cap->id);
    return all;
}

bool has(const std::vector<std::string>& all, std::string_view one) { return std::find(all.begin(), all.end(), one) != all.end(); }

const CautionText* said(const std::vector<CautionText>& all, std::string_view id) {
    const auto found = std::find_if(all.begin(), all.end(), [&](const CautionText& c) { return c.id == id; });
    return found == all.end() ? nullptr : &*found;
}

bool starts(const CautionText* text, std::string_view words) { return text && text->text.rfind(words, 0) == 0; }

Counted of(const Prediction& p) { return counted(p, knowledge()); }

TEST_CASE("caps with a name hold only where the title says it, the longest name first") {
    const auto plain = ids("Green sausage", "us");
    CHECK(has(plain, "us-sausage-water"));
    CHECK_FALSE(has(plain, "us-fresh-pork-fat"));
    const auto pork = ids("My Fresh Pork Sausages", "us");
    CHECK(has(pork, "us-fresh-pork-fat"));
    CHECK(has(pork, "us-fresh-pork-binder"));
    CHECK_FALSE(has(pork, "us-sausage-binder"));  // the stricter of its own name stands for it
    CHECK(has(ids("economy beef burger", "uk"), "uk-economy-beef-burger-meat"));
    CHECK(ids("economy beef burger", "uk").size() == 2);  // and phosphate
    CHECK(has(ids("beef sausage", "uk"), "uk-other-sausage-meat"));
    CHECK_FALSE(has(ids("beef sausage", "uk"), "uk-sausage-meat"));
    CHECK_FALSE(has(ids("hamburger", "uk"), "uk-pork-burger-meat"));
}

TEST_CASE("nothing is said of a limit that is far away") {
    const auto p = mixture({{"pork-shoulder", 965}, {"water", 10}, {"table-salt", 16}}, "fresh pork sausage");
    CHECK(cap_cautions(p, knowledge(), *knowledge().rules("us")).empty());
}

TEST_CASE("near a limit it is said, and where the fat lies") {
    Prediction p = mixture({{"pork-shoulder", 980}, {"table-salt", 16}}, "fresh pork sausage");
    foretell(p, Property::fat_pct, {42, 46, 51});
    const auto all = cap_cautions(p, knowledge(), *knowledge().rules("us"));
    const auto* fat = said(all, "us-fresh-pork-fat");
    CHECK(starts(fat, "Just within the limit: fat 46 % (42-51); most 50 %."));
    CHECK(fat->text.find("9 CFR 319.141") != std::string::npos);
    CHECK(fat->source == "us-9cfr-319-141");
}

TEST_CASE("water and other liquids are told apart, and warned of together") {
    const auto p = mixture({{"pork-shoulder", 945}, {"ice", 20}, {"white-wine", 20}, {"table-salt", 15}}, "green sausage");
    CHECK(added_water_pct(of(p)) == Approx(2));
    CHECK(other_liquid_pct(of(p)) == Approx(2));
    const auto all = cap_cautions(p, knowledge(), *knowledge().rules("us"));
    CHECK(starts(said(all, "us-sausage-water"), "Over the limit as it is usually counted: added water and ice 2 %, 4 % with wine"));
    const auto counts = [](const char* id) { return other_liquid_pct(of(mixture({{"pork-shoulder", 95}, {id, 5}}))); };
    CHECK(counts("cider-vinegar") == Approx(5));
    CHECK(counts("chicken-stock") == Approx(5));
    CHECK(counts("lime-juice") == Approx(5));
    CHECK(counts("spinach") == 0);
    CHECK(counts("water") == 0);
}

TEST_CASE("binders are those the rule names; a standard without any counts them all") {
    const auto named = [](const char* id) { return binder_pct(of(mixture({{"pork-shoulder", 95}, {id, 5}}))); };
    for (const auto* id : {"rusk", "wheat-flour", "potato-flake", "rice-cooked", "chickpea-flour", "milk-powder", "soy-protein-concentrate",
                           "soy-flour-defatted"}) {
        INFO(id);
        CHECK(named(id) == Approx(5));
    }
    for (const auto* id : {"egg", "gelatin", "citrus-fibre", "soy-protein-isolate", "ricotta", "pistachio", "spinach"}) {
        INFO(id);
        CHECK(named(id) == 0);
    }
    const auto p = mixture({{"pork-shoulder", 95}, {"egg", 5}}, "fresh pork sausage");
    CHECK(any_binder_pct(of(p)) == Approx(5));
    CHECK(starts(said(cap_cautions(p, knowledge(), *knowledge().rules("us")), "us-fresh-pork-binder"), "Over the limit"));
}

TEST_CASE("ground beef takes no water and no binder at all") {
    const auto dry = mixture({{"beef-chuck", 1000}}, "hamburger");
    CHECK(cap_cautions(dry, knowledge(), *knowledge().rules("us")).empty());
    const auto wet = mixture({{"beef-chuck", 1000}, {"water", 10}}, "hamburger");
    CHECK(starts(said(cap_cautions(wet, knowledge(), *knowledge().rules("us")), "us-ground-beef-water"), "Over the limit"));
}

TEST_CASE("meat in the sense of the label law leaves out offal and fat beyond its limit") {
    Records records;
    const auto add = [&](const char* id, double fat, Species species, std::vector<std::string> cautions = {}) {
        Ingredient i;
        i.id = id;
        i.names = {id};
        i.meat = MeatRecord{species, {}, {}};
        i.composition.fat = {fat, fat, fat};
        i.cautions = std::move(cautions);
        records.ingredients.push_back(i);
    };
    add("belly", 50, Species::pork);
    add("shoulder", 20, Species::pork);
    add("bird", 20, Species::chicken);
    add("liver", 4, Species::pork, {"offal"});
    const Knowledge own(std::move(records));
    const auto legal = [&](const std::vector<std::pair<std::string, double>>& lines) {
        return legal_meat_pct(counted(mixture(lines, "", own), own), knowledge().rules("eu")->meat_word);
    };
    CHECK(legal({{"belly", 100}}) == Approx(71.43).epsilon(1e-3));
    CHECK(legal({{"shoulder", 100}}) == Approx(100));
    CHECK(legal({{"bird", 100}}) == Approx(80 / 0.85));
    CHECK(legal({{"shoulder", 50}, {"bird", 50}}) == Approx(100));
    CHECK(legal({{"shoulder", 50}, {"liver", 50}}) == Approx(50));
    CHECK(legal({}) == 0);
}

TEST_CASE("every property that a cap names is measured") {
    for (const auto& rules : knowledge().records().rules)
        for (const auto& cap : rules.caps) {
            INFO(cap.id);
            Prediction p = mixture({{"pork-shoulder", 40}, {"water", 30}, {"rusk", 20}, {"soy-protein-isolate", 10}},
                                   cap.names.empty() ? "sausage" : cap.names.front());
            foretell(p, Property::fat_pct, {90, 90, 90}), foretell(p, Property::salt_pct, {90, 90, 90});
            if (cap.at_least) p = mixture({{"spinach", 100}}, cap.names.front()), foretell(p, Property::salt_pct, {0, 0, 0});
            const bool no_phosphate_known = cap.property == CapProperty::phosphate_pct;
            CHECK((said(cap_cautions(p, knowledge(), rules), cap.id) != nullptr) == !no_phosphate_known);
        }
}

}  // namespace caps_test
