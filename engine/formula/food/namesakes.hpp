// Names that two foods share, by the records of the lexicon, and fresh foods of which there is too little to be the fresh one.
#pragma once

#include <optional>
#include <string_view>

#include "formula/food/line_notes.hpp"
#include "formula/food/name_text.hpp"
#include "formula/lexer/quantity_text.hpp"
#include "knowledge/index/knowledge.hpp"
#include "standin/result.hpp"

namespace standin {

/// The question which of two foods is meant, one of them many times as strong as the other; nothing where the line tells. `in_each_kilo`:
/// the amount is of a kilo, and not of the batch.
std::optional<Error> two_foods_of_one_name(const NameRead& name, const AmountText& amount, bool in_each_kilo, const Knowledge& knowledge);

/// "Tomate verde (tomatillo)": the bracket tells which of two namesakes is meant.
void take_named_in_brackets(NameRead& name, LineNotes& notes, const Knowledge& knowledge);

/// Whether two foods share that name, however it is measured and whatever stands beside it: "su".
bool shared_by_two_foods(std::string_view name, const Knowledge& knowledge);

/// Whether an error is such a question: no other tongue answers it.
bool is_between_namesakes(const Error& error, const Knowledge& knowledge);

}  // namespace standin
