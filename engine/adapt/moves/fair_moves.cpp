#include "adapt/moves/fair_moves.hpp"

#include <algorithm>
#include <limits>
#include <optional>
#include <set>

#include "adapt/moves/odd_foods.hpp"
#include "adapt/moves/salt_follows.hpp"
#include "core/contains.hpp"
#include "evaluate/batch.hpp"
#include "knowledge/index/kinds.hpp"
#include "knowledge/records/tissue.hpp"
#include "substitute/dose.hpp"
#include "substitute/portion.hpp"

namespace standin {
namespace {

bool stands_in(const Problem& problem, const Move& move) { return move.kind == MoveKind::stand_in && problem.missing[move.line]; }

double mass_of(const Formula& formula, const Context& context) { return NominalBatch(formula, context.nominal()).total()[Amount::mass]; }

// What comes in beside another food for the line does not come in for it by itself as well, nor does a food that is nearer with its
// partner.
bool is_half_of(const Move& pair, const Move& move, const Problem& problem) {
    constexpr double most_of_it = 0.5;  // of what is missing; judgement
    if (!pair.second || move.second) return false;
    // Loin beside belly for shoulder: where there is hardly any belly the loin comes in all the same.
    const bool lean = move.role == Role::lean,
               runs_out = pair.most * pair.covers->per_gram < most_of_it * missing_share(problem, pair.line);
    const bool leads =
        pair.food.ingredient == move.food.ingredient && pair.stands_for.front().closeness >= move.stands_for.front().closeness;
    const bool nearer_alone =
        move.stands_for.front().closeness > pair.stands_for.front().closeness;  // zest for lemongrass, without the ginger
    return leads || (pair.second->food.ingredient == move.food.ingredient && !nearer_alone && !(lean && runs_out));
}

// Cider vinegar before lemon juice where malt vinegar is missing, dried rosemary before thyme where the fresh is: whatever else is missing.
bool is_kin_before(const Problem& problem, const Move& other, const Move& move, const Context& context) {
    const double a_kin_nearer = context.constant("advice.fair.a-kin-nearer");
    const double nearly_same = context.constant("advice.fair.nearly-same");
    const double own_plant = context.constant("advice.fair.own-plant");
    const StandsFor &nearer = other.stands_for.front(), &further = move.stands_for.front();
    if (nearer.closeness >= nearly_same && nearer.closeness >= further.closeness + a_kin_nearer) return true;
    const auto of_plant = [&](const Move& one) {
        return same_plant(*context.knowledge().ingredient(problem.formula.lines[one.line].ingredient),
                          *context.knowledge().ingredient(one.food.ingredient));
    };
    return amount_of_dose(nearer.role) && nearer.role == further.role && nearer.closeness >= own_plant && of_plant(other) &&
           !of_plant(move);
}

// What the list names, brings no new allergen and carries all that is missing is taken before more of a line that is there, and before
// what hardly resembles the line.
class NearerFirst {
public:
    NearerFirst(Problem& problem, const Stock& stock, const FoodPrice& price, const Context& context)
        : problem_(problem), stock_(stock), price_(price), context_(context), all_(problem.moves) {}

    void take() {
        for (auto& move : problem_.moves) {
            if ((is_idea(move) && has_kin(move)) || has_nearer_sour(move)) move.price += context_.constant("advice.price.passed-over");
            if (has_harmless(move)) move.price += context_.constant("advice.price.harmless");
        }
        std::erase_if(problem_.moves, [&](const Move& move) {
            if (!stands_in(problem_, move)) return false;  // what is added stands for no line, though it is told beside the first
            const bool other_first = std::any_of(all_.begin(), all_.end(), [&](const Move& other) { return goes_before(other, move); });
            return other_first || is_herb_beside_leaves(move) || (!is_idea(move) && has_kin(move));
        });
    }

private:
    const Ingredient& food_of(const Line& line) const { return *context_.knowledge().ingredient(line.ingredient); }
    const Ingredient& missing_of(const Move& move) const { return food_of(problem_.formula.lines[move.line]); }
    bool rough(const Move& move) const { return is_rough(move.stands_for.front().swaps, context_.knowledge()); }
    bool brings_allergen(const Move& move) const { return price_.of_allergens(food_of(move.food)) > 0; }
    static double closeness(const Move& move) { return move.stands_for.front().closeness; }

