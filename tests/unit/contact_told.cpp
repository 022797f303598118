// Contained or only near it: one sentence may say both, and each is told as what it is, on the page and on the label alike.
#include <algorithm>

#include "formula/reading.hpp"
#include "knowledge/records/word_list.hpp"
#include "knowledge/told/contact_text.hpp"
#include "standin/engine.hpp"
#include "support/catch.hpp"
#include "support/knowledge.hpp"

using namespace standin;

namespace contact_told_test {

Prediction predicted(const std::string& more) {
    const auto engine = Engine::open({});
    REQUIRE(engine);
    const auto read = engine->read_formula("Test\n1000 g pork shoulder\n18 g table salt\n" + more + "\n", "f");
    INFO(more << (read ? "" : ": " + read.error().message));
    REQUIRE(read);
    const auto all = engine->predict(*read);
    REQUIRE(all);
    return *all;
}

std::string told(const Prediction& prediction, const std::string& allergen) {
    for (const auto& one : prediction.allergens)
        if (one.allergen == allergen) return one.sure ? "surely" : "perhaps";
    return "not";
}

TEST_CASE("what is in it and what only touched it are told apart within one sentence") {
    const auto both = predicted("60 g italian seasoning\nnote: The seasoning has mustard flour in it and is packed next to egg powder.");
    CHECK(told(both, "mustard") == "surely");
    CHECK(told(both, "egg") == "perhaps");
    const auto packet = predicted("60 g breadcrumbs (own brand bag: wheat flour, soya flour, may contain sesame)");
    CHECK(told(packet, "soy") == "surely");
    CHECK(told(packet, "sesame") == "perhaps");
    CHECK(packet.label.find("May contain: SESAME") != std::string::npos);
}

TEST_CASE("what may be in a food by contact alone is never told as sure, and what is in it never as contact") {
    for (const std::string words : {"may contain traces of cashew", "packed where cashew is handled", "shares a line with cashews",
                                    "kann Spuren von Cashew enthalten", "puede contener trazas de anacardo"}) {
        INFO(words);
        CHECK(told(predicted("60 g breadcrumbs (" + words + ")"), "cashew") == "perhaps");
    }
    for (const std::string words : {"contains cashew", "contains cashew, may contain sesame", "may contain sesame, contains cashew"}) {
        INFO(words);
        CHECK(told(predicted("60 g breadcrumbs (" + words + ")"), "cashew") == "surely");
    }
}

TEST_CASE("each word of the two lists makes what follows it contact or content") {
    for (const auto& word : knowledge().listed(WordList::contact_word)) {
        INFO(word);
        CHECK(is_only_of_contact(word + " of peanut", "peanut", knowledge()));
    }
    for (const auto& word : knowledge().listed(WordList::has_in_it)) {
        INFO(word);
        CHECK_FALSE(is_only_of_contact(word + " peanut", "peanut", knowledge()));
    }
    CHECK(is_only_of_contact("packed beside milk and egg", "egg", knowledge()));
    CHECK_FALSE(is_only_of_contact("packed beside milk and has egg in it", "egg", knowledge()));
    CHECK_FALSE(is_only_of_contact("lists celery and mustard", "mustard", knowledge()));
}

TEST_CASE("in a list too one remark may say both") {
    const auto read =
        read_inventory("thyme 2 bunches\nlimes 4\noats 500 g, has mustard in it and packed next to egg powder\n", "f", knowledge());
    REQUIRE(read);
    const auto oats =
        std::find_if(read->items.begin(), read->items.end(), [](const InventoryItem& item) { return item.ingredient == "rolled-oat"; });
    REQUIRE(oats != read->items.end());
    for (const auto& one : oats->declared) CHECK(is_only_of_contact(one.words, one.allergen, knowledge()) == (one.allergen == "egg"));
    CHECK(oats->declared.size() >= 2);
}

TEST_CASE("what a jar is made with is in the jar, and not on hand by itself") {
    for (const std::string line : {"pesto 1 jar, the kind with cashews and pecorino", "pesto 200 g, with cashews and pecorino"}) {
        INFO(line);
        const auto read = read_inventory("oats 200 g\nkale 100 g\nspinach 1 kg\n" + line + "\n", "f", knowledge());
        if (!read) continue;  // asked back
        CHECK(std::none_of(read->items.begin(), read->items.end(),
                           [](const InventoryItem& item) { return item.ingredient == "romano" || item.ingredient == "cashew"; }));
    }
    const auto two = read_inventory("oats 200 g\nkale 100 g\nspinach 1 kg\ncelery with leaves and chives\n", "f", knowledge());
    REQUIRE(two);
    CHECK(std::any_of(two->items.begin(), two->items.end(), [](const InventoryItem& item) { return item.ingredient == "chives"; }));
}

}  // namespace contact_told_test
