// What the goals of a request let the advisor touch, by roles.
#pragma once

#include <functional>
#include <map>
#include <set>

#include "adapt/distance/distance.hpp"
#include "adapt/goals/levers.hpp"

namespace standin {

struct AskedRoles {
    std::set<Role> change, replace, add;  ///< whose lines move, whose give way to others, of what more may come in
    std::set<Role> by_goal;               ///< those that a goal moves, not a missing line
    std::set<Role> direct;                ///< those of which a goal is, not of the whole mass
    std::set<Role> up, down;              ///< the ways in which they go
    std::map<Role, double> lift;          ///< how many times the base's dose a goal may take
    bool only_listed_fat = false;         ///< fat that comes in beside the formula's own is on the list
    bool dry_binder_stays = false;        ///< flour holds the water that makes a paste wet

    void open(const Change& change, Goal::Kind kind);
};

using HasRole = std::function<bool(Role)>;

/// How far a goal may move what the batch is made of: as far as a maker would, or as far as it goes at all, to tell what can be reached.
enum class Leeway { usual, all };

/// `has_line`: some line has the role; `has_main_line`: some line that may move has it first.
AskedRoles roles_asked_for(const Distance& distance, const HasRole& has_line, const HasRole& has_main_line, Leeway leeway);

/// Whether who wants it looser finds more salt in it than most put in: then some of that goes.
bool salt_goes_for_looser(const Distance& distance);

/// Grams of a food that would bring what a goal for more of `role` still asks for, with slack; no bound where the role has no unit a
/// property counts in.
double enough_for_goals(const Distance& distance, double base_mass, const Material& per_gram, Role role);

/// The same as a share of the `grams` that a line has already; 0 where no goal lifts its role.
double share_for_goals(const AskedRoles& asked, const Distance& distance, double base_mass, const Material& per_gram, double grams,
                       double dose_slack, Role role);

}  // namespace standin
