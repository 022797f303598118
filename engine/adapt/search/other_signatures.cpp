#include "adapt/search/other_signatures.hpp"

#include <algorithm>
#include <optional>

namespace standin {
namespace {

using Choices = std::vector<Choice>;

// Nothing where one of the moves to be shut is chosen.
template <class Shut>
std::optional<Choices> without(Choices choices, Shut shut) {
    for (std::size_t m = 0; m < choices.size(); ++m) {
        if (!shut(m)) continue;
        if (choices[m] == Choice::in || choices[m] == Choice::full) return std::nullopt;
        choices[m] = Choice::out;
    }
    return choices;
}

void append(std::vector<Choices>& parts, std::optional<Choices> part) {
    if (part) parts.push_back(std::move(*part));
}

std::vector<Choices> without_a_food(const Problem& problem, const Choices& choices, const Signature& signature) {
    std::vector<Choices> parts;
    for (const auto food : signature.foods) {
        const auto& equivalents = problem.moves[food].equivalents;
        const auto alike = [&](std::size_t m) {
            return m == food || (!signature.foods.count(m) && std::find(equivalents.begin(), equivalents.end(), m) != equivalents.end());
        };
        append(parts, without(choices, alike));
    }
    return parts;
}

// Where nothing is done one change or another is; where lines change, one food or another that comes in, or none and the lines do without
// one of the changes.
std::vector<Choices> beside_lines_alone(const Problem& problem, Choices rest, const Signature& signature) {
    std::vector<Choices> parts;
    for (std::size_t m = 0; m < rest.size(); ++m) {
        const Move& move = problem.moves[m];
        const bool tells = signature.empty() ? !move.trim : move.brings_food();
        if (!tells || !(move.most > 0) || rest[m] == Choice::out) continue;
        Choices with = rest;
        if (with[m] == Choice::open) with[m] = Choice::in;
        parts.push_back(std::move(with));
        if (rest[m] != Choice::open) return parts;
        rest[m] = Choice::out;
    }
    for (const auto& line : signature.lines) {
        const auto same = [&](std::size_t m) {
            const Move& move = problem.moves[m];
            return !move.trim && !move.brings_food() && std::make_pair(move.kind, move.role) == line;
        };
        append(parts, without(rest, same));
    }
    return parts;
}

}  // namespace

std::vector<Choices> parts_with_other_signatures(const Problem& problem, const Choices& choices, const Signature& signature) {
    return signature.foods.empty() ? beside_lines_alone(problem, choices, signature) : without_a_food(problem, choices, signature);
}

}  // namespace standin
