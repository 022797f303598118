#include "adapt/moves/problem.hpp"

#include <algorithm>
#include <array>
#include <map>
#include <set>

#include "adapt/distance/asked_roles.hpp"
#include "adapt/distance/fat_wants.hpp"
#include "adapt/goals/proportions.hpp"
#include "adapt/goals/request.hpp"
#include "adapt/moves/additions.hpp"
#include "adapt/moves/also_brings.hpp"
#include "adapt/moves/constraints.hpp"
#include "adapt/moves/doubtful.hpp"
#include "adapt/moves/equivalents.hpp"
#include "adapt/moves/exclusive.hpp"
#include "adapt/moves/fair_moves.hpp"
#include "adapt/moves/fat_back.hpp"
#include "adapt/moves/food_price.hpp"
#include "adapt/moves/leaner_cut.hpp"
#include "adapt/moves/line_limits.hpp"
#include "adapt/moves/losses.hpp"
#include "adapt/moves/making.hpp"
#include "adapt/moves/odd_foods.hpp"
#include "adapt/moves/own_first.hpp"
#include "adapt/moves/own_water.hpp"
#include "adapt/moves/red_hides_green.hpp"
#include "adapt/moves/room_under_caps.hpp"
#include "adapt/moves/salt_follows.hpp"
#include "adapt/moves/same_line.hpp"
#include "adapt/moves/scarce_lean.hpp"
#include "adapt/moves/stand_in_place.hpp"
#include "adapt/moves/there.hpp"
#include "core/band.hpp"
#include "core/contains.hpp"
#include "knowledge/index/kinds.hpp"
#include "knowledge/records/tissue.hpp"
#include "models/as_bought.hpp"
#include "substitute/dose.hpp"
#include "substitute/portion.hpp"
#include "substitute/stand_ins.hpp"

namespace standin {
namespace {

constexpr std::size_t stand_ins_a_line = 7, adds_of_a_kind = 6;

class Builder {
public:
    Builder(const Formula& formula, const Stock& stock, const SwapGraph& graph, const Distance& distance, const Context& context,
            Leeway leeway)
        : stock_(stock),
          graph_(graph),
          distance_(distance),
          context_(context),
          most_(formula, context),
          knowledge_(context.knowledge()),
          leeway_(leeway),
          price_(formula, stock, context),
          place_(problem_, base_mass_, asked_, context) {
        problem_.formula = formula;
    }

    Problem build() && {
        start();
        find_roles();
        for (std::size_t l = 0; l < lines().size(); ++l) replace_line(l);
        hold_to_what_is_missing(problem_, !distance_.goals().empty(), stock_, price_, context_);
        take_less_where_less_is_asked(problem_, distance_);
        put_fat_back();
        for (std::size_t l = 0; l < lines().size(); ++l) change_line(l);
        take_lean_off(problem_, context_);
        if (distance_.goals().empty()) take_water_off(problem_, context_);
        for (const Role role : asked_.add) add_role(role);
        problem_.constraints = constraints_of(problem_, stock_, distance_, context_);
        take_as_far_as_caps_let(problem_);
        problem_.processes = ways_of_making(problem_.formula, distance_, context_);
        problem_.spared = spared_in(problem_, distance_, context_);
        problem_.loss = losses_in(problem_, distance_, context_);
        take_the_ideas(problem_, stock_, context_);
        problem_.hard = hard_goals(distance_);
        find_equivalents(problem_, knowledge_);
        problem_.exclusive = exclusive_groups(problem_, knowledge_);
        return std::move(problem_);
    }

private:
    const std::vector<Line>& lines() const { return problem_.formula.lines; }
    const Ingredient& ingredient(const Line& line) const { return *knowledge_.ingredient(line.ingredient); }
    Role role_of_line(std::size_t l) const { return ingredient(lines()[l]).roles.front(); }
    bool is_meat(std::size_t l) const { return ingredient(lines()[l]).meat.has_value(); }
    double bought(const Line& line) const { return listed_per_gram(line, knowledge_); }
    Material unit(const Line& food) { return context_.nominal().unit(food); }

