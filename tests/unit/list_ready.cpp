// What a list has prepared already is counted as what it came of, and not prepared once more; eggs are parted for a line of their white.
#include "support/catch.hpp"
#include "support/inventory.hpp"
#include "support/scenario.hpp"

using namespace standin;

namespace list_ready_test {

const std::string made =
    "Made (invented)\n1 kg pork shoulder\n100 g poblano, roasted and peeled\n120 g spinach, blanched and squeezed\n"
    "40 g pumpkin seeds, toasted\n18 g salt\n";

Formula formula_of(const std::string& text) { return scenario::expect(scenario::engine().read_formula(text, "made.txt")); }

Inventory list_of(const std::string& text, const Formula& formula) {
    return scenario::expect(scenario::engine().read_inventory(text, "list.txt", &formula));
}

std::vector<std::string> steps_of(const InventoryItem& item) {
    std::vector<std::string> steps;
    for (const auto& step : item.prepared) steps.push_back(step.preparation);
    return steps;
}

bool is_told(const Inventory& list, const std::string& words) {
    return std::any_of(list.notes.begin(), list.notes.end(),
                       [&](const Reason& note) { return in_full(note).find(words) != std::string::npos; });
}

TEST_CASE("list ready: what is said to be done already goes with the food, before its name or behind it") {
    struct Case {
        const char *line, *food;
        std::vector<std::string> steps;
    };
    for (const auto& one :
         {Case{"roasted and peeled poblanos 300 g", "poblano", {"roasted-peeled"}},
          Case{"spinach, blanched and squeezed, 200 g", "spinach", {"blanched", "squeezed"}},
          Case{"blanched spinach 400 g", "spinach", {"blanched"}}, Case{"toasted pumpkin seeds 100 g", "pumpkin-seed", {"toasted"}},
          Case{"spinach, chopped, 200 g", "spinach", {}}}) {
        INFO(one.line);
        const Formula formula = formula_of(made);
        const Inventory list = list_of(one.line, formula);
        const InventoryItem* found = item(list, one.food);
        REQUIRE(found != nullptr);
        CHECK(steps_of(*found) == one.steps);
        CHECK(is_told(list, "not done again") == !one.steps.empty());
    }
}

TEST_CASE("list ready: squeezed leaf is counted as the raw leaf that it came of") {
    const Formula formula = formula_of(made);
    const auto grams = [&](const char* line) { return item(list_of(line, formula), "spinach")->grams.value_or(0); };
    CHECK(grams("spinach, blanched and squeezed, 200 g") > 1.4 * 200);
    CHECK(grams("spinach, blanched and squeezed, 200 g") > grams("blanched spinach 200 g"));
    CHECK(grams("spinach 200 g") == Approx(200));
}

TEST_CASE("list ready: where some of it is raw, none of it counts as done") {
    const Formula formula = formula_of(made);
    const Inventory list = list_of("blanched spinach 200 g\nspinach 300 g", formula);
    CHECK(item(list, "spinach")->prepared.empty());
}

bool has_step(const Sheet& sheet, const std::string& id, const std::string& food) {
    return std::any_of(sheet.steps.begin(), sheet.steps.end(), [&](const SheetStep& step) {
        return step.id == id && std::any_of(step.parts.begin(), step.parts.end(),
                                            [&](const StepPart& part) { return sheet.formula.lines[part.line].ingredient == food; });
    });
}

double weighed(const Sheet& sheet, const std::string& food) {
    for (const auto& w : sheet.weights)
        if (sheet.formula.lines[w.line].ingredient == food) return w.grams;
    return 0;
}

TEST_CASE("list ready: the sheet weighs it as it lies and does not ask for the step twice") {
    const Formula formula = formula_of(made);
    const auto sheet_for = [&](const char* list) {
        SheetRequest request;
        request.have = list_of(list, formula);
        return scenario::expect(scenario::engine().sheet(formula, request));
    };
    const Sheet raw = sheet_for("pork shoulder 2 kg");
    CHECK(has_step(raw, "blanched", "spinach"));
    CHECK(weighed(raw, "spinach") == Approx(120));

    const Sheet blanched = sheet_for("blanched spinach 400 g\nroasted and peeled poblanos 300 g\ntoasted pumpkin seeds 100 g");
    CHECK_FALSE(has_step(blanched, "blanched", "spinach"));
    CHECK(has_step(blanched, "squeezed", "spinach"));
    CHECK_FALSE(has_step(blanched, "roasted-peeled", "poblano"));
    CHECK_FALSE(has_step(blanched, "toasted", "pumpkin-seed"));
    CHECK(weighed(blanched, "poblano") < 95);
    CHECK(blanched.makes.batch_g == Approx(raw.makes.batch_g).epsilon(0.005));

    const Sheet squeezed = sheet_for("spinach, blanched and squeezed, 200 g");
    CHECK_FALSE(has_step(squeezed, "blanched", "spinach"));
    CHECK_FALSE(has_step(squeezed, "squeezed", "spinach"));
    CHECK(weighed(squeezed, "spinach") < 0.7 * 120);
}

TEST_CASE("list ready: a stand-in that is prepared already is told so, at what it weighs so") {
    const auto v = scenario::first_for("Made (invented)\n1 kg pork shoulder\n120 g spinach, blanched and squeezed\n18 g salt\n",
                                       "blanched chard 400 g\nno spinach\n");
    const Line* chard = scenario::line_of(v.formula, "chard");
    REQUIRE(chard != nullptr);
    CHECK_FALSE(chard->ready.empty());
    const auto line = std::find_if(v.prediction.lines.begin(), v.prediction.lines.end(),
                                   [](const PredictedLine& one) { return one.ingredient == "chard"; });
    CHECK(line->still == std::vector<std::string>{"squeezed"});
    CHECK(line->lying_g < line->weighed_g);
}

TEST_CASE("list ready: eggs give white to a line of egg white, with the yolk told left over") {
    const Formula formula = formula_of("Fish (invented)\n1 kg cod fillet\n40 g egg white\n16 g salt\n");
    for (const std::string list : {"2 eggs", "2 eggs\nno egg white"}) {
        INFO(list);
        const Inventory read = list_of(list, formula);
        const InventoryItem* white = item(read, "egg-white");
        REQUIRE(white != nullptr);
        CHECK(white->grams.value_or(0) == Approx(66).margin(2));
        CHECK(is_told(read, "egg yolk is left over"));
        CHECK(std::find(read.missing.begin(), read.missing.end(), "egg-white") == read.missing.end());
    }
    const Formula whole = formula_of("Fish (invented)\n1 kg cod fillet\n40 g egg white\n1 egg\n16 g salt\n");
    CHECK(item(list_of("2 eggs", whole), "egg-white") == nullptr);
    CHECK(item(list_of("2 eggs\negg white 20 g", formula), "egg-white")->grams == Approx(20));
}

}  // namespace list_ready_test
