#include "substitute/stock_presumed.hpp"

#include <algorithm>
#include <optional>
#include <set>

#include "core/contains.hpp"
#include "core/has_food.hpp"
#include "knowledge/index/kinds.hpp"

namespace standin {
namespace {

constexpr double enough_share = 0.25;  // of a line's weight (judgement): less of its kin is no sign that the line is not to be had

enum class Shelf { fresh, cellar, butchery, kitchen, spices, tap };

Shelf shelf_of(const Ingredient& ingredient, const Knowledge& knowledge) {
    if (ingredient.id == "water" || ingredient.id == "ice") return Shelf::tap;
    if (belongs(ingredient, "salt", knowledge)) return Shelf::tap;
    if (ingredient.meat || ingredient.tissue == Tissue::fat_tissue) return Shelf::butchery;
    if (belongs(ingredient, "fresh", knowledge)) return Shelf::fresh;
    if (belongs(ingredient, "garden", knowledge)) return Shelf::cellar;
    const Role role = ingredient.roles.front();
    return role == Role::spice || role == Role::herb || role == Role::heat ? Shelf::spices : Shelf::kitchen;
}

bool same_family_and_role(const Ingredient& one, const Ingredient& other) {
    return one.family == other.family && one.roles.front() == other.roles.front();
}

// What the list closes and does not name.
Presumption closed_out(const std::vector<std::string>& missing) {
    Reason reason;
    reason.kind = ReasonKind::all_that_is_there;
    reason.about = "missing";
    reason.foods = missing;
    std::string says = in_full(reason);
    return {"", false, true, std::move(reason), std::move(says), missing.front() + " plenty"};
}

// A list with several of the formula's own lines is what there is, and not only what may serve a want.
bool goes_through_the_formula(const Formula& formula, const Inventory& have) {
    constexpr std::size_t several = 2;
    constexpr double fair_part = 0.25;  // of the lines; judgement
    const auto named = static_cast<std::size_t>(
        std::count_if(formula.lines.begin(), formula.lines.end(), [&](const Line& line) { return has_food(have, line.ingredient); }));
    return named >= several && static_cast<double>(named) >= fair_part * static_cast<double>(formula.lines.size());
}

class Presuming {
public:
    Presuming(const Formula& formula, const Inventory& have, bool for_a_want, const Knowledge& knowledge)
        : formula_(formula), have_(have), knowledge_(knowledge), all_is_said_(for_a_want && !goes_through_the_formula(formula, have)) {
        for (const auto& item : have.items) mention(item.ingredient);
        for (const auto& id : have.missing) mention(id);
        for (const auto& item : have.items) close(*knowledge.ingredient(item.ingredient));
    }

    std::vector<Presumption> all() && {
        std::vector<std::string> there, missing;
        for (const auto& line : formula_.lines) {
            if (!mentioned_.insert(line.ingredient).second) continue;
            const Ingredient& ingredient = *knowledge_.ingredient(line.ingredient);
            Presumption one = have_.complete.value_or(false) ? under_nothing_else(ingredient) : by_kin(ingredient, line);
            if (one.on_hand && have_.complete.value_or(false) && shelf_of(ingredient, knowledge_) != Shelf::tap)
                there.push_back(ingredient.names.front());
            if (!one.on_hand && have_.complete.value_or(false)) missing.push_back(ingredient.names.front());
            presumed_.push_back(std::move(one));
        }
        if (auto pepper = pepper_for_pepper()) presumed_.push_back(std::move(*pepper));
        if (!there.empty()) presumed_.push_back(presumption("", true, true, ReasonKind::all_that_is_there, there, "no " + there.front()));
        if (!missing.empty()) presumed_.push_back(closed_out(missing));
        return std::move(presumed_);
    }

private:
    void mention(const std::string& id) { mentioned_.insert(id); }

