// What only shares a fryer with the batch is told as what may be in it, and is no ingredient of the label.
#include "formula/formats/reading.hpp"
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

}  // namespace contact_on_label_test
