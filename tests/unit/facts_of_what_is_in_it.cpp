// What a food is, told where it matters: raw milk bought as such, fish with its bones, dried fruit folded in, thawed meat not frozen again.
#include <algorithm>

#include "standin/engine.hpp"
#include "standin/plan.hpp"
#include "support/catch.hpp"

using namespace standin;

namespace facts_of_what_is_in_it_test {

const Engine& engine() {
    static const Result<Engine> engine = Engine::open({});
    return *engine;
}

Formula with(const std::string& lines) {
    return engine().read_formula("Test\n1 kg pork shoulder\n200 g pork backfat\n18 g salt\n" + lines, "f").value();
}

bool tells(const Prediction& p, const std::string& id) {
    return std::any_of(p.cautions.begin(), p.cautions.end(), [&](const CautionText& c) { return c.id == id; });
}

TEST_CASE("raw milk is bought and labelled as raw") {
    const auto sheet = engine().sheet(with("200 ml raw milk\n"), {}).value();
    CHECK(std::any_of(sheet.buy.begin(), sheet.buy.end(), [](const Purchase& p) { return p.name == "raw whole milk"; }));
    CHECK(sheet.prediction.label.find("raw whole MILK") != std::string::npos);
    const auto plain = engine().sheet(with("200 ml milk\n"), {}).value();
    CHECK(plain.prediction.label.find("raw") == std::string::npos);
}

TEST_CASE("fish tells of its bones, and shellfish does not") {
    for (const std::string fish : {"pike", "mackerel", "cod"})
        CHECK(tells(engine().predict(with("300 g " + fish + "\n")).value(), "fish-bones"));
    for (const std::string other : {"prawns", "squid", "scallops"})
        CHECK_FALSE(tells(engine().predict(with("300 g " + other + "\n")).value(), "fish-bones"));
}

TEST_CASE("a pinch of nutmeg needs no word") {
    CHECK_FALSE(tells(engine().predict(with("2 g nutmeg\n")).value(), "nutmeg"));
    CHECK(tells(engine().predict(with("8 g nutmeg\n")).value(), "nutmeg"));
}

TEST_CASE("dried tomatoes are folded in, and nobody is told that they keep nothing") {
    const auto sheet = engine().sheet(with("100 g sun-dried tomatoes\n"), {}).value();
    CHECK(std::none_of(sheet.steps.begin(), sheet.steps.end(), [](const SheetStep& step) { return step.task == BenchTask::acid_last; }));
    CHECK_FALSE(tells(sheet.prediction, "acid-no-preserve"));
    const auto vinegar = engine().sheet(with("40 g white wine vinegar\n"), {}).value();
    CHECK(std::any_of(vinegar.steps.begin(), vinegar.steps.end(), [](const SheetStep& step) { return step.task == BenchTask::acid_last; }));
}

TEST_CASE("a core of 71 C is the rule's 71.1 C") {
    const auto sheet = engine().sheet(with("core: 71 C\n"), {}).value();
    CHECK(std::none_of(sheet.notes.begin(), sheet.notes.end(), [](const Reason& note) { return note.kind == ReasonKind::core_raised; }));
}

TEST_CASE("what was thawed is not kept frozen") {
    PlanRequest request;
    request.formulas = {with("")};
    request.have = engine().read_inventory("pork shoulder 3 kg, bought today, thawed in the fridge\npork backfat 1 kg\n", "l").value();
    const auto answer = plan(engine(), request).value();
    const auto of = [&](const std::string& id) {
        return *std::find_if(answer.left.begin(), answer.left.end(), [&](const LeftOver& left) { return left.ingredient == id; });
    };
    CHECK_FALSE(of("pork-backfat").thawed);
    CHECK(of("pork-backfat").storage.find("freezes well") != std::string::npos);
    for (const auto& left : answer.left)
        if (left.ingredient == "pork-shoulder") CHECK((left.thawed && left.storage.find("freezes") == std::string::npos));
}

TEST_CASE("a list that holds nothing is told to hold nothing") {
    SwapsRequest request;
    request.have = Inventory{};
    request.have->aside = {"zorbleberries"};
    const auto answer = engine().swaps(with("200 g parsley\n"), "parsley", request).value();
    CHECK(answer.nothing_listed);
    CHECK_FALSE(engine().swaps(with("200 g parsley\n"), "parsley", {}).value().nothing_listed);
}

TEST_CASE("foods under names that hide it tell what they may hold") {
    for (const auto& [food, holds] :
         {std::pair("hummus", "sesame"), std::pair("romesco", "hazelnut"), std::pair("besciamella", "wheat"),
          std::pair("satay paste", "peanut"), std::pair("gianduja", "hazelnut"), std::pair("dukkah", "sesame")}) {
        const auto read = engine().read_formula(std::string("Test\n1 kg pork shoulder\n18 g salt\n100 g ") + food + "\n", "f");
        INFO(food);
        REQUIRE_FALSE(read);
        CHECK(read.error().message.find(holds) != std::string::npos);
    }
}

}  // namespace facts_of_what_is_in_it_test
