// Sentences of records and rules in the maker's units.
#include "core/written_quantity.hpp"
#include "knowledge/readers/reading.hpp"
#include "standin/narrate.hpp"
#include "support/catch.hpp"
#include "support/mixture.hpp"

using namespace standin;

TEST_CASE("what stands in braces is a quantity in the maker's units", "[units]") {
    CHECK(in_units("fat smears over {10-12 C}.", Units::metric) == "fat smears over 10-12 C.");
    CHECK(in_units("fat smears over {10-12 C}.", Units::us) == "fat smears over 50-54 F.");
    CHECK(in_units("from {57 to 21 C}", Units::us) == "from 135-70 F");
    CHECK(in_units("{5 g} is too much", Units::both) == "5 g (0.18 oz) is too much");
    CHECK(in_units("in a kilo of {2 kg}", Units::us) == "in a kilo of 4 lb 6.5 oz");
}

TEST_CASE("what must stay cold is never said warmer, and a core never colder", "[units]") {
    CHECK(in_units("kept at {2 C or colder}", Units::metric) == "kept at 2 C or colder");
    CHECK(in_units("kept at {2 C or colder}", Units::us) == "kept at 35 F or colder");
    CHECK(in_units("kept at {4.4 C or colder}", Units::us) == "kept at 40 F or colder");
    CHECK(in_units("kept at {4.4 C or colder}", Units::both) == "kept at 4.4 C (40 F) or colder");
    for (const auto units : {Units::metric, Units::us, Units::both}) CHECK(in_units("{core 73.9 C}", units) == "73.9 C (165 F)");
}

TEST_CASE("what is told in both is told in both for good", "[units]") {
    for (const std::string sentence :
         {"fat smears over {10-12 C}.", "{5 g} is too much", "a batch of 2.4 kg", "a plate of 5 mm", "{4.4 C or colder}"}) {
        const std::string both = in_units(sentence, Units::both);
        CHECK(in_units(both, Units::both) == both);
        const std::string us = in_units(sentence, Units::us);
        CHECK(in_units(us, Units::us) == us);
    }
}

TEST_CASE("a bare number with a unit is turned too, but no share, no difference, nothing said in both and nothing quoted", "[units]") {
    CHECK(in_units("Holds from about 65-70 C; none raw.", Units::us) == "Holds from about 149-158 F; none raw.");
    CHECK(in_units("months at -18 C, for quality", Units::us) == "months at 0 F, for quality");
    CHECK(in_units("cold-pressed at 27 C", Units::both) == "cold-pressed at 27 C (81 F)");
    for (const std::string same : {"2-4 g to the kilogram", "5 g/kg phosphate", "1.31 g in 100 g, raw", "12 g in a kilo of batch",
                                   "0.87 g for each gram", "warming the water by 80 C", "Cook to 71.1 C (160 F)",
                                   "\"2400 g pork\": taken as pork shoulder", "add `spinach 400 g`", "pH 5.5"})
        CHECK(in_units(same, Units::us) == same);
}

TEST_CASE("a mark that is none is refused by the packer, and so is a bare quantity in a rule", "[units]") {
    for (const auto* good : {"60 C", "10-12 C", "57 to 21 C", "5 g", "32 mm", "2 C or colder", "core 73.9 C"})
        CHECK(marked_quantity(good).has_value());
    for (const auto* bad : {"", "60", "60 F", "warm", "core 5 g", "core 60-70 C", "5 g or colder", "60 C and more", "2-4 C or colder"})
        CHECK_FALSE(marked_quantity(bad).has_value());
    const auto faults = [](const std::string& text) {
        KnowledgeFiles files;
        read_knowledge_file(
            "rules/own.json",
            R"({"code": "own", "title": "t", "edition": "e", "cautions": [{"id": "c", "source": "judgement", "text": ")" + text + R"("}]})",
            "own.json", files);
        return files.errors.size();
    };
    CHECK(faults("Keep it at {4 C or colder}.") == 0);
    CHECK(faults("No more than 5 g/kg.") == 0);
    CHECK(faults("Keep it at 4 C.") == 1);
    CHECK(faults("Keep it at {4 F}.") == 1);
    CHECK(faults("Keep it at {4 C.") == 1);
}

TEST_CASE("no caution of any rule set leaves a degree in metric where a maker goes by US units", "[units]") {
    for (const auto& rules : knowledge().records().rules)
        for (const auto& caution : rules.cautions) {
            std::size_t at = 0;
            const std::string us = in_units(caution.text, Units::us);
            INFO(us);
            CHECK_FALSE(next_quantity(us, at).has_value());
        }
}