    void start() {
        left_ = take_what_is_there(problem_, stock_, knowledge_);
        double meat = 0;
        for (std::size_t l = 0; l < lines().size(); ++l) {
            const Material one = unit(lines()[l]);
            problem_.start_total.add(one, problem_.start[l]);
            // Fat that is not to be had may be rendered fat or oil instead, which is no meat.
            const bool fat = problem_.missing[l] && role_of_line(l) == Role::fat;
            meat += one[Amount::meat] * (fat ? problem_.start[l] : lines()[l].grams.mid);
            base_mass_ += one[Amount::mass] * lines()[l].grams.mid;
            base_acid_ += one[Amount::titratable] * lines()[l].grams.mid;
        }
        problem_.least_meat = least_share_of_meat(problem_.formula, stock_, distance_, leeway_, context_) * meat;
    }

    // What a want or a missing line lets us touch.
    void find_roles() {
        asked_ = roles_asked_for(
            distance_, [&](Role role) { return has_line_of(role); }, [&](Role role) { return has_main_line_of(role); }, leeway_);
        own_food_first(asked_, problem_, stock_, distance_, context_, leeway_);
        open_leaner_cuts(asked_, problem_.formula, distance_, stock_, leeway_);
        for (std::size_t l = 0; l < lines().size(); ++l)
            if (problem_.missing[l] && sour_vegetable(l)) {
                lost_acid_ += unit(lines()[l])[Amount::titratable] * (lines()[l].grams.mid - problem_.start[l]);
                make_up_for(Role::acid);
                asked_.down.insert(Role::acid);
            } else if (problem_.missing[l] && is_garlicky_leaf(problem_.formula, l, distance_, context_)) make_up_for(Role::allium);
    }

    void put_fat_back() {
        const double lost = fat_lost_with_lean(problem_, stock_, distance_, context_);
        if (!(lost > 0)) return;
        make_room_for_fat(problem_, lost, stock_);
        make_up_for(Role::fat);
        asked_.only_listed_fat = true;
    }

    // A stand-in for the bulk leaves some of the dose to others.
    void make_up_for(Role role) {
        for (auto* roles : {&asked_.change, &asked_.up, &asked_.add}) roles->insert(role);
    }

    // Tomatillo, sorrel: what stands in for its bulk may need a partner for its acid.
    bool sour_vegetable(std::size_t l) {
        const double partner_share = context_.constant("advice.moves.partner-share");
        const double acid = unit(lines()[l])[Amount::titratable] * lines()[l].grams.mid;
        return place_.is_bulk(l) && acid > partner_share * base_acid_;
    }

    bool has_line_of(Role role) const {
        return std::any_of(lines().begin(), lines().end(), [&](const Line& line) { return contains(ingredient(line).roles, role); });
    }

    // What pours makes no mass richer by itself: of oil more is no substitute for fat with body.
    bool pours_fat(const Line& line) const {
        return ingredient(line).roles.front() == Role::fat && ingredient(line).tissue == Tissue::liquid;
    }

    bool has_main_line_of(Role role) const {
        return std::any_of(lines().begin(), lines().end(),
                           [&](const Line& line) { return ingredient(line).roles.front() == role && !line.keep && !pours_fat(line); });
    }

    double room_for_more(std::size_t l) const {
        if (distance_.goals().empty() && no_store_of(lines()[l], stock_)) return 0;
        const auto left = left_.find(lines()[l].ingredient);
        return left == left_.end() ? base_mass_ : left->second / bought(lines()[l]);
    }

    // Wine, sorrel and beer move sourness too, whatever they are there for first; feta the pH.
    bool sour_beside(std::size_t l) {
        return (asked_.change.count(Role::acid) > 0 && brings_acid(lines()[l], base_acid_, context_)) ||
               (leeway_ == Leeway::all && holds_the_ph_down(problem_.formula, l, distance_, context_));
    }

