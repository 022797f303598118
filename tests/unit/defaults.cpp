// What a food takes from its kind where nothing of its own is on record.
#include "knowledge/index/defaults.hpp"

#include <algorithm>

#include "support/catch.hpp"
#include "support/knowledge.hpp"

using namespace standin;

namespace defaults_test {

const Ingredient& food(const char* id) { return *knowledge().ingredient(id); }

Ingredient plain_leaf() {
    Ingredient i;
    i.id = "leaf";
    i.roles = {Role::green};
    i.tissue = Tissue::thin_leaf;
    i.composition.water = {90, 90, 90};
    i.composition.protein = {3, 3, 3};
    i.composition.ash = {2, 2, 2};
    i.composition.sodium_mg = Band{200, 200, 200};
    return i;
}

Records with_rules(Ingredient i) {
    Records r;
    r.parameters = knowledge().records().parameters;
    r.ingredients.push_back(std::move(i));
    fill_defaults(r);
    return r;
}

double constant(const char* id) { return knowledge().parameter(id).mid; }

TEST_CASE("a leaf takes its green, its pH and its buffering from the rules of its kind", "[defaults]") {
    const Records filled = with_rules(plain_leaf());
    const Ingredient& i = filled.ingredients.front();
    REQUIRE((i.chlorophyll && i.acidity && i.acidity->ph && i.acidity->buffer));
    CHECK(i.chlorophyll->band == knowledge().parameter("colour.leaf.chlorophyll"));
    CHECK(i.acidity->ph->band == knowledge().parameter("acid.ph.plant"));
    const double minerals = 2 - 0.2 * 2.542;  // common salt is no buffer
    CHECK(i.acidity->buffer->band.mid == Approx(3 * constant("acid.buffer.protein") + minerals * constant("acid.buffer.ash")));
    CHECK(knowledge().source(i.acidity->buffer->source) != nullptr);
}

TEST_CASE("what stands on record goes before the rule, and without rules nothing is filled", "[defaults]") {
    Ingredient own = plain_leaf();
    own.chlorophyll = Quantity{{1, 2, 3}, "mg/kg", "judgement"};
    own.acidity.emplace();
    own.acidity->ph = Quantity{{4, 5, 6}, "pH", "judgement"};
    own.acidity->buffer = Quantity{{7, 8, 9}, "mmol/(pH kg)", "judgement"};
    const Ingredient kept = with_rules(own).ingredients.front();
    CHECK(kept.chlorophyll->band == Band{1, 2, 3});
    CHECK(kept.acidity->ph->band == Band{4, 5, 6});
    CHECK(kept.acidity->buffer->band == Band{7, 8, 9});

    Records bare;
    bare.ingredients.push_back(plain_leaf());
    fill_defaults(bare);
    CHECK_FALSE(bare.ingredients.front().chlorophyll);
    CHECK_FALSE(bare.ingredients.front().acidity);
}

TEST_CASE("an acid source keeps its titration and gets no second buffer", "[defaults]") {
    CHECK_FALSE(food("lemon-juice").acidity->buffer);
    CHECK(food("lemon-juice").acidity->titratable);
}

TEST_CASE("meat takes pH, buffering and bind by its animal, fat tissue by what it is", "[defaults]") {
    const Ingredient& venison = food("venison");
    CHECK(venison.acidity->ph->source == "deer-ph");
    CHECK(food("elk").acidity->ph->band == knowledge().parameter("acid.ph.game"));
    CHECK(venison.meat->buffer_scale.band == knowledge().parameter("acid.scale.other"));
    CHECK(venison.meat->bind.band == knowledge().parameter("bind.index.lean"));
    CHECK(food("pork-backfat").meat->buffer_scale.band == knowledge().parameter("acid.scale.fat-tissue"));
    CHECK_FALSE(food("venison").acidity->buffer);
    CHECK(food("pork-shoulder").acidity->ph->source == "pork-butt-ph");
}

TEST_CASE("every meat and every binder has all its figures, with a source that is known", "[defaults]") {
    for (const auto& i : knowledge().records().ingredients) {
        INFO(i.id);
        if (i.meat) {
            REQUIRE((i.acidity && i.acidity->ph));
            CHECK(knowledge().source(i.meat->buffer_scale.source));
            CHECK(knowledge().source(i.meat->bind.source));
        }
        if (!i.binding) continue;
        CHECK(knowledge().source(i.binding->water.source));
        CHECK(knowledge().source(i.binding->fat.source));
    }
}

TEST_CASE("a binder holds by its solids, a spoon by its teaspoons", "[defaults]") {
    const Ingredient& rice = food("rice-cooked");
    const double solids = (100 - rice.composition.water.mid - rice.composition.fat.mid) / 100;
    CHECK(rice.binding->water.band.mid == Approx(constant("bind.held.water") * solids));
    for (const auto& i : knowledge().records().ingredients) {
        const auto spoon = [&](const char* word) {
            return std::find_if(i.measures.begin(), i.measures.end(), [&](const auto& m) { return m.measure == word && m.note.empty(); });
        };
        INFO(i.id);
        if (spoon("tsp") != i.measures.end())
            CHECK(std::any_of(i.measures.begin(), i.measures.end(), [](const auto& m) { return m.measure == "tbsp"; }));
    }
}

TEST_CASE("pods spread by the rule, powders do not; weight goes for weight", "[defaults]") {
    CHECK(food("serrano").pod_sigma->band == knowledge().parameter("heat.spread.pods"));
    CHECK(food("serrano").lot_sigma->band == knowledge().parameter("heat.spread.lots"));
    CHECK_FALSE(food("cayenne-powder").pod_sigma);
    CHECK_FALSE(food("bell-green").pod_sigma);
    for (const auto& s : knowledge().records().swaps) {
        INFO(s.from << " > " << s.to);
        if (s.basis == Basis::weight) CHECK(s.ratio);
    }
}

TEST_CASE("milk holds by its solids, curd by its own figure", "[defaults]") {
    const Ingredient& milk = food("whole-milk");
    const double solids = (100 - milk.composition.water.mid - milk.composition.fat.mid) / 100;
    CHECK(milk.binding->water.band.mid == Approx(constant("bind.held.milk") * solids));
    CHECK(food("whey-protein-isolate").binding->water.band.mid > food("milk-powder").binding->water.band.mid);
    CHECK(food("ricotta").binding->water.source == "binding-by-dry-matter");
}

TEST_CASE("a fresh herb is its own measure, a jar nearly, a dried leaf by the rule of spoons", "[defaults]") {
    CHECK(food("parsley").strength->band == Band{1, 1, 1});
    CHECK(food("prepared-mustard").strength->band == knowledge().parameter("aroma.strength.jar"));
    CHECK(food("dried-oregano").strength->band == knowledge().parameter("aroma.strength.dried-leaf"));
    CHECK(food("dried-thyme").strength->source == "herb-dry-and-spoon");
    CHECK_FALSE(food("cayenne-powder").strength);
    CHECK_FALSE(food("pork-shoulder").strength);
}

}  // namespace defaults_test
