// What freezing does, and what of a glut keeps.
#include "standin/cold_store.hpp"

#include <algorithm>

#include "formula/reading.hpp"
#include "standin/engine.hpp"
#include "support/catch.hpp"
#include "support/kitchen.hpp"
#include "worksheet/freezing.hpp"
#include "worksheet/glut.hpp"

using namespace standin;

namespace cold_store_test {

bool tells(const Formula& f, const std::string& id) {
    const auto notes = freezing_of(weights_only(f, knowledge()), knowledge());
    return std::any_of(notes.begin(), notes.end(), [&](const FreezingNote& n) { return n.id.find(id) != std::string::npos; });
}

TEST_CASE("freezing notes follow what is in the mass", "[cold]") {
    const Formula plain = formula({line("pork-shoulder", 1000), line("table-salt", 18)});
    CHECK(tells(plain, "keeps"));
    CHECK(tells(plain, "bind"));
    CHECK_FALSE(tells(plain, "green"));
    CHECK_FALSE(tells(plain, "heat"));
    CHECK(tells(formula({line("pork-shoulder", 1000), line("spinach", 100)}), "green"));
    CHECK(tells(formula({line("pork-shoulder", 1000), line("serrano", 20)}), "heat"));
    CHECK(tells(formula({line("pork-shoulder", 1000), line("garlic", 20)}), "allium"));
}

TEST_CASE("a glut is what there is plenty of, each with what is left and how long it keeps", "[cold]") {
    const auto stock = read_inventory(
        "spinach plenty\nchard 400 g\nplenty of serranos\nparsley\nlots of frozen spinach\ncollards: too much", "i", knowledge());
    REQUIRE(stock);
    const auto glut = glut_of(*stock, knowledge());
    REQUIRE(glut.size() == 3);
    CHECK(glut[0].ingredient == "spinach");
    CHECK(glut[0].yield > 0.2);
    CHECK(glut[0].yield < knowledge().ingredient("spinach")->edible->band.mid);
    CHECK(glut[0].says.find("Blanch 2 minutes") != std::string::npos);
    CHECK(glut[0].says.find("8 to 12 months") != std::string::npos);
    CHECK(glut[1].ingredient == "serrano");
    CHECK(glut[2].says.find("3 minutes") != std::string::npos);
}

TEST_CASE("every freezer record is about a food or a family that there is", "[cold]") {
    for (const auto& p : knowledge().records().parameters) {
        if (p.id.rfind("cold.keep.", 0) != 0 && p.id.rfind("cold.blanch.", 0) != 0) continue;
        INFO(p.id);
        const std::string name = p.id.substr(p.id.rfind('.') + 1);
        const auto& foods = knowledge().records().ingredients;
        CHECK(std::any_of(foods.begin(), foods.end(), [&](const Ingredient& i) { return i.id == name || i.family == name; }));
        CHECK((p.quantity.unit == "months" || p.quantity.unit == "min"));
    }
}

}  // namespace cold_store_test
