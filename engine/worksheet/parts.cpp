#include "worksheet/parts.hpp"

#include <algorithm>
#include <array>
#include <span>

#include "core/contains.hpp"
#include "knowledge/index/effects.hpp"
#include "models/composition.hpp"
#include "models/ready.hpp"

namespace standin {
namespace {

constexpr std::array<std::string_view, 7> cuts{"sliced", "diced", "chopped", "minced", "grated", "crushed", "ground"};
constexpr std::array<std::string_view, 3> at_the_grinder{"ground", "minced", "chilled"};

Part of_meat(const Line& line) {
    const bool bought = line.ingredient.rfind("ground-", 0) == 0 ||
                        (line.weighed_prepared && (has_step(line.prepared, "ground") || has_step(line.prepared, "minced")));
    const bool by_hand = has_step(line.prepared, "chopped");  // cubes and strips are cut for the grinder
    return bought || by_hand ? Part::minced : Part::meat;
}

Part of_wet(const Line& line, const Ingredient& i) {
    const bool cut =
        std::any_of(line.prepared.begin(), line.prepared.end(), [](const Prepared& p) { return contains(cuts, p.preparation); });
    const Role main = i.roles.front();
    const bool plain = i.tissue == Tissue::egg || main == Role::fat || main == Role::binder;
    // Sour flesh and sour cream lie on no leaf: that turns it olive.
    if (main == Role::acid) return cut || i.tissue == Tissue::paste ? Part::acid : Part::sour;
    return cut || plain ? Part::folded : Part::paste;
}

Part of_dry(const Ingredient& i) {
    if (i.roles.front() == Role::acid) return contains(i.already, std::string("dried")) ? Part::folded : Part::acid;  // whole or cut fruit
    const bool soaks = i.roles.front() == Role::binder && i.binding && i.binding->sets == "cold";
    return soaks ? Part::soaking : Part::dry;
}

bool left_to_later(const Prepared& step, Part part) {
    if (step.preparation == "raw") return true;
    if (part == Part::meat && step.preparation == "diced") return true;  // cut small for the grinder
    if (part == Part::meat || part == Part::minced) return contains(at_the_grinder, step.preparation);
    return (part == Part::paste || part == Part::sour) && step.preparation == "pureed";
}

bool is_diced(const Line& line) { return has_step(line.prepared, "diced") && !has_step(line.prepared, "ground"); }

}  // namespace

std::string_view ready_by(const Ingredient& i) {
    if (!i.ready_by.empty()) return i.ready_by;
    switch (i.tissue) {
        case Tissue::bulb:
        case Tissue::root:
            return "peeled";
        case Tissue::chile_flesh:
            return "stemmed";
        case Tissue::egg:
        case Tissue::seed:
            return "shelled";
        case Tissue::thin_leaf:
        case Tissue::thick_leaf:
            return i.roles.front() == Role::herb ? "stemmed" : "trimmed";
        default:
            return "trimmed";
    }
}

Part part_of(const Line& line, const Knowledge& knowledge) {
    const Ingredient& i = *knowledge.ingredient(line.ingredient);
    if (i.meat) return of_meat(line);
    if (i.roles.front() == Role::salt) return Part::salt;
    if (i.tissue == Tissue::liquid) return contains(i.roles, Role::acid) ? Part::acid : Part::liquid;
    const bool soaked = has_step(line.prepared, "soaked") || has_step(line.prepared, "rehydrated");
    if (i.tissue == Tissue::dry && !soaked) return of_dry(i);
    return of_wet(line, i);
}

Part part_in(const Formula& formula, std::size_t line, const Knowledge& knowledge) {
    const Part part = part_of(formula.lines[line], knowledge);
    if (part != Part::meat || !is_diced(formula.lines[line])) return part;
    const bool ground = std::any_of(formula.lines.begin(), formula.lines.end(),
                                    [&](const Line& other) { return part_of(other, knowledge) == Part::meat && !is_diced(other); });
    const bool bought_minced = std::any_of(formula.lines.begin(), formula.lines.end(),
                                           [&](const Line& other) { return part_of(other, knowledge) == Part::minced; });
    return bought_minced && !ground ? Part::minced : part;
}

double ready_grams(const Line& line, const Knowledge& knowledge) {
    return raw_grams(line, knowledge) * preparation_yield(*knowledge.ingredient(line.ingredient), all_done(line), knowledge);
}

std::vector<Chain> chains_of(const Formula& formula, const Knowledge& knowledge) {
    std::vector<Chain> chains;
    for (std::size_t n = 0; n < formula.lines.size(); ++n) {
        const Line& line = formula.lines[n];
        const Ingredient& ingredient = *knowledge.ingredient(line.ingredient);
        const Part part = part_in(formula, n, knowledge);
        const double raw = raw_grams(line, knowledge);
        const auto steps = all_done(line);
        const auto grams_after = [&](std::size_t done) {
            return raw * preparation_yield(ingredient, std::span(steps).first(done), knowledge);
        };
        Chain chain{n, {}, {grams_after(line.ready.size())}};
        for (std::size_t k = line.ready.size(); k < steps.size(); ++k) {
            if (left_to_later(steps[k], part)) continue;
            chain.steps.push_back(steps[k]);
            chain.grams.push_back(grams_after(k + 1));
        }
        if (!chain.steps.empty()) chains.push_back(std::move(chain));
    }
    return chains;
}

}  // namespace standin