    void change_line(std::size_t l) {
        const double trim_share = context_.constant("advice.moves.easy");
        const double twice_more = context_.constant("advice.moves.leaf-times");
        const Line& line = lines()[l];
        const bool short_of = problem_.missing[l];  // what there is of it may still be less
        if (line.keep || (short_of && !(problem_.start[l] > 0))) return;
        const Role role = role_of_line(l);
        const bool reddens = asked_.change.count(role) == 0 && hides_green(problem_.formula, l, distance_, context_);
        const bool wanted = asked_.change.count(role) > 0 || sour_beside(l) || reddens,
                   follows = !wanted && plain_salt(ingredient(line), knowledge_) && salt_follows(problem_, distance_, context_);
        if (!wanted && !follows) return;
        const bool plain_water = role == Role::liquid && unit(line)[Amount::titratable] <= 0 && unit(line)[Amount::alcohol] <= 0;
        const bool trim = follows, easy = role == Role::salt || plain_water;
        const bool asked_for = asked_.by_goal.count(role) > 0 || (wanted && asked_.change.count(role) == 0);
        const double price = context_.constant(follows ? "advice.price.trim" : asked_for ? "advice.price.lever" : "advice.price.change");
        const double least =
            std::max(context_.constant(is_meat(l) || follows ? "advice.trim.least" : "advice.lever.least") * line.grams.mid,
                     follows ? context_.constant("advice.trim.least_grams") : 0.0);
        const auto offer = [&](MoveKind kind, double most) {
            if (most < least || !(most > 0)) return;
            const bool down = kind == MoveKind::reduce;
            if (down && role == Role::green && (!place_.is_bulk(l) || is_for_its_taste(l))) return;  // a bunch of herbs wets no paste
            if (down && role == Role::salt && leeway_ == Leeway::usual && !plain_salt(ingredient(line), knowledge_)) return;  // capers
            const Role moved = moved_as(role);
            if (!follows && !(reddens && down) && ((down ? asked_.down : asked_.up).count(moved) == 0 || reddens)) return;
            Move move{kind, l, line, {}, down ? negated(unit(line)) : unit(line), most, price, trim, role};
            if (!down)
                move.price += price_of_unlisted_meat(line, stock_, context_) + price_beside_leaner(line, stock_, distance_, context_);
            move.least = least;
            move.covers = Covers{l, (down ? -1 : 1) / line.grams.mid};
            if (down) move.remnant = remnant_of(line, unit(line)[Amount::capsaicinoids], base_mass_, knowledge_);
            push(std::move(move));
        };
        // Flour holds the water that makes a paste wet: who wants it to bind is not told to take it out.
        const bool dry_binder = is_dry_binder(ingredient(line));
        if (!stays(l))
            offer(MoveKind::reduce, std::min((plain_water ? (leeway_ == Leeway::usual ? most_water_out(line, distance_, base_mass_) : 1)
                                                          : std::min(most_share_out(role), most_share_out(moved_as(role)))) *
                                                 line.grams.mid,
                                             problem_.start[l] - stock_.least_of(line)));
        const bool dish = role == Role::binder && !dry_binder && ingredient(line).tissue != Tissue::egg;
        if (short_of || dish || brings_no_green(l)) return;
        const double asked = share_for_goals(asked_, distance_, base_mass_, unit(line), line.grams.mid, most_.dose, role);
        const bool leaf = role == Role::green && asked_.by_goal.count(role) > 0;  // twice the leaf before another leaf
        const bool fat_asked = role == Role::fat && asked_.by_goal.count(role) > 0;
        const bool skin = role == Role::fat && asked_.only_listed_fat && ingredient(line).most_g_per_kg;  // rubbery, and cream is there
        const double share = skin ? most_.raise / 2
                             : is_meat(l)
                                 ? (fat_asked ? base_mass_ / line.grams.mid : 3.0)
                                 : std::max({follows ? salt_share(problem_, l, trim_share, most_.dose, context_)
                                             : easy  ? (asked_for ? twice_more : trim_share)
                                             : leaf  ? twice_more
                                                     : most_.raise,
                                             asked, share_for_lost_acid(ingredient(line), unit(line), line.grams.mid, lost_acid_)});
        const double oil = pours_fat(line) ? std::max(0.0, most_.oil * base_mass_ - line.grams.mid) : base_mass_;
        offer(MoveKind::raise,
              std::min({line.grams.mid * share, room_for_more(l), is_meat(l) ? base_mass_ : most_.of_batch(role) * base_mass_, oil}));
    }

    // Wine goes as acid does.
    Role moved_as(Role role) const { return asked_.change.count(role) > 0 ? role : Role::acid; }

