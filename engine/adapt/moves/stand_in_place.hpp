// How much of a stand-in the place of a line takes. A vegetable is replaced by about its own weight: what carries the dose in far less does
// not fill its place, and of what would take far more the rest of the dose is left to others.
#pragma once

#include "adapt/distance/asked_roles.hpp"
#include "adapt/moves/problem.hpp"
#include "substitute/portion.hpp"
#include "substitute/stand_ins.hpp"

namespace standin {

/// Looks at a problem that is being made: `base_mass` and `asked` are those of the time of asking.
class StandInPlace {
public:
    StandInPlace(const Problem& problem, const double& base_mass, const AskedRoles& asked, const Context& context)
        : problem_(problem), base_mass_(base_mass), asked_(asked), context_(context) {}

    /// Grams that take the place of the whole line, and the most of it.
    struct Weights {
        double whole, most;
    };
    Weights weights(std::size_t l, const Candidate& candidate) const;
    /// Less of it has no part in the line.
    double least(std::size_t l, const Candidate& candidate, double whole) const;
    /// Whether so little as `most` of it is worth while beside others, though it has no part in the bulk.
    bool little_will_do(std::size_t l, const Candidate& candidate, double most) const;
    /// Whether more of a line that is there would bring next to nothing of the heat that is missing: poblano for serrano.
    bool adds_nothing(std::size_t l, const Candidate& candidate, const Material& per_gram, double most) const;

    /// Whether the line gives the paste its bulk, so that what stands in for it has to.
    bool is_bulk(std::size_t l) const;
    /// Whether it takes the place of a vegetable as a vegetable does: one itself, or boiled beans that makers weigh for peas.
    bool is_filling(std::size_t l, const Candidate& candidate) const;
    /// Whether `most` grams of it can fill a fair part of the place of a vegetable.
    bool fills(std::size_t l, const Candidate& candidate, double most) const;
    /// The only stand-in of a vegetable, of the moves from `first` on, holds its bulk; so does each where none is short of it: two of which
    /// one would do are not halved.
    void hold_bulk(Problem& problem, std::size_t l, std::size_t first, bool only_one) const;

    /// Strong foods have a most of their own.
    double room_by_the_kilo(const Ingredient& food) const;

private:
    const std::vector<Line>& lines() const { return problem_.formula.lines; }
    const Ingredient& ingredient(const Line& line) const { return *context_.knowledge().ingredient(line.ingredient); }
    Role role_of_line(std::size_t l) const { return ingredient(lines()[l]).roles.front(); }
    double missing_of(std::size_t l) const { return lines()[l].grams.mid - problem_.start[l]; }
    double missing_as_picked(std::size_t l) const;
    double fairly_missing(std::size_t l) const;
    std::optional<double> alone(const Move& move) const;
    bool has_body(std::size_t l) const { return role_of_line(l) == Role::green || role_of_line(l) == Role::allium; }
    bool seasons_for(std::size_t l, const Candidate& candidate) const;
    bool is_dried_form(std::size_t l, const Line& food) const;
    bool by_the_pinch(const Candidate& candidate) const;
    bool fills_the_bowl(std::size_t l) const;
    bool by_weight(const Candidate& candidate) const;

    const Problem& problem_;
    const double& base_mass_;
    const AskedRoles& asked_;
    const Context& context_;
};

}  // namespace standin
