// Names of makers, of sorts and of amounts in brackets.
#include "formula/reading.hpp"
#include "support/catch.hpp"
#include "support/knowledge.hpp"

using namespace standin;

namespace owned_and_measured_test {

LineReading line(const std::string& text) {
    auto read = read_closely("Test\n2000 g pork shoulder\n" + text, "f", knowledge());
    INFO(text);
    REQUIRE(read);
    REQUIRE(read->lines.size() == 2);
    return read->lines.back();
}

TEST_CASE("what belongs to somebody is no food of another tongue") {
    CHECK(line("2 tbsp Sarson's").asked);
    REQUIRE(line("300 g Tomato's").line);
    const auto vinegar = line("50 g malt vinegar (Zorbon's)");
    REQUIRE(vinegar.line);
    CHECK(vinegar.line->ingredient == "malt-vinegar");
    CHECK(vinegar.confidence == Confidence::unsure);
    const auto list = read_inventory("kale 200 g\nchard\nSarson's\nthyme", "f", knowledge());
    REQUIRE(list);
    REQUIRE(list->aside.size() == 1);
}

TEST_CASE("a volume in brackets measures what is counted") {
    const auto juice = line("Juice of 2 limes (about 1/4 cup)");
    REQUIRE(juice.line);
    CHECK(juice.line->grams.mid == Approx(60).epsilon(0.05));
    CHECK(line("250 ml milk (1 cup)").line->grams.mid == Approx(257).epsilon(0.02));
    const auto cups = line("2 cups parsley (1 big bunch)");
    REQUIRE(cups.line);
    CHECK(cups.confidence == Confidence::unsure);
}

TEST_CASE("fresh ones are not those known in vinegar") {
    CHECK(line("50 g peperoncini verdi freschi").line->ingredient == "green-chile");
    CHECK(line("3 green pepperoncini, fresh").asked);
    CHECK(line("5 pepperoncini from a jar").line->ingredient == "pepperoncini-pickled");
}

TEST_CASE("a sort in quotes is told") {
    const auto chard = line("Swiss chard 'Bright Lights' 200g");
    REQUIRE(chard.line);
    CHECK(chard.line->ingredient == "chard");
    CHECK(chard.line->notes.size() == 1);
}

}  // namespace owned_and_measured_test
