// Allergens: who brings them, which code wants them declared, sulphites by sum, and the words of --without.
#include "safety/allergens.hpp"

#include <algorithm>

#include "safety/exclusions.hpp"
#include "safety/page.hpp"
#include "safety/safety.hpp"
#include "support/catch.hpp"
#include "support/mixture.hpp"

using namespace standin;

namespace allergens_test {

const AllergenText* find(const std::vector<AllergenText>& all, std::string_view allergen) {
    const auto found = std::find_if(all.begin(), all.end(), [&](const AllergenText& text) { return text.allergen == allergen; });
    return found == all.end() ? nullptr : &*found;
}

std::vector<std::string> codes(const AllergenText& text) {
    std::vector<std::string> all;
    for (const auto& [code, words] : text.declare) all.push_back(code);
    std::sort(all.begin(), all.end());
    return all;
}

std::vector<std::string> codes_for(const std::string& ingredient, std::string_view allergen) {
    const auto all = allergens_of(mixture({{"pork-shoulder", 900}, {ingredient, 100}}), knowledge());
    const auto* text = find(all, allergen);
    return text ? codes(*text) : std::vector<std::string>{};
}

std::vector<std::string> added(const std::string& from, const std::string& to) {
    Prediction base = mixture({{"pork-shoulder", 900}, {from, 100}}), variant = mixture({{"pork-shoulder", 900}, {to, 100}});
    base.allergens = allergens_of(base, knowledge());
    variant.allergens = allergens_of(variant, knowledge());
    return new_allergens(base, variant);
}

bool carries_named(const std::string& id, std::string_view what) {
    const Ingredient* ingredient = knowledge().ingredient(id);
    REQUIRE(ingredient != nullptr);
    return carries(*ingredient, what, knowledge());
}

using Texts = std::vector<std::string>;

TEST_CASE("every line that brings an allergen is named, once") {
    const auto all = allergens_of(mixture({{"pork-shoulder", 800}, {"milk-powder", 20}, {"feta", 40}, {"milk-powder", 5}}), knowledge());
    REQUIRE(all.size() == 1);
    CHECK(all[0].allergen == "milk");
    CHECK(all[0].from == Texts{"nonfat dry milk", "feta"});
    CHECK(codes(all[0]) == Texts{"codex", "eu", "uk", "us"});
    CHECK(allergens_of(mixture({{"pork-shoulder", 800}, {"spinach", 100}, {"table-salt", 15}}), knowledge()).empty());
}

TEST_CASE("a line of no weight brings nothing") {
    CHECK(allergens_of(mixture({{"pork-shoulder", 800}, {"pistachio", 0}}), knowledge()).empty());
}

TEST_CASE("codes disagree, and each is shown as it is") {
    CHECK(codes_for("pine-nut", "pine-nut") == Texts{"codex", "us"});
    CHECK(codes_for("black-walnut", "black-walnut") == Texts{"codex", "us"});
    CHECK(codes_for("pistachio", "pistachio") == Texts{"codex", "eu", "uk", "us"});
    CHECK(codes_for("rolled-oat", "oats") == Texts{"codex", "eu", "uk"});
    CHECK(codes_for("rye-flour", "rye") == Texts{"codex", "eu", "uk"});
    CHECK(codes_for("barley-flour", "barley") == Texts{"codex", "eu", "uk"});
    CHECK(codes_for("mustard-seed", "mustard") == Texts{"codex", "eu", "uk"});
    CHECK(codes_for("celery", "celery") == Texts{"codex", "eu", "uk"});
    CHECK(codes_for("lupin-flour", "lupin") == Texts{"codex", "eu", "uk"});
    CHECK(codes_for("sesame-seed", "sesame") == Texts{"codex", "eu", "uk", "us"});
    CHECK(codes_for("shrimp", "crustacean") == Texts{"codex", "eu", "uk", "us"});
}

TEST_CASE("seeds on no list bring no allergen") {
    for (const auto* seed : {"pumpkin-seed", "sunflower-seed"}) {
        INFO(seed);
        REQUIRE(knowledge().ingredient(seed) != nullptr);
        CHECK(allergens_of(mixture({{"pork-shoulder", 900}, {seed, 100}}), knowledge()).empty());
    }
}

TEST_CASE("what a swap adds is told, what it takes away is not") {
    CHECK(added("pistachio", "pumpkin-seed").empty());
    CHECK(added("rusk", "milk-powder") == Texts{"milk"});
    CHECK(added("fresh-breadcrumb", "rolled-oat") == Texts{"oats"});
    CHECK(added("cashew", "pistachio") == Texts{"pistachio"});
    CHECK(added("rusk", "breadcrumb").empty());
}

TEST_CASE("sulphites are summed as weighed, at the upper end of what an ingredient may hold") {
    const auto with_wine = [](double grams) { return mixture({{"pork-shoulder", 1000 - grams}, {"white-wine", grams}}); };
    const double most = knowledge().ingredient("white-wine")->sulphites->band.high;
    CHECK(sulphites_mg_kg(with_wine(50), knowledge()) == Approx(50 * most / 1000));
    CHECK(!find(allergens_of(with_wine(28), knowledge()), "sulphite")->sure);
    CHECK(codes(*find(allergens_of(with_wine(40), knowledge()), "sulphite")) == Texts{"us"});  // its law lets wine hold more
    const auto enough = allergens_of(with_wine(60), knowledge());
    REQUIRE(find(enough, "sulphite") != nullptr);
    CHECK(find(enough, "sulphite")->from == Texts{"white wine"});
    CHECK(codes(*find(enough, "sulphite")) == Texts{"codex", "eu", "uk", "us"});

    Prediction boiled_down = with_wine(50);
    boiled_down.lines[1].grams = 10;  // loss of weight takes no sulphite away
    CHECK(sulphites_mg_kg(boiled_down, knowledge()) == Approx(50 * most / 960));
}

TEST_CASE("without takes allergens, groups, animals and alcohol") {
    CHECK(carries_named("pistachio", "pistachios"));
    CHECK(carries_named("pine-nut", "nuts"));
    CHECK(carries_named("pine-nut", "Tree Nuts"));
    CHECK(carries_named("peanut", "nuts"));  // who must be without nuts is not given peanuts
    CHECK(carries_named("peanut", "peanuts"));
    CHECK(carries_named("black-walnut", "walnuts"));
    CHECK(carries_named("pinhead-oat", "gluten"));
    CHECK(carries_named("soy-sauce", "gluten"));
    CHECK_FALSE(carries_named("cornstarch", "gluten"));
    CHECK(carries_named("feta", "dairy"));
    CHECK(carries_named("feta", "milk"));
    CHECK(carries_named("egg-white", "eggs"));
    CHECK(carries_named("tofu", "soy"));
    CHECK(carries_named("shrimp", "shellfish"));
    CHECK(carries_named("cod", "fish"));
    CHECK(carries_named("worcestershire-sauce", "fish"));
    CHECK(carries_named("celery-seed", "celery"));
    CHECK(carries_named("tahini", "sesame"));
    CHECK(carries_named("mustard-greens", "mustard"));
    CHECK(carries_named("lupin-flour", "lupin"));
    CHECK(carries_named("white-wine", "sulfites"));
    CHECK(carries_named("white-wine", "alcohol"));
    CHECK_FALSE(carries_named("white-wine-vinegar", "alcohol"));
    CHECK(carries_named("pork-backfat", "pork"));
    CHECK(carries_named("lard", "pork"));
    CHECK(carries_named("gelatin", "pork"));
    CHECK(carries_named("chicken-stock", "poultry"));
    CHECK_FALSE(carries_named("cornsalad", "lamb"));
    CHECK_FALSE(carries_named("pork-shoulder", "beef"));
    CHECK_FALSE(carries_named("goat-cheese", "goat"));
    CHECK(carries_named("spinach", "spinach") == false);
}

TEST_CASE("what is no exclusion word is left to the names of ingredients") {
    for (const auto* word :
         {"nuts", "tree nuts", "pistachio", "gluten", "dairy", "eggs", "oats", "pork", "poultry", "alcohol", "sulphites", "brazil nut"}) {
        INFO(word);
        CHECK(kind_named(word, knowledge()) != nullptr);
    }
    for (const auto* word : {"spinach", "", "nutmeg", "eggplant", "cilantro"}) {
        INFO(word);
        CHECK(kind_named(word, knowledge()) == nullptr);
    }
}

TEST_CASE("all of safety is filled in at once, with or without a rule set") {
    for (const auto* rules : {"", "us", "uk", "eu", "codex", "none-such"}) {
        INFO(rules);
        Prediction p = mixture({{"pork-shoulder", 900}, {"pistachio", 60}, {"spinach", 60}}, "green sausage");
        mark_safety(p, Formula{}, knowledge(), rules);
        CHECK(p.allergens.size() == 1);
        CHECK(p.label == "pork shoulder, PISTACHIO, spinach");
        CHECK(std::any_of(p.cautions.begin(), p.cautions.end(), [](const CautionText& c) { return c.id == "defer"; }));
    }
}

TEST_CASE("a trace that comes to be declared because the batch weighs a little less is no new allergen") {
    const auto batch = [](double meat, double wine) {
        Prediction p = mixture({{"pork-shoulder", meat}, {"red-wine", wine}});
        p.allergens = allergens_of(p, knowledge());
        return p;
    };
    const auto sure = [](const Prediction& p) {
        return std::any_of(p.allergens.begin(), p.allergens.end(), [](const AllergenText& a) { return a.sure; });
    };
    // The least of the batches in which the same wine is only a trace.
    double meat = 1000;
    while (sure(batch(meat, 100)) && meat < 20000) meat += 20;
    const auto trace = batch(meat, 100), lighter = batch(meat - 20, 100), more = batch(meat, 200);
    REQUIRE(sure(lighter));
    REQUIRE_FALSE(sure(trace));
    CHECK(new_allergens(trace, lighter).empty());
    CHECK(new_allergens(trace, more) == Texts{"sulphite"});
    CHECK(new_allergens(batch(meat, 0.001), lighter) == Texts{"sulphite"});
}

TEST_CASE("what a bought food often holds is told as not sure, after what is sure, and is no new allergen by itself") {
    Records records = knowledge().records();
    for (auto& i : records.ingredients)
        if (i.id == "chicken-stock") i.may_hold = {"celery", "wheat"};
    const Knowledge own(std::move(records));
    Prediction base = mixture({{"pork-shoulder", 900}, {"milk-powder", 20}}, "", own);
    Prediction p = mixture({{"pork-shoulder", 900}, {"chicken-stock", 60}, {"milk-powder", 20}}, "", own);
    mark_safety(base, Formula{}, own, "");
    mark_safety(p, Formula{}, own, "");
    REQUIRE(p.allergens.size() == 3);
    CHECK(p.allergens.front().sure);
    CHECK(p.allergens.front().allergen == "milk");
    CHECK_FALSE(p.allergens[1].sure);
    CHECK(p.allergens[1].from == Texts{"chicken stock"});
    CHECK(new_allergens(base, p).empty());
    const auto fresh = new_cautions(base, p);
    REQUIRE(std::any_of(fresh.begin(), fresh.end(), [](const CautionText& c) { return c.id == "check-label"; }));
}

}  // namespace allergens_test
