#include "core/draws.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <numeric>

namespace standin {
namespace {

using Coefficients = std::array<double, 8>;

double rational(const Coefficients& above, const Coefficients& below, double r) {
    double n = 0, d = 0;
    for (std::size_t i = above.size(); i-- > 0;) {
        n = n * r + above[i];
        d = d * r + below[i];
    }
    return n / d;
}

// AS 241 PPND16, coefficients in rising powers.
constexpr Coefficients centre_above{3.3871328727963666080e0,  1.3314166789178437745e+2, 1.9715909503065514427e+3, 1.3731693765509461125e+4,
                                    4.5921953931549871457e+4, 6.7265770927008700853e+4, 3.3430575583588128105e+4, 2.5090809287301226727e+3};
constexpr Coefficients centre_below{1.0,
                                    4.2313330701600911252e+1,
                                    6.8718700749205790830e+2,
                                    5.3941960214247511077e+3,
                                    2.1213794301586595867e+4,
                                    3.9307895800092710610e+4,
                                    2.8729085735721942674e+4,
                                    5.2264952788528545610e+3};
constexpr Coefficients near_above{1.42343711074968357734e0,  4.63033784615654529590e0, 5.76949722146069140550e0,
                                  3.64784832476320460504e0,  1.27045825245236838258e0, 2.41780725177450611770e-1,
                                  2.27238449892691845833e-2, 7.74545014278341407640e-4};
constexpr Coefficients near_below{1.0,
                                  2.05319162663775882187e0,
                                  1.67638483018380384940e0,
                                  6.89767334985100004550e-1,
                                  1.48103976427480074590e-1,
                                  1.51986665636164571966e-2,
                                  5.47593808499534494600e-4,
                                  1.05075007164441684324e-9};
constexpr Coefficients far_above{6.65790464350110377720e0,  5.46378491116411436990e0,  1.78482653991729133580e0,
                                 2.96560571828504891230e-1, 2.65321895265761230930e-2, 1.24266094738807843860e-3,
                                 2.71155556874348757815e-5, 2.01033439929228813265e-7};
constexpr Coefficients far_below{1.0,
                                 5.99832206555887937690e-1,
                                 1.36929880922735805310e-1,
                                 1.48753612908506148525e-2,
                                 7.86869131145613259100e-4,
                                 1.84631831751005468180e-5,
                                 1.42151175831644588870e-7,
                                 2.04426310338993978564e-15};

// FNV-1a, so that a name's deviates are the same on every machine.
std::uint64_t hash_of(std::string_view name) {
    std::uint64_t h = 14695981039346656037ULL;
    for (const char c : name) h = (h ^ static_cast<unsigned char>(c)) * 1099511628211ULL;
    return h;
}

// SplitMix64 (Steele, Lea, Flood 2014, OOPSLA): small, quick to seed and the same on every machine, unlike the standard library's
// distributions. One is seeded for every name, so seeding counts.
class SplitMix {
public:
    explicit SplitMix(std::uint64_t seed) : state_(seed) {}
    std::size_t below(std::size_t bound) {
        state_ += 0x9E3779B97F4A7C15ULL;
        std::uint64_t z = state_;
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9ULL;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EBULL;
        return static_cast<std::size_t>((z ^ (z >> 31)) % bound);
    }

private:
    std::uint64_t state_;
};

}  // namespace

double normal_quantile(double p) {
    const double q = p - 0.5;
    if (std::abs(q) <= 0.425) return q * rational(centre_above, centre_below, 0.180625 - q * q);
    const double r = std::sqrt(-std::log(q < 0 ? p : 1 - p));
    const double x = r <= 5 ? rational(near_above, near_below, r - 1.6) : rational(far_above, far_below, r - 5);
    return q < 0 ? -x : x;
}

Draws::Draws(std::size_t count, std::uint64_t seed, std::string_view held, const Deviates& given)
    : Draws(Kind::sampled, count, seed, given) {
    if (held.empty()) return;
    auto& deviates = known_[std::string(held)];
    const double middle = deviates.empty() ? 0 : std::accumulate(deviates.begin(), deviates.end(), 0.0) / static_cast<double>(count);
    deviates.assign(count, middle);
}

Draws::Draws(Kind kind, std::size_t count, std::uint64_t seed, const Deviates& given)
    : count_(count), seed_(seed), kind_(kind), strata_(count), known_(given.begin(), given.end()) {
    for (std::size_t i = 0; i < count; ++i) strata_[i] = normal_quantile((static_cast<double>(i) + 0.5) / static_cast<double>(count));
}

Draws Draws::middle(const Deviates& given) { return Draws(Kind::middle, 1, 0, given); }

std::vector<std::string> Draws::names() const {
    std::vector<std::string> all;
    const std::scoped_lock lock(guard_);
    for (const auto& [name, deviates] : known_) all.push_back(name);
    std::sort(all.begin(), all.end());
    return all;
}

const std::vector<double>& Draws::of(std::string_view name) const {
    const std::scoped_lock lock(guard_);
    const auto [place, fresh] = known_.try_emplace(std::string(name));
    if (fresh) place->second = drawn(name);
    return place->second;
}

std::vector<double> Draws::drawn(std::string_view name) const {
    if (kind_ == Kind::middle) return std::vector<double>(count_, 0.0);
    std::vector<double> deviates = strata_;
    SplitMix random(hash_of(name) ^ (seed_ * 0x9E3779B97F4A7C15ULL));
    for (std::size_t i = count_; i > 1; --i) std::swap(deviates[i - 1], deviates[random.below(i)]);
    return deviates;
}

}  // namespace standin
