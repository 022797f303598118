// The ways to mend one mass, by additions, by plain mass, by both.
#pragma once

#include "mend/measured.hpp"
#include "mend/plain.hpp"
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
    const std::vector<State>& states;  ///< of the mass, at every draw
};

struct Ways {
    std::vector<MendWay> all;
    std::vector<Reason> cannot;
};

Ways ways_to_mend(const Mass& mass);

}  // namespace standin
