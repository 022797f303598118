#include "substitute/carried_over.hpp"

#include <algorithm>
#include <array>
#include <string_view>

#include "knowledge/index/effects.hpp"
#include "knowledge/index/kinds.hpp"
#include "knowledge/records/tissue.hpp"

namespace standin {
namespace {

// Foods that are handled alike: what is done to one of them can be done to another.
enum class Handling { vegetable, kernel, animal, egg, liquid, paste };

Handling handling_of(Tissue tissue) {
    if (is_vegetable(tissue)) return Handling::vegetable;
    switch (tissue) {
        case Tissue::meat:
        case Tissue::fat_tissue:
            return Handling::animal;
        case Tissue::egg:
            return Handling::egg;
        case Tissue::liquid:
            return Handling::liquid;
        case Tissue::paste:
            return Handling::paste;
        default:
            return Handling::kernel;
    }
}

constexpr std::array<std::string_view, 7> cuts{"sliced", "chopped", "minced", "grated", "crushed", "ground", "pureed"};

bool a_cut(std::string_view step) { return std::find(cuts.begin(), cuts.end(), step) != cuts.end(); }

bool can_be_cut(const Ingredient& food, const Ingredient& line, const Knowledge& knowledge) {
    constexpr std::string_view soft_or_fine = "no-knife";
    if (belongs(food, soft_or_fine, knowledge)) return false;
    const Handling handling = handling_of(food.tissue);
    if (handling == Handling::vegetable || handling == Handling::animal || food.tissue == Tissue::seed) return true;
    // Grated cheese for grated cheese, cracked seed for cracked seed.
    if (handling == Handling::paste) return food.family == line.family && line.tissue == food.tissue;
    return handling == Handling::kernel && handling_of(line.tissue) == Handling::kernel;
}

// Husk, shell and stone belong to the plant: what stands in for a husked tomatillo has none.
bool of_its_plant(const Prepared& step, const Ingredient& line, const Ingredient& food) {
    if (step.preparation != "husked" && step.preparation != "shelled") return false;
    const auto genus = [](const Ingredient& i) { return i.latin.substr(0, i.latin.find(' ')); };
    return line.latin.empty() || genus(line) != genus(food);
}

// Leaves are blanched and squeezed; the garlic or the juice that stands in for their taste is not.
bool of_its_leaves(const Prepared& step, const Ingredient& line, const Ingredient& food) {
    const auto leaf = [](const Ingredient& i) { return is_leaf(i.tissue) || i.tissue == Tissue::stalk; };
    const bool for_leaves = step.preparation == "blanched" || step.preparation == "squeezed" || step.preparation == "wilted";
    return for_leaves && leaf(line) && !leaf(food);
}

// Herbs, chiles and mushrooms hang in a warm kitchen; nobody dries a pear for a sausage.
bool dried_by_hand(const Ingredient& food) {
    constexpr std::array<std::string_view, 3> families{"herbs", "fresh-chiles", "mushrooms-and-seaweeds"};
    return std::find(families.begin(), families.end(), food.family) != families.end();
}

// Tomatoes and apples roast whole; berries and citrus run out.
bool runs_out_roasted(const Prepared& step, const Ingredient& food, const Knowledge& knowledge) {
    return (step.preparation == "roasted" || step.preparation == "roasted-peeled") && belongs(food, "not-roasted", knowledge);
}

}  // namespace

bool carries_over(const Prepared& step, const Ingredient& line, const Ingredient& food, const Knowledge& knowledge) {
    if (of_its_plant(step, line, food) || of_its_leaves(step, line, food) || runs_out_roasted(step, food, knowledge)) return false;
    if (a_cut(step.preparation)) return can_be_cut(food, line, knowledge);
    if (step.preparation == "dried" && !dried_by_hand(food)) return false;
    const Handling from = handling_of(line.tissue), to = handling_of(food.tissue);
    const bool boiled_alike = from == Handling::vegetable || line.tissue == Tissue::seed;  // peas for beans, potato for chestnuts
    return from == to || (boiled_alike && (to == Handling::vegetable || food.tissue == Tissue::seed));
}

bool to_be_ground(const Ingredient& line, const Ingredient& food, const Knowledge& knowledge) {
    constexpr std::string_view whole = "whole-spice";
    return line.tissue == Tissue::dry && belongs(food, whole, knowledge) && !belongs(line, whole, knowledge);
}

bool would_have_to_be_dried(const Line& line, const Ingredient& food, const Knowledge& knowledge) {
    const Ingredient* from = knowledge.ingredient(line.ingredient);
    return from && has_step(line.prepared, "dried") && !dried_by_hand(*from) && is_vegetable(food.tissue) && !dried_by_hand(food);
}

}  // namespace standin
