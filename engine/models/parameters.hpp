// How a model gets its constants from the knowledge: each model has a plain struct and a table that binds parameter ids to its fields.
#pragma once

#include <algorithm>
#include <array>
#include <cstddef>
#include <span>
#include <string_view>
#include <utility>
#include <vector>

#include "core/band.hpp"
#include "core/draws.hpp"
#include "knowledge/index/knowledge.hpp"

namespace standin {

template <class P>
struct Binding {
    std::string_view id;  // in knowledge/models/*.json
    double& (*field)(P&);
};

/// A part of a name, known when compiling.
template <std::size_t size>
struct Spelling {
    constexpr Spelling(const char (&text)[size]) { std::copy_n(text, size, letters); }
    constexpr std::string_view view() const { return {letters, size - 1}; }
    char letters[size] = {};
};

/// "cooking.kind.pork" and so on, spelled by the compiler from the list of species; `at` gives the field of each.
template <Spelling start, Spelling end, class P>
class BySpecies {
public:
    template <double& (*at)(P&, std::size_t)>
    static constexpr std::array<Binding<P>, count_of<Species>> bindings() {
        return all<at>(std::make_index_sequence<count_of<Species>>{});
    }

private:
    static constexpr std::size_t longest = 48;

    struct Id {
        std::array<char, longest> letters{};
        std::size_t length = 0;
    };
    static constexpr Id spell(std::size_t species) {
        Id id;
        for (const std::string_view part : {start.view(), Words<Species>::all[species], end.view()})
            for (const char letter : part) id.letters[id.length++] = letter;
        return id;
    }
    template <std::size_t species>
    static constexpr Id id = spell(species);

    template <double& (*at)(P&, std::size_t), std::size_t species>
    static double& field(P& p) {
        return at(p, species);
    }
    template <double& (*at)(P&, std::size_t), std::size_t... species>
    static constexpr std::array<Binding<P>, count_of<Species>> all(std::index_sequence<species...>) {
        return {Binding<P>{std::string_view(id<species>.letters.data(), id<species>.length), field<at, species>}...};
    }
};

template <class T, std::size_t... sizes>
constexpr std::array<T, (sizes + ...)> joined(const std::array<T, sizes>&... parts) {
    std::array<T, (sizes + ...)> all{};
    auto place = all.begin();
    ((place = std::copy(parts.begin(), parts.end(), place)), ...);
    return all;
}

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
