// The law of meat is told of meat: a sausage of prawns is a food under FDA, whose allergens must be declared.
#include <algorithm>

#include "standin/engine.hpp"
#include "support/catch.hpp"

using namespace standin;

namespace law_of_what_is_in_it_test {

const Engine& us() {
    static const Result<Engine> engine = [] {
        Options options;
        options.rules = "us";
        return Engine::open(options);
    }();
    return *engine;
}

Prediction predicted(const std::string& lines) { return us().predict(us().read_formula("Test\n" + lines, "f").value()).value(); }

bool tells(const Prediction& p, const std::string& id) {
    return std::any_of(p.cautions.begin(), p.cautions.end(), [&](const CautionText& c) { return c.id == id; });
}

TEST_CASE("prawns alone are under FDA, and with pork under FSIS") {
    const auto prawns = predicted("1 kg prawns\n200 g squid\n60 g chives\n16 g salt\n");
    CHECK(tells(prawns, "us-allergen-fda"));
    CHECK(tells(prawns, "us-sale-fda"));
    CHECK(tells(prawns, "us-mollusc"));
    CHECK_FALSE(tells(prawns, "us-allergen-law"));
    CHECK_FALSE(tells(prawns, "us-sale"));
    CHECK_FALSE(tells(prawns, "us-name"));
    const auto pork = predicted("1 kg pork shoulder\n200 g prawns\n16 g salt\n");
    CHECK(tells(pork, "us-allergen-law"));
    CHECK(tells(pork, "us-sale"));
    CHECK_FALSE(tells(pork, "us-allergen-fda"));
}

TEST_CASE("the label of prawns asks for no safe handling instructions") {
    const auto handling = [](const std::string& lines) {
        const auto paper = us().paper(us().read_formula("Test\n" + lines, "f").value()).value();
        return std::any_of(paper.draft.lines.begin(), paper.draft.lines.end(), [](const auto& line) { return line.id == "handling"; });
    };
    CHECK(handling("1 kg pork shoulder\n18 g salt\n"));
    CHECK_FALSE(handling("1 kg prawns\n16 g salt\n"));
}

}  // namespace law_of_what_is_in_it_test