    bool fills(const Move& move, double share) const {
        return there_for(move) * move.covers->per_gram >= share * missing_share(problem_, move.line);
    }

    // The haddock of the list goes for the cod first: what is left of it for the prawns.
    double there_for(const Move& move) const {
        const Offer offer = stock_.offer(move.food);
        if (!offer.grams || move.into) return move.most;
        std::set<std::size_t> lines{move.line};
        double others = 0;
        for (const auto& other : all_)
            if (stands_in(problem_, other) && other.food.ingredient == move.food.ingredient && lines.insert(other.line).second)
                others += missing_share(problem_, other.line) / other.covers->per_gram;
        return std::min(move.most, std::max(0.0, *offer.grams - others));
    }

    // On the list; without one, in any shop.
    bool is_to_hand(const Move& move) const {
        return stock_.listed() ? stock_.names(move.food.ingredient) : price_.of_finding(food_of(move.food)) <= 0;
    }

    bool carries_all(const Move& move) const { return !move.into && is_to_hand(move) && fills(move, all_but_) && !brings_allergen(move); }

    // Bacon for back fat beside belly: cured meat for fresh is a last resort.
    bool is_fresh_for_cured(const Move& other, const Move& move) const {
        const auto is_cured = [&](const Line& line) { return cured(food_of(line), context_); };
        return is_cured(move.food) && !is_cured(problem_.formula.lines[move.line]) && !is_cured(other.food) && food_of(other.food).meat &&
               fills(other, a_third_);
    }

    // Sour flesh that a swap names, on the list, is taken before what is poured or only matches the dose: tamarind for green mango
    // before vinegar.
    bool is_flesh_for_poured(const Move& other, const Move& move) const {
        if (move.role != Role::acid || !is_vegetable(missing_of(move).tissue)) return false;
        const bool fair = !other.into && is_to_hand(other) && fills(other, half_) && !brings_allergen(other);
        return fair && !rough(other) && closeness(other) > closeness(move) && food_of(other.food).tissue != Tissue::liquid &&
               (rough(move) || food_of(move.food).tissue == Tissue::liquid);
    }

    // Salt and water have nothing of what fish sauce is there for: the soy sauce of the list goes before them, though it is darker.
    bool is_savour_for_salt(const Move& other, const Move& move) const {
        constexpr double some_of_it = 0.3;  // the salt makes up the rest; judgement
        const auto plain = [&](const Ingredient& food) { return plain_salt(food, context_.knowledge()); };
        if (!plain(food_of(move.food)) || plain(missing_of(move))) return false;
        return stock_.listed() && stock_.names(other.food.ingredient) && !stock_.in_doubt(other.food.ingredient) && !rough(other) &&
               contains(food_of(other.food).roles, Role::spice) && closeness(other) > closeness(move) && fills(other, some_of_it);
    }

    // Nettle for chard before sorrel, though sorrel is the nearer green: a plain leaf of the list fills the place of a plain one, and what
    // is sour is wanted where something sour is missing.
    bool is_plain_for_sour_leaf(const Move& other, const Move& move) const {
        if (!is_plain_leaf(missing_of(move)) || !contains(food_of(move.food).roles, Role::acid) || move.into) return false;
        return is_plain_leaf_to_hand(other) && closeness(other) >= closeness(move) + clearly_nearer_ && fills(other, half_);
    }

    bool is_plain_leaf_to_hand(const Move& move) const {
        return !move.into && !move.second && is_plain_leaf(food_of(move.food)) && is_to_hand(move) &&
               !stock_.in_doubt(move.food.ingredient) && !brings_allergen(move) && !rough(move);
    }

    static bool is_seasoning_leaf(const Ingredient& food) { return contains(food.roles, Role::herb); }
    static bool is_plain_leaf(const Ingredient& food) {
        return food.roles.front() == Role::green && !contains(food.roles, Role::acid) && !is_seasoning_leaf(food);
    }

