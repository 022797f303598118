// The swaps as a graph: who can be reached from whom in a role, along which path, how close.
#pragma once

#include <memory>
#include <optional>
#include <string_view>
#include <vector>

#include "knowledge/index/knowledge.hpp"

namespace standin {

/// A way of at most two swaps from an ingredient to its stand-in; closeness multiplies along it.
struct SwapPath {
    std::size_t to = 0;  ///< index of the stand-in in Records::ingredients
    double closeness = 0;
    std::vector<std::size_t> swaps;  ///< indexes in Records::swaps, in order
};

class SwapGraph {
public:
    explicit SwapGraph(const Knowledge& knowledge);
    SwapGraph(SwapGraph&&) noexcept;
    ~SwapGraph();

    /// The closest path to every stand-in of `ingredient` (index) in `role`, nearest first, ties by id. A stand-in that must be prepared
    /// in different ways counts once for each; the ingredient itself only where a swap says how to prepare it.
    std::vector<SwapPath> from(Role role, std::size_t ingredient) const;

    /// A rough match: `to` for `ingredient` as any food of the role for any other, where the knowledge has such a swap.
    std::optional<SwapPath> any(Role role, std::size_t ingredient, std::size_t to) const;

private:
    struct Inside;
    std::unique_ptr<Inside> inside_;
};

}  // namespace standin
