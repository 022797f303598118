// What a maker knows of a lot of food, in the words of a line: "pH 5.6", "6 % acidity", "60 grain", "300 mg/kg", "12,000 SHU",
// "hot this year". With a bracket behind it the figure has ends of its own: "pH 5.6 (5.4 to 5.9)".
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

#include "knowledge/index/knowledge.hpp"
#include "standin/band.hpp"

namespace standin {

enum class FactKind { ph, acid_pct, heat_mg_kg, heat_shu, heat_word };

/// How hot this year's pods are against what is usual of their kind.
enum class HeatWord { very_mild, mild, usual, hot, very_hot };

/// Of what a Scoville figure was taken: laboratories and seed lists mean the dried pod.
enum class HeatOf { unsaid, fresh, dried };

struct FactText {
    FactKind kind = FactKind::ph;
    Band value;           ///< in the unit of the kind; vinegar by the grain comes as %
    bool banded = false;  ///< a range was written
    bool bare = false;    ///< "6 %", "hot" by itself: means the fact only beside a food that has it
    HeatWord word = HeatWord::usual;
    HeatOf of = HeatOf::unsaid;
    std::size_t begin = 0, end = 0;  ///< in the line
};

/// The fact that starts at `at`, a word's start. `bare`: also where only the food can tell that it is one.
std::optional<FactText> fact_at(std::string_view line, std::size_t at, bool bare, const Knowledge& knowledge);

/// As it is written: "hot this year".
std::string_view words_of(HeatWord word);

}  // namespace standin
