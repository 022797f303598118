#include "models/aroma.hpp"

#include <algorithm>
#include <cmath>

namespace standin {
namespace {

using P = AromaParameters;
using Notes = std::array<double, count_of<AromaNote>>;

constexpr std::array<Binding<P>, 3> bindings{{
    {"aroma.kind-weight", [](P& p) -> double& { return p.kind_weight; }},
    {"aroma.faint", [](P& p) -> double& { return p.faint; }},
    {"aroma.leading", [](P& p) -> double& { return p.leading_share; }},
}};

Notes notes_of(const Material& batch) {
    Notes notes{};
    const double mass = batch[Amount::mass];
    if (mass <= 0) return notes;
    for (std::size_t i = 0; i < notes.size(); ++i) notes[i] = 100 * batch[static_cast<AromaNote>(i)] / mass;
    return notes;
}

double total(const Notes& notes) {
    double sum = 0;
    for (double note : notes) sum += note;
    return sum;
}

/// Length one for a blend that is plainly smelt, fading to nothing with it.
Notes direction(Notes notes, double faint) {
    double square = faint * faint;
    for (double note : notes) square += note * note;
    const double length = std::sqrt(square);
    if (length > 0)
        for (double& note : notes) note /= length;
    return notes;
}

double kind_distance(const Notes& a, const Notes& b, double faint) {
    const Notes u = direction(a, faint), v = direction(b, faint);
    double square = 0;
    for (std::size_t i = 0; i < u.size(); ++i) square += (u[i] - v[i]) * (u[i] - v[i]);
    return square / 2;
}

double strength_distance(double a, double b, double faint) {
    const double sum = a + b + faint;
    return sum > 0 ? (a - b) * (a - b) / (sum * sum) : 0;
}

}  // namespace

std::span<const Binding<AromaParameters>> aroma_bindings() { return bindings; }

double aroma_distance(const Material& a, const Material& b, const AromaParameters& p) {
    const Notes first = notes_of(a), second = notes_of(b);
    const double weight = std::clamp(p.kind_weight, 0.0, 1.0);
    return weight * kind_distance(first, second, p.faint) + (1 - weight) * strength_distance(total(first), total(second), p.faint);
}

LeadingNotes aroma_words(const Material& batch, const AromaParameters& p) {
    Notes notes = notes_of(batch);
    LeadingNotes leading;
    const double strongest = *std::max_element(notes.begin(), notes.end());
    const double least = std::max(p.faint, p.leading_share * strongest);
    while (leading.count < leading.notes.size()) {
        const auto next = std::max_element(notes.begin(), notes.end());
        if (*next <= 0 || *next < least) break;
        leading.notes[leading.count++] = static_cast<AromaNote>(next - notes.begin());
        *next = 0;
    }
    return leading;
}

}  // namespace standin
