// Who must go without a food, told in a note, a line or the title: never read as what is in it, told on every page, kept from coming in.
#include <algorithm>

#include "knowledge/told/must_go_without.hpp"
#include "standin/engine.hpp"
#include "standin/narrate.hpp"
#include "support/catch.hpp"
#include "support/knowledge.hpp"

using namespace standin;

namespace going_without_test {

const Engine& engine() {
    static const Result<Engine> engine = Engine::open({});
    return *engine;
}

std::string with(const std::string& title, const std::string& lines) {
    return title + "\n2000 g pork shoulder\n400 g pork backfat\n40 g salt\n5 g black pepper\n" + lines + "\ncook: pan\n";
}

Formula read(const std::string& text) {
    auto formula = engine().read_formula(text, "f");
    if (!formula) FAIL(text << formula.error().message);
    return std::move(*formula);
}

const CautionText* caution(const Prediction& p, const std::string& id) {
    const auto found = std::find_if(p.cautions.begin(), p.cautions.end(), [&](const CautionText& c) { return c.id == id; });
    return found == p.cautions.end() ? nullptr : &*found;
}

bool tells_of_allergen(const Prediction& p, const std::string& allergen) {
    return std::any_of(p.allergens.begin(), p.allergens.end(), [&](const AllergenText& a) { return a.allergen == allergen; });
}

struct Told {
    std::string words, food, allergen;  // a food that breaks them, and an allergen that it alone brings
};

const std::vector<Told>& wordings() {
    static const std::vector<Told> all{{"note: My son is allergic to sesame.", "sesame seed", "sesame"},
                                       {"Gäste: eine mit Nussallergie", "hazelnut", "hazelnut"},
                                       {"note: Un invité est allergique aux crustacés.", "shrimp paste", "crustacean"},
                                       {"note: One guest is coeliac.", "soy sauce", "wheat"},
                                       {"guests: one with a sesame allergy", "sesame seed", "sesame"},
                                       {"Gäste: eine mit Sesamallergie", "tahini", "sesame"},
                                       {"note: must be free of sesame", "sesame seed", "sesame"},
                                       {"serves 12, sesame-free", "sesame seed", "sesame"},
                                       {"note: Mon fils est allergique au sésame", "sesame seed", "sesame"},
                                       {"nota: mi hijo es alérgico al sésamo", "sesame seed", "sesame"},
                                       {"For Tom, who is allergic to sesame", "sesame seed", "sesame"},
                                       {"note: Oma verträgt keine Milch.", "milk powder", "milk"},
                                       {"note: no nuts for Ben", "walnut", "walnut"},
                                       {"note: My wife is coeliac and cannot have milk.", "milk powder", "milk"},
                                       {"note: Anaphylaxis in the family: peanuts.", "peanut", "peanut"},
                                       {"My sister can't eat mustard.", "mustard seed", "mustard"},
                                       {"note: Papa darf keine Nüsse essen.", "walnut", "walnut"},
                                       {"note: Lisa verträgt Milch nicht.", "milk powder", "milk"},
                                       {"note: Jonas hat eine Erdnussallergie.", "peanut", "peanut"},
                                       {"note: Meine Schwiegermutter hat Zöliakie.", "rusk", "wheat"},
                                       {"note: laktoseintolerant ist der Onkel", "milk powder", "milk"},
                                       {"note: eine Selleriallergie, also Sellerie-Allergie, am Tisch", "celery seed", "celery"},
                                       {"note: Camille ne supporte pas le lait.", "milk powder", "milk"},
                                       {"note: Paul ne mange pas de noix.", "walnut", "walnut"},
                                       {"note: sans noix pour Élodie", "walnut", "walnut"},
                                       {"note: intolérance au gluten pour une invitée", "rusk", "wheat"},
                                       {"note: una invitada es celíaca", "rusk", "wheat"},
                                       {"note: Ana no puede comer huevo.", "egg", "egg"},
                                       {"note: alergia a los frutos secos", "walnut", "walnut"},
                                       {"note: mia figlia è allergica alle noci", "walnut", "walnut"},
                                       {"note: Marco non tollera il latte.", "milk powder", "milk"},
                                       {"note: allergia alle arachidi in famiglia", "peanut", "peanut"},
                                       {"note: o meu filho é alérgico a amendoim", "peanut", "peanut"},
                                       {"note: a Joana não pode comer ovos", "egg", "egg"},
                                       {"note: Sanne is allergisch voor pinda's", "peanut", "peanut"},
                                       {"note: een gast met notenallergie", "walnut", "walnut"},
                                       {"note: córka ma alergię na orzechy", "walnut", "walnut"},
                                       {"note: Kasia jest uczulona na sezam", "sesame seed", "sesame"},
                                       {"note: en gäst är allergisk mot sesam", "sesame seed", "sesame"},
                                       {"note: two guests are lactose intolerant", "milk powder", "milk"},
                                       {"note: nut-allergic nephew at the table", "walnut", "walnut"},
                                       {"note: careful, Jim reacts badly to mustard", "mustard seed", "mustard"},
                                       {"note: Aunt May avoids soy.", "soy sauce", "soy"},
                                       {"# my son is allergic to sesame", "sesame seed", "sesame"},
                                       {"note: severe shellfish allergy (cousin Lee)", "shrimp paste", "crustacean"},
                                       {"note: für Zöliakiekranke", "rusk", "wheat"},
                                       {"note: für Lena ohne Nüsse", "walnut", "walnut"},
                                       {"note: pas de noix pour Hugo", "walnut", "walnut"},
                                       {"note: une personne cœliaque", "rusk", "wheat"},
                                       {"note: no sesame please", "sesame seed", "sesame"},
                                       {"note: must not contain sesame", "sesame seed", "sesame"},
                                       {"note: sesame would put my son in hospital", "sesame seed", "sesame"},
                                       {"note: sans gluten pour ma femme", "rusk", "wheat"},
                                       {"note: barn med nötallergi", "walnut", "walnut"},
                                       {"note: the neighbours' boy doesn't tolerate egg", "egg", "egg"}};
    return all;
}

TEST_CASE("what a guest must go without is told with the maker's words, and is never an ingredient nor what may be in it") {
    for (const auto& told : wordings()) {
        INFO(told.words);
        const Formula formula = read(with("Park links", told.words));
        CHECK(formula.lines.size() == 4);
        CHECK(formula.declared.empty());
        const auto p = engine().predict(formula).value();
        CHECK_FALSE(tells_of_allergen(p, told.allergen));
        const auto* kept = caution(p, "guest-without");
        REQUIRE(kept);
        CHECK(told.words.find(kept->reason.role) != std::string::npos);
        CHECK(kept->text.find(kept->reason.role) != std::string::npos);
        CHECK_FALSE(caution(p, "guest-clash"));
        const auto again = engine().read_formula(engine().formula_text(formula), "f");
        REQUIRE(again);
        CHECK(caution(engine().predict(*again).value(), "guest-without"));
    }
}

TEST_CASE("a line that holds it, or may, is a clash that comes first") {
    for (const auto& told : wordings()) {
        INFO(told.words);
        const Formula formula = read(with("Park links", "60 g " + told.food + "\n" + told.words));
        const auto p = engine().predict(formula).value();
        const auto* clash = caution(p, "guest-clash");
        REQUIRE(clash);
        CHECK((&p.cautions.front() == clash || &p.cautions[1] == clash));
        CHECK(caution(engine().sheet(formula, {}).value().prediction, "guest-clash"));
    }
}

TEST_CASE("a title that names an allergy is held against the lines") {
    for (const std::string title : {"Allergic to sesame: Tom's links", "Würstchen für Allergiker (Sesam)", "Links for Tom (sesame allergy)",
                                    "Sésame interdit, Léa est allergique au sésame", "Sausages for our sesame-allergic boy"}) {
        INFO(title);
        const auto p = engine().predict(read(with(title, "60 g sesame seed"))).value();
        CHECK((caution(p, "guest-clash") || caution(p, "title-promise")));
    }
}

TEST_CASE("no stand-in brings in what a guest must go without") {
    const auto have = engine().read_inventory("sesame seeds 200 g\nsunflower seeds 200 g\nno walnuts\n", "have");
    REQUIRE(have);
    for (const std::string told : {"note: My son is allergic to sesame.", "Gäste: eine mit Sesamallergie", "serves 12, sesame-free"}) {
        INFO(told);
        AdaptRequest request;
        request.have = *have;
        const auto answer = engine().adapt(read(with("Park links", "60 g walnuts\n" + told)), request);
        REQUIRE(answer);
        REQUIRE_FALSE(answer->variants.empty());
        for (const auto& variant : answer->variants) {
            for (const auto& line : variant.formula.lines) CHECK(line.ingredient != "sesame-seed");
            CHECK(caution(variant.prediction, "guest-without"));
        }
        REQUIRE_FALSE(answer->excluded.empty());
        CHECK(answer->excluded.front().note.find("no stand-in brings in") != std::string::npos);
    }
    AdaptRequest request;
    request.have = *have;
    const auto answer = engine().adapt(read(with("Links for Tom (sesame allergy)", "60 g walnuts")), request).value();
    for (const auto& variant : answer.variants)
        for (const auto& line : variant.formula.lines) CHECK(line.ingredient != "sesame-seed");
}

TEST_CASE("what speaks of nobody at the table, or of a packet, is no guest") {
    for (const std::string said : {"note: nobody is allergic to nuts", "note: keine Nussallergie am Tisch",
                                   "note: if you are allergic to nuts, ask", "note: Allergy advice: contains milk",
                                   "note: not suitable for those with a nut allergy", "note: not for anyone with a nut allergy",
                                   "note: no walnuts in the shop", "note: keep free of dust", "note: personne n'est allergique aux noix"}) {
        INFO(said);
        CHECK_FALSE(must_go_without(said, knowledge()).said);
    }
    CHECK(tells_of_allergen(engine().predict(read(with("Test", "note: Allergy advice: may contain milk"))).value(), "milk"));
    CHECK(tells_of_allergen(engine().predict(read(with("Test", "note: not suitable for nut allergy sufferers"))).value(), "tree-nut"));
    // What a packet holds is in it, whoever must go without it.
    const auto both = engine().predict(read(with("Test", "note: the crumb contains sesame, and Tom is allergic to sesame"))).value();
    CHECK(tells_of_allergen(both, "sesame"));
    CHECK(caution(both, "guest-clash"));
}

TEST_CASE("what is named and not known is told all the same") {
    CHECK(caution(engine().predict(read(with("Test", "note: Ben is allergic to latex fumes"))).value(), "guest-unknown"));
}

TEST_CASE("another food of the same sentence is none of what they go without") {
    const auto said = must_go_without("My son is allergic to sesame, so I use walnuts", knowledge());
    CHECK(said.foods == std::vector<std::string>{"sesame"});
}

struct Kept {
    std::string title, lines, have, food;  // what the list offers, and must not come in
};

TEST_CASE("no stand-in brings in what those who eat it are advised to leave, or what a halal or kosher title takes in") {
    const std::vector<Kept> all{
        {"Park links", "20 g sugar\nnote: the baby (8 months) eats with us", "honey 300 g\nno sugar", "honey"},
        {"Park links", "40 g lemon juice\nnote: for the kindergarten children", "white wine 1 l\nno lemon juice", "white-wine"},
        {"Park links", "400 g pork heart\nnote: my sister is pregnant", "pork liver 1 kg\nno pork heart", "pork-liver"},
        {"Park links", "400 g salmon\nHinweis: meine Schwester ist schwanger", "tuna 1 kg\nno salmon", "tuna"},
        {"Park links", "100 g cream\nnote: for my pregnant sister", "raw milk 500 g\nno cream", "whole-milk"},
        {"Halal link", "40 g lemon juice", "white wine 1 l\nno lemon juice", "white-wine"},
        {"Park links", "40 g lemon juice\nnote: for our Muslim guests", "white wine 1 l\nno lemon juice", "white-wine"},
        {"Kosher link", "100 g sunflower oil", "butter 500 g\nno sunflower oil", "butter"}};
    for (const auto& one : all) {
        INFO(one.title << ": " << one.lines);
        const auto have = engine().read_inventory(one.have, "have");
        REQUIRE(have);
        AdaptRequest request;
        request.have = *have;
        const auto answer = engine().adapt(read(with(one.title, one.lines)), request);
        REQUIRE(answer);
        for (const auto& variant : answer->variants)
            for (const auto& line : variant.formula.lines) CHECK(line.ingredient != one.food);
        REQUIRE_FALSE(answer->excluded.empty());
    }
}

TEST_CASE("an own idea of what a guest must not have is told first, and why") {
    AdaptRequest request;
    request.use = {{"honey", "sugar"}};
    const auto answer = engine().adapt(read(with("Park links", "20 g sugar\nnote: the baby eats with us")), request).value();
    CHECK(answer.variants.empty());
    REQUIRE_FALSE(answer.excluded.empty());
    CHECK(answer.excluded.front().note.find("honey") != std::string::npos);
    request.use = {{"bitter almonds", "sugar"}};
    const auto poison = engine().adapt(read(with("Park links", "20 g sugar")), request);
    REQUIRE_FALSE(poison);
    CHECK(poison.error().message.find("cyanide") != std::string::npos);
}

TEST_CASE("raw milk is called raw wherever its name stands") {
    const auto have = engine().read_inventory("raw milk 500 g\nno cream\n", "have");
    AdaptRequest request;
    request.have = *have;
    request.use = {{"whole milk", "cream"}};
    const auto answer = engine().adapt(read(with("Park links", "100 g cream")), request).value();
    REQUIRE_FALSE(answer.variants.empty());
    bool seen = false;
    for (const auto& line : answer.variants.front().prediction.lines)
        if (line.ingredient == "whole-milk") seen = line.name == "raw whole milk";
    CHECK(seen);
}

TEST_CASE("an allergy named after a diet is heard, and what the diet asks for is told once") {
    const auto p = engine().predict(read("Anna keeps kosher and is allergic to mustard\n2 kg beef chuck\n34 g salt\n")).value();
    const CautionText* without = caution(p, "guest-without");
    REQUIRE(without);
    CHECK(without->text.find("mustard") != std::string::npos);
    CHECK(std::count_if(p.cautions.begin(), p.cautions.end(),
                        [](const CautionText& one) { return one.text.find("slaughtered") != std::string::npos; }) == 1);
}

TEST_CASE("guests who eat halal or kosher are heard in a note") {
    for (const std::string said : {"note: for our Muslim guests", "Hinweis: unsere muslimischen Gäste", "note: pour nos invités musulmans",
                                   "note: Karim eats halal", "note: halal please", "note: my aunt keeps kosher"}) {
        INFO(said);
        CHECK(caution(engine().predict(read(with("Test", said))).value(), "guest-clash"));
    }
    for (const std::string said :
         {"note: recipe of my Muslim neighbour", "note: kosher salt for us is coarse", "note: from the halal butcher"}) {
        INFO(said);
        CHECK_FALSE(must_go_without(said, knowledge()).said);
    }
    const auto kosher = engine().predict(read("Kosher beef\n2 kg beef chuck\n40 g salt\n60 g butter\n")).value();
    const CautionText* told = caution(kosher, "title-promise");
    REQUIRE(told);
    CHECK(told->text.find("butter (milk beside meat)") != std::string::npos);
}

}  // namespace going_without_test
