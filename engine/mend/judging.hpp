// One way to mend a mass, judged: what was asked against what it comes to, and what is then still left.
#pragma once

#include <string>
#include <vector>

#include "adapt/distance/distance.hpp"
#include "mend/added.hpp"
#include "mend/mass.hpp"
#include "mend/plain.hpp"

namespace standin {

/// Whether the same is weighed in, and folded in.
bool is_same(const MendWay& one, const MendWay& other);

/// Whether a goal is about the sour of it.
bool of_acid(const Goal& goal);

class Judging {
public:
    /// The references must outlive it. `start` is the mass, mixed on for `work_min` where it was mixed too little.
    Judging(const Mass& mass, const Distance& distance, const Formula& start, const double& work_min)
        : mass_(mass), distance_(distance), start_(start), work_min_(work_min) {}

    /// Words of `step_only` are nearer by it and not right.
    MendWay way(const Mended& mended, const Plain* plain, double share, std::vector<std::string> step_only) const;

    /// Noticeable differences by which the goals are nearer than in the mass as made; none where one of them got worse.
    double progress_of(const MendWay& way) const;

    /// What the fat of a way spoils beside the word it was for: no word's cure makes a fault of another.
    std::optional<Property> harmed(const MendWay& way) const;

    /// What is asked in all, in noticeable differences.
    double all_asked() const;

    /// What was tasted of which the rules would still say that there is too much.
    std::vector<std::string> still_over(const Formula& formula, const Plain& plain) const;
    std::vector<std::string> still_short(const State& state, const Plain& plain) const;

    /// At the middle: who tastes it does not know of slack.
    bool short_of_target(const Goal& goal, const State& state) const;
    bool too_sour(const State& state) const;

    /// Foods that bring what is too much, and of which there is more than is good in a kilo; and what is over a limit that the page warns
    /// of.
    std::vector<StillOver> over_most(const Formula& formula, const Plain& plain) const;

private:
    const std::vector<Goal>& goals() const { return distance_.goals(); }
    const Knowledge& knowledge() const { return mass_.context.knowledge(); }
    double most_plain() const { return mass_.context.constant("mend.plain.most"); }
    std::optional<double> limit_passed(const Goal& goal) const;
    double grams_of(const Plain& plain, double share) const;
    void mind_colour(MendWay& way) const;
    void put_plain_for(MendWay& way, const Plain& plain, double share) const;
    std::optional<SaltLeft> salt_left(const MendWay& way, const Plain& plain) const;
    std::vector<std::string> new_animals(const Formula& mended) const;
    void put_rounds(MendWay& way, const Plain& plain, double share) const;
    void put_plain(MendWay& way, const Plain& plain, double share) const;

    const Mass& mass_;
    const Distance& distance_;
    const Formula& start_;
    const double& work_min_;
};

}  // namespace standin
