#include "spelling.hpp"

#include <algorithm>
#include <numeric>
#include <utility>

namespace standin::cli {
namespace {

// Letters to insert, delete or replace, row by row.
std::size_t distance(std::string_view a, std::string_view b) {
    std::vector<std::size_t> row(b.size() + 1);
    std::iota(row.begin(), row.end(), std::size_t{0});
    for (std::size_t i = 1; i <= a.size(); ++i) {
        std::size_t diagonal = std::exchange(row[0], i);
        for (std::size_t j = 1; j <= b.size(); ++j) {
            const std::size_t replace = diagonal + (a[i - 1] == b[j - 1] ? 0 : 1);
            diagonal = std::exchange(row[j], std::min({row[j] + 1, row[j - 1] + 1, replace}));
        }
    }
    return row.back();
}

}  // namespace

std::optional<std::string> nearest(std::string_view word, const std::vector<std::string>& known) {
    std::optional<std::string> best;
    std::size_t fewest = std::max<std::size_t>(2, word.size() / 3) + 1;
    for (const auto& candidate : known) {
        const bool begun = word.size() >= 3 && candidate.compare(0, word.size(), word) == 0;
        const std::size_t d = begun ? 1 : distance(word, candidate);
        if (d < fewest) {
            fewest = d;
            best = candidate;
        }
    }
    return best;
}

}  // namespace standin::cli
