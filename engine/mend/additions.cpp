#include "mend/additions.hpp"

#include <algorithm>
#include <limits>
#include <set>

#include "adapt/distance/fat_wants.hpp"
#include "adapt/goals/levers.hpp"
#include "adapt/goals/proportions.hpp"
#include "adapt/moves/constraints.hpp"
#include "adapt/moves/equivalents.hpp"
#include "core/contains.hpp"
#include "knowledge/index/kinds.hpp"
#include "knowledge/records/tissue.hpp"
#include "mend/bring.hpp"
#include "mend/cause_foods.hpp"
#include "mend/greener.hpp"
#include "models/as_bought.hpp"
#include "models/fat.hpp"
#include "substitute/stand_ins.hpp"

namespace standin {
namespace {

constexpr std::size_t foods_a_role = 14;
constexpr double least_share = 0.02;  // of the most: less is not worth the weighing
constexpr double salt_slack = 1.15;   // its water thins it a little; bind that salt does not bring is not salted for
constexpr double slack = 5;           // over what the goal asks of it alone: meat takes up most of an acid

class AdditionsBuilder {
public:
    AdditionsBuilder(const Formula& mass, const Material& start, const Stock& stock, const Distance& distance, const Mending& mending,
                     const Context& context, const Struck& struck)
        : stock_(stock),
          distance_(distance),
          mending_(mending),
          context_(context),
          most_of_(mass, context),
          knowledge_(context.knowledge()),
          struck_(struck) {
        problem_.formula = mass;
        problem_.start_total = start;
        for (const auto& line : mass.lines) {
            problem_.start.push_back(line.grams.mid);
            for (const auto& allergen : ingredient(line).allergens) allergens_.insert(allergen);
        }
        problem_.missing.assign(mass.lines.size(), false);
        problem_.excluded.assign(mass.lines.size(), false);
    }

    Problem build() && {
        const auto [raised, brought] = roles_that_help();
        for (const Role role : raised)
            for (std::size_t l = 0; l < problem_.start.size(); ++l)
                if (ingredient(lines()[l]).roles.front() == role && !is_struck(ingredient(lines()[l])) &&
                    !is_dry_herb(ingredient(lines()[l])))
                    raise(l, role);
        for (const Role role : brought) bring_in(role);
        problem_.constraints = constraints_of(problem_, stock_, distance_, context_);
        problem_.processes = {ProcessOption{problem_.formula.process, context_.nominal().process(problem_.formula.process), {}, 0}};
        problem_.loss.assign(problem_.start.size(), 0.0);
        problem_.hard = hard_goals(distance_);
        find_equivalents(problem_, knowledge_);
        return std::move(problem_);
    }

private:
    const std::vector<Line>& lines() const { return problem_.formula.lines; }
    const Ingredient& ingredient(const Line& line) const { return *knowledge_.ingredient(line.ingredient); }
    double mass() const { return problem_.start_total[Amount::mass]; }

    // What can be added for the goals that the mass misses: of which roles lines are raised, and foods come in.
    std::pair<std::set<Role>, std::set<Role>> roles_that_help() const {
        std::set<Role> raised, brought;
        for (const auto& goal : distance_.goals()) {
            const double base = distance_.base().properties[goal.property];
            if (shortfall(goal, base, base) <= 0) continue;
            const bool loss = goal.property == Property::cook_loss_pct;
            if (goal.kind == Goal::Kind::at_most && !loss) continue;  // nothing added takes it away
            for (const auto& lever : levers()) {
                if (lever.property != goal.property) continue;
                raised.insert(lever.add.begin(), lever.add.end());
                if (goal.property == Property::greenness) raised.insert(Role::herb);  // parsley is green as well
                if (goal.property == Property::greenness && stock_.listed()) brought.insert(Role::herb);
                brought.insert(lever.add.begin(), lever.add.end());
            }
        }
        return {raised, brought};
    }

    bool is_struck(const Ingredient& food) const {
        const Role role = food.roles.front();
        return (struck_.leaf && (role == Role::green || role == Role::herb)) || (struck_.binders && role == Role::binder) ||
               std::any_of(struck_.notes.begin(), struck_.notes.end(), [&](AromaNote note) { return brings_note(food, note); });
    }

    // A seasoning, and no colour: as much of it as would be seen is all that is tasted.
    static bool is_dry_herb(const Ingredient& food) { return food.roles.front() == Role::herb && food.tissue == Tissue::dry; }

