// What must hold of every kitchen, on random formulas: the general middle said changes nothing, and nothing said makes anything safer.
#include <algorithm>
#include <cmath>
#include <random>

#include "support/cases.hpp"
#include "support/catch.hpp"

using namespace standin;

namespace kitchen_test {

constexpr std::uint64_t cases = 12;

const Engine& engine() {
    static const Engine opened = [] {
        Options options;
        options.draws = 128;
        return std::move(*Engine::open(options));
    }();
    return opened;
}

std::optional<Band> known(const std::string& id, const std::string& what, bool dose) {
    const auto answer = engine().lookup(engine().name_of(id));
    if (answer.matches.empty()) return std::nullopt;
    for (const auto& fact : dose ? answer.matches.front().doses : answer.matches.front().composition)
        if (fact.what == what) return fact.value;
    return std::nullopt;
}

KitchenFact fact(KitchenKind kind, const std::string& food, double mid, double off) {
    KitchenFact one;
    one.kind = kind;
    one.foods = {food};
    one.value = {std::max(0.0, mid - off), mid, mid + off};
    one.written = food;
    return one;
}

// `times` of the general middle of all that a kitchen can know of the foods.
Kitchen kitchen_of(const Formula& formula, double times) {
    Kitchen kitchen{"kitchen.txt", {}, {}};
    for (const auto& line : formula.lines) {
        const auto& id = line.ingredient;
        const bool seen = std::any_of(kitchen.facts.begin(), kitchen.facts.end(), [&](const auto& f) { return f.foods.front() == id; });
        if (seen) continue;
        const auto ph = known(id, "ph", true), heat = known(id, "capsaicinoids", true), fat = known(id, "fat_g", false);
        if (ph && ph->mid < 7) kitchen.facts.push_back(fact(KitchenKind::ph, id, std::min(7.0, ph->mid * std::pow(times, 0.2)), 0.08));
        if (heat && heat->mid > 0) kitchen.facts.push_back(fact(KitchenKind::heat, id, heat->mid * times, heat->mid * times * 0.2));
        if (fat && fat->mid > 1 && fat->mid < 90) kitchen.facts.push_back(fact(KitchenKind::fat, id, std::min(95.0, fat->mid * times), 1));
    }
    return kitchen;
}

TEST_CASE("random formulas: a kitchen that says the general middle leaves the middle where it is", "[kitchen]") {
    for (std::uint64_t n = 0; n < cases; ++n) {
        CAPTURE(n);
        const Formula formula = CaseMaker(n).formula();
        const Prediction before = engine().predict(formula).value();
        const Prediction after = engine().with_kitchen(kitchen_of(formula, 1)).value().predict(formula).value();
        for_each_property([&](Property property) {
            const Band& was = before.properties[property];
            const Band& is = after.properties[property];
            CAPTURE(info(property).key, was.low, was.mid, was.high, is.mid);
            CHECK(after.nominal[property] == Approx(before.nominal[property]).margin(1e-6));
            CHECK(is.mid == Approx(was.mid).margin(0.15 * (was.high - was.low) + 1e-6));
        });
    }
}

TEST_CASE("random formulas: no kitchen takes away a caution, an allergen or heat of the core", "[kitchen]") {
    for (std::uint64_t n = 0; n < cases; ++n)
        for (const double times : {0.5, 1.6}) {
            CAPTURE(n, times);
            const Formula formula = CaseMaker(n).formula();
            Setting setting;
            setting.rules = "us";
            const Prediction before = engine().predict(formula, setting).value();
            const Prediction after = engine().with_kitchen(kitchen_of(formula, times)).value().predict(formula, setting).value();
            for (const auto& caution : before.cautions) {
                CAPTURE(caution.id);
                CHECK(std::any_of(after.cautions.begin(), after.cautions.end(), [&](const auto& c) { return c.id == caution.id; }));
            }
            for (const auto& allergen : before.allergens)
                CHECK(std::any_of(after.allergens.begin(), after.allergens.end(),
                                  [&](const auto& a) { return a.allergen == allergen.allergen; }));
            CHECK(after.core >= before.core);
        }
}

}  // namespace kitchen_test
