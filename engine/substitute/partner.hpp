// What is weighed in beside a stand-in that cannot carry its line's dose alone: an acid source for sourness, a hot chile for heat.
#pragma once

#include <functional>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "knowledge/index/swap_graph.hpp"
#include "substitute/context.hpp"
#include "substitute/portion.hpp"

namespace standin {

struct PartnerFood {
    Line food;           ///< at its grams, as weighed
    Reason why;          ///< "brings the rest of the acid"
    bool named = false;  ///< by the swap: the two are one stand-in, in a fixed proportion
};

/// The partner that a swap names, for so many grams of the line.
std::optional<PartnerFood> partner_named(const Swap& swap, double line_grams);

class Partners {
public:
    Partners(const Formula& formula, std::size_t line, const Portions& portions, const Nominal& nominal,
             const std::function<bool(const Ingredient&)>& may_use);

    /// A concentrate of `role` for the `lacking` dose beside `beside`: the closest of the stand-ins in `paths` that brings it in little
    /// weight, what the formula has already before anything else. Nothing where so little is lacking that nobody would notice.
    std::optional<PartnerFood> bring(double lacking, Role role, const Line& beside, const std::vector<SwapPath>& paths);

private:
    double usual(const Ingredient& food, Role role);
    bool noticed(double lacking, Role role) const;
    bool in_formula(const Ingredient& food) const;

    const Formula& formula_;
    const Line& line_;
    const Portions& portions_;
    const Nominal& nominal_;
    const std::function<bool(const Ingredient&)>& may_use_;
    std::map<std::string, std::size_t> usual_;  // how often the swaps of a role name a food
    std::optional<Role> usual_in_;              // that role
};

}  // namespace standin
