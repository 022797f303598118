#include "knowledge/checks/integrity.hpp"

#include <algorithm>
#include <functional>
#include <map>
#include <set>

#include "knowledge/checks/coverage.hpp"
#include "knowledge/records/references.hpp"
#include "support/catch.hpp"
#include "support/knowledge.hpp"

using namespace standin;

namespace integrity_test {

Ingredient& ingredient(Records& records, std::string_view id) {
    return *std::find_if(records.ingredients.begin(), records.ingredients.end(), [&](const Ingredient& i) { return i.id == id; });
}

std::set<std::string> found(std::string_view kind, const Records& records) {
    std::set<std::string> all;
    for (const auto& doubt : doubts_about(records))
        if (doubt.kind == kind) all.insert(doubt.record);
    return all;
}

/// The records of `kind` that only a change of the real knowledge brings up.
std::set<std::string> new_after(std::string_view kind, const std::function<void(Records&)>& change) {
    Records records = knowledge().records();
    const auto before = found(kind, records);
    change(records);
    std::set<std::string> fresh;
    for (const auto& record : found(kind, records))
        if (!before.count(record)) fresh.insert(record);
    return fresh;
}

using Keys = std::set<std::string>;

Quantity guessed(double low, double mid, double high, const char* unit) { return {{low, mid, high}, unit, "judgement"}; }

TEST_CASE("the real knowledge raises only doubts that its README explains") {
    std::map<std::string_view, std::vector<std::string>> kinds;
    for (const auto& doubt : doubts_about(knowledge().records())) kinds[doubt.kind].push_back(doubt.about + ": " + doubt.detail);
    const std::set<std::string_view> explained{"uncited-source", "band-narrow",           "band-wide",
                                               "no-season",      "composition-explained", "kin-explained"};
    for (const auto& [kind, cases] : kinds) {
        CAPTURE(kind, cases);
        CHECK(explained.count(kind) == 1);
    }
}

TEST_CASE("doubts of one kind stand together") {
    std::set<std::string_view> done;
    std::string_view last;
    for (const auto& doubt : doubts_about(knowledge().records())) {
        if (doubt.kind != last) CHECK(done.insert(doubt.kind).second);
        last = doubt.kind;
    }
}

TEST_CASE("kin that disagree: dried and fresh, leaf and lutein") {
    CHECK(new_after("kin-apart", [](Records& r) {
              ingredient(r, "dried-basil").chlorophyll->band = {10, 20, 30};
          }) == Keys{"ingredient dried-basil"});
    CHECK(new_after("kin-missing", [](Records& r) { ingredient(r, "dried-basil").chlorophyll.reset(); }) == Keys{"ingredient dried-basil"});
    CHECK(new_after("kin-apart", [](Records& r) {
              ingredient(r, "guajillo").capsaicinoids->band = {500, 900, 1500};
          }) == Keys{"ingredient guajillo"});
    const auto pale = [](Records& r) { ingredient(r, "spinach").chlorophyll->band = {5, 8, 13}; };
    CHECK(new_after("kin-apart", pale).count("ingredient spinach") == 1);
    CHECK(new_after("kin-explained", [&](Records& r) {
              pale(r);
              ingredient(r, "spinach").apart = "grown in the dark";
          }) == Keys{"ingredient spinach"});
}

TEST_CASE("the currency of a role is counted over the ingredients that carry it") {
    const auto& records = knowledge().records();
    const auto all = coverage_by_role(records, records.sources);
    const auto green = std::find_if(all.begin(), all.end(), [](const Coverage& c) { return c.group == "green, chlorophyll"; });
    REQUIRE(green != all.end());
    std::size_t greens = 0;
    for (const auto& i : records.ingredients) greens += i.chlorophyll && std::count(i.roles.begin(), i.roles.end(), Role::green) > 0;
    CHECK(green->published + green->common_practice + green->from_memory + green->judgement == greens);
}

TEST_CASE("the most used foods are those that the most swaps name") {
    const auto& records = knowledge().records();
    const auto total = [](const std::vector<Coverage>& all, std::string_view group) {
        std::size_t sum = 0;
        for (const auto& c : all)
            if (c.group == group) sum += c.published + c.common_practice + c.from_memory + c.judgement;
        return sum;
    };
    const auto used = coverage_by_role_of_most_used(records, records.sources);
    const auto all = coverage_by_role(records, records.sources);
    REQUIRE(used.size() == all.size());
    CHECK(total(used, "most used: green, chlorophyll") > 10);
    CHECK(total(used, "most used: green, chlorophyll") < total(all, "green, chlorophyll"));
}

TEST_CASE("an ingredient no swap names, and a role without a stand-in") {
    const auto lonely = [](Records& r) {
        r.swaps.erase(std::remove_if(r.swaps.begin(), r.swaps.end(), [](const Swap& s) { return s.from == "chard" || s.to == "chard"; }),
                      r.swaps.end());
    };
    CHECK(new_after("orphan", lonely) == Keys{"ingredient chard"});
    CHECK(new_after("no-stand-in", lonely).count("ingredient chard") == 1);
}

TEST_CASE("a source counts as used when a number, a note or a source worked out from it names it") {
    const auto add = [](const char* id) { return [=](Records& r) { r.sources.push_back({id, SourceKind::published, "a book", ""}); }; };
    CHECK(new_after("uncited-source", add("idle-1999")) == Keys{"source idle-1999"});
    CHECK(new_after("uncited-source", [&](Records& r) {
              add("idle-1999")(r);
              r.parameters.front().note = "Agrees with idle-1999.";
          }).empty());
    CHECK(new_after("uncited-source", [&](Records& r) {
              add("idle-1999")(r);
              ingredient(r, "spinach").chlorophyll->source = "idle-1999-fit#3";
          }).empty());
}

TEST_CASE("a preparation that fits no tissue there is") {
    CHECK(new_after("idle-preparation", [](Records& r) {
              r.preparations.push_back({"flambeed", "", "", "", "", {"flambeed"}, 0, {}, {}, false, {}});
          }) == Keys{"preparation flambeed"});
}

TEST_CASE("bands that claim too much or say too little") {
    const auto pigment = [](double low, double mid, double high) {
        return [=](Records& r) { ingredient(r, "spinach").chlorophyll = guessed(low, mid, high, "mg/kg"); };
    };
    const Keys spinach{"ingredient spinach"};
    CHECK(new_after("band-missing", pigment(800, 800, 800)) == spinach);
    CHECK(new_after("band-narrow", pigment(780, 800, 820)) == spinach);
    CHECK(new_after("band-wide", pigment(20, 100, 800)) == spinach);
    CHECK(new_after("band-out-of-order", pigment(500, 400, 800)) == spinach);
    for (const char* kind : {"band-missing", "band-narrow", "band-wide", "band-out-of-order"})
        CHECK(new_after(kind, pigment(500, 800, 1300)).empty());
    CHECK(new_after("band-narrow", [](Records& r) { ingredient(r, "spinach").acidity->ph = guessed(6.4, 6.5, 6.6, "pH"); }) == spinach);
    CHECK(new_after("band-narrow", [](Records& r) { ingredient(r, "spinach").acidity->ph = guessed(6.3, 6.5, 6.6, "pH"); }).empty());
    CHECK(new_after("band-missing", [](Records& r) {
              ingredient(r, "spinach").chlorophyll = Quantity{{800, 800, 800}, "mg/kg", "usda-sr28#1"};
          }).empty());
}

TEST_CASE("two swaps in a row that beat the direct one, unless they ask a condition it does not ask") {
    const auto lowered = [](const char* need) {
        return [=](Records& r) {
            for (auto& s : r.swaps) {
                if (s.role != Role::green || !s.prepared.empty()) continue;
                if (s.from == "spinach" && s.to == "beet-greens") s.closeness = 0.3;
                if (*need && s.from == "spinach" && s.to != "beet-greens") s.needs = {need};
            }
        };
    };
    CHECK(new_after("detour-closer", lowered("")).count("swap green spinach > beet-greens") == 1);
    CHECK(new_after("detour-closer", lowered("cooked")).count("swap green spinach > beet-greens") == 0);
}

TEST_CASE("acid records that do not hang together") {
    const Keys lemon{"ingredient lemon-juice"};
    CHECK(new_after("acid-record", [](Records& r) { ingredient(r, "lemon-juice").acidity->ph.reset(); }) == lemon);
    CHECK(new_after("acid-record", [](Records& r) { ingredient(r, "lemon-juice").acidity->acids.clear(); }) == lemon);
    CHECK(new_after("acid-record", [](Records& r) { ingredient(r, "lemon-juice").acidity.reset(); }) == lemon);
    CHECK(new_after("acid-record", [](Records& r) {
              ingredient(r, "lemon-juice").acidity->ph = guessed(6, 6.5, 7, "pH");
              ingredient(r, "lemon-juice").acidity->titratable = guessed(700, 800, 900, "mmol/kg");
          }) == lemon);
}

TEST_CASE("a condition without a note, a plant without a season, a composition with an exception") {
    CHECK(new_after("condition-unsaid", [](Records& r) {
              r.swaps.front().needs = {"cooked"};
              r.swaps.front().note.clear();
          }) == Keys{swap_key(knowledge().records().swaps.front())});
    CHECK(new_after("no-season", [](Records& r) { ingredient(r, "spinach").season.clear(); }) == Keys{"ingredient spinach"});
    CHECK(new_after("no-season", [](Records& r) {
              ingredient(r, "spinach").season.clear();
              ingredient(r, "spinach").composition.salt = {2, 2, 2};
          }).empty());
    CHECK(new_after("composition-explained", [](Records& r) {
              ingredient(r, "spinach").composition.water = {80, 80, 80};
          }) == Keys{"ingredient spinach"});
}

TEST_CASE("coverage puts every reference in one group") {
    const Records& records = knowledge().records();
    std::size_t sum = 0;
    for (const auto& group : coverage_of(records, records.sources)) {
        CAPTURE(group.group);
        const std::size_t of_group = group.published + group.common_practice + group.from_memory + group.judgement;
        CHECK(of_group > 0);
        sum += of_group;
    }
    CHECK(sum == references_in(records).size());
}

}  // namespace integrity_test
