// Each kind of reason in words, by what is spoken of; reason_words.cpp tells which is which.
#pragma once

#include <string>
#include <string_view>

#include "standin/reason.hpp"

namespace standin {

/// The figure of this name; nothing where the reason has none.
const Figure* figure(const Reason& reason, std::string_view what);

std::string caution_words(const Reason& reason, Units units);

/// Where a model is stretched, or why something has no figure.
std::string limit_words(const Reason& reason, Units units);

std::string kills_words(const Reason& reason, Units units);
std::string keeps_green_words(const Reason& reason, Units units);

/// What binds only once it is cold.
std::string sets_cold_words(const Reason& reason);

std::string table_words(const Reason& reason);

/// What a bench sheet settled.
std::string settled_words(const Reason& reason, Units units);

/// What decides how much is taken, or stands against it.
std::string amount_words(const Reason& reason, Units units);

/// What the wants came to, what stands in their way and what would help.
std::string advice_words(const Reason& reason, Units units);

/// "heat 12.0 -> 5.6 mg/kg, asked for 6.0 or less"
std::string want_in_brief(const Reason& reason);

/// What was taken for granted of what is on hand, and how the batch was scaled.
std::string stock_words(const Reason& reason, Units units);

/// What a reader took upon itself of a formula, and of a list of what is on hand.
std::string reading_words(const Reason& reason, Units units);
std::string list_words(const Reason& reason, Units units);

/// What is minded in a step of a sheet beside its task.
std::string beside_step_words(const Reason& reason, Units units);

/// Of what a title promises, of a casing, of a legal limit.
std::string promise_words(const Reason& reason, Units units);

/// What is not known well, or worth measuring.
std::string unknown_words(const Reason& reason);

/// How large a sheet is, what is named on its label, why a stand-in is left out and why another is not.
std::string beside_words(const Reason& reason);

}  // namespace standin