    // For the sake of the whole mass no more than half of the leaves, the sour, the wine and the fat is given up: they are what it is.
    double most_share_out(Role role) const {
        const double half = context_.constant("advice.moves.most-out");
        constexpr std::array character{Role::green, Role::acid, Role::liquid, Role::fat, Role::binder};
        return contains(character, role) && leeway_ == Leeway::usual && asked_.by_goal.count(role) && !asked_.direct.count(role) ? half : 1;
    }

    bool is_for_its_taste(std::size_t l) {
        return leeway_ == Leeway::usual &&
               handful_of_herb(ingredient(lines()[l]), unit(lines()[l])[Amount::mass] * lines()[l].grams.mid / base_mass_);
    }

    bool stays(std::size_t l) const { return asked_.dry_binder_stays && sets(ingredient(lines()[l])); }

    // More oregano makes nothing greener, nor sage, of which no kilo takes a handful.
    bool brings_no_green(std::size_t l) {
        if (role_of_line(l) != Role::herb || asked_.by_goal.count(Role::herb) == 0) return false;
        if (place_.room_by_the_kilo(ingredient(lines()[l])) <= context_.constant("advice.place.relish") * base_mass_ / 1000) return true;
        const double green = dose_of(unit(lines()[l]), Role::green) * lines()[l].grams.mid;
        return green < context_.constant("advice.moves.no-green") * dose_of(distance_.base_material(), Role::green);
    }

    void replace_line(std::size_t l) {
        const Line& line = lines()[l];
        if (from_the_tap(line.ingredient) && !stock_.has_idea_for(line)) return;  // of less water there is just less
        if (line.keep || (!problem_.missing[l] &&
                          ((!asked_.replace.count(role_of_line(l)) && !hides_green(problem_.formula, l, distance_, context_)) || stays(l))))
            return;
        const bool by_colour = !problem_.missing[l] && asked_.replace.count(role_of_line(l)) == 0;  // only a green one is greener
        std::size_t taken = 0;
        bool from_tap = false;
        const auto may_use = [&](const Ingredient& i) {
            if (hard_grain(i, knowledge_) && !stock_.names(i.id)) return false;
            if (by_colour && !brings_green(i, context_)) return false;
            if (!problem_.missing[l] && i.tissue == Tissue::egg && ingredient(line).tissue == Tissue::egg) return false;
            if (!problem_.missing[l] && !may_change_the_cut(problem_.formula, l, i, distance_, stock_, context_)) return false;
            return (stock_.can_bring(i) || (from_tap && i.id == "water" && stock_.leaves_in(i))) && stock_.may_stand_in(i, line) &&
                   (problem_.missing[l] ||
                    ((!price_.brings_a_beast(i) || other_animal_may_come(i, stock_, distance_, leeway_)) && !cured(i, context_)));
        };
        const auto may_match = [&](const Ingredient& i) { return problem_.missing[l] && stock_.names(i.id) && !hard_grain(i, knowledge_); };
        const auto fit = [&] {
            return once_each(candidates_for(problem_.formula, l, graph_, context_.nominal(), may_use, may_match).fit, problem_.missing[l]);
        };
        auto candidates = fit();
        // Where the list has nothing for milk, wine or stock, the tap makes up for the liquid.
        const auto doubtful = [&](const Candidate& c) { return is_doubtful(c, problem_, stock_); };
        from_tap = problem_.missing[l] && role_of_line(l) == Role::liquid && std::all_of(candidates.begin(), candidates.end(), doubtful);
        if (from_tap) candidates = fit();
        std::stable_partition(candidates.begin(), candidates.end(), [&](const Candidate& c) { return !doubtful(c); });
        const std::size_t first = problem_.moves.size();
        const bool has_flesh = is_vegetable(ingredient(line).tissue) && role_of_line(l) == Role::acid;
        const bool filled = (place_.is_bulk(l) || has_flesh) && std::any_of(candidates.begin(), candidates.end(), [&](const Candidate& c) {
                                return place_.fills(l, c, stock_.offer(c.food).grams.value_or(base_mass_));
                            });
        // What a rough match lacks is no want of what a swap names.
        const bool named = std::any_of(candidates.begin(), candidates.end(), [&](const auto& c) { return !is_rough(c.swaps, knowledge_); });
        for (const auto& candidate : candidates) {
            if (taken == stand_ins_a_line && !stock_.listed()) break;
            if (taken == 2 * stand_ins_a_line) break;
            // Juice or powder is no filling where a vegetable is to be had: it comes beside that, as a partner.
            if (filled && !place_.is_filling(l, candidate)) continue;
            if (doubtful(candidate) && has_sure_stand_in(problem_, l, stock_)) break;
            if ((asks_leaner(distance_.goals()) && brings_fat_beside(candidate, knowledge_)) || !offer_stand_in(l, candidate)) continue;
            ++taken;
            if (candidate.partner && !candidate.in_two_parts() && problem_.missing[l] && !(named && is_rough(candidate.swaps, knowledge_)))
                offer_partner(l, candidate.partner->food, candidate.role);
        }
        if (place_.is_bulk(l) && problem_.missing[l]) place_.hold_bulk(problem_, l, first, taken == 1);
    }

