// In which form a stand-in goes in: what is bought whole is ground for a powder and toasted for what was toasted.
#include <algorithm>

#include "knowledge/index/effects.hpp"
#include "standin/engine.hpp"
#include "substitute/stand_ins.hpp"
#include "support/catch.hpp"
#include "support/kitchen.hpp"

using namespace standin;

namespace form_of_stand_ins_test {

// Every form in which `food`, alone or as the second of two, stands in for so much of the line.
std::vector<Line> forms(const Line& one, const std::string& food) {
    static const SwapGraph graph(knowledge());
    const Formula batch = formula({one, line("pork-shoulder", 1500), line("pork-backfat", 300), line("table-salt", 28)});
    std::vector<Line> found;
    for (const auto& c : candidates_for(batch, 0, graph, nominal(), [](const Ingredient&) { return true; }).fit) {
        if (c.food.ingredient == food) found.push_back(c.food);
        if (c.partner && c.partner->food.ingredient == food) found.push_back(c.partner->food);
    }
    return found;
}

bool all_done(const std::vector<Line>& found, const std::vector<std::string>& steps) {
    return !found.empty() && std::all_of(found.begin(), found.end(), [&](const Line& food) {
        return std::all_of(steps.begin(), steps.end(), [&](const std::string& step) { return has_step(food.prepared, step); });
    });
}

bool one_done(const std::vector<Line>& found, const std::string& step) {
    return std::any_of(found.begin(), found.end(), [&](const Line& food) { return has_step(food.prepared, step); });
}

TEST_CASE("form: seeds, pods and bark are ground where they stand in for a powder") {
    const std::vector<std::pair<std::string, std::vector<std::string>>> powders{
        {"blue-fenugreek", {"fenugreek-seed"}},        {"ras-el-hanout", {"cumin", "cinnamon", "coriander-seed"}},
        {"berbere", {"fenugreek-seed", "cardamom"}},   {"baharat", {"allspice", "cumin", "black-pepper"}},
        {"garam-masala", {"cumin", "cardamom"}},       {"five-spice", {"star-anise", "fennel-seed", "clove"}},
        {"mustard-powder", {"mustard-seed"}},          {"quatre-epices", {"white-pepper", "nutmeg"}},
        {"curry-powder", {"coriander-seed", "cumin"}},
    };
    for (const auto& [powder, seeds] : powders)
        for (const auto& seed : seeds) {
            CAPTURE(powder, seed);
            CHECK(all_done(forms(line(powder, 10), seed), {"ground"}));
        }
}

TEST_CASE("form: a whole seed stands in for a whole seed as it is, and ground for one that is ground") {
    CHECK_FALSE(one_done(forms(line("fennel-seed", 8), "anise-seed"), "ground"));
    CHECK_FALSE(one_done(forms(line("caraway", 8), "cumin"), "ground"));
    CHECK(all_done(forms(line("caraway", 8, {"ground"}), "cumin"), {"ground"}));
}

TEST_CASE("form: raw grains are toasted and ground for toasted rice powder, and ground for flour") {
    for (const std::string rice : {"rice-dry", "sticky-rice-dry"}) CHECK(one_done(forms(line("toasted-rice-powder", 30), rice), "toasted"));
    for (const std::string rice : {"rice-dry", "sticky-rice-dry"})
        CHECK(all_done(forms(line("toasted-rice-powder", 30), rice), {"ground"}));
    CHECK(all_done(forms(line("rice-flour", 30), "rice-dry"), {"ground"}));
    CHECK(one_done(forms(line("almond-flour", 30), "cashew"), "ground"));
    CHECK(one_done(forms(line("almond-flour", 30), "hazelnut"), "ground"));
}

TEST_CASE("form: raw grains are boiled where boiled ones are missing, and for crumbs") {
    CHECK(all_done(forms(line("rice-cooked", 100), "rice-dry"), {"boiled"}));
    CHECK(all_done(forms(line("lentil-cooked", 100), "lentil-dry"), {"boiled"}));
    CHECK(one_done(forms(line("chickpea-cooked", 100), "chickpea-dry"), "boiled"));
    for (const auto& rice : forms(line("breadcrumb", 60), "rice-dry"))
        CHECK((has_step(rice.prepared, "boiled") || has_step(rice.prepared, "ground")));
}

TEST_CASE("form: raw rice that is boiled for the mass carries the caution of boiled rice, and raw none of it") {
    const Engine engine = Engine::open({}).value();
    const auto told = [&](std::vector<std::string> steps) {
        const auto predicted =
            engine.predict(formula({line("pork-shoulder", 1500), line("rice-dry", 40, std::move(steps)), line("table-salt", 28)}));
        REQUIRE(predicted);
        return std::any_of(predicted->cautions.begin(), predicted->cautions.end(),
                           [](const CautionText& c) { return c.id == "cooked-rice"; });
    };
    CHECK(told({"boiled"}));
    CHECK_FALSE(told({"toasted", "ground"}));
    CHECK_FALSE(told({}));
}

TEST_CASE("form: of two forms of one food the nearer is taken, not the one that is less prepared") {
    const auto found = once_each(
        [] {
            static const SwapGraph graph(knowledge());
            const Formula batch = formula({line("toasted-rice-powder", 30), line("pork-shoulder", 1500), line("table-salt", 28)});
            return candidates_for(batch, 0, graph, nominal(),
                                  [](const Ingredient& i) { return i.id == "rice-dry" || i.id == "rice-flour"; });
        }()
            .fit,
        true);
    const auto rice = std::find_if(found.begin(), found.end(), [](const Candidate& c) { return c.food.ingredient == "rice-dry"; });
    REQUIRE(rice != found.end());
    CHECK(has_step(rice->food.prepared, "toasted"));
    CHECK(has_step(rice->food.prepared, "ground"));
}

TEST_CASE("form: sticky rice on a list is raw, and in a formula it is asked about") {
    const Engine engine = Engine::open({}).value();
    const auto list = engine.read_inventory("sticky rice 1 kg\n", "list");
    REQUIRE(list);
    REQUIRE(list->items.size() == 1);
    CHECK(list->items.front().ingredient == "sticky-rice-dry");
    const auto cooked = engine.read_inventory("cooked sticky rice 300 g\n", "list");
    REQUIRE(cooked);
    CHECK(cooked->items.front().ingredient == "sticky-rice-cooked");
    CHECK_FALSE(engine.read_formula("Test\n1 kg pork shoulder\n150 g sticky rice\n16 g salt\n", "f"));
}

}  // namespace form_of_stand_ins_test
