// What is said of a food beside its line is judged as on it: notes, tips, instructions, in the tongues of the lexicon.
#include <algorithm>

#include "formula/reading.hpp"
#include "standin/engine.hpp"
#include "standin/narrate.hpp"
#include "support/catch.hpp"
#include "support/knowledge.hpp"

using namespace standin;

namespace said_beside_test {

std::string text_of(const std::string& food, const std::string& said) {
    return "Green links\n2 kg pork shoulder\n500 g pork backfat\n42 g salt\n" + (food.empty() ? "" : food + "\n") + said + "\n";
}

bool refused(const std::string& food, const std::string& said) { return !read_formula(text_of(food, said), "", knowledge()); }

bool tells(const std::string& food, const std::string& said, const std::string& about) {
    const auto read = read_formula(text_of(food, said), "", knowledge());
    if (!read) return false;
    auto all = read->read_as;
    for (const auto& line : read->lines) all.insert(all.end(), line.notes.begin(), line.notes.end());
    const auto notes = in_full(all);
    return std::any_of(notes.begin(), notes.end(), [&](const auto& note) { return note.find(about) != std::string::npos; });
}

struct Said {
    std::string food, said, about{};
};

TEST_CASE("a danger of a food is refused wherever the formula tells of it") {
    for (const auto& [food, said, about] : std::vector<Said>{
             {"300 g zucchini", "note: this year the zucchini are bitter"},
             {"300 g zucchini", "method: grate the zucchini, a bit bitter, and squeeze"},
             {"300 g courgettes", "note: les courgettes sont un peu amères"},
             {"300 g Zucchini", "Hinweis: die Zucchini sind bitter"},
             {"300 g lupini beans", "note: beans straight from the sack, no soaking"},
             {"300 g lupini beans", "note: lupins not soaked"},
             {"300 g lupini beans", "tip: no time to soak the beans"},
             {"300 g boiled potatoes", "note: potatoes were sprouting and greenish under the skin"},
             {"300 g boiled potatoes", "note: some were green, I cut it off"},
             {"100 g oysters", "note: oysters open and not closing"},
             {"100 g mussels", "method: steam the mussels, the dead ones too"},
             {"200 g mushrooms", "note: the mushrooms are from the neighbour's basket, she knows them all"},
             {"200 g mushrooms", "note: mushrooms out of the pine wood"},
             {"200 g Champignons", "note: die Pilze hat Opa mitgebracht"},
             {"200 g mushrooms", "method: chop the mushrooms granddad picked"},
             {"", "note: the meat smells a bit off"},
             {"", "note: das Fleisch riecht etwas streng"},
             {"", "note: the pig died on Friday"},
             {"", "source: pork from the neighbour's pig that died on Friday"},
             {"", "note: mięso leżało w bagażniku całe popołudnie"},
             {"", "note: la viande est restée dans le coffre tout l'après-midi"},
             {"", "nota: la carne estuvo toda la tarde en el maletero"},
             {"", "note: la carne è rimasta nel bagagliaio tutto il pomeriggio"},
             {"", "Hinweis: das Fleisch lag den ganzen Nachmittag im Kofferraum"},
         }) {
        INFO(food << " / " << said);
        CHECK(refused(food, said));
    }
}

TEST_CASE("what a food beside its line needs care for is told") {
    for (const auto& [food, said, about] : std::vector<Said>{
             {"100 ml milk", "note: milk is raw, from the farm", "raw milk"},
             {"100 ml latte", "note: il latte viene crudo dal contadino", "raw milk"},
             {"100 ml milk, raw, from the farm", "", "raw milk"},
             {"100 ml milk, raw", "", "raw milk"},
             {"100 ml cream, raw, from the farm", "", "raw milk"},
             {"150 g watercress, from the brook in the sheep meadow", "", "liver fluke"},
             {"150 g wild watercress", "", "liver fluke"},
             {"150 g watercress", "note: watercress gathered wild", "liver fluke"},
             {"150 g parsley", "note: the greens are from the ditch beside the sheep field", "liver fluke"},
             {"", "serve: keep in a lukewarm pot at 45 C until the evening", "63 C"},
             {"", "serve: cold the next day, left on the sideboard overnight", "two hours"},
             {"", "serve: leave on the buffet for the afternoon", "two hours"},
             {"", "serve: reheat what is left for three days, gently to 50 C", "74 C"},
             {"", "servir: garder à 48 °C", "63 C"},
         }) {
        INFO(food << " / " << said);
        CHECK(tells(food, said, about));
    }
}

TEST_CASE("an innocent note stays innocent") {
    for (const auto& [food, said, about] : std::vector<Said>{
             {"", "note: kitchen radio on, dead tired, rotten weather"},
             {"300 g zucchini", "note: the radicchio beside it is bitter"},
             {"300 g zucchini", "method: blanch the bitter endive and add the zucchini"},
             {"300 g lupini beans in brine", "note: soak the dried chile"},
             {"300 g lupini beans", "method: fold the lupini beans into the raw meat"},
             {"300 g boiled potatoes", "method: mash the potatoes with the green chile"},
             {"100 g mussels", "method: discard mussels that do not close"},
             {"200 g mushrooms", "note: mushrooms from the shop"},
             {"", "note: mix the meat until sticky"},
             {"", "note: greenish is how it should look"},
             {"", "note: the sausage smells of garlic"},
             {"", "serve: keep at 65 C until the evening"},
             {"150 g watercress", "note: watercress from the garden centre"},
         }) {
        INFO(food << " / " << said);
        const auto read = read_formula(text_of(food, said), "", knowledge());
        INFO((read ? "" : read.error().message));
        CHECK(read);
        for (const std::string word : {"liver fluke", "two hours", "raw milk", "57 C"}) CHECK_FALSE(tells(food, said, word));
    }
}

TEST_CASE("a place, a shape or a colour brings no allergen") {
    static const auto engine = Engine::open({});
    for (const std::string line :
         {"150 g parsley, in the cheese drawer of the fridge", "150 g parsley, in the egg compartment of the fridge"}) {
        const auto read = engine->read_formula(text_of(line, ""), "f");
        INFO(line);
        CHECK((!read || read->lines.back().declared.empty()));
    }
    for (const std::string note :
         {"note: bowl is the blue one with the almond pattern", "equipment: the old green grinder, egg-shaped knob",
          "note: chop as fine as sesame", "note: the colour of mustard", "note: balls the size of a walnut"}) {
        const auto read = engine->read_formula(text_of("150 g parsley", note), "f");
        REQUIRE(read);
        INFO(note);
        CHECK(std::none_of(read->read_as.begin(), read->read_as.end(),
                           [](const Reason& told) { return told.kind == ReasonKind::allergen_beside; }));
        CHECK(read->declared.empty());
    }
}

TEST_CASE("butter beans are never butter") {
    for (const std::string line : {"200 g cooked butter beans", "200 g butter beans, tinned, drained"}) {
        const auto read = read_formula(text_of(line, ""), "", knowledge());
        INFO(line << (read ? "" : read.error().message));
        REQUIRE(read);
        CHECK(read->lines.back().ingredient == "butter-bean-cooked");
    }
    const auto read = read_formula(text_of("200 g butter beans", ""), "", knowledge());  // raw, dry or boiled
    REQUIRE_FALSE(read);
    CHECK(read.error().message.find("beside butter") == std::string::npos);
    CHECK(read.error().message.find("done to butter") == std::string::npos);
}

TEST_CASE("guests named on a line of the recipe count as those of the title do") {
    static const auto engine = Engine::open({});
    for (const std::string said :
         {"serves: 8 children from the kindergarten", "serves: a nursing home", "note: for my toddlers", "serve: to pregnant guests"}) {
        const auto p = engine->predict(engine->read_formula(text_of("150 g parsley", said), "f").value());
        REQUIRE(p);
        INFO(said);
        CHECK(std::any_of(p->cautions.begin(), p->cautions.end(),
                          [](const CautionText& caution) { return caution.text.find("let nothing be pink") != std::string::npos; }));
    }
}

}  // namespace said_beside_test
