// How long a text says that links keep is judged by whether they are raw, cooked or frozen, and is no rest of the mass.
#include "formula/line/kept_days.hpp"

#include "formula/reading.hpp"
#include "support/catch.hpp"
#include "support/knowledge.hpp"

using namespace standin;

namespace kept_days_test {

Formula with_method(const std::string& method) {
    const auto read = read_formula("Test\n1 kg pork shoulder\n18 g salt\nmethod\n" + method + "\n", "f", knowledge());
    REQUIRE(read.has_value());
    return *read;
}

bool tells_of_keeping(const std::string& method) {
    const auto formula = with_method(method);
    return std::any_of(formula.read_as.begin(), formula.read_as.end(),
                       [](const Reason& told) { return told.note.find("1 to 2 days") != std::string::npos; });
}

TEST_CASE("raw links kept for longer than two days are told of, in any words") {
    for (const std::string method :
         {"Stuff, then keep 5 days in the fridge until you fry them.",
          "The sausage is good for five days in the refrigerator before you cook it.", "Raw they keep 3 days.", "Use within 6 days.",
          "Fry a test piece and taste. Keep the links 4 days in the fridge.", "Im Kühlschrank halten sie sich fünf Tage.",
          "Elles se conservent 4 jours au frigo.", "Se conservan cinco días en la nevera.", "Si conservano 5 giorni in frigo.",
          "Cooked they keep 6 days in the fridge.", "Keeps 2 days, or 5 days well wrapped, in the fridge."}) {
        INFO(method);
        CHECK(tells_of_keeping(method));
        CHECK_FALSE(with_method(method).process.rest_h.has_value());
    }
}

TEST_CASE("as long as it may be kept nothing is said") {
    for (const std::string method :
         {"Fry the links, let cool, then keep 3 days in the fridge.", "Fry the links and let them cool. They keep 3 days in the fridge.",
          "Once cooked, they keep for 3 days in the refrigerator.", "Cooked links keep 3-4 days in the fridge.",
          "Keeps 2 days raw in the fridge, 2 months frozen.", "Gebraten halten sie sich 3 Tage im Kühlschrank.",
          "They will keep for two months in the freezer.", "The spice blend keeps 30 days.", "Raw they keep 2 days, cooked 4 days."}) {
        INFO(method);
        CHECK_FALSE(tells_of_keeping(method));
        CHECK_FALSE(with_method(method).process.rest_h.has_value());
    }
}

TEST_CASE("what is frozen thaws overnight, and that is no rest of the mass") {
    CHECK_FALSE(with_method("Freeze for up to 2 months. Thaw overnight in the fridge.").process.rest_h.has_value());
    CHECK(with_method("Rest overnight in the fridge.").process.rest_h.has_value());
    CHECK(with_method("Let it rest in the fridge for 2 days.").process.rest_h.value_or(0) == 48);
}

}  // namespace kept_days_test
