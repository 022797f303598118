// Names that two foods share are asked back where nothing in the line tells which is meant, by records that a kitchen may add to.
#include "formula/line/line_text.hpp"
#include "formula/reading.hpp"
#include "standin/engine.hpp"
#include "support/catch.hpp"
#include "support/knowledge.hpp"

using namespace standin;

namespace namesakes_test {

std::string becomes(const std::string& line, const Knowledge& knowledge) {
    const auto read = read_line(line, Origin("", {1, 1}), knowledge);
    return read ? read->line.ingredient : "asked";
}

TEST_CASE("every example of a namesake becomes what its record says") {
    const auto& all = knowledge().records().lexicon.namesakes;
    CHECK(all.size() >= 8);
    for (const auto& one : all)
        for (const auto& [line, wanted] : one.examples) {
            CAPTURE(one.id, line);
            CHECK(becomes(line, knowledge()) == wanted);
        }
}

TEST_CASE("a namesake is asked in its own words, with the foods it may be") {
    const auto read = read_line("2 tbsp chilli powder", Origin("", {1, 1}), knowledge());
    REQUIRE_FALSE(read);
    CHECK(read.error().message.find("many times as hot") != std::string::npos);
    for (const auto& one : knowledge().records().lexicon.namesakes) CHECK_FALSE(one.hints.empty());
}

TEST_CASE("whoever looks up a word that two foods share sees both") {
    static const auto engine = Engine::open({});
    const auto answer = engine->lookup("phak chi farang");
    REQUIRE(answer.matches.size() == 2);
    CHECK(answer.matches[0].id == "culantro");
    CHECK(answer.matches[1].id == "parsley");
}

TEST_CASE("a namesake of one's own is asked back") {
    Records records = knowledge().records();
    Namesake own;
    own.id = "own";
    own.question = "which of our two";
    own.names = {"chard"};
    own.told_by = {"ruby"};
    records.lexicon.namesakes.push_back(own);
    const Knowledge ours(std::move(records));
    CHECK(becomes("200 g chard", ours) == "asked");
    CHECK(becomes("200 g chard", knowledge()) == "chard");
}

}  // namespace namesakes_test
