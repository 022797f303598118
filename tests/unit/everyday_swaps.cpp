// Swaps of every kitchen, each against bounds that a practised hand would keep.
#include <algorithm>
#include <cctype>
#include <string>
#include <vector>

#include "standin/number_text.hpp"
#include "substitute/dose.hpp"
#include "substitute/stand_ins.hpp"
#include "support/catch.hpp"
#include "support/kitchen.hpp"

using namespace standin;

namespace everyday_swaps_test {

std::vector<Candidate> weighed(const Line& one, const std::string& stand_in) {
    static const SwapGraph graph(knowledge());
    const Formula batch = formula({one, line("pork-shoulder", 750), line("pork-backfat", 150), line("table-salt", 15)});
    auto all = once_each(candidates_for(batch, 0, graph, nominal(), [](const Ingredient&) { return true; }).fit, true);
    std::erase_if(all, [&](const Candidate& c) { return c.food.ingredient != stand_in; });
    return all;
}

struct Swapped {
    const char* line;
    double grams;
    const char* stand_in;
    double least, most;
};

TEST_CASE("strong seasonings are weighed as cooks weigh them") {
    const std::vector<Swapped> all{
        {"allspice", 2, "clove", 0.4, 1},      {"clove", 0.8, "allspice", 1.0, 2.2},      {"juniper-berry", 2, "rosemary", 1.5, 5},
        {"epazote", 3, "fresh-oregano", 2, 6}, {"onion", 80, "asafoetida", 0.2, 0.6},     {"garlic", 12, "garlic-powder", 1.2, 4},
        {"mint", 30, "dried-mint", 4, 8},      {"soy-sauce", 20, "tamari", 18, 22},       {"worcestershire-sauce", 15, "soy-sauce", 10, 16},
        {"wild-garlic", 30, "garlic", 5, 10},  {"dried-cranberry", 40, "prune", 35, 45},  {"spinach", 100, "spinach-frozen", 45, 75},
        {"jalapeno", 40, "fresno", 30, 50},    {"habanero", 5, "thai-bird-chile", 6, 14}, {"sriracha", 15, "sambal-oelek", 8, 15},
        {"pancetta", 80, "bacon", 70, 90}};
    for (const auto& one : all) {
        CAPTURE(one.line, one.stand_in);
        const std::string id = one.line;
        const auto found = weighed(line(id, one.grams), one.stand_in);
        REQUIRE_FALSE(found.empty());
        for (const auto& c : found) {
            CHECK(c.food.grams.mid >= one.least);
            CHECK(c.food.grams.mid <= one.most);
        }
    }
}

TEST_CASE("of what stands in for a part of the salt that part is weighed whole, and no more than a kilo takes") {
    const auto soy = weighed(line("table-salt", 12), "soy-sauce");
    REQUIRE_FALSE(soy.empty());
    for (const auto& c : soy) {
        CHECK(c.share < 0.25);
        const double brought = dose_of(nominal().unit(c.food), Role::salt) * c.food.grams.mid;
        CHECK(brought == Approx(c.share * 12).epsilon(0.05));
        CHECK(c.food.grams.mid <= 0.041 * 927);
    }
    const auto tamari = weighed(line("table-salt", 12), "tamari");
    for (const auto& c : tamari) CHECK(c.share < 0.25);
}

TEST_CASE("seeds that were taken out are not brought back as another chile") {
    for (const char* chile : {"jalapeno", "serrano", "fresno"}) {
        static const SwapGraph graph(knowledge());
        const Formula batch = formula({line(chile, 40), line("pork-shoulder", 750), line("table-salt", 15)});
        for (const auto& c : candidates_for(batch, 0, graph, nominal(), [](const Ingredient&) { return true; }).fit) {
            CAPTURE(chile, c.food.ingredient);
            const auto& steps = c.food.prepared;
            const bool seeded = std::any_of(steps.begin(), steps.end(), [](const Prepared& p) { return p.preparation == "seeded"; });
            CHECK_FALSE((seeded && c.partner));
        }
    }
}

TEST_CASE("what few shops sell is no partner that a cook is told to weigh in beside") {
    for (const char* chile : {"habanero", "thai-bird-chile", "cayenne-fresh"}) {
        static const SwapGraph graph(knowledge());
        const Formula batch = formula({line(chile, 5), line("pork-shoulder", 750), line("table-salt", 15)});
        for (const auto& c : candidates_for(batch, 0, graph, nominal(), [](const Ingredient&) { return true; }).fit)
            if (c.partner) CHECK(c.partner->food.ingredient != "superhot-chile");
    }
}

TEST_CASE("a sweet red powder gives way to a hot one only beside what brings the colour") {
    const auto chipotle = weighed(line("smoked-paprika", 8), "chipotle");
    REQUIRE_FALSE(chipotle.empty());
    for (const auto& c : chipotle) {
        REQUIRE(c.partner);
        CHECK(c.partner->food.ingredient == "paprika");
        CHECK(c.food.grams.mid < 3.1);
    }
}

// "Lemon juice: fruit smell" beside vinegar: what stands before the colon is the stand-in.
TEST_CASE("no note of a swap is about the food that goes") {
    const auto named = [](const std::string& id, const std::string& name) {
        const auto* food = knowledge().ingredient_named(name);
        return food && food->id == id;
    };
    std::size_t headed = 0;
    for (const auto& swap : knowledge().records().swaps) {
        const auto colon = swap.note.find(':');
        if (colon == std::string::npos) continue;
        std::string head = swap.note.substr(0, colon);
        head.front() = static_cast<char>(std::tolower(static_cast<unsigned char>(head.front())));
        CAPTURE(swap.from, swap.to, swap.note);
        CHECK_FALSE((named(swap.from, head) && swap.from != swap.to));
        if (named(swap.to, head)) ++headed;
    }
    CHECK(headed > 100);
}

// "Chalky above 3 %" beside 35 g in a kilo would make fun of itself.
TEST_CASE("no food may come in by more than the notes of its swaps call too much") {
    std::size_t limits = 0;
    for (const auto& swap : knowledge().records().swaps) {
        const auto at = swap.note.find("above ");
        if (at == std::string::npos || swap.note.find(" %", at) == std::string::npos) continue;
        const auto percent = number_in(swap.note.substr(at + 6, swap.note.find(" %", at) - at - 6));
        CAPTURE(swap.from, swap.to, swap.note);
        REQUIRE(percent.has_value());
        const auto& most = knowledge().ingredient(swap.to)->most_g_per_kg;
        REQUIRE(most.has_value());
        CHECK(most->band.mid <= 10 * *percent);
        ++limits;
    }
    CHECK(limits >= 6);
}

TEST_CASE("a spirit, a sherry and a vermouth keep their own names") {
    for (const char* name : {"gin", "rum", "bourbon", "dry sherry", "dry vermouth"}) {
        const auto* food = knowledge().ingredient_named(name);
        REQUIRE(food != nullptr);
        CHECK(food->names.front() != "plain spirit");
        CHECK(food->names.front() != "fortified wine");
    }
}

}  // namespace everyday_swaps_test
