// The words of a list of what is on hand that are no food: "plenty", "a jar of", "out of", "nothing else".
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "knowledge/knowledge.hpp"

namespace standin {

/// What a line says beside the names in it.
enum class StockWord { some, none, nothing_else, everything_else, heading, weighed };

struct StockLine {
    StockWord says = StockWord::weighed;
    std::string_view names;  ///< the rest of the line; empty where it names nothing
};

/// `weighed`: the line says nothing of the kind; `names` is then all of it.
StockLine stock_line(std::string_view text, const Knowledge& knowledge);

/// Every way to read `text` as a loose amount and a name, the longest name first: "curry leaves 1 bunch" gives "curry leaves 1 bunch",
/// "curry leaves 1", "curry leaves". A part that is no amount is never dropped, and a weight (g, kg, oz, lb) never either.
std::vector<std::string_view> without_loose_amount(std::string_view text, const Knowledge& knowledge);

/// Names apart by commas, semicolons, "and", "or", "&" and "+", as views of `names`.
std::vector<std::string_view> parts_of_list(std::string_view names);

/// Blanks, dashes, colons and bullets off both ends.
std::string_view bare(std::string_view text);

}  // namespace standin
