// Lines as people write them, each against what a careful cook reads in it. The reader was mended on these: they guard, they do not
// measure.
#include "formula/line/line_text.hpp"
#include "support/catch.hpp"
#include "support/knowledge.hpp"
#include "support/line_rows.hpp"

using namespace standin;

TEST_CASE("invented lines stay read as they should be") {
    const auto rows = line_rows("unit/invented_lines.csv");
    REQUIRE(rows.size() > 400);
    std::size_t missed = 0;
    std::string misses;
    for (const auto& row : rows) {
        REQUIRE(row.size() == 4);
        const auto read = read_line(row[0], Origin("", {1, 1}), knowledge());
        const std::string as = read ? read->line.ingredient : "asked";
        bool right = among(as, row[1]);
        if (right && read && !row[2].empty())
            right = read->line.grams.mid >= std::stod(row[2]) && read->line.grams.mid <= std::stod(row[3]);
        if (right) continue;
        ++missed;
        misses += "\n  " + row[0] + ": " + as + (read ? " " + std::to_string(read->line.grams.mid) : ": " + read.error().message);
    }
    WARN(missed << " of " << rows.size() << " invented lines missed" << misses);
    CHECK(missed <= 1);  // "70 g/kg ice (of meat)": the share is told in two places
}
