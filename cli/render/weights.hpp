// The weights of a variant beside those of the formula it was made from.
#pragma once

#include <string>
#include <vector>

#include "standin/advice.hpp"
#include "standin/engine.hpp"
#include "standin/quantity_text.hpp"

namespace standin::cli {

/// One food on the scale, whatever lines it serves.
struct WeightRow {
    struct Served {
        const PredictedLine* line;
        bool whole;  ///< nothing of that line is left, and nothing else stands for it
    };
    const PredictedLine* now = nullptr;     ///< null: left out, with nothing in its place
    const PredictedLine* before = nullptr;  ///< its own line; null: it came in
    std::vector<Served> instead_of{};       ///< the lines it stands for
};

/// In the formula's order, a stand-in at the first line it stands for.
std::vector<WeightRow> weight_rows(const Prediction& base, const Variant& variant);

/// "same", "was 60 g", "for 60 g dill and 25 g parsley", "was 40 g; also for part of 85 g parsley", "new".
std::string before_words(const WeightRow& row, Units units);

/// "chard (raw), then blanched and squeezed": how a line's weight is meant, where its preparation takes some of it or gives it more.
std::string as_weighed(const PredictedLine& line);
/// The same of a food by itself, weighed before its preparations.
std::string as_weighed(const std::string& name, const std::vector<std::string>& prepared);

/// "Or 80 g pumpkin seed, toasted (holds sesame).": what would do as well as what an edit brings; empty where nothing would.
std::string or_else(const Edit& edit, const Engine& engine, Units units);

/// As it stands in a formula, with the grams beside what is less than an ounce scale shows.
std::string page_weight(double grams, Units units);

/// What is weighed in. What the maker pours by a measure of volume is told to the gram: "99 g" for 100 ml.
std::string line_weight(const PredictedLine& line, Units units);

/// " (1/2 tsp)": the maker's own measure where it is no weight; empty where there is none, or the weight was moved.
std::string own_measure(const PredictedLine& line, Units units);

}  // namespace standin::cli
