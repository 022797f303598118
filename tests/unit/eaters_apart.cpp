// Whom a dish harms for another reason than germs or an allergy, and who only sounds like one of them.
#include <algorithm>

#include "formula/reading.hpp"
#include "safety/promises.hpp"
#include "standin/narrate.hpp"
#include "support/catch.hpp"
#include "support/knowledge.hpp"

using namespace standin;

namespace eaters_apart_test {

Formula read(const std::string& title, const std::string& line, const std::string& note) {
    const auto formula = read_formula(title + "\n1 kg pork shoulder\n18 g salt\n" + line + "\nnote: " + note + "\n", "f", knowledge());
    INFO(title << " / " << note);
    REQUIRE(formula.has_value());
    return *formula;
}

std::string told(const Formula& formula) {
    std::string all;
    for (const auto& one : formula.read_as) all += in_full(one) + "\n";
    for (const auto& one : broken_promises(formula, knowledge())) all += one.id + ": " + one.text + "\n";
    return all;
}

bool says(const std::string& text, const std::string& part) { return text.find(part) != std::string::npos; }

TEST_CASE("who takes warfarin or an MAO inhibitor is told what the plate does to the medicine, in a note and in a title") {
    for (const std::string note : {"Dad takes warfarin.", "She is on blood thinners.", "Oma nimmt Blutverdünner.",
                                   "Mon père prend des anticoagulants.", "Toma anticoagulantes.", "Prende anticoagulanti."})
        CHECK(says(told(read("Links", "200 g kale", note)), "vitamin K"));
    CHECK(says(told(read("Links for Dad, who takes warfarin", "200 g kale", "Fry well.")), "vitamin K"));
    CHECK(says(told(read("Links", "40 g soy sauce", "My aunt is on an MAOI.")), "tyramine"));
    CHECK_FALSE(says(told(read("Links", "200 g kale", "Dad loves greens.")), "vitamin K"));
}

TEST_CASE("what the dog gets has no garlic") {
    for (const std::string note : {"The dog gets the rest.", "Keep the scraps for the dog.", "Die Reste bekommt der Hund.",
                                   "Les restes sont pour le chien.", "Las sobras son para el perro."})
        CHECK(says(told(read("Links", "20 g garlic", note)), "blood cells"));
    for (const std::string note : {"Walk the dog for an hour while it rests.", "Serve like a hot dog.", "Never give any to the dog."})
        CHECK_FALSE(says(told(read("Links", "20 g garlic", note)), "blood cells"));
}

TEST_CASE("mould on a fresh sausage is wiped off by nobody") {
    for (const std::string note : {"If a few white spots grow on them, just wipe them off.", "Cut off the mould and go on."})
        CHECK(says(told(read("Links", "20 g garlic", note)), "thrown away whole"));
    for (const std::string note : {"Mould into patties and chill.", "Press into a mould.", "Throw it away when mould shows."})
        CHECK_FALSE(says(told(read("Links", "20 g garlic", note)), "thrown away whole"));
}

TEST_CASE("blanched leaf does not cool on the board for hours") {
    CHECK(says(told(read("Links", "200 g spinach, blanched", "Cool the blanched spinach on the board for the afternoon.")), "nitrite"));
    CHECK_FALSE(says(told(read("Links", "200 g spinach, blanched", "Cool the blanched spinach in ice water and squeeze.")), "nitrite"));
}

TEST_CASE("what thaws on the counter is told as meat, and not as a dish at the table") {
    const auto all = told(read("Links", "20 g garlic", "Thaw the meat on the counter overnight, then grind."));
    CHECK(says(all, "thawed in the fridge"));
    CHECK_FALSE(says(all, "cooked food"));
}

TEST_CASE("a surname behind a word of kin is nobody's age") {
    for (const std::string title : {"Father Newborn's green links", "Father Newborn's Green Links", "Brother Child's links"})
        CHECK_FALSE(says(told(read(title, "20 g garlic", "Fry.")), "title-promise"));
    for (const std::string title : {"My newborn's first links", "For Father and the newborn", "Sister's newborn's links"})
        CHECK(says(told(read(title, "20 g garlic", "Fry.")), "title-promise"));
}

TEST_CASE("room is where it is warm, and no cream") {
    for (const std::string note : {"Avoid leaving at room temperature.", "Avoid leaving them in a warm room.", "Avoid heating the butter."})
        CHECK_FALSE(says(told(read("Links", "20 g garlic", note)), "guest-"));
    CHECK(says(told(read("Links", "20 g garlic", "Ben avoids milk.")), "guest-"));
    CHECK(says(told(read("Links", "20 g garlic", "Hij mag geen room.")), "guest-"));
}

TEST_CASE("oats in what is called gluten-free are such as are sold so") {
    const auto plain = told(read("Gluten-free links", "100 g rolled oats", "Fry."));
    CHECK(says(plain, "but the batch has what that takes in"));
    CHECK(says(plain, "only such as are sold as gluten-free"));
    const auto clean = told(read("Gluten-free links", "100 g oat flour (certified gluten-free)", "Fry."));
    CHECK_FALSE(says(clean, "but the batch has what that takes in"));
    CHECK(says(clean, "bear no oats"));
    CHECK(says(told(read("Links", "100 g gluten-free oats", "My sister is coeliac.")), "bear no oats"));
    CHECK(says(told(read("Gluten-free links", "100 g gluten-free oats\n50 g dry breadcrumbs", "Fry.")), "dry breadcrumbs"));
    CHECK_FALSE(says(told(read("Gluten-free links", "100 g rice flour", "Fry.")), "oats"));
    CHECK_FALSE(says(told(read("Links", "100 g rolled oats", "Fry.")), "bear no oats"));
}

}  // namespace eaters_apart_test
