#include "knowledge/index/season.hpp"

#include "standin/engine.hpp"
#include "support/catch.hpp"
#include "support/knowledge.hpp"

using namespace standin;

namespace season_test {

Ingredient with_season(std::vector<int> months) {
    Ingredient made;
    made.season = std::move(months);
    return made;
}

AdaptAnswer spinachless(std::optional<int> month, int shift, std::optional<Inventory> have = std::nullopt) {
    Options options;
    options.month = month;
    options.season_shift = shift;
    auto engine = Engine::open(options).value();
    const auto formula = engine.read_formula("T\n1 kg pork shoulder\n200 g spinach, blanched\n17 g salt\n", "t").value();
    AdaptRequest request;
    request.without = {"spinach"};
    request.top = 5;
    request.have = std::move(have);
    return engine.adapt(formula, request).value();
}

TEST_CASE("seasons move with the place") {
    CHECK(season_of(with_season({7, 8, 12}), 6) == std::vector<int>{1, 2, 6});
    CHECK(season_of(with_season({7}), 0) == std::vector<int>{7});
    CHECK(in_season(with_season({7, 8}), 8, 0) == true);
    CHECK(in_season(with_season({7, 8}), 8, 6) == false);
    CHECK(in_season(with_season({7, 8}), 2, 6) == true);
    CHECK_FALSE(in_season(with_season({}), 2, 6).has_value());
}

TEST_CASE("adapt brings in only what is in season, or what is on hand all the same") {
    for (const int month : {1, 4, 8}) {
        const auto answer = spinachless(month, 0);
        REQUIRE_FALSE(answer.variants.empty());
        for (const auto& variant : answer.variants)
            for (const auto& edit : variant.edits)
                if (const auto* brought = knowledge().ingredient(edit.with)) {
                    CAPTURE(month, brought->id);
                    CHECK(in_season(*brought, month, 0).value_or(true));
                }
    }
}

}  // namespace season_test
