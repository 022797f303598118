// Lists of what is on hand with columns and boxes, and more words of none and some.
#include <algorithm>

#include "core/contains.hpp"
#include "formula/reading.hpp"
#include "support/catch.hpp"
#include "support/inventory.hpp"
#include "support/knowledge.hpp"

using namespace standin;

namespace lists_in_columns_test {

Inventory list(const std::string& text) {
    auto read = read_inventory("kale 200 g\nchard\n" + text, "f", knowledge());
    INFO(text);
    if (!read) FAIL(read.error().message);
    return std::move(*read);
}

TEST_CASE("columns of a list") {
    const std::string table =
        "Item\tHave\tWhere\nSpinach\t1.2 kg\tbed 3\nSorrel\t-\teaten by slugs\nPoblano\t9\tgreenhouse\nSerrano\t0\t\n"
        "Parsley\tlots\tbed 1\nChives\t1 clump\tpot\nTomatillo\t?\tcheck\nMint\t20 g\tbeside the hemlock";
    CHECK(looks_like_stock(table, "f", knowledge()));
    CHECK_FALSE(read_inventory(table, "f", knowledge()));  // hemlock
    const auto read = list(table.substr(0, table.find("\nMint")));
    REQUIRE(item(read, "spinach"));
    CHECK(item(read, "spinach")->grams == Approx(1200));
    CHECK(item(read, "poblano"));
    CHECK(item(read, "parsley"));
    CHECK(item(read, "chives"));
    CHECK(contains(read.missing, std::string("sorrel")));
    CHECK(contains(read.missing, std::string("serrano")));
    CHECK(read.aside.size() == 1);  // tomatillo?
}

TEST_CASE("boxes that are not ticked are asked about") {
    const auto read = list("- [x] thyme\n- [ ] parsley");
    CHECK_FALSE(item(read, "parsley"));
    CHECK(read.aside.size() == 1);
}

TEST_CASE("none, in more words") {
    for (const char* line :
         {"parsley: eaten by slugs", "parsley, slugs ate it all", "Petersilie: nix", "don't have any parsley", "parsley agotado"}) {
        INFO(line);
        CHECK(contains(list(line).missing, std::string("parsley")));
    }
    const auto fresh = list("no fresh chiles, only dried");
    CHECK(contains(fresh.missing, std::string("serrano")));
    CHECK_FALSE(contains(fresh.missing, std::string("ancho")));
    CHECK_FALSE(read_inventory("kale 200 g\nchard\nparsley next to slugs", "f", knowledge()));
}

TEST_CASE("loose amounts") {
    CHECK(item(list("maybe 100 g sorrel"), "sorrel")->grams == Approx(100));
    CHECK(item(list("parsley, 2 sad bunches"), "parsley")->grams.value_or(0) > 50);
    CHECK(item(list("1 tin anchovies, unopened"), "anchovy")->grams == Approx(50));
    const auto vinegar = list("white wine vinegar, most of a bottle");
    CHECK(item(vinegar, "white-wine-vinegar")->grams == Approx(375));
    CHECK(vinegar.aside.empty());
    CHECK(item(list("2 Gläser Essiggurken"), "dill-pickle")->grams.value_or(0) > 300);
    const auto either = list("either arugula or cress");
    CHECK_FALSE(item(either, "arugula"));
    CHECK(either.aside.size() == 1);
}

TEST_CASE("a word for several foods sets its line aside") {
    const auto read = list("3/4 of a jar of salsa verde\npepitas 300 g");
    CHECK(read.aside.size() == 1);
    CHECK(item(read, "pumpkin-seed"));
    CHECK_FALSE(read_inventory("kale 200 g\nchard\nno zorbles", "f", knowledge()));
    CHECK_FALSE(read_inventory("kale 200 g\nchard\nfoxglove, eaten by slugs", "f", knowledge()));
}

TEST_CASE("another fruit that is missing leaves what stands for it") {
    CHECK(item(list("gooseberries 500 g\nno green plums"), "gooseberry"));
}

}  // namespace lists_in_columns_test
