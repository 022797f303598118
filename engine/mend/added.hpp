// What is added to a mass: more of what no property stands for, and the fewest foods after which the draws have what was asked.
#pragma once

#include <optional>
#include <vector>

#include "adapt/distance/distance.hpp"
#include "adapt/moves/problem.hpp"
#include "mend/additions.hpp"
#include "mend/mass.hpp"
#include "standin/mend.hpp"

namespace standin {

/// A mended mass before it is judged.
struct Mended {
    Formula formula;
    std::vector<Ingoing> add;
};

bool is_of_same_foods(const Mended& one, const Mended& other);

/// Leaf and herb that are added, as a share of the mass.
double leaf_share(const Mended& mended, const Material& mass, const Knowledge& knowledge);

/// How far additions are to go.
struct Aim {
    double part = 1;             ///< of the way to what was asked
    bool nearest = false;        ///< where not all of it can be had
    std::vector<double> each{};  ///< of the way for each goal by itself; none: `part`
    bool own = false;            ///< more of what is in the formula, and nothing new
};

class Additions {
public:
    /// The references must outlive it. `distance` measures from the mass as it is, `total` is all there is in it.
    Additions(const Mass& mass, const Distance& distance, const Material& total) : mass_(mass), distance_(distance), total_(total) {}

    /// More of a role that no property stands for: the share of it in all there is, times what was asked.
    Mended with_more_of(const Formula& start) const;

    /// Additions to `start`, which may hold plain mass already: the same search as for a formula, from the mass as it stands. As few foods
    /// as will do it, what is in the mass already before what is not, the usual before the rare.
    std::vector<Mended> searched(const Mended& start, std::size_t top, const Aim& aim = {}) const;

    /// Additions that go the largest part of the way that any do; `own`: that the formula has.
    std::vector<Mended> nearest(const Mended& start, std::size_t top, bool own = false) const;

private:
    struct Candidate {
        Mended mended;
        std::pair<std::size_t, double> rank;
    };

    const std::vector<Goal>& goals() const { return distance_.goals(); }
    const Knowledge& knowledge() const { return mass_.context.knowledge(); }
    Struck struck() const;
    std::vector<Mended> nearest_for_each(const Mended& start, std::size_t top) const;
    void bring(Mended& mended, Line food, double grams, bool fresh) const;
    Mended weighed(const Problem& problem, const std::vector<double>& grams, const Mended& start) const;
    std::optional<std::vector<Goal>> tighter(const Formula& formula, std::vector<Goal> hard, const Aim& aim, double margin = 1.2) const;
    std::vector<Goal> asked_in(const Formula& formula, const State& state, const Aim& aim) const;
    std::vector<Goal> asked_of(const State& state, const Aim& aim) const;
    std::optional<Candidate> with_only(const Problem& problem, const std::vector<std::size_t>& chosen, const Mended& start,
                                       const Distance& distance, const Aim& aim) const;

    const Mass& mass_;
    const Distance& distance_;
    const Material& total_;
};

}  // namespace standin
