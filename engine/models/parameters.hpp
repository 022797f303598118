// How a model gets its constants from the knowledge: each model has a plain struct and a table that binds parameter ids to its fields.
#pragma once

#include <span>
#include <string_view>
#include <vector>

#include "core/band.hpp"
#include "core/draws.hpp"
#include "knowledge/knowledge.hpp"

namespace standin {

template <class P>
struct Binding {
    std::string_view id;  // in knowledge/models/*.json
    double& (*field)(P&);
};

/// One P a draw; the deviates are named by the parameter id. Every id must exist (the knowledge check makes sure of it).
template <class P>
std::vector<P> draw_parameters(const Knowledge& knowledge, std::span<const Binding<P>> bindings, const Draws& draws) {
    std::vector<P> all(draws.count());
    for (const auto& binding : bindings) {
        const Band& band = knowledge.parameter(binding.id);
        if (band.low == band.high) {
            for (auto& one : all) binding.field(one) = band.mid;
            continue;
        }
        const Spread spread(band);
        const auto& deviates = draws.of(binding.id);
        for (std::size_t i = 0; i < all.size(); ++i) binding.field(all[i]) = spread.at(deviates[i]);
    }
    return all;
}

}  // namespace standin
