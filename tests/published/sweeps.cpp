// One thing swept, all else kept: signs, corners and limits. The expected signs and the source of each stand in data/sweeps.csv.
#include <cmath>
#include <functional>
#include <map>

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
        {"rest",
         {0, 72,
          [](const Base& b, double x) {
              return made_as(with(sausage(b), "spinach", 150, {"blanched", "squeezed"}), &Process::rest_h, x);
          }}},
    };
    return all;
}

std::vector<State> swept(const std::function<Formula(double)>& at, double from, double to, int steps) {
    std::vector<State> states;
    for (int i = 0; i <= steps; ++i) states.push_back(nominal_state(at(from + (to - from) * i / steps), nominal()));
    return states;
}

std::vector<double> values(const std::vector<State>& states, Property property) {
    std::vector<double> all;
    for (const auto& s : states) all.push_back(s.properties[property]);
    return all;
}

constexpr int steps = 48;

void check_sign(const std::vector<double>& v, const std::string& sign, std::size_t upto) {
    const double size = 1e-9 * (1 + std::abs(v.front()));
    for (std::size_t i = 1; i <= upto; ++i) {
        CAPTURE(i, v[i - 1], v[i]);
        if (sign == "rises") CHECK(v[i] >= v[i - 1] - size);
        if (sign == "falls") CHECK(v[i] <= v[i - 1] + size);
        if (sign == "still") CHECK(v[i] == Approx(v[0]));
    }
    if (sign == "rises") CHECK(v[upto] > v[0]);
    if (sign == "falls") CHECK(v[upto] < v[0]);
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
    Property property;
    std::string sign;
    std::optional<double> upto;
};

std::multimap<std::string, Expected> expectations() {
    std::multimap<std::string, Expected> all;
    for (const auto& c : calibration::cells_of("sweeps.csv")) {
        REQUIRE(c.size() == 5);
        REQUIRE_FALSE(c[4].empty());
        all.emplace(c[0], Expected{property_of(c[1]).value(), c[2], c[3].empty() ? std::nullopt : std::optional(std::stod(c[3]))});
    }
    return all;
}

void check_sweep(const std::string& lever, const std::function<Formula(double)>& at, double from, double to) {
    const auto coarse = swept(at, from, to, steps), dense = swept(at, from, to, 8 * steps), denser = swept(at, from, to, 16 * steps);
    for (const auto& s : coarse) check_limits(s);
    const auto rows = expectations();
    const auto [first, last] = rows.equal_range(lever);
    REQUIRE(first != last);
    for (auto row = first; row != last; ++row) {
        const auto& e = row->second;
        CAPTURE(info(e.property).key, e.sign);
        const auto v = values(coarse, e.property);
        const double share = e.upto ? (*e.upto - from) / (to - from) : 1;
        check_sign(v, e.sign, static_cast<std::size_t>(share * steps));
        check_smooth(values(dense, e.property), values(denser, e.property));
    }
}

TEST_CASE("sweeps of one thing: signs, corners and limits", "[sweeps]") {
    for (const auto& base : bases)
        for (const auto& [name, lever] : levers()) {
            CAPTURE(base.what, name);
            const auto& at = lever.at;
            check_sweep(
                name, [&](double x) { return at(base, x); }, lever.from, lever.to);
        }
}

TEST_CASE("each binder from nothing to 5 %, by when it sets", "[sweeps]") {
    for (const auto& ingredient : knowledge().records().ingredients) {
        const auto& roles = ingredient.roles;
        if (!ingredient.binding || std::find(roles.begin(), roles.end(), Role::binder) == roles.end()) continue;
        if (ingredient.composition.water.mid > 20) continue;
        CAPTURE(ingredient.id);
        // Beside wet paste, where a maker reaches for a binder; on top of the rest, at the same salt.
        const auto at = [&](double x) { return with(with(sausage(bases[0]), "water", 80), ingredient.id, 10 * x); };
        check_sweep((ingredient.binding->swells ? "swelling " : "") + ingredient.binding->sets + " binder", at, 0, 5);
    }
}

}  // namespace sweeps_test
