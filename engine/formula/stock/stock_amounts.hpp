// Amounts as lists of what is on hand tell them: "chives a bunch", "tin of chickpeas", "handful of basil left".
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "knowledge/index/knowledge.hpp"
#include "standin/reason.hpp"

namespace standin {

/// "2 sad bunches" as "2 bunches", "maybe 100 g" as "100 g", "most of a bottle" as "3/4 bottle".
std::string without_idle_words(std::string_view written, const Knowledge& knowledge);

/// The line with its amount first and plain signs: "chives a bunch" as "a bunch chives", "tin of chickpeas" as "1 tin of chickpeas".
std::string with_amount_first(std::string_view line, const Knowledge& knowledge);

/// "pork shoulder 3 kg with bone"; the words are no part of `with_amount_first`.
bool says_with_bone(std::string_view line, const Knowledge& knowledge);

struct SizedLine {
    std::string text;
    Reason told;
};

/// "1 bottle of cider vinegar" in grams, by what such a container usually holds; nothing where the line counts none.
std::optional<SizedLine> by_usual_size(std::string_view line, const Knowledge& knowledge);

/// "a few limes" are three, "a little parsley" is a handful or a spoonful, "mustard (half left)" half of a jar: far from as much as it
/// takes.
std::optional<SizedLine> in_small_amount(std::string_view line, const Knowledge& knowledge);

/// Whether a figure or a half of something stands in it.
bool tells_amount(std::string_view text, const Knowledge& knowledge);

/// What is told of a line whose amount weighs nothing here.
Reason amount_not_read(std::string_view text, std::string_view name);

/// "spinach (500 g)" says a weight; elsewhere a bracket is not needed. The text keeps its length.
std::string without_brackets(std::string_view text);

/// The text without a weight at its head or tail; empty where there is none.
std::string_view without_weight(std::string_view text);

/// "no fresh herbs except rosemary", "no mace but have nutmeg": what is not there, and what is.
struct Exception {
    std::string none;  ///< a line of its own, "no fresh herbs"
    std::string some;  ///< the names that are there
};
std::optional<Exception> exception_in(std::string_view line, const Knowledge& knowledge);

}  // namespace standin
