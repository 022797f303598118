// A mixed mass as a problem for the search: nothing comes out of it, and how it was made stays as it was.
#pragma once

#include "adapt/distance/distance.hpp"
#include "adapt/moves/problem.hpp"
#include "knowledge/readers/mending.hpp"

namespace standin {

/// What does not go in, whatever it would do: what another word has too much of, or what is put right otherwise first.
struct Struck {
    std::vector<AromaNote> notes{};  ///< foods that bring one of these
    bool leaf = false;               ///< green and herbs: they go the way of those that are in
    bool binders = false;
    bool wet = false;  ///< nothing struck: its water is loose, and dry binder goes in without any more
};

/// Moves are lines of the formula raised, and foods that come in, where a goal asks for what they bring; the limits are those of any
/// problem. `distance` measures from the mass itself, and `start` is all there is in it.
Problem additions_to(const Formula& mass, const Material& start, const Stock& stock, const Distance& distance, const Mending& mending,
                     const Context& context, const Struck& struck = {});

struct SaltBeside {
    Line food;
    double grams = 0;
};

/// The salt that meat or fat brings along, so that its meat is salted as the mass is; nothing where salt is asked about by itself.
std::optional<SaltBeside> salt_for(const Material& food, const Formula& mass, const Distance& distance, const Context& context);

}  // namespace standin
