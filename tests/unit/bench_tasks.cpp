// What stands on the bench sheet beside the weights: tasks where they are done, what is on hand, shells, links.
#include <algorithm>

#include "standin/engine.hpp"
#include "support/catch.hpp"

using namespace standin;

namespace bench_tasks_test {

const Engine& engine() {
    static const auto opened = Engine::open({});
    return *opened;
}

Formula read(const std::string& text) {
    auto formula = engine().read_formula(text, "f");
    if (!formula) FAIL(formula.error().message);
    return *formula;
}

Sheet sheet(const Formula& formula, const SheetRequest& request = {}) {
    auto made = engine().sheet(formula, request);
    if (!made) FAIL(made.error().message);
    return *made;
}

const SheetStep* step(const Sheet& s, const std::string& id) {
    const auto at = std::find_if(s.steps.begin(), s.steps.end(), [&](const SheetStep& one) { return one.id == id; });
    return at == s.steps.end() ? nullptr : &*at;
}

std::string all_hows(const Sheet& s) {
    std::string text;
    for (const auto& one : s.steps) text += one.how + "\n";
    return text;
}

TEST_CASE("a task of a stand-in stands in the step where it is done, chatter of its taste nowhere") {
    Formula f = read("Green\n2 kg pork shoulder\n220 g chard, blanched 2 min, squeezed\n60 g potato flakes\n36 g salt\n");
    f.to_do = {"chard: Earthier, a little saltier; strip the ribs.",
               "potato flakes: Brings no wheat by itself; read the label. Half the weight."};
    const Sheet s = sheet(f);
    CHECK(step(s, "stand-in") == nullptr);
    REQUIRE(step(s, "blanched"));
    CHECK(step(s, "blanched")->how.find("Chard: strip the ribs.") != std::string::npos);
    REQUIRE(step(s, "weigh"));
    CHECK(step(s, "weigh")->how.find("Potato flakes: read the label.") != std::string::npos);
    const std::string said = all_hows(s);
    CHECK(said.find("Earthier") == std::string::npos);
    CHECK(said.find("Half the weight") == std::string::npos);
}

TEST_CASE("what the sheet does anyway is not asked twice, and one task of two foods is told once") {
    Formula f = read("Green\n2 kg pork shoulder\n220 g chard, blanched 2 min, squeezed\n80 g kale, blanched 2 min, squeezed\n36 g salt\n");
    f.to_do = {"chard: Earthier; blanch.", "kale: Chewier; strip the ribs.", "chard: Tougher: strip the ribs."};
    const std::string said = all_hows(sheet(f));
    CHECK(said.find("hard: blanch") == std::string::npos);
    CHECK(said.find("strip the ribs") == said.rfind("strip the ribs"));
    CHECK(said.find("ale, chard: strip the ribs") != std::string::npos);
}

TEST_CASE("what is on hand is not bought, and of what falls short only the rest") {
    const Formula f = read("Green\n2 kg pork shoulder\n200 g spinach\n80 g lemon juice\n120 g parsley\n36 g salt\n");
    SheetRequest request;
    const auto have = engine().read_inventory("spinach 2 kg\nparsley 50 g\nno lemon juice\n", "list", &f);
    REQUIRE(have);
    request.have = *have;
    const Sheet s = sheet(f, request);
    const auto of = [&](const std::string& name) {
        return *std::find_if(s.buy.begin(), s.buy.end(), [&](const Purchase& p) { return p.name == name; });
    };
    CHECK(of("spinach").have_all);
    CHECK_FALSE(of("parsley").have_all);
    CHECK(of("parsley").lack_g.value() == Approx(of("parsley").bought_g - 50));
    CHECK(of("parsley").metric.buy_g < engine().sheet(f, {})->buy[3].metric.buy_g);
    CHECK(of("lemon juice").lack_g.value() == Approx(of("lemon juice").bought_g));
    CHECK_FALSE(of("pork shoulder").have_all);  // the list says nothing of it
    CHECK_FALSE(of("pork shoulder").lack_g);
}

TEST_CASE("a list that says everything else is there leaves nothing to buy but what it is short of") {
    const Formula f = read("Green\n2 kg pork shoulder\n200 g spinach\n36 g salt\n");
    SheetRequest request;
    request.have = *engine().read_inventory("spinach 50 g\neverything else\n", "list", &f);
    const Sheet s = sheet(f, request);
    CHECK(s.buy[0].have_all);
    CHECK_FALSE(s.buy[1].have_all);
    CHECK(s.buy[2].have_all);
}

TEST_CASE("shellfish is shelled, not peeled like a root") {
    const Sheet s = sheet(read("Sea\n1 kg pollock\n300 g shrimp, peeled\n20 g salt\n"));
    REQUIRE(step(s, "peeled"));
    CHECK(step(s, "peeled")->what == "shell");
    CHECK(step(s, "peeled")->how.find("gut line") != std::string::npos);
    const Sheet roots = sheet(read("Root\n1 kg pork shoulder\n300 g carrot, peeled\n20 g salt\n"));
    REQUIRE(step(roots, "peeled"));
    CHECK(step(roots, "peeled")->how.find("gut line") == std::string::npos);
}

TEST_CASE("a title that says links and no width of a casing is told, and asked about") {
    const Sheet s = sheet(read("Christmas green links\n2 kg pork shoulder\n36 g salt\n"));
    CHECK(s.makes.titled_link);
    CHECK(std::any_of(s.notes.begin(), s.notes.end(),
                      [](const Reason& n) { return in_full(n).find("how wide the casing is") != std::string::npos; }));
    CHECK_FALSE(sheet(read("Christmas patties\n2 kg pork shoulder\n36 g salt\n")).makes.titled_link);
    SheetRequest cased;
    cased.casing = "32mm";
    CHECK_FALSE(sheet(read("Christmas green links\n2 kg pork shoulder\n36 g salt\n"), cased).makes.titled_link);
}

}  // namespace bench_tasks_test
