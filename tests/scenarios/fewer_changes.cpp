// Who allows fewer changes cannot come nearer than who allows any number: a plan of one strong lever is found among all the others.
#include <algorithm>
#include <map>

#include "support/catch.hpp"
#include "support/scenario.hpp"

using namespace standin;

namespace fewer_changes_test {

const std::map<std::string, std::string> formulas{
    {"kale",
     "Kale and walnut\n1800 g pork shoulder\n300 g pork backfat\n250 g curly kale, blanched 3 min, squeezed\n80 g walnuts, toasted\n"
     "40 g lemon juice\n36 g salt\n15 g garlic\n20 g serrano\nrest: 30 h\norder: all together\nmixing: 1 min\nmixed at: 6 C\ncore: 75 C\n"},
    {"garden",
     "Garden\n2000 g pork shoulder\n300 g pork backfat\n300 g spinach, blanched 2 min, squeezed\n80 g flat-leaf parsley\n40 g serrano\n"
     "40 g white wine vinegar\n20 g garlic\n38 g salt\n5 g black pepper\norder: all together\nmixing: 1 min\nmixed at: 8 C\ncore: 71.1 "
     "C\n"},
    {"turkey",
     "Turkey\n2000 g turkey breast\n100 g spinach, blanched 2 min, squeezed\n20 g flat-leaf parsley\n34 g salt\n5 g black pepper\n"
     "order: all together\nmixing: 1 min\nmixed at: 8 C\ncore: 80 C\n"},
};

AdaptAnswer asked(const std::string& text, const std::string& want, std::size_t changes) {
    auto engine = scenario::expect(Engine::open({}));
    const auto formula = scenario::expect(engine.read_formula(text, "formula"));
    AdaptRequest request;
    request.wants = {want};
    request.changes = changes;
    return scenario::expect(engine.adapt(formula, request));
}

// So much binder comes in only where nothing else does it.
bool takes_all_leeway(const Variant& v) {
    constexpr double usual = 0.025;  // of the batch
    return std::any_of(v.edits.begin(), v.edits.end(),
                       [&](const Edit& e) { return e.kind == EditKind::add && e.grams_after > usual * v.prediction.batch_g; });
}

TEST_CASE("fewer changes: with any number allowed the first answer is as near") {
    constexpr double weighing = 0.05;  // what rounding to kitchen weights moves
    std::size_t compared = 0;
    for (const auto& [name, text] : formulas)
        for (const char* want : {"firmer", "juicier", "greener"}) {
            const auto any = asked(text, want, 0), one = asked(text, want, 1);
            if (one.variants.empty() || !one.conflict.empty() || takes_all_leeway(one.variants.front())) continue;
            ++compared;
            CAPTURE(name, want);
            REQUIRE_FALSE(any.variants.empty());
            CHECK(any.variants.front().distance <= one.variants.front().distance + weighing);
        }
    CHECK(compared >= 3);
}

}  // namespace fewer_changes_test