    bool offer_stand_in(std::size_t l, const Candidate& candidate) {
        const auto same = line_alike(candidate.food);
        if (same == l || (!same && kept_as_it_is(candidate.food))) return false;
        const auto [fills, full] = place_.weights(l, candidate);
        const double there = same ? weighed_there(lines()[*same], candidate.food, context_) : 1, whole = there * fills, most = there * full;
        Move move{MoveKind::stand_in,
                  l,
                  same ? lines()[*same] : candidate.food,
                  {},
                  counted_as(candidate, lines()[l], context_.nominal()),
                  0,
                  0,
                  false,
                  candidate.role};
        move.stands_for.push_back({l, candidate.closeness, whole, candidate.role, candidate.swaps});
        move.into = same;
        move.fills = place_.is_filling(l, candidate);
        move.most = std::min(most, room_for(move, candidate));
        if (same && place_.adds_nothing(l, candidate, unit(move.food), move.most)) return false;
        if (candidate.in_two_parts() && !add_second_part(move, candidate)) return false;
        move.least = there * place_.least(l, candidate, fills);
        if (move.least > move.most && !place_.little_will_do(l, candidate, move.most)) return false;
        move.least = std::min(move.least, move.most);
        move.price = price_.of_stand_in(ingredient(move.food), candidate.closeness, !problem_.missing[l]);
        if (!candidate.of_custom() && candidate.food.ingredient != lines()[l].ingredient)
            move.price += context_.constant("advice.price.no-custom");
        if (move.second) move.price += price_.of_second_part(ingredient(move.second->food));
        if (!problem_.missing[l]) move.price += price_.passed_over(ingredient(move.food), candidate.role, distance_);
        if (!problem_.missing[l] && has_fatter_line(problem_.formula, l, distance_, context_)) {  // that goes before another lean is bought
            const bool lean_bought = role_of_line(l) == Role::lean && !stock_.names(move.food.ingredient);
            move.price += context_.constant(lean_bought ? "advice.price.passed-over" : "advice.price.no-custom");
        }
        if (same && !interchangeable(candidate.role)) move.price += context_.constant("advice.price.one-taste");
        move.covers = Covers{l, 1 / whole};
        if (!(move.most > 0)) return false;
        push(std::move(move));
        return true;
    }

    // Where a swap names two foods they come in together, in its proportion; the first is counted with what both bring of the role.
    bool add_second_part(Move& move, const Candidate& candidate) {
        const PartnerFood& partner = *candidate.partner;
        SecondPart second{partner.food, partner.why, partner.food.grams.mid / candidate.food.grams.mid, line_alike(partner.food),
                          bought(partner.food)};
        if (!second.into && kept_as_it_is(second.food)) return false;
        Material beside = unit(second.food);
        count_as_flavour(beside, candidate.role, beside, 0);
        move.per_gram.add(beside, second.per_gram);
        double room = second.into ? room_for_more(*second.into) : place_.room_by_the_kilo(ingredient(second.food));
        if (const Offer offer = stock_.offer(second.food); !second.into && offer.grams) room = std::min(room, *offer.grams);
        move.most = std::min(move.most, room / second.per_gram);
        move.second = std::move(second);
        return true;
    }

