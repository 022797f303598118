#include "safety/exclusions.hpp"

#include <algorithm>
#include <array>
#include <string>

#include "core/names.hpp"
#include "safety/wording.hpp"

namespace standin {
namespace {

// Folded words with the folded allergen classes they take in.
struct Group {
    std::string_view word;
    std::array<std::string_view, 10> classes;
};
constexpr std::array<std::string_view, 10> tree_nuts{"almond", "hazelnut",   "walnut",    "black walnut", "cashew",
                                                     "pecan",  "brazil nut", "pistachio", "macadamia",    "pine nut"};
constexpr std::array groups{Group{"nut", tree_nuts},
                            Group{"tree nut", tree_nuts},
                            Group{"walnut", {"walnut", "black walnut"}},
                            Group{"gluten", {"wheat", "rye", "barley", "oat"}},
                            Group{"dairy", {"milk"}},
                            Group{"lactose", {"milk"}},
                            Group{"soya", {"soy"}},
                            Group{"soybean", {"soy"}},
                            Group{"shellfish", {"crustacean", "mollusc"}},
                            Group{"seafood", {"fish", "crustacean", "mollusc"}},
                            Group{"mollusk", {"mollusc"}},
                            Group{"sulfite", {"sulphite"}}};
constexpr std::array classes{
    std::string_view("milk"),    std::string_view("egg"),    std::string_view("fish"),  std::string_view("crustacean"),
    std::string_view("mollusc"), std::string_view("peanut"), std::string_view("soy"),   std::string_view("wheat"),
    std::string_view("rye"),     std::string_view("barley"), std::string_view("oat"),   std::string_view("sesame"),
    std::string_view("mustard"), std::string_view("celery"), std::string_view("lupin"), std::string_view("sulphite")};

struct Animals {
    std::string_view word;
    std::array<std::string_view, 11> names;  // as they stand in names of fats, stocks and proteins
    std::array<std::string_view, 11> species;
};
constexpr std::array animals{Animals{"pork", {"pork", "lard"}, {"pork"}},
                             Animals{"beef", {"beef"}, {"beef"}},
                             Animals{"veal", {"veal"}, {"veal"}},
                             Animals{"lamb", {"lamb", "mutton"}, {"lamb"}},
                             Animals{"mutton", {"lamb", "mutton"}, {"lamb"}},
                             Animals{"goat", {"goat"}, {"goat"}},
                             Animals{"game", {"game"}, {"game"}},
                             Animals{"rabbit", {"rabbit"}, {"rabbit"}},
                             Animals{"chicken", {"chicken"}, {"chicken"}},
                             Animals{"turkey", {"turkey"}, {"turkey"}},
                             Animals{"duck", {"duck", "goose"}, {"duck"}},
                             Animals{"poultry", {"chicken", "turkey", "duck", "goose"}, {"chicken", "turkey", "duck"}},
                             Animals{"meat",
                                     {"pork", "lard", "beef", "veal", "lamb", "mutton", "goat", "game", "chicken", "duck", "goose"},
                                     {"pork", "beef", "veal", "lamb", "goat", "game", "rabbit", "chicken", "turkey", "duck"}}};

template <std::size_t N>
bool holds(const std::array<std::string_view, N>& words, std::string_view word) {
    return !word.empty() && std::find(words.begin(), words.end(), word) != words.end();
}

template <class T, std::size_t N>
const T* entry(const std::array<T, N>& table, std::string_view word) {
    const auto found = std::find_if(table.begin(), table.end(), [&](const T& row) { return row.word == word; });
    return found == table.end() ? nullptr : &*found;
}

bool carries_class(const Ingredient& ingredient, std::string_view allergen) {
    if (allergen.empty()) return false;
    if (allergen == "sulphite" && ingredient.sulphites && ingredient.sulphites->band.high > 0) return true;
    if (ingredient.meat && spelling(ingredient.meat->species) == allergen) return true;  // fish, crustacean
    return std::any_of(ingredient.allergens.begin(), ingredient.allergens.end(),
                       [&](const std::string& own) { return fold(own) == allergen; });
}

// Rendered fats, stocks and proteins have no species in the knowledge; their names tell it. Elsewhere names mislead: lamb's lettuce.
bool named_after(const Ingredient& ingredient, const Animals& animal) {
    if (ingredient.family != "fats-and-oils" && ingredient.family != "liquids-and-stocks" && ingredient.family != "proteins-and-fibres")
        return false;
    if (ingredient.id == "gelatin") return animal.word == "pork" || animal.word == "beef" || animal.word == "meat";
    return std::any_of(ingredient.names.begin(), ingredient.names.end(), [&](const std::string& name) {
        const std::string folded = fold(name);
        return std::any_of(animal.names.begin(), animal.names.end(), [&](std::string_view word) { return has_words(folded, word); });
    });
}

}  // namespace

bool is_exclusion_word(std::string_view what) {
    const std::string word = fold(what);
    return word == "alcohol" || is_allergen_word(what) || entry(animals, word);
}

bool is_allergen_word(std::string_view what) {
    const std::string word = fold(what);
    return holds(classes, word) || holds(tree_nuts, word) || entry(groups, word);
}

bool carries(const Ingredient& ingredient, std::string_view what) {
    const std::string word = fold(what);
    if (word == "alcohol") return ingredient.composition.alcohol.high > 0;
    if (const Group* group = entry(groups, word))
        return std::any_of(group->classes.begin(), group->classes.end(),
                           [&](std::string_view one) { return carries_class(ingredient, one); });
    if (holds(classes, word) || holds(tree_nuts, word)) return carries_class(ingredient, word);
    const Animals* animal = entry(animals, word);
    return animal && ((ingredient.meat && holds(animal->species, spelling(ingredient.meat->species))) || named_after(ingredient, *animal));
}

}  // namespace standin
