// The choices of a fixed-charge problem: variables that cost a price once they are used at all, some of which exclude each other.
//
// A node of a search has decided some variables as in or out and leaves the rest open. What is said here is of the choices alone; what a
// node costs is for its relaxation to say (branch_and_bound.hpp).
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

namespace standin {

/// How a variable enters a solution: not at all; still open, at a price that grows with it; chosen, at its full price and with its least
/// value or more; or chosen and at its most.
enum class Choice : unsigned char { out, open, in, full };
using Choices = std::vector<Choice>;

struct FixedCharge {
    struct Variable {
        double most = 0;      ///< greatest value
        double price = 0;     ///< of using it, however little
        bool counted = true;  ///< among those that `most_chosen` limits
    };
    std::vector<Variable> variables;
    std::vector<std::vector<std::size_t>> exclusive;  ///< of each group one is used at most (special ordered sets of type 1)
    std::size_t most_chosen = 0;                      ///< 0: any number
};

class Branching {
public:
    explicit Branching(FixedCharge problem);

    std::size_t size() const { return problem_.variables.size(); }
    bool too_many(const Choices& choices) const;
    /// A chosen variable leaves no room for those that it excludes.
    void shut_excluded(Choices& choices, std::size_t chosen) const;
    /// An open variable that the relaxed solution uses: the one whose price is furthest from paid. Nothing where all are decided.
    std::optional<std::size_t> most_fractional(const Choices& choices, const std::vector<double>& values) const;
    bool is_unused(std::size_t variable, const std::vector<double>& values) const;
    std::optional<std::size_t> cheapest_open(const Choices& choices) const;
    /// The choices that a relaxed solution comes nearest to: open variables of which more than `used` of their most is used are in, all
    /// others out; of those that exclude each other the most used.
    Choices rounded(Choices choices, const std::vector<double>& values, double used) const;

private:
    double share(std::size_t variable, const std::vector<double>& values) const;

    FixedCharge problem_;
    std::vector<std::vector<std::size_t>> excluded_by_;  // one a variable
};

}  // namespace standin
