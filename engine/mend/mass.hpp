// One mass that is to be mended.
#pragma once

#include "knowledge/readers/mending.hpp"
#include "mend/measured.hpp"
#include "mend/tastes.hpp"
#include "substitute/stock.hpp"

namespace standin {

/// What stays the same while ways are looked for. The references must outlive the ways.
struct Mass {
    const Formula& formula;
    const std::vector<Meant>& tastes;
    const MassAsMade& made;
    const Mending& mending;
    const Stock& stock;
    const Context& context;
    const MendRequest& request;
    const Prediction& base;
    const std::vector<State>& states;          ///< of the mass, at every draw
    bool plain_first = false;                  ///< plain mass comes before additions
    std::vector<std::string> plain_without{};  ///< ids of foods that it is then without, whatever else they do
    bool set = false;                          ///< acid has set it, and mixing on does not bind it any more
    bool unsalted = false;                     ///< mixed without salt, which dissolved nothing: it is salted and mixed before all else
    bool only_fresh = false;                   ///< what is added to it goes the same way: only fresh mass beside it is a step
    bool wet = false;                          ///< its water is loose: what takes it up goes in without more
};

/// Whether a goal asks for less of something: only plain mass brings that.
bool thins(const Goal& goal);

/// Whether a word asks for less of something, by a goal or by what it says.
bool asks_less(const Meant& meant);

}  // namespace standin
