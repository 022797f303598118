// In what order a maker would try stand-ins for a line.
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "substitute/stand_ins.hpp"

namespace standin {

/// The least comes first. By closeness and by what is felt together: what is felt twice as much is not twice as far from being tried. The
/// trade's own swaps come forward, solid fat stands before what is melted or poured, and what any shop sells before what must be gathered
/// or ordered, unless the line itself had to be.
double standing_of(const Candidate& candidate, const Line& line, double felt, double new_allergens, const Knowledge& knowledge,
                   bool on_the_list = false);

/// Whether two stand-ins are nearly the same food, by their places.
using NearlySame = std::function<bool(std::size_t, std::size_t)>;

/// By the swaps between them: skimmed milk and whole, one neutral oil and the next, and one food with two partners.
NearlySame nearly_same(const std::vector<std::string>& foods, const Knowledge& knowledge);

/// Kinds of near twins, crumbs or egg products, that the stand-ins and the line are of.
struct Twins {
    std::vector<std::optional<std::size_t>> of;  ///< by their places
    std::optional<std::size_t> own;              ///< of the line
};

/// By the kinds `twins-...`.
Twins twins_of(const std::vector<std::string>& foods, const std::string& line, const Knowledge& knowledge);

/// The order in which to try them, as places in `standings`: the least first, but of one animal (`animals`; nothing: no meat) each further
/// cut stands back, so that other animals are seen beside the cuts of the line's own; and so does what is nearly the same as one before it,
/// and more so each further one of a kind of near twins.
std::vector<std::size_t> order_of(const std::vector<double>& standings, const std::vector<std::optional<Species>>& animals,
                                  std::optional<Species> own, const Knowledge& knowledge, const NearlySame& same = {},
                                  const Twins& twins = {});

}  // namespace standin
