// Guests who must go without a food, or who are pregnant or small, in the cases and turns of many tongues; and names that only sound so.
#include <algorithm>

#include "standin/engine.hpp"
#include "support/catch.hpp"

using namespace standin;

namespace guests_in_cases_test {

const Engine& engine() {
    static const Result<Engine> engine = Engine::open({});
    return *engine;
}

Prediction of(const std::string& title, const std::string& line, const std::string& note) {
    const auto formula = engine().read_formula(
        title + "\n1 kg pork shoulder\n18 g salt\n" + line + "\n" + (note.empty() ? "" : "note: " + note + "\n"), "f");
    INFO(title << " / " << line << " / " << note);
    REQUIRE(formula.has_value());
    return engine().predict(*formula).value();
}

bool has(const Prediction& p, const std::string& id, const std::string& words = "") {
    return std::any_of(p.cautions.begin(), p.cautions.end(),
                       [&](const CautionText& c) { return c.id == id && c.text.find(words) != std::string::npos; });
}

struct Said {
    std::string words, line;
};

TEST_CASE("who is allergic is heard in every case of Polish, Russian, Czech and Turkish") {
    for (const auto& [words, line] : std::vector<Said>{{"dla gości uczulonych na orzechy", "30 g walnuts"},
                                                       {"dla córki uczulonej na orzechy", "30 g walnuts"},
                                                       {"syn jest uczulony na gorczycę", "30 g mustard"},
                                                       {"dla dziecka z alergią na orzechy", "30 g walnuts"},
                                                       {"dla alergika, bez mleka", "30 g milk powder"},
                                                       {"alergikom na sezam nie podawać", "20 g sesame seed"},
                                                       {"для сына с аллергией на орехи", "30 g walnuts"},
                                                       {"у жены аллергия на орехи", "30 g walnuts"},
                                                       {"ребёнок не переносит молоко", "30 g milk powder"},
                                                       {"у сына непереносимость молока", "30 g milk powder"},
                                                       {"для аллергика на яйца", "100 g egg"},
                                                       {"гость аллергик, горчицу нельзя", "30 g mustard"},
                                                       {"pro dceru alergickou na ořechy", "30 g walnuts"},
                                                       {"oğlum süte alerjik", "30 g milk powder"},
                                                       {"dla chorych na celiakię", "50 g wheat flour"},
                                                       {"для больных целиакией", "50 g wheat flour"}}) {
        CAPTURE(words);
        CHECK(has(of("Links", line, words), "guest-clash"));
    }
    CHECK(has(of("Kiełbaski dla córki uczulonej na orzechy", "30 g walnuts", ""), "guest-clash"));
    CHECK(has(of("Колбаски для дочери с аллергией на орехи", "30 g walnuts", ""), "guest-clash"));
    for (const std::string nobody : {"nikt nie jest uczulony na orzechy", "ни у кого нет аллергии на орехи"}) {
        CAPTURE(nobody);
        CHECK_FALSE(has(of("Links", "30 g walnuts", nobody), "guest-clash"));
    }
}

TEST_CASE("the pregnant and the small are heard however they are named") {
    for (const std::string said : {"for my wife, 8 months along",
                                   "for Anna, 34 weeks along",
                                   "my sister is expecting",
                                   "meine Frau ist im 8. Monat",
                                   "in der 30. SSW",
                                   "für die werdende Mama",
                                   "ma femme est au huitième mois",
                                   "mi mujer está de ocho meses",
                                   "mia moglie è all'ottavo mese",
                                   "mia moglie è in dolce attesa",
                                   "żona jest w ósmym miesiącu",
                                   "żona jest w ciąży",
                                   "жена на восьмом месяце",
                                   "жена беременна",
                                   "eşim hamile",
                                   "manželka je v osmém měsíci",
                                   "mijn vrouw is zwanger",
                                   "für das Schulfest der Grundschule",
                                   "per la scuola elementare",
                                   "dla szkoły podstawowej",
                                   "do mateřské školky",
                                   "anaokulu için",
                                   "voor de basisschool"}) {
        CAPTURE(said);
        CHECK(has(of("Links", "50 ml red wine", said), "note-promise", "red wine"));
    }
    for (const std::string title : {"Kindergarten-Würstchen", "Würstchen für die Grundschule", "Saucisses pour l'école maternelle"}) {
        CAPTURE(title);
        CHECK(has(of(title, "50 ml red wine", ""), "title-promise", "red wine"));
    }
}

TEST_CASE("raw milk and soft cheese with mould clash with a title for the pregnant") {
    for (const std::string line :
         {"100 g unpasteurised brie", "100 g camembert au lait cru", "100 g raw milk Camembert", "100 g gorgonzola"}) {
        CAPTURE(line);
        CHECK(has(of("Unbedenklich für Schwangere", line, ""), "title-promise", "the batch has"));
    }
}

TEST_CASE("a name, a nursery of plants and guests who are expected are nobody small") {
    for (const std::string title :
         {"Constable Child's sausage", "Mr Baby's links", "Bishop Child's Christmas links", "Constance Child's garlic sausage",
          "Links from the plant nursery", "Captain Senior's grill links", "Links for my wife's 40th birthday"}) {
        CAPTURE(title);
        CHECK_FALSE(has(of(title, "50 ml red wine", ""), "title-promise"));
    }
    for (const std::string note :
         {"we are expecting rain and 20 guests", "from Constable Child's notebook", "im 8. Monat ist das Basilikum am besten"}) {
        CAPTURE(note);
        CHECK_FALSE(has(of("Links", "50 ml red wine", note), "note-promise"));
    }
    for (const std::string title : {"My child's sausage", "Happy Child's Links", "Our Baby's first links"}) {
        CAPTURE(title);
        CHECK(has(of(title, "50 ml red wine", ""), "title-promise", "red wine"));
    }
}

TEST_CASE("what a line says is sold as gluten-free breaks no promise, and its packet is still to be read") {
    for (const std::string line : {"60 g certified gluten-free buckwheat flour", "60 g buckwheat flour (gluten-free)"}) {
        CAPTURE(line);
        const auto p = of("Gluten-free links", line, "");
        CHECK_FALSE(has(p, "title-promise", "the batch has"));
        CHECK(has(p, "check-label"));
        CHECK(std::any_of(p.allergens.begin(), p.allergens.end(), [](const AllergenText& a) { return a.allergen == "wheat"; }));
        CHECK_FALSE(has(of("Links", line, "my son is coeliac"), "guest-clash"));
    }
    for (const std::string line : {"60 g buckwheat flour", "60 g buckwheat flour, may contain wheat", "60 g wheat flour"}) {
        CAPTURE(line);
        CHECK(has(of("Gluten-free links", line, ""), "title-promise", "the batch has"));
    }
}

}  // namespace guests_in_cases_test
