// Lines in the manner of published pages, judged before they were read.
#include "support/judged.hpp"

using namespace standin;

TEST_CASE("lines in the manner of published pages") {
    auto score = judged::score(judged::rows("unit/published_style_lines.csv"));
    WARN(score.told());
    REQUIRE(score.total.all >= 400);
}