    // Spinach and dandelion for nettle before parsley: what seasons is wanted where a seasoning is missing, as long as plain leaves of the
    // list fill the place together.
    bool is_herb_beside_leaves(const Move& move) const {
        if (!is_plain_leaf(missing_of(move)) || !is_seasoning_leaf(food_of(move.food))) return false;
        double together = 0;
        for (const auto& other : all_)
            if (stands_in(problem_, other) && other.line == move.line && is_plain_leaf_to_hand(other))
                together += there_for(other) * other.covers->per_gram;
        return together >= all_but_ * missing_share(problem_, move.line);
    }

    // Nor is a leaf without scent any herb: parsley and marjoram for basil before beet greens, unless the herb is the bulk of a paste.
    bool is_scentless_for_herb(const Move& other, const Move& move) const {
        constexpr double bulk = 0.03;       // of the batch; judgement
        constexpr double some_of_it = 0.2;  // of what is missing; judgement
        const Line& line = problem_.formula.lines[move.line];
        if (!is_seasoning_leaf(missing_of(move)) || !is_plain_leaf(food_of(move.food))) return false;
        if (line.grams.mid > bulk * mass_) return false;
        return amount_of_dose(food_of(other.food).roles.front()) && (other.into || is_to_hand(other)) && !brings_allergen(other) &&
               fills(other, some_of_it);
    }

    bool goes_before(const Move& other, const Move& move) const {
        if (!stands_in(problem_, other) || other.line != move.line) return false;
        if (is_half_of(other, move, problem_) || is_fresh_for_cured(other, move) || is_flesh_for_poured(other, move)) return true;
        if (is_savour_for_salt(other, move) || is_plain_for_sour_leaf(other, move)) return true;
        if (is_scentless_for_herb(other, move)) return true;
        const bool bystander = move.into && closeness(other) >= closeness(move);
        const bool far = closeness(move) < far_off_ && closeness(other) >= closeness(move) + clearly_nearer_;
        return (bystander || far) && carries_all(other);
    }

    bool has_kin(const Move& move) const {
        return stands_in(problem_, move) && std::any_of(all_.begin(), all_.end(), [&](const Move& other) {
                   return stands_in(problem_, other) && other.line == move.line && is_kin_before(problem_, other, move, context_) &&
                          carries_all(other);
               });
    }

    // Another leaf beside near kin is another idea, and no first one; another sour or spice only makes up for what some other line lost.
    // Where any shop may fill the place, another binder is another idea too.
    bool is_idea(const Move& move) const {
        return (move.role == Role::binder && !stock_.listed()) || is_vegetable(missing_of(move).tissue);
    }

    bool has_harmless(const Move& move) const {
        return stands_in(problem_, move) && brings_allergen(move) && std::any_of(all_.begin(), all_.end(), [&](const Move& other) {
                   return stands_in(problem_, other) && other.line == move.line && !brings_allergen(other) &&
                          (other.into || is_to_hand(other)) && closeness(other) + hardly_further_ >= closeness(move) &&
                          fills(other, all_but_);
               });
    }

    // Lemon for wine vinegar before balsamic: of what is poured for a sour line the clearly nearer.
    bool is_poured_sour(const Move& move) const {
        return stands_in(problem_, move) && move.role == Role::acid && food_of(move.food).tissue == Tissue::liquid && !move.into;
    }

    // Nor is a paste that only matches the dose stirred in where one is poured: rice vinegar for cane vinegar before tamarind.
    bool is_paste_for_poured(const Move& move) const {
        return stands_in(problem_, move) && move.role == Role::acid && rough(move) && !move.into &&
               missing_of(move).tissue == Tissue::liquid;
    }

    bool has_nearer_sour(const Move& move) const {
        return (is_poured_sour(move) || is_paste_for_poured(move)) && std::any_of(all_.begin(), all_.end(), [&](const Move& other) {
                   return is_poured_sour(other) && other.line == move.line && is_to_hand(other) && !brings_allergen(other) &&
                          closeness(other) >= closeness(move) + clearly_nearer_ && fills(other, half_);
               });
    }

