// The process in words: "plate: 10 mm", "mixing: 2 min", "mixed at: 2 C", "rest: 36 h", "core: 160 F", "order: salt first".
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "knowledge/index/knowledge.hpp"
#include "standin/process.hpp"
#include "standin/result.hpp"

namespace standin {

/// The keys, in the order a batch is made.
const std::vector<std::string_view>& process_keys();

/// Sets what `key` names from `value`; of a range the middle counts. The error has no place yet.
std::optional<Error> set_process(Process& process, std::string_view key, std::string_view value);

/// The same in the words of a kitchen too, by the lists of the lexicon: "cook: air fryer", "order: acid last", "mixing: none".
std::optional<Error> set_process(Process& process, std::string_view key, std::string_view value, const Knowledge& knowledge);

/// Whether such a word says it, which the page then tells as it was written.
bool is_kitchen_word(std::string_view key, std::string_view value, const Knowledge& knowledge);

/// What is known, as key and value; set_process reads it back. Keys with the value they have when unsaid are left out.
std::vector<std::pair<std::string_view, std::string>> process_words(const Process& process);

/// Shortest decimal form with at most seven places.
std::string plain_number(double value);

}  // namespace standin
