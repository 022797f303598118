#include "knowledge/packing/flat.hpp"

#include <stdexcept>

#include "knowledge/index/defaults.hpp"
#include "knowledge/readers/reading.hpp"
#include "support/catch.hpp"
#include "support/knowledge.hpp"
#include "support/places.hpp"

using namespace standin;

TEST_CASE("flat and back is the identity on the whole knowledge") {
    const FlatKnowledge once = flatten(knowledge().records());
    const Records back = unflatten(once.numbers.data(), once.numbers.size(), once.text);
    const FlatKnowledge twice = flatten(back);
    CHECK(once.numbers == twice.numbers);
    CHECK(once.text == twice.text);
    CHECK(back.ingredients.size() == knowledge().records().ingredients.size());
    CHECK(back.swaps.size() == knowledge().records().swaps.size());
}

TEST_CASE("the embedded knowledge is what stands in the folder") {
    KnowledgeFiles files = read_knowledge_folder(knowledge_folder());
    REQUIRE(files.errors.empty());
    fill_defaults(files.records);  // as any knowledge does when it is made
    const FlatKnowledge read = flatten(files.records), embedded = flatten(knowledge().records());
    CHECK(read.numbers == embedded.numbers);
    CHECK(read.text == embedded.text);
}

TEST_CASE("every field goes there and back") {
    Records r;
    Ingredient i;
    i.id = "id";
    i.names = {"one", "", "tw\xC3\xB6"};
    i.roles = {Role::sweet, Role::lean};
    i.tissue = Tissue::egg;
    i.composition.fibre = Band{1, 2, 3};
    i.composition.exception = "why";
    i.sulphites = Quantity{{1, 2, 3}, "mg/kg", "s"};
    i.may_hold = {"wheat", "celery"};
    i.most_g_per_kg = Quantity{{1, 2, 3}, "g/kg", "s"};
    i.acidity.emplace();
    i.acidity->acids = {{Acid::phosphoric, 0.25}};
    i.meat = MeatRecord{Species::crustacean, {{1, 2, 3}, "1", "s"}, {{4, 5, 6}, "1", "t"}};
    i.binding = BindingRecord{{{1, 2, 3}, "g/g", "s"}, {{0, 0, 0}, "g/g", "s"}, "hot", "sets", Quantity{{0.2, 0.5, 0.8}, "1", "s"}};
    i.tint = TintRecord{0.1, 0.2, 0.3, 0.5, TintBands{0.4, 0.5, 0.6}, "s"};
    i.measures = {{"cup", "chopped", {1, 2, 3}, "s"}};
    i.season = {1, 12};
    r.ingredients = {i, Ingredient{}};
    Swap s;
    s.derived = true;
    s.ratio = Quantity{{0.1, 1.0 / 3, 1e300}, "g/g", "s"};
    s.partner = SwapPartner{"partner", "why", {"ground"}, {{0.1, 0.2, 0.3}, "g/g", "s"}};
    s.most_share = 0.5;
    s.trade = true;
    r.swaps = {s};
    Preparation p;
    p.order = -3;
    p.minutes = 0.5;
    PreparationEffect effect;
    effect.tissues = {Tissue::paste};
    effect.yield = {{std::nullopt, {1, 1, 1}}, {2.0, {0, 1, 2}}};
    effect.kept = {{Kept::binding, {}}};
    effect.adds_salt = 0.1;
    effect.source = "s";
    p.effects = {effect};
    r.preparations = {p};
    WantRecord w{"w", "", "s", {{"bind", true, 1.5, 2.0, std::nullopt}}, {"other"}};
    r.wants = {w};
    r.allergens = {{"egg", "egg", {"egg", "eggs"}}};
    RuleSet rules;
    rules.code = "x";
    rules.cautions = {{"c", "t", "s", {IngredientBears{"w"}, PropertyBeyond{Property::ph, true, 5.5}, CoreBelowRule{}, WarmsTooSlowly{}}}};
    rules.making = {{"m", "t", "s", ProcessField::rest_at, 4.4, {SpeciesInside{"poultry"}}}};
    rules.meat_word = {{{Species::pork}, 30, "s"}};
    rules.wine_sulphites = Quantity{{350, 350, 350}, "mg/kg", "s"};
    rules.hot_holding = Quantity{{63, 63, 63}, "C", "s"};
    r.rules = {rules};

    const FlatKnowledge flat = flatten(r);
    const Records back = unflatten(flat.numbers.data(), flat.numbers.size(), flat.text);
    REQUIRE(back.ingredients.size() == 2);
    const Ingredient& j = back.ingredients.front();
    CHECK(j.names == i.names);
    CHECK(j.roles == i.roles);
    CHECK(j.tissue == Tissue::egg);
    CHECK(*j.composition.fibre == Band{1, 2, 3});
    CHECK_FALSE(j.composition.sugars);
    CHECK(j.composition.exception == "why");
    CHECK(j.sulphites->source == "s");
    CHECK(j.may_hold == i.may_hold);
    CHECK(j.most_g_per_kg->band == Band{1, 2, 3});
    CHECK_FALSE(j.chlorophyll);
    CHECK(j.acidity->acids.front().share == 0.25);
    CHECK(j.meat->species == Species::crustacean);
    CHECK(j.meat->bind.band == Band{4, 5, 6});
    CHECK(j.binding->sets == "hot");
    CHECK(j.binding->gel == "sets");
    CHECK(j.binding->swells->band.mid == 0.5);
    CHECK(j.tint->fades == 0.5);
    CHECK(j.tint->blue == 0.3);
    CHECK(j.measures.front().note == "chopped");
    CHECK(j.season == i.season);
    CHECK(back.swaps.front().derived);
    CHECK(back.swaps.front().ratio->band == s.ratio->band);
    REQUIRE(back.swaps.front().partner);
    CHECK(back.swaps.front().partner->ingredient == "partner");
    CHECK(back.swaps.front().partner->prepared == s.partner->prepared);
    CHECK(back.swaps.front().partner->ratio.band == s.partner->ratio.band);
    CHECK(back.swaps.front().most_share == 0.5);
    CHECK(back.swaps.front().trade);
    CHECK(back.preparations.front().order == -3);
    CHECK(back.preparations.front().effects.front().yield[1].value == Band{0, 1, 2});
    CHECK_FALSE(back.preparations.front().effects.front().yield[0].minutes);
    CHECK(back.wants.front().moves.front().times);
    CHECK(*back.wants.front().moves.front().least == 2);
    CHECK_FALSE(back.wants.front().moves.front().most);
    CHECK(back.allergens.front().words == r.allergens.front().words);
    CHECK(back.rules.front().cautions.front().when == rules.cautions.front().when);
    CHECK(back.rules.front().making.front().when == rules.making.front().when);
    CHECK(back.rules.front().making.front().most == 4.4);
    CHECK(back.rules.front().meat_word.front().most_fat_pct == 30);
    CHECK(back.rules.front().wine_sulphites->band.mid == 350);
    CHECK(back.rules.front().hot_holding->band.mid == 63);
    CHECK(back.wants.front().also == std::vector<std::string>{"other"});
}

TEST_CASE("flat knowledge that does not fit its layout is a broken build") {
    const FlatKnowledge flat = flatten(knowledge().records());
    CHECK_THROWS_AS(unflatten(flat.numbers.data(), flat.numbers.size() - 1, flat.text), std::logic_error);
    auto longer = flat.numbers;
    longer.push_back(0);
    CHECK_THROWS_AS(unflatten(longer.data(), longer.size(), flat.text), std::logic_error);
}
