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

}  // namespace standin
