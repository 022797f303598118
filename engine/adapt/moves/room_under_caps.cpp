#include "adapt/moves/room_under_caps.hpp"

#include <algorithm>
#include <set>

namespace standin {

std::optional<double> room_under_caps(const Problem& problem, std::size_t move) {
    std::optional<double> room;
    for (const auto& limit : problem.constraints) {
        if (!limit.is_cap || limit.per_gram[move] <= 0) continue;
        const double grams = std::max(0.0, limit.room) / limit.per_gram[move];
        room = std::min(room.value_or(grams), grams);
    }
    return room;
}

namespace {

// Missing lines that something comes in for under the cap that leaves the move least room: they share it.
std::size_t lines_under_its_cap(const Problem& problem, std::size_t move) {
    std::size_t most = 1;
    for (const auto& limit : problem.constraints) {
        if (!limit.is_cap || limit.per_gram[move] <= 0) continue;
        std::set<std::size_t> lines;
        for (std::size_t m = 0; m < problem.moves.size(); ++m)
            if (limit.per_gram[m] > 0 && problem.moves[m].kind == MoveKind::stand_in && problem.missing[problem.moves[m].line])
                lines.insert(problem.moves[m].line);
        most = std::max(most, lines.size());
    }
    return most;
}

}  // namespace

void take_as_far_as_caps_let(Problem& problem) {
    constexpr double clear = 0.97;  // of the room, so that kitchen weights keep it too
    constexpr double pinch = 0.1;   // of what is missing: less makes up for nothing; judgement
    for (std::size_t m = 0; m < problem.moves.size(); ++m) {
        Move& move = problem.moves[m];
        if (move.kind != MoveKind::stand_in || !problem.missing[move.line]) continue;
        const auto room = room_under_caps(problem, m);
        const double missing = missing_share(problem, move.line);
        if (!room) continue;
        const double part = clear * *room / static_cast<double>(lines_under_its_cap(problem, m));
        if (part * move.covers->per_gram >= pinch * missing) move.least = std::min(move.least, part);
    }
}

}  // namespace standin
