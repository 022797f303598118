// What a title promises, and what only looks like a promise.
#include <algorithm>

#include "formula/reading.hpp"
#include "safety/promises.hpp"
#include "support/catch.hpp"
#include "support/knowledge.hpp"

using namespace standin;

namespace titles_meant_test {

bool cautioned(const std::string& title, const std::string& line = "5 g sage") {
    const auto read = read_formula(title + "\n1000 g pork shoulder\n18 g salt\n" + line + "\n", "f", knowledge());
    REQUIRE(read);
    const auto told = broken_promises(*read, knowledge());
    return std::any_of(told.begin(), told.end(), [](const CautionText& one) { return one.id.starts_with("title-"); });
}

TEST_CASE("a title that promises raw, long kept or safe food is cautioned") {
    for (const auto* title : {"Links eaten uncooked", "Links, no cooking needed", "Raw sausage spread", "Saucisse à manger cru", "Rå korv",
                              "Keeps a month links", "Salametti da appendere", "Maternity ward links", "Schwangeren-Wurst",
                              "Merienda de los peques", "School lunch links", "Baby's first links"}) {
        INFO(title);
        CHECK(cautioned(title));
    }
    for (const auto* title : {"Allergen-friendly links", "Nobody-allergic links", "Nötfri korv", "Kiełbasa bez orzechów"}) {
        INFO(title);
        CHECK(cautioned(title, "50 g pesto"));
    }
    CHECK(cautioned("Coeliac Society links", "50 g breadcrumbs"));
    CHECK(cautioned("Cashrut links"));
}

TEST_CASE("a name, a feast and a food promise nothing") {
    for (const auto* title :
         {"Nightshade Lane School fair bangers", "Baby Ruth's street links", "Infant Jesus parish fair", "St Vitus hospital ball links",
          "Kosher salt & pepper links", "Old School bangers", "Pork with goat cheese"}) {
        INFO(title);
        CHECK_FALSE(cautioned(title));
    }
}

TEST_CASE("a street, a house or a farm with the name of a poison is a name, and what is made with it is warned of") {
    const auto told = [](const std::string& title) {
        const auto read = read_formula(title + "\n1000 g pork shoulder\n18 g salt\n", "f", knowledge());
        REQUIRE(read);
        for (const auto& one : read->read_as)
            if (one.kind == ReasonKind::title_told) return one.about.empty() ? std::string("warned") : "name";
        return std::string("nothing");
    };
    for (const auto* title :
         {"Rue verte", "Saucisse de la rue Neuve", "Yew Tree Farm", "Holly Tree Cottage bangers", "Hemlock Lane links"}) {
        INFO(title);
        CHECK(told(title) != "warned");
    }
    for (const auto* title : {"Rue and sage links", "Links with rue", "Saucisse à la rue et au thym", "Yew and sage links"}) {
        INFO(title);
        CHECK(told(title) == "warned");
    }
}

TEST_CASE("a title that tells which version it is weighs nothing") {
    for (const auto* title : {"Case 06c (invented)", "Version 3l", "Series 1c (imported)", "Type 2c (invented by Ines)",
                              "Link 2g (invented)", "Trial 06c", "Recipe 2 c", "Test 5 c, May", "Green bratwurst 3c", "Wurst Nr. 3g",
                              "Essai 2c", "Prueba 4 l", "Ricetta 3g, aprile", "Zorb 07g", "Proba 2 l", "Sausage 3 T"}) {
        INFO(title);
        const auto read = read_formula(std::string(title) + "\n1000 g pork shoulder\n18 g salt\n", "f", knowledge());
        REQUIRE(read);
        CHECK(read->title == title);
        CHECK(read->lines.size() == 2);
    }
    const auto line = read_formula("Nutmeg 3g\n1000 g pork shoulder\n18 g salt\n", "f", knowledge());
    REQUIRE(line);
    CHECK(line->lines.size() == 3);
    const auto open = read_formula("Zorb 300 g\n1000 g pork shoulder\n18 g salt\n", "f", knowledge());
    REQUIRE_FALSE(open);
    CHECK(std::count(open.error().hints.begin(), open.error().hints.end(), "title: Zorb 300 g") == 1);
}

TEST_CASE("a plain word two letters off a word of spoilage is no slip for it, one letter off still is") {
    const auto spoiled = [](const std::string& line) {
        const auto read = read_formula("Links\n1000 g pork shoulder\n18 g salt\n" + line + "\n", "f", knowledge());
        return !read && read.error().message.find("spoiled") != std::string::npos;
    };
    CHECK_FALSE(spoiled("30 g zorb, invented"));
    CHECK_FALSE(spoiled("30 g zorb (imported)"));
    CHECK(spoiled("30 g zorb, infetsed"));
}

}  // namespace titles_meant_test
