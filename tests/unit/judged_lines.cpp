// Lines of the kinds that readers get wrong, judged before they were read: how many come out right, and whether "sure" is sure.
#include "support/judged.hpp"

using namespace standin;

TEST_CASE("lines judged before they were read") {
    // Foods that came to be known after the lines were judged, which had them asked back or taken for their nearest kin.
    const std::map<std::string, std::string> known_since{{"3 g jalapeño, powdered", "jalapeno-powder"},
                                                         {"1 finger chilli", "finger-chile-green"},
                                                         {"3 finger chillies", "finger-chile-green"}};
    auto score = judged::score(judged::rows("unit/judged_lines.csv"), known_since);
    WARN(score.told());
    REQUIRE(score.total.all >= 500);
    CHECK(score.total.share() >= 0.97);
    CHECK(score.by_confidence[Confidence::sure].share() >= 0.995);
    CHECK(score.by_confidence[Confidence::likely].share() >= 0.97);
    CHECK(score.silent <= 1);
}
