// Raw leaf of which nobody says how it is cut: a little beside a mass is chopped, much of it is blended with the rest of the paste.
#pragma once

#include "knowledge/index/knowledge.hpp"
#include "standin/formula.hpp"

namespace standin {

/// 0-1: how far such leaf goes in as a paste, by the share of what a paste is made of in the formula. A variant keeps that of the formula
/// it was made from: nobody cuts his herbs otherwise for a little more meat.
double leaf_paste_of(const Formula& formula, const Knowledge& knowledge);

}  // namespace standin
