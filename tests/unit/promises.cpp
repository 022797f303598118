// A title that promises what its lines break.
#include "safety/promises.hpp"

#include "safety/title_words.hpp"
#include "support/catch.hpp"
#include "support/kitchen.hpp"

using namespace standin;

namespace promises_test {

std::vector<CautionText> cautions(const std::string& title, std::vector<std::string> foods, const std::string& casing = {}) {
    Formula made;
    made.title = title;
    for (auto& food : foods) made.lines.push_back(line(food, 100));
    if (!casing.empty()) made.beside.push_back({casing, BesideKind::casing});
    return broken_promises(made, knowledge());
}

TEST_CASE("promises: free of the fourteen or the nine, and keeping without a fridge, are told of") {
    for (const auto* title : {"Free from all 14 allergens", "Free from the fourteen", "Contains none of the 14 allergens",
                              "Free from the big 9", "Big-9-free links", "Frei von allen 14 Allergenen", "Sans les 14 allergènes"}) {
        CAPTURE(title);
        CHECK(cautions(title, {"pork-shoulder", "soy-sauce"}).size() == 1);
    }
    CHECK(cautions("14 links, free range", {"pork-shoulder", "soy-sauce"}).empty());
    for (const auto* title : {"Camping sausage, no fridge needed", "Hält sich zwei Wochen im Kühlschrank",
                              "Se conserva un mes en la nevera", "Prêt à manger, sans cuisson"}) {
        CAPTURE(title);
        CHECK(cautions(title, {"pork-shoulder"}).size() == 1);
    }
}

TEST_CASE("promises: a broken one is told with the lines that break it") {
    for (const auto* title :
         {"Nut-free green sausage", "Green sausage, free of nuts", "Green sausage without nuts", "no nuts!", "nutfree links"}) {
        CAPTURE(title);
        const auto told = cautions(title, {"pork-shoulder", "peanut"});
        REQUIRE(told.size() == 1);
        CHECK(told.front().text.find("peanut") != std::string::npos);
    }
    CHECK(cautions("Gluten-free bangers", {"pork-shoulder", "rusk"}).size() == 1);
    CHECK(cautions("Gluten free bangers", {"pork-shoulder", "rice-flour"}).empty());
    CHECK(cautions("Vegetarian sausage", {"tofu", "gelatin"}).size() == 1);
    CHECK(cautions("Dairy-free boudin", {"pork-shoulder", "ghee"}).size() == 1);
    CHECK(cautions("Pork-free merguez", {"lamb-shoulder"}, "2 m hog casings").size() == 2);  // the promise, and the beast of the casing
    CHECK(cautions("Meatless links", {"chicken-stock", "tofu"}).size() == 1);
    for (const auto* title : {"Feast without the pig", "Feast without a pig", "Fest ohne das Schwein", "No pork for the feast"}) {
        CAPTURE(title);
        CHECK(cautions(title, {"pork-shoulder"}).size() == 1);
        CHECK(cautions(title, {"chicken-thigh"}).empty());  // no animal is named that is not in it
    }
}

TEST_CASE("promises: what is said to be without in one word or two is heard with every ending and tongue") {
    const std::vector<std::pair<const char*, const char*>> all{
        {"Kiełbasa bezglutenowa", "rusk"},      {"Bezglutenowe kiełbaski", "rusk"}, {"Glutenfria korvar", "rusk"},
        {"Glutenfrie pølser", "rusk"},          {"Bezlepková klobása", "rusk"},     {"Klobása bez lepku", "rusk"},
        {"Gluteeniton makkara", "rusk"},        {"Gluténmentes kolbász", "rusk"},   {"Колбаса без глютена", "rusk"},
        {"Cârnați fără gluten", "rusk"},        {"Nöttfria korvar", "hazelnut"},    {"Fındıksız köfte", "hazelnut"},
        {"Pähkinätön makkara", "hazelnut"},     {"Mælkefri pølse", "cream"},        {"Maidoton makkara", "cream"},
        {"Bezmleczna kiełbasa", "cream"},       {"Sütsüz köfte", "cream"},          {"Tojásmentes kolbász", "egg"},
        {"Bezalkoholowa kiełbasa", "beer"},     {"Koshere Wurst", "pork-shoulder"}, {"Košer klobása", "pork-shoulder"},
        {"Koszernej kiełbasy", "pork-shoulder"}};
    for (const auto& [title, food] : all) {
        CAPTURE(title);
        CHECK(cautions(title, {"chicken-thigh", food}).size() == 1);
    }
    for (const auto* title : {"Freie Wurst", "Bezpieczna kiełbasa", "Freilandwurst", "Maitomakkara", "Korv"}) {
        CAPTURE(title);
        CHECK(cautions(title, {"chicken-thigh", "rusk", "cream"}).empty());
    }
}

TEST_CASE("promises: every pattern of a kind that says it is without fits the word it stands for") {
    for (const auto& kind : knowledge().records().kinds)
        for (auto pattern : kind.free) {
            CAPTURE(kind.id, pattern);
            std::erase(pattern, '*');
            const auto promise = TitleWords(pattern, knowledge()).promise_of(kind);
            CHECK(promise.has_value());
        }
}

TEST_CASE("promises: a diet is heard in the spellings of every tongue, and so is what is said safe raw or low in salt") {
    for (const auto* title : {"Helal sosis", "Hallal merguez", "Halalwurst", "Koscher", "Koschere Würste", "Cacher", "Domuzsuz sucuk",
                              "Vegetarische Wurst", "Saucisse végétarienne", "Vegane Würste", "Wegetariańska kiełbasa"}) {
        CAPTURE(title);
        CHECK_FALSE(cautions(title, {"pork-shoulder", "white-wine"}).empty());
    }
    for (const auto* title : {"Safe raw", "Safe to eat raw", "Low salt for the heart ward", "Salzarme Bratwurst", "Saucisse peu salée"}) {
        CAPTURE(title);
        CHECK_FALSE(cautions(title, {"pork-shoulder"}).empty());
    }
}

TEST_CASE("promises: a plain title promises nothing") {
    CHECK(cautions("Hedgerow green", {"pork-shoulder", "peanut"}).empty());
    CHECK(cautions("Pork and nut sausage", {"pork-shoulder", "walnut"}).empty());
    CHECK(cautions("Garlic sausage", {"pork-shoulder", "garlic"}).empty());
}

TEST_CASE("promises: what no record can vouch for is said") {
    const auto told = cautions("Halal merguez", {"lamb-shoulder"});
    REQUIRE(told.size() == 1);
    CHECK(told.front().text.find("slaughtered") != std::string::npos);
    CHECK(cautions("Halal merguez", {"lamb-shoulder", "white-wine"}).front().text.find("white wine") != std::string::npos);
}

}  // namespace promises_test
