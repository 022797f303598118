// An allergen that the formula has not costs its price for every food that brings it, and only then.
#include <algorithm>

#include "adapt/moves/problem.hpp"
#include "safety/allergens.hpp"
#include "support/advising.hpp"
#include "support/catch.hpp"

using namespace standin;

namespace allergen_price_test {

constexpr const char* price_id = "advice.price.allergen";

// Price of each way for a food to come in, by the line it stands for and the food.
std::map<std::string, double> prices(const Knowledge& known, const std::vector<std::string>& wants) {
    const Formula base =
        formula({line("pork-shoulder", 2000), line("spinach", 300), line("almond", 60), line("rusk", 40), line("table-salt", 36)});
    Advising advising(base, wants, known);
    const Context context = advising.context();
    AdaptRequest request;
    request.have.emplace().missing = {"almond", "rusk"};
    request.have->complete = false;
    const auto stock = Stock::of(base, request, context);
    REQUIRE(stock);
    const SwapGraph graph(known);
    std::map<std::string, double> all;
    for (const auto& move : make_problem(base, *stock, graph, advising.distance(), context).moves)
        if (move.brings_food())
            all[std::to_string(move.line) + (move.kind == MoveKind::add ? "+" : "/") + std::to_string(static_cast<int>(move.role)) + " " +
                move.food.ingredient] = move.price;
    return all;
}

std::size_t fresh(const std::string& key) {
    const std::set<std::string> there{"almond", "wheat", "gluten"};
    const Ingredient* food = knowledge().ingredient(key.substr(key.find(' ') + 1));
    REQUIRE(food != nullptr);
    std::size_t n = 0;
    for (const auto& allergen : food->allergens) n += !there.count(allergen);
    return n;
}

// Of what comes in by itself what its packet may hold counts half.
double doubts(const std::string& key) {
    const std::set<std::string> there{"almond", "wheat", "gluten"};
    const Ingredient* food = knowledge().ingredient(key.substr(key.find(' ') + 1));
    if (key.find('+') == std::string::npos) return 0;
    return static_cast<double>(std::count_if(food->may_hold.begin(), food->may_hold.end(), [&](const std::string& allergen) {
        return !there.count(allergen) && std::find(food->allergens.begin(), food->allergens.end(), allergen) == food->allergens.end();
    }));
}

TEST_CASE("a new allergen has its price, one a class, and a known one none", "[price]") {
    Records records = knowledge().records();
    double price = 0;
    for (auto& p : records.parameters)
        if (p.id == price_id) {
            price = p.quantity.band.mid;
            p.quantity.band = {0, 0, 0};
        }
    REQUIRE(price > 0);
    const Knowledge free_of_charge(std::move(records));
    const auto with = prices(knowledge(), {"firmer"}), without = prices(free_of_charge, {"firmer"});
    CAPTURE(with.size(), without.size());
    std::size_t priced = 0, unpriced = 0;
    for (const auto& [key, paid] : with) {
        const auto same = without.find(key);
        if (same == without.end()) continue;
        INFO(key);
        CHECK(paid - same->second == Approx(price * (static_cast<double>(fresh(key)) + doubts(key) / 2)).margin(1e-9));
        ++(fresh(key) ? priced : unpriced);
    }
    CHECK(priced >= 3);
    CHECK(unpriced >= 3);
}

TEST_CASE("sulphites are declared from so much, or over so much, and not a hair below", "[price]") {
    AllergenRule from{"sulphite", "d", "s", 10.0, {}}, over{"sulphite", "d", "s", {}, 10.0}, always{"milk", "d", "s", {}, {}};
    CHECK(declares(from, 10));
    CHECK_FALSE(declares(from, 9.99));
    CHECK(declares(over, 10.01));
    CHECK_FALSE(declares(over, 10));
    CHECK(declares(always, 0));
}

}  // namespace allergen_price_test
