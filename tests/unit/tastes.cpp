// Words said of a test patty: what they are read as, and that nothing is read into them.
#include "mend/tastes.hpp"

#include <algorithm>

#include "core/files.hpp"
#include "support/catch.hpp"
#include "support/kitchen.hpp"
#include "support/places.hpp"

using namespace standin;

namespace tastes_test {

const Mending& known() {
    static const Mending mending = [] {
        const std::string file = knowledge_folder() + "/mending.json";
        return mending_from(read_file(file).value(), file).value();
    }();
    return mending;
}

Formula green(double salt, double vinegar) {
    return formula({line("pork-shoulder", 2000), line("spinach", 200), line("table-salt", salt), line("white-wine-vinegar", vinegar),
                    line("serrano", 40)});
}

Meaning meant(const std::vector<std::string>& words, const Formula& mass) {
    const State state = nominal_state(mass, nominal());
    return meaning_of(read_tastes(words, known()).value(), {state});
}

TEST_CASE("tastes: every example of the records is read as its word", "[mend]") {
    for (const auto& word : known().tasted) {
        CHECK_FALSE(word.examples.empty());
        for (const auto& example : word.examples) {
            INFO(example);
            const auto read = read_tastes({example}, known());
            REQUIRE(read);
            REQUIRE(read->size() == 1);
            CHECK(read->front().word->id == word.id);
        }
    }
}

TEST_CASE("tastes: the records hold together", "[mend]") { CHECK(faults_in(known(), knowledge().records()).empty()); }

TEST_CASE("tastes: lists are taken apart, and how strongly it was said counts", "[mend]") {
    const auto read = read_tastes({"flat, much too sour and a bit dry", "needs salt"}, known()).value();
    REQUIRE(read.size() == 4);
    CHECK(read[0].word->id == "flat");
    CHECK(read[1].word->id == "too-sour");
    CHECK(read[1].strong);
    CHECK(read[2].word->id == "dry");
    CHECK_FALSE(read[2].strong);
    CHECK(read[2].weak);
    CHECK_FALSE(read[1].weak);
    CHECK(read[3].word->id == "not-salty");
}

TEST_CASE("tastes: a known phrase within a sentence is found", "[mend]") {
    const std::pair<const char*, const char*> said[] = {{"falls apart in the pan", "crumbly"},
                                                        {"a bit too sour for the kids", "too-sour"},
                                                        {"way too salty!!", "too-salty"},
                                                        {"grey inside", "not-green"},
                                                        {"\"bland\"", "flat"},
                                                        {"comes out dry at the edges", "dry"},
                                                        {"weeping", "wet"},
                                                        {"it leaks in the pan", "wet"},
                                                        {"purge", "wet"},
                                                        {"fatting out", "greasy"},
                                                        {"the fat cooks out", "greasy"},
                                                        {"fat out", "greasy"},
                                                        {"gummy", "gummy"},
                                                        {"grainy", "crumbly"},
                                                        {"won't hold together", "crumbly"},
                                                        {"not hot", "not-hot"},
                                                        {"a bit flat", "flat"}};
    for (const auto& [words, id] : said) {
        INFO(words);
        const auto read = read_tastes({words}, known());
        REQUIRE(read);
        CHECK(read->front().word->id == id);
    }
    CHECK(read_tastes({"way too salty!!"}, known()).value().front().strong);
}

TEST_CASE("tastes: what is not known is asked back, a denial as well", "[mend]") {
    for (const char* words : {"not too sour", "fine", "like summer", "more sour cream", "no", "", "not flat", "never dry"}) {
        INFO(words);
        const auto read = read_tastes({words}, known());
        REQUIRE_FALSE(read);
        CHECK(read.error().trouble == Trouble::usage);
    }
    CHECK_FALSE(read_tastes({"too saltyy"}, known()).error().hints.empty());
}

TEST_CASE("tastes: flat is salt where salt is short, acid where it is not, and neither where both are told off", "[mend]") {
    const auto property = [](const Meaning& m, std::size_t i) { return m.all.at(i).goals.at(0).property; };
    CHECK(property(meant({"flat"}, green(24, 20)), 0) == Property::salt_pct);
    CHECK(property(meant({"flat"}, green(40, 20)), 0) == Property::sourness_mmol_kg);
    const Meaning both = meant({"flat, too salty"}, green(40, 20));
    REQUIRE(both.all.size() == 2);
    CHECK(property(both, 0) == Property::sourness_mmol_kg);
    CHECK(property(both, 1) == Property::salt_pct);
    CHECK(both.all[1].goals[0].kind == Goal::Kind::at_most);
    CHECK(meant({"flat, too salty, too sour"}, green(24, 60)).all.at(0).goals.empty());
}

TEST_CASE("tastes: words that leave nothing between them are told", "[mend]") {
    CHECK(meant({"too salty", "needs salt"}, green(30, 20)).opposed.size() == 2);
    CHECK(meant({"too hot", "not hot enough"}, green(30, 20)).opposed.size() == 2);
    CHECK(meant({"too garlicky", "needs garlic"}, green(30, 20)).opposed.size() == 2);
    CHECK(meant({"too salty", "too hot"}, green(30, 20)).opposed.empty());
}

TEST_CASE("tastes: a mass that cannot be sour by what is in it is spoiled", "[mend]") {
    const Meaning sour = meant({"too sour"}, formula({line("pork-shoulder", 1000), line("table-salt", 18)}));
    REQUIRE(sour.all.size() == 1);
    CHECK(sour.all[0].reading->discard);
    CHECK_FALSE(meant({"too sour"}, green(30, 60)).all.at(0).reading->discard);
    CHECK(meant({"slimy"}, green(30, 60)).all.at(0).reading->discard);
}

TEST_CASE("tastes: what the formula has plenty of already is said to be there", "[mend]") {
    const Meaning salty = meant({"needs salt"}, green(60, 20));
    REQUIRE(salty.all.size() == 1);
    CHECK(salty.all[0].there);
    CHECK(salty.all[0].goals.empty());
}

}  // namespace tastes_test
