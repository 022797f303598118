// What a list says of a packet goes with the food into whatever is made with it.
#include <algorithm>

#include "standin/mend.hpp"
#include "support/catch.hpp"
#include "support/kitchen.hpp"
#include "support/knowledge.hpp"

using namespace standin;

namespace said_of_packets_test {

const Engine& engine() {
    static const Engine opened_once = opened(32);
    return opened_once;
}

Formula almonds() {
    return engine().read_formula("Test, invented\n2 kg pork shoulder\n40 g salt\n80 g almonds, toasted\n100 g whole milk\n", "t").value();
}

Result<Inventory> list(const std::string& text) {
    const Formula formula = almonds();
    return engine().read_inventory("basil 10 g\ngarlic 100 g\n" + text + "\n", "list", &formula);
}

bool has(const std::vector<AllergenText>& all, std::string_view allergen) {
    return std::any_of(all.begin(), all.end(), [&](const AllergenText& one) { return one.allergen == allergen; });
}

TEST_CASE("swaps: what the list says of a stand-in's packet is among its allergens and stays in its line") {
    SwapsRequest request;
    request.have = list("pumpkin seeds 200 g (contains celery)").value();
    const auto answer = engine().swaps(almonds(), "almond", request).value();
    REQUIRE_FALSE(answer.stand_ins.empty());
    const auto& seed = answer.stand_ins.front();
    REQUIRE(seed.ingredient == "pumpkin-seed");
    CHECK(has(seed.allergens, "celery"));
    CHECK(std::count(seed.new_allergens.begin(), seed.new_allergens.end(), "celery") == 1);
    CHECK(engine().formula_text(seed.formula).find("contains celery") != std::string::npos);
}

TEST_CASE("adapt: a food that would do as well is offered with what its packet holds") {
    const Formula formula = almonds();
    AdaptRequest request;
    request.have = list("no almonds\nsunflower seeds 200 g (contains soy)\npumpkin seeds 200 g (contains sesame)").value();
    const auto answer = engine().adapt(formula, request).value();
    std::size_t offered = 0;
    for (const auto& variant : answer.variants)
        for (const auto& edit : variant.edits)
            for (const auto& other : edit.alternatives) {
                ++offered;
                const std::string told = other.with == "pumpkin-seed" ? "sesame" : other.with == "sunflower-seed" ? "soy" : "";
                INFO(other.with);
                CHECK((told.empty() || std::count(other.allergens.begin(), other.allergens.end(), told) == 1));
            }
    CHECK(offered > 0);
}

TEST_CASE("mend: what the list says of what goes in is among the allergens and stays in its line", "[mend]") {
    const Formula loose = formula({line("pork-shoulder", 2000), line("pork-backfat", 250), line("spinach", 250, {"blanched", "squeezed"}),
                                   line("table-salt", 40), line("white-wine-vinegar", 30)});
    MendRequest request;
    request.tasted = {"crumbly"};
    request.have = engine().read_inventory("milk powder 500 g (may contain peanuts)\n", "list", &loose).value();
    const auto answer = mend(engine(), loose, request).value();
    bool used = false;
    for (const auto& way : answer.ways)
        for (const auto& in : way.add)
            if (in.ingredient.find("milk-powder") != std::string::npos) {
                used = true;
                CHECK(has(way.prediction.allergens, "peanut"));
            }
    CHECK(used);
}

}  // namespace said_of_packets_test
