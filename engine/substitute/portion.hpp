// How much of a stand-in a maker would weigh: the grams of equal dose, held within bulk, strength and a kitchen's sense of proportion.
#pragma once

#include <optional>
#include <string>

#include "knowledge/index/swap_graph.hpp"
#include "substitute/context.hpp"

namespace standin {

struct WeighedOut {
    double grams = 0;            ///< for the whole line, as weighed
    double least = 0, most = 0;  ///< what would still be sensible for it
    double carries = 1;          ///< share of the line's dose in `grams`
    double felt = 1;             ///< the same where the line is over what a kilo takes of it, else 1
    double per_gram = 0;         ///< dose that a gram of it brings
    std::optional<double> even;  ///< grams that fill the line's place and bring less than its dose: right where a partner brings the rest
    double lacking = 0;          ///< dose that is left to a partner, in the unit of the role
    std::optional<Reason> bounded;  ///< why it is not the grams of equal dose; nothing: it is
    std::optional<Reason> why;      ///< set: no maker would weigh that much, in words
};

/// Weighs stand-ins for one line of a formula.
class Portions {
public:
    Portions(const Formula& formula, std::size_t line, const Nominal& nominal);

    /// Nothing where the dose of the role is missing at either end.
    std::optional<WeighedOut> of(const Line& food, const SwapPath& path, Role role) const;

    /// Whether `food` is a vegetable as it grows, not dried, pressed or made into a paste.
    bool vegetable(const Line& food) const;
    /// Dose of `role` that the whole line brings.
    double dose(Role role) const;
    double batch_grams() const { return batch_grams_; }
    /// One swap with its own ratio, and no chain.
    bool says_how_much(const SwapPath& path) const;

private:
    struct Bounds {
        double least = 0, most = 0, even = 0;
        Reason at_least, at_most;  // why
    };

    std::optional<WeighedOut> as_made_of(const Line& food, const SwapPath& path, Role role) const;
    double fair_share() const;
    std::optional<double> equal_grams(const Line& food, const SwapPath& path, Role role) const;
    std::optional<double> by_dose(double grams, const Line& from, const Line& to, Role role) const;
    double in_its_place(const Line& food) const;
    double by_solids(const Line& food) const;
    double by_flesh(const Line& food) const;
    bool burns(const Line& food, const SwapPath& path) const;
    bool heats(const Line& food, double grams, Role role) const;
    double heat_of_solids(const Line& food) const;
    bool pale() const;
    Bounds bounds(const Line& food, const SwapPath& path, Role role, double equal) const;
    void hold_fat(Bounds& b, const Line& food) const;
    Bounds as_a_dose(Bounds b, const Line& food, const SwapPath& path, Role role) const;
    Bounds within_limit(Bounds b, const Line& food, double line_share) const;
    bool printed(const SwapPath& path) const;
    bool a_pinch(const SwapPath& path) const;
    bool by_dose_alone(const SwapPath& path) const;
    bool bulky(const Line& food, Role role) const;
    bool moist(const Line& food) const;
    bool fruit_for_juice(const Line& food, Role role) const;
    bool flesh_chile(const Line& food) const;
    double solids(const Line& food) const;
    const Ingredient& ingredient(const Line& food) const;
    double constant(std::string_view id) const;

    const Formula& formula_;
    const Line line_;  // as picked
    const Nominal& nominal_;
    double batch_grams_ = 0;
};

/// Grams of a food that come to what a kilo of the batch takes of it, beside `rest` grams of others; infinite where it has no most.
double most_beside(double rest, const Ingredient& food);

/// A vegetable that the formula weighs when it is done, by what it weighs before that: what stands in for it is weighed so.
Line as_picked(Line line, const Nominal& nominal);

/// `food` with the preparations of `line` that fit it and those in `extra`, but for what it already went through.
Line prepared_like(const Line& line, const Ingredient& food, const std::vector<std::string>& extra, const Knowledge& knowledge);

/// The largest part of what is replaced that the last of the path may stand for. Fat of an animal whose meat is in the formula tastes of
/// nothing that is not there: it may stand for all of it.
double most_share(const SwapPath& path, const Formula& formula, const Knowledge& knowledge);

/// The preparations a swap asks of its stand-in, its conditions' included.
std::vector<std::string> preparations_of(const Swap& swap, const Knowledge& knowledge);

/// Whether one of these swaps only matches the dose, because nothing nearer is known.
bool is_rough(const std::vector<std::size_t>& swaps, const Knowledge& knowledge);

}  // namespace standin
