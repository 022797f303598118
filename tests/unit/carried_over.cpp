// What was done to the line is done to what stands in for it only where it can be done.
#include "substitute/carried_over.hpp"

#include <algorithm>

#include "published/proposed.hpp"
#include "substitute/portion.hpp"
#include "support/catch.hpp"
#include "support/kitchen.hpp"

using namespace standin;

namespace carried_over_test {

std::vector<std::string> steps(const Line& from, const std::string& food) {
    std::vector<std::string> all;
    for (const auto& step : prepared_like(from, *knowledge().ingredient(food), {}, knowledge()).prepared) all.push_back(step.preparation);
    return all;
}

TEST_CASE("nobody grates juice, chops a powder or roasts the powder of a fruit") {
    const Line apple = line("granny-smith-apple", 100, {"grated"});
    for (const char* food : {"apple-juice", "cider-vinegar", "citric-acid", "amchur"}) CHECK(steps(apple, food).empty());
    CHECK(steps(apple, "pear") == std::vector<std::string>{"grated"});
    CHECK(steps(line("onion", 80, {"chopped"}), "onion-powder").empty());
    CHECK(steps(line("onion", 80, {"chopped"}), "shallot") == std::vector<std::string>{"chopped"});
    CHECK(steps(line("walnut", 60, {"chopped"}), "peanut-butter").empty());
    CHECK(steps(line("walnut", 60, {"chopped"}), "pecan") == std::vector<std::string>{"chopped"});
    CHECK(steps(line("green-mango", 80, {"roasted"}), "amchur").empty());
}

TEST_CASE("what can be done to both stays: toasted seeds, grated cheese, boiled roots for boiled chestnuts") {
    CHECK(steps(line("pumpkin-seed", 60, {"toasted"}), "pine-nut") == std::vector<std::string>{"toasted"});
    CHECK(steps(line("parmesan", 60, {"grated"}), "asiago") == std::vector<std::string>{"grated"});
    CHECK(steps(line("parmesan", 60, {"grated"}), "ricotta").empty());
    CHECK(steps(line("chestnut", 100, {"boiled"}), "potato") == std::vector<std::string>{"boiled"});
    CHECK(steps(line("spinach", 100, {"blanched", "squeezed"}), "chard") == std::vector<std::string>{"blanched", "squeezed"});
}

TEST_CASE("no fresh fruit is proposed dried for a dried one; herbs and chiles are dried by hand") {
    const Line apple = line("granny-smith-apple", 15, {"dried"});
    CHECK(would_have_to_be_dried(apple, *knowledge().ingredient("quince"), knowledge()));
    CHECK_FALSE(would_have_to_be_dried(apple, *knowledge().ingredient("raisin"), knowledge()));
    CHECK_FALSE(would_have_to_be_dried(line("basil", 3, {"dried"}), *knowledge().ingredient("mint"), knowledge()));
    CHECK(steps(line("basil", 3, {"dried"}), "mint") == std::vector<std::string>{"dried"});
}

}  // namespace carried_over_test
