// The lines of a formula that a cause is about.
#pragma once

#include <optional>
#include <vector>

#include "evaluate/batch.hpp"
#include "knowledge/index/knowledge.hpp"
#include "knowledge/readers/mending.hpp"

namespace standin {

/// Whether a food brings `note` of itself.
bool brings_note(const Ingredient& food, AromaNote note);

/// Lines whose food brings `note` itself, and so much of it that it is tasted beside the others.
std::vector<std::size_t> lines_of_note(AromaNote note, const Formula& mass, const NominalBatch& batch, const Knowledge& knowledge);

/// Lines that went in with water that squeezing takes, enough of it to be felt.
std::vector<std::size_t> unsqueezed_lines(const Formula& mass, const NominalBatch& batch, const Knowledge& knowledge);

/// Lines of water, stock and the like, which no cell holds.
std::vector<std::size_t> poured_lines(const Formula& mass, const NominalBatch& batch, const Knowledge& knowledge);

/// Whether a food is there for that: parsley and cilantro are herbs, for all the green they bring.
bool counts_as(const Ingredient& food, Role role);

/// The lines that `cause` is about; nothing where it asks for some and there are none, or too little of them.
std::optional<std::vector<std::size_t>> lines_of(const CauseOfTaste& cause, const Formula& mass, const NominalBatch& batch,
                                                 const Knowledge& knowledge);

}  // namespace standin
