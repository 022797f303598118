// What the bench sheet says of germs and of burning pods where the work is done, and nothing of what is not in the batch.
#include "standin/engine.hpp"
#include "support/catch.hpp"
#include "support/kitchen.hpp"

using namespace standin;

namespace sheet_hygiene_test {

SheetStep step(const Formula& formula, std::string_view id, const SheetRequest& request = {}) {
    Options options;
    options.draws = 32;
    static Engine engine = Engine::open(options).value();
    const auto made = engine.sheet(formula, request);
    REQUIRE(made);
    for (const auto& one : made->steps)
        if (one.id == id) return one;
    FAIL("no step " << id);
    return {};
}

bool says(const SheetStep& step, std::string_view words) { return step.how.find(words) != std::string::npos; }

TEST_CASE("the step in which meat is cut keeps raw meat off the leaves and the hands", "[sheet]") {
    const SheetStep pork = step(formula({line("pork-shoulder", 1000), line("parsley", 40), line("table-salt", 16)}), "chill");
    CHECK(says(pork, "wash hands, board and knife"));
    CHECK_FALSE(says(pork, "poultry"));
    CHECK(says(step(formula({line("chicken-thigh", 1000), line("table-salt", 16)}), "chill"), "Do not rinse raw poultry"));
}

TEST_CASE("a pod that burns the skin is cut with gloves on", "[sheet]") {
    CHECK(says(step(formula({line("pork-shoulder", 1000), line("habanero", 8), line("table-salt", 16)}), "weigh"),
               "Gloves on for the habanero."));
}

TEST_CASE("seeds and nuts go first into the blender only where there are any", "[sheet]") {
    const auto paste = [](std::vector<Line> more) {
        std::vector<Line> lines{line("pork-shoulder", 1000), line("spinach", 100, {"blanched", "squeezed"}), line("table-salt", 16)};
        for (auto& one : more) lines.push_back(one);
        return step(formula(lines), "paste");
    };
    CHECK_FALSE(says(paste({}), "Seeds"));
    CHECK(says(paste({line("pumpkin-seed", 40)}), "Seeds and nuts first"));
}

TEST_CASE("a length that was asked for is the maker's own, though it is the usual one", "[sheet]") {
    const Formula links = formula({line("pork-shoulder", 1000), line("table-salt", 16)});
    CHECK(step(links, "shape", {"", "", "", {}, "32 mm", "12 cm"}).said);
    CHECK_FALSE(step(links, "shape", {"", "", "", {}, "32 mm", ""}).said);
}

}  // namespace sheet_hygiene_test
