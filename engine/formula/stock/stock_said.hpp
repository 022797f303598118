// Whether the food of a list line is there, gone, or to be asked about, in the words of whichever tongue: "geen spinazie", "Spinat fehlt",
// "chives instead of spinach", "spinach x", "spinach zorb".
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "formula/lexer/trouble.hpp"
#include "formula/line/line_text.hpp"
#include "formula/stock/stock_names.hpp"
#include "formula/stock/stock_remarks.hpp"
#include "formula/words/stock_words.hpp"
#include "knowledge/index/knowledge.hpp"

namespace standin {

/// Whether each name of a text is a food or a kind of one.
using NamesFood = std::function<bool(std::string_view)>;

/// Names in words known here, without articles; nothing where they are none.
std::optional<std::string> known_names(std::string_view names, const NamesFood& names_food, const Knowledge& knowledge);

/// The names of what a line says is not there, in words known here; nothing where it says no such thing, or not of what.
std::optional<std::string> denied_in(std::string_view line, const NamesFood& names_food, const Knowledge& knowledge);

/// "Chives instead of spinach", "zamiast szpinaku szczypiorek": the spinach is not there.
struct InPlace {
    std::string some;  ///< a line of its own
    std::string none;  ///< names, in words known here
};
std::optional<InPlace> in_place_in(std::string_view line, const NamesFood& names_food, const Knowledge& knowledge);

/// "Chillies: jalapeño 8, poblano x4": what heads the items of one line and is no food by itself is left off, and goes with each that is
/// another food by itself: "mushrooms: chestnut 250 g".
std::string without_head(std::string_view line, const NamesFood& names_food, const IsItem& is_item, const Knowledge& knowledge);

/// The parts of a line of several foods, where what is said against raw or dry pulses is all said in parts of their own; else empty.
std::vector<std::string_view> parts_around_raw_pulse(std::string_view line, const Knowledge& knowledge);

/// A sign behind a name.
enum class Mark { none, there, gone, open };
struct Marked {
    Mark mark = Mark::none;
    std::string_view rest;  ///< the line without it
};
Marked mark_behind(std::string_view line);

/// What stands beside a food that is not weighed and may say that there is none of it, as it is written; empty where nothing does.
std::string may_say_none(std::string_view line, const IsItem& is_item, const Knowledge& knowledge);

/// What a line leaves open is asked with its own food in it.
Error asks_if_there(std::string_view line, std::string_view word, const std::string& where, const Knowledge& knowledge);

/// "dried sage only", "nur getrockneter Salbei" without the word; the line as it is where the rest names no food.
std::string without_only(std::string line, const NamesFood& names_food, const Knowledge& knowledge);

/// "chard 500 g, still in the freezer", "chicken thigh 1 kg, bone out": behind a weight and a comma such words say nothing of how much.
bool tells_where_it_is(std::string_view line, const StockLine& says, const Knowledge& knowledge);

/// One word that is a slip of the pen away from a food.
bool is_slip_of_a_name(std::string_view part, const StockNamer& namer, const Origin& origin);

/// "coriander 60 g" is the formula's coriander leaf where it has that and no seed: the line is read again with its name. Nothing where the
/// formula says no other than what was read.
std::optional<ReadLine> as_the_formula_says(const std::string& read, std::string_view text, const Origin& origin, const StockNamer& namer,
                                            const Knowledge& knowledge);

}  // namespace standin