    Problem& problem_;
    const Stock& stock_;
    const FoodPrice& price_;
    const Context& context_;
    std::vector<Move> all_;  // before any is taken out
    double mass_ = mass_of(problem_.formula, context_);
    double all_but_ = context_.constant("advice.fair.all-but"), half_ = context_.constant("advice.fair.half");
    double a_third_ = context_.constant("advice.fair.a-third"), far_off_ = context_.constant("advice.fair.far-off");
    double clearly_nearer_ = context_.constant("advice.fair.clearly-nearer");
    double hardly_further_ = context_.constant("advice.fair.hardly-further");
};

// What sets a seasoning that comes in back, as where swaps are listed: how unlike it is, less where makers take it without asking.
double set_back(const Problem& problem, const Move& move, const Context& context) {
    const double unlike = context.constant("stand_ins.order.closeness"), custom = context.constant("stand_ins.order.trade");
    double back = unlike * (1 - move.stands_for.front().closeness);
    for (const auto& swap : context.knowledge().records().swaps)
        if (swap.from == problem.formula.lines[move.line].ingredient && swap.to == move.food.ingredient && !swap.partner)
            back = std::min(back, unlike * (1 - swap.closeness) - (swap.trade ? custom : 0.0));
    return back;
}

// Of the herbs and spices on the list for a missing one the first of its swaps is taken, and where there is too little of that, what there
// is of it: the next makes up the rest. Coriander leaf before carrot tops for parsley, fennel fronds and then parsley for dill.
void first_of_the_swaps_first(Problem& problem, const Stock& stock, const FoodPrice& price, const Context& context) {
    const double all_but = context.constant("advice.fair.all-but");
    constexpr double a_bunch = 0.2;  // of what is missing: so little of the first goes in all the same; judgement
    const double over_missing = context.constant("advice.fair.over-missing");
    constexpr double clearly_before = 0.1;  // of that order; judgement
    constexpr double at_the_back = 5;       // times the price: the aroma is in the order already; judgement
    constexpr std::size_t few = 3;          // herbs that are missing; of more each has its own, and not all the same one
    const auto is_seasoning = [&](std::size_t l) { return is_missing_seasoning(problem, l, context.knowledge()); };
    std::size_t seasonings = 0;
    for (std::size_t l = 0; l < problem.formula.lines.size(); ++l) seasonings += is_seasoning(l) ? 1 : 0;
    if (!stock.listed() || seasonings > few) return;
    const auto food_of = [&](const Move& move) -> const Ingredient& { return *context.knowledge().ingredient(move.food.ingredient); };
    for (std::size_t l = 0; l < problem.formula.lines.size(); ++l) {
        if (!is_seasoning(l)) continue;
        const auto on_hand = [&](const Move& move) {
            return stands_in(problem, move) && move.line == l && !move.into && !move.second && stock.names(move.food.ingredient) &&
                   !stock.in_doubt(move.food.ingredient) && price.of_allergens(food_of(move)) <= 0;
        };
        const double missing = missing_share(problem, l);
        // More of a leaf that is there tastes of that leaf: it comes after what is clearly nearer as well.
        const auto more_of_a_line = [&](const Move& move) {
            return stands_in(problem, move) && move.line == l && move.into && !move.second;
        };
        std::vector<std::pair<Move*, double>> listed;  // how far back each stands
        for (auto& move : problem.moves)
            if (on_hand(move)) listed.emplace_back(&move, set_back(problem, move, context));
        const Move* first = nullptr;
        double stands_at = 0;
        for (const auto& [move, back] : listed)
            if (move->most * move->covers->per_gram >= a_bunch * missing && (!first || back < stands_at)) {
                first = move;
                stands_at = back;
            }
        if (!first) continue;
        const double carries = first->most * first->covers->per_gram, rest = missing - carries;
        const bool enough = rest <= (1 - all_but) * missing;
        for (auto& move : problem.moves)
            if (enough && more_of_a_line(move) && set_back(problem, move, context) - stands_at >= clearly_before)
                move.price += context.constant("advice.price.passed-over");
        for (const auto& [move, back] : listed) {
            if (move == first || back - stands_at < clearly_before) continue;
            if (enough) move->price += at_the_back * context.constant("advice.price.passed-over");
            else {  // it is half of one answer, as the second part of a swap is
                move->most = std::min(move->most, over_missing * rest / move->covers->per_gram);
                move->least = std::min(move->least, move->most);
                move->price = context.constant("advice.price.second");
                move->rest_of = RestOf{static_cast<std::size_t>(first - problem.moves.data()), over_missing * rest / carries};
            }
        }
    }
}

Material unit_of(const Line& line, const Context& context) { return context.nominal().unit(line); }

bool of_fat(const Problem& problem, const Move& move, const Context& context) {
    const Line& line = problem.formula.lines[move.line];
    return stands_in(problem, move) && context.knowledge().ingredient(line.ingredient)->roles.front() == Role::fat &&
           unit_of(line, context)[Amount::meat] > 0;
}

// The biggest line that is clearly leaner than what comes in.
std::optional<std::size_t> lean_line(const Problem& problem, double fat, const Context& context) {
    const double more_fat = context.constant("advice.fair.more-fat");
    std::optional<std::size_t> biggest;
    for (std::size_t l = 0; l < problem.formula.lines.size(); ++l) {
        const Line& line = problem.formula.lines[l];
        const Material unit = unit_of(line, context);
        const bool lean = context.knowledge().ingredient(line.ingredient)->roles.front() == Role::lean && unit[Amount::meat] > 0;
        if (!lean || line.keep || problem.missing[l] || unit[Amount::fat] + more_fat > fat) continue;
        if (!biggest || line.grams.mid > problem.formula.lines[*biggest].grams.mid) biggest = l;
    }
    return biggest;
}

bool is_over_its_most(const Problem& problem, const Line& line, const Context& context) {
    const auto& limit = context.knowledge().ingredient(line.ingredient)->most_g_per_kg;
    return limit && 1000 * line.grams.mid > limit->band.mid * mass_of(problem.formula, context);
}

// Back fat for lard: the same dose outweighs what is missing, and the meat block is not made heavier by it.
double block_room(const Problem& problem, const Move& move, const Context& context) {
    if (!of_fat(problem, move, context) || !(move.per_gram[Amount::meat] > 0)) return std::numeric_limits<double>::infinity();
    const Line& line = problem.formula.lines[move.line];
    return missing_share(problem, move.line) * line.grams.mid * unit_of(line, context)[Amount::meat] / move.per_gram[Amount::meat];
}

// Near kin, the same plant, a liquid made up with water, and fat that brings no lean: nobody weighs three quarters of them.
bool takes_the_whole_place(const Problem& problem, const Move& move, const Context& context) {
    const double nearly_same = context.constant("advice.fair.nearly-same");
    const double fairly_near = context.constant("advice.fair.fairly-near");
    const Line& line = problem.formula.lines[move.line];
    const bool fat =
        context.knowledge().ingredient(line.ingredient)->roles.front() == Role::fat && move.stands_for.front().role == Role::fat;
    const bool pure = fat && lean_brought(problem, move, context) <= 0;
    const bool own = amount_of_dose(move.stands_for.front().role) &&
                     same_plant(*context.knowledge().ingredient(line.ingredient), *context.knowledge().ingredient(move.food.ingredient));
    // Broad beans for peas: makers weigh one vegetable as the other.
    const auto& swaps = move.stands_for.front().swaps;
    const Swap* swap = swaps.size() == 1 ? &context.knowledge().records().swaps[swaps.front()] : nullptr;
    const bool even = swap && swap->basis == Basis::weight && swap->trade && swap->closeness >= fairly_near && !swap->partner &&
                      is_vegetable(context.knowledge().ingredient(line.ingredient)->tissue) &&
                      is_vegetable(context.knowledge().ingredient(move.food.ingredient)->tissue);
    const bool watered = move.second && from_the_tap(move.second->food.ingredient);
    return (pure || own || even || watered || move.stands_for.front().closeness >= nearly_same) &&
           !is_over_its_most(problem, line, context);
}

// Of a vegetable that is on the list for less than the whole place, and as near to the line: it goes in, and this one makes up the rest.
// Spring onions and onion for leek.
double part_on_hand(const Problem& problem, const Move& move, const Stock& stock, const Context& context) {
    const double all_but = context.constant("advice.fair.all-but");
    if (!move.fills || !is_vegetable(context.knowledge().ingredient(problem.formula.lines[move.line].ingredient)->tissue)) return 0;
    double part = 0;
    for (const auto& other : problem.moves) {
        if (!stands_in(problem, other) || other.line != move.line || !other.fills || other.into || other.second) continue;
        const double covers = other.most * other.covers->per_gram;
        const bool as_near = other.stands_for.front().closeness >= move.stands_for.front().closeness;
        if (other.food.ingredient != move.food.ingredient && as_near && stock.names(other.food.ingredient) &&
            covers < all_but * missing_share(problem, move.line))
            part = std::max(part, covers);
    }
    return part;
}

}  // namespace

void hold_to_what_is_missing(Problem& problem, bool asked, const Stock& stock, const FoodPrice& price, const Context& context) {
    const double the_whole = context.constant("advice.fair.the-whole");
    const double over_missing = context.constant("advice.fair.over-missing");
    const double over_missing_salt = context.constant("advice.fair.over-missing-salt");
    NearerFirst(problem, stock, price, context).take();
    first_of_the_swaps_first(problem, stock, price, context);
    if (asked) return;
    for (auto& move : problem.moves) {
        if (!stands_in(problem, move)) continue;
        const double missing = missing_share(problem, move.line) / move.covers->per_gram;
        const double over = move.role == Role::salt ? over_missing_salt : over_missing;
        move.most = std::min(move.most, std::max(over * missing, move.least));
        // Flour and starch stay under a cap that their whole place may be over: then as much as it leaves room for comes in.
        if (!is_dry_binder(*context.knowledge().ingredient(move.food.ingredient)) && takes_the_whole_place(problem, move, context)) {
            const double beside = part_on_hand(problem, move, stock, context) / move.covers->per_gram;
            move.least =
                std::max(move.least, std::min(move.most, the_whole * std::min(missing - beside, block_room(problem, move, context))));
        }
    }
}

double lean_brought(const Problem& problem, const Move& move, const Context& context) {
    const double more_fat = context.constant("advice.fair.more-fat");
    if (!of_fat(problem, move, context) || !(move.per_gram[Amount::meat] > 0)) return 0;
    const double was = unit_of(problem.formula.lines[move.line], context)[Amount::fat], comes = move.per_gram[Amount::fat];
    return comes + more_fat > was ? 0 : 1 - comes / was;
}

void take_lean_off(Problem& problem, const Context& context) {
    double fat = 0;  // of the leanest cut that brings lean along
    for (const auto& move : problem.moves)
        if (lean_brought(problem, move, context) > 0)
            fat = fat > 0 ? std::min(fat, move.per_gram[Amount::fat]) : move.per_gram[Amount::fat];
    const auto l = fat > 0 ? lean_line(problem, fat, context) : std::nullopt;
    const bool moves_already = l && std::any_of(problem.moves.begin(), problem.moves.end(),
                                                [&](const Move& move) { return move.kind == MoveKind::reduce && move.line == *l; });
    if (!l || moves_already) return;
    problem.moves.push_back(trim_of(problem, *l, Role::lean, context.constant("stand_ins.meat.most"), context));
}

bool takes_lean_off(const Problem& problem, const Move& move) { return trims(problem, move, Role::lean); }

Move trim_of(const Problem& problem, std::size_t l, Role role, double share, const Context& context) {
    const Line& line = problem.formula.lines[l];
    Move move;
    move.kind = MoveKind::reduce;
    move.line = l;
    move.food = line;
    move.per_gram = negated(unit_of(line, context));
    move.most = share * line.grams.mid;
    move.least = std::min(move.most, context.constant("advice.trim.least") * line.grams.mid);
    move.price = context.constant("advice.price.trim");
    move.trim = true;
    move.role = role;
    return move;
}

bool trims(const Problem& problem, const Move& move, Role role) {
    return move.kind == MoveKind::reduce && move.trim && move.role == role && !problem.missing[move.line];
}

}  // namespace standin
