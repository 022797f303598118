// What one lever does by itself, by the prediction alone, the advice finds too; and nothing that is shown goes away from what was asked. On
// random masses.
#include <algorithm>
#include <cmath>
#include <functional>
#include <optional>
#include <random>

#include "adapt/goals/wants.hpp"
#include "support/catch.hpp"
#include "support/kitchen.hpp"

using namespace standin;

namespace one_lever_test {

constexpr std::uint64_t cases = 14;

const Engine& engine() {
    static const Engine opened_once = opened(64);
    return opened_once;
}

class Masses {
public:
    explicit Masses(std::uint64_t n) : random_(n * 104729 + 31) {}

    Formula mass() {
        std::vector<Line> lines{line("pork-shoulder", between(1400, 2400)), line("pork-belly", between(200, 900))};
        if (chance(0.5)) lines.push_back(line("pork-backfat", between(100, 500)));
        lines.push_back(line(chance(0.5) ? "rusk" : "breadcrumb", between(60, 380)));
        lines.push_back(line("water", between(120, 600)));
        double meat = 0;
        for (const auto& l : lines) meat += l.ingredient.rfind("pork", 0) == 0 ? l.grams.mid : 0;
        lines.push_back(line("table-salt", std::round((14 + between(0, 8)) / 1000 * meat)));
        lines.push_back(line("white-pepper", 6));
        Formula made = formula(std::move(lines));
        made.process.mixing_min = std::round(between(2, 5));
        made.process.mixed_at_c = 3;
        made.process.rest_h = 12;
        made.process.plate_mm = 8;
        made.process.order = Order::salt_first;
        made.process.core_c = 71.1;
        return made;
    }

private:
    double unit() { return static_cast<double>(random_() >> 11) * 0x1.0p-53; }
    double between(double a, double b) { return std::round(a + (b - a) * unit()); }
    bool chance(double p) { return unit() < p; }
    std::mt19937_64 random_;
};

Line* find(Formula& f, const std::string& id) {
    for (auto& l : f.lines)
        if (l.ingredient == id) return &l;
    return nullptr;
}

struct OneLever {
    const char* what;
    Property property;
    Goal::Kind kind;
    std::function<bool(Formula&)> pull;
};

bool times(Formula& f, const std::string& id, double by) {
    Line* l = find(f, id);
    if (!l) return false;
    l->grams = exactly(by * l->grams.mid);
    return true;
}

const std::vector<OneLever>& pulls() {
    static const std::vector<OneLever> all{
        {"less water", Property::cook_loss_pct, Goal::Kind::at_most, [](Formula& f) { return times(f, "water", 0.6); }},
        {"starch of the list", Property::cook_loss_pct, Goal::Kind::at_most,
         [](Formula& f) {
             f.lines.push_back(line("potato-starch", 40));
             return true;
         }},
        {"more of its crumbs", Property::cook_loss_pct, Goal::Kind::at_most,
         [](Formula& f) { return times(f, "rusk", 1.15) || times(f, "breadcrumb", 1.15); }},
        {"less water", Property::bind, Goal::Kind::at_least, [](Formula& f) { return times(f, "water", 0.6); }},
        {"less of the fat line", Property::fat_pct, Goal::Kind::at_most,
         [](Formula& f) {
             Line* fat = find(f, "pork-backfat");
             if (!fat) return false;
             find(f, "pork-shoulder")->grams = exactly(find(f, "pork-shoulder")->grams.mid + fat->grams.mid / 2);
             return times(f, "pork-backfat", 0.5);
         }},
        {"the leaner meat of the list", Property::fat_pct, Goal::Kind::at_most,
         [](Formula& f) {
             const double half = find(f, "pork-belly")->grams.mid / 2;
             f.lines.push_back(line("pork-loin", half));
             return times(f, "pork-belly", 0.5);
         }},
    };
    return all;
}

bool met_by_first(const AdaptAnswer& answer) {
    return !answer.variants.empty() && std::all_of(answer.variants.front().wants.begin(), answer.variants.front().wants.end(),
                                                   [](const WantResult& w) { return w.met; });
}

double past(const OneLever& lever, double value, double limit) { return lever.kind == Goal::Kind::at_most ? value - limit : limit - value; }

TEST_CASE("random masses: what one lever has at even odds the advice has, and nothing shown goes away from it", "[one-lever][long]") {
    std::size_t asked = 0;
    for (std::uint64_t n = 0; n < cases; ++n) {
        const Formula mass = Masses(n).mass();
        const auto predicted = engine().predict(mass);
        INFO((predicted ? std::string() : predicted.error().message));
        REQUIRE(predicted);
        const Prediction& base = *predicted;
        for (const auto& lever : pulls()) {
            Formula pulled = mass;
            if (!lever.pull(pulled)) continue;
            const double before = base.properties[lever.property].mid;
            const double after = engine().predict(pulled).value().properties[lever.property].mid;
            constexpr double share = 0.9;  // of the way: the draws that decide are those of the middle
            const double limit = before + share * (after - before);
            if (past(lever, before, limit) <= 0.02 * std::abs(before)) continue;  // it moves nothing, or the wrong way
            ++asked;
            AdaptRequest request;
            request.wants = {std::string(info(lever.property).word) + (lever.kind == Goal::Kind::at_most ? "<=" : ">=") +
                             std::to_string(limit)};
            request.have = Inventory{};
            request.have->complete = false;
            for (const auto& l : mass.lines) request.have->items.push_back({l.ingredient, std::nullopt});
            for (const char* food : {"potato-starch", "pork-loin"}) request.have->items.push_back({food, std::nullopt});
            CAPTURE(n, lever.what, request.wants.front(), before, after);
            const auto advised = engine().adapt(mass, request);
            INFO((advised ? std::string() : advised.error().message));
            REQUIRE(advised);
            const AdaptAnswer& answer = *advised;
            CHECK(met_by_first(answer));
            for (const auto& v : answer.variants)
                CHECK(past(lever, v.prediction.properties[lever.property].mid, limit) <= past(lever, before, limit) + 1e-6);
        }
    }
    CHECK(asked > 2 * cases);
}

}  // namespace one_lever_test
