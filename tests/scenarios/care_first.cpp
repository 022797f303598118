// What costs nothing comes before anything is bought: leaves blanched and squeezed, seeds left in, more of the water that is there.
// Formulas are invented.
#include <algorithm>

#include "support/catch.hpp"
#include "support/scenario.hpp"

using namespace standin;
using namespace scenario;

namespace care_first_test {

AdaptAnswer asked(const std::string& formula, const std::string& want) {
    static const Engine engine = expect(Engine::open({}));
    const auto read = expect(engine.read_formula(formula, "formula"));
    AdaptRequest request;
    request.wants = {want};
    return expect(engine.adapt(read, request));
}

bool does(const Variant& v, ReasonKind kind, const std::string& about = {}) {
    return std::any_of(v.edits.begin(), v.edits.end(), [&](const Edit& e) {
        return e.kind == EditKind::process && e.does.kind == kind && (about.empty() || e.does.about == about);
    });
}

bool prepared(const Variant& v, const std::string& food, const std::string& step) {
    return std::any_of(v.formula.lines.begin(), v.formula.lines.end(), [&](const Line& line) {
        return line.ingredient == food &&
               std::any_of(line.prepared.begin(), line.prepared.end(), [&](const Prepared& p) { return p.preparation == step; });
    });
}

const std::string with_care = "plate: 8 mm\nmixing: 3 min\nmixed at: 2 C\norder: salt first\ncook: pan\ncore: 72 C\n";

TEST_CASE("care first: raw leaves and grated squash are squeezed before a starch is to hold their water") {
    const auto answer = asked(
        "Weir garden (invented)\n2000 g pork shoulder\n200 g pork backfat\n600 g spinach\n200 g zucchini, grated\n"
        "40 g parsley\n100 g cilantro\n38 g salt\n" +
            with_care,
        "firmer");
    REQUIRE_FALSE(answer.variants.empty());
    for (const auto& v : answer.variants) {
        CHECK(does(v, ReasonKind::squeeze, "raw"));
        CHECK(prepared(v, "spinach", "squeezed"));
        CHECK(prepared(v, "zucchini", "squeezed"));
        CHECK_FALSE(prepared(v, "parsley", "blanched"));  // herbs stay herbs
        CHECK_FALSE(prepared(v, "cilantro", "blanched"));
    }
}

TEST_CASE("care first: who did not ask for a drier mass keeps his raw leaves") {
    const auto answer =
        asked("Weir garden (invented)\n2000 g pork shoulder\n600 g spinach\n20 g serrano\n38 g salt\n" + with_care, "milder");
    REQUIRE_FALSE(answer.variants.empty());
    for (const auto& v : answer.variants) CHECK_FALSE(prepared(v, "spinach", "squeezed"));
}

TEST_CASE("care first: hotter leaves the seeds in the chile that is there") {
    const auto answer =
        asked("Goat (invented)\n1800 g goat\n300 g pork belly\n36 g salt\n60 g jalapeño, seeded\n40 g mint\n" + with_care, "hotter");
    REQUIRE_FALSE(answer.variants.empty());
    const Variant& first = answer.variants.front();
    CHECK(does(first, ReasonKind::seeds_in));
    CHECK_FALSE(prepared(first, "jalapeno", "seeded"));
    CHECK(grams_in(first, "cayenne-powder") == 0);
}

TEST_CASE("care first: cold alone stands before flour where it goes most of the way") {
    const std::string warm =
        "Warm (invented)\n2000 g chicken thigh\n300 g chicken skin\n34 g salt\n60 g parsley\n30 g garlic\nplate: 5 mm\n"
        "mixing: 3 min\nmixed at: 13 C\norder: salt first\ncook: grill\ncore: 74 C\n";
    const auto answer = asked(warm, "firmer");
    REQUIRE(answer.variants.size() >= 2);
    CHECK(does(answer.variants[0], ReasonKind::cold));
    for (const auto& edit : answer.variants[0].edits) CHECK(edit.kind == EditKind::process);
    CHECK_FALSE(std::all_of(answer.variants[0].wants.begin(), answer.variants[0].wants.end(), [](const WantResult& w) { return w.met; }));
    CHECK(std::all_of(answer.variants[1].wants.begin(), answer.variants[1].wants.end(), [](const WantResult& w) { return w.met; }));
    // A number is met, whatever it takes.
    const auto number = asked(warm, "firmness>=34.5");
    REQUIRE_FALSE(number.variants.empty());
    CHECK(number.variants[0].wants[0].met);
}

TEST_CASE("care first: more of the chile that is there comes before another") {
    for (const char* pods : {"20 g jalapeño", "6 g serrano"}) {
        const auto answer =
            asked("Beef (invented)\n2000 g beef chuck\n34 g salt\n" + std::string(pods) + "\n60 g cilantro\n" + with_care, "hotter");
        REQUIRE_FALSE(answer.variants.empty());
        CHECK(has_edit(answer.variants.front(), EditKind::raise));
    }
}

TEST_CASE("care first: looser pours more of the water that is there, as far as it takes") {
    const auto answer = asked("Fine (invented)\n2500 g pork shoulder\n42 g salt\n100 g water\n20 g garlic\n" + with_care, "looser");
    CHECK(answer.conflict.empty());
    REQUIRE_FALSE(answer.variants.empty());
    CHECK(grams_in(answer.variants.front(), "water") > 140);
}

}  // namespace care_first_test
