// How raw leaf is cut, by what the method says; and what so much of it gives to the mass.
#include <algorithm>

#include "knowledge/index/effects.hpp"
#include "standin/engine.hpp"
#include "support/catch.hpp"
#include "support/kitchen.hpp"
#include "support/mended.hpp"

using namespace standin;

namespace leaf_cut_test {

using namespace mending;

std::string cut_of(const std::string& method, const std::string& herb = "parsley") {
    const auto read = engine().read_formula(
        "Test\n2000 g pork shoulder\n60 g parsley\n40 g dill\n200 g spinach\n36 g salt\nMethod\n" + method + "\n", "f");
    REQUIRE(read);
    for (const auto& line : read->lines) {
        if (line.ingredient != herb) continue;
        for (const char* step : {"pureed", "minced", "chopped"})
            if (has_step(line.prepared, step)) return step;
    }
    return "unsaid";
}

TEST_CASE("method: how leaf is cut is taken from the maker's words", "[making]") {
    CHECK(cut_of("Blend the parsley with ice to a paste.") == "pureed");
    CHECK(cut_of("Blitz all the herbs with the garlic.") == "pureed");
    CHECK(cut_of("Fold in the chopped parsley.") == "chopped");
    CHECK(cut_of("Mince the parsley with the pork through the 6 mm plate.") == "minced");
    CHECK(cut_of("Chop the parsley finely.") == "minced");
    CHECK(cut_of("Mix everything until tacky.") == "unsaid");
    CHECK(cut_of("Blend the meat and the parsley well.") == "unsaid");
    CHECK(cut_of("Do not blend the parsley.") == "unsaid");
    CHECK(cut_of("Blend the green chile.") == "unsaid");
    const std::string both = "Blend the spinach and parsley to a paste, then fold in the chopped dill.";
    CHECK(cut_of(both, "spinach") == "pureed");
    CHECK(cut_of(both, "parsley") == "pureed");
    CHECK(cut_of(both, "dill") == "chopped");
}

bool told(const Prediction& p, const std::string& id) {
    return std::any_of(p.cautions.begin(), p.cautions.end(), [&](const CautionText& c) { return c.id == id; });
}

Prediction of(std::vector<Line> lines, std::optional<Order> order = {}) {
    Formula f = formula(std::move(lines));
    f.process.order = order;
    return engine().predict(f).value();
}

TEST_CASE("cautions: much raw root or courgette that nobody squeezed wets the mass; beetroot keeps it red", "[cautions]") {
    for (const char* vegetable : {"beetroot", "zucchini"}) {
        INFO(vegetable);
        CHECK(told(of({line("beef-chuck", 2000), line(vegetable, 400, {"grated"}), line("table-salt", 36)}), "wet-vegetable"));
        CHECK_FALSE(
            told(of({line("beef-chuck", 2000), line(vegetable, 400, {"grated", "squeezed"}), line("table-salt", 36)}), "wet-vegetable"));
        CHECK_FALSE(told(of({line("beef-chuck", 2000), line(vegetable, 80, {"grated"}), line("table-salt", 36)}), "wet-vegetable"));
    }
    CHECK(told(of({line("beef-chuck", 2000), line("beetroot", 200), line("table-salt", 36)}), "stays-red"));
    CHECK_FALSE(told(of({line("beef-chuck", 2000), line("carrot", 200), line("table-salt", 36)}), "stays-red"));
}

TEST_CASE("cautions: salt from cheese, soy and olives counts, and mixing on and on is told", "[cautions]") {
    const auto salted = of({line("pork-shoulder", 2000), line("feta", 200), line("soy-sauce", 60), line("table-salt", 32)});
    CHECK(salted.nominal[Property::salt_pct_of_meat] > 2.2);
    CHECK(told(salted, "salt-over-usual"));
    CHECK_FALSE(told(of({line("pork-shoulder", 2000), line("table-salt", 38)}), "salt-over-usual"));
    Formula mixed = formula({line("pork-shoulder", 2000), line("table-salt", 36)});
    mixed.process.mixing_min = 12;
    CHECK(told(engine().predict(mixed).value(), "mixed-long"));
    mixed.process.mixing_min = 4;
    CHECK_FALSE(told(engine().predict(mixed).value(), "mixed-long"));
}

TEST_CASE("cautions: much raw leaf gives its water, blanched leaf has given it", "[cautions]") {
    for (const char* meat : {"whiting", "pork-shoulder"}) {
        CHECK(told(of({line(meat, 1500), line("spinach", 300), line("table-salt", 24)}), "raw-leaf-water"));
        CHECK(told(of({line(meat, 1500), line("chard", 100), line("parsley", 100), line("table-salt", 24)}), "raw-leaf-water"));
        CHECK_FALSE(told(of({line(meat, 1500), line("parsley", 60), line("table-salt", 24)}), "raw-leaf-water"));
        CHECK_FALSE(told(of({line(meat, 1500), line("spinach", 300, {"blanched", "squeezed"}), line("table-salt", 24)}), "raw-leaf-water"));
        const double raw = of({line(meat, 1500), line("spinach", 300), line("table-salt", 24)}).nominal[Property::cook_loss_pct],
                     none = of({line(meat, 1500), line("table-salt", 24)}).nominal[Property::cook_loss_pct];
        CHECK(raw > none);
    }
}

TEST_CASE("cautions: acid before the salt is told of, of meat and fish", "[cautions]") {
    for (const char* meat : {"cod", "pork-shoulder", "turkey-thigh"}) {
        const auto sour = [&](std::optional<Order> order) {
            return of({line(meat, 1500), line("lemon-juice", 90), line("table-salt", 24)}, order);
        };
        CHECK(told(sour(Order::acid_first), "acid-first"));
        CHECK_FALSE(told(sour(Order::salt_first), "acid-first"));
        CHECK_FALSE(told(sour(std::nullopt), "acid-first"));
        CHECK_FALSE(told(of({line(meat, 1500), line("table-salt", 24)}, Order::acid_first), "acid-first"));
    }
}

TEST_CASE("colour: chopped leek and spring onion lie in pieces as chopped leaf does") {
    const auto greenness = [](const std::string& food, const std::string& cut) {
        return of({line("pork-shoulder", 2000), line(food, 250, {cut}), line("table-salt", 36)}).properties[Property::greenness].mid;
    };
    for (const char* food : {"leek", "scallion"}) CHECK(greenness(food, "chopped") + 0.5 < greenness(food, "ground"));
}

}  // namespace leaf_cut_test
