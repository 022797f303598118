// What heads a sheet: a title behind the sign of a heading, a line of serves and times, and what is asked of a figure.
#include "formula/reading.hpp"
#include "support/catch.hpp"
#include "support/knowledge.hpp"

using namespace standin;

namespace sheet_heads_test {

std::string title_of(const std::string& text) {
    const auto read = read_formula(text, "f", knowledge());
    INFO(text);
    if (!read) FAIL(read.error().message);
    return read->title;
}

TEST_CASE("a heading above lines that have no other title is the title") {
    CHECK(title_of("# Family green\n## Ingredients\n1.2 kg pork neck\n25 g salt\n") == "Family green");
    CHECK(title_of("# Nettle & Hazelnut Sausage\n\n**Ingredients** (makes about 24 links)\n\n2 kg pork shoulder\n36 g salt\n") ==
          "Nettle & Hazelnut Sausage");
    for (const std::string beside : {"Makes about 16", "Serves 4 to 6", "Yield: 12 links", "Für 4 Personen", "Makes 5 lb"})
        CHECK(title_of("# Family green\n" + beside + "\n1.2 kg pork neck\n25 g salt\n") == "Family green");
    CHECK(title_of("# copied out\nFamily green\n1.2 kg pork neck\n25 g salt\n") == "Family green");
    CHECK_FALSE(read_formula("# 40 g walnuts\n1.2 kg pork neck\n25 g salt\n", "f", knowledge()));
}

TEST_CASE("a point that may part thousands is asked about with its own figure") {
    const auto read = read_formula("Wurst\n2.500 g pork shoulder\n72 g salt\n", "f", knowledge());
    REQUIRE_FALSE(read);
    CHECK(read.error().message.find("2500 g or 2.5 kg, or as 2.5 g") != std::string::npos);
}

}  // namespace sheet_heads_test
