#include "adapt/moves/additions.hpp"

#include <algorithm>
#include <map>
#include <string>
#include <utility>

#include "adapt/distance/fat_wants.hpp"
#include "adapt/moves/odd_foods.hpp"
#include "core/contains.hpp"
#include "knowledge/index/kinds.hpp"
#include "knowledge/records/tissue.hpp"

namespace standin {
namespace {

// Lean that may be added is muscle. Fat that may be added: of the animals that are in already, as it is ground; in a mass without such fat,
// oil.
bool may_add(const Ingredient& food, Role role, const Formula& formula, const Stock& stock, const FoodPrice& price,
             const Knowledge& knowledge) {
    // What pours or spreads and stands on the list is the maker's own.
    const bool spreads = food.tissue == Tissue::liquid || food.tissue == Tissue::paste;
    if (role == Role::fat && spreads && stock.names(food.id)) return true;
    if (role == Role::lean && belongs(food, "offal", knowledge)) return false;
    if (role != Role::fat) return !price.brings_a_beast(food);
    const bool beasts = std::any_of(formula.lines.begin(), formula.lines.end(), [&](const Line& line) {
        const auto& meat = knowledge.ingredient(line.ingredient)->meat;
        return meat && meat->species != Species::fish && meat->species != Species::crustacean;
    });
    constexpr double is_fat = 50;  // g in 100 g, judgement: skin and caul are less
    // Of one bird into another, where the list names it.
    const bool birds = std::any_of(formula.lines.begin(), formula.lines.end(),
                                   [&](const Line& line) { return is_bird(*knowledge.ingredient(line.ingredient)); });
    if (birds && is_bird(food) && stock.names(food.id)) return true;
    // Back fat or suet that the maker has by him goes into any meat, and is told; into fish it does not.
    if (beasts && food.meat && food.tissue == Tissue::fat_tissue && stock.names(food.id)) return true;
    if (has_no_fat_of_its_own(formula, knowledge))
        return food.meat && food.tissue == Tissue::fat_tissue && food.composition.fat.mid >= is_fat;
    return beasts ? food.meat && !price.brings_a_beast(food) : food.tissue == Tissue::liquid && food.allergens.empty();
}

// Suet as sold is often rolled in flour: where the list does not name it, plain fat is at every butcher's.
bool to_check_on_packet(const Ingredient& food, Role role, const Stock& stock) {
    return role == Role::fat && !food.may_hold.empty() && !stock.names(food.id);
}

// Dill, mint and chives of the list: they are there for their taste, and green all the same.
bool is_green_beside(const Ingredient& food, Role role, const Stock& stock) {
    return role == Role::green && food.tissue == Tissue::thin_leaf && contains(food.roles, Role::green) && stock.names(food.id);
}

// Of what pours, ice and water, which no list names, by themselves: wine and milk taste of something else.
bool may_come(const Ingredient& food, Role role, const Stock& stock) {
    return role == Role::liquid ? from_the_tap(food.id) && stock.leaves_in(food) : stock.can_bring(food);
}

}  // namespace

std::vector<Addition> usual_additions(Role role, const Formula& formula, const Stock& stock, const FoodPrice& price,
                                      const Knowledge& knowledge) {
    std::map<std::string, double> known;  // how often a food is named as a stand-in
    double most = 1;
    for (const auto& swap : knowledge.records().swaps)
        if (swap.role == role) most = std::max(most, ++known[swap.to]);
    std::vector<Addition> all;
    for (const auto& i : knowledge.records().ingredients)
        if ((i.roles.front() == role || is_green_beside(i, role, stock)) && may_come(i, role, stock) &&
            (role != Role::binder || i.tissue == Tissue::dry) && !price.in_formula(i) &&
            may_add(i, role, formula, stock, price, knowledge) && !to_check_on_packet(i, role, stock))
            all.push_back({&i, 1 - known[i.id] / most});
    // The same with a new allergen is no other idea, unless the maker has it by him.
    const bool safe = std::any_of(all.begin(), all.end(), [&](const Addition& a) { return price.of_allergens(*a.food) == 0; });
    if (safe && role == Role::binder)
        std::erase_if(all, [&](const Addition& a) { return price.of_allergens(*a.food) > 0 && !stock.names(a.food->id); });
    const auto is_sure = [&](const Addition& a) { return !stock.in_doubt(a.food->id); };
    if (std::any_of(all.begin(), all.end(), is_sure)) std::erase_if(all, [&](const Addition& a) { return !is_sure(a); });
    // Nobody sours a mass with ketchup who has vinegar or juice by him.
    const auto pours = [](const Addition& a) { return a.food->tissue == Tissue::liquid; };
    if (role == Role::acid && std::any_of(all.begin(), all.end(), pours))
        std::erase_if(all, [&](const Addition& a) { return a.food->family == "condiments" && !pours(a); });
    const auto worth = [&](const Addition& a) {
        return known[a.food->id] - (a.food->allergens.empty() ? 0 : 10) - 10 * price.of_finding(*a.food);
    };
    std::stable_sort(all.begin(), all.end(), [&](const Addition& a, const Addition& b) { return worth(a) > worth(b); });
    // Of another animal's fat one sort is told beside those of the list, the one that makers take.
    if (role == Role::fat && has_no_fat_of_its_own(formula, knowledge)) {
        bool told = false;
        std::erase_if(all, [&](const Addition& a) { return !stock.names(a.food->id) && std::exchange(told, true); });
    }
    return all;
}

double least_worth_adding(const Ingredient& food, Role role, const Context& context) {
    constexpr double felt = 0.008;  // judgement
    return role == Role::binder && !is_gum(food, context) ? felt : 0;
}

}  // namespace standin
