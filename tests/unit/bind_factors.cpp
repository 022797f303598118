// What `predict --why bind` tells: factors that multiply into the bind of the meat, and what each would give back.
#include "evaluate/bind_factors.hpp"

#include <algorithm>
#include <cmath>

#include "evaluate/batch.hpp"
#include "support/catch.hpp"
#include "support/kitchen.hpp"

using namespace standin;

namespace bind_factors_test {

struct Making {
    double mixed_at_c = 3, mixing_min = 3;
    Order order = Order::salt_first;
};

Formula made(std::vector<Line> lines, Making making = {}) {
    Formula f = formula(std::move(lines));
    f.process = {8, making.mixing_min, making.mixed_at_c, 18, 3, 71, 30, {}, making.order, Cook::pan};
    return f;
}

std::vector<Line> plain(double salt_g = 17) { return {line("pork-leg-lean", 750), line("pork-backfat", 250), line("table-salt", salt_g)}; }

std::vector<Line> with(std::vector<Line> lines, const char* food, double grams) {
    lines.push_back(line(food, grams));
    return lines;
}

const Factor& factor(const std::vector<Factor>& all, const std::string& what) {
    const auto found = std::find_if(all.begin(), all.end(), [&](const Factor& f) { return f.what == what; });
    if (found == all.end()) FAIL("no factor " << what);
    return *found;
}

double bind_of(const Formula& f) { return NominalBatch(f, nominal()).bind().bind; }

const std::vector<Formula>& tried() {
    static const std::vector<Formula> all{
        made(plain()),
        made(plain(8)),
        made(with(plain(), "distilled-vinegar", 60)),
        made(with(plain(), "distilled-vinegar", 40), {3, 3, Order::acid_first}),
        made(plain(), {16, 3, Order::salt_first}),
        made(plain(), {3, 0, Order::salt_first}),
        made(with(plain(), "spinach", 500)),
        made(with(plain(), "xanthan-gum", 4)),
        made(with(plain(), "soy-protein-isolate", 20)),
        made(with(with(plain(10), "distilled-vinegar", 30), "onion", 200), {10, 1, Order::all_together}),
    };
    return all;
}

TEST_CASE("the factors multiply into what the meat brings, and with the binder into the index") {
    for (const auto& f : tried()) {
        const BatchBind bind = NominalBatch(f, nominal()).bind();
        double product = 1, binder = 0;
        for (const auto& one : bind_factors(f, nominal())) {
            CAPTURE(one.what, one.value);
            if (one.what == "binder, added") binder = one.value;
            else product *= one.value;
        }
        CAPTURE(bind.index, product, binder);
        CHECK(product + binder == Approx(bind.index).epsilon(1e-6));
    }
}

TEST_CASE("what a factor gives back is the bind without its loss, and the dearest comes first") {
    for (const auto& f : tried()) {
        const BatchBind bind = NominalBatch(f, nominal()).bind();
        const double scale = -bind.index / std::log(1 - bind.bind / 100), of_meat = bind.index - bind.binder;
        const auto all = bind_factors(f, nominal());
        double before = 100;
        for (const auto& one : all) {
            if (one.what == "the meat itself" || one.what == "binder, added") continue;
            CAPTURE(one.what, one.value, one.gives_back);
            const double whole = 100 * (1 - std::exp(-(of_meat / one.value + bind.binder) / scale));
            if (one.value < 1) CHECK(one.gives_back == Approx(whole - bind.bind).margin(1e-6));
            else CHECK(one.gives_back == 0);
            CHECK(one.gives_back <= before);
            before = one.gives_back;
        }
    }
}

TEST_CASE("each thing that costs bind shows in its own factor, and doing it well brings what was told") {
    struct Case {
        const char* what;
        Formula worse, better;
    };
    const Case cases[] = {
        {"salt", made(plain(8)), made(plain(20))},
        {"acid", made(with(plain(), "distilled-vinegar", 60)), made(with(plain(), "water", 60))},
        {"order of salt and acid", made(with(plain(), "distilled-vinegar", 40), {3, 3, Order::acid_first}),
         made(with(plain(), "distilled-vinegar", 40))},
        {"cold while mixing", made(plain(), {18, 3, Order::salt_first}), made(plain())},
        {"mixing", made(plain(), {3, 0.5, Order::salt_first}), made(plain())},
        {"dilution by paste and fat", made(with(plain(), "spinach", 600)), made(plain())},
    };
    for (const auto& c : cases) {
        const auto worse = bind_factors(c.worse, nominal()), better = bind_factors(c.better, nominal());
        CAPTURE(c.what, factor(worse, c.what).value, factor(better, c.what).value);
        CHECK(factor(worse, c.what).value < factor(better, c.what).value - 0.02);
        CHECK(factor(worse, c.what).gives_back > 1);
        CHECK(bind_of(c.better) > bind_of(c.worse) + 1);
    }
    CHECK(factor(bind_factors(made(with(plain(), "soy-protein-isolate", 20)), nominal()), "binder, added").value >
          factor(bind_factors(made(plain()), nominal()), "binder, added").value + 0.01);
}

}  // namespace bind_factors_test
