// What ripens has an age that spoils nothing; what is fried on the stove has not stood warm there; what rests in sixty degrees is poached.
#include <algorithm>

#include "standin/engine.hpp"
#include "support/catch.hpp"

using namespace standin;

namespace ages_of_what_ripens_test {

const Engine& engine() {
    static const Result<Engine> engine = Engine::open({});
    return *engine;
}

Result<Formula> with_line(const std::string& line) {
    return engine().read_formula("Test\n1 kg pork shoulder\n200 g pork backfat\n18 g salt\n" + line + "\n", "f");
}

bool poaches_too_cool(const std::string& method) {
    const auto formula = with_line(method);
    REQUIRE(formula.has_value());
    return std::any_of(formula->read_as.begin(), formula->read_as.end(),
                       [](const Reason& told) { return told.kind == ReasonKind::cooked_too_cool; });
}

TEST_CASE("the age of a cheese, a wine or a vinegar is ordinary; that of meat and milk is asked for") {
    for (const std::string line : {"150 g Gouda, 18 months old", "150 g cheddar, two years old", "100 g Parmesan, 24 months",
                                   "30 ml balsamic vinegar, 12 years old", "100 ml red wine, 5 years old"}) {
        INFO(line);
        CHECK(with_line(line).has_value());
    }
    for (const std::string line : {"200 g minced pork, 2 months old", "100 g cooked ham, 2 months old", "100 g milk, two months old",
                                   "2 eggs, 3 months old", "150 g Gouda, 18 months old, smells off"}) {
        INFO(line);
        CHECK_FALSE(with_line(line).has_value());
    }
    const auto ripe = with_line("100 g Comté, 24 mois");
    REQUIRE(ripe.has_value());
    for (const auto& caution : engine().predict(*ripe).value().cautions) CHECK(caution.text.find("24 mois") == std::string::npos);
}

TEST_CASE("an age before the name, in brackets or in any tongue is told and stops nothing; a bare year is a wine's") {
    const auto is = [](const std::string& line, const std::string& id) {
        INFO(line);
        const auto read = with_line(line);
        if (!read) FAIL(read.error().message);
        CHECK(read->lines.back().ingredient == id);
    };
    is("120 g three-year-aged Gouda, coarsely grated", "gouda");
    is("60 g 30-month Parmigiano Reggiano", "parmesan");
    is("50 g Pecorino stagionato 12 mesi, grattugiato", "romano");
    is("80 g pecorino romano stagionato", "romano");
    is("2 tbsp 12-year-old balsamic vinegar", "balsamic-vinegar");
    is("200 g mature cheddar (18 mo)", "cheddar");
    is("40 g zweijähriger Gouda", "gouda");
    is("100 ml 2019 red wine", "red-wine");
    is("100 ml red wine, 2021 vintage", "red-wine");
    is("25 g three-year miso", "miso");
    for (const std::string line :
         {"100 g 2-month-old milk", "200 g pork liver, 3 days old", "100 g 2019 minced pork", "100 g 18-month ricotta"}) {
        INFO(line);
        CHECK_FALSE(with_line(line).has_value());
    }
    const auto weighed = with_line("2000 g red wine");
    REQUIRE(weighed.has_value());
    CHECK(weighed->lines.back().grams.mid == Approx(2000));
    const auto told = with_line("100 g Parmigiano, stagionato 36 mesi");
    REQUIRE(told.has_value());
    for (const auto& caution : engine().predict(*told).value().cautions) CHECK(caution.text.find("stagionato") == std::string::npos);
}

TEST_CASE("what is fried on the stove has not stood warm; what is left there has") {
    for (const std::string line :
         {"100 g onion, fried on the stove", "100 g onion, fried on the hob", "Method: Fry on the stove over middling heat to 74 C."}) {
        INFO(line);
        CHECK(with_line(line).has_value());
    }
    for (const std::string line : {"100 g onion, left on the stove", "1 kg chicken thigh, on the stove",
                                   "1 kg chicken thigh, on the stove overnight", "1 kg chicken thigh, stood on the stove"}) {
        INFO(line);
        CHECK_FALSE(with_line(line).has_value());
    }
}

TEST_CASE("links that rest or draw in too little heat are told of") {
    for (const std::string method : {"Method: 10 Minuten bei 60 °C ziehen lassen.", "Method: Würste bei 60 °C 10 Minuten ziehen lassen.",
                                     "Method: 20 Minuten bei 62 Grad gar ziehen lassen.",
                                     "Method: Simmer the links at 60 C for 10 minutes.", "Method: Die Würste bei 58 °C simmern."}) {
        INFO(method);
        CHECK(poaches_too_cool(method));
    }
    for (const std::string method : {"Method: Bei 4 °C über Nacht ziehen lassen.", "Method: Chill from 60 C to 5 C within two hours.",
                                     "Method: Bei 80 °C ziehen lassen."}) {
        INFO(method);
        CHECK_FALSE(poaches_too_cool(method));
    }
}

}  // namespace ages_of_what_ripens_test