    // Who lists cabbage and lemons has looked in the garden; who lists leaves has said nothing of the garlic. Neither speaks of the pepper,
    // nor does who lists cream and flour, or one spice for a stand-in; who lists the pepper has gone through the kitchen.
    void close(const Ingredient& listed) {
        const Shelf shelf = belongs(listed, "citrus", knowledge_) ? Shelf::cellar : shelf_of(listed, knowledge_);
        if (shelf == Shelf::spices && ++spices_ == 1 && !is_pepper(listed)) return;
        closed_.insert(shelf);
        if (shelf == Shelf::cellar) closed_.insert(Shelf::fresh);
        if (shelf == Shelf::spices) closed_.insert(Shelf::kitchen);
    }

    // Of itself, and not a mix made with it.
    bool is_pepper(const Ingredient& food) const { return !food.latin.empty() && belongs(food, "pepper", knowledge_); }

    // Pepper is in every kitchen; who lists another pepper is out of this one.
    bool pepper_is_there(const Ingredient& ingredient) const {
        return is_pepper(ingredient) && std::none_of(have_.items.begin(), have_.items.end(), [&](const InventoryItem& item) {
                   return is_pepper(*knowledge_.ingredient(item.ingredient));
               });
    }

    // Who is out of the green, the white or the long pepper has the black one, unless the list names another or says that there is none.
    std::optional<Presumption> pepper_for_pepper() const {
        const std::string black = "black-pepper";
        const Ingredient& pepper = *knowledge_.ingredient(black);
        if (have_.complete || have_.items.empty() || has_food(formula_, black) || mentioned_.count(black) || !pepper_is_there(pepper))
            return std::nullopt;
        const auto is_out_of = [&](const Line& line) {
            return is_pepper(*knowledge_.ingredient(line.ingredient)) &&
                   std::find(have_.missing.begin(), have_.missing.end(), line.ingredient) != have_.missing.end();
        };
        if (std::none_of(formula_.lines.begin(), formula_.lines.end(), is_out_of)) return std::nullopt;
        return presumption(black, true, false, ReasonKind::presumed_there, {pepper.names.front()}, "no " + pepper.names.front());
    }

    Presumption under_nothing_else(const Ingredient& ingredient) const {
        const Shelf shelf = shelf_of(ingredient, knowledge_);
        const bool there =
            shelf == Shelf::tap || pepper_is_there(ingredient) || (!closed_.count(shelf) && !has_listed_stand_in(ingredient));
        return {ingredient.id, there, !there, {}, "", ""};  // the maker's own words; what they leave open is told in one sentence
    }

    // Green tomatoes for the green apple, anise for the fennel seed: with nothing else there, they are what there is for it.
    bool has_listed_stand_in(const Ingredient& ingredient) const {
        constexpr double near = 0.4;  // closeness; judgement
        return std::any_of(knowledge_.records().swaps.begin(), knowledge_.records().swaps.end(), [&](const Swap& swap) {
            return swap.from == ingredient.id && swap.closeness >= near && !has_food(formula_, swap.to) && has_food(have_, swap.to);
        });
    }

    /// Foods of the list that a missing line could be meant to give way to: fresh kin, no line of the formula themselves, at hand for half
    /// the weight, and more of them than lines which the list itself says are missing.
    std::vector<std::string> in_its_place(const Ingredient& ingredient, const Line& line) const {
        std::vector<std::string> named;
        for (const auto& item : have_.items) {
            const Ingredient& other = *knowledge_.ingredient(item.ingredient);
            if (has_food(formula_, other.id)) continue;
            if (dried_form(ingredient, other)) named.push_back(other.names.front());
            if (!same_family_and_role(ingredient, other) || !belongs(other, "fresh", knowledge_)) continue;
            if (!item.grams || *item.grams >= enough_share * line.grams.mid) named.push_back(other.names.front());
        }
        const auto spoken_for = std::count_if(have_.missing.begin(), have_.missing.end(), [&](const std::string& id) {
            return has_food(formula_, id) && same_family_and_role(ingredient, *knowledge_.ingredient(id));
        });
        return std::ssize(named) > spoken_for ? named : std::vector<std::string>{};
    }

