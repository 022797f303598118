// What a technologist expects of mending: the sure cause first, no culprit in the plain mass, and never less for the louder complaint.
// Formulas are invented.
#include <algorithm>

#include "core/contains.hpp"
#include "support/catch.hpp"
#include "support/mended.hpp"

using namespace standin;

namespace mend_as_makers_test {

using namespace mending;

bool in_plain(const MendWay& way, const std::string& food) {
    return std::any_of(way.plain.begin(), way.plain.end(), [&](const Ingoing& in) { return in.ingredient == food; });
}

const MakingCause* cause(const MendAnswer& answer, const std::string& id) {
    for (const auto& one : answer.causes)
        if (one.id == id) return &one;
    return nullptr;
}

Formula made(std::vector<Line> lines, Order order, double mixing, double at_c, double rest) {
    Formula mass = formula(std::move(lines));
    mass.process.order = order;
    mass.process.mixing_min = mixing;
    mass.process.mixed_at_c = at_c;
    mass.process.rest_h = rest;
    return mass;
}

TEST_CASE("mend: salt that is short is certain, and goes in before the mass is mixed on", "[mend]") {
    const auto answer = mended(made({line("pork-shoulder", 2000), line("pork-backfat", 250), line("parsley", 60), line("table-salt", 16)},
                                    Order::salt_first, 1, 3, 4),
                               "crumbly");
    const auto* salt = cause(answer, "salt-short");
    REQUIRE(salt);
    CHECK(salt->does.find("Before it is mixed on") != std::string::npos);
    REQUIRE_FALSE(answer.ways.empty());
    const auto& way = answer.ways.front();
    REQUIRE_FALSE(way.add.empty());
    CHECK(way.add.front().ingredient == "table-salt");
    CHECK(way.add.front().first);
    const auto salted = mended(made({line("pork-shoulder", 2000), line("pork-backfat", 250), line("parsley", 60), line("table-salt", 36)},
                                    Order::salt_first, 1, 3, 4),
                               "crumbly");
    CHECK_FALSE(cause(salted, "salt-short"));
    CHECK(cause(salted, "mixed-short"));
}

TEST_CASE("mend: no water in the plain mass for a wet one, the water is named, and what does as much with less stands first", "[mend]") {
    const auto answer = mended(made({line("pork-shoulder", 2000), line("pork-backfat", 300), line("tomatillo", 450), line("water", 160),
                                     line("cilantro", 100), line("table-salt", 40)},
                                    Order::salt_first, 3, 4, 10),
                               "mushy");
    const auto* poured = cause(answer, "poured");
    REQUIRE(poured);
    CHECK(poured->says.find("water") != std::string::npos);
    REQUIRE_FALSE(answer.ways.empty());
    for (const auto& way : answer.ways) CHECK_FALSE(in_plain(way, "water"));
    // A spoon of starch that does it comes before half a batch of plain mass.
    if (answer.ways.size() > 1 && answer.ways[0].met && answer.ways[1].met && answer.ways[1].plain.empty())
        CHECK(answer.ways[0].plain_g <= answer.made_g / 2);
}

TEST_CASE("mend: much too much of it never gets less than too much", "[mend]") {
    const Formula fat = made({line("pork-belly", 1400), line("pork-backfat", 1000), line("parsley", 80), line("table-salt", 38)},
                             Order::salt_first, 4, 12, 6);
    const Formula hot = formula({line("pork-shoulder", 2000), line("table-salt", 36), line("habanero", 70)});
    const Formula salty = formula({line("pork-shoulder", 2000), line("table-salt", 110)});
    const Formula sour = made({line("pork-shoulder", 2000), line("lime-juice", 260), line("table-salt", 36)}, Order::acid_first, 3, 3, 2);
    for (const auto& [mass, word] :
         {std::pair(&fat, "too greasy"), std::pair(&hot, "too hot"), std::pair(&salty, "too salty"), std::pair(&sour, "too sour")}) {
        CAPTURE(word);
        const auto plainly = mended(*mass, word), much = mended(*mass, std::string("much ") + word);
        REQUIRE_FALSE(plainly.ways.empty());
        REQUIRE_FALSE(much.ways.empty());
        CHECK(much.ways.front().plain_g >= plainly.ways.front().plain_g - 1);
    }
    // Down to what a sausage holds, and no noticeable step further.
    const auto much = mended(fat, "much too greasy");
    CHECK(much.ways.front().prediction.properties[Property::fat_pct].mid >= 26);
    CHECK(much.ways.front().met);
}

TEST_CASE("mend: what set rubbery is thinned by plain mass without it, weighed out, and without salt where there is enough", "[mend]") {
    const auto answer = mended(
        made({line("turkey-breast", 1900), line("egg-white", 90), line("milk-powder", 100), line("parsley", 40), line("table-salt", 48)},
             Order::salt_first, 9, 1, 20),
        "rubbery");
    REQUIRE_FALSE(answer.ways.empty());
    const auto& way = answer.ways.front();
    CHECK(way.plain_g > 400);
    CHECK(way.plain_g < 1100);
    for (const char* food : {"egg-white", "milk-powder", "table-salt"}) CHECK_FALSE(in_plain(way, food));
    // Without a binder a third of its weight is a beginning, and not called a cure.
    const auto mixed = mended(made({line("pork-shoulder", 2000), line("table-salt", 36)}, Order::salt_first, 9, 1, 20), "rubbery");
    REQUIRE(mixed.ways.size() == 1);
    CHECK(mixed.ways.front().plain_g > 600);
    CHECK(mixed.ways.front().plain_g < 800);
    CHECK_FALSE(mixed.ways.front().met);
}

TEST_CASE("mend: leaf that would turn in the sour mass is not weighed into it; fresh mass without the acid is", "[mend]") {
    const auto answer = mended(made({line("pork-shoulder", 2100), line("pork-backfat", 300), line("parsley", 280), line("tomatillo", 240),
                                     line("lime-juice", 80), line("table-salt", 42)},
                                    Order::salt_first, 3, 3, 36),
                               "grey, not green");
    const auto* lay = cause(answer, "acid-on-leaf-rested");
    REQUIRE(lay);
    CHECK(lay->says.find("36 hours") != std::string::npos);
    REQUIRE_FALSE(answer.ways.empty());
    for (const auto& way : answer.ways) {
        CHECK(way.add.empty());
        CHECK(way.plain_g > 300);
        CHECK_FALSE(way.met);
        CHECK_FALSE(in_plain(way, "lime-juice"));
        CHECK_FALSE(in_plain(way, "tomatillo"));
        const auto leaf = std::find_if(way.plain.begin(), way.plain.end(), [](const Ingoing& in) { return in.ingredient == "parsley"; });
        REQUIRE(leaf != way.plain.end());
        CHECK_FALSE(leaf->prepared.empty());  // blanched
    }
}

TEST_CASE("mend: the plain mass leaves out every line that carries the fault", "[mend]") {
    const auto salty = mended(formula({line("lamb-shoulder", 2000), line("lamb-fat", 250), line("feta", 90), line("black-olive", 70),
                                       line("parsley", 80), line("table-salt", 54)}),
                              "too salty");
    REQUIRE_FALSE(salty.ways.empty());
    for (const char* food : {"feta", "black-olive", "table-salt"}) CHECK_FALSE(in_plain(salty.ways.front(), food));
    const auto sour = mended(made({line("pork-shoulder", 2200), line("pork-backfat", 250), line("sorrel", 200),
                                   line("white-wine-vinegar", 120), line("parsley", 80), line("table-salt", 42)},
                                  Order::acid_first, 3, 3, 12),
                             "crumbly");
    REQUIRE_FALSE(sour.ways.empty());
    REQUIRE_FALSE(sour.ways.front().plain.empty());
    for (const char* food : {"sorrel", "white-wine-vinegar"}) CHECK_FALSE(in_plain(sour.ways.front(), food));
}

TEST_CASE("mend: fish that acid and warmth had is not mixed on, and cream goes through no plate", "[mend]") {
    const auto answer =
        mended(made({line("cod", 1500), line("cream", 110), line("dill", 50), line("lemon-juice", 45), line("table-salt", 17)},
                    Order::acid_first, 2, 9, 1),
               "crumbly, dry");
    CHECK(cause(answer, "fish-acid"));
    const auto* warm = cause(answer, "fish-warm");
    REQUIRE(warm);
    CHECK(warm->says.find("9") != std::string::npos);
    for (const auto& way : answer.ways) {
        CHECK(way.work_min == 0);
        for (const auto& in : way.add)
            if (in.ingredient == "cream") CHECK(in.how.find("plate") == std::string::npos);
        CHECK_FALSE(in_plain(way, "lemon-juice"));
    }
    // Of meat none of that is said.
    const auto pork =
        mended(made({line("pork-shoulder", 1500), line("lemon-juice", 20), line("table-salt", 26)}, Order::acid_first, 2, 6, 1), "dry");
    CHECK_FALSE(cause(pork, "fish-acid"));
    CHECK_FALSE(cause(pork, "fish-warm"));
}

}  // namespace mend_as_makers_test
