// The engine calls foods as the maker does; what is safe stays that of the record.
#include <algorithm>

#include "standin/engine.hpp"
#include "support/catch.hpp"

using namespace standin;

namespace own_words_test {

const Engine& general() {
    static const auto engine = Engine::open({});
    return *engine;
}

Formula read(const Engine& engine, const std::string& text) {
    auto formula = engine.read_formula(text, "f");
    REQUIRE(formula);
    return *formula;
}

TEST_CASE("a food is called as the maker's line calls it, in every part of an answer") {
    const std::string text = "Test\n1 kg pork shoulder\n80 g spring onion, chopped\n100 ml madeira\n18 g salt\n";
    const auto plain = read(general(), text);
    REQUIRE(general().name_of(plain.lines[1].ingredient) != "spring onion");
    const Engine own =
        general().speaking_as({{plain.lines[1].ingredient, "80 g spring onion, chopped"}, {plain.lines[2].ingredient, "100 ml Madeira"}});
    CHECK(own.name_of(plain.lines[1].ingredient) == "spring onion");
    const auto answer = own.predict(read(own, text));
    REQUIRE(answer);
    CHECK(answer->lines[1].name == "spring onion");
    CHECK(answer->label.find("spring onion") != std::string::npos);
    CHECK(answer->lines[1].ingredient == plain.lines[1].ingredient);
    const auto before = general().predict(plain);
    CHECK(before->properties[Property::ph].mid == answer->properties[Property::ph].mid);
    CHECK(before->allergens.size() == answer->allergens.size());
    CHECK(before->cautions.size() == answer->cautions.size());
}

TEST_CASE("the name of the record stays where the maker writes it, or no name of it at all") {
    const auto plain = read(general(), "Test\n1 kg pork shoulder\n2 bunches flat-leaf parsley\n18 g salt\n");
    const auto& id = plain.lines[1].ingredient;
    const std::string name = general().name_of(id);
    CHECK(general().speaking_as({{id, "2 bunches flat-leaf " + name}}).name_of(id) == name);
    CHECK(general().speaking_as({{id, "2 bunches of the green one"}}).name_of(id) == name);
}

TEST_CASE("with a kitchen laid over, its general figures speak alike") {
    const auto kitchen = general().read_kitchen("pork shoulder: 25 % fat\n", "kitchen.txt");
    REQUIRE(kitchen);
    const auto laid = general().with_kitchen(*kitchen);
    REQUIRE(laid);
    const auto plain = read(*laid, "Test\n1 kg pork shoulder\n80 g spring onion\n18 g salt\n");
    const Engine own = laid->speaking_as({{plain.lines[1].ingredient, "spring onion"}});
    const auto answer = own.predict(plain);
    REQUIRE(answer);
    CHECK(answer->lines[1].name == "spring onion");
    CHECK(answer->properties[Property::fat_pct].mid == laid->predict(plain)->properties[Property::fat_pct].mid);
    for (const auto& caution : answer->cautions)
        for (const auto& food : caution.reason.foods) CHECK(food != general().name_of(plain.lines[1].ingredient));
}

}  // namespace own_words_test
