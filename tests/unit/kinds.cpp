// What a word takes in, by what a food is.
#include "knowledge/index/kinds.hpp"

#include <map>

#include "core/names.hpp"
#include "safety/exclusions.hpp"
#include "support/catch.hpp"
#include "support/knowledge.hpp"

using namespace standin;

namespace kinds_test {

Exclusion taken(const std::string& word) {
    auto found = exclusion_of(word, knowledge());
    if (!found) FAIL(word + ": " + found.error().message);
    return *found;
}

std::string refused(const std::string& word) {
    const auto found = exclusion_of(word, knowledge());
    if (found) FAIL(word + " was understood as " + found->takes);
    return found.error().message;
}

TEST_CASE("kinds: the records are sound") { CHECK(faults_of_kinds(knowledge().records()).empty()); }

TEST_CASE("kinds: an excluded word takes in what is made of it") {
    const std::map<std::string, std::vector<std::string>> all{
        {"sesame seeds", {"sesame-seed", "hulled-sesame", "tahini", "sesame-oil"}},
        {"pork", {"pork-shoulder", "bacon", "bacon-fat", "lard", "gelatin", "pork-collagen-powder", "wild-boar"}},
        {"shrimp", {"shrimp", "crab"}},
        {"butter", {"butter", "salted-butter", "ghee"}},
        {"garlic", {"garlic", "green-garlic", "black-garlic", "garlic-powder", "dried-garlic", "garlic-salt", "harissa"}},
        {"nuts", {"almond", "peanut", "peanut-butter", "peanut-oil", "chestnut", "pine-nut", "walnut"}},
        {"celery", {"celery", "celeriac", "celery-seed", "celery-salt", "bouillon", "vegetable-broth"}},
        {"sulfites", {"white-wine", "bottled-lemon-juice", "dried-apricot"}},
        {"casein", {"whole-milk", "ghee", "sodium-caseinate", "whey-powder", "parmesan"}},
        {"alliums", {"chives", "leek", "ramps-leaf", "onion-powder", "shallot"}},
        {"legumes", {"peas", "tofu", "peanut", "chickpea-flour", "guar-gum", "fenugreek-seed"}},
        {"nightshades", {"tomato", "potato-starch", "paprika", "jalapeno", "eggplant", "tomatillo", "bell-green"}},
        {"chile", {"serrano", "cayenne-powder", "harissa", "hot-pepper-sauce"}},
        {"vinegar", {"cider-vinegar", "ketchup", "prepared-mustard"}},
        {"seed oils", {"canola-oil", "margarine"}},
        {"offal", {"pork-liver", "chicken-heart", "beef-tripe"}},
        {"vegetarian", {"pork-shoulder", "cod", "lard", "gelatin", "fish-sauce", "chicken-stock"}},
        {"vegan", {"egg", "whole-milk", "honey", "pork-backfat"}},
        {"halal", {"pork-shoulder", "lard", "white-wine", "gelatin"}},
        {"kosher", {"shrimp", "oyster", "catfish", "rabbit", "pork-leg"}},
        {"gluten-free", {"wheat-flour", "barley-flour", "rolled-oat", "soy-sauce", "beer"}},
        {"no dairy", {"cream", "feta"}},
        {"parsley", {"parsley", "dried-parsley", "parsley-freeze-dried"}},
        {"spinach", {"spinach", "spinach-frozen"}},
    };
    for (const auto& [word, foods] : all) {
        const Exclusion found = taken(word);
        CHECK_FALSE(found.takes.empty());
        for (const auto& id : foods) {
            CAPTURE(word, id);
            REQUIRE(knowledge().ingredient(id) != nullptr);
            CHECK(found.foods.count(id) == 1);
        }
    }
}

TEST_CASE("kinds: and leaves what it is not") {
    const std::map<std::string, std::vector<std::string>> all{{"butter", {"peanut-butter", "cream", "margarine"}},
                                                              {"lamb", {"cornsalad"}},
                                                              {"cilantro", {"coriander-seed"}},
                                                              {"chile", {"bell-green", "black-pepper"}},
                                                              {"nuts", {"nutmeg", "coconut"}},
                                                              {"jalapeno", {"serrano", "paprika"}},
                                                              {"beef", {"pork-shoulder"}},
                                                              {"goat", {"goat-cheese"}},
                                                              {"cabbage", {"kale", "broccoli"}},
                                                              {"chicken", {"duck", "egg"}},
                                                              {"halal", {"beef-chuck"}},
                                                              {"vegetarian", {"egg", "cheddar"}}};
    for (const auto& [word, foods] : all)
        for (const auto& id : foods) {
            CAPTURE(word, id);
            REQUIRE(knowledge().ingredient(id) != nullptr);
            CHECK(taken(word).foods.count(id) == 0);
        }
}

TEST_CASE("kinds: every allergen that a food holds, or may hold, is taken in by its word") {
    for (const auto& ingredient : knowledge().records().ingredients)
        for (const auto& allergen : allergens_held(ingredient)) {
            CAPTURE(ingredient.id, allergen);
            const Kind* kind = kind_named(allergen, knowledge());
            REQUIRE(kind != nullptr);
            CHECK(belongs(ingredient, *kind, knowledge()));
        }
}

TEST_CASE("kinds: what stands on the label of a compound food is taken in by its word") {
    std::size_t parts = 0;
    for (const auto& ingredient : knowledge().records().ingredients)
        for (const auto& part : ingredient.label)
            for (const auto* word : {"garlic", "onion", "tomato", "vinegar", "mustard", "celery", "soy", "milk", "egg", "wheat", "fish",
                                     "paprika", "coriander", "rice", "sesame", "black pepper", "anchovy", "barley"}) {
                if ((" " + fold(part) + " ").find(" " + std::string(word) + " ") == std::string::npos) continue;
                CAPTURE(ingredient.id, part, word);
                CHECK(belongs(ingredient, *kind_named(word, knowledge()), knowledge()));
                ++parts;
            }
    CHECK(parts > 20);
}

TEST_CASE("kinds: every beast is taken in by meat, seafood and its own word") {
    for (const auto& ingredient : knowledge().records().ingredients) {
        if (!ingredient.meat) continue;
        CAPTURE(ingredient.id);
        CHECK((belongs(ingredient, "meat", knowledge()) || belongs(ingredient, "seafood", knowledge())));
        CHECK(belongs(ingredient, "vegetarian", knowledge()));
        CHECK(belongs(ingredient, "vegan", knowledge()));
    }
}

TEST_CASE("kinds: what no list of foods can answer is refused with a reason, and nothing is taken for its neighbour") {
    for (const auto* word : {"keto", "low-fodmap", "msg", "additives", "histamine", "allergens", "organic", "fat", "low sodium", "spicy"})
        CHECK(refused(word).find(':') != std::string::npos);
    for (const auto* word : {"xyzzyx", "cassein", "glutten", "vegetables of the sea", "grandmother"})
        CHECK(refused(word).find("nothing was left out") != std::string::npos);
    // A slip of the pen is offered; a stranger is not.
    CHECK(exclusion_of("glutten", knowledge()).error().hints == std::vector<std::string>{"gluten"});
    CHECK(exclusion_of("grandmother", knowledge()).error().hints.empty());
}

TEST_CASE("kinds: casings count") {
    Formula with;
    with.beside = {{"3 m hog casings", BesideKind::casing}, {"twine", BesideKind::goods}};
    CHECK(beside_excluded(with, taken("pork"), knowledge()).size() == 1);
    CHECK(beside_excluded(with, taken("halal"), knowledge()).size() == 1);
    CHECK(beside_excluded(with, taken("vegan"), knowledge()).size() == 1);
    CHECK(beside_excluded(with, taken("beef"), knowledge()).empty());
    with.beside = {{"sheep casings", BesideKind::casing}};
    CHECK(beside_excluded(with, taken("pork"), knowledge()).empty());
    CHECK(beside_excluded(with, taken("lamb"), knowledge()).size() == 1);
    with.beside = {{"2 m casings", BesideKind::casing}};  // of what, nobody says
    CHECK(beside_excluded(with, taken("pork"), knowledge()).size() == 1);
    with.beside = {{"collagen casings", BesideKind::casing}};
    CHECK(beside_excluded(with, taken("vegetarian"), knowledge()).size() == 1);
    with.beside = {{"cellulose casings", BesideKind::casing}};
    CHECK(beside_excluded(with, taken("vegetarian"), knowledge()).empty());
}

}  // namespace kinds_test
