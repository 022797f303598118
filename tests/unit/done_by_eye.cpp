// Meat that is said to be done by how it looks: told where no core temperature is, kept wherever the formula goes, and never of what is
// no meat.
#include <algorithm>

#include "standin/engine.hpp"
#include "support/catch.hpp"

using namespace standin;

namespace done_by_eye_test {

const Engine& engine() {
    static const Result<Engine> engine = Engine::open({});
    return *engine;
}

Formula with(const std::string& method, const std::string& line = "") {
    const auto formula = engine().read_formula("Garden links\n1 kg pork shoulder\n18 g salt\n" + line + "\nMethod\n" + method + "\n", "f");
    INFO(method);
    REQUIRE(formula.has_value());
    return *formula;
}

std::size_t told(const Formula& formula, const std::string& words) {
    const auto cautions = engine().predict(formula).value().cautions;
    return static_cast<std::size_t>(std::count_if(cautions.begin(), cautions.end(), [&](const CautionText& c) {
        return c.id == "hazard-told" && c.text.find(words) != std::string::npos;
    }));
}

constexpr auto by_eye = "clear juice tells", served_pink = "served pink";

TEST_CASE("colour and juice are no sign of doneness, in every tongue") {
    for (const std::string said : {"Fry until no longer pink.",
                                   "Grill until there is no pink left in the middle.",
                                   "Roast until the juices run clear.",
                                   "Grill until golden outside.",
                                   "Fry the links until nicely browned all over.",
                                   "Bake until golden brown and serve.",
                                   "Cut one open: if it looks white all the way through it is done.",
                                   "Braten, bis es nicht mehr rosa ist.",
                                   "Braten, bis austretender Saft klar ist.",
                                   "Die Würste goldbraun grillen.",
                                   "Cuire à point.",
                                   "Cuire jusqu'à ce que la chair ne soit plus rosée.",
                                   "Griller les saucisses jusqu'à ce qu'elles soient bien dorées.",
                                   "Freír hasta que ya no se vea rosa por dentro.",
                                   "Asar hasta que los jugos salgan claros.",
                                   "Cuocere finché il succo che esce è trasparente.",
                                   "Cuocere finché non sono più rosa all'interno.",
                                   "Grelhar as linguiças até ficarem douradas.",
                                   "Fritar até o suco sair transparente.",
                                   "Bakken tot het vlees niet meer roze is.",
                                   "Smażyć, aż mięso w środku nie będzie różowe.",
                                   "Péct, dokud maso není růžové.",
                                   "Жарить, пока сок не станет прозрачным.",
                                   "Sosisleri kızarana kadar pişirin."}) {
        const Formula formula = with(said);
        CAPTURE(said);
        CHECK(told(formula, by_eye) == 1);
        CHECK(told(formula, served_pink) == 0);
        for (const auto& text : {engine().formula_text(formula), engine().formula_json(formula)}) {
            const auto again = engine().read_formula(text, "f");
            REQUIRE(again.has_value());
            CHECK(told(*again, by_eye) == 1);
        }
    }
}

TEST_CASE("where a core temperature is told, how it looks is told of nobody's doneness") {
    CHECK(told(with("Grill the links until golden outside and no longer pink.\nTake the core: 71 C."), by_eye) == 0);
    CHECK(told(with("Grill the links until golden brown.", "core: 71 C"), by_eye) == 0);
    CHECK(told(with("Cook until no longer pink, 71 C in the middle."), by_eye) == 0);
    CHECK(with("Grill the links until golden brown.", "core: 71 C").note.empty());
}

TEST_CASE("the colour of the raw mass, of onions and crumbs judges no meat") {
    for (const std::string said :
         {"Mix until the mass is tacky and evenly pink.", "Sweat the onions until golden, then cool them.",
          "Toast the crumbs golden brown.", "Zwiebeln goldgelb anschwitzen.", "Die Masse soll rosa und bindig sein.",
          "Faire dorer les oignons.", "Rosolare la cipolla.", "Rinse the rice until the water runs clear.",
          "Do not judge by the colour of the meat: use a thermometer."}) {
        CAPTURE(said);
        CHECK(told(with(said), by_eye) == 0);
    }
}

}  // namespace done_by_eye_test
