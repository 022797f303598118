// What text and HTML pages say alike.
#pragma once

#include <string>
#include <vector>

#include "standin/engine.hpp"

namespace standin::cli {

/// What it will be, in two sentences.
std::string in_short(const Prediction& prediction);

/// "As it is, Hedgerow green is a crumbly mass, ..."
std::string base_in_short(const Prediction& base);
std::string answer_first(const AdaptAnswer& answer);

/// What comes before the variants: how the batch was scaled, what each word of --without took in.
std::vector<std::string> asked_as_understood(const AdaptAnswer& answer, const Engine& engine);
/// What was taken for granted, with the line to add to the list where that is wrong.
std::vector<std::string> presumed_in_words(const AdaptAnswer& answer);

/// "replace 320 g spinach with 260 g chard, blanched 2 min".
std::string in_words(const Edit& edit, const Engine& engine);

/// "260 g (210-330 g)".
std::string grams_with_band(const StandIn& stand_in);
std::string in_short(const SwapsAnswer& answer, const std::string& title);

/// A, B, ... for formulas side by side.
std::string letter(std::size_t i);
/// One line a caution, with the formulas it is said of unless it is said of all.
std::vector<CautionText> shared_cautions(const std::vector<Prediction>& all);

}  // namespace standin::cli
