// What is said of a food in passing - behind a comma, in brackets, before or behind its name - cut into parts, and what becomes of it.
// Lines of a formula and of a list are judged alike.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "knowledge/index/knowledge.hpp"
#include "standin/formula.hpp"
#include "standin/reason.hpp"
#include "standin/result.hpp"

namespace standin {

/// What a remark stands behind: nothing where that is not known.
struct SaidOfFood {
    const Ingredient* food = nullptr;
    std::string_view written{};  ///< the whole line
};

/// Of what sort a run of words in a remark is.
enum class Said {
    plain,   ///< size, colour, quality, cut, packing, when it was got; of what keeps for months how old it is
    origin,  ///< the name of a shop, a place or a person behind "from"
    figure,  ///< a number, with its unit or without
    food,    ///< another food's name
    name,    ///< a word that nobody knows and that can be no more than a name
    unclear  ///< any other word: it may tell of the food's state or of what is in it
};

struct RemarkPart {
    Said said;
    std::string words;
};

enum class RemarkIs {
    plain,  ///< nothing in it matters
    noted,  ///< it holds a mere name: told, and the line is unsure
    asked   ///< it may tell of something that matters
};

struct Remark {
    std::vector<RemarkPart> parts;
    RemarkIs is = RemarkIs::asked;
};

/// In the words as written, or out of the tongue in which it says least that matters.
Remark read_remark(std::string_view said, const Knowledge& knowledge, const SaidOfFood& of = {});

/// Whether it says nothing that matters.
bool is_plain_remark(std::string_view said, const Knowledge& knowledge, const SaidOfFood& of = {});

/// Of what a reader passed over, the first that is to be asked about; empty: there is none.
std::string remark_not_plain(const std::vector<Reason>& notes, const Knowledge& knowledge, const SaidOfFood& of = {});

/// In a line of a formula: a word on shopping or on what to do ("preferably", "plus more") is plain there, and so is what is told
/// elsewhere.
RemarkIs remark_in_formula(std::string_view said, const Knowledge& knowledge, const SaidOfFood& of);

/// Likewise the first that is to be asked about.
std::string remark_to_ask(const std::vector<Reason>& notes, const Knowledge& knowledge, const SaidOfFood& of = {});

/// What is asked of a remark that is not plain.
Error remark_unknown(std::string_view said, std::string_view food, std::string where);

/// The food of that name, or the one meant by it; null: there is none.
const Ingredient* food_in_remark(const std::string& name, const Knowledge& knowledge);

/// Whether it is made of words that say nothing that matters, whatever the food.
bool is_plain_phrase(const std::string& folded, const Knowledge& knowledge);

}  // namespace standin
