#include "adapt/moves/exclusive.hpp"

#include <algorithm>
#include <map>
#include <set>

namespace standin {
namespace {

using Group = std::vector<std::size_t>;

// Stand-ins for missing herbs, by the food that comes in; of those that swaps name, for a rough match is no choice.
std::map<std::string, Group> of_missing_herbs(const Problem& problem, const Knowledge& knowledge) {
    std::map<std::string, Group> moves;
    for (std::size_t m = 0; m < problem.moves.size(); ++m) {
        const Move& move = problem.moves[m];
        if (move.kind != MoveKind::stand_in || !problem.missing[move.line] || move.into) continue;
        const bool herb = knowledge.ingredient(problem.formula.lines[move.line].ingredient)->family == "herbs";
        if (herb && !move.stands_for.empty() && !move.stands_for.front().swaps.empty()) moves[move.food.ingredient].push_back(m);
    }
    return moves;
}

// Whether some other herb could stand in for one of these lines.
bool another_is_there(const std::string& food, const Group& group, const std::map<std::string, Group>& of_herbs, const Problem& problem) {
    return std::any_of(of_herbs.begin(), of_herbs.end(), [&](const auto& other) {
        return other.first != food && std::any_of(other.second.begin(), other.second.end(), [&](std::size_t m) {
                   return std::any_of(group.begin(), group.end(),
                                      [&](std::size_t one) { return problem.moves[one].line == problem.moves[m].line; });
               });
    });
}

// Ginger for galangal, and no ginger beside lemon zest for lemongrass where the zest will do: of two lines that are missing the one with
// another stand-in leaves the food to the other.
class OneTaste {
public:
    OneTaste(const Problem& problem, const Knowledge& knowledge) : problem_(problem), moves_(problem.moves), knowledge_(knowledge) {}

    std::vector<Group> groups() const {
        std::vector<Group> all;
        for (std::size_t pair = 0; pair < moves_.size(); ++pair) {
            if (!comes_in(pair) || !moves_[pair].second) continue;
            for (std::size_t alone = 0; alone < moves_.size(); ++alone)
                if (comes_in(alone) && !moves_[alone].second && moves_[alone].line != moves_[pair].line &&
                    moves_[pair].brings(moves_[alone].food.ingredient) > 0 && has_another(moves_[pair].line, moves_[alone].food.ingredient))
                    all.push_back({pair, alone});
        }
        return all;
    }

private:
    bool comes_in(std::size_t m) const {
        const Move& move = moves_[m];
        return move.kind == MoveKind::stand_in && !move.into && !move.stands_for.empty() &&
               is_missing_seasoning(problem_, move.line, knowledge_);
    }

    bool has_another(std::size_t line, const std::string& food) const {
        constexpr double half = 0.5, near = 0.4;  // of the line; closeness; judgement
        const double missing = missing_share(problem_, line);
        for (std::size_t m = 0; m < moves_.size(); ++m)
            if (comes_in(m) && moves_[m].line == line && !(moves_[m].brings(food) > 0) && moves_[m].stands_for.front().closeness >= near &&
                moves_[m].most * moves_[m].covers->per_gram >= half * missing)
                return true;
        return false;
    }

    const Problem& problem_;
    const std::vector<Move>& moves_;
    const Knowledge& knowledge_;
};

}  // namespace

std::vector<Group> exclusive_groups(const Problem& problem, const Knowledge& knowledge) {
    std::map<Role, Group> added;
    std::map<std::size_t, Group> of_line;                       // the line goes down, goes up
    std::map<std::pair<std::string, std::size_t>, Group> food;  // one food that comes in for a line, in its forms
    std::map<std::string, Group> beside;                        // the same food that comes in by itself
    std::map<std::size_t, Group> by_choice;                     // foods for a line that is there: who takes another takes one
    for (std::size_t m = 0; m < problem.moves.size(); ++m) {
        const Move& move = problem.moves[m];
        switch (move.kind) {
            case MoveKind::add:
                added[move.role].push_back(m);
                beside[move.food.ingredient].push_back(m);
                break;
            case MoveKind::stand_in:
                food[{move.food.ingredient, move.line}].push_back(m);
                if (move.second) food[{move.second->food.ingredient, move.line}].push_back(m);
                if (!problem.missing[move.line]) by_choice[move.line].push_back(m);
                break;
            case MoveKind::raise:
                // More of the maker's own binder, or another: not both.
                if (move.role == Role::binder) added[move.role].push_back(m);
                [[fallthrough]];
            case MoveKind::reduce:
                of_line[move.line].push_back(m);
                break;
        }
    }
    std::set<Group> groups;
    const auto keep = [&](Group group) {
        std::sort(group.begin(), group.end());
        if (group.size() > 1) groups.insert(std::move(group));
    };
    for (const auto& [role, group] : added) keep(group);
    // Nobody takes out the leaf that is there and puts another beside it.
    for (std::size_t m = 0; m < problem.moves.size() && added.count(Role::green); ++m) {
        Group leaf = added[Role::green];
        leaf.push_back(m);
        if (problem.moves[m].kind == MoveKind::reduce && problem.moves[m].role == Role::green) keep(std::move(leaf));
    }
    for (const auto& [line, group] : of_line) keep(group);
    for (const auto& [line, group] : by_choice) keep(group);
    for (auto& [key, group] : food) {
        // Garlic beside spinach and garlic beside chives for wild garlic: each leaf brings its own.
        const auto leads = [&, &name = key.first](std::size_t m) { return problem.moves[m].food.ingredient == name; };
        if (std::none_of(group.begin(), group.end(), leads)) continue;
        // More lemon juice beside green tomato is no second stand-in where lemon juice takes the place of lime as well.
        if (const auto more = beside.find(key.first); more != beside.end())
            for (const auto m : more->second)
                if (problem.moves[m].partner_of.value_or(key.second) == key.second) group.push_back(m);
        keep(group);
    }
    const auto of_herbs = of_missing_herbs(problem, knowledge);
    for (const auto& [herb, group] : of_herbs)
        if (another_is_there(herb, group, of_herbs, problem)) keep(group);
    for (auto& group : OneTaste(problem, knowledge).groups()) keep(std::move(group));
    return {groups.begin(), groups.end()};
}

bool keeps_exclusions(const Problem& problem, const std::vector<std::size_t>& used) {
    return std::all_of(problem.exclusive.begin(), problem.exclusive.end(), [&](const Group& group) {
        const auto in = [&](std::size_t m) { return std::find(group.begin(), group.end(), m) != group.end(); };
        return std::count_if(used.begin(), used.end(), in) <= 1;
    });
}

}  // namespace standin
