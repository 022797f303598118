// Each kind's own text agrees with what it takes in: a food that the text names is in it, and so is every food called by such a name.
#include <algorithm>
#include <map>
#include <set>

#include "core/names.hpp"
#include "knowledge/index/kinds.hpp"
#include "support/catch.hpp"
#include "support/knowledge.hpp"

using namespace standin;

namespace kind_texts_test {

using Words = std::vector<std::string>;

Words cut(const std::string& text) {
    Words all;
    std::string word;
    for (const char c : fold(text) + " ") {
        if (std::isalnum(static_cast<unsigned char>(c))) word += c;
        else if (!word.empty()) all.push_back(std::move(word)), word.clear();
    }
    for (auto& one : all) one = fold(one);
    return all;
}

// Words that belong to the noun before them in such a text, or to none: "apples, their juice".
bool says_form_only(const std::string& word) {
    static const std::set<std::string> all{
        "juice", "sauce", "fat",   "leaf",   "leave", "seed",    "dried", "dry",   "fresh", "meat",   "stock",  "powder", "oil",   "white",
        "green", "salt",  "paste", "one",    "a",     "protein", "skin",  "heart", "liver", "milk",   "flour",  "fibre",  "round", "sour",
        "raw",   "sweet", "yolk",  "starch", "syrup", "red",     "black", "bulb",  "frond", "pollen", "butter", "cream",  "root",  "zest",
        "bran",  "flake", "gum",   "rind",   "be",    "garden",  "water", "rice",  "blood", "ear",    "foot",   "feet"};
    return all.count(word) > 0;
}

// What is called so and is not of the kind, or is named in the text only to be told apart; each with its reason.
bool told_apart(const std::string& kind, const std::string& food) {
    static const std::map<std::string, std::set<std::string>> all{
        {"alcohol", {"apple-juice"}},                                             // "sweet cider" without alcohol
        {"apple", {"*vinegar", "prepared-horseradish", "pepperoncini-pickled"}},  // vinegar of apples
        {"bacon", {"turkey-bacon"}},                                              // the kind is of pork
        {"bell-pepper", {"*"}},                                                   // pepper is a word of many plants
        {"brazil-nut", {"*nut", "macadamia", "pecan"}},                           // one nut
        {"capsicum", {"*pepper", "allspice", "pink-peppercorn", "grains-of-paradise", "cubeb", "grains-of-selim"}},
        {"celery", {"minari"}},                                // "water celery": another plant
        {"chile", {"bell-green", "bell-red", "bell-yellow"}},  // the German word for bell pepper
        {"packet-wheat", {"peanut"}},                          // "many" is a word for it elsewhere
        {"packet-milk", {"peanut"}},
        {"coriander", {"culantro", "vietnamese-coriander"}},                          // other plants
        {"cured", {"celery", "celery-leaf", "minari", "pork-leg", "pork-leg-lean"}},  // fresh celery and fresh ham
        {"garlic", {"wild-garlic"}},                                                  // a leaf of another plant, as ramps
        {"halal", {"distilled-vinegar", "ginger-ale"}},                               // vinegar and ale without alcohol
        {"jalapeno", {"fresno"}},                                                     // sold as a red one, and a kind of its own
        {"lard", {"bacon", "guanciale", "turkey-bacon"}},                             // bacon fat
        {"legume", {"jicama"}},                                                       // the root of a bean
        {"chestnut", {"water-chestnut"}},                                             // a tuber
        {"nuts", {"water-chestnut"}},
        {"tree-nut", {"water-chestnut"}},
        {"lime", {"makrut-lime-leaf"}},  // a citrus of its own
        {"mustard", {"tatsoi"}},         // "spinach mustard": another plant
        {"nightshade",
         {"*pepper", "allspice", "pink-peppercorn", "grains-of-paradise", "cubeb", "grains-of-selim", "sweet-potato",
          "sweet-potato-cooked"}},
        {"paprika", {"bell-green", "bell-red", "bell-yellow"}},
        {"pepper", {"*"}},  // pepper of the vine, not chiles
        {"pine-nut", {"*nut", "macadamia", "pecan"}},
        {"pork", {"turkey-bacon"}},
        {"potato", {"sweet-potato", "sweet-potato-cooked"}},
        {"seed", {"pumpkin-puree", "winter-squash"}},
        {"spelt", {"bulgur"}},                                                                  // "which is a wheat"
        {"sulphite", {"amla", "passion-fruit", "mirin", "sake", "shaoxing-wine", "*vinegar"}},  // not of grapes, and a fresh fruit
        {"tomato", {"tomatillo", "tamarillo"}},
    };
    const auto found = all.find(kind);
    if (found == all.end()) return false;
    return std::any_of(found->second.begin(), found->second.end(), [&](const std::string& pattern) {
        if (pattern.front() != '*') return pattern == food;
        const bool inside = pattern.size() > 1 && pattern.back() == '*';
        const std::string part = pattern.substr(1, pattern.size() - (inside ? 2 : 1));
        return inside ? food.find(part) != std::string::npos : food.ends_with(part);
    });
}

// Kinds that only the program asks for have texts about lists and knives.
bool is_asked_for(const Kind& kind) {
    static const std::set<std::string> inner{"fresh",       "garden",     "gathered",      "whole-dry", "blanch-first",
                                             "pot-green",   "no-knife",   "no-named-sort", "bites",     "sulphured-when-dried",
                                             "seldom-sold", "whole-spice"};
    return inner.count(kind.id) == 0 && !kind.id.starts_with("twins-");
}

TEST_CASE("kinds: a text names nothing that the kind does not take in") {
    std::map<std::string, std::set<const Ingredient*>> called;  // by the last word of a name
    for (const auto& food : knowledge().records().ingredients)
        for (const auto& name : food.names)
            if (const Words words = cut(name); !words.empty()) called[words.back()].insert(&food);
    std::string missed;
    std::size_t held = 0;
    for (const auto& kind : knowledge().records().kinds) {
        if (!is_asked_for(kind)) continue;
        const Words words = cut(kind.takes);
        for (std::size_t at = 0; at < words.size(); ++at) {
            if (says_form_only(words[at])) continue;
            for (const Ingredient* food : called[words[at]]) {
                ++held;
                if (!belongs(*food, kind, knowledge()) && !told_apart(kind.id, food->id))
                    missed += "\n  " + kind.id + " says \"" + words[at] + "\", and leaves in " + food->id;
            }
        }
    }
    INFO(missed);
    CHECK(missed.empty());
    CHECK(held > 500);
}

TEST_CASE("kinds: casings that a text speaks of are taken, and no others") {
    const std::map<std::string, std::vector<std::string>> words{{"hog", {"hog casings"}},
                                                                {"collagen", {"collagen casings 26 mm"}},
                                                                {"sheep", {"sheep casings"}},
                                                                {"beef", {"beef middles casing"}},
                                                                {"gut", {"hog casings", "sheep casings", "natural casings"}}};
    for (const auto& kind : knowledge().records().kinds) {
        const auto at = kind.takes.find("casings of");
        const auto sheep = kind.takes.find("sheep casings");
        if (at == std::string::npos && sheep == std::string::npos) continue;
        for (const auto& [word, casings] : words) {
            const std::string told = at == std::string::npos ? kind.takes.substr(sheep) : kind.takes.substr(at);
            for (const auto& casing : casings) {
                CAPTURE(kind.id, casing);
                if (told.find(word) != std::string::npos) CHECK(casing_belongs(casing, kind, knowledge()));
            }
        }
    }
    for (const auto* id : {"pork", "halal", "kosher", "beef", "vegetarian", "vegan", "pescatarian", "gelatin", "meat"}) {
        CAPTURE(id);
        CHECK(casing_belongs("collagen casings", *kind_of(id, knowledge()), knowledge()));
        CHECK_FALSE(casing_belongs("cellulose casings", *kind_of(id, knowledge()), knowledge()));
    }
    CHECK_FALSE(casing_belongs("beef collagen casings", *kind_of("pork", knowledge()), knowledge()));
}

TEST_CASE("kinds: what leaves out suet leaves it out in every form, and nothing with it comes in") {
    const Kind& kosher = *kind_of("kosher", knowledge());
    for (const auto* id : {"beef-suet", "shredded-suet", "beef-tallow", "beef-fat", "lamb-fat", "monkfish", "catfish", "oyster", "squid"}) {
        CAPTURE(id);
        CHECK(belongs(*knowledge().ingredient(id), kosher, knowledge()));
    }
    CHECK_FALSE(belongs(*knowledge().ingredient("beef-chuck"), kosher, knowledge()));
    CHECK_FALSE(belongs(*knowledge().ingredient("chicken-fat"), kosher, knowledge()));
}

}  // namespace kind_texts_test
