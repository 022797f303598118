// When a goal counts as met, and how likely: judged on the draws, by the share of them that meets it.
#pragma once

#include "adapt/distance/distance.hpp"
#include "standin/advice.hpp"

namespace standin {

/// How far from its target a goal still counts as met, in the property's unit: words a little, conditions not at all but for the last
/// shown figure.
double allowed(const Goal& goal, const Distance& distance);

/// How far a step takes a batch in the direction of the goal, in noticeable differences; of a value to be hit, how far it moves at all.
double nearer_by(const Goal& goal, const Distance& distance, const State& before, const State& after);

/// By how much the goal is missed at the draw that decides: `sure` of all draws miss it by no more. Not positive: it is met.
double missed_by(const Goal& goal, const Distance& distance, const std::vector<State>& base, const std::vector<State>& variant,
                 double sure);

/// `before` and `after` are what is shown of the goal's property; the states are those of base and variant at the same draws.
WantResult judged(const Goal& goal, const Distance& distance, double before, const Band& after, const std::vector<State>& base,
                  const std::vector<State>& variant, double sure);

/// Of wants by different words that are met each by itself: tells with the last of them in how many of the draws all are.
void tell_all_together(std::vector<WantResult>& wants, const std::vector<Goal>& goals, const Distance& distance,
                       const std::vector<State>& base, const std::vector<State>& variant);

/// How far a want is from being met as it is shown, in noticeable differences; and of all of a variant the squares, each times `weight`.
double still_missed(const WantResult& want);
double still_missed(const Variant& variant);
double missed_square(const Variant& variant, double weight);

bool meets_all(const Variant& variant);

/// Whether a want is left clearly further off than the original has it.
bool goes_away_from(const WantResult& want);

/// Whether it brings what was asked nearer than the original is, by more than nobody would notice, and takes nothing that was asked away
/// from it but for a want that it meets by that.
bool brings_nearer(const Variant& variant);

}  // namespace standin