    // What makes up for the dose that a stand-in lacks is a lever of its own: a line that may be raised, or something that comes in.
    void offer_partner(std::size_t l, const Line& food, Role role) {
        const double least_of_stand_in = context_.constant("advice.moves.least-of-partner");
        if (price_.in_formula(ingredient(food)) || stock_.in_doubt(food.ingredient) || !partners_.insert(key_of(food)).second) return;
        Move move{MoveKind::add, 0, food, {}, unit(food), 0, 0, false, role};
        const auto lift = asked_.lift.find(role);
        move.most = std::min(most_.dose * food.grams.mid * (lift == asked_.lift.end() ? 1.0 : lift->second),
                             place_.room_by_the_kilo(ingredient(food)));
        if (const Offer offer = stock_.offer(food); offer.grams) move.most = std::min(move.most, *offer.grams);
        move.least = std::min(least_of_stand_in * food.grams.mid, move.most);
        move.price = price_.of_addition(ingredient(food), false, 0);
        move.partner_of = l;
        if (move.most > 0) push(std::move(move));
    }

    std::optional<std::size_t> line_alike(const Line& food) const { return standin::line_alike(problem_, food, context_); }
    bool kept_as_it_is(const Line& food) const { return standin::kept_as_it_is(problem_, food, left_); }

    // How much of a food may come in at all.
    double room_for(const Move& move, const Candidate& candidate) const {
        const double twice_more = context_.constant("advice.moves.leaf-times");
        const Role role = candidate.role;
        const bool meat = ingredient(move.food).meat.has_value();
        // Green tomato stands in for the acid of tomatillo, and is a vegetable for all that.
        const bool fills = place_.is_bulk(move.line) && move.fills;
        // Boiled rice is mostly water: for flour that is not to be had it comes in by more than flour may.
        const bool moist = role == Role::binder && ingredient(move.food).tissue != Tissue::dry && problem_.missing[move.line];
        const bool sourer = role == Role::acid && asked_.lift.count(role) > 0;  // as much of another as the mass takes
        const double share = meat ? 1 : fills || moist ? most_.paste : sourer ? most_.sour_pour : most_.of_batch(role);
        const bool in_full = role == Role::liquid || (problem_.missing[move.line] && (role == Role::acid || role == Role::binder));
        const double own = lines()[move.line].grams.mid;
        const double held = !in_full ? 0 : role == Role::acid ? own : std::max(own, candidate.food.grams.mid);
        double most = std::min(std::max(share * base_mass_, held), place_.room_by_the_kilo(ingredient(move.food)));
        if (move.into) {
            most = std::min({most, room_for_more(*move.into),
                             is_meat(*move.into) ? base_mass_ : most_.of_batch(role_of_line(*move.into)) * base_mass_});
            // More of another herb or spice: no more of it than a taster forgives.
            // Nor is a herb that is there taken for another by the handful: what tastes of itself is no filling.
            const bool herb = contains(ingredient(move.food).roles, Role::herb) && !near_kin(move) && !candidate.in_two_parts();
            if (herb) most = std::min(most, twice_more * lines()[*move.into].grams.mid);
            if (!interchangeable(role_of_line(*move.into)))
                most = std::min(most, std::max(most_.raise * lines()[*move.into].grams.mid,
                                               near_kin(move) || candidate.in_two_parts() ? move.stands_for.front().equal_grams : 0));
            return most;
        }
        if (const auto left = left_.find(move.food.ingredient); left != left_.end())
            return std::min(most, left->second / bought(move.food));
        const Offer offer = stock_.offer(move.food);
        return offer.grams ? std::min(most, *offer.grams) : most;
    }

    // A leaf that comes in is blanched and squeezed as those that are there.
    Line added(const Ingredient& food, Role role) {
        Line plain = brought_in(food, role, knowledge_);
        if (role == Role::heat) std::erase_if(plain.prepared, [](const Prepared& step) { return step.preparation == "seeded"; });
        if (role != Role::green) return plain;
        const Line* like = nullptr;
        for (std::size_t l = 0; l < lines().size(); ++l)
            if (place_.is_bulk(l) && role_of_line(l) == role && (!like || lines()[l].grams.mid > like->grams.mid)) like = &lines()[l];
        return like ? prepared_like(*like, food, {}, knowledge_) : plain;
    }

