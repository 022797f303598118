// What the answer takes upon itself is told: what is there though the list has its kin, and a title whose food is gone. All invented.
#include "support/catch.hpp"
#include "support/scenario.hpp"

using namespace standin;
using namespace scenario;

namespace told_at_the_top_test {

const Presumption* told_of(const AdaptAnswer& answer, const std::string& food) {
    for (const auto& one : answer.presumed)
        if (one.ingredient == food) return &one;
    return nullptr;
}

TEST_CASE("told at the top: what perishes and is taken to be there is told with its kin on the list") {
    const auto answer = answer_to(
        "Fish and pork (invented)\n800 g pork shoulder\n200 g pork backfat\n300 g salmon fillet\n18 g salt\n2 g cumin\n10 g dill\n",
        "pork shoulder 2 kg\npork belly 500 g\ntrout 400 g\n");
    const Presumption *salmon = told_of(answer, "salmon"), *fat = told_of(answer, "pork-backfat"), *cumin = told_of(answer, "cumin");
    REQUIRE(salmon != nullptr);
    CHECK(salmon->reason.foods == std::vector<std::string>{"salmon", "trout"});
    CHECK(salmon->says.find("though trout is") != std::string::npos);
    REQUIRE(fat != nullptr);
    CHECK(fat->reason.foods.size() == 2);
    REQUIRE(cumin != nullptr);
    CHECK(cumin->reason.foods.size() == 1);
    CHECK(cumin->reason.role == "dry");
}

TEST_CASE("told at the top: a title whose food is gone is told once, whatever the food") {
    struct Case {
        const char *title, *line, *list, *word;
    };
    const std::vector<Case> cases{{"Salmon and dill sausage", "300 g salmon fillet", "trout 400 g\nno salmon\n", "salmon"},
                                  {"Spinach sausage", "100 g spinach", "chard 400 g\nno spinach\n", "spinach"},
                                  {"Pork with walnuts", "60 g walnuts", "hazelnuts 400 g\nno walnuts\n", "walnut"},
                                  {"Gruyere brats", "120 g gruyere", "cheddar 400 g\nno gruyere\n", "gruy"}};
    for (const auto& one : cases) {
        INFO(one.title);
        const auto v = first_for(std::string(one.title) + "\n1 kg pork shoulder\n" + one.line + "\n18 g salt\n10 g dill\n",
                                 std::string("pork shoulder 2 kg\ndill 20 g\n") + one.list);
        const auto told = std::count_if(v.prediction.cautions.begin(), v.prediction.cautions.end(), [&](const CautionText& caution) {
            return caution.reason.kind == ReasonKind::title_without_animal;
        });
        CHECK(told == 1);
        for (const auto& caution : v.prediction.cautions)
            if (caution.reason.kind == ReasonKind::title_without_animal) CHECK(caution.text.find(one.word) != std::string::npos);
    }
    const auto duck = first_for("Duck breast sausage\n1 kg duck breast\n18 g salt\n", "turkey thigh 2 kg\nno duck breast\n");
    const auto told = std::count_if(duck.prediction.cautions.begin(), duck.prediction.cautions.end(),
                                    [](const CautionText& caution) { return caution.reason.kind == ReasonKind::title_without_animal; });
    CHECK(told == 1);
}

}  // namespace told_at_the_top_test