    // Leaf with a taste of its own, for its colour: the formula's at most twice over, another at a part of the most that is good of it.
    double as_colour(const Ingredient& food, double own) const {
        if (!contains(food.roles, Role::herb)) return std::numeric_limits<double>::infinity();
        const double some = context_.constant("mend.herb.some") / 1000 * mass();
        if (own > 0) return std::max(own, some);
        return food.most_g_per_kg ? context_.constant("mend.herb.part") * food.most_g_per_kg->band.mid / 1000 * mass() : some;
    }

    // Whether salt itself is asked for: then what it does beside is no reason for more of it.
    bool asks_salt() const {
        return std::any_of(distance_.goals().begin(), distance_.goals().end(), [&](const Goal& goal) {
            const double base = distance_.base().properties[goal.property];
            return goal.property == Property::salt_pct && shortfall(goal, base, base) > 0;
        });
    }

    // Grams of salt that leave the meat no saltier than most make it.
    double to_the_usual_most(double dose) const {
        const double most = context_.constant("mend.salt.usual-most") / 100 * problem_.start_total[Amount::meat];
        return std::max(0.0, most - problem_.start_total[Amount::salt]) / dose;
    }

    // Starch, flour and powders stir up with water to a paste: past a few spoons to the kilo that is what is tasted.
    double most_of_binder(const Line& food) const {
        const bool dry = ingredient(food).tissue == Tissue::dry;
        return (dry ? std::min(most_of_.binder, context_.constant("mend.most.binder") / 1000) : most_of_.binder) * mass();
    }

    // Grams that bring what the goals still ask for, with slack; for binders what a kilo may hold.
    double enough(const Line& food, const Material& per_gram, Role role) const {
        if (role == Role::binder) return most_of_binder(food);
        double most = 0;
        for (const auto& goal : distance_.goals()) {
            const double base = distance_.base().properties[goal.property], asked = shortfall(goal, base, base);
            const double dose = dose_of(per_gram, role);
            if (asked <= 0 || !(dose > 0)) continue;
            if (role == Role::salt && goal.property != Property::salt_pct) {
                if (!asks_salt()) most = std::max(most, to_the_usual_most(dose));
                continue;
            }
            double grams = most_of_.of_batch(role) * mass();
            if (role == Role::salt && goal.property == Property::salt_pct) grams = asked * mass() / 100 / dose;
            if (role == Role::fat && goal.property == Property::fat_pct) grams = asked * mass() / 100 / dose;
            if (role == Role::heat && goal.property == Property::heat_mg_kg) grams = asked * mass() / 1000 / dose;
            if (role == Role::acid && goal.property == Property::sourness_mmol_kg) grams = asked * mass() / 1000 / dose;
            most = std::max(most, (role == Role::salt ? salt_slack : slack) * grams);
        }
        return std::min(most, most_of_.of_batch(role) * mass());
    }

    double on_hand(const Line& food) const {
        double grams = std::numeric_limits<double>::infinity();
        const Ingredient& what = ingredient(food);
        if (what.most_g_per_kg) grams = what.most_g_per_kg->band.mid * mass() / 1000;
        if (what.roles.front() == Role::fat && what.composition.fat.mid < context_.constant("mend.skin.fat"))
            grams = std::min(grams, context_.constant("mend.skin.most") * mass());
        if (what.roles.front() == Role::fat && !what.meat) grams = std::min(grams, context_.constant("mend.oil.most") * mass());
        const Offer offer = stock_.offer(food);
        if (!offer.on_hand || offer.excluded) return 0;
        return offer.grams ? std::min(grams, *offer.grams) : grams;
    }

    void raise(std::size_t l, Role role) {
        Move move;
        move.kind = MoveKind::raise;
        move.line = l;
        move.food = at_its_best(lines()[l]);
        move.per_gram = as_it_goes_in(move.food);
        move.most = std::min(enough(move.food, move.per_gram, role), on_hand(lines()[l]));
        if (role == Role::green || role == Role::herb) move.most = std::min(move.most, as_colour(ingredient(lines()[l]), own_grams(l)));
        move.price = context_.constant("advice.price.change");
        move.role = role;
        push(std::move(move));
    }

    double own_grams(std::size_t l) const { return lines()[l].grams.mid; }

    void push(Move move) {
        if (!(move.most > 0) || !(dose_of(move.per_gram, move.role) > 0)) return;
        move.least = std::max(least_share * move.most, least_of(move.role));
        if (move.least > move.most) return;
        move.bought = listed_per_gram(move.food, knowledge_);
        problem_.moves.push_back(std::move(move));
    }

    // Grams below which nobody notices it, or weighs it on a kitchen scale.
    double least_of(Role role) const {
        constexpr double scale = 1;
        if (role == Role::binder) return context_.constant("mend.least.binder") * mass() / 1000;
        return role == Role::salt || role == Role::heat ? 0 : scale;
    }

