// What a maker asks for, as targets: words with the steps of knowledge/wants.json, and conditions such as heat<=3.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "evaluate/models.hpp"
#include "standin/property.hpp"
#include "standin/result.hpp"

namespace standin {

/// One property of one want. A word's target moves with the base (so it can be judged draw by draw); a condition's does not.
struct Goal {
    std::string want;  ///< as written
    Property property = Property::bind;
    enum class Kind { at_least, at_most, equal } kind = Kind::at_least;
    bool condition = false;  ///< a hard limit, not a word
    double limit = 0;        ///< of a condition
    bool times = false;      ///< of a word: target = base * by, else base + by
    double by = 0;
    std::optional<double> least, most;  ///< of a word: where its target must lie, whatever the base

    double target(double base) const;
};

/// Whether something is asked for, and all of it in words: "firmer", and no number.
bool all_in_words(const std::vector<Goal>& goals);

/// What is told of the meat as it is told of the whole batch: salt, fat. Others are what they are.
Property of_batch(Property property);

/// Whether one of them asks the property to go that way, of the batch or of the meat.
bool any_asks(const std::vector<Goal>& goals, Property property, Goal::Kind kind);

/// Less fat, or more of it, of the batch or of the meat.
bool asks_leaner(const std::vector<Goal>& goals);
bool asks_richer(const std::vector<Goal>& goals);

/// More of what holds the mass together or of its bite.
bool asks_firmer(const std::vector<Goal>& goals);

/// Every want as goals, in order. usage error with the nearest word for what is not understood. Salt is meant as % of the meat, as pages
/// tell it, all else of the batch, unless the want says which: "salt<=1.5 % of batch".
Result<std::vector<Goal>> read_wants(const std::vector<std::string>& wants, const Knowledge& knowledge);

/// Without steps towards a value ("more fat, up to 12 %") where the base lies beyond it or something else is asked of the same property.
/// What is asked of the meat of a mass that has none is asked of the batch.
std::vector<Goal> without_what_is_there(const std::vector<Goal>& goals, const State& base);

/// Two wants that pull one property in opposite directions or leave no value for it: their words. Empty when there are none.
std::vector<std::string> contradiction(const std::vector<Goal>& goals, const State& base);

/// The goal as a hard limit, eased by `slack`, for a base whose property is `base`. A condition stays as it is.
Goal as_condition(const Goal& goal, double base, double slack);

/// How far `value` misses the goal, in the property's own unit; 0 when met.
double shortfall(const Goal& goal, double value, double base);

}  // namespace standin
