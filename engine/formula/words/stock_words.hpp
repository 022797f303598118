// The words of a list of what is on hand that are no food: "plenty", "a jar of", "out of", "nothing else".
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "knowledge/index/knowledge.hpp"
#include "standin/result.hpp"

namespace standin {

/// What a line says beside the names in it.
enum class StockWord { some, none, nothing_else, everything_else, heading, weighed };

struct StockLine {
    StockWord says = StockWord::weighed;
    std::string_view names;  ///< the rest of the line; empty where it names nothing
};

/// "Nothing else", and "nothing" before "but salt": what is said behind it is the last of the list.
bool closes_list(std::string_view words, const Knowledge& knowledge);

/// `weighed`: the line says nothing of the kind; `names` is then all of it.
StockLine stock_line(std::string_view text, const Knowledge& knowledge);

/// Every way to read `text` as a loose amount and a name, the longest name first: "curry leaves 1 bunch" gives "curry leaves 1 bunch",
/// "curry leaves 1", "curry leaves". A part that is no amount is never dropped, and a weight (g, kg, oz, lb) never either.
std::vector<std::string_view> without_loose_amount(std::string_view text, const Knowledge& knowledge);

/// Names apart by commas, semicolons, "and", "or", "&" and "+", as views of `names`.
std::vector<std::string_view> parts_of_list(std::string_view names, const Knowledge& knowledge);

/// Blanks, dashes, colons and bullets off both ends.
std::string_view bare(std::string_view text);

/// "1 bag spinach (200 g)": the bracket tells what is there.
bool tells_weight(std::string_view line);

/// Whether grams, pounds or the like stand in it.
bool tells_mass(std::string_view text);

/// "- [ ] parsley"
bool is_unticked(std::string_view line);

/// "sunflower seeds?", "spinach if it has not bolted": what is to be asked; empty where the line leaves nothing open.
std::string leaves_open(std::string_view line, const Knowledge& knowledge);

/// "plus d'épinards" as "plus d épinards".
std::string with_apostrophes_apart(std::string_view line);

/// "kein Koriander", "pas de piments": another tongue's no.
bool says_no_abroad(std::string_view line, const Knowledge& knowledge);

/// "a few limes", "a little parsley": amounts to try before the name.
struct SmallAmount {
    std::string amount;
    std::string_view names;
};
std::vector<SmallAmount> small_amounts(std::string_view line, const Knowledge& knowledge);

/// "only dried" behind "fresh thyme": what may be there all the same, as "dried" and "dried thyme".
std::vector<std::string> form_left(std::string_view names, std::string_view part);

/// Whether an amount as written is weighed, and not counted or measured by volume.
bool is_weight(const std::string& written);

/// "sage from the bush", "coriander, 1 pot": the living plant, so its leaves and not the dried spice.
bool grows(std::string_view line, const Knowledge& knowledge);

/// More than it takes, and not just some of it.
bool is_plenty(std::string_view line, const Knowledge& knowledge);

/// Whether a name that the error offers is a slip away from words of `written`.
bool slip_of_the_pen(const Error& error, std::string_view written, const Knowledge& knowledge);

}  // namespace standin
