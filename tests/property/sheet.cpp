// The bench sheet of anything: every line is prepared in its own order, goes into the bowl once, and is bought in full.
#include <algorithm>
#include <map>
#include <set>

#include "knowledge/index/effects.hpp"
#include "support/catch.hpp"
#include "support/kitchen.hpp"

using namespace standin;

namespace sheet_test {

Engine& engine() {
    static Engine opened = [] {
        Options options;
        options.draws = 16;
        return Engine::open(options).value();
    }();
    return opened;
}

bool mixes(const SheetStep& step) { return step.id.rfind("mix", 0) == 0; }

void check_one(const Formula& formula) {
    const auto made = engine().sheet(formula, {});
    REQUIRE(made);
    const Sheet& s = *made;
    std::vector<int> in_bowl(formula.lines.size(), 0);
    std::map<std::size_t, double> grams;  // of each line, as the steps before left it
    double bowl = 0;
    for (const auto& step : s.steps) {
        CAPTURE(step.id);
        for (const auto& part : step.parts) {
            if (grams.count(part.line) && step.id != "weigh") CHECK(part.grams_in == Approx(grams[part.line]));
            grams[part.line] = part.grams_out;
            if (mixes(step)) ++in_bowl[part.line];
        }
        if (mixes(step)) bowl = step.grams_out;
        CHECK_FALSE(step.what.empty());
        CHECK_FALSE(step.how.empty());
        CHECK_FALSE(step.why.empty());
    }
    CHECK(std::all_of(in_bowl.begin(), in_bowl.end(), [](int n) { return n == 1; }));
    CHECK(bowl == Approx(s.prediction.batch_g));
    for (const auto& p : s.buy) {
        CHECK(p.bought_g >= p.need_g * (1 - 1e-9));
        for (const auto* shop : {&p.metric, &p.us}) {
            CHECK((!shop->count || *shop->count >= 1));
            CHECK(shop->buy_g >= p.bought_g * (1 - 1e-9));
            CHECK_FALSE(shop->source.empty());
        }
    }
    CHECK(s.weights.size() == formula.lines.size());
    for (const auto& w : s.weights) CHECK(std::abs(w.weigh_g - w.grams) <= w.scale_g / 2 + 1e-9);
}

void check(Formula formula) {
    for (const auto order : {Order::salt_first, Order::all_together, Order::acid_first}) {
        formula.process.order = order;
        check_one(formula);
    }
}

Formula with(Line line) { return formula({::line("pork-shoulder", 1000), ::line("table-salt", 18), std::move(line)}); }

TEST_CASE("every ingredient finds its place on the sheet") {
    for (const auto& ingredient : knowledge().records().ingredients) {
        CAPTURE(ingredient.id);
        check(with(line(ingredient.id, 37)));
    }
}

TEST_CASE("every preparation of every tissue does, weighed before it or after") {
    std::set<std::pair<Tissue, std::string>> seen;
    for (const auto& ingredient : knowledge().records().ingredients)
        for (const auto& preparation : knowledge().records().preparations) {
            if (!effect_on(preparation, ingredient.tissue) || !seen.insert({ingredient.tissue, preparation.id}).second) continue;
            CAPTURE(ingredient.id, preparation.id);
            Line one = line(ingredient.id, 120, {preparation.id});
            check(with(one));
            one.weighed_prepared = true;
            check(with(one));
        }
    CHECK(seen.size() > 200);
}

}  // namespace sheet_test
