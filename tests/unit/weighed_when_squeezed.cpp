// What is said behind a blanched leaf or a stone fruit is read as makers mean it.
#include <algorithm>

#include "formula/line/line_text.hpp"
#include "support/catch.hpp"
#include "support/knowledge.hpp"
#include "support/scenario.hpp"

using namespace standin;

namespace weighed_when_squeezed_test {

Line line_of(const std::string& text) {
    const Formula formula =
        scenario::expect(scenario::engine().read_formula("Made\n1 kg pork shoulder\n" + text + "\n18 g salt\n", "made.txt"));
    REQUIRE(formula.lines.size() == 3);
    return formula.lines[1];
}

TEST_CASE("a blanched leaf that is squeezed is weighed as it goes in") {
    for (const std::string text : {"250 g blanched spinach, squeezed", "120 g steamed chard, squeezed", "100 g boiled nettles, squeezed"}) {
        INFO(text);
        CHECK(line_of(text).weighed_prepared);
    }
    CHECK_FALSE(line_of("250 g spinach, blanched and squeezed").weighed_prepared);
}

TEST_CASE("what stands before the weight was done before weighing, what stands behind it after") {
    for (const std::string text :
         {"spinach, blanched and squeezed 150 g", "spinach, blanched and squeezed, 150 g", "squeezed spinach 150 g",
          "chard, boiled, squeezed and chopped: 150 g", "onion, cooked until soft, 150 g"}) {
        INFO(text);
        CHECK(line_of(text).weighed_prepared);
    }
    for (const std::string text : {"spinach 150 g, blanched and squeezed", "150 g spinach, blanched and squeezed",
                                   "spinach, blanched and squeezed 150 g [weighed first]"}) {
        INFO(text);
        CHECK_FALSE(line_of(text).weighed_prepared);
    }
    const auto read = read_line("spinach, blanched and squeezed 150 g", Origin("", {1, 1}), knowledge());
    REQUIRE(read);
    CHECK(std::any_of(read->doubts.begin(), read->doubts.end(), [](const LineDoubt& doubt) {
        return doubt.what.kind == ReasonKind::translated && doubt.what.about.ends_with("[weighed prepared]");
    }));
}

TEST_CASE("a fruit that is pitted has no kernel, and a pit is none to eat") {
    CHECK(line_of("120 g sour green plum, pitted").grams.mid == 120);
    CHECK(line_of("120 g apricot, pitted").grams.mid == 120);
    CHECK_FALSE(scenario::engine().read_formula("Made\n1 kg pork shoulder\n20 g plum pits\n18 g salt\n", "made.txt"));
}

}  // namespace weighed_when_squeezed_test