    // Meat and fat come in with the salt that the meat has, and what holds water in a dry mass with the water that it holds.
    Material as_it_goes_in(const Line& line) const {
        Material food = context_.nominal().unit(line);
        if (const auto salt = salt_for(food, problem_.formula, distance_, context_))
            food.add(context_.nominal().unit(salt->food), salt->grams);
        const BringIn* way = way_in(ingredient(line), mending_, struck_.wet);
        if (way && ingredient(line).roles.front() == Role::binder && way->water > 0) {
            Line water;
            water.ingredient = "water";
            food.add(context_.nominal().unit(water), way->water);
        }
        return food;
    }

    // As a maker who lacks it would prepare it, whatever was done to the line that is there: a pod with its seeds, where heat is asked for,
    // and leaf blanched briefly.
    Line at_its_best(Line line) const {
        blanch_briefly(line, knowledge_);
        if (ingredient(line).roles.front() != Role::heat) return line;
        const auto seeded =
            std::find_if(line.prepared.begin(), line.prepared.end(), [](const Prepared& step) { return step.preparation == "seeded"; });
        if (seeded == line.prepared.end()) return line;
        line.prepared.erase(seeded);
        line.count.reset();
        line.weighed_prepared = false;
        return line;
    }

    bool in_the_mass(const Ingredient& food) const {
        return std::any_of(lines().begin(), lines().end(), [&](const Line& line) { return line.ingredient == food.id; });
    }

    bool has_line_of(Role role) const {
        return std::any_of(lines().begin(), lines().end(), [&](const Line& line) { return ingredient(line).roles.front() == role; });
    }

    // Meat and fat of the animals that are in already; cold, dry or ground so that it still spreads.
    bool spreads(const Ingredient& food, Role role) const {
        const auto same_beast = [&](const Line& line) {
            const auto& meat = ingredient(line).meat;
            return meat && food.meat && meat->species == food.meat->species;
        };
        if (role == Role::binder && belongs(food, "whole-dry", knowledge_)) return false;
        if (role == Role::binder) return food.tissue == Tissue::dry || (stock_.listed() && food.tissue == Tissue::egg);
        if (role == Role::fat && !food.already.empty() && !stock_.names(food.id)) return false;  // bacon and salt pork bring another taste
        if (role == Role::fat)  // of another animal only where the maker's list names it, or for game and rabbit, which have none
            return goes_in_as_oil(food) ||
                   (food.meat && (stock_.names(food.id) ||
                                  (firm_enough(food) && (std::any_of(lines().begin(), lines().end(), same_beast) ||
                                                         (has_no_fat_of_its_own(problem_.formula, knowledge_) && firm_fat(food))))));
        if (role == Role::herb) return stock_.names(food.id) && food.chlorophyll && food.tissue != Tissue::dry;
        if (role == Role::salt) return food.tissue == Tissue::dry;
        return !food.meat;
    }

    // Oil and soft fat that the list names; without a list plain oil, into birds and fish, which have little firm fat of their own.
    bool goes_in_as_oil(const Ingredient& food) const {
        constexpr double mostly_fat = 75;  // %; what is less is a cheese or a cream
        if (food.meat || food.composition.fat.mid < mostly_fat) return false;
        if (stock_.names(food.id)) return true;
        const auto lean_kind = [&](const Line& line) {
            const auto& meat = ingredient(line).meat;
            return !meat || meat->species == Species::chicken || meat->species == Species::turkey || meat->species == Species::fish;
        };
        return !stock_.listed() && food.tissue == Tissue::liquid && food.allergens.empty() && food.may_hold.empty() && !food.tint &&
               !belongs(food, "seldom-sold", knowledge_) && std::all_of(lines().begin(), lines().end(), lean_kind);
    }

    // Fat softer than the animal's own smears in a coarse mass.
    bool firm_enough(const Ingredient& food) const {
        const auto plate = problem_.formula.process.plate_mm;
        if (plate && *plate < context_.constant("mend.fat.coarse")) return true;
        const auto softens = [&](const std::string& id) { return knowledge_.parameter(id).mid; };
        const std::string of_animal = "fat.softens." + std::string(spelling(food.meat->species));
        return softens(softening_of(food, knowledge_)) >= softens(of_animal);
    }

    // Such as stands in any shop.
    bool firm_fat(const Ingredient& food) const {
        return (food.meat->species == Species::pork || food.meat->species == Species::beef) && food.allergens.empty() &&
               food.already.empty() && food.composition.fat.mid >= context_.constant("mend.skin.fat");
    }

