#include "evaluate/predict.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>

#include "knowledge/index/effects.hpp"
#include "models/composition.hpp"
#include "standin/narrate.hpp"
#include "support/catch.hpp"
#include "support/kitchen.hpp"

using namespace standin;

namespace predict_test {

constexpr Amount parts[] = {Amount::water, Amount::protein, Amount::fat, Amount::carbohydrate, Amount::ash, Amount::alcohol, Amount::salt};
constexpr Amount solids[] = {Amount::protein, Amount::fat, Amount::carbohydrate, Amount::ash};

// Every amount that can never be below nothing (strong ions are a difference and may).
/// Ions of either charge, and what cooking takes of a colour that it darkens.
bool may_be_negative(std::size_t amount) {
    for (const auto may : {Amount::strong_ions, Amount::fading_red, Amount::fading_green, Amount::fading_blue})
        if (amount == static_cast<std::size_t>(may)) return true;
    return false;
}

double sum_of(const Material& m) {
    double sum = 0;
    for (const auto part : parts) sum += m[part];
    return sum;
}

Engine engine(std::uint64_t seed = 1, std::size_t draws = 128) {
    Options options;
    options.seed = seed;
    options.draws = draws;
    auto opened = Engine::open(options);
    REQUIRE(opened);
    return std::move(*opened);
}

const char* hedge_text = R"(Hedge row
2 kg pork shoulder
400 g pork backfat
300 g spinach, blanched 3 min, squeezed
60 g flat-leaf parsley
40 g serrano, seeded
60 g cider vinegar
25 g garlic
45 g table salt)";

Formula hedge(const Engine& with) {
    auto read = with.read_formula(hedge_text, "hedge");
    REQUIRE(read);
    return std::move(*read);
}

void check_same(const Prediction& a, const Prediction& b, double epsilon = 1e-9) {
    for_each_property([&](Property p) {
        CAPTURE(info(p).key);
        CHECK(a.properties[p].low == Approx(b.properties[p].low).epsilon(epsilon).margin(1e-9));
        CHECK(a.properties[p].mid == Approx(b.properties[p].mid).epsilon(epsilon).margin(1e-9));
        CHECK(a.properties[p].high == Approx(b.properties[p].high).epsilon(epsilon).margin(1e-9));
    });
    CHECK(a.rested.lab.a == Approx(b.rested.lab.a).margin(1e-6));
    CHECK(a.cooked.lab.L == Approx(b.cooked.lab.L).margin(1e-6));
}

TEST_CASE("where a width is named, it is told that it moves no figure of the cook loss") {
    const auto told = [](std::optional<double> width, Cook cook) {
        Formula f = formula({line("pork-shoulder", 1000), line("table-salt", 17)});
        f.process.diameter_mm = width;
        f.process.cook = cook;
        const Prediction p = predict_formula(f, Evaluator(knowledge(), 16, 1));
        return std::any_of(p.notes.begin(), p.notes.end(), [](const Reason& r) { return r.kind == ReasonKind::shape_unknown; });
    };
    for (const Cook cook : {Cook::pan, Cook::grill, Cook::oven}) {
        CHECK(told(20, cook));
        CHECK_FALSE(told(std::nullopt, cook));
    }
    CHECK_FALSE(told(32, Cook::poach));
    CHECK(in_full(make_reason(ReasonKind::shape_unknown)).find("no measurement with their width was found") != std::string::npos);
}

