// The ingredient in the words of a line: the longest known name, and what stands before and after it.
#pragma once

#include "formula/food/prepared_text.hpp"
#include "formula/lexer/measures.hpp"

namespace standin {

struct NameRead {
    const Ingredient* ingredient = nullptr;
    SaidOf before, after;
    std::vector<std::string> words;      ///< of the name itself, folded
    std::string generic;                 ///< the trade word it was understood by, where that leaves the kind open; else empty
    std::string of_any_fat;              ///< the name of minced meat that is sold with more fat and with less; else empty
    bool said_fresh = false;             ///< "fresh" stands beside it, before or behind: "3 g sage, fresh"
    bool presumed = false;               ///< the form taken is the usual one of such a measure, not one that the words tell
    bool by_share = false;               ///< the dried form was taken, for there is too little of it in the batch to be the fresh one
    bool fresh_by_share = false;         ///< the fresh form was taken, for so much of the dried one nobody uses
    bool perhaps_fresh = false;          ///< likewise, though some use so much
    std::string other_form;              ///< the name of the fresh or dried form not taken, where the words leave that open
    const Unit* preserved_in = nullptr;  ///< the can or jar that the amount names, for a food that is otherwise fresh
    bool preserved_form = false;         ///< and that form of it is known, and taken
    bool is_unit_word = false;           ///< the name by itself counts things too: "cloves"
    const Unit* measure = nullptr;       ///< the counted thing beside or in the name: "4 garlic cloves", "3 bay leaves"
};

/// `kinds`: "parsley, dried" may name dried parsley; else what follows a comma is always done to what stands before it. `unit`: what
/// the amount counts, where it does; `container`: what it stands in.
Result<NameRead> read_name(const LineContext& context, Given given, bool kinds = true, const Unit* unit = nullptr,
                           const Unit* container = nullptr);

/// The words of the name itself, joined: "red pepper".
inline std::string own_name(const NameRead& name) {
    std::string own;
    for (const auto& word : name.words) own += (own.empty() ? "" : " ") + word;
    return own;
}

/// By name, else by id with blanks for hyphens.
const Ingredient* known_ingredient(std::string_view name, const Knowledge& knowledge);

}  // namespace standin
