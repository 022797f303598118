// The one rule for a word beside a food that nobody knows: lines of a formula and of a list are judged alike.
#include <algorithm>

#include "formula/food/clauses.hpp"
#include "formula/food/remark.hpp"
#include "formula/line/line_text.hpp"
#include "formula/reading.hpp"
#include "support/catch.hpp"
#include "support/knowledge.hpp"
#include "support/line_rows.hpp"

using namespace standin;

namespace unknown_words_test {

bool any_unknown(const std::vector<Reason>& notes) {
    return std::any_of(notes.begin(), notes.end(), [](const Reason& note) { return note.kind == ReasonKind::passed_unknown; });
}

std::string in_formula(const std::string& line) {
    const auto read = read_line(line, Origin("", {1, 1}), knowledge());
    if (!read) return "asked";
    const bool told = any_unknown(read->line.notes);
    const bool unsure = std::any_of(read->doubts.begin(), read->doubts.end(),
                                    [](const LineDoubt& doubt) { return doubt.confidence == Confidence::unsure; });
    return (told && unsure ? "noted " : "read ") + read->line.ingredient;
}

std::string in_list(const std::string& line, const std::string& food) {
    const auto read = read_inventory("thyme 2 bunches\nlimes 4\nparsley 1 bunch\nno star anise\n" + line + "\n", "f", knowledge());
    if (!read) return "asked";
    const bool there = std::any_of(read->items.begin(), read->items.end(), [&](const auto& item) { return item.ingredient == food; });
    if (!there) return read->items.size() > 4 ? "read another" : "asked";
    return (any_unknown(read->notes) ? "noted " : "read ") + food;
}

bool fits(const std::string& became, const std::string& must) {
    const auto blank = must.find(' ');
    if (blank == std::string::npos) return became == must;
    const std::string how = became.substr(0, became.find(' ')), food = became.substr(became.find(' ') + 1);
    return among(food, must.substr(blank + 1)) && (how == must.substr(0, blank) || must.starts_with("read "));
}

TEST_CASE("a word that nobody knows is a name where it can be no more, and is asked about where it can") {
    const auto rows = line_rows("unit/remark_wordings.csv");
    REQUIRE(rows.size() >= 50);
    for (const auto& row : rows) {
        REQUIRE(row.size() == 3);
        const auto blank = row[2].find(' ');
        const auto became =
            row[0] == "list" ? in_list(row[1], blank == std::string::npos ? "" : row[2].substr(blank + 1)) : in_formula(row[1]);
        INFO(row[0] << ": " << row[1] << " must be " << row[2] << ", became " << became);
        CHECK(fits(became, row[2]));
    }
}

TEST_CASE("a remark is cut into parts") {
    const SaidOfFood kale{knowledge().ingredient("kale"), "300 g kale"};
    const auto remark = read_remark("large Zorbex sort from Quillo", knowledge(), kale);
    CHECK(remark.is == RemarkIs::noted);
    REQUIRE(remark.parts.size() >= 4);
    CHECK(std::count_if(remark.parts.begin(), remark.parts.end(), [](const RemarkPart& part) { return part.said == Said::name; }) == 1);
    CHECK(remark.parts.back().said == Said::origin);
    CHECK(read_remark("dark green, large", knowledge(), kale).is == RemarkIs::plain);
    CHECK(read_remark("Zorbex left on the radiator", knowledge(), kale).is == RemarkIs::asked);
}

TEST_CASE("a line is cut into clauses in one way") {
    const std::string line = "1,5 kg kale (young), dark green - from Quillo; cold";
    const auto clauses = cut_in_clauses(line);
    REQUIRE(clauses.size() == 5);
    CHECK(clauses[0].of(line) == "1,5 kg kale ");
    CHECK(clauses[1].in_bracket());
    CHECK(clauses[2].of(line) == "dark green ");
    std::vector<std::string> out;
    const auto rest = without_clauses(line, out, [](std::string_view said) { return said != "cold"; });
    CHECK(out == std::vector<std::string>{"young", "dark green", "from Quillo"});
    CHECK(rest.size() == line.size());
    CHECK(rest.find("; cold") != std::string::npos);
}

TEST_CASE("a deadly twin is named whatever else is said of the plant, and nobody is told to hide a fact") {
    const auto read = read_inventory("thyme 2 bunches\nlimes 4\nwild carrot tops 100 g, from the ditch\n", "f", knowledge());
    REQUIRE_FALSE(read);
    CHECK(read.error().message.find("hemlock") != std::string::npos);
    for (const auto& hazard : knowledge().records().lexicon.hazards) {
        INFO(hazard.id);
        for (const std::string hidden : {"put it in other words", "Name it without", "leave the word out", "leave the words out"})
            CHECK(hazard.reason.find(hidden) == std::string::npos);
    }
}

}  // namespace unknown_words_test
