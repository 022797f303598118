// The scenarios of examples/ through the public face, as a maker would ask.
#pragma once

#include <algorithm>
#include <fstream>
#include <iterator>
#include <stdexcept>
#include <string>
#include <utility>

#include "standin/engine.hpp"
#include "support/places.hpp"

namespace scenario {

inline std::string text_of(const std::string& name) {
    const std::string path = examples_folder() + "/" + name;
    std::ifstream in(path, std::ios::binary);
    if (!in) throw std::runtime_error("no example " + path);
    return {std::istreambuf_iterator<char>(in), {}};
}

template <class T>
T expect(standin::Result<T> result) {
    if (!result) throw std::runtime_error(result.error().where + ": " + result.error().message);
    return std::move(*result);
}

struct Told {
    standin::Engine engine;
    standin::Formula formula;
    standin::AdaptAnswer answer;
};

/// `inventory` may be empty.
inline Told tell(const std::string& formula, const std::string& inventory, standin::AdaptRequest request) {
    auto engine = expect(standin::Engine::open({}));
    auto read = expect(engine.read_formula(text_of(formula), formula));
    if (!inventory.empty()) request.have = expect(engine.read_inventory(text_of(inventory), inventory));
    auto answer = expect(engine.adapt(read, request));
    return {std::move(engine), std::move(read), std::move(answer)};
}

inline const standin::Line* line_of(const standin::Formula& formula, const std::string& ingredient) {
    for (const auto& line : formula.lines)
        if (line.ingredient == ingredient) return &line;
    return nullptr;
}

/// Grams of the food, in all its lines.
inline double grams_in(const standin::Variant& variant, const std::string& ingredient) {
    double grams = 0;
    for (const auto& line : variant.formula.lines)
        if (line.ingredient == ingredient) grams += line.grams.mid;
    return grams;
}

inline bool has_edit(const standin::Variant& variant, standin::EditKind kind, const std::string& line = {}) {
    for (const auto& edit : variant.edits)
        if (edit.kind == kind && (line.empty() || edit.line == line)) return true;
    return false;
}

/// Over the knowledge as it is, opened once.
inline const standin::Engine& engine() {
    static const standin::Engine opened = expect(standin::Engine::open({}));
    return opened;
}

/// A formula and a list as text; an empty list is none.
inline standin::AdaptAnswer answer_to(const std::string& formula, const std::string& inventory, standin::AdaptRequest request = {}) {
    const auto read = expect(engine().read_formula(formula, "formula"));
    if (!inventory.empty()) request.have = expect(engine().read_inventory(inventory, "list", &read));
    return expect(engine().adapt(read, request));
}

/// The first variant of that answer; throws where there is none.
inline standin::Variant first_for(const std::string& formula, const std::string& inventory, standin::AdaptRequest request = {}) {
    const auto answer = answer_to(formula, inventory, std::move(request));
    if (answer.variants.empty()) throw std::runtime_error("no variant of " + formula);
    return answer.variants.front();
}

/// How many wants it tells of how near they can be come to.
inline std::size_t wants_reached(const standin::AdaptAnswer& answer) {
    return static_cast<std::size_t>(std::count_if(answer.reach.begin(), answer.reach.end(), [](const standin::Reason& told) {
        return told.kind == standin::ReasonKind::within_reach;
    }));
}

}  // namespace scenario
