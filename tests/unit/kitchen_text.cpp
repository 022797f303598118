// A kitchen file: what a maker writes is read, what cannot be is refused with its place, and nothing is half done.
#include "formula/kitchen/kitchen_text.hpp"

#include "knowledge/load.hpp"
#include "support/catch.hpp"

using namespace standin;

namespace kitchen_text_test {

const Knowledge& known() {
    static const Knowledge all = embedded_knowledge();
    return all;
}

KitchenFact one(const std::string& line) {
    const auto kitchen = read_kitchen(line, "kitchen.txt", known());
    INFO(line);
    if (!kitchen) FAIL(kitchen.error().message);
    REQUIRE(kitchen->facts.size() == 1);
    return kitchen->facts.front();
}

void tells(const std::string& line, KitchenKind kind, const std::string& food, double value) {
    INFO(line);
    const auto fact = one(line);
    CHECK(fact.kind == kind);
    CHECK(fact.value.mid == Approx(value));
    REQUIRE(fact.foods.size() == (food.empty() ? 0 : 1));
    if (!food.empty()) CHECK(fact.foods.front() == food);
}

Error refused(const std::string& text) {
    const auto kitchen = read_kitchen(text, "kitchen.txt", known());
    INFO(text);
    REQUIRE_FALSE(kitchen);
    return kitchen.error();
}

TEST_CASE("a kitchen file is read as a maker writes it", "[kitchen]") {
    for (const auto* line : {"pork shoulder: 25 % fat", "pork shoulder 25% fat", "our pork shoulder has 25 % fat", "pork shoulder: 75/25",
                             "pork shoulder: 75 % lean", "pork shoulder: fat 25 %", "pork shoulder = 25 % fat"})
        tells(line, KitchenKind::fat, "pork-shoulder", 25);
    for (const auto* line : {"pork shoulder: pH 5.7", "pork shoulder pH 5,7", "pH of the pork shoulder: 5.7", "pork shoulder, pH is 5.7"})
        tells(line, KitchenKind::ph, "pork-shoulder", 5.7);
    for (const auto* line : {"cider vinegar 5 %", "cider vinegar: 5 % acidity", "cider vinegar: 50 grain", "my cider vinegar is 5%"})
        tells(line, KitchenKind::acid, "cider-vinegar", 5);
    for (const auto* line : {"serranos this year: 400 mg/kg", "serrano 400 mg/kg", "serranos: 400 ppm"})
        tells(line, KitchenKind::heat, "serrano", 400);
    for (const auto* line : {"bunch of parsley: 60 g", "a bunch of parsley weighs 60 g", "parsley bunch 60 g", "1 bunch parsley = 60 g",
                             "parsley: 60 g a bunch", "3 bunches of parsley: 180 g"}) {
        tells(line, KitchenKind::measure, "parsley", 60);
        CHECK(one(line).measure == "bunch");
    }
    for (const auto* line : {"chard trim: 40 %", "chard: 40 % waste", "chard: 60 % usable", "chard, 60% left", "chard loses 40 % in trim"})
        tells(line, KitchenKind::edible, "chard", 60);
    for (const auto* line : {"scale: 5 g", "my scale shows 5 g", "scale step 5 g", "Scale = 5g"}) tells(line, KitchenKind::scale, "", 5);
    for (const auto* line : {"pan loss: 22 %", "pan loss 22%", "our frying loss: 22 %"}) tells(line, KitchenKind::pan_loss, "", 22);
    for (const auto* line : {"batch pH: 5.4", "batch pH 5.4", "pH of the batch: 5.4"}) tells(line, KitchenKind::batch_ph, "", 5.4);
    for (const auto* line : {"pan fat: 8 %", "drained fat 8%", "our fat loss: 8 %"}) tells(line, KitchenKind::pan_fat, "", 8);
    CHECK(one("pan fat of Hedge link: 8 %").formula == "Hedge link");
    tells("raw lightness: 62", KitchenKind::raw_lightness, "", 62);
    tells("cooked lightness: 68", KitchenKind::cooked_lightness, "", 68);
    CHECK(one("pan loss of Hedge link: 22 %").formula == "Hedge link");
}

TEST_CASE("how hot this year's pods are is told by word", "[kitchen]") {
    const double usual = known().ingredient("serrano")->capsaicinoids->band.mid;
    for (const auto* line : {"serranos this year: hot", "serranos: hot", "serranos are hot this year", "the serranos hot this year"})
        CHECK(one(line).value.mid > 1.3 * usual);
    CHECK(one("serranos this year: mild").value.mid < 0.8 * usual);
    CHECK(one("serranos this year: as usual").value.mid == usual);
}

TEST_CASE("a beast by itself means all its meat, a cut goes before it", "[kitchen]") {
    const auto kitchen = read_kitchen("pork shoulder: pH 5.9\npork: pH 5.6\n", "kitchen.txt", known());
    REQUIRE(kitchen);
    REQUIRE(kitchen->facts.size() == 2);
    CHECK(kitchen->facts[0].foods.size() > 3);
    CHECK(kitchen->facts[1].foods.size() == 1);
}

TEST_CASE("several facts of one food stand on one line, comments and blank lines between", "[kitchen]") {
    const auto kitchen = read_kitchen("# of May\n\npork shoulder: 25 % fat, pH 5.7\n", "kitchen.txt", known());
    REQUIRE(kitchen);
    CHECK(kitchen->facts.size() == 2);
    CHECK(kitchen->facts[0].where == "kitchen.txt:3:1");
    CHECK(read_kitchen("", "kitchen.txt", known())->facts.empty());
    CHECK(read_kitchen("# nothing yet\n", "kitchen.txt", known())->facts.empty());
}

TEST_CASE("a kitchen file that cannot be is refused with place and range, and none of it is taken", "[kitchen]") {
    const auto range = [](const std::string& line, const std::string& expected) {
        const auto error = refused("scale: 5 g\n" + line + "\n");
        INFO(error.message);
        CHECK(error.where.find("kitchen.txt:2") == 0);
        CHECK(error.message.find("expected " + expected) != std::string::npos);
    };
    range("pork shoulder: pH 14", "4.8 to 7.5");
    range("cider vinegar: 40 %", "");
    range("pork shoulder: 90 % fat", "");
    range("serranos: 2,000,000 SHU", "");
    range("bunch of parsley: 6 kg", "");
    range("scale: 5 kg", "0.01 to 100 g");
    range("pan loss: 90 %", "1 to 60 %");
    range("pan fat: 60 %", "0.1 to 40 %");
    range("cooked lightness: 99", "15 to 95");
    range("batch pH: 2", "4 to 7.5");
    range("chard: 2 % usable", "5 to 100 %");
    const auto slip = refused("pork sholder: 25 % fat");
    CHECK(slip.message.find("sholder") != std::string::npos);
    REQUIRE_FALSE(slip.hints.empty());
    CHECK(slip.hints.front() == "pork shoulder");
    CHECK(refused("chard: 40 %").message.find("of what") != std::string::npos);
    CHECK(refused("chard 400 g").message.find("no fact") != std::string::npos);
    CHECK(refused("parsley: hot this year").message.find("none") != std::string::npos);
    CHECK(refused("scale: 5 g\nscale: 1 g\n").message.find("told already") != std::string::npos);
    CHECK(refused("scale\n: 5\nnonsense\n").message.find("kitchen.txt:3") != std::string::npos);  // every fault is told
}

}  // namespace kitchen_text_test
