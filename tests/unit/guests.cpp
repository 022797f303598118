// Who eats it: named anywhere in a formula, people whom germs harm more raise the core everywhere.
#include "knowledge/told/guests.hpp"

#include <algorithm>
#include <optional>

#include "knowledge/records/word_list.hpp"
#include "standin/engine.hpp"
#include "standin/narrate.hpp"
#include "support/catch.hpp"
#include "support/knowledge.hpp"

using namespace standin;

namespace guests_test {

const Engine& engine() {
    static const Result<Engine> engine = Engine::open({});
    return *engine;
}

std::string with(const std::string& lines) { return "Test\n1 kg pork shoulder\n200 g pork backfat\n18 g salt\n" + lines + "\n"; }

TEST_CASE("guests named in a note, a sentence, the method or a serving line raise the core on every page") {
    for (const std::string said : {"Note: my wife is pregnant.",
                                   "note: for the nursing home",
                                   "note: for the nursery-school open day",
                                   "Note: for Nan's birthday.",
                                   "Nota: para los abuelos.",
                                   "Hinweis: Oma wird 90.",
                                   "Remarque : pour les 90 ans de mamie.",
                                   "Note: made for my grandmother.",
                                   "Note: it is her 90th.",
                                   "For the antenatal class, 12 guests.",
                                   "My wife is pregnant.",
                                   "Hinweis: meine Frau ist schwanger.",
                                   "Nota: mia moglie è incinta.",
                                   "Remarque : ma femme est enceinte.",
                                   "Nota: para mi hermana embarazada.",
                                   "Serve: to the children at six.",
                                   "Method: mix and stuff. Serve to my grandchildren.",
                                   "# for the care home",
                                   "For the lunch at the nursing home.",
                                   "Note: he is on chemotherapy and eats with us."}) {
        INFO(said);
        const auto formula = engine().read_formula(with(said), "f");
        REQUIRE(formula.has_value());
        const auto p = engine().predict(*formula).value();
        CHECK(p.core.core_c == 73.9);
        CHECK(engine().sheet(*formula, {}).value().core_c == 73.9);
        const auto has = [&](const std::string& id) {
            return std::any_of(p.cautions.begin(), p.cautions.end(), [&](const CautionText& c) { return c.id == id; });
        };
        CHECK(has("note-promise"));
        CHECK_FALSE(has("title-promise"));
        const auto told = in_full(p.read_as);
        CHECK(std::any_of(told.begin(), told.end(),
                          [](const std::string& text) { return text.find("said of who eats it") != std::string::npos; }));
        const auto again = engine().read_formula(engine().formula_text(*formula), "f");
        if (again) CHECK(engine().predict(*again).value().core.core_c == 73.9);
    }
}

TEST_CASE("what only sounds so raises nothing") {
    for (const std::string said :
         {"Note: not for children.", "Note: baby spinach would do as well.", "Note: from the market behind the school.",
          "Note: my grandmother's recipe.", "Note: like grandma made them.", "Note: for grandma's recipe.",
          "Note: the 90th batch this year.", "Note: any kind of pepper does.", "Note: good old school cooking."}) {
        INFO(said);
        const auto formula = engine().read_formula(with(said), "f");
        REQUIRE(formula.has_value());
        CHECK(engine().predict(*formula).value().core.core_c == 71.1);
    }
}

TEST_CASE("a title names the old by their years or as kin, and the small by their feast") {
    const auto core = [](const std::string& title) {
        const auto formula = engine().read_formula(title + "\n1 kg pork shoulder\n18 g salt\n", "f");
        REQUIRE(formula.has_value());
        return engine().predict(*formula).value().core.core_c;
    };
    for (const std::string title :
         {"Green links for Great-Aunt Odile's ninetieth", "Grandad's 90th", "Nan and Gramps", "Longaniza para los abuelos",
          "Kindergarten fair links", "Salsiccia per la nonna", "Oma und Opa", "Links for Granny"}) {
        INFO(title);
        CHECK(core(title) == 73.9);
    }
    for (const std::string title :
         {"Salsiccia della nonna", "80th Street bangers", "School fair links", "Grandma's green links", "90th batch"}) {
        INFO(title);
        CHECK(core(title) == 71.1);
    }
}

TEST_CASE("what guests leave out is asked") {
    CHECK_FALSE(engine().read_formula(with("No walnuts for the children."), "f").has_value());
    CHECK_FALSE(engine().read_formula(with("baby spinach"), "f").has_value());
}

TEST_CASE("liver is rich in vitamin A of whatever animal, and carries hepatitis E of pigs alone") {
    for (const std::string liver : {"beef liver", "lamb liver", "veal liver", "chicken liver", "duck liver", "pork liver"}) {
        INFO(liver);
        const auto p = engine().predict(engine().read_formula(with("300 g " + liver), "f").value()).value();
        const auto says = [&](const std::string& part) {
            return std::any_of(p.cautions.begin(), p.cautions.end(),
                               [&](const CautionText& c) { return c.text.find(part) != std::string::npos; });
        };
        CHECK(says("vitamin A"));
        CHECK(says("hepatitis E") == (liver == "pork liver"));
    }
}

std::string told_of_guests(const std::string& text) {
    const auto formula = engine().read_formula(text, "f");
    if (!formula) FAIL(formula.error().message);
    std::string all;
    for (const auto& c : engine().predict(*formula).value().cautions)
        if (c.id == "title-promise" || c.id == "note-promise") all += c.text + "\n";
    return all;
}

TEST_CASE("whole nuts are held against the small, spirits and wine against the pregnant and the small") {
    for (const std::string nuts : {"100 g Haselnüsse, ganz", "100 g whole hazelnuts", "100 g hazelnuts, whole"}) {
        INFO(nuts);
        const auto told = told_of_guests(with(nuts + "\nGäste: Baby 8 Monate, Oma 84"));
        CHECK(told.find("hazelnut (\"") != std::string::npos);
        CHECK(told.find("baby") != std::string::npos);
        const auto formula = engine().read_formula(with(nuts), "f").value();
        const auto again = engine().formula_text(formula);
        CHECK((again.find("whole") != std::string::npos || again.find("ganz") != std::string::npos));
    }
    CHECK(told_of_guests(with("100 g hazelnuts, chopped\nNote: for my toddler.")).find("hazelnut (") == std::string::npos);
    CHECK(told_of_guests("For my pregnant wife\n1 kg pork shoulder\n18 g salt\n80 ml brandy\n").find("brandy") != std::string::npos);
    CHECK(told_of_guests(with("80 ml white wine\nNote: my wife is pregnant.")).find("white wine") != std::string::npos);
    CHECK(told_of_guests(with("80 ml white wine\nNote: for the pensioners.")).find("white wine") == std::string::npos);
}

TEST_CASE("those who eat it are told of what is in the batch, and of nothing else") {
    const auto told = told_of_guests(with("Note: for my toddler."));
    CHECK(told.find("let nothing be pink") != std::string::npos);
    CHECK(told.find("oney") == std::string::npos);
    CHECK(told.find("alt is to be little") != std::string::npos);
    CHECK(told_of_guests(with("40 g honey\nNote: for my toddler.")).find("oney is not for infants") != std::string::npos);
    CHECK(told_of_guests(with("60 g walnuts\nNote: for my toddler.")).find("choke") != std::string::npos);
}

TEST_CASE("every word of those who eat it is tried") {
    for (const auto& [list, word] : knowledge().records().lexicon.listed) {
        INFO(spelling(list) << ": " << word);
        if (list == WordList::for_guests) CHECK(guests_in(word + " the school", knowledge()) == "school");
        if (list == WordList::place_of_guests) CHECK(guests_in("Meat from the market behind the " + word, knowledge()).empty());
    }
}

namespace {

const CautionText* warning(const std::string& said, const std::string& rules, const std::string& part) {
    static std::optional<Prediction> p;
    Setting setting;
    if (!rules.empty()) setting.rules = rules;
    p = engine().predict(engine().read_formula(with(said), "f").value(), setting).value();
    for (const auto& one : p->cautions)
        if (one.text.find(part) != std::string::npos) return &one;
    return nullptr;
}

}  // namespace

TEST_CASE("a core that a note says and that is too little is a caution, in every tongue and either scale") {
    for (const std::string said :
         {"note: take off at 58 °C in the middle", "note: cuire à 58 °C à cœur", "Hinweis: Kerntemperatur 60 Grad reicht",
          "nota: cuocere a 60 gradi al cuore", "note: core 58", "note: 63 C is enough in the middle", "note: sous vide 54 C 90 min",
          "note: Kern 62 °C", "note: température à cœur 60", "nota: jugosa, 58 grados por dentro", "note: pull at 140 F",
          "note: internal temperature 145 F then rest", "note: the middle may be 62", "note: kerntemperatuur 60 graden is genoeg",
          "note: innertemperatur 60 grader räcker"}) {
        INFO(said);
        CHECK(warning(said, "", "the middle never reaches the core temperature"));
    }
    for (const std::string said : {"note: core 72 C", "note: cooked to 160 F inside", "note: température à cœur 72",
                                   "note: the fat melts at 40 C", "note: soffriggere la cipolla a 60 gradi"}) {
        INFO(said);
        CHECK_FALSE(warning(said, "", "the middle never reaches the core temperature"));
    }
}

TEST_CASE("of two heats in one sentence each is taken for what its clause says") {
    for (const std::string said :
         {"note: cook to 55 C, keep warm at 45 C for 4 hours for the buffet", "note: cook to 55 C, keep warm for the buffet",
          "Hinweis: auf 55 °C garen, bei 45 °C warmhalten", "note: cuire à 55 °C, garder au chaud à 45 °C"}) {
        INFO(said);
        CHECK(warning(said, "", "the middle never reaches the core temperature"));
    }
    CHECK_FALSE(warning("note: cook to 72 C, keep warm at 65 C", "", "hot food held"));
    CHECK(warning("Grill to 71 C and keep warm in the oven for four hours.", "", "hot food held"));  // the 71 is of the cooking
}

TEST_CASE("what a title says of those who eat it and what the batch breaks of it are two cautions") {
    const auto p =
        engine().predict(engine().read_formula("Liver for toddlers\n1000 g pork shoulder\n20 g salt\n400 g pork liver\n", "f").value());
    REQUIRE(p);
    std::vector<const CautionText*> said;
    for (const auto& one : p->cautions)
        if (one.id == "title-promise") said.push_back(&one);
    REQUIRE(said.size() == 2);
    CHECK_FALSE(is_same(*said[0], *said[1]));
}

TEST_CASE("how hot hot food is held goes by the rules that are chosen") {
    const std::string said = "note: keep warm at 58 C for 3 hours";
    CHECK(warning(said, "", "less than 63 C"));
    CHECK(warning(said, "uk", "less than 63 C"));
    CHECK(warning(said, "codex", "less than 60 C"));
    CHECK_FALSE(warning(said, "us", "hot food held"));
    CHECK(warning("note: keep warm at 50 C", "us", "less than 57.2 C (135 F)"));
    CHECK(warning("note: keep warm at 60 C", "uk", "less than 63 C"));
    CHECK_FALSE(warning("note: keep warm at 60 C", "codex", "hot food held"));
}

}  // namespace guests_test
