// The ingredient lines of published formulas, against what a careful cook reads in them.
#include <map>

#include "formula/food/prepared_text.hpp"
#include "formula/line/line_text.hpp"
#include "formula/words/changes_nothing.hpp"
#include "support/catch.hpp"
#include "support/knowledge.hpp"
#include "support/line_rows.hpp"

using namespace standin;

namespace formula_lines_test {

constexpr double wanted = 0.97;  // share of the lines to be right

struct Row {
    std::string publication, line, ingredient, prepared;
    double low = 0, high = 0;

    bool asked() const { return ingredient == "asked"; }
};

std::vector<Row> rows() {
    std::vector<Row> all;
    for (const auto& cells : line_rows("published/data/formula_lines.csv")) {
        REQUIRE(cells.size() == 6);
        Row row{cells[0], cells[1], cells[2], cells[5]};
        if (!row.asked()) {
            row.low = std::stod(cells[3]);
            row.high = std::stod(cells[4]);
        }
        all.push_back(std::move(row));
    }
    return all;
}

std::string prepared_of(const Line& line) {
    std::string out;
    for (const auto& step : line.prepared)
        if (!changes_nothing(step, *knowledge().ingredient(line.ingredient), knowledge()))
            out += (out.empty() ? "" : " ") + step.preparation;
    return out;
}

// Nothing when the line is read as it should be, else what was read.
std::string miss(const Row& row) {
    const auto read = read_line(row.line, Origin("", {1, 1}), knowledge());
    if (!read) return row.asked() ? "" : "asked back: " + read.error().message;
    const double grams = read->share ? read->share->fraction.mid * grams_a_pound : read->line.grams.mid;
    const std::string as = read->line.ingredient + " " + std::to_string(grams) + " g " + prepared_of(read->line);
    const bool right = !row.asked() && among(read->line.ingredient, row.ingredient) && grams >= row.low && grams <= row.high &&
                       prepared_of(read->line) == row.prepared;
    return right ? "" : "read as " + as;
}

TEST_CASE("ingredient lines of published formulas") {
    struct Count {
        double right = 0, all = 0;
        double share() const { return right / all; }
    };
    Count total, weighed, asked;
    std::map<std::string, Count> by_publication;
    std::string misses;
    for (const auto& row : rows()) {
        const std::string why = miss(row);
        for (Count* count : {&total, row.asked() ? &asked : &weighed, &by_publication[row.publication]}) {
            ++count->all;
            count->right += why.empty();
        }
        if (!why.empty()) misses += "\n  " + row.publication + ": \"" + row.line + "\": " + why;
    }
    std::string publications;
    for (const auto& [name, count] : by_publication)
        publications +=
            "\n  " + name + " " + std::to_string(static_cast<int>(count.right)) + " of " + std::to_string(static_cast<int>(count.all));
    WARN("published lines read right: " << total.right << " of " << total.all << " (" << 100 * total.share() << " %); with a weight "
                                        << weighed.right << " of " << weighed.all << ", to be asked back " << asked.right << " of "
                                        << asked.all << publications << "\nmissed:" << misses);
    REQUIRE(total.all > 200);
    CHECK(total.share() >= wanted);
    CHECK(weighed.share() >= wanted);
}

}  // namespace formula_lines_test
