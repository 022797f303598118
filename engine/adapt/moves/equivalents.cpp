#include "adapt/moves/equivalents.hpp"

#include <algorithm>
#include <map>
#include <set>
#include <string>
#include <vector>

#include "knowledge/index/kinds.hpp"
#include "knowledge/records/tissue.hpp"
#include "substitute/standing.hpp"

namespace standin {
namespace {

constexpr double close_swap = 0.8;  // of a swap either way; judgement

class Equivalents {
public:
    Equivalents(Problem& problem, const Knowledge& knowledge) : problem_(problem), knowledge_(knowledge) {
        for (const auto& line : problem.formula.lines)
            for (const auto& allergen : knowledge.ingredient(line.ingredient)->allergens) known_.insert(allergen);
        for (const auto& swap : knowledge.records().swaps)
            if (swap.closeness >= close_swap) close_.insert(std::minmax(swap.from, swap.to));
        std::vector<std::string> foods;
        for (const auto& move : problem.moves) foods.push_back(move.food.ingredient);
        if (foods.empty()) return;
        const Twins twins = twins_of(foods, foods.front(), knowledge);
        for (std::size_t m = 0; m < foods.size(); ++m)
            if (twins.of[m]) twin_of_[foods[m]] = *twins.of[m];
    }

    void find() {
        auto& moves = problem_.moves;
        for (auto& move : moves) {
            move.equivalents.clear();
            move.role = knowledge_.ingredient(move.food.ingredient)->roles.front();
        }
        for (std::size_t a = 0; a < moves.size(); ++a)
            for (std::size_t b = 0; b < moves.size(); ++b)
                if (a != b && alike(moves[a], moves[b])) moves[a].equivalents.push_back(b);
    }

private:
    bool alike(const Move& a, const Move& b) const {
        if (!a.brings_food() || !b.brings_food() || fresh_allergens(a) != fresh_allergens(b)) return false;
        if (a.food.ingredient == b.food.ingredient) return true;
        if (!same_place(a, b) || a.second || b.second) return false;
        if (a.kind == MoveKind::add && ((dry_binder(a) && dry_binder(b)) || (oil(a) && oil(b)))) return true;
        return close_.count(std::minmax(a.food.ingredient, b.food.ingredient)) > 0 || are_twins(a, b);
    }

    // One neutral oil or crumb and the next, by the kinds of near twins.
    bool are_twins(const Move& a, const Move& b) const {
        const auto one = twin_of_.find(a.food.ingredient), other = twin_of_.find(b.food.ingredient);
        return one != twin_of_.end() && other != twin_of_.end() && one->second == other->second;
    }

    // Flour, starch, crumbs, fibre: another of them is the same idea.
    bool dry_binder(const Move& move) const { return is_dry_binder(*knowledge_.ingredient(move.food.ingredient)); }

    // Nor is oil another idea out of another bottle.
    bool oil(const Move& move) const { return is_oil(*knowledge_.ingredient(move.food.ingredient)); }

    static bool same_place(const Move& a, const Move& b) {
        if (a.kind != b.kind) return false;
        if (a.kind == MoveKind::add) return a.role == b.role;
        return std::any_of(a.stands_for.begin(), a.stands_for.end(), [&](const StandsFor& mine) {
            return std::any_of(b.stands_for.begin(), b.stands_for.end(), [&](const StandsFor& theirs) { return mine.line == theirs.line; });
        });
    }

    std::set<std::string> fresh_allergens(const Move& move) const {
        std::set<std::string> fresh;
        const auto note = [&](const Line& food) {
            for (const auto& allergen : knowledge_.ingredient(food.ingredient)->allergens)
                if (!known_.count(allergen)) fresh.insert(allergen);
        };
        note(move.food);
        if (move.second) note(move.second->food);
        return fresh;
    }

    Problem& problem_;
    const Knowledge& knowledge_;
    std::set<std::string> known_;
    std::set<std::pair<std::string, std::string>> close_;
    std::map<std::string, std::size_t> twin_of_;  // its kind
};

}  // namespace

void find_equivalents(Problem& problem, const Knowledge& knowledge) { Equivalents(problem, knowledge).find(); }

}  // namespace standin