TEST_CASE("the parts of a gram add up to it, whatever is done to it, and none is below nothing") {
    Draws draws(64, 3);
    const auto acid = draw_parameters(knowledge(), acid_bindings(), draws);
    std::size_t forms = 0, negative = 0, unbalanced = 0;
    std::map<std::string, std::string> faults;  // what is wrong, and the first food it was seen in
    const auto look = [&](const Ingredient& ingredient, const std::vector<Prepared>& prepared, bool after) {
        const auto units = unit_materials({ingredient, prepared, after, 3}, knowledge(), acid, draws);
        ++forms;
        const std::string how = ingredient.id + (prepared.empty() ? "" : ", " + prepared.front().preparation);
        // Acid has no grams of its own among the amounts: where there is some the parts fall short by what is left of it.
        const double acid = ingredient.composition.acid.mid / 100;
        for (const auto& m : units) {
            const double gap = m[Amount::mass] - sum_of(m);
            const bool fits = gap > -1e-9 && gap <= 1e-9 + (after || !prepared.empty() ? 4 : 1.1) * acid;
            if (!fits) faults.try_emplace("does not add up", how);
            unbalanced += !fits;
            for (std::size_t a = 0; a < material_size; ++a) {
                const double value = a < amount_count     ? m[static_cast<Amount>(a)]
                                     : a < species_offset ? m[static_cast<Acid>(a - acid_offset)]
                                                          : 0;
                if (may_be_negative(a) || value >= -1e-12) continue;
                ++negative;
                faults.try_emplace("amount " + std::to_string(a) + " below nothing", how);
            }
        }
    };
    for (const auto& ingredient : knowledge().records().ingredients) {
        look(ingredient, {}, false);
        for (const auto& preparation : knowledge().records().preparations) {
            if (!effect_on(preparation, ingredient.tissue)) continue;
            look(ingredient, {{preparation.id, std::nullopt}}, false);
            look(ingredient, {{preparation.id, 7.0}}, true);
        }
    }
    WARN("forms of food looked at: " << forms);
    CHECK(forms > 5000);
    for (const auto& [fault, food] : faults) UNSCOPED_INFO(fault + ": " + food);
    CHECK(unbalanced + negative == 0);
}

TEST_CASE("a gram weighed after preparation weighs a gram") {
    Draws draws(16, 3);
    const auto acid = draw_parameters(knowledge(), acid_bindings(), draws);
    const Prepared steps[] = {{"blanched", 3.0}, {"squeezed", std::nullopt}};
    for (const auto& m : unit_materials({*knowledge().ingredient("spinach"), steps, true, 1}, knowledge(), acid, draws))
        CHECK(m[Amount::mass] == Approx(1));
}

TEST_CASE("no preparation makes solids, fat or green out of nothing, in any draw") {
    Draws draws(256, 5);
    const auto acid = draw_parameters(knowledge(), acid_bindings(), draws);
    std::size_t more = 0;
    std::set<std::string> which;
    for (const auto& ingredient : knowledge().records().ingredients) {
        const auto raw = unit_materials({ingredient, {}, false, 1}, knowledge(), acid, draws);
        for (const auto& preparation : knowledge().records().preparations) {
            if (!effect_on(preparation, ingredient.tissue)) continue;
            const Prepared step[] = {{preparation.id, std::nullopt}};
            const auto done = unit_materials({ingredient, step, false, 1}, knowledge(), acid, draws);
            for (std::size_t i = 0; i < raw.size(); ++i)
                for (const auto part : solids)
                    if (done[i][part] > raw[i][part] * (1 + 1e-9) + 1e-12) {
                        ++more;
                        which.insert(preparation.id + " " + std::string(spelling(ingredient.tissue)));
                    }
        }
    }
    std::string names;
    for (const auto& name : which) names += name + "; ";
    CAPTURE(names);
    CHECK(more == 0);
}

