// Guests told by their age or by an illness: the small, the old and the ill are minded, things of such an age are not.
#include "standin/engine.hpp"
#include "support/catch.hpp"

using namespace standin;

namespace guests_by_age_test {

const Engine& engine() {
    static const Result<Engine> engine = Engine::open({});
    return *engine;
}

double core_for(const std::string& note) {
    const auto formula = engine().read_formula("Test\n1 kg pork shoulder\n200 g pork backfat\n18 g salt\nnote: " + note + "\n", "f");
    REQUIRE(formula.has_value());
    return engine().predict(*formula).value().core.core_c;
}

double core_of_title(const std::string& title) {
    const auto formula = engine().read_formula(title + "\n1 kg pork shoulder\n200 g pork backfat\n18 g salt\n", "f");
    REQUIRE(formula.has_value());
    return engine().predict(*formula).value().core.core_c;
}

TEST_CASE("an age of somebody who eats it raises the core, in digits and in words, in every tongue") {
    for (const std::string said : {"for the twins, aged two",
                                   "my nan is 88 and will eat with us",
                                   "for my 3 year old and her friends",
                                   "for my two-year-old",
                                   "Grandad is ninety",
                                   "my father is eighty-eight",
                                   "our 18 month old loves these",
                                   "for my 90-year-old aunt",
                                   "Lena is 3 years old",
                                   "ages 2 to 4",
                                   "for my son, 3",
                                   "Nan comes for Sunday lunch",
                                   "unser Kleiner ist 14 Monate alt",
                                   "meine Tochter ist drei Jahre alt",
                                   "für unsere Zweijährige",
                                   "für meinen 3-jährigen Sohn",
                                   "mein Vater ist achtundachtzig",
                                   "Oma isst mit",
                                   "pour mon fils de 3 ans",
                                   "maman a quatre-vingt-dix ans",
                                   "mi hijo tiene 3 años",
                                   "mi padre tiene 80 años",
                                   "mio figlio ha 3 anni",
                                   "mia zia ha novantadue anni",
                                   "meu filho tem 3 anos",
                                   "mijn zoon is drie jaar",
                                   "mój syn ma 3 lata",
                                   "dla trzylatka",
                                   "till min 3-åring"}) {
        INFO(said);
        CHECK(core_for(said) == 73.9);
    }
}

TEST_CASE("the age beside a name raises the core, in a bracket or behind a comma, in notes and in titles") {
    for (const std::string said :
         {"Grandad (84) and Mia (14 months) eat with us", "Grandad and Mia (14 months) eat with us",
          "Grandad, 84, and Mia, 14 months, eat with us", "Links for Ida, aged 3", "For Ida, aged three", "Ida, 2 years old",
          "Für Ida (2 Jahre)", "Pour Ida, 2 ans", "Papi, 84 ans", "Links for guests aged 2, 34 and 86",
          "Links for guests aged 30, 34 and 86", "Ida (2) and Uwe (88)", "Per Ida, 11 mesi", "Para Lucía, 4 años", "Dla Zosi (3 lata)",
          "Till Elsa, 3 år", "For Ida (3) and Tom (40)"}) {
        INFO(said);
        CHECK(core_for(said) == 73.9);
        CHECK(core_of_title(said) == 73.9);
    }
}

TEST_CASE("a number beside a name that is no such age, and the age or number of a thing, raise nothing") {
    for (const std::string said :
         {"For Tom (40)", "Ida (35), Uwe (40) and Tom (50) eat with us", "Sausage for 12 guests, table 3", "Sausage for 65 guests, table 7",
          "Links for room 70", "Supper for Mary and Tom, page 84", "Comté (24 mois)", "Parmesan (24 months)", "Batch (3)", "For Easter (2)",
          "Keeps in the Freezer (3 months)"}) {
        INFO(said);
        CHECK(core_for(said) == 71.1);
        CHECK(core_of_title(said) == 71.1);
    }
}

TEST_CASE("the pregnant, the small and grandparents are heard in Turkish, Russian and Czech, and not their recipes") {
    for (const std::string said :
         {"hamile kızım için", "Anneannem için köfte", "Bebek için, 9 aylık", "Для беременной жены", "Для дедушки", "Для детей",
          "Pro těhotnou ženu", "Pro babičku a dědečka", "Pro dítě", "For my wife, five months gone"}) {
        INFO(said);
        CHECK(core_for(said) == 73.9);
        CHECK(core_of_title(said) == 73.9);
    }
    for (const std::string said : {"бабушкин рецепт", "Babiččin recept"}) {
        INFO(said);
        CHECK(core_for(said) == 71.1);
    }
}

TEST_CASE("an illness that weakens raises the core") {
    for (const std::string said :
         {"she had a kidney transplant", "he is on dialysis", "my brother is HIV positive", "mum is diabetic", "sie hat Diabetes",
          "il est greffé du rein", "trasplantado de riñón", "jest po przeszczepie nerki", "hij heeft een donornier"}) {
        INFO(said);
        CHECK(core_for(said) == 73.9);
    }
}

TEST_CASE("the age of a thing, a number of guests or a while raises nothing") {
    for (const std::string said :
         {"for 12 people", "for 12 people, 2 each", "our 20 year tradition", "3 year old cheddar goes well with it",
          "goes with aged 12 months ham", "this recipe is 3 years old", "my son's smoker is 3 years old", "makes 24, at 88 g each",
          "my wife took 3", "we have made these for 5 years", "I learned it from my aunt in 3 days", "the ham is 2 years old",
          "un fromage de 3 ans", "jamón de 3 años", "he is 35 years old", "cheddar aged two ways", "transplant the basil in May",
          "not for 3 year olds"}) {
        INFO(said);
        CHECK(core_for(said) == 71.1);
    }
}

}  // namespace guests_by_age_test
