// How long and how cold the raw mass keeps: every length of the caution says what the strictest rule says, whatever is in it.
#include <set>

#include "safety/cautions.hpp"
#include "support/catch.hpp"
#include "support/mixture.hpp"

using namespace standin;

namespace keeping_time_test {

CautionText told(const Prediction& p, const std::string& id, std::string_view rules = "general") {
    for (const auto& c : cautions_of(p, {}, knowledge(), rules))
        if (c.id == id) return c;
    FAIL("no caution " << id);
    return {};
}

std::vector<std::string> lengths(const CautionText& c) { return {c.text, c.brief}; }

bool spoils_at_once(const Ingredient& food) {
    const std::set<std::string> words(food.cautions.begin(), food.cautions.end());
    const bool sea = food.meat && (food.meat->species == Species::fish || food.meat->species == Species::crustacean);
    return sea || words.count("offal") || words.count("raw-fish") || words.count("raw-shellfish");
}

TEST_CASE("keeping: with any offal or seafood no text speaks of days") {
    std::size_t seen = 0;
    for (const auto& food : knowledge().records().ingredients) {
        if (!spoils_at_once(food)) continue;
        ++seen;
        CAPTURE(food.id);
        for (const auto& text : lengths(told(mixture({{"pork-shoulder", 2000}, {food.id, 50}}), "keep-cold"))) {
            CHECK(text.find("does not keep") != std::string::npos);
            CHECK(text.find("1-2 days") == std::string::npos);
        }
    }
    CHECK(seen > 40);
}

TEST_CASE("keeping: plain meat keeps a day or two, with cooked rice a day") {
    for (const auto& text : lengths(told(mixture({{"pork-shoulder", 2000}}), "keep-cold")))
        CHECK(text.find("1-2 days") != std::string::npos);
    for (const auto* rice : {"rice-cooked", "short-grain-rice-cooked", "sticky-rice-cooked"})
        for (const auto& text : lengths(told(mixture({{"pork-shoulder", 2000}, {rice, 80}}), "keep-cold"))) {
            CAPTURE(rice, text);
            CHECK(text.find("1-2 days") == std::string::npos);
            CHECK(text.find("a day") != std::string::npos);
        }
}

TEST_CASE("keeping: as cold as the rule set asks") {
    const Prediction p = mixture({{"pork-shoulder", 2000}});
    for (const auto& text : lengths(told(p, "keep-cold"))) CHECK(text.find("4.4 C or colder") != std::string::npos);
    for (const auto* rules : {"eu", "uk"})
        for (const auto& text : lengths(told(p, "keep-cold", rules))) {
            CAPTURE(rules, text);
            CHECK(text.find("4 C or colder") != std::string::npos);
            CHECK(text.find("4.4") == std::string::npos);
        }
}

TEST_CASE("keeping: the short word to those at risk is no cooler than the batch asks for") {
    const Prediction p = mixture({{"pork-shoulder", 2000}});
    for (const auto& text : lengths(told(p, "vulnerable", "uk"))) {
        CAPTURE(text);
        CHECK(text.find("75 C") != std::string::npos);
        CHECK(text.find("73.9") == std::string::npos);
    }
}

TEST_CASE("keeping: no caution of a rule set tells days or degrees that the limits may tighten") {
    for (const auto& rules : knowledge().records().rules)
        for (const auto& caution : rules.cautions)
            for (const auto& text : {caution.text, caution.brief}) {
                CAPTURE(rules.code, caution.id, text);
                CHECK(text.find("1-2 days") == std::string::npos);
            }
}

TEST_CASE("keeping: raw bivalves are told of viruses that the core of the charts need not kill") {
    for (const auto* shellfish : {"oyster", "scallop"})
        for (const auto& text : lengths(told(mixture({{"cod", 2000}, {shellfish, 100}}), "raw-shellfish"))) {
            CAPTURE(shellfish, text);
            CHECK(text.find("norovirus") != std::string::npos);
            CHECK(text.find("90 C") != std::string::npos);
        }
}

}  // namespace keeping_time_test
