#include "substitute/stock.hpp"

#include <algorithm>
#include <set>

#include "knowledge/season.hpp"
#include "safety/exclusions.hpp"

namespace standin {
namespace {

// Roles of which a list of what is on hand is likely to be complete; the rest (meat, salt, spices, water) stands in the kitchen.
constexpr Role garden_roles[] = {Role::green, Role::herb, Role::heat, Role::allium, Role::nut, Role::acid, Role::binder};

bool is_garden_role(Role role) { return std::find(std::begin(garden_roles), std::end(garden_roles), role) != std::end(garden_roles); }

Result<std::string> excluded_word(const std::string& written, const Knowledge& knowledge) {
    if (is_exclusion_word(written)) return written;
    if (const auto* ingredient = knowledge.ingredient_named(written)) return ingredient->id;
    return failure(Trouble::usage, "--without \"" + written + "\": neither an ingredient nor an allergen", {},
                   knowledge.nearest_ingredients(written));
}

bool same_or_carries(const Ingredient& ingredient, const std::string& word) { return ingredient.id == word || carries(ingredient, word); }

}  // namespace

Result<Stock> Stock::of(const Formula& formula, const AdaptRequest& request, const Context& context) {
    const Knowledge& knowledge = context.knowledge();
    Stock stock;
    stock.month_ = context.options.month;
    stock.season_shift_ = context.options.season_shift;
    for (const auto& written : request.without) {
        auto word = excluded_word(written, knowledge);
        if (!word) return Failure(word.error());
        stock.without_.push_back(std::move(*word));
    }
    stock.guard_allergens(formula, knowledge);
    if (!request.have) return stock;
    const Inventory& have = *request.have;
    stock.listed_ = true;
    stock.everything_ = have.complete.has_value() && !*have.complete;
    std::set<Role> listed_roles;
    for (const auto& item : have.items) {
        auto& held = stock.have_.try_emplace(item.ingredient, 0.0).first->second;
        if (!item.grams || !held) held = std::nullopt;
        else held = *held + *item.grams;
        listed_roles.insert(knowledge.ingredient(item.ingredient)->roles.front());
    }
    for (const auto& id : have.missing) stock.missing_[id] = true;
    for (const auto& line : formula.lines) {
        if (stock.have_.count(line.ingredient) || stock.missing_.count(line.ingredient)) continue;
        const Ingredient& ingredient = *knowledge.ingredient(line.ingredient);
        const Role role = ingredient.roles.front();
        const bool presume =
            !have.complete.value_or(false) && (stock.everything_ || line.keep || !is_garden_role(role) || !listed_roles.count(role));
        if (presume) stock.have_.emplace(line.ingredient, std::nullopt);
        else stock.missing_[line.ingredient] = true;
        if (!have.complete)
            stock.presumed_.push_back(ingredient.names.front() + (presume ? ": not on the list, taken to be in the kitchen"
                                                                          : ": not on the list, taken to be missing, since other " +
                                                                                std::string(spelling(role)) + " is listed"));
    }
    if (!stock.everything_)
        stock.presumed_.push_back("only what the list names can come in; without a list, and with --without, everything known can");
    return stock;
}

Offer Stock::offer(const Ingredient& ingredient) const {
    Offer offer;
    offer.excluded =
        std::any_of(without_.begin(), without_.end(), [&](const std::string& word) { return same_or_carries(ingredient, word); });
    offer.on_hand = !offer.excluded && !missing_.count(ingredient.id);
    if (!listed_) return offer;
    const auto held = have_.find(ingredient.id);
    if (held != have_.end()) offer.grams = held->second;
    offer.on_hand = offer.on_hand && held != have_.end() && (!held->second || *held->second > 0);
    return offer;
}

void Stock::guard_allergens(const Formula& formula, const Knowledge& knowledge) {
    if (std::none_of(without_.begin(), without_.end(), is_allergen_word)) return;
    only_allergens_.emplace();
    for (const auto& line : formula.lines) {
        const Ingredient& ingredient = *knowledge.ingredient(line.ingredient);
        if (!offer(ingredient).excluded) only_allergens_->insert(ingredient.allergens.begin(), ingredient.allergens.end());
    }
    presumed_.push_back("no other allergen may come in either, since one was named to be left out");
}

bool Stock::can_bring(const Ingredient& ingredient) const {
    if (!offer(ingredient).on_hand) return false;
    if (month_ && !have_.count(ingredient.id) && !in_season(ingredient, *month_, season_shift_).value_or(true)) return false;
    return !only_allergens_ || std::all_of(ingredient.allergens.begin(), ingredient.allergens.end(),
                                           [&](const std::string& allergen) { return only_allergens_->count(allergen) > 0; });
}

}  // namespace standin
