// An allergy and what the maker wants all the same: what goes against each other is told, what a packet decides may be kept.
#include <algorithm>

#include "formula/reading.hpp"
#include "support/catch.hpp"
#include "support/kitchen.hpp"
#include "support/knowledge.hpp"
#include "support/scenario.hpp"

using namespace standin;

namespace allergy_and_ideas_test {

const Engine& engine() {
    static const Engine one = opened(32);
    return one;
}

AdaptAnswer asked(const std::string& lines, const AdaptRequest& request) {
    const auto formula =
        read_formula("Own\n2000 g pork shoulder\n500 g pork backfat\n36 g salt\n5 g black pepper\n" + lines + "\n", "", knowledge());
    if (!formula) FAIL(formula.error().message);
    const auto answer = engine().adapt(*formula, request);
    if (!answer) FAIL(answer.error().message);
    return *answer;
}

std::string all_of(const std::vector<Reason>& reasons) {
    std::string text;
    for (const auto& reason : reasons) text += in_full(reason) + "\n";
    return text;
}

TEST_CASE("an idea that --without forbids: the two go against each other, and the allergen has its name") {
    struct Case {
        const char *with, *word, *allergen;
    };
    for (const auto& [with, word, allergen] :
         {Case{"peanut", "peanuts", "peanut"}, Case{"almond", "nuts", "almond"}, Case{"sesame seeds", "sesame", "sesame"},
          Case{"breadcrumbs", "gluten", "wheat"}, Case{"tofu", "soy", "soy"}}) {
        CAPTURE(with, word);
        AdaptRequest request;
        request.use = {{with, "pumpkin seeds"}};
        request.without = {word};
        const auto answer = asked("80 g pumpkin seeds, toasted", request);
        CHECK(answer.variants.empty());
        const std::string conflict = all_of(answer.conflict), gives = all_of(answer.would_give);
        CHECK(answer.conflict.size() > 1);
        CHECK(conflict.find(std::string("without ") + word) != std::string::npos);
        CHECK(conflict.find("go against each other") != std::string::npos);
        CHECK(conflict.find(allergen) != std::string::npos);
        CHECK(gives.find("giving up") != std::string::npos);
        CHECK(gives.find("weight for weight") == std::string::npos);
    }
}

TEST_CASE("an idea that only a list's own words forbid is told as well") {
    AdaptRequest request;
    request.use = {{"sunflower seeds", "pumpkin seeds"}};
    request.without = {"peanuts"};
    request.have = read_inventory("sunflower seeds 200 g, may contain peanuts\neverything else\n", "", knowledge()).value();
    const auto answer = asked("80 g pumpkin seeds, toasted", request);
    CHECK(all_of(answer.conflict).find("go against each other") != std::string::npos);
}

TEST_CASE("kept: a food that only may hold it stays, with the packet to read; one that holds it does not") {
    AdaptRequest request;
    request.without = {"dairy"};
    request.keep = {"breadcrumbs"};
    const auto answer = asked("80 g breadcrumbs\n40 g milk", request);
    REQUIRE_FALSE(answer.variants.empty());
    CHECK(answer.conflict.empty());
    CHECK(answer.excluded.front().note.find("read the packet") != std::string::npos);
    for (const auto& variant : answer.variants) {
        CHECK(scenario::line_of(variant.formula, "breadcrumb") != nullptr);
        CHECK(scenario::line_of(variant.formula, "whole-milk") == nullptr);
        CHECK(std::any_of(variant.prediction.allergens.begin(), variant.prediction.allergens.end(),
                          [](const AllergenText& a) { return a.allergen == "milk" && !a.sure; }));
    }
    request.keep = {"milk"};
    CHECK_FALSE(asked("80 g breadcrumbs\n40 g milk", request).conflict.empty());
    request.keep = {"breadcrumbs"};
    request.without = {"gluten"};
    CHECK_FALSE(asked("80 g breadcrumbs\n40 g milk", request).conflict.empty());
    request.without = {"dairy"};
    CHECK_FALSE(asked("80 g breadcrumbs (may contain milk)\n40 g milk", request).conflict.empty());  // the maker read the packet
}

TEST_CASE("an allergy: what the formula only may hold gives no leave to what surely holds it") {
    AdaptRequest request;
    request.without = {"fish"};
    request.top = 5;
    const auto answer = asked("20 g Worcestershire sauce\n15 g fish sauce\n20 g oyster sauce", request);
    for (const auto& variant : answer.variants) CHECK(variant.new_allergens.empty());
}

}  // namespace allergy_and_ideas_test
