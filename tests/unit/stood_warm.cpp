// Meat and mass that stood warm for hours is thrown out, whatever words say so.
#include "formula/hazards/stood_warm.hpp"

#include <filesystem>
#include <fstream>
#include <nlohmann/json.hpp>

#include "formula/reading.hpp"
#include "standin/engine.hpp"
#include "support/catch.hpp"
#include "support/knowledge.hpp"
#include "support/places.hpp"

using namespace standin;

namespace stood_warm_test {

TEST_CASE("hours out of the cold are heard in any words") {
    for (const std::string said :
         {"the mass stood on the bench overnight at 20 C", "Stood on the bench overnight.", "the meat was in the kitchen all day",
          "it lay on the table from morning to evening", "the mass sat at 22 C for 5 hours", "left out of the fridge for 6 h",
          "The mass with onions and garlic in it stood on the counter overnight", "it was at room temperature since yesterday",
          "The links hung in the kitchen overnight", "was on the bench from 8 to 17", "stood at 70 F for four hours",
          "It stood on the bench overnight instead of in the fridge", "die Masse stand über Nacht auf der Arbeitsplatte",
          "Das Fleisch lag den ganzen Tag in der Küche", "la masse est restée toute la nuit sur la table",
          "la masa quedó toda la noche en la encimera", "l'impasto è rimasto tutta la notte sul tavolo",
          "a massa ficou toda a noite na bancada", "chilled an hour, then stood on the worktop all afternoon"}) {
        INFO(said);
        CHECK_FALSE(stood_warm(said, knowledge()).empty());
        const auto read = read_formula("Test\n1 kg pork shoulder\n18 g salt\nnote: " + said + "\n", "f", knowledge());
        CHECK_FALSE(read.has_value());
    }
}

TEST_CASE("what stood cold, shortly or is no meat is let be") {
    for (const std::string said :
         {"rested overnight in the fridge, then ten minutes on the bench", "the mass stood in the fridge overnight",
          "I stood in the kitchen all day", "the dough stood on the counter overnight", "beans were soaked on the counter overnight",
          "the kitchen was warm all day", "it stood on the bench for 20 minutes", "the links were held at 65 C for 3 hours",
          "the mass was at 3 C for 20 hours", "the butter was left on the table overnight", "stood in the cold room from 8 to 17",
          "the radio was on in the kitchen all day", "the meat was on ice in the car all day"}) {
        INFO(said);
        CHECK(stood_warm(said, knowledge()).empty());
    }
}

TEST_CASE("every word of its lists is tried") {
    std::ifstream file(std::filesystem::path(knowledge_folder()) / "lexicon/stood_warm.json");
    const auto lists = nlohmann::json::parse(file).at("lists");
    for (const auto& list : lists)
        for (const std::string word : list.at("words")) {
            const std::string wanted = list.at("try").at("becomes");
            if (wanted == "thawed") continue;
            std::string line = list.at("try").at("line");
            line.replace(line.find("{word}"), 6, word);
            const bool warm = !stood_warm(line, knowledge()).empty();
            INFO(list.at("id") << ": " << line);
            CHECK(warm == (wanted == "stood warm"));
        }
}

TEST_CASE("what is thrown out is not mended, and nothing is weighed in") {
    const auto engine = Engine::open({});
    const auto read =
        engine->read_formula("Test\n1 kg pork shoulder\n18 g salt\nNote: the mass stood on the bench overnight at 20 C.\n", "f");
    REQUIRE_FALSE(read.has_value());
    CHECK(read.error().message.find("Throw it out") != std::string::npos);
}

}  // namespace stood_warm_test
