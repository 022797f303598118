// How far apart two blends smell, over the closed list of notes. Judgement throughout: good for ranking stand-ins, not for a panel.
//
//   kind     = 1/2 |a/|a| - b/|b||^2, the direction of the blends (0 same blend, 1 nothing in common), softened below the faint level
//   strength = ((A - B) / (A + B + faint))^2, A and B the total intensities
//   distance = w kind + (1 - w) strength, 0..1
//
// Intensities are 0-5 a gram of fresh form; amounts are taken per 100 g of batch, so a batch size does not matter.
#pragma once

#include <array>
#include <cstddef>
#include <span>

#include "models/material.hpp"
#include "models/parameters.hpp"

namespace standin {

struct AromaParameters {
    double kind_weight;    // w, 0-1
    double faint;          // intensity g/100 g that is hardly smelt
    double leading_share;  // of the strongest note, from which a note is named
};

std::span<const Binding<AromaParameters>> aroma_bindings();

double aroma_distance(const Material& a, const Material& b, const AromaParameters& parameters);

/// The leading notes, strongest first; none where the blend is faint.
struct LeadingNotes {
    std::array<AromaNote, 3> notes{};
    std::size_t count = 0;
};

LeadingNotes aroma_words(const Material& batch, const AromaParameters& parameters);

}  // namespace standin
