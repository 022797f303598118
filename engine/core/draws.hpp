// Common random numbers. What is uncertain has a name ("spinach chlorophyll"); the same name gets the same deviates in every formula,
// so base and variant share them and the band of a difference is narrow.
#pragma once

#include <cstdint>
#include <map>
#include <mutex>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

namespace standin {

/// The standard normal deviate below which a share `p` of (0,1) lies. Wichura 1988, Applied Statistics 37:477, AS 241 (PPND16).
double normal_quantile(double p);

/// Deviates that are known beforehand, by what they are of: a measurement has moved and narrowed them.
using Deviates = std::map<std::string, std::vector<double>, std::less<>>;

class Draws {
public:
    /// `count` draws from `seed`; each name's deviates are a Latin hypercube sample of the standard normal, or those of `given`. What is
    /// called `held` is taken as known: its deviates are all at their middle. Empty: nothing is.
    Draws(std::size_t count, std::uint64_t seed, std::string_view held = {}, const Deviates& given = {});

    /// One draw with every deviate at zero, the middle of every band, or at what `given` has.
    static Draws middle(const Deviates& given = {});

    std::size_t count() const { return count_; }

    /// The deviates of what is called `name`, one a draw. The reference stays valid as long as this object lives. Any number of threads
    /// may ask at once.
    const std::vector<double>& of(std::string_view name) const;

    /// What has been asked for so far, in the order of the alphabet.
    std::vector<std::string> names() const;

private:
    enum class Kind { sampled, middle };
    Draws(Kind kind, std::size_t count, std::uint64_t seed, const Deviates& given);
    std::vector<double> drawn(std::string_view name) const;

    std::size_t count_;
    std::uint64_t seed_;
    Kind kind_;
    std::vector<double> strata_;  // the sample in rising order, the same for every name
    mutable std::mutex guard_;    // of what follows
    mutable std::unordered_map<std::string, std::vector<double>> known_;
};

}  // namespace standin
