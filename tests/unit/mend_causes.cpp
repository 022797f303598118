// The formula's own making, where it is the cause, comes before anything that is weighed in.
#include <algorithm>

#include "standin/mend.hpp"
#include "support/catch.hpp"
#include "support/kitchen.hpp"
#include "support/mended.hpp"

using namespace standin;

namespace mend_causes_test {

using namespace mending;

Formula pork(Process process, double vinegar = 0) {
    Formula mass = formula({line("pork-shoulder", 2000), line("pork-backfat", 300), line("table-salt", 40), line("black-pepper", 5)});
    if (vinegar > 0) mass.lines.push_back(line("white-wine-vinegar", vinegar));
    process.order = Order::salt_first;
    mass.process = process;
    return mass;
}

Process well() {
    Process process;
    process.plate_mm = 6;
    process.mixing_min = 3;
    process.mixed_at_c = 3;
    process.core_c = 71.1;
    process.rest_h = 1;
    return process;
}

std::vector<std::string> ids(const MendAnswer& answer) {
    std::vector<std::string> all;
    for (const auto& cause : answer.causes) all.push_back(cause.id);
    return all;
}

using Ids = std::vector<std::string>;

TEST_CASE("mend: a mass that was well made has no cause in its making", "[mend]") {
    for (const char* word : {"greasy", "mushy", "crumbly", "rubbery", "dry", "wet"}) {
        INFO(word);
        CHECK(mended(pork(well()), word).causes.empty());
    }
}

TEST_CASE("mend: what the making did is told of the words that it explains, and of no others", "[mend]") {
    const auto with = [](auto change) {
        Process process = well();
        change(process);
        return process;
    };
    const auto warm = with([](Process&p) { p.mixed_at_c = 15; }), fine = with([](Process&p) { p.plate_mm = 3; }),
               over = with([](Process&p) { p.mixing_min = 15; }), brief = with([](Process&p) { p.mixing_min = 1; }),
               hot = with([](Process&p) { p.core_c = 80; }), rested = with([](Process&p) { p.rest_h = 24; });
    CHECK(ids(mended(pork(warm), "greasy")) == Ids{"mixed-warm"});
    CHECK(ids(mended(pork(warm), "crumbly")) == Ids{"mixed-warm"});
    CHECK(ids(mended(pork(fine), "mushy")) == Ids{"ground-fine"});
    CHECK(ids(mended(pork(fine), "greasy")) == Ids{"ground-fine-fat"});
    CHECK(ids(mended(pork(over), "mushy")) == Ids{"mixed-long"});
    CHECK(ids(mended(pork(over), "rubbery")) == Ids{"mixed-long-tight"});
    CHECK(ids(mended(pork(brief), "crumbly")) == Ids{"mixed-short"});
    CHECK(ids(mended(pork(hot), "dry")) == Ids{"cooked-hot"});
    CHECK(ids(mended(pork(rested, 120), "mushy")) == Ids{"acid-set"});
    CHECK(ids(mended(pork(rested), "mushy")).empty());
    CHECK(mended(pork(warm), "too salty").causes.empty());
    const auto told = mended(pork(warm), "greasy").causes.front();
    CHECK(told.says.find("15 C") != std::string::npos);
    CHECK_FALSE(told.first.empty());
}

TEST_CASE("mend: of several causes the one that costs the bind most comes first", "[mend]") {
    Process process = well();
    process.mixed_at_c = 9;
    process.rest_h = 20;
    process.mixing_min = 1;
    CHECK(ids(mended(pork(process, 190), "crumbly")) == Ids{"acid-set", "mixed-warm"});
    process.mixed_at_c = 26;
    CHECK(ids(mended(pork(process, 60), "crumbly")).front() == "mixed-warm");
}

TEST_CASE("mend: a poultry patty cooked to what poultry needs is not cooked too hot", "[mend]") {
    Formula bird = formula({line("chicken-thigh", 2000), line("table-salt", 36)});
    bird.process = well();
    bird.process.core_c = 75;
    CHECK(mended(bird, "dry").causes.empty());
}

TEST_CASE("mend: raw fruit that digests meat cannot be mended, and goes on", "[mend]") {
    for (const char* fruit : {"pineapple", "kiwifruit", "green-papaya"}) {
        Formula mass = pork(well());
        mass.lines.push_back(line(fruit, 150));
        mass.process.rest_h = 12;
        for (const char* word : {"mushy", "too soft", "crumbly"}) {
            const auto answer = mended(mass, word);
            INFO(fruit << " " << word);
            REQUIRE(answer.causes.size() == 1);
            CHECK(answer.causes.front().ends);
            CHECK(answer.causes.front().first.find("cook it at once") != std::string::npos);
            CHECK(answer.ways.empty());
        }
    }
    Formula cooked = pork(well());
    cooked.lines.push_back(line("kiwifruit", 150, {"cooked"}));
    cooked.process.rest_h = 12;
    for (const auto& cause : mended(cooked, "mushy").causes) CHECK(cause.id != "digested");
}

TEST_CASE("mend: leaf that acid turned is no cure until the acid is away", "[mend]") {
    Formula mass = pork(well(), 120);
    mass.lines.push_back(line("spinach", 400, {"blanched", "squeezed"}));
    mass.process.rest_h = 24;
    const auto answer = mended(mass, "not green");
    REQUIRE_FALSE(answer.causes.empty());
    CHECK(answer.causes.front().id == "acid-on-leaf-rested");
    for (const auto& way : answer.ways) CHECK_FALSE(way.met);
    for (const char* word : {"brown", "olive", "lost its green"}) CHECK(mended(mass, word).causes.front().id == "acid-on-leaf-rested");
    mass.process.rest_h = 2;
    CHECK(mended(mass, "not green").causes.front().id == "acid-on-leaf");
}

}  // namespace mend_causes_test
