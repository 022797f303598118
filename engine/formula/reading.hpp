// From words to formulas and inventories, and back. Plain lines, JSON, schema.org data and saved pages are told apart by content.
#pragma once

#include <string>
#include <string_view>

#include "knowledge/index/knowledge.hpp"
#include "standin/formula.hpp"
#include "standin/reading.hpp"
#include "standin/result.hpp"

namespace standin {

/// `file` names the text in messages. Every name must be known and every amount resolvable to grams; nothing is guessed.
Result<Formula> read_formula(std::string_view text, std::string_view file, const Knowledge& knowledge);

/// Line by line what was understood and what not. Fails only where there is no text, no recipe or no JSON to begin with.
Result<FormulaReading> read_closely(std::string_view text, std::string_view file, const Knowledge& knowledge);

/// `formula`, where there is one, is what a word of the list is first looked for in.
Result<Inventory> read_inventory(std::string_view text, std::string_view file, const Knowledge& knowledge,
                                 const Formula* formula = nullptr);

/// Whether a text is a list of what is on hand and no formula, by what it says and not by whether it can be read.
bool looks_like_stock(std::string_view text, std::string_view file, const Knowledge& knowledge);

/// Formula JSON of knowledge/schema/formula.schema.json, amounts in grams.
std::string formula_json(const Formula& formula, const Knowledge& knowledge);

/// A schema.org Recipe as JSON-LD, its lines as formula_text writes them.
std::string formula_jsonld(const Formula& formula, const Knowledge& knowledge);

/// Plain lines that read_formula reads back to the same formula.
std::string formula_text(const Formula& formula, const Knowledge& knowledge, Amounts amounts = Amounts::as_written);

}  // namespace standin
