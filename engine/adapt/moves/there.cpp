#include "adapt/moves/there.hpp"

#include <algorithm>
#include <array>
#include <vector>

#include "core/contains.hpp"
#include "knowledge/index/kinds.hpp"
#include "models/as_bought.hpp"

namespace standin {
namespace {

// Salt is salt, and where meat or fat is short the batch is smaller.
bool weighed_to_the_gram(const Ingredient& food) {
    return food.meat || food.roles.front() == Role::salt || food.roles.front() == Role::fat;
}

}  // namespace

double missing_share(const Problem& problem, std::size_t line) { return 1 - problem.start[line] / problem.formula.lines[line].grams.mid; }

bool is_missing_seasoning(const Problem& problem, std::size_t line, const Knowledge& knowledge) {
    const std::string& family = knowledge.ingredient(problem.formula.lines[line].ingredient)->family;
    return problem.missing[line] && (family == "herbs" || family == "spices");
}

std::map<std::string, double> take_what_is_there(Problem& problem, const Stock& stock, const Knowledge& knowledge) {
    const double hardly_short = knowledge.parameter("advice.there.hardly-short").mid;
    const auto& lines = problem.formula.lines;
    std::map<std::string, double> left;
    std::vector<std::size_t> order(lines.size());
    for (std::size_t l = 0; l < order.size(); ++l) order[l] = l;
    std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) { return lines[a].keep > lines[b].keep; });
    problem.start.resize(lines.size());
    problem.missing.resize(lines.size());
    problem.excluded.resize(lines.size());
    for (const auto l : order) {
        const Line& line = lines[l];
        const Ingredient& food = *knowledge.ingredient(line.ingredient);
        const Offer offer = stock.offer(food);
        double grams = offer.on_hand ? line.grams.mid : 0;
        if (offer.on_hand && offer.grams) {
            const double bought = listed_per_gram(line, knowledge);
            double& rest = left.try_emplace(line.ingredient, *offer.grams).first->second;
            grams = std::min(grams, rest / bought);
            rest = std::max(0.0, rest - grams * bought);
        }
        problem.start[l] = grams;
        problem.missing[l] = grams < (weighed_to_the_gram(food) ? 1 : hardly_short) * line.grams.mid;
        problem.excluded[l] = offer.excluded;
    }
    return left;
}

bool no_store_of(const Line& line, const Stock& stock) {
    constexpr std::array stored{Role::lean, Role::fat, Role::acid, Role::green, Role::allium, Role::nut, Role::binder};
    const Ingredient& own = *stock.knowledge().ingredient(line.ingredient);
    const Role role = own.roles.front();
    const bool bottle = belongs(own, "vinegar", stock.knowledge());  // that is there as a bottle, whatever the formula takes of it
    if (bottle || !contains(stored, role) || !stock.only_presumes(line.ingredient)) return false;
    const auto& foods = stock.knowledge().records().ingredients;
    return std::any_of(foods.begin(), foods.end(), [&](const Ingredient& food) {
        return food.roles.front() == role && stock.names(food.id) && stock.offer(food).on_hand;
    });
}

}  // namespace standin
