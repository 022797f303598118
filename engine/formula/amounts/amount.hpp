// From an amount to grams of an ingredient, by what the knowledge says a cup, a bunch or a piece of it weighs.
//
// Spread where the knowledge gives a measure without one (5th to 95th percentile, judgement throughout):
//   volumes of liquids +-2 %, of anything else +-10 % (how it is cut and packed), bunches, heads and handfuls +-15 %, single pieces +-15 %.
// Leaves said to be packed: half as much again, from a tenth more to twice; less where the measure is of cut leaves.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "formula/lexer/quantity_text.hpp"
#include "knowledge/records/records.hpp"
#include "standin/formula.hpp"
#include "standin/result.hpp"

namespace standin {

struct Weighed {
    Band grams;
    std::optional<double> count;  ///< where single things were counted
    bool packed = false;          ///< leaves pressed into their measure: heavier than the knowledge's loose ones, and less certain
};

/// `words`: what else the line says about the measure, folded ("chopped", "large"). The error says which measures there are.
Result<Weighed> weigh(const AmountText& amount, const Ingredient& ingredient, std::vector<std::string> words);

/// The measure of `ingredient` that a bare number counts: its piece, pod or ear, or its head where nothing smaller is counted.
const MeasureRecord* whole_measure(const Ingredient& ingredient);

/// "g, kg, oz, lb, clove and tsp": what it can be measured by.
std::string measures_of(const Ingredient& ingredient);

/// What is asked where a word that nobody knows stands between the number and the food.
Error unknown_measure(const std::string& word, const Ingredient& ingredient);

bool has_measure(const Ingredient& ingredient, std::string_view word);

/// Says in words what is wrong with a weight that nobody means: zero, negative, under 0.001 g, over 1000 kg. Empty when it is fine.
std::string absurd(const Band& grams);

}  // namespace standin