    double new_allergens(const Ingredient& food) const {
        return static_cast<double>(
            std::count_if(food.allergens.begin(), food.allergens.end(), [&](const auto& a) { return !allergens_.count(a); }));
    }

    // As much of it as greens a mass, on the list or in the formula.
    bool has_fresh_leaf(const std::vector<const Ingredient*>& foods) const {
        constexpr double enough = 0.03;  // of the mass; judgement
        const auto is_fresh = [&](const Ingredient& food) {
            const Offer offer = stock_.offer(food);
            return stock_.names(food.id) && is_leaf(food.tissue) && offer.on_hand && offer.grams.value_or(mass()) >= enough * mass();
        };
        return std::any_of(foods.begin(), foods.end(), [&](const Ingredient* food) { return is_fresh(*food); }) ||
               std::any_of(lines().begin(), lines().end(), [&](const Line& line) { return is_fresh(ingredient(line)); });
    }

    void bring_in(Role role) {
        if (role == Role::salt && has_line_of(role)) return;  // salt is salt
        std::map<std::string, int> known;                     // how often it is named as a stand-in: the usual ones first
        for (const auto& swap : knowledge_.records().swaps)
            if (swap.role == role) ++known[swap.to];
        std::vector<const Ingredient*> foods;
        for (const auto& food : knowledge_.records().ingredients)
            if (food.roles.front() == role && !in_the_mass(food) && !is_struck(food) && stock_.can_bring(food) &&
                !stock_.in_doubt(food.id) && spreads(food, role) && (stock_.listed() || new_allergens(food) == 0))
                foods.push_back(&food);
        // Fresh leaf that is there goes in before its powder.
        if (role == Role::green && has_fresh_leaf(foods))
            std::erase_if(foods, [](const Ingredient* food) { return food->tissue == Tissue::dry; });
        // Gums and fibres too come after what stands in any kitchen.
        const auto rare = [&](const Ingredient* i) {
            if (stock_.listed()) return false;
            return belongs(*i, "seldom-sold", knowledge_) || belongs(*i, "gathered", knowledge_) ||
                   (role == Role::binder && (i->most_g_per_kg || i->family == "proteins-and-fibres"));
        };
        std::stable_sort(foods.begin(), foods.end(), [&](const Ingredient* a, const Ingredient* b) {
            return rare(a) != rare(b) ? rare(b) : known[a->id] > known[b->id];
        });
        const std::size_t most_foods = role == Role::salt ? 1 : foods_a_role;  // another salt is no other idea
        if (foods.size() > most_foods) foods.resize(most_foods);
        for (const auto* food : foods) {
            Move move;
            move.kind = MoveKind::add;
            move.food = at_its_best(brought_in(*food, role, knowledge_));
            move.per_gram = as_it_goes_in(move.food);
            move.most = std::min(enough(move.food, move.per_gram, role), on_hand(move.food));
            if (role == Role::green || role == Role::herb) move.most = std::min(move.most, as_colour(*food, 0));
            move.price = context_.constant("advice.price.new") + new_allergens(*food) * context_.constant("advice.price.allergen");
            move.role = role;
            push(std::move(move));
        }
    }

    const Stock& stock_;
    const Distance& distance_;
    const Mending& mending_;
    const Context& context_;
    const Proportions most_of_;
    const Knowledge& knowledge_;
    Problem problem_;
    std::set<std::string> allergens_;
    Struck struck_;
};

}  // namespace

std::optional<SaltBeside> salt_for(const Material& food, const Formula& mass, const Distance& distance, const Context& context) {
    if (!(food[Amount::meat] > 0) || distance.wanted(Property::salt_pct)) return std::nullopt;
    double salt = 0, meat = 0;
    const Line* salting = nullptr;
    for (const auto& line : mass.lines) {
        const Material one = context.nominal().unit(line);
        meat += line.grams.mid * one[Amount::meat];
        if (context.knowledge().ingredient(line.ingredient)->roles.front() != Role::salt) continue;
        salt += line.grams.mid * one[Amount::salt];
        if (!salting) salting = &line;
    }
    if (!salting || !(meat > 0)) return std::nullopt;
    const double lacking = food[Amount::meat] * salt / meat - food[Amount::salt];
    if (!(lacking > 0)) return std::nullopt;
    return SaltBeside{*salting, lacking / context.nominal().unit(*salting)[Amount::salt]};
}

Problem additions_to(const Formula& mass, const Material& start, const Stock& stock, const Distance& distance, const Mending& mending,
                     const Context& context, const Struck& struck) {
    return AdditionsBuilder(mass, start, stock, distance, mending, context, struck).build();
}

}  // namespace standin