TEST_CASE("masses, fat and salt of a batch are those of its lines, by hand") {
    // Nothing prepared: middle percentages are plain sums over the records.
    const std::vector<std::pair<const char*, double>> lines{{"pork-shoulder", 2000}, {"pork-backfat", 400}, {"parsley", 60},
                                                            {"table-salt", 45},      {"cider-vinegar", 60}, {"garlic", 25}};
    std::vector<Line> made;
    double mass = 0, fat = 0, salt = 0, meat = 0, meat_fat = 0, protein = 0, water = 0;
    for (const auto& [id, grams] : lines) {
        const Ingredient* i = knowledge().ingredient(id);
        REQUIRE(i);
        made.push_back(line(id, grams));
        const Composition& c = i->composition;
        mass += grams;
        fat += grams * c.fat.mid / 100;
        salt += grams * c.salt.mid / 100;
        protein += grams * c.protein.mid / 100;
        water += grams * c.water.mid / 100;
        if (!i->meat) continue;
        meat += grams;
        meat_fat += grams * c.fat.mid / 100;
    }
    const State state = nominal_state(formula(made), nominal());
    CHECK(state.properties[Property::fat_pct] == Approx(100 * fat / mass));
    CHECK(state.properties[Property::salt_pct] == Approx(100 * salt / mass));
    CHECK(state.properties[Property::salt_pct_of_meat] == Approx(100 * salt / meat));
    CHECK(state.properties[Property::fat_pct_of_meat] == Approx(100 * meat_fat / meat));
    CHECK(state.properties[Property::protein_pct] == Approx(100 * protein / mass).epsilon(0.002));
    CHECK(state.properties[Property::water_pct] ==
          Approx(100 * water / mass).epsilon(0.005));  // the table's rows do not quite add up to 100
}

TEST_CASE("the batch does not depend on the order of its lines") {
    Engine one = engine();
    Formula f = hedge(one);
    const Prediction before = one.predict(f).value();
    std::reverse(f.lines.begin(), f.lines.end());
    const Prediction after = one.predict(f).value();
    check_same(before, after);
    CHECK(after.batch_g == Approx(before.batch_g));
    CHECK(after.meat_g == Approx(before.meat_g));
}

TEST_CASE("half of everything is the same sausage") {
    Engine one = engine();
    Formula f = hedge(one);
    for (auto& l : f.lines) l.count = 3;  // the number of pods decides how far their heat averages out: hold it
    const Prediction before = one.predict(f).value();
    for (auto& l : f.lines) l.grams = scaled(l.grams, 0.5);
    const Prediction after = one.predict(f).value();
    check_same(before, after, 1e-7);
    CHECK(after.batch_g == Approx(before.batch_g / 2));
}

TEST_CASE("the same seed gives the same answer, another one nearly") {
    Engine a = engine(1, 512), b = engine(1, 512), c = engine(2, 512);
    const Formula f = hedge(a);
    const Prediction first = a.predict(f).value();
    check_same(first, a.predict(f).value(), 1e-15);
    check_same(first, b.predict(f).value(), 1e-15);
    const Prediction other = c.predict(f).value();
    CHECK(other.properties[Property::ph].low != first.properties[Property::ph].low);  // the likely value is no draw
    CHECK(other.properties[Property::ph].mid == Approx(first.properties[Property::ph].mid).margin(0.03));
    CHECK(other.properties[Property::fat_pct].mid == Approx(first.properties[Property::fat_pct].mid).epsilon(0.03));
}

TEST_CASE("a line in two halves is one line") {
    Engine one = engine();
    Formula f = hedge(one);
    const Prediction before = one.predict(f).value();
    Line half = f.lines[2];
    half.grams = f.lines[2].grams = scaled(half.grams, 0.5);
    f.lines.push_back(half);
    check_same(before, one.predict(f).value());
}

TEST_CASE("a formula written as JSON and read again gives the same prediction") {
    Engine one = engine();
    const Formula f = hedge(one);
    const auto again = one.read_formula(one.formula_json(f), "again");
    REQUIRE(again);
    check_same(one.predict(f).value(), one.predict(*again).value());
}

TEST_CASE("a formula that is no sausage is refused") {
    Engine one = engine();
    CHECK_FALSE(one.predict(formula({})));
    CHECK_FALSE(one.predict(formula({line("spinach", 100), line("table-salt", 2)})));
    CHECK_FALSE(one.predict(formula({line("spinach", 1000), line("pork-shoulder", 100)})));
    CHECK(one.predict(formula({line("pork-shoulder", 100)})));
}

}  // namespace predict_test
