// What only shares a fryer with the batch is told as what may be in it, and is no ingredient of the label.
#include "formula/reading.hpp"
#include "standin/engine.hpp"
#include "support/catch.hpp"
#include "support/knowledge.hpp"

using namespace standin;

namespace contact_on_label_test {

std::string label(const std::string& note) {
    const auto engine = Engine::open({});
    REQUIRE(engine);
    const auto read = engine->read_formula("Test\n1000 g pork shoulder\n18 g table salt\nnote: " + note + "\n", "f");
    REQUIRE(read);
    const auto predicted = engine->predict(*read);
    REQUIRE(predicted);
    return predicted->label;
}

TEST_CASE("a shared fryer stands on the label as what may be in it") {
    const std::string shared = label("Cooked in the same fryer as the breaded prawns.");
    const auto may = shared.find("May contain: ");
    REQUIRE(may != std::string::npos);
    CHECK(shared.find("CRUSTACEAN") > may);
    CHECK(shared.find("WHEAT") > may);
    CHECK(shared.find("own words") == std::string::npos);
}

TEST_CASE("what a note says it contains is an ingredient") {
    const std::string held = label("Contains celery.");
    CHECK(held.find("own words") != std::string::npos);
    CHECK(held.find("May contain") == std::string::npos);
}

TEST_CASE("what a packet says its food may hold is no part of that food") {
    const auto engine = Engine::open({});
    for (const std::string line : {"60 g breadcrumbs (may contain traces of peanut)", "60 g breadcrumbs (traces of peanut)",
                                   "60 g pan rallado (el paquete avisa: puede llevar trazas de cacahuete)",
                                   "60 g breadcrumbs (kann Spuren von Erdnuss enthalten)"}) {
        INFO(line);
        const auto predicted = engine->predict(*engine->read_formula("Test\n1000 g pork shoulder\n18 g table salt\n" + line + "\n", "f"));
        const auto may = predicted->label.find("May contain: ");
        REQUIRE(may != std::string::npos);
        CHECK(predicted->label.find("PEANUT") > may);
    }
    const auto held =
        engine->predict(*engine->read_formula("Test\n1000 g pork shoulder\n60 g breadcrumbs (contains peanut)\n18 g salt\n", "f"));
    CHECK(held->label.find("May contain") == std::string::npos);
    CHECK(held->label.find("PEANUT") != std::string::npos);
}

}  // namespace contact_on_label_test
