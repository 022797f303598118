// Words that can hurt are never passed over: they are refused with the reason, asked back, counted as an allergen, or told on every page.
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "knowledge/index/knowledge.hpp"
#include "standin/formula.hpp"
#include "standin/result.hpp"

namespace standin {

/// The refusal or question of a text that names a danger whatever food it stands beside: a curing salt, a poison, what is spoiled. The
/// error has no place yet.
std::optional<Error> danger_in(std::string_view text, const Knowledge& knowledge);

/// Whether all that is said against a text is that the plant is taken for another one that kills.
bool only_looks_alike(std::string_view text, const Knowledge& knowledge);

/// Likewise that it names what a kitchen has for its baking, which no mass takes and which hurts nobody on the shelf.
bool only_for_baking(std::string_view text, const Knowledge& knowledge);

/// Likewise that a word means different foods, none of which hurts.
bool only_asks_which(std::string_view text, const Knowledge& knowledge);

/// What is said against pulses that a list has raw or dry; nothing where the text says anything worse, or they are boiled.
std::optional<Error> raw_pulse_in(std::string_view text, const std::string& where, const Knowledge& knowledge);

/// Whether something stops a text, and all that does is asked about in words that `such` takes.
bool stopped_only_by(std::string_view text, const std::function<bool(const std::string&)>& such, const Knowledge& knowledge);

/// What stops a text, as something that is told and stops nothing. `about`: what it is said of.
Reason told_of_danger(std::string_view text, std::string about, const Knowledge& knowledge);

/// Likewise of a text beside the lines, where an animal may be anybody's name and a pan may smell.
std::optional<Error> danger_beside(std::string_view text, const Knowledge& knowledge);

/// A title is told of what would be refused in a line, but for a curing salt, which stops it too.
std::optional<Error> danger_in_title(std::string_view title, const Knowledge& knowledge);

/// The word of a danger that is part of a name in a title: "Foxglove Primary", "Hemlock Road". Empty where there is none, or where
/// another danger stands beside it.
std::string name_in_title(std::string_view title, const Knowledge& knowledge);

/// Likewise of a line that was read as a food: bitter almonds, green potatoes, raw pulses.
/// `on_the_shelf`: it is only said to be there, so what makes it safe may still be done.
std::optional<Error> danger_of_food(std::string_view text, const Line& line, const Knowledge& knowledge, bool on_the_shelf = false);

/// What a text beside the lines says of one of them, `written` so.
struct SaidOfLine {
    std::optional<Error> danger;
    std::vector<Reason> told;
};
/// `method`: it tells what is done to the food; only what stops a reading whatever is done counts.
SaidOfLine what_is_said_of(std::string_view said, std::string_view written, const Line& line, bool method, const Knowledge& knowledge);

/// What a line says in passing, against the food it was read as: another animal, another allergen. Allergens that it says it holds go
/// into `line.declared`. The error has no place yet.
std::optional<Error> other_food_in_passing(std::string_view passed, Line& line, const Knowledge& knowledge);

/// What is told on every page and stops nothing: "unpasteurised".
std::vector<Reason> told_hazards(std::string_view text, const Line& line, const Knowledge& knowledge);

std::vector<Reason> told_hazards(std::string_view text, const Knowledge& knowledge);

/// Of a title only what is told of who eats it: a medicine, a dog.
std::vector<Reason> told_of_eaters(std::string_view title, const Knowledge& knowledge);

/// Whether a reason warns of judging by eye when meat is done: of no weight where a core temperature is told.
bool tells_of_doneness(const Reason& told);

/// Whether a name that opens `text` only sounds like `food`: "butter beans" hold no butter.
bool sounds_only_so(std::string_view text, const Ingredient& food, const Knowledge& knowledge);

/// What the record `id` says, of words that figures and not its own patterns found.
std::optional<Reason> hazard_by_id(std::string_view id, std::string_view said, const Knowledge& knowledge);

/// Allergens that a text beside the lines says are in it: "may contain traces of peanut".
std::vector<Declared> declared_in(std::string_view text, const Knowledge& knowledge);

/// The allergens that a text names in any way, with the word that did.
std::vector<Declared> allergens_named(std::string_view text, const Knowledge& knowledge);

/// Of a food that is not known, ", which may hold almond" where its name tells so, for who would strike it out; empty where it does not.
std::string may_hold(std::string_view food, const Knowledge& knowledge);

/// The foods that a text names, by names of no more than `longest` words, in their order.
std::vector<const Ingredient*> foods_named(std::string_view text, std::size_t longest, const Knowledge& knowledge);

/// The meats that a text names.
std::vector<const Ingredient*> meats_named(std::string_view text, const Knowledge& knowledge);

}  // namespace standin
