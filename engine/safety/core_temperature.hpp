// How hot the middle must get: the most demanding food in the mass decides.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "knowledge/index/knowledge.hpp"
#include "standin/prediction.hpp"

namespace standin {

struct CoreTemperature : CoreAsked {
    const CookRule* rule = nullptr;   ///< null only when the knowledge has no cooking rule at all
    std::vector<std::string> foods;   ///< names of those in the batch that the rule is for, where other meat asks for less
    std::vector<std::string> sets{};  ///< names of what sets only at `core_c`, where that is more than the rule asks
};

/// The core that a maker goes to, `celsius`, with the time that the rule asks there: none from where reaching it is enough.
CoreAsked asked_at(double celsius, const CoreTemperature& demanded);

/// Each species once, in the order of the lines.
std::vector<Species> species_of(const Prediction& prediction, const Knowledge& knowledge);

/// The general rules, and those of the rule set `rules` where they ask for more. Of a mass without meat: the highest of the general ones.
CoreTemperature demanded_core(const Prediction& prediction, const Knowledge& knowledge, std::string_view rules);

/// The core that a page asks for: what the rules demand, or what the maker writes where that is hotter. Where he writes none, hot enough
/// for the starch and egg in it to set.
CoreTemperature asked_core(const Prediction& prediction, const Process& process, const Knowledge& knowledge, std::string_view rules);
/// The same where the rules' demand is known.
CoreTemperature asked_core(CoreTemperature demanded, const Prediction& prediction, const Process& process, const Knowledge& knowledge);

/// The core that the meat of a formula needs, where its maker writes less; nothing where he has measured the whole course of the core.
std::optional<double> core_beyond_the_written(const Formula& formula, const Knowledge& knowledge, std::string_view rules);

/// "71.1 C (160 F)", or with the time it must be kept, where there is one: "68.3 C (155 F), kept for 17 seconds".
std::string shown_core(const CoreAsked& core);

}  // namespace standin
