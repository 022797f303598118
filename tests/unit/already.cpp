// Foods that were worked on before they were bought: as stand-ins they are not told to go through it again.
#include <algorithm>

#include "standin/engine.hpp"
#include "support/catch.hpp"
#include "support/kitchen.hpp"

using namespace standin;

namespace already_test {

// Whether the words a maker reads ("blanched 2 min") name this preparation.
bool names(const std::string& words, const std::string& preparation) {
    const std::string& name = knowledge().preparation(preparation)->names.front();
    return words.rfind(name, 0) == 0 && (words.size() == name.size() || words[name.size()] == ' ') &&
           words.find(" and ") == name.find(" and ");
}

std::size_t check(const Line& line) {
    Options options;
    options.draws = 16;
    auto engine = Engine::open(options);
    REQUIRE(engine);
    const auto answer = engine->swaps(formula({::line("pork-shoulder", 1000), ::line("table-salt", 17), line}), "3", {.top = 200});
    REQUIRE(answer);
    std::size_t ready = 0;
    for (const auto& s : answer->stand_ins) {
        CAPTURE(line.ingredient, s.ingredient);
        const auto& already = knowledge().ingredient(s.ingredient)->already;
        ready += !already.empty();
        for (const auto& words : s.prepared)
            for (const auto& step : already) {
                CAPTURE(words, step);
                CHECK_FALSE(names(words, step));
            }
    }
    return ready;
}

TEST_CASE("what stands in ready is not blanched, charred, peeled, toasted or ground once more") {
    CHECK(check(line("spinach", 300, {"washed", "stemmed", "blanched", "squeezed"})) > 0);
    CHECK(check(line("poblano", 280, {"roasted-peeled"})) > 0);
    CHECK(check(line("jalapeno", 80, {"roasted", "peeled", "seeded"})) > 0);
    CHECK(check(line("tomato", 100, {"peeled", "seeded"})) > 0);
    CHECK(check(line("walnut", 70, {"shelled", "toasted", "ground"})) > 0);
}

}  // namespace already_test
