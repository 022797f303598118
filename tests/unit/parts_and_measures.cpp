// What is told of a part, of whose spoon it is, of what is done to a spice, and of a measure that nobody knows.
#include <algorithm>

#include "formula/line/line_text.hpp"
#include "formula/reading.hpp"
#include "formula/words/tongues.hpp"
#include "standin/narrate.hpp"
#include "support/catch.hpp"
#include "support/knowledge.hpp"

using namespace standin;

namespace parts_and_measures_test {

Result<ReadLine> read(const std::string& line) { return read_line(line, Origin("", {1, 1}), knowledge()); }

std::string done_to(const std::string& line) {
    const auto one = read(line);
    INFO(line);
    REQUIRE(one);
    std::string all;
    for (const auto& step : one->line.prepared) all += (all.empty() ? "" : ", ") + step.preparation;
    return all;
}

std::string notes_of(const std::string& line) {
    const auto one = read(line);
    INFO(line);
    REQUIRE(one);
    std::string all;
    for (const auto& note : in_full(one->line.notes)) all += note + "\n";
    return all;
}

Confidence confidence_of(const std::string& line) {
    const auto one = read(line);
    INFO(line);
    REQUIRE(one);
    auto least = Confidence::sure;
    for (const auto& doubt : one->doubts) least = std::max(least, doubt.confidence);
    return least;
}

Error asked(const std::string& line) {
    const auto one = read(line);
    INFO(line);
    REQUIRE(!one);
    return one.error();
}

bool reads_in_english(const std::string& line, const std::string& as) {
    const auto ways = in_english(line, knowledge());
    return std::any_of(ways.begin(), ways.end(), [&](const auto& way) { return way.text == as; });
}

TEST_CASE("a part that alone goes in is told, where no record weighs it apart") {
    for (const std::string line : {"6 scallions, green parts only", "6 scallions, white and light green parts only",
                                   "1 bunch cilantro, stems only", "4 cipollotti, solo la parte verde", "1 head broccoli, florets only",
                                   "2 leeks, green part only", "2 stalks celery, leaves only", "6 scallions, stalks only"}) {
        CHECK(notes_of(line).find("that of the whole") != std::string::npos);
        CHECK(confidence_of(line) == Confidence::unsure);
    }
    CHECK(notes_of("1 leek, white part only").empty());
    CHECK(notes_of("3 stalks lemongrass, white part only").empty());
    CHECK(confidence_of("100 g scallions, green parts only") == Confidence::likely);
    CHECK_FALSE(read("1 bunch beets, greens only"));
}

TEST_CASE("what is done to a spice is done, though it is called so as well") {
    CHECK(done_to("10 g black pepper, cracked") == "crushed");
    CHECK(done_to("2 tsp black peppercorns, cracked") == "crushed");
    CHECK(done_to("5 juniper berries, crushed") == "crushed");
    CHECK(done_to("3 Wacholderbeeren, zerstoßen") == "crushed");
    CHECK(done_to("10 g cumin, ground, toasted") == "ground, toasted");
    CHECK(done_to("10 g allspice, ground") == "ground");
    CHECK(done_to("60 g pepitas tostadas") == "toasted");
    CHECK(done_to("1 bouquet de persil effeuillé") == "stemmed");
    CHECK(read("10 g garlic, minced, dried")->line.ingredient != "garlic");
}

TEST_CASE("minced meat whose fat nobody says is told with the fat that is taken") {
    CHECK(notes_of("500 g ground beef").find("20 % fat") != std::string::npos);
    CHECK(confidence_of("500 gr dana kıyma") == Confidence::likely);
    CHECK(confidence_of("500 g ground beef (85% lean)") == Confidence::sure);
    CHECK(confidence_of("500 g ground pork (80/20)") == Confidence::sure);
}

TEST_CASE("two measures that differ are shown as they stand in the line") {
    CHECK(asked("1 cup (60 ml) lemon juice").hints == std::vector<std::string>{"1 cup", "60 ml"});
    CHECK(asked("2.500 g pork jowl").message.find("2500 g or 2.5 kg, or as 2.5 g") != std::string::npos);
    CHECK(asked("2,250 kg spinach").message.find("2250 kg or 2.25 kg") != std::string::npos);
}

TEST_CASE("a word that nobody knows between the number and the food is no number of grams") {
    CHECK(asked("2 zorb garlic").message.find("where a measure stands") != std::string::npos);
    CHECK(asked("1 zorb onion").message.find("\"zorb\"") != std::string::npos);
    const auto sheet = read_closely("Test\n1 kg pork shoulder\nsalt 18\npepper 2\n2 zorb garlic\n", "", knowledge());
    REQUIRE(sheet);
    for (const auto& line : sheet->lines)
        if (line.written == "2 zorb garlic") CHECK(line.asked);
}

TEST_CASE("a food that is known is not the word to blame") {
    CHECK(asked("300 g spinazie, gezorbd en uitgeknepen").message.find("\"spinazie\"") == std::string::npos);
}

TEST_CASE("a reading word for word has no bracket that is empty or half") {
    CHECK(reads_in_english("2 colheres (chá) de cominhos", "2 tsp of cumin"));
    CHECK(reads_in_english("1 bunch cilantro (leaves and tender stems), chopped", "1 bunch cilantro, chopped"));
    CHECK(reads_in_english("3 Eier (Gr. L)", "3 egg (size l)"));
}

TEST_CASE("a figure far below what the food has is a share") {
    const auto sheet = read_closely("Test\n1 kg pork shoulder\nVinegar (cider) 1 %\n", "", knowledge());
    REQUIRE(sheet);
    REQUIRE(sheet->formula);
    CHECK(sheet->formula->lines.back().grams.mid == Approx(10));
    CHECK_FALSE(read_closely("Test\n1 kg pork shoulder\nVinegar 5 %\n", "", knowledge())->formula);
}

TEST_CASE("an egg and a yolk, a zest and a juice are two lines in any tongue") {
    for (const std::string line : {"un oeuf entier + 1 jaune", "1 oeuf entier et 1 jaune", "1 limone (scorza e succo)",
                                   "1 orange (zest & juice)", "1 Zitrone (Saft und Abrieb)"}) {
        const auto sheet = read_closely("Test\n1 kg pork shoulder\n" + line + "\n", "", knowledge());
        INFO(line);
        REQUIRE(sheet);
        REQUIRE(sheet->formula);
        CHECK(sheet->formula->lines.size() == 3);
    }
    const auto peppers = read_closely("Test\n1 kg pork shoulder\n1 poivron rouge et 1 jaune\n", "", knowledge());
    REQUIRE(peppers);
    if (peppers->formula)
        for (const auto& line : peppers->formula->lines) CHECK(line.ingredient != "egg-yolk");
}

}  // namespace parts_and_measures_test
