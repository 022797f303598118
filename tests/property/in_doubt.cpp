// Random lists and exclusions: what one packet in many holds of what is left out comes in only where nothing else will do, and is told.
#include <algorithm>
#include <random>
#include <set>

#include "safety/packets.hpp"
#include "standin/engine.hpp"
#include "support/catch.hpp"
#include "support/knowledge.hpp"

using namespace standin;

namespace in_doubt_test {

constexpr const char* lines[] = {"120 g whole milk", "100 g beef stock", "60 g dry breadcrumbs", "80 g walnuts",
                                 "25 g wheat flour", "100 g cream",      "10 g garam masala",    "40 g feta"};
constexpr const char* foods[] = {"chicken stock 1 l",      "vegetable broth 1 l", "rice flour 300 g",   "cornmeal 300 g",
                                 "potato flakes 200 g",    "cooked rice 400 g",   "potatoes 1 kg",      "sunflower seeds 200 g",
                                 "nutritional yeast 50 g", "curry powder 50 g",   "green olives 200 g", "coconut cream 400 g",
                                 "dijon mustard 100 g",    "soy sauce 200 ml",    "potato starch 200 g"};
constexpr const char* words[] = {"milk", "gluten", "nuts", "soy"};

std::set<std::string> looked_at(const std::vector<std::string>& without) {
    std::set<std::string> all;
    for (const auto& word : without)
        if (const Kind* kind = kind_named(word, knowledge())) all.merge(packets_to_look_at(*kind, knowledge()));
    return all;
}

bool has_line(const Formula& formula, const std::string& id) {
    return std::any_of(formula.lines.begin(), formula.lines.end(), [&](const Line& line) { return line.ingredient == id; });
}

bool is_told(const Variant& v, const std::string& name) {
    return std::any_of(v.prediction.allergens.begin(), v.prediction.allergens.end(),
                       [&](const AllergenText& text) { return std::find(text.from.begin(), text.from.end(), name) != text.from.end(); });
}

TEST_CASE("in doubt: a packet to look at comes in last, and never in silence") {
    const Engine engine = Engine::open({}).value();
    std::mt19937 random(7);
    std::size_t came = 0;
    for (int n = 0; n < 40; ++n) {
        std::string text = "Any (invented)\n2000 g pork shoulder\n300 g pork backfat\n40 g parsley\n36 g salt\n", list;
        for (const char* line : lines)
            if (random() % 2) text += std::string(line) + "\n";
        std::vector<std::string> items, without;
        for (const char* food : foods)
            if (random() % 2) items.emplace_back(food);
        for (const char* word : words)
            if (random() % 2) without.emplace_back(word);
        if (items.empty() || without.empty()) continue;
        for (const auto& item : items) list += item + "\n";
        CAPTURE(text, list, without);
        const auto formula = engine.read_formula(text, "formula");
        REQUIRE(formula);
        AdaptRequest request;
        request.without = without;
        request.have = engine.read_inventory(list, "list", &*formula).value();
        const auto answer = engine.adapt(*formula, request);
        REQUIRE(answer);
        const auto doubtful = looked_at(without);
        for (const auto& v : answer->variants)
            for (const auto& edit : v.edits) {
                if (edit.with.empty() || !doubtful.count(edit.with) || has_line(*formula, edit.with)) continue;
                ++came;
                CAPTURE(v.rank, edit.line, edit.with);
                CHECK(is_told(v, knowledge().ingredient(edit.with)->names.front()));
                // Without it on the list the line would have been lost.
                AdaptRequest sure = request;
                std::erase_if(sure.have->items, [&](const InventoryItem& item) { return doubtful.count(item.ingredient) > 0; });
                const auto other = engine.adapt(*formula, sure);
                REQUIRE(other);
                for (const auto& w : other->variants)
                    CHECK(std::none_of(w.edits.begin(), w.edits.end(),
                                       [&](const Edit& e) { return e.kind == EditKind::replace && e.line == edit.line; }));
            }
    }
    WARN(came << " packets to look at came in");
}

TEST_CASE("in doubt: the list is told of them, and water does for milk before stock from a packet") {
    const Engine engine = Engine::open({}).value();
    const auto formula =
        engine.read_formula("Any (invented)\n1000 g pork shoulder\n200 g pork backfat\n100 g milk\n18 g salt\n", "formula");
    REQUIRE(formula);
    AdaptRequest request;
    request.have = engine.read_inventory("chicken stock 1 l\nno milk\n", "list", &*formula).value();
    const auto plain = engine.adapt(*formula, request);
    REQUIRE(plain);
    REQUIRE_FALSE(plain->variants.empty());
    CHECK(has_line(plain->variants.front().formula, "chicken-stock"));
    request.without = {"milk", "gluten"};
    const auto answer = engine.adapt(*formula, request);
    REQUIRE(answer);
    REQUIRE_FALSE(answer->variants.empty());
    for (const auto& v : answer->variants) CHECK_FALSE(has_line(v.formula, "chicken-stock"));
    CHECK(has_line(answer->variants.front().formula, "water"));
    for (const auto& out : answer->excluded)
        CHECK(std::any_of(out.notes.begin(), out.notes.end(),
                          [](const Reason& note) { return note.kind == ReasonKind::perhaps_off_the_list && note.about == "last"; }));
}

TEST_CASE("in doubt: swaps tells of the packet and puts it after what is sure") {
    const Engine engine = Engine::open({}).value();
    const auto formula = engine.read_formula("Any (invented)\n1000 g pork shoulder\n60 g breadcrumbs\n18 g salt\n", "formula");
    REQUIRE(formula);
    SwapsRequest request;
    request.top = 100;
    request.without = {"gluten"};
    const auto answer = engine.swaps(*formula, "breadcrumbs", request);
    REQUIRE(answer);
    const auto doubtful = looked_at({"gluten"});
    bool seen = false;
    for (const auto& s : answer->stand_ins) {
        const bool in_doubt = doubtful.count(s.ingredient) > 0;
        CAPTURE(s.ingredient);
        CHECK_FALSE((seen && !in_doubt));
        seen = seen || in_doubt;
        if (in_doubt)
            CHECK(std::any_of(s.allergens.begin(), s.allergens.end(), [&](const AllergenText& text) {
                return std::find(text.from.begin(), text.from.end(), s.name) != text.from.end();
            }));
    }
    CHECK(seen);
}

}  // namespace in_doubt_test
