#include "formula/reading.hpp"

#include "support/catch.hpp"
#include "support/knowledge.hpp"

using namespace standin;

namespace reading_test {

FormulaReading closely(const std::string& text) {
    auto reading = read_closely(text, "f.txt", knowledge());
    if (!reading) FAIL(reading.error().message);
    return std::move(*reading);
}

bool has(const std::string& text, const std::string& part) { return text.find(part) != std::string::npos; }

TEST_CASE("every line is told as written and as understood") {
    const auto r =
        closely("Hedge\n2 kg pork shoulder\n300 g spinach, blanched 3 min\n1 cup parsley\n1 lb pork\nsalt to taste\n300 g spnch\n");
    REQUIRE(r.lines.size() == 6);
    CHECK(r.title == "Hedge");
    CHECK_FALSE(r.formula);
    CHECK(r.lines[0].confidence == Confidence::sure);
    CHECK(r.lines[0].why.empty());
    CHECK(r.lines[1].prepared == std::vector<std::string>{"blanched 3 min"});
    CHECK(r.lines[1].name == "spinach");
    CHECK(r.lines[1].where == "f.txt:3:1");
    CHECK(r.lines[2].confidence == Confidence::unsure);  // whole leaves or chopped
    CHECK(r.lines[3].confidence == Confidence::unsure);
    CHECK(has(in_full(r.lines[3].why.front()), "\"pork\" read as pork shoulder"));
    REQUIRE(r.lines[4].asked);
    REQUIRE(r.lines[5].asked);
    CHECK(r.lines[5].written == "300 g spnch");
}

TEST_CASE("what is understood wholly is the formula that strict reading gives") {
    const std::string text = "Hedge\n2 kg pork\n36 g salt\nrest: 12 h\n";
    const auto r = closely(text);
    REQUIRE(r.formula);
    const auto strict = read_formula(text, "f.txt", knowledge());
    REQUIRE(strict);
    CHECK(r.formula->lines.size() == strict->lines.size());
    CHECK(r.formula->process.rest_h == 12.0);
    REQUIRE(strict->lines[0].notes.size() == 1);
    CHECK(has(in_full(strict->lines[0].notes.front()), "say which"));
    CHECK(strict->lines[1].notes.empty());
}

TEST_CASE("a pint says which one was taken, and its band reaches to the other") {
    const auto r = closely("Wet\n2 kg pork shoulder\n1 pint water\n1 imperial pint water\n");
    CHECK(has(in_full(r.lines[1].why.front()), "US pint"));
    CHECK(r.lines[1].line->grams.high > 560);
    CHECK(r.lines[1].line->notes.size() == 1);
    CHECK(r.lines[2].line->grams.mid == Approx(568).epsilon(0.01));
    CHECK(r.lines[2].line->notes.empty());
}

TEST_CASE("troubles beside the lines are told too") {
    const auto r = closely("Bad\n2 kg pork shoulder\nplate: 10 bananas\n");
    CHECK_FALSE(r.formula);
    REQUIRE(r.errors.size() == 1);
    CHECK(has(r.errors.front().where, "f.txt:3:"));
}

TEST_CASE("a slip in the first line is no title") {
    const auto r = closely("300 g spnch\n2 kg pork shoulder\n");
    CHECK(r.title.empty());
    REQUIRE(r.lines.size() == 2);
    CHECK(r.lines[0].asked);
}

TEST_CASE("real names go before trade words, and slips are no trade words") {
    const auto r = closely("Names\n2 kg pork shouder\n5 g white pepper\n5 g pepper, white\n1 kg pork fat\n");
    CHECK(r.lines[0].line->ingredient == "pork-shoulder");
    CHECK(has(in_full(r.lines[0].why.back()), "\"shouder\" taken for \"shoulder\""));
    CHECK(r.lines[0].confidence == Confidence::unsure);
    CHECK(r.lines[1].line->notes.empty());
    CHECK(r.lines[2].line->ingredient == "white-pepper");
    CHECK(r.lines[2].line->notes.empty());
    CHECK(r.lines[3].line->ingredient == "pork-fat-trim");
}

TEST_CASE("an inventory notes its trade words") {
    const auto inventory = read_inventory("pork 2 kg\nchard plenty\n", "i.txt", knowledge());
    REQUIRE(inventory);
    REQUIRE(inventory->notes.size() == 1);
    CHECK(has(in_full(inventory->notes.front()), "pork shoulder"));
}

TEST_CASE("a share is unsure while a line is not understood") {
    const auto part = closely("Green\n2 kg pork shoulder\n300 g spnch\nsalt, 1.8 % of meat\n");
    CHECK(part.lines[2].confidence == Confidence::unsure);
    CHECK(part.lines[2].line->grams.mid == Approx(36));
    CHECK(closely("Green\n2 kg pork shoulder\nsalt, 1.8 % of meat\n").lines[1].confidence == Confidence::sure);
}

}  // namespace reading_test
