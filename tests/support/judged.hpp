// Lines with what they mean, written down before any program read them, and how many of them come out right.
#pragma once

#include <algorithm>
#include <map>
#include <string>
#include <vector>

#include "formula/food/prepared_text.hpp"
#include "formula/line/line_text.hpp"
#include "formula/words/changes_nothing.hpp"
#include "support/catch.hpp"
#include "support/knowledge.hpp"
#include "support/line_rows.hpp"

namespace judged {

struct Row {
    std::string kind, line, ingredient, prepared;
    double low = 0, high = 0;
};

inline std::vector<Row> rows(const std::string& file) {
    std::vector<Row> all;
    for (const auto& cells : line_rows(file)) {
        INFO(cells[1]);
        REQUIRE(cells.size() == 6);
        all.push_back({cells[0], cells[1], cells[2], cells[5], std::stod(cells[3]), std::stod(cells[4])});
    }
    return all;
}

/// How something is cut is not judged.
inline bool is_cut(const std::string& preparation) {
    return among(preparation, "sliced|chopped|minced|grated|crushed|ground|pureed|washed");
}

inline std::string prepared_of(const standin::Line& line, bool all) {
    std::string out;
    for (const auto& step : line.prepared)
        if (!is_cut(step.preparation) && (all || !changes_nothing(step, *knowledge().ingredient(line.ingredient), knowledge())))
            out += (out.empty() ? "" : " ") + step.preparation;
    return out;
}

inline double grams_of(const standin::ReadLine& read) { return read.share ? 1000 * read.share->fraction.mid : read.line.grams.mid; }

inline standin::Confidence confidence_of(const standin::ReadLine& read) {
    auto least = standin::Confidence::sure;
    for (const auto& doubt : read.doubts) least = std::max(least, doubt.confidence);
    return least;
}

/// Nothing when the line is read as it should be, else what came of it. `known_since`: foods that came to be known after the lines were
/// judged.
inline std::string miss(const Row& row, const standin::Result<standin::ReadLine>& read, const std::string& known_since = {}) {
    if (!read) return among("asked", row.ingredient) ? "" : "asked: " + read.error().message;
    if (!known_since.empty() && among(read->line.ingredient, known_since)) return "";
    const double grams = grams_of(*read);
    const bool right =
        among(read->line.ingredient, row.ingredient) && grams >= row.low && grams <= row.high &&
        (row.prepared.empty() || among(prepared_of(read->line, true), row.prepared) || among(prepared_of(read->line, false), row.prepared));
    return right ? "" : "read as " + read->line.ingredient + " " + std::to_string(grams) + " g " + prepared_of(read->line, true);
}

struct Count {
    double right = 0, all = 0;
    double share() const { return all > 0 ? right / all : 1; }
};

struct Score {
    Count total;
    std::map<std::string, Count> by_kind;
    std::map<standin::Confidence, Count> by_confidence;
    double silent = 0;   ///< wrong, and "sure"
    double beyond = 0;   ///< read where it was right to ask, or as something it is not
    std::string misses;  ///< a line each

    std::string told() {
        const auto of = [](const Count& count) {
            return std::to_string(static_cast<int>(count.right)) + " of " + std::to_string(static_cast<int>(count.all));
        };
        std::string out = of(total) + " right; sure " + of(by_confidence[standin::Confidence::sure]) + ", likely " +
                          of(by_confidence[standin::Confidence::likely]) + ", unsure " + of(by_confidence[standin::Confidence::unsure]) +
                          "; wrong in silence " + std::to_string(static_cast<int>(silent)) + ", read wrongly " +
                          std::to_string(static_cast<int>(beyond));
        for (const auto& [kind, count] : by_kind) out += "\n  " + kind + " " + of(count);
        return out + "\nmissed:" + misses;
    }
};

inline Score score(const std::vector<Row>& all, const std::map<std::string, std::string>& known_since = {}) {
    Score score;
    for (const auto& row : all) {
        const auto since = known_since.find(row.line);
        const auto read = standin::read_line(row.line, standin::Origin("", {1, 1}), knowledge());
        const std::string why = miss(row, read, since == known_since.end() ? std::string() : since->second);
        for (Count* count : {&score.total, &score.by_kind[row.kind]}) {
            ++count->all;
            count->right += why.empty();
        }
        if (read) {
            Count& count = score.by_confidence[confidence_of(*read)];
            ++count.all;
            count.right += why.empty();
            score.beyond += !why.empty();
            score.silent += !why.empty() && confidence_of(*read) == standin::Confidence::sure;
        }
        if (!why.empty()) score.misses += "\n  [" + row.kind + "] " + row.line + ": " + why;
    }
    return score;
}

}  // namespace judged