    void add_role(Role role) {
        const double least_of_addition = context_.constant("advice.moves.least-added");
        auto usual = usual_additions(role, problem_.formula, stock_, price_, knowledge_);
        // More fruit beside what stands in for a sour vegetable would fill its place twice.
        if (role == Role::acid && asked_.by_goal.count(role) == 0)
            std::erase_if(usual, [](const Addition& addition) { return is_vegetable(addition.food->tissue); });
        for (std::size_t f = 0; f < std::min(usual.size(), adds_of_a_kind); ++f) {
            const Ingredient& ingredient = *usual[f].food;
            const Line food = added(ingredient, role);
            if (role == Role::fat && asked_.only_listed_fat && !stock_.names(ingredient.id)) continue;
            const bool own_place = !asked_.by_goal.count(role) || ingredient.roles.front() != role;  // a herb stands in for its line first
            if (cured(ingredient, context_) || partners_.count(key_of(food)) || (own_place && comes_in(ingredient))) continue;
            Move move{MoveKind::add, 0, food, {}, unit(food), 0, 0, false, role};
            if (!(dose_of(move.per_gram, role) > 0)) continue;
            move.most = std::min(base_mass_ * (role == Role::binder && leeway_ == Leeway::all ? most_.binder : most_.added(role)),
                                 place_.room_by_the_kilo(ingredient));
            if (role == Role::fat && asked_.only_listed_fat && !ingredient.meat)
                move.most = std::min(move.most, most_.poured_fat(move.per_gram) * base_mass_);
            if (leeway_ == Leeway::usual) move.most = std::min(move.most, enough_for_goals(distance_, base_mass_, move.per_gram, role));
            const Offer offer = stock_.offer(food);
            if (offer.grams) move.most = std::min(move.most, *offer.grams);
            const bool asked_for = asked_.by_goal.count(role) > 0;
            move.price = price_.of_addition(ingredient, asked_for, usual[f].rare) + price_.passed_over(ingredient, role, distance_);
            if ((role == Role::green || (role == Role::acid && !asked_for)) && raises_own(role))
                move.price += context_.constant(role == Role::green && !stock_.names(ingredient.id) ? "advice.price.passed-over"
                                                                                                    : "advice.price.no-custom");
            move.least =
                std::max(least_of_addition * move.most, std::min(move.most, least_worth_adding(ingredient, role, context_) * base_mass_));
            if (move.most > 0) push(std::move(move));
        }
    }

    // More of the leaf that is there is asked for before another is bought.
    bool raises_own(Role role) const {
        return std::any_of(problem_.moves.begin(), problem_.moves.end(),
                           [&](const Move& m) { return m.kind == MoveKind::raise && m.role == role; });
    }

    // What may stand in for a missing line comes in for that, not for nothing.
    bool comes_in(const Ingredient& food) const {
        return std::any_of(problem_.moves.begin(), problem_.moves.end(), [&](const Move& move) {
            return move.kind == MoveKind::stand_in && problem_.missing[move.line] && !move.into && move.brings(food.id) > 0;
        });
    }

    void push(Move move) {
        move.bought = bought(move.food);
        problem_.moves.push_back(std::move(move));
    }

    const Stock& stock_;
    const SwapGraph& graph_;
    const Distance& distance_;
    const Context& context_;
    const Proportions most_;
    const Knowledge& knowledge_;
    Leeway leeway_;
    FoodPrice price_;
    Problem problem_;
    std::set<std::string> partners_;
    AskedRoles asked_;
    std::map<std::string, double> left_;
    double base_mass_ = 0, base_acid_ = 0, lost_acid_ = 0;
    StandInPlace place_;
};

}  // namespace

double Move::brings(std::string_view ingredient, bool as_bought) const {
    double grams = food.ingredient == ingredient ? (as_bought ? bought : 1) : 0;
    if (second && second->food.ingredient == ingredient) grams += second->per_gram * (as_bought ? second->bought : 1);
    return grams;
}

Problem make_problem(const Formula& formula, const Stock& stock, const SwapGraph& graph, const Distance& distance, const Context& context,
                     Leeway leeway) {
    return Builder(formula, stock, graph, distance, context, leeway).build();
}

}  // namespace standin
