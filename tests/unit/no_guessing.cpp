// A word that is another food's is never taken for the nearest name.
#include <algorithm>
#include <filesystem>
#include <fstream>
#include <nlohmann/json.hpp>

#include "core/contains.hpp"
#include "core/names.hpp"
#include "formula/line/line_text.hpp"
#include "knowledge/records/word_list.hpp"
#include "support/catch.hpp"
#include "support/knowledge.hpp"
#include "support/places.hpp"

using namespace standin;

namespace no_guessing_test {

std::string became(const std::string& line) {
    const auto read = read_line(line, Origin("", {1, 1}), knowledge());
    return read ? read->line.ingredient : "asked";
}

TEST_CASE("every word of a food that is no record is asked about", "[long]") {
    std::ifstream file(std::filesystem::path(knowledge_folder()) / "lexicon/other_foods.json");
    std::string guessed;
    std::size_t words = 0;
    const auto lexicon = nlohmann::json::parse(file);
    for (const auto& list : lexicon.at("lists"))
        for (const std::string word : list.at("words")) {
            ++words;
            CHECK(knowledge().in_list(WordList::other_food, fold(word)));
            for (const auto& line : {"30 g " + word, "30 g " + word + "s"})
                if (const auto food = became(line); food != "asked") guessed += "\n  " + line + ": " + food;
        }
    INFO(guessed);
    CHECK(guessed.empty());
    CHECK(words > 300);
}

TEST_CASE("a guess is one letter or one swap, within the tongue, and never the first letter") {
    CHECK(became("30 g spinich") == "spinach");
    CHECK(became("30 g parsely") == "parsley");
    CHECK(became("1 kg pork sholder") == "pork-shoulder");
    for (const auto* line : {"30 g mangold leafs of zorb", "30 g romeso", "30 g pistta", "30 g lahanna", "30 g calamars rings",
                             "30 g darsley", "30 g malted milk", "30 g crispy chard", "30 g raw milk cheese", "30 g spxnxch"}) {
        CAPTURE(line);
        CHECK(became(line) == "asked");
    }
}

TEST_CASE("what was bought pickled or dried is told") {
    const auto told = [](const std::string& line) {
        const auto read = read_line(line, Origin("", {1, 1}), knowledge());
        if (!read) return std::string("asked");
        return read->line.notes.empty() ? std::string() : in_full(read->line.notes.back());
    };
    CHECK(told("30 g pickled onions").find("pickled at home") != std::string::npos);
    CHECK(told("30 g dried apple").find("sulphite") != std::string::npos);
    CHECK(contains(knowledge().ingredient("sun-dried-tomato")->may_hold, std::string("sulphite")));  // a food of its own
    CHECK(told("300 g spinach").empty());
}

TEST_CASE("words of cures, and bear, are asked with what they are") {
    for (const auto* line : {"5 g celery powder", "5 g celery juice", "5 g salnitre"}) {
        const auto read = read_line(line, Origin("", {1, 1}), knowledge());
        CAPTURE(line);
        REQUIRE_FALSE(read);
        CHECK(read.error().message.find("nitrite") != std::string::npos);
    }
    const auto bear = read_line("1 kg bear", Origin("", {1, 1}), knowledge());
    REQUIRE_FALSE(bear);
    CHECK(bear.error().message.find("Trichinella") != std::string::npos);
    CHECK(bear.error().message.find("line of its own") == std::string::npos);
}

}  // namespace no_guessing_test
