// Pungency: capsaicinoids in the mass as eaten, what fat leaves of the burn, and the chance of each heat word.
//
//   c = 1000 mg capsaicinoids / g mass * kept in cooking     mg/kg        SHU = 16.1 c
//   c_eff = (c + pepper and ginger as capsaicin) / (1 + beta F)           F fat share of the mass, beta how strongly fat damps
//   pods: the mean of n pods, each log-normal with sigma s, varies by     s_n = sqrt(ln(1 + (exp(s^2) - 1) / n))
//
// The heat words count mg of capsaicinoids per kg of finished sausage at 20-30 % fat. `scale_mg_kg` brings any batch to that footing:
// the mg/kg that would burn alike in a sausage of the reference fat. Weight lost in cooking is not counted: mg per kg of raw mass.
// Limits: the word scale is judgement; mustard and horseradish are another sense and never counted here.
// Sources: the 16.1 reproduces published tables of dried chiles (Int J Agron 2017, 5641680); thresholds in water and oil: Schneider,
// Seuss-Baum, Schlich 2014.
#pragma once

#include <array>
#include <span>
#include <string_view>

#include "models/material.hpp"
#include "models/parameters.hpp"

namespace standin {

inline constexpr std::array<std::string_view, 6> heat_words{"none", "barely", "mild", "medium", "hot", "very hot"};

struct HeatParameters {
    double shu_factor = 0;               // SHU per mg/kg
    double kept_cooking = 0;             // share of capsaicinoids
    double fat_damping = 0;              // beta
    double reference_fat = 0;            // share of fat at which the words are meant
    std::array<double, 5> boundaries{};  // mg/kg between one word and the next, rising
    double person_sd = 0;                // of ln boundary, one eater to the next
};

std::span<const Binding<HeatParameters>> heat_bindings();

struct BatchHeat {
    double heat_mg_kg = 0;       ///< capsaicinoids per kg of the mass, as eaten
    double heat_shu = 0;         ///< the same in Scoville heat units
    double effective_mg_kg = 0;  ///< as in water: with pepper and ginger, less what fat takes
    double scale_mg_kg = 0;      ///< equally hot mg/kg at the reference fat: what the heat words count
};

BatchHeat batch_heat(const Material& batch, const HeatParameters& p);

/// Chance of each of `heat_words`, given equally likely `draws` of scale_mg_kg. Every draw is weighed against boundaries that differ
/// from person to person, so the chances are smooth in the draws. They sum to 1; no draws at all means none.
std::array<double, 6> word_chances(std::span<const double> draws, const std::array<double, 5>& boundaries, double person_sd);

/// sd of ln of the mean of `pods` pods; a part of one pod counts as one.
double pod_sigma_of_blend(double pod_sigma, double pods);

}  // namespace standin
