// What a title promises, and what only looks like a promise.
#include <algorithm>

#include "formula/formats/reading.hpp"
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

}  // namespace titles_meant_test
