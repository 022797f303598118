// How unsure the weight of a stand-in is: whatever holds it back (a part of the line, what a kilo takes of it, the scale), the weight that
// is shown lies in its own band.
#include "standin/engine.hpp"
#include "support/catch.hpp"

using namespace standin;

namespace swap_bands_test {

const char* const with_herbs =
    "Weir sausage, invented\n750 g pork shoulder\n250 g pork backfat\n17 g salt\n40 g cilantro, chopped\n40 g basil\n20 g hoja santa\n"
    "15 g epazote\n6 g makrut lime leaf\n20 g lemongrass\n12 g sumac\n20 g fish sauce\n60 g feta\n50 g breadcrumbs\n15 g garlic\n"
    "100 g sorrel\n20 g lime juice\n10 g ginger\n30 g pistachio\n6 g black pepper\n";

const Engine& engine() {
    static const Engine built_in = [] {
        Options options;
        options.draws = 32;
        return Engine::open(std::move(options)).value();
    }();
    return built_in;
}

TEST_CASE("swaps: the weight that is shown lies in its own band, as its middle") {
    const Formula formula = engine().read_formula(with_herbs, "test.txt").value();
    std::string outside;
    std::size_t seen = 0;
    for (const auto& line : formula.lines) {
        const auto answer = engine().swaps(formula, line.ingredient, {.top = 60});
        REQUIRE(answer);
        for (const auto& s : answer->stand_ins) {
            ++seen;
            if (s.grams_band.low > s.grams || s.grams > s.grams_band.high || s.grams_band.mid != s.grams || s.grams_band.low < 0)
                outside += "\n  " + line.ingredient + " -> " + s.ingredient + ": " + std::to_string(s.grams) + " of " +
                           std::to_string(s.grams_band.low) + "-" + std::to_string(s.grams_band.high);
        }
    }
    INFO(outside);
    CHECK(outside.empty());
    CHECK(seen > 300);
}

// A blend brings what nobody asked for, a leaf without acid is no sorrel, and what is mild is no match for salt.
TEST_CASE("swaps: what a cook would refuse does not stand among the first eight") {
    const Formula formula = engine().read_formula(with_herbs, "test.txt").value();
    const auto refused = [&](const char* line, std::vector<std::string> foods) {
        const auto answer = engine().swaps(formula, line, {.top = 8}).value();
        for (const auto& s : answer.stand_ins)
            for (const auto& food : foods) {
                INFO(line << " -> " << food);
                CHECK((s.ingredient != food || s.partner.has_value()));
            }
    };
    refused("cilantro", {"chermoula"});
    refused("sorrel", {"spinach", "spinach-frozen", "kale", "chard"});
    refused("makrut-lime-leaf", {"curry-leaf"});
    refused("fish-sauce", {"oyster-sauce"});
    refused("feta", {"mozzarella"});
    refused("epazote", {"parsley"});
}

}  // namespace swap_bands_test
