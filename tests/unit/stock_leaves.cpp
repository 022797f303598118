// Bare names of herbs on a list of what is on hand: so much of one is the leaf, and which was taken is told. Lists are invented.
#include <algorithm>

#include "formula/reading.hpp"
#include "support/catch.hpp"
#include "support/knowledge.hpp"

using namespace standin;

namespace stock_leaves_test {

Inventory list_of(const std::string& text) {
    auto inventory = read_inventory(text, "list", knowledge());
    if (!inventory) FAIL(inventory.error().message);
    return *inventory;
}

bool tells(const Inventory& list, const std::string& words) {
    return std::any_of(list.notes.begin(), list.notes.end(),
                       [&](const Reason& note) { return in_full(note).find(words) != std::string::npos; });
}

TEST_CASE("stock leaves: weighed by the ten grams they are fresh") {
    for (const std::string herb : {"sage", "thyme"}) {
        CAPTURE(herb);
        for (const std::string& line : {herb + " 20 g", "30 g " + herb}) {
            const Inventory list = list_of(line + "\nparsley 1 bunch\n");
            CHECK(list.items.front().ingredient == "fresh-" + herb);
            CHECK(tells(list, "read as fresh " + herb));
        }
    }
}

TEST_CASE("stock leaves: what is said to be dried is dried, and a few grams are") {
    CHECK(list_of("dried sage 20 g\n").items.front().ingredient == "dried-sage");
    CHECK(list_of("sage 4 g\n").items.front().ingredient == "dried-sage");
}

TEST_CASE("stock leaves: a bare name says which was taken") {
    CHECK(tells(list_of("thyme\nparsley 1 bunch\n"), "write \"fresh thyme\""));
    CHECK(tells(list_of("thyme plenty\nparsley 1 bunch\n"), "read as fresh thyme"));  // bunches around it
    CHECK_FALSE(tells(list_of("dried thyme\n"), "fresh thyme"));
}

}  // namespace stock_leaves_test
