// One thing swept, all else kept: signs, corners and limits. The expected signs and the source of each stand in data/sweeps.csv.
#include <algorithm>
#include <cmath>
#include <functional>
#include <map>
#include <string_view>

#include "evaluate/batch.hpp"
#include "models/colour.hpp"
#include "published/calibration_rows.hpp"
#include "support/catch.hpp"
#include "support/kitchen.hpp"

using namespace standin;

namespace sweeps_test {

using Make = std::function<Formula(double)>;

struct Base {
    const char* what;
    const char* lean;
    const char* fat;
};

constexpr Base bases[] = {{"pork", "pork-leg-lean", "pork-backfat"},
                          {"beef", "beef-chuck-lean", "beef-suet"},
                          {"chicken", "chicken-thigh-skinless", "chicken-fat-raw"},
                          {"goat", "goat", "pork-backfat"}};

Formula sausage(const Base& base, double fat_share = 0.25, double salt_g = 17) {
    Formula f = formula({line(base.lean, 1000 * (1 - fat_share)), line(base.fat, 1000 * fat_share), line("table-salt", salt_g)});
    f.process = {5, 3, 4, 12, 3, 71, 30, {}, Order::salt_first, Cook::pan};
    return f;
}

Formula with(Formula f, const std::string& food, double grams, std::vector<std::string> prepared = {}) {
    f.lines.push_back(line(food, grams, std::move(prepared)));
    return f;
}

Formula made_as(Formula f, std::optional<double> Process::*part, double value) {
    f.process.*part = value;
    return f;
}

Formula poached(Formula f) {
    f.process.cook = Cook::poach;
    return f;
}

/// Oil in place of the fat and of some of the lean, at the same salt.
Formula oiled(const Base& base, double oil_pct, const char* fat = "olive-oil") {
    Formula f = formula({line(base.lean, 1000 - 10 * oil_pct), line(fat, 10 * oil_pct), line("table-salt", 17)});
    f.process = {5, 3, 4, 12, 3, 71, 30, {}, Order::salt_first, Cook::pan};
    if (oil_pct <= 0) f.lines.erase(f.lines.begin() + 1);
    return f;
}

struct Lever {
    double from, to;
    std::function<Formula(const Base&, double)> at;
};

const std::map<std::string, Lever>& levers() {
    static const std::map<std::string, Lever> all{
        {"vinegar", {0, 10, [](const Base& b, double x) { return with(sausage(b), "distilled-vinegar", 10 * x); }}},
        {"salt", {0, 3, [](const Base& b, double x) { return sausage(b, 0.25, 1000 * x / (100 - x)); }}},
        {"paste",
         {0, 60,
          [](const Base& b, double x) {
              return with(sausage(b), "spinach", 1000 * x / (100 - x), {"blanched", "squeezed"});
          }}},
        {"fat", {0, 50, [](const Base& b, double x) { return sausage(b, x / 100); }}},
        {"mixing", {0, 12, [](const Base& b, double x) { return made_as(sausage(b), &Process::mixing_min, x); }}},
        {"temperature", {-6, 25, [](const Base& b, double x) { return made_as(sausage(b), &Process::mixed_at_c, x); }}},
        {"core", {55, 95, [](const Base& b, double x) { return made_as(sausage(b), &Process::core_c, x); }}},
        {"poached core", {63, 95, [](const Base& b, double x) { return poached(made_as(sausage(b), &Process::core_c, x)); }}},
        {"poached salt", {0, 3, [](const Base& b, double x) { return poached(sausage(b, 0.25, 1000 * x / (100 - x))); }}},
        {"poached vinegar", {0, 10, [](const Base& b, double x) { return poached(with(sausage(b), "distilled-vinegar", 10 * x)); }}},
        {"poached binder", {0, 5, [](const Base& b, double x) { return poached(with(sausage(b), "soy-protein-isolate", 10 * x)); }}},
        {"oil", {0, 50, [](const Base& b, double x) { return oiled(b, x); }}},
        {"water", {0, 25, [](const Base& b, double x) { return with(sausage(b), "water", 10 * x); }}},
        {"onion", {0, 40, [](const Base& b, double x) { return with(sausage(b), "onion", 10 * x); }}},
        {"herb", {0, 30, [](const Base& b, double x) { return with(sausage(b), "parsley", 1000 * x / (100 - x)); }}},
        {"sour paste",
         {0, 10,
          [](const Base& b, double x) {
              return with(made_as(with(sausage(b), "spinach", 150, {"blanched", "squeezed"}), &Process::rest_h, 24), "distilled-vinegar",
                          10 * x);
          }}},
        {"rest",
         {0, 72,
          [](const Base& b, double x) {
              return made_as(with(sausage(b), "spinach", 150, {"blanched", "squeezed"}), &Process::rest_h, x);
          }}},
    };
    return all;
}

struct Made {
    State state;
    BatchColour colour;
};

Made made(const Formula& f) {
    const NominalBatch batch(f, nominal());
    const Models& models = nominal().models();
    return {batch.state(), models.colour(batch.total(), models.ph(batch.total()), batch.process())};
}

std::vector<Made> swept(const std::function<Formula(double)>& at, double from, double to, int steps) {
    std::vector<Made> all;
    for (int i = 0; i <= steps; ++i) all.push_back(made(at(from + (to - from) * i / steps)));
    return all;
}

/// A property by its key, or what is seen: lightness raw, and greenness once it has rested, as acid has left it.
double value_of(const Made& m, const std::string& what) {
    if (what == "raw lightness") return m.colour.raw.L;
    if (what == "seen greenness") return std::max(0.0, -m.colour.looks_rested.a);  // what is red is not green
    return m.state.properties[property_of(what).value()];
}

std::vector<double> values(const std::vector<Made>& states, const std::string& what) {
    std::vector<double> all;
    for (const auto& s : states) all.push_back(value_of(s, what));
    return all;
}

constexpr int steps = 48;

void check_sign(const std::vector<double>& v, const std::string& sign, std::size_t from, std::size_t upto) {
    const double size = 1e-9 * (1 + std::abs(v.front()));
    for (std::size_t i = from + 1; i <= upto; ++i) {
        CAPTURE(i, v[i - 1], v[i]);
        if (sign == "rises") CHECK(v[i] >= v[i - 1] - size);
        if (sign == "falls" || sign == "no rise") CHECK(v[i] <= v[i - 1] + size);
        if (sign == "still") CHECK(v[i] == Approx(v[0]));
    }
    if (sign == "rises") CHECK(v[upto] > v[from]);
    if (sign == "falls") CHECK(v[upto] < v[from]);
}

/// The greatest turn between neighbouring steps.
double greatest_turn(const std::vector<double>& v) {
    double most = 0;
    for (std::size_t i = 1; i + 1 < v.size(); ++i) most = std::max(most, std::abs(v[i + 1] - 2 * v[i] + v[i - 1]));
    return most;
}

/// On a grid half as wide a smooth curve turns a quarter as much from step to step, a corner half as much, a jump as much.
void check_smooth(const std::vector<double>& dense, const std::vector<double>& denser) {
    const double turn = greatest_turn(dense);
    if (turn > 1e-3) CHECK(greatest_turn(denser) < 0.42 * turn);
}

void check_limits(const State& s) {
    const auto& p = s.properties;
    for (const Property index : {Property::bind, Property::firmness}) {
        CHECK(p[index] >= 0);
        CHECK(p[index] <= 100);
    }
    CHECK(p[Property::cook_loss_pct] >= 0);
    CHECK(p[Property::cook_loss_pct] <= p[Property::water_pct] + p[Property::fat_pct]);
    CHECK(p[Property::cooked_water_pct] + p[Property::cooked_fat_pct] + p[Property::cooked_protein_pct] <= 100);
    CHECK(p[Property::water_activity] > 0.8);
    CHECK(p[Property::water_activity] < 1);
    CHECK(p[Property::ph] > 3.5);
    CHECK(p[Property::ph] < 7);
}

struct Expected {
    std::string what;
    std::string sign;
    std::optional<double> from, upto;
};

std::multimap<std::string, Expected> expectations() {
    std::multimap<std::string, Expected> all;
    for (const auto& c : calibration::cells_of("sweeps.csv")) {
        REQUIRE(c.size() == 6);
        REQUIRE_FALSE(c[5].empty());
        const auto end = [](const std::string& text) { return text.empty() ? std::nullopt : std::optional(std::stod(text)); };
        all.emplace(c[0], Expected{c[1], c[2], end(c[3]), end(c[4])});
    }
    return all;
}

/// A forty-eighth of a sweep is a step that a maker takes without a thought: it makes no change that is told with ease.
void check_no_cliff(const std::vector<Made>& states) {
    const std::pair<Property, const char*> felt[] = {{Property::bind, "bind"},
                                                     {Property::firmness, "firmness"},
                                                     {Property::cook_loss_pct, "cook_loss_pct"},
                                                     {Property::cooked_water_pct, "water_pct"},
                                                     {Property::cooked_fat_pct, "fat_pct"}};
    for (const auto& [property, yardstick] : felt) {
        const double noticed = knowledge().difference(yardstick)->step.band.mid;
        for (std::size_t i = 1; i < states.size(); ++i) {
            const double before = states[i - 1].state.properties[property], after = states[i].state.properties[property];
            CAPTURE(yardstick, i, before, after);
            CHECK(std::abs(after - before) < 1.2 * noticed);
        }
    }
}

void check_sweep(const std::string& lever, const char* base, const std::function<Formula(double)>& at, double from, double to) {
    const auto coarse = swept(at, from, to, steps), dense = swept(at, from, to, 8 * steps), denser = swept(at, from, to, 16 * steps);
    for (const auto& s : coarse) check_limits(s.state);
    check_no_cliff(coarse);
    const auto rows = expectations();
    const auto [first, last] = rows.equal_range(lever);
    REQUIRE(first != last);
    for (auto row = first; row != last; ++row) {
        const auto own = rows.equal_range(lever + ", " + base);
        const auto differs = std::find_if(own.first, own.second, [&](const auto& one) { return one.second.what == row->second.what; });
        const auto& e = differs == own.second ? row->second : differs->second;
        CAPTURE(e.what, e.sign);
        const auto v = values(coarse, e.what);
        const auto at_step = [&](double x) { return static_cast<std::size_t>(std::lround((x - from) / (to - from) * steps)); };
        check_sign(v, e.sign, at_step(e.from.value_or(from)), at_step(e.upto.value_or(to)));
        check_smooth(values(dense, e.what), values(denser, e.what));
    }
}

TEST_CASE("sweeps of one thing: signs, corners and limits", "[sweeps]") {
    for (const auto& base : bases)
        for (const auto& [name, lever] : levers()) {
            CAPTURE(base.what, name);
            const auto& at = lever.at;
            check_sweep(
                name, base.what, [&](double x) { return at(base, x); }, lever.from, lever.to);
        }
}

TEST_CASE("each binder from nothing to 5 %, by when it sets", "[sweeps]") {
    for (const auto& ingredient : knowledge().records().ingredients) {
        const auto& roles = ingredient.roles;
        if (!ingredient.binding || std::find(roles.begin(), roles.end(), Role::binder) == roles.end()) continue;
        if (ingredient.composition.water.mid > 20) continue;
        for (const auto& base : bases) {
            if (base.what != std::string_view("pork") && base.what != std::string_view("chicken")) continue;
            CAPTURE(ingredient.id, base.what);
            // Beside wet paste, where a maker reaches for a binder; on top of the rest, at the same salt.
            const auto at = [&](double x) { return with(with(sausage(base), "water", 80), ingredient.id, 10 * x); };
            check_sweep((ingredient.binding->swells ? "swelling " : "") + ingredient.binding->sets + " binder", base.what, at, 0, 5);
        }
    }
}

TEST_CASE("the order of salt and acid: salt first, all together, acid first", "[sweeps]") {
    const auto rows = expectations();
    const auto [first, last] = rows.equal_range("order");
    REQUIRE(first != last);
    for (const auto& base : bases) {
        std::vector<Made> made_so;
        for (const Order order : {Order::salt_first, Order::all_together, Order::acid_first}) {
            Formula f = with(sausage(base), "distilled-vinegar", 40);
            f.process.order = order;
            made_so.push_back(made(f));
        }
        for (auto row = first; row != last; ++row) {
            CAPTURE(base.what, row->second.what, row->second.sign);
            check_sign(values(made_so, row->second.what), row->second.sign, 0, made_so.size() - 1);
        }
    }
}

TEST_CASE("firmness follows salt less steeply than bind (Huang 2011)", "[sweeps]") {
    for (const auto& base : bases) {
        CAPTURE(base.what);
        for (double salt = 6; salt < 24; salt += 3) {
            const auto less = made(sausage(base, 0.25, salt)).state.properties, more = made(sausage(base, 0.25, salt + 3)).state.properties;
            CHECK(more[Property::firmness] / less[Property::firmness] < more[Property::bind] / less[Property::bind] + 1e-9);
        }
    }
}

/// Grams of fat that a kilo of meat with its additions loses.
double fat_run(const Formula& f) {
    const NominalBatch batch(f, nominal());
    const auto& p = batch.state().properties;
    const double mass = batch.total()[Amount::mass], cooked = mass * (1 - p[Property::cook_loss_pct] / 100);
    return batch.total()[Amount::fat] - cooked * p[Property::cooked_fat_pct] / 100;
}

TEST_CASE("oil that runs takes no fat of the meat along, however much of it there is", "[sweeps]") {
    for (const auto& base : bases)
        for (const char* fat : {"olive-oil", "lard", "duck-fat", "coconut-oil"})
            for (double oil = 5; oil <= 50; oil += 5) {
                CAPTURE(base.what, fat, oil);
                Formula dry = oiled(base, 0);
                for (auto& l : dry.lines) l.grams = scaled(l.grams, 1 - oil / 100);
                CHECK(fat_run(oiled(base, oil, fat)) <= fat_run(dry) + 10 * oil + 0.5);
                CHECK(made(oiled(base, oil, fat)).state.properties[Property::cook_loss_pct] < 20 + 0.9 * oil + 10);
            }
}

TEST_CASE("oil for the fat of a sausage changes its loss by points, not by tens (soybean-oil-sausage-2017)", "[sweeps]") {
    const auto loss = [](double of_oil) {
        Formula f = formula({line("pork-leg-lean", 750), line("pork-backfat", 250 * (1 - of_oil)), line("table-salt", 17)});
        f.process = {5, 3, 4, 12, 3, 71, 30, {}, Order::salt_first, Cook::pan};
        return made(of_oil > 0 ? with(f, "soybean-oil", 250 * of_oil) : f).state.properties[Property::cook_loss_pct];
    };
    CHECK(std::abs(loss(0.25) / loss(0) - 12.47 / 12.85) < 0.1);
    CHECK(std::abs(loss(0.45) / loss(0) - 14.34 / 12.85) < 0.1);
}

TEST_CASE("hard white fat of beef or lamb leaves pork as light as its own fat does", "[sweeps]") {
    const auto cooked = [](const char* fat, double pct) {
        return made(formula({line("pork-leg-lean", 1000 - 10 * pct), line(fat, 10 * pct), line("table-salt", 17)})).colour;
    };
    for (const char* fat : {"beef-suet", "lamb-fat"})
        for (const double pct : {10.0, 30.0, 50.0}) {
            CAPTURE(fat, pct);
            CHECK(cooked(fat, pct).cooked.L > cooked("pork-backfat", pct).cooked.L - 2);
            CHECK(cooked(fat, pct).raw.L > cooked("pork-backfat", pct > 20 ? pct - 20 : 0.1).raw.L);
        }
}

TEST_CASE("dark foods colour a mass as they are: cacao, blood, liver, berries (sources of their tints)", "[sweeps]") {
    const auto in_pork = [](const char* food, double pct) {
        return made(formula({line("pork-leg-lean", 750 - 7.5 * pct), line("pork-backfat", 250 - 2.5 * pct), line(food, 10 * pct),
                             line("table-salt", 17)}))
            .colour;
    };
    const auto plain = in_pork("water", 0.01), cacao = in_pork("cocoa", 2), blood = in_pork("pork-blood", 22),
               berry = in_pork("blueberry", 20);
    CHECK(plain.cooked.L - cacao.cooked.L > 6);  // 12 in a paler mass: Food Sci Anim Resour 39(5):742, Table 3
    CHECK(blood.cooked.L == Approx(34.5).margin(4));
    CHECK(blood.cooked.a == Approx(17.8).margin(4));
    CHECK(berry.raw.b < 0);
    CHECK(berry.raw.a < 13);
    for (const char* liver : {"pork-liver", "beef-liver", "chicken-liver", "lamb-liver", "duck-liver", "veal-liver"}) {
        CAPTURE(liver);
        const auto c = made(formula({line(liver, 1000), line("table-salt", 17)})).colour;
        CHECK(c.raw.L == Approx(34).margin(4));
        CHECK(c.cooked.L == Approx(49).margin(5));
    }
    const auto breast = made(formula({line("chicken-breast", 1000), line("table-salt", 17)})).colour;
    CHECK(breast.raw.L == Approx(54.3).margin(2));  // chicken-breast-colour
}

TEST_CASE("a gel that comes made binds by its solids: boiled potato, rice and pulses less than dry crumbs", "[sweeps]") {
    const auto bind = [](const char* food) {
        const auto wet = with(sausage(bases[0]), "distilled-vinegar", 20);
        return made(std::string_view(food).empty() ? wet : with(wet, food, 50)).state.properties[Property::bind];
    };
    const double gain = bind("breadcrumb") - bind("");
    for (const char* food : {"potato-cooked", "rice-cooked", "lentil-cooked", "chickpea-cooked", "white-bean-cooked"}) {
        CAPTURE(food, gain, bind(food) - bind(""));
        CHECK(bind(food) - bind("") < 0.6 * gain);
        CHECK(bind(food) > bind("") - 2);
    }
}

TEST_CASE("of one size the oven takes less than the pan at one core, of a loaf more (beef-patty-cookery-2023, oven-against-pan)",
          "[sweeps]") {
    for (const auto& base : bases) {
        CAPTURE(base.what);
        const auto loss = [&](Cook way, double thickness_mm = 30) {
            Formula f = sausage(base);
            f.process.cook = way;
            f.process.diameter_mm = thickness_mm;
            return made(f).state.properties[Property::cook_loss_pct];
        };
        CHECK(loss(Cook::oven) < loss(Cook::pan) - 0.5);
        CHECK(loss(Cook::oven) > loss(Cook::pan) - 3);
        CHECK(loss(Cook::oven, 80) > loss(Cook::oven) + 1);
        CHECK(loss(Cook::oven, 80) < loss(Cook::oven) + 6);
        CHECK(loss(Cook::pan, 80) == Approx(loss(Cook::pan)));
        CHECK(loss(Cook::poach) < loss(Cook::oven));
        CHECK(loss(Cook::grill) > loss(Cook::pan));
    }
}

}  // namespace sweeps_test
