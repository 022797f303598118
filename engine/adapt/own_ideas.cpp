#include "adapt/own_ideas.hpp"

#include <algorithm>

#include "adapt/goals/request.hpp"
#include "adapt/infeasibility/conflict.hpp"
#include "adapt/own_plan.hpp"
#include "core/contains.hpp"
#include "core/has_food.hpp"
#include "core/names.hpp"
#include "knowledge/index/edible.hpp"
#include "knowledge/index/kinds.hpp"
#include "knowledge/words/hazard_text.hpp"
#include "safety/wording.hpp"
#include "standin/number_text.hpp"

namespace standin {
namespace {

// Without a list everything is to be had; with the ideas there is one, and it says so.
Inventory& list_of(AdaptRequest& request) {
    if (!request.have) {
        request.have.emplace();
        request.have->complete = false;
    }
    return *request.have;
}

// "Marjoram" is the dried one by itself; where the list names only a fresh bunch of it, that is meant.
const Ingredient* as_listed(const Ingredient& food, const std::string& written, const AdaptRequest& request, const Knowledge& knowledge) {
    if (!request.have || has_food(*request.have, food.id)) return &food;
    const std::string said = " " + fold(written);
    const Ingredient* other = nullptr;
    for (const auto& item : request.have->items) {
        const Ingredient& listed = *knowledge.ingredient(item.ingredient);
        const bool called_so = std::any_of(listed.names.begin(), listed.names.end(),
                                           [&](const std::string& name) { return (" " + fold(name)).ends_with(said); });
        if (listed.id == food.id || !called_so || !same_plant(food, listed)) continue;
        if (other && other->id != listed.id) return &food;
        other = &listed;
    }
    return other ? other : &food;
}

// A poison or a curing salt is refused for what it is, as a line of it would be.
std::optional<Error> danger_named(const std::string& name, const Knowledge& knowledge) {
    for (const auto& match : hazards_in(hazard_text(name), knowledge.records().lexicon))
        if (match.hazard->act == HazardAct::refuse && match.hazard->of.empty())
            return Error{Trouble::usage, "\"" + match.said + "\": " + match.hazard->reason, {}, match.hazard->hints};
    return std::nullopt;
}

std::optional<Error> use_instead(AdaptRequest& request, UseInstead& idea, const Formula& formula, const Knowledge& knowledge) {
    const auto line = line_named(formula, idea.line, knowledge);
    if (!line) return line.error();
    const Ingredient* food = knowledge.ingredient_named(idea.with);
    if (!food)
        if (auto danger = danger_named(idea.with, knowledge)) return danger;
    if (!food) return Error{Trouble::usage, "nothing is known of \"" + idea.with + "\"", {}, knowledge.nearest_ingredients(idea.with)};
    food = as_listed(*food, idea.with, request, knowledge);
    idea = {food->id, formula.lines[*line].ingredient};
    if (formula.lines[*line].keep)
        return Error{
            Trouble::usage, "the line " + knowledge.ingredient(idea.line)->names.front() + " is kept: nothing can be used for it", {}, {}};
    Inventory& have = list_of(request);
    std::erase_if(have.items, [&](const InventoryItem& item) { return item.ingredient == idea.line; });
    std::erase(have.missing, idea.with);
    if (std::find(have.missing.begin(), have.missing.end(), idea.line) == have.missing.end()) have.missing.push_back(idea.line);
    if (!has_food(have, idea.with)) have.items.push_back({idea.with, std::nullopt});
    return std::nullopt;
}

// As much of it as the formula would say, which the list counts as bought.
void use_no_more(AdaptRequest& request, InventoryItem most, const Knowledge& knowledge) {
    if (!most.grams) return;
    const Ingredient& food = *knowledge.ingredient(most.ingredient);
    if (!most.at_most && !weighed_as_used(food)) *most.grams /= edible_share(food);
    Inventory& have = list_of(request);
    double there = 0;
    bool plenty = !has_food(have, most.ingredient);
    for (const auto& item : have.items)
        if (item.ingredient == most.ingredient) {
            plenty = plenty || !item.grams;
            there += item.grams.value_or(0);
        }
    if (!plenty && there <= *most.grams) return;
    std::erase_if(have.items, [&](const InventoryItem& item) { return item.ingredient == most.ingredient; });
    have.items.push_back(most);
}

std::optional<Error> not_enough_of(const InventoryItem& least, const Formula& formula, const Knowledge& knowledge) {
    const std::string name = knowledge.ingredient(least.ingredient)->names.front();
    double there = 0;
    for (const auto& line : formula.lines) there += line.ingredient == least.ingredient ? line.grams.mid : 0;
    if (least.grams && there >= *least.grams) return std::nullopt;
    constexpr int whole = 0;
    return Error{Trouble::usage,
                 "at least so much " + name + ": the formula has " + (there > 0 ? fixed_text(there, whole) + " g of it" : "none of it"),
                 {},
                 {"to use up more, write it into the formula and hold the two against each other with compare"}};
}

}  // namespace

Result<AdaptRequest> with_own_ideas(AdaptRequest request, const Formula& formula, const Knowledge& knowledge) {
    for (auto& idea : request.use)
        if (auto wrong = use_instead(request, idea, formula, knowledge)) return Failure(std::move(*wrong));
    for (const auto& most : request.most) use_no_more(request, most, knowledge);
    for (const auto& least : request.least)
        if (auto wrong = not_enough_of(least, formula, knowledge)) return Failure(std::move(*wrong));
    return request;
}

IdeasExcluded ideas_excluded(const AdaptRequest& request, const Stock& stock, const Knowledge& knowledge) {
    IdeasExcluded found;
    const auto name = [&](const std::string& id) { return knowledge.ingredient(id)->names.front(); };
    for (const auto& idea : request.use) {
        const Ingredient& food = *knowledge.ingredient(idea.with);
        if (!stock.offer(food).excluded) continue;
        found.conflict.push_back(demand("use", name(idea.with) + " for " + name(idea.line)));
        std::vector<std::string> held;
        for (const auto& allergen : allergens_held(food))
            held.push_back((contains(food.allergens, allergen) ? "" : "perhaps ") + allergen_name(allergen, knowledge));
        held.insert(held.begin(), name(idea.with));
        for (const auto& word : stock.kept_by(food.id)) {  // by the maker's words too
            found.conflict.push_back(demand("without", word));
            found.conflict.push_back(make_reason(ReasonKind::against_each_other, {}, held));
            found.conflict.back().about = word;
        }
    }
    for (const auto& one : found.conflict) {
        if (one.kind != ReasonKind::demand) continue;
        found.would_give.push_back(one);
        found.would_give.back().kind = ReasonKind::giving_up;
    }
    return found;
}

std::vector<Reason> ideas_without_weight(const AdaptRequest& request, const Problem& problem, const Knowledge& knowledge) {
    std::vector<Reason> all;
    for (const auto& idea : request.use) {
        const auto does = [&](const Move& move) {
            return move.food.ingredient == idea.with &&
                   std::any_of(move.stands_for.begin(), move.stands_for.end(),
                               [&](const StandsFor& s) { return problem.formula.lines[s.line].ingredient == idea.line; });
        };
        if (std::none_of(problem.moves.begin(), problem.moves.end(), does))
            all.push_back(
                demand("use", knowledge.ingredient(idea.with)->names.front() + " for " + knowledge.ingredient(idea.line)->names.front()));
    }
    return all;
}

std::vector<Reason> ideas_not_followed(const AdaptRequest& request, const Formula& base, std::vector<Variant>& variants,
                                       const Knowledge& knowledge) {
    const auto grams = [](const Formula& formula, const std::string& food) {
        double sum = 0;
        for (const auto& line : formula.lines) sum += line.ingredient == food ? line.grams.mid : 0;
        return sum;
    };
    const auto followed = [&](const UseInstead& idea, const Variant& v) { return grams(v.formula, idea.with) > grams(base, idea.with); };
    std::vector<Reason> all;
    for (const auto& idea : request.use) {
        if (std::none_of(variants.begin(), variants.end(), [&](const Variant& v) { return followed(idea, v); }))
            all.push_back(
                demand("use", knowledge.ingredient(idea.with)->names.front() + " for " + knowledge.ingredient(idea.line)->names.front()));
        std::erase_if(variants, [&](const Variant& v) { return !followed(idea, v); });
    }
    return all;
}

std::vector<Reason> ideas_by_weight(const AdaptRequest& request, const Formula& base, const Context& context) {
    std::vector<Reason> all;
    for (const auto& idea : request.use) {
        Formula plan = base;
        for (auto& line : plan.lines) {
            if (line.ingredient != idea.line) continue;
            Line instead;
            instead.ingredient = idea.with;
            instead.grams = line.grams;
            line = instead;
        }
        const DistanceParts apart = distance_of_plan(base, plan, context);
        const auto name = [&](const std::string& id) { return context.knowledge().ingredient(id)->names.front(); };
        Reason by_weight = make_reason(ReasonKind::weight_for_weight, {{"distance", {}, apart.distance, "noticeable differences"}},
                                       {name(idea.with), name(idea.line)});
        by_weight.note = in_words(apart.nearness);
        all.push_back(std::move(by_weight));
    }
    all.push_back(make_reason(ReasonKind::weighing_it_apart));
    return all;
}

}  // namespace standin
