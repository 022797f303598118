// What lists of what is on hand say of much, little, none and all but one.
#include <algorithm>

#include "core/contains.hpp"
#include "formula/reading.hpp"
#include "standin/narrate.hpp"
#include "support/catch.hpp"
#include "support/inventory.hpp"
#include "support/knowledge.hpp"

using namespace standin;

namespace lists_as_meant_test {

Result<Inventory> list(const std::string& line) { return read_inventory("kale 200 g\nchard\n" + line, "g", knowledge()); }

Inventory read(const std::string& line) {
    INFO(line);
    auto found = list(line);
    if (!found) FAIL(found.error().message);
    return std::move(*found);
}

TEST_CASE("little, none and plenty in words") {
    for (const char* line : {"no more parsley", "parsley: none", "parsley n/a", "parsley not yet", "keine Petersilie mehr",
                             "we're out of parsley", "niente più prezzemolo", "parsley too expensive, don't have", "haven't got parsley"}) {
        INFO(line);
        CHECK(contains(read(line).missing, std::string("parsley")));
    }
    for (const char* line : {"almost no parsley", "hardly any parsley", "encore un peu de persil", "me queda poco perejil"}) {
        INFO(line);
        const auto stock = read(line);
        REQUIRE(item(stock, "parsley"));
        CHECK(item(stock, "parsley")->grams.value_or(1000) < 60);
    }
    for (const char* line : {"we've got tons of basil", "I have loads of basil", "there is basil"}) {
        INFO(line);
        CHECK(item(read(line), "basil"));
    }
    CHECK(read("everything else I can buy").complete == false);
}

TEST_CASE("all but one") {
    const auto mace = read("no mace but have nutmeg");
    CHECK(item(mace, "nutmeg"));
    CHECK(contains(mace.missing, std::string("mace")));
    const auto herbs = read("no fresh herbs except rosemary");
    CHECK(item(herbs, "rosemary"));
    CHECK(contains(herbs.missing, std::string("parsley")));
    CHECK_FALSE(contains(herbs.missing, std::string("rosemary")));
    CHECK(item(read("nothing sour except vinegar and lemons"), "lemon-juice"));
    for (const char* line : {"no zorbles except rosemary", "no zorbles but have nutmeg", "no nuts except zorbles, may contain peanut"}) {
        INFO(line);
        CHECK_FALSE(list(line));
    }
}

TEST_CASE("who has no lemons may have a bottle of their juice; who has three has them") {
    for (const auto& [line, juice, whole] : {std::tuple{"no lemons\na bottle of lemon juice", "lemon-juice", "whole-lemon"},
                                             {"lemon juice 100 g\nno lemon", "lemon-juice", "whole-lemon"},
                                             {"limes: none\nlime juice plenty", "lime-juice", "whole-lime"},
                                             {"no fresh lemons\nlemon juice", "lemon-juice", "whole-lemon"},
                                             {"no orange\norange juice 1 l", "orange-juice", "whole-orange"},
                                             {"keine Limetten\nLimettensaft", "lime-juice", "whole-lime"}}) {
        INFO(line);
        const auto stock = read(line);
        CHECK(item(stock, juice));
        CHECK_FALSE(contains(stock.missing, std::string(juice)));
        CHECK(contains(stock.missing, std::string(whole)));
    }
    for (const char* line : {"3 lemons\nno lemons", "no limes\n4 limes", "no lemon juice\nlemon juice 100 g"}) {
        INFO(line);
        CHECK_FALSE(list(line));
    }
}

TEST_CASE("nothing of one line holds for the next") {
    const auto stock = read("spinach 500 g, thawed\nparsley ✗");
    CHECK(contains(stock.missing, std::string("parsley")));
    for (const auto& told : stock.notes) {
        INFO(in_full(told));
        CHECK((told.about.find("parsley") == std::string::npos || in_full(told).find("thawed") == std::string::npos));
    }
}

TEST_CASE("counts, packs and headings beside what is there") {
    CHECK(*item(read("frozen spinach, 2 blocks of 450g"), "spinach-frozen")->grams == Approx(900));
    CHECK(*item(read("and about a pound of arugula"), "arugula")->grams == Approx(453.6).epsilon(0.01));
    CHECK(*item(read("on hand: spinach 500 g, leeks 2"), "spinach")->grams == Approx(500));
    CHECK(item(read("can of green chiles x2"), "green-chile")->grams.value_or(0) > 300);
    CHECK(item(read("sauerkraut 1 can"), "sauerkraut")->grams);
    CHECK(*item(read("meat: 2 lb fatback, 1 kg pork shoulder"), "pork-backfat")->grams == Approx(907).epsilon(0.01));
    CHECK(item(read("sage from the bush"), "fresh-sage"));
    CHECK(*item(read("sour cherries, unripe, 200 g"), "sour-cherry")->grams == Approx(200));
    CHECK(item(read("leeks, washed, 3"), "leek")->grams.value_or(0) > 200);
    CHECK(*item(read("erik 300 g"), "green-plum")->grams == Approx(300));
    CHECK(read("sheep casings 22 mm").aside.empty());
    const auto horta = read("horta (dandelion and wild chicory) 700 g");
    CHECK(horta.aside == std::vector<std::string>{"horta (dandelion and wild chicory) 700 g"});
}

TEST_CASE("a list that says what is there or not is no formula") {
    for (const char* text : {"we've got tons of basil\n10 scallions\n1 kg pork\neverything else I can buy",
                             "1 kg frozen peas\ndried parsley\nno fresh herbs except rosemary\nground pork 3 pounds",
                             "leeks 5\nno mace but have nutmeg\nsuet 200 g"}) {
        INFO(text);
        CHECK(looks_like_stock(text, "f", knowledge()));
    }
    CHECK_FALSE(looks_like_stock("Links\n1 kg pork shoulder\n18 g salt", "f", knowledge()));
}

}  // namespace lists_as_meant_test
