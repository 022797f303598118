#include "formula/line/line_asides.hpp"

#include <algorithm>

namespace standin {

bool opens_aside(const std::vector<Word>& words, std::size_t i) {
    const auto& word = words[i].folded;
    for (const std::string_view opener : {"from", "for", "if", "depending", "until", "preferably", "ideally", "adjust", "try", "ask", "buy",
                                          "choose", "use", "look", "like", "i", "see", "prior", "so"})
        if (word == opener) return true;
    const auto next = [&](std::string_view wanted) { return i + 1 < words.size() && words[i + 1].folded == wanted; };
    return (word == "such" && next("as")) ||
           (word == "or" && (next("about") || next("roughly") || next("approximately") || next("to") || next("more") || next("less") ||
                             next("so") || next("as"))) ||
           (word == "to" && (next("taste") || next("your") || next("keep") || next("help") || next("give") || next("bind") || next("add")));
}

bool changes_food(std::string_view folded) {
    for (const std::string_view word :
         {"free",     "vegan",     "vegetarian", "low",     "light", "lite",    "non",    "imitation", "alcohol",      "salted",
          "unsalted", "smoked",    "cured",      "dried",   "dry",   "pickled", "brined", "canned",    "tinned",       "jarred",
          "bottled",  "drained",   "bone",       "skin",    "rind",  "cooked",  "lean",   "fat",       "fatty",        "syrup",
          "oil",      "brine",     "water",      "vinegar", "milk",  "paste",   "powder", "powdered",  "concentrated", "reduced",
          "diluted",  "sweetened", "nitrite",    "nitrate", "cure",  "curing",  "weight", "weighed",   "net",          "yield",
          "half",     "instead",   "without",    "less",    "zest",  "juice",   "juiced", "zested",    "peel",         "yolk",
          "white",    "flesh",     "only",       "grating", "jar",   "can",     "tin",    "bottle",    "frozen",       "equal"})
        if (folded == word) return true;
    return false;
}

bool tells_of_absence(const std::vector<Word>& words, std::size_t first, std::size_t last) {
    for (std::size_t i = first + 1; i < last; ++i)
        if (words[i].folded == "free" && words[first].folded != "not" && (i + 1 >= last || words[i + 1].folded != "range")) return true;
    return false;
}

bool names_a_kind(std::string_view folded) {
    for (const std::string_view word :
         {"smoked", "salted", "unsalted", "cured", "dried", "pickled", "brined", "canned", "tinned", "frozen", "vegan", "imitation"})
        if (folded == word) return true;
    return false;
}

std::string outside_purpose(std::string_view line) {
    const auto words = words_of(line);
    for (std::size_t i = 0; i < words.size(); ++i) {
        if (words[i].folded != "for") continue;
        for (std::size_t at = i + 1; at < std::min(words.size(), i + 5) && words[at].segment == words[i].segment; ++at)
            for (const std::string_view outside :
                 {"frying",    "cooking", "pan",         "grill",     "grilling", "brushing", "greasing", "serving",
                  "garnish",   "rinsing", "rehydrating", "blanching", "soaking",  "poaching", "boiling",  "braising",
                  "simmering", "dusting", "dipping",     "basting",   "skillet",  "searing",  "broth",    "topping"})
                if (words[at].folded == outside) return "\"" + phrase(words, i, at + 1) + "\"";
    }
    return {};
}

}  // namespace standin
