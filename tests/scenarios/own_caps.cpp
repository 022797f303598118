// What is shown keeps the caution it would be read with: under its own cap, and each formula once.
#include <cmath>
#include <map>
#include <set>
#include <string>

#include "support/catch.hpp"
#include "support/scenario.hpp"

using namespace standin;
using namespace scenario;

namespace own_caps_test {

const std::string made = "plate: 8 mm\nmixing: 3 min\nmixed at: 3 C\norder: salt first\ncook: pan\ncore: 71.1 C\n";

AdaptAnswer asked(const std::string& formula, std::vector<std::string> wants, const std::string& inventory = "") {
    static const Engine engine = expect(Engine::open({}));
    const auto read = expect(engine.read_formula(formula, "formula"));
    AdaptRequest request;
    request.wants = std::move(wants);
    if (!inventory.empty()) request.have = expect(engine.read_inventory(inventory, "list", &read));
    return expect(engine.adapt(read, request));
}

TEST_CASE("own caps: a milder one holds no more of the chile than a kilo bears") {
    for (const int grams : {32, 40, 50}) {
        const auto answer = asked("Fire (invented)\n1100 g beef chuck\n150 g beef fat\n" + std::to_string(grams) +
                                      " g habanero\n50 g cilantro\n20 g salt\n10 g garlic\n" + made,
                                  {"milder"}, "jalapeno 10\npoblano 4\n");
        CAPTURE(grams);
        REQUIRE_FALSE(answer.variants.empty());
        for (const auto& variant : answer.variants) CHECK(grams_in(variant, "habanero") <= 0.015 * variant.prediction.batch_g * 1.01);
    }
}

TEST_CASE("own caps: more of a line, and a line of the same beside it, are one way") {
    for (const char* meat : {"pork loin 1 kg\npork shoulder 1 kg\npork belly 900 g\n", "pork shoulder 2 kg\npork belly 900 g\n"}) {
        const auto answer =
            asked("Fat (invented)\n900 g pork belly\n400 g pork backfat\n300 g pork shoulder\n120 g parsley\n28 g salt\n" + made,
                  {"leaner"}, meat);
        std::set<std::string> weighed;
        for (const auto& variant : answer.variants) {
            std::map<std::string, double> grams;
            for (const auto& line : variant.formula.lines) grams[line.ingredient] += line.grams.mid;
            std::string text;
            for (const auto& [id, weight] : grams) text += id + " " + std::to_string(std::lround(weight)) + "\n";
            CHECK(weighed.insert(text).second);
        }
    }
}

}  // namespace own_caps_test
