// How far a line may go down or up by itself.
#pragma once

#include "adapt/distance/distance.hpp"
#include "adapt/moves/problem.hpp"

namespace standin {

/// Grams of a line that are not worth leaving: less than one pod, or a twelfth of it; of a pod that is tasted by itself in the whole batch
/// a part is worth weighing.
double remnant_of(const Line& line, double heat_mg_g, double batch_grams, const Knowledge& knowledge);

/// Share of the water that may go. Who asks for a juicier one is not told to take the water out of a mass that is not wet: something
/// holds it.
double most_water_out(const Line& line, const Distance& distance, double batch_grams);

/// Whether a leaf that is a herb too is there for its taste: dill by the handful is no wet paste. `share` of the batch.
bool handful_of_herb(const Ingredient& food, double share);

/// Of the maker's own vinegar or juice, as a share of the line: as much as makes up for the acid that sour fruit leaves short, before
/// another is opened.
double share_for_lost_acid(const Ingredient& food, const Material& unit, double grams, double lost_acid);

/// Flour, starch and egg: who wants it to hold is not told to take them out.
bool sets(const Ingredient& food);

/// Who wants it milder, or less sour, takes less of what stands in for a chile, or a vinegar, that is missing.
void take_less_where_less_is_asked(Problem& problem, const Distance& distance);

/// Black pepper for white: nearly the same thing, whose place it takes in full.
bool near_kin(const Move& move);

}  // namespace standin
