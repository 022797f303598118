#include "adapt/other_ideas.hpp"

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

std::vector<Choices> without_a_food(const Problem& problem, const Choices& choices, const Idea& idea) {
    std::vector<Choices> parts;
    for (const auto food : idea.foods) {
        const auto& kin = problem.moves[food].kin;
        const auto alike = [&](std::size_t m) {
            return m == food || (!idea.foods.count(m) && std::find(kin.begin(), kin.end(), m) != kin.end());
        };
        append(parts, without(choices, alike));
    }
    return parts;
}

// Where nothing is done one change or another is; where lines change, one food or another that comes in, or none and the lines do without
// one of the changes.
std::vector<Choices> beside_lines_alone(const Problem& problem, Choices rest, const Idea& idea) {
    std::vector<Choices> parts;
    for (std::size_t m = 0; m < rest.size(); ++m) {
        const Move& move = problem.moves[m];
        const bool tells = idea.empty() ? !move.trim : move.brings_food();
        if (!tells || !(move.most > 0) || rest[m] == Choice::out) continue;
        Choices with = rest;
        if (with[m] == Choice::open) with[m] = Choice::in;
        parts.push_back(std::move(with));
        if (rest[m] != Choice::open) return parts;
        rest[m] = Choice::out;
    }
    for (const auto& line : idea.lines) {
        const auto same = [&](std::size_t m) {
            const Move& move = problem.moves[m];
            return !move.trim && !move.brings_food() && std::make_pair(move.kind, move.role) == line;
        };
        append(parts, without(rest, same));
    }
    return parts;
}

}  // namespace

std::vector<Choices> parts_with_other_ideas(const Problem& problem, const Choices& choices, const Idea& idea) {
    return idea.foods.empty() ? beside_lines_alone(problem, choices, idea) : without_a_food(problem, choices, idea);
}

}  // namespace standin