    // Who lists dried sage would have listed the fresh.
    static bool dried_form(const Ingredient& fresh, const Ingredient& other) {
        return fresh.tissue != Tissue::dry && other.tissue == Tissue::dry && same_plant(fresh, other);
    }

    Presumption by_kin(const Ingredient& ingredient, const Line& line) const {
        const std::string& name = ingredient.names.front();
        const bool everything = have_.complete.has_value();
        const bool may_be_missing = !everything && !all_is_said_ && !line.keep && belongs(ingredient, "fresh", knowledge_);
        std::vector<std::string> named = may_be_missing ? in_its_place(ingredient, line) : std::vector<std::string>{};
        if (named.empty() && everything) return {ingredient.id, true, false, {}, "", "no " + name};
        if (named.empty()) return there_beside_kin(ingredient);
        named.insert(named.begin(), name);
        return presumption(ingredient.id, false, true, ReasonKind::presumed_missing, std::move(named), name + " plenty");
    }

    // What is there all the same is told with what the list has of its kind: whoever lists trout may well be out of the salmon.
    Presumption there_beside_kin(const Ingredient& ingredient) const {
        std::vector<std::string> foods{ingredient.names.front()};
        for (const auto& item : have_.items) {
            const Ingredient& other = *knowledge_.ingredient(item.ingredient);
            if (has_food(formula_, other.id) || !perishes_alike(ingredient, other) || contains(foods, other.names.front())) continue;
            foods.push_back(other.names.front());
        }
        Presumption there =
            presumption(ingredient.id, true, false, ReasonKind::presumed_there, std::move(foods), "no " + ingredient.names.front());
        if (keeps_dry(ingredient)) there.reason.role = "dry";
        return there;
    }

    bool keeps_dry(const Ingredient& ingredient) const {
        const Shelf shelf = shelf_of(ingredient, knowledge_);
        return shelf == Shelf::spices || shelf == Shelf::tap || (shelf == Shelf::kitchen && ingredient.tissue == Tissue::dry);
    }

    // Of one kind, and bought for the day: fish for fish, meat for meat, fat for fat, leaf for leaf.
    bool perishes_alike(const Ingredient& ingredient, const Ingredient& other) const {
        const Shelf shelf = shelf_of(ingredient, knowledge_);
        if (shelf != shelf_of(other, knowledge_) || (shelf != Shelf::fresh && shelf != Shelf::butchery)) return false;
        const bool of_the_water = belongs(ingredient, "seafood", knowledge_) || belongs(other, "seafood", knowledge_);
        if (shelf == Shelf::fresh || of_the_water) return same_family_and_role(ingredient, other);
        return other.roles.front() == ingredient.roles.front();
    }

    const Formula& formula_;
    const Inventory& have_;
    const Knowledge& knowledge_;
    bool all_is_said_;  // who wants something lists what may serve that
    std::set<std::string> mentioned_;
    std::set<Shelf> closed_;
    int spices_ = 0;  // that are listed
    std::vector<Presumption> presumed_;
};

}  // namespace

Presumption presumption(std::string ingredient, bool on_hand, bool matters, ReasonKind kind, std::vector<std::string> foods,
                        std::string add) {
    Reason reason;
    reason.kind = kind;
    reason.foods = std::move(foods);
    std::string says = in_full(reason);
    return {std::move(ingredient), on_hand, matters, std::move(reason), std::move(says), std::move(add)};
}

std::vector<Presumption> presumed_of(const Formula& formula, const Inventory& have, bool for_a_want, const Knowledge& knowledge) {
    return Presuming(formula, have, for_a_want, knowledge).all();
}

}  // namespace standin
