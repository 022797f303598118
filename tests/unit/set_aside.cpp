// What a list holds that is no food here goes into nothing and stops nothing.
#include <algorithm>

#include "formula/reading.hpp"
#include "support/catch.hpp"
#include "support/knowledge.hpp"

using namespace standin;

namespace set_aside_test {

TEST_CASE("what is no food here is set aside in a list, however much of it there is, and the rest is used") {
    for (const char* line : {"Lebanese zorbs 3", "prickly sage 2", "society garlic 1 bunch", "rose sage 20 g", "zorb nutmeg 5 g",
                             "zafran saffron 1 g", "mango pickle 1 jar", "angelica stems 100 g", "zorbs 2\nquillos 3\nvezzos 1 jar"}) {
        CAPTURE(line);
        const auto list = read_inventory("thyme 2 bunches\nlimes 4\n" + std::string(line) + "\n", "f", knowledge());
        REQUIRE(list);
        CHECK(list->items.size() >= 2);
    }
    CHECK_FALSE(read_inventory("zorbs 2\nquillos 3\nvezzos 1 jar\n", "f", knowledge()));
}

TEST_CASE("what may hurt, leaves out or is a slip of the pen still stops the list") {
    for (const char* line :
         {"hemlok 1 bunch", "zorbs, may contain celery", "no zorbs", "spinch 300 g", "2 g saltpetre", "zorb mould 20 g"}) {
        CAPTURE(line);
        CHECK_FALSE(read_inventory("thyme 2 bunches\nlimes 4\n" + std::string(line) + "\n", "f", knowledge()));
    }
}

}  // namespace set_aside_test
