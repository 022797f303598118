// Headings of a list of what is on hand: where what follows is kept, or that there is none of it.
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "formula/lexer/text_lines.hpp"
#include "knowledge/index/knowledge.hpp"
#include "standin/result.hpp"

namespace standin {

enum class StockSection { there, none, aged, unclear };  // aged: it is there since days ago

struct StockHeading {
    StockSection says = StockSection::there;
    std::string_view rest{};  ///< behind the colon: the foods that it is said of; empty where they stand below
};

/// "Fridge:", "Don't have:", "Da comprare: limoni", "Left from last week"; nothing where the line heads nothing.
std::optional<StockHeading> stock_heading(std::string_view line, const Knowledge& knowledge);

/// "Fridge and pantry", "Saturday market stall" above the first food.
bool is_list_title(std::string_view line, const Knowledge& knowledge);

/// Likewise of the first line, where it may name a day, guests or a farm too: "Grandad turns 90 on Sunday", "Sorrel Farm".
bool is_first_title(std::string_view line, const std::function<bool(std::string_view)>& is_food, const Knowledge& knowledge);

/// Whether line `i` is such a title, or "Meat on hand": a kind of food and where it is, with the
/// foods below it. `is_food`: whether a part of a line is one.
bool heads_others(const std::vector<TextLine>& lines, std::size_t i, const std::function<bool(std::string_view)>& is_food,
                  const Knowledge& knowledge);

/// Whether all that is said against a line is that what it heads is there since last week.
bool only_tells_age(std::string_view line, const Knowledge& knowledge);

/// Whether a food keeps that long by its nature, or shows whoever cleans it that it did not: no meat, milk, egg, mushroom, nothing cooked.
bool outlasts_a_week(const Ingredient& food, const Knowledge& knowledge);

Error heading_not_understood(std::string_view heading, const std::string& where);
Error below_none(std::string_view line, const std::string& where);

/// "No zorbles", in whatever tongue.
Error not_there_but_what(std::string_view line, const std::string& where);

/// What the headings above a line say of it. A heading goes to the next one, or to the blank line behind what stands below it.
class StockSections {
public:
    StockSections(const std::vector<TextLine>& comments, const Knowledge& knowledge) : comments_(comments), knowledge_(knowledge) {}

    /// To be asked of every line, in order; `heading`: the line is one itself.
    StockSection at(const TextLine& line, const std::optional<StockHeading>& heading);

private:
    void take(StockSection says, bool of_a_kind);
    void take_comments(std::size_t before);

    const std::vector<TextLine>& comments_;
    const Knowledge& knowledge_;
    std::size_t next_comment_ = 0, last_line_ = 0;
    StockSection now_ = StockSection::there;
    bool used_ = false;
};

/// What a line says there is none of, without what its brackets tell of why: "dill" of "no dill (slugs got it)". Empty where it says no
/// such thing.
std::string gone_in(std::string_view line, const Knowledge& knowledge);

/// "no lemons" of "lemons 2" below such a heading; empty where the line says that there are some.
std::string said_missing(std::string_view line, const Knowledge& knowledge);

}  // namespace standin
