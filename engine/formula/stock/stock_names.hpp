// Which foods a name in a list of what is on hand means: first the formula's own lines, then what is known.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "formula/lexer/trouble.hpp"
#include "knowledge/index/knowledge.hpp"
#include "standin/formula.hpp"

namespace standin {

struct StockNames {
    std::vector<std::string> ids;  ///< several where a word names several lines ("chiles"), or a kind
    std::optional<Reason> note;    ///< how it was taken, where that needs telling
    bool loose = false;            ///< by a word that is not the food's own name: what the list says of the food itself goes before it
    bool forms = false;            ///< the fresh and the dried form of one food
};

class StockNamer {
public:
    /// `formula` may be null: then only what is known counts.
    StockNamer(const Knowledge& knowledge, const Formula* formula) : knowledge_(knowledge), formula_(formula) {}

    /// `absent`: the list says that it is not there. A word that is no food is an error with its reason; names are offered only where
    /// the word may be a slip of the pen.
    Result<StockNames> named(std::string_view text, const Origin& origin, bool absent) const;

    /// "Zitronen 3": a line that was read as lemons means their juice and their zest. Nothing where it says which of them.
    std::optional<StockNames> whole_fruit(const Line& line, const Origin& origin) const;

    /// "no fresh thyme, only dried": the name of the dried one, which is there. Empty where `part` says no such thing.
    std::string other_form(std::string_view names, std::string_view part, bool on_hand) const;

    /// Whether `text` by itself is a food, a line of the formula or a kind of one.
    bool knows(std::string_view text) const;

    /// Whether a word of `text` is one of the names of a line of the formula.
    bool touches_formula(std::string_view text) const;

    bool in_formula(const std::string& id) const;

    const Knowledge& knowledge() const { return knowledge_; }

private:
    std::vector<std::string> lines_called(const std::string& folded) const;
    std::optional<std::string> line_by_wider_word(const std::string& folded, const Ingredient& read, bool absent) const;
    std::vector<std::string> lines_of_kind(std::string_view word) const;
    bool is_kin(const Ingredient& line, const Ingredient& read, std::string_view word) const;
    void add_kin(std::vector<std::string>& meant, const Ingredient* read, bool own, std::string_view word) const;
    std::optional<Reason> may_be_named(const std::string& folded, std::string_view text) const;
    StockNames fresh_of_kind(const std::string& folded) const;
    StockNames of_that_name(const std::string& folded, const Kind& kind) const;
    const std::string& name(const std::string& id) const { return knowledge_.ingredient(id)->names.front(); }

    const Knowledge& knowledge_;
    const Formula* formula_;
};

/// What "limón" is in a list: the words of the list tell, or else the formula, where it has the one and not the other.
std::optional<bool> limes_on_hand(std::string_view list, const Formula* formula, const Knowledge& knowledge);

}  // namespace standin
