// What a practised maker would take for a missing line: proposed, among the first, and at about the weight a maker would weigh.
#include "published/proposed.hpp"
#include "published/rows.hpp"
#include "support/catch.hpp"

using namespace standin;

namespace maker_questions_test {

constexpr std::size_t line_column = 1, stand_in_column = 2, word_columns = 3;
constexpr std::size_t first = 12;
constexpr double factor = 1.5;  // how far a weight may lie from the one written down

struct Met {
    bool proposed = false, shown = false, weighed = false;
};

Met met(const std::string& line, const std::string& stand_in, double grams, double weighed) {
    Met met;
    std::vector<std::string> seen;
    for (const auto& s : proposed(line, grams)) {
        if (std::find(seen.begin(), seen.end(), s.ingredient) == seen.end()) seen.push_back(s.ingredient);
        if (s.ingredient != stand_in) continue;
        const double off = s.grams / (weighed * (1 - s.line_left / grams));
        met.proposed = true;
        met.shown = met.shown || seen.size() <= first;
        met.weighed = met.weighed || (off <= factor && off >= 1 / factor);
    }
    return met;
}

struct Share {
    double proposed, shown, weighed;
};

// Every pair of a table, the shares that must be met, and in words what is missed.
void ask(const char* what, const char* table, const Share& least) {
    double rows = 0, is_proposed = 0, shown = 0, weighed = 0;
    std::string misses;
    for (const auto& row : published_rows(table, word_columns)) {
        const std::string &line = row.words[line_column], &stand_in = row.words[stand_in_column];
        CAPTURE(line, stand_in);
        const Met m = met(line, stand_in, row.values[0], row.values[1]);
        ++rows;
        is_proposed += m.proposed;
        shown += m.shown;
        weighed += m.weighed;
        if (!m.shown || !m.weighed)
            misses += "\n  " + line + " -> " + stand_in +
                      (!m.proposed ? ": not proposed"
                                   : std::string(m.shown ? "" : ": not among the first") + (m.weighed ? "" : ": another weight"));
    }
    WARN(what << ": of " << rows << " pairs " << is_proposed << " proposed, " << shown << " among the first " << first << ", " << weighed
              << " at about the weight" << misses);
    CHECK(is_proposed >= least.proposed * rows);
    CHECK(shown >= least.shown * rows);
    CHECK(weighed >= least.weighed * rows);
}

TEST_CASE("a practised maker's questions: proposed, among the first, and at a maker's weight") {
    ask("maker's questions", "maker_questions.csv", {0.97, 0.94, 0.9});
}

TEST_CASE("a second list of a maker's questions: proposed, among the first, and at a maker's weight") {
    ask("second list", "second_questions.csv", {0.97, 0.9, 0.9});
}

}  // namespace maker_questions_test
