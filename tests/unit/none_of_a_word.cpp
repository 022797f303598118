// "No cream": a wide word reaches the formula's own kinds of it, says that it does not, or is asked back; it is never passed on in silence.
#include <algorithm>

#include "core/contains.hpp"
#include "core/names.hpp"
#include "formula/reading.hpp"
#include "support/catch.hpp"
#include "support/knowledge.hpp"

using namespace standin;

namespace none_of_a_word_test {

Formula with(const std::string& foods) {
    auto read = read_formula("Any (invented)\n2000 g turkey thigh\n36 g kosher salt\n" + foods, "formula", knowledge());
    if (!read) FAIL(read.error().where + " " + read.error().message);
    return std::move(*read);
}

enum class Said { reached, told, asked, nothing };

Said said_of(const std::string& line, const std::string& food) {
    const Formula formula = with("50 g " + food + "\n");
    const std::string& id = formula.lines.back().ingredient;
    const auto list = read_inventory("water\n" + line + "\n", "list", knowledge(), &formula);
    if (!list) return Said::asked;
    if (contains(list->missing, id)) return Said::reached;
    const std::string& name = knowledge().ingredient(id)->names.front();
    const bool told = std::any_of(list->notes.begin(), list->notes.end(), [&](const Reason& note) {
        return note.kind == ReasonKind::says_nothing_of && contains(note.foods, name);
    });
    return told ? Said::told : Said::nothing;
}

struct Group {
    const char* word;
    std::vector<const char*> reached, told;
};

const std::vector<Group> groups = {
    {"cream", {"cream", "crème fraîche", "sour cream"}, {}},
    {"cheese", {"feta", "parmesan", "goat cheese", "ricotta", "blue cheese", "cotija", "cottage cheese"}, {}},
    {"nuts", {"walnuts", "pistachios", "almonds", "hazelnuts", "pine nuts", "pecans", "chestnuts", "cashews"}, {}},
    {"seeds", {"pumpkin seeds", "sunflower seeds", "sesame seeds"}, {}},
    {"herbs", {"parsley", "mint", "basil", "dill", "rosemary", "tarragon", "cilantro", "chives"}, {}},
    {"chiles", {"serranos", "jalapeños", "habaneros", "poblanos", "thai bird chiles"}, {}},
    {"chillies", {"serranos", "jalapeños"}, {}},
    {"hot peppers", {"serranos", "jalapeños"}, {}},
    {"peppers", {"red bell pepper"}, {"jalapeños"}},
    {"wine", {"red wine", "white wine", "dry sherry"}, {}},
    {"spirits", {"brandy", "gin", "whisky"}, {}},
    {"vinegar", {"red wine vinegar", "cider vinegar", "balsamic vinegar", "rice vinegar"}, {}},
    {"onions", {"onion", "red onion", "shallots", "scallions"}, {}},
    {"garlic", {"garlic", "green garlic"}, {"garlic powder"}},
    {"celery", {"celery"}, {"celeriac", "celery seed"}},
    {"fat", {"pork backfat", "lard", "beef suet", "duck fat"}, {}},
    {"pork fat", {"pork backfat", "pork fat trim"}, {}},
    {"milk", {"whole milk", "skim milk", "buttermilk"}, {}},
    {"dairy", {"whole milk", "cream", "feta", "butter", "yogurt"}, {}},
    {"yogurt", {"yogurt", "greek yogurt"}, {}},
    {"butter", {"butter", "ghee"}, {}},
    {"eggs", {"eggs", "egg whites", "egg yolks"}, {}},
    {"breadcrumbs", {"panko", "dry breadcrumbs", "fresh breadcrumbs"}, {}},
    {"bread", {"fresh breadcrumbs", "rye bread"}, {"dry breadcrumbs"}},
    {"flour", {"wheat flour"}, {}},
    {"oats", {"rolled oats", "pinhead oatmeal"}, {}},
    {"greens", {"spinach", "chard", "kale", "nettles"}, {}},
    {"lettuce", {"romaine lettuce", "green leaf lettuce"}, {}},
    {"cabbage", {"savoy cabbage", "napa cabbage", "red cabbage"}, {}},
    {"mushrooms", {"mushrooms", "shiitake"}, {}},
    {"tomatoes", {"tomato", "green tomatoes", "canned tomatoes"}, {}},
    {"olives", {"green olives", "black olives"}, {}},
    {"mustard", {"dijon mustard", "wholegrain mustard"}, {}},
    {"oil", {"olive oil", "canola oil"}, {}},
    {"sugar", {"brown sugar"}, {"honey"}},
    {"stock", {"chicken stock", "beef stock"}, {}},
    {"citrus", {"lemon juice", "lime juice", "orange juice"}, {}},
    {"potatoes", {"boiled potato", "potato"}, {"potato starch"}},
    {"bacon", {"bacon", "pancetta"}, {}},
    {"sorrel", {"sorrel"}, {}},
    {"wood sorrel", {"wood sorrel"}, {}},
};

TEST_CASE("none of a word: it reaches the formula's kinds of it, or tells which it says nothing of") {
    for (const auto& group : groups) {
        const std::string line = std::string("no ") + group.word;
        for (const char* food : group.reached) {
            CAPTURE(line, food);
            CHECK(said_of(line, food) == Said::reached);
        }
        for (const char* food : group.told) {
            CAPTURE(line, food);
            CHECK(said_of(line, food) == Said::told);
        }
    }
}

TEST_CASE("none of a word, in other tongues") {
    for (const auto& [line, food] : {std::pair{"pas de crème", "crème fraîche"},
                                     {"pas de fromage", "feta"},
                                     {"keine Sahne", "sour cream"},
                                     {"kein Käse", "parmesan"},
                                     {"sin queso", "cotija"},
                                     {"senza formaggio", "ricotta"}}) {
        CAPTURE(line, food);
        CHECK(said_of(line, food) == Said::reached);
    }
}

TEST_CASE("none of a word takes all of its kind, and no mix that has a name of its own") {
    const auto missing = [](const std::string& foods, const std::string& line) {
        const Formula formula = with(foods);
        const auto list = read_inventory("water\n" + line + "\n", "list", knowledge(), &formula);
        REQUIRE(list);
        std::vector<std::string> gone;
        for (const auto& one : formula.lines)
            if (contains(list->missing, one.ingredient)) gone.push_back(one.ingredient);
        return gone;
    };
    CHECK(missing("50 g goat cheese\n50 g feta\n20 g pesto\n", "no cheese") == std::vector<std::string>{"goat-cheese", "feta"});
    CHECK(missing("50 g walnuts\n50 g pine nuts\n", "no nuts") == std::vector<std::string>{"walnut", "pine-nut"});
    CHECK(missing("6 g black pepper\n5 g garam masala\n80 g red bell pepper\n", "no pepper") == std::vector<std::string>{"black-pepper"});
    CHECK(missing("30 g onion\n30 g shallot\n", "no onion") == std::vector<std::string>{"onion"});
}

TEST_CASE("sorrel and wood sorrel are two plants, on the list and in the formula") {
    const Formula formula = with("50 g sorrel\n");
    const auto list = read_inventory("wood sorrel 40 g\nno sorrel\n", "list", knowledge(), &formula);
    REQUIRE(list);
    CHECK(list->missing == std::vector<std::string>{"sorrel"});
    REQUIRE(list->items.size() == 1);
    CHECK(list->items.front().ingredient == "wood-sorrel");
    const Formula other = with("50 g wood sorrel\n");
    const auto back = read_inventory("sorrel 60 g\nno wood sorrel\n", "list", knowledge(), &other);
    REQUIRE(back);
    CHECK(back->missing == std::vector<std::string>{"wood-sorrel"});
}

}  // namespace none_of_a_word_test
