// A row with an amount is read or asked back, wherever it stands; none goes lost in silence.
#include <algorithm>

#include "standin/engine.hpp"
#include "support/catch.hpp"

using namespace standin;

namespace rows_kept_test {

const Engine& engine() {
    static const Engine made = std::move(*Engine::open({}));
    return made;
}

bool kept(const FormulaReading& reading, const std::string& part) {
    return std::any_of(reading.lines.begin(), reading.lines.end(),
                       [&](const LineReading& line) { return line.written.find(part) != std::string::npos; });
}

TEST_CASE("a row whose food is not known is no heading of the columns below it") {
    for (const char* food : {"Zorbalian powder", "Walnut zorble", "Zorble flakes", "Zorble product", "Zorble and stems", "Soya item"})
        for (const char* between : {"   ", "\t", " | ", "; ", ", ", " . . . . ", " ..... "})
            for (const char* amount : {"40 g", "q.s.", "2 tbsp", "as needed", "1.5 oz"}) {
                std::string sheet = "Sausage\nPork mince" + std::string(between) + "1 kg\n" + food + between + amount + "\n";
                for (const char* row : {"Chard", "Leek", "Garlic"}) sheet += std::string(row) + between + "60 g\n";
                INFO(sheet);
                const auto reading = engine().read_closely(sheet, "f");
                REQUIRE(reading);
                CHECK(kept(*reading, food));
                CHECK_FALSE(reading->formula);
            }
}

TEST_CASE("a heading of columns is still one") {
    for (const char* head :
         {"Ingredient   Grams", "Ingredient   Amount", "Meat   10 kg", "Ingredients   10 kg batch", "Ingredient   10 kg"}) {
        INFO(head);
        const auto reading =
            engine().read_closely("Sausage\n" + std::string(head) + "\nPork mince   9000 g\nChard   600 g\nLeek   400 g", "f");
        REQUIRE(reading);
        REQUIRE(reading->formula);
        CHECK(reading->formula->lines.size() == 3);
    }
}

}  // namespace rows_kept_test
