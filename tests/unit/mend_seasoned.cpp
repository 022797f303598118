// What lacks seasoning gets its own once more, leaf for its colour stays within what is good of it, and every word is answered.
// Formulas are invented.
#include <algorithm>

#include "support/catch.hpp"
#include "support/mended.hpp"

using namespace standin;

namespace mend_seasoned_test {

using namespace mending;

Formula verde() {
    return formula({line("pork-shoulder", 2268), line("pork-backfat", 454), line("poblano", 200, {"roasted"}), line("serrano", 25),
                    line("cilantro", 60), line("parsley", 60), line("pumpkin-seed", 70), line("cider-vinegar", 80), line("table-salt", 48),
                    line("dried-oregano", 3), line("garlic", 25)});
}

double added(const MendWay& way, const std::string& id) {
    double sum = 0;
    for (const auto& in : way.add) sum += in.ingredient == id ? in.grams : 0;
    return sum;
}

TEST_CASE("mend: flat and not green are answered by the formula's own herbs, each once", "[mend]") {
    for (const char* words : {"flat, not green", "pale, bland", "grey and tastes of nothing"}) {
        CAPTURE(words);
        const auto answer = mended(verde(), words);
        REQUIRE_FALSE(answer.ways.empty());
        const auto& way = answer.ways.front();
        const double herbs = added(way, "cilantro") + added(way, "parsley");
        CHECK(added(way, "cilantro") > 15);
        CHECK(added(way, "parsley") > 15);
        CHECK(herbs > 60);
        CHECK(herbs < 200);
        CHECK(added(way, "spinach") + added(way, "chard") < herbs);
        for (const auto& in : way.add)
            CHECK(std::count_if(way.add.begin(), way.add.end(), [&](const Ingoing& other) { return other.ingredient == in.ingredient; }) ==
                  1);
        for (const auto& word : answer.words) CHECK(word.judged);
    }
}

TEST_CASE("mend: a dried herb is no colour, and a strong one colours at a part of its most", "[mend]") {
    MendRequest request;
    request.have.emplace();
    request.have->items = {{"culantro", 200.0}, {"dried-oregano", 100.0}, {"parsley", 300.0}, {"mint", 200.0}, {"tarragon", 100.0}};
    request.have->missing = {"cilantro"};
    for (const char* words : {"not green", "flat, not green"}) {
        CAPTURE(words);
        request.tasted = {words};
        const auto answer = mend(engine(), verde(), request).value();
        REQUIRE_FALSE(answer.ways.empty());
        for (const auto& way : answer.ways) {
            CHECK(added(way, "dried-oregano") < 2);
            for (const auto& in : way.add) {
                const Ingredient& food = *knowledge().ingredient(in.ingredient);
                if (in.fresh && food.roles.front() == Role::herb)
                    CHECK(in.grams <= 0.36 * food.most_g_per_kg->band.mid * answer.made_g / 1000);
            }
        }
    }
}

TEST_CASE("mend: a flat mass is given more of what seasons it, within the most that is good", "[mend]") {
    Formula sausage = formula({line("pork-shoulder", 2000), line("pork-backfat", 400), line("table-salt", 44),
                               line("white-wine-vinegar", 60), line("fennel-seed", 10), line("garlic", 20)});
    const auto answer = mended(sausage, "flat");
    REQUIRE_FALSE(answer.ways.empty());
    CHECK(added(answer.ways.front(), "fennel-seed") > 2.5);
    CHECK(added(answer.ways.front(), "fennel-seed") < 4.5);
    REQUIRE(answer.ways.size() > 1);
    CHECK(added(answer.ways[1], "garlic") > 5);
    // What is at its most already is not put over it.
    sausage.lines[4] = line("dried-sage", 9.5);
    for (const auto& way : mended(sausage, "flat").ways) CHECK(added(way, "dried-sage") < 0.8);
    // Nothing of it in the formula: a beginning in words.
    const auto bare = mended(formula({line("pork-shoulder", 2000), line("table-salt", 44), line("white-wine-vinegar", 60)}), "flat");
    CHECK(bare.ways.empty());
    CHECK(bare.words.front().says.find("garlic") != std::string::npos);
}

TEST_CASE("mend: parsley and cilantro are herbs for who wants less of them, and more", "[mend]") {
    const auto less = mended(verde(), "too herby");
    REQUIRE_FALSE(less.ways.empty());
    for (const auto& in : less.ways.front().plain) CHECK((in.ingredient != "cilantro" && in.ingredient != "parsley"));
    const auto more = mended(verde(), "needs herbs");
    REQUIRE_FALSE(more.ways.empty());
    CHECK(added(more.ways.front(), "cilantro") > 15);
    const auto soap = mended(verde(), "soapy");
    REQUIRE_FALSE(soap.ways.empty());
    for (const auto& in : soap.ways.front().plain) CHECK(in.ingredient != "cilantro");
    CHECK(std::any_of(soap.ways.front().plain.begin(), soap.ways.front().plain.end(),
                      [](const Ingoing& in) { return in.ingredient == "parsley"; }));
}

TEST_CASE("mend: words of liver, game, mould and grit are answered, or said why not", "[mend]") {
    const Formula liver = formula({line("pork-shoulder", 1200), line("pork-liver", 400), line("pork-backfat", 400), line("table-salt", 36),
                                   line("dried-marjoram", 4)});
    const auto livery = mended(liver, "livery");
    REQUIRE_FALSE(livery.ways.empty());
    CHECK(livery.ways.front().plain_g > 600);
    for (const auto& in : livery.ways.front().plain) CHECK(in.ingredient != "pork-liver");
    const Formula stag = formula({line("venison", 1600), line("pork-backfat", 300), line("table-salt", 34), line("juniper-berry", 5),
                                  line("garlic", 15), line("red-wine", 60)});
    for (const char* word : {"gamy", "metallic", "muttony", "a bit gamey", "tastes of blood"}) {
        CAPTURE(word);
        const auto answer = mended(stag, word);
        REQUIRE_FALSE(answer.ways.empty());
        for (const auto& in : answer.ways.front().add) CHECK(in.grams < 10);
    }
    for (const char* word : {"fishy", "musty", "gritty", "boozy", "earthy", "like a cellar", "gristly"}) {
        CAPTURE(word);
        const auto answer = mended(stag, word);
        CHECK(answer.ways.empty());
        CHECK(answer.discard.empty());
        REQUIRE(answer.words.size() == 1);
        CHECK_FALSE(answer.words.front().says.empty());
        CHECK_FALSE(answer.words.front().practice.empty());
    }
    for (const char* word : {"mouldy", "moldy", "moisi"}) CHECK_FALSE(mended(stag, word).discard.empty());
    CHECK_FALSE(mend(engine(), stag, [] {
        MendRequest request;
        request.tasted = {"too strong"};
        return request;
    }()));  // of what is not said
}

}  // namespace mend_seasoned_test
