// The facts of the lot that a line tells: its pH, its strength, its heat. Each becomes a narrow band of its own on the line.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "formula/amounts/fact_text.hpp"
#include "knowledge/index/knowledge.hpp"
#include "standin/formula.hpp"
#include "standin/result.hpp"

namespace standin {

/// Takes the facts out of `line`, which keeps its length.
std::vector<FactText> take_facts(std::string& line, bool bare, const Knowledge& knowledge);

/// Whether a line holds what is a fact beside the right food only: "6 %", "hot".
bool has_bare_fact(std::string_view line, const Knowledge& knowledge);

/// Puts `facts` on `line`, a line of `ingredient`, and what had to be presumed to its notes; or says what is wrong.
std::optional<Error> set_facts(const std::vector<FactText>& facts, const Ingredient& ingredient, const Knowledge& knowledge, Line& line);

/// Says of meat that is taken with its skin where the words leave that open, for the skin decides the fat; and of a cut that the knowledge
/// has only the whole animal for it.
void tell_of_part(const Ingredient& ingredient, std::string_view written, const Knowledge& knowledge, Line& line);

/// The same facts for a line of text: ", pH 5.6, 6 % acidity".
std::string facts_text(const Line& line, const Ingredient& ingredient, const Knowledge& knowledge);

/// Whether two lines tell the same.
bool same_facts(const Line& a, const Line& b);

}  // namespace standin
