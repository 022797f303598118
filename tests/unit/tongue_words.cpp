// Words of other tongues: each that names a food is tried in a line.
#include <set>

#include "formula/line/line_text.hpp"
#include "formula/words/tongues.hpp"
#include "support/catch.hpp"
#include "support/knowledge.hpp"

using namespace standin;

namespace tongue_words_test {

std::string read_as(const std::string& line) {
    const auto read = read_line(line, Origin("", {1, 1}), knowledge());
    return read ? read->line.ingredient : "";
}

// A name that the records have themselves is read as it stands.
bool named_already(const std::string& word) {
    return knowledge().ingredient_named(word) != nullptr || knowledge().ingredient_meant(word) != nullptr;
}

TEST_CASE("a word of two tongues that is another food in each is asked back, unless the line tells the tongue") {
    CHECK(read_as("60 g salsa").empty());
    CHECK(read_as("60 g salsa verde").empty());
    CHECK(read_as("1 ramo de salsa") == "parsley");
    CHECK(read_as("20 g salsa picada") == "parsley");
    CHECK(read_as("60 g salsa de tomate") == "tomato-sauce");
}

TEST_CASE("a word of another tongue that names a food is read as that food", "[long]") {
    const std::set<std::string> of_two_tongues{"salsa", "Piment", "batata", "batatas"};
    std::size_t foods = 0;
    std::string missed;
    std::set<std::string> languages;
    for (const auto& word : knowledge().records().lexicon.tongue) {
        if (!knowledge().ingredient_named(word.english) || named_already(word.word) || of_two_tongues.count(word.word)) continue;
        const std::string own = read_as("100 g " + word.english), other = read_as("100 g " + word.word);
        if (own.empty()) continue;  // asked back in English too
        ++foods;
        languages.insert(word.language);
        if (other != own) missed += "\n  " + word.language + ": " + word.word + ": " + other + ", not " + own;
    }
    INFO(missed);
    CHECK(missed.empty());
    CHECK(foods > 500);
    CHECK(languages.size() >= 5);
}

TEST_CASE("no tongue is asked twice") {
    const auto& all = knowledge().tongues();
    CHECK(std::set<std::string>(all.begin(), all.end()).size() == all.size());
}

TEST_CASE("only what came from another tongue is told so") {
    const auto read = [](const std::string& line) { return read_line(line, Origin("", {1, 1}), knowledge()).value(); };
    CHECK(read("2 gousses d'ail").translated);
    std::size_t reworded = 0;
    for (const auto& word : knowledge().records().lexicon.tongue) {
        if (word.language != "en" || word.english.empty()) continue;
        const auto line = read_line("100 g spinach, " + word.word, Origin("", {1, 1}), knowledge());
        if (!line) continue;
        ++reworded;
        INFO(word.word);
        CHECK_FALSE(line->translated);
    }
    CHECK(reworded > 5);
}

}  // namespace tongue_words_test
