// A title that promises what its lines break.
#include "safety/promises.hpp"

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
