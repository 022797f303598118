// Preparations out of the words of a line: "blanched 3 min", "roasted and peeled", "finely chopped".
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "formula/lexer/line_words.hpp"
#include "formula/lexer/trouble.hpp"
#include "knowledge/index/knowledge.hpp"
#include "standin/formula.hpp"

namespace standin {

/// What the words around an ingredient's name said.
struct SaidOf {
    std::vector<Prepared> prepared;
    std::vector<std::string> words;        ///< folded, all that describe how it was cut, sized or packed
    std::vector<std::string> passed;       ///< as written, what was told in passing: "preferably Greek"
    std::vector<std::string> unknown{};    ///< words that nobody knows and that were passed over as harmless
    std::vector<std::string> part_only{};  ///< as written, of which part alone goes in: "green parts only"
    std::optional<double> fat_pct{};       ///< fat in 100 g that the words tell
    bool fat_told = false;                 ///< likewise, whether the record has as much or not
    const Ingredient* soaked_in{};         ///< a liquid that is no water, of no weight
};

/// What a line is read against.
struct LineContext {
    std::string_view line;
    const Origin& origin;
    const Knowledge& knowledge;
    bool lenient = false;              ///< a word that is not known may be passed over where it can do no harm
    bool adjective_behind = false;     ///< out of a tongue in which an adjective stands behind its noun
    bool nouns_have_capitals = false;  ///< out of German
    bool on_the_shelf = false;         ///< in a list of what is on hand
    bool certain = true;               ///< the food stands under its own name, and not under a word for several
};

/// What kind of amount the line gives: a bare number, a number of things ("2 bunches"), or a weight or volume.
enum class Given { number, things, weight };

/// Reads words [first, last) as preparations of `ingredient` and words that change nothing. With a unit "leaves" and "greens" may
/// stand beside a leaf, with a weight "cans" and "pieces" beside anything.
Result<SaidOf> read_prepared(const std::vector<Word>& words, std::size_t first, std::size_t last, const LineContext& context,
                             const Ingredient& ingredient, Given given);

/// Ends the word index of the preparation name that starts at `first`; equal to `first` when none does.
std::size_t preparation_end(const std::vector<Word>& words, std::size_t first, std::size_t last, const Knowledge& knowledge);

}  // namespace standin
