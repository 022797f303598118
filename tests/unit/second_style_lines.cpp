// A second set of lines in the manner of published pages, measured once before anything was mended on it.
#include "support/judged.hpp"

using namespace standin;

TEST_CASE("a second set of lines in the manner of published pages") {
    auto score = judged::score(judged::rows("unit/second_style_lines.csv"));
    WARN(score.told());
    REQUIRE(score.total.all >= 150);
}
