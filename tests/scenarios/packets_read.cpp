// What only may hold what is left out is no reason to leave a line of the maker's own at nothing. Formulas and lists are invented.
#include "support/catch.hpp"
#include "support/scenario.hpp"

using namespace standin;
using namespace scenario;

namespace packets_read_test {

AdaptAnswer without_gluten(const std::string& list) {
    const Engine engine = expect(Engine::open({}));
    const std::string text = "Beef (invented)\n2 kg beef chuck\n400 g beef suet\n90 g breadcrumbs\n38 g salt\n";
    AdaptRequest request;
    request.without = {"gluten"};
    const Formula formula = expect(engine.read_formula(text, "t"));
    request.have = expect(engine.read_inventory(list, "l", &formula));
    return expect(engine.adapt(formula, request));
}

TEST_CASE("packets: suet that may have been dusted stays where nothing harmless is there for it, and its packet is to be read") {
    const AdaptAnswer answer = without_gluten("potato flakes 200 g\n");
    REQUIRE_FALSE(answer.variants.empty());
    CHECK(grams_in(answer.variants.front(), "beef-suet") == Approx(400));
    CHECK(grams_in(answer.variants.front(), "breadcrumb") == 0);
    REQUIRE_FALSE(answer.excluded.empty());
    CHECK(answer.excluded.front().note.find("read the packet") != std::string::npos);
}

TEST_CASE("packets: fat on the list that holds nothing of it is taken first") {
    const AdaptAnswer answer = without_gluten("potato flakes 200 g\nbeef fat 800 g\n");
    REQUIRE_FALSE(answer.variants.empty());
    CHECK(grams_in(answer.variants.front(), "beef-suet") == 0);
    CHECK(grams_in(answer.variants.front(), "beef-fat") > 300);
}

}  // namespace packets_read_test
