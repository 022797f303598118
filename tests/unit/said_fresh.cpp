// The word "fresh" goes before what the share of the batch makes likely.
#include "formula/reading.hpp"
#include "support/catch.hpp"
#include "support/knowledge.hpp"

using namespace standin;

namespace said_fresh_test {

std::string read_as(const std::string& line) {
    const auto read = read_formula("Green\n2000 g pork shoulder\n350 g back fat\n30 g salt\n" + line + "\n", "", knowledge());
    return read ? read->lines.back().ingredient : "asked";
}

TEST_CASE("a little of a herb that is said to be fresh is the fresh one, before or behind its name") {
    for (const std::string herb : {"sage", "thyme", "oregano", "marjoram"}) {
        INFO(herb);
        CHECK(read_as("3 g " + herb + ", fresh") == "fresh-" + herb);
        CHECK(read_as("3 g fresh " + herb) == "fresh-" + herb);
    }
    CHECK(read_as("3 g sage") == "dried-sage");
    CHECK(read_as("5 g ginger, fresh") == "ginger");
    CHECK(read_as("3 g freshly ground black pepper") == "black-pepper");
}

}  // namespace said_fresh_test
