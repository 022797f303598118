#include "adapt/problem.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>
#include <set>

#include "adapt/asked_roles.hpp"
#include "adapt/constraints.hpp"
#include "adapt/equivalents.hpp"
#include "adapt/exclusive.hpp"
#include "adapt/losses.hpp"
#include "adapt/making.hpp"
#include "adapt/proportions.hpp"
#include "adapt/request.hpp"
#include "core/band.hpp"
#include "knowledge/tissue.hpp"
#include "models/as_bought.hpp"
#include "substitute/dose.hpp"
#include "substitute/stand_ins.hpp"

namespace standin {
namespace {

constexpr double trim_share = 0.4;          // of a line, either way; judgement, as the rest
constexpr double dose_slack = 1.3;          // over the equal dose
constexpr double vegetable_share = 0.02;    // of the batch; below that a vegetable is a seasoning, and its bulk is nothing
constexpr double salty = 0.005;             // g NaCl in a gram; what brings that much is salty food
constexpr double partner_share = 0.15;      // of the batch's acid; who brings less is not missed as sour
constexpr double least_of_addition = 0.03;  // of the most
constexpr double least_of_stand_in = 0.1;   // of what takes the place of the whole line
constexpr double bodiless = 0.5;            // of a vegetable that juice or powder with all of its dose makes up for
constexpr double most_times = 2.8;          // the weight of a vegetable that seasons, or one part in so many, stands in for it
constexpr double third = 0.35;              // of a missing vegetable; who fills less is no part of it
constexpr double twice_more = 2;            // of a leaf that is there already
constexpr std::size_t stand_ins_a_line = 7;
constexpr std::size_t adds_of_a_kind = 6;

bool contains(const std::vector<Role>& roles, Role role) { return std::find(roles.begin(), roles.end(), role) != roles.end(); }

class Builder {
public:
    Builder(const Formula& formula, const Stock& stock, const SwapGraph& graph, const Distance& distance, const Context& context)
        : stock_(stock), graph_(graph), distance_(distance), context_(context), knowledge_(context.knowledge()) {
        problem_.formula = formula;
        for (const auto& line : formula.lines)
            for (const auto& allergen : ingredient(line).allergens) allergens_.insert(allergen);
    }

    Problem build() && {
        start();
        find_roles();
        for (std::size_t l = 0; l < lines().size(); ++l) replace_line(l);
        for (std::size_t l = 0; l < lines().size(); ++l) change_line(l);
        for (const Role role : asked_.add) add_role(role);
        problem_.constraints = constraints_of(problem_, stock_, distance_, context_);
        problem_.processes = ways_of_making(problem_.formula, distance_, context_);
        problem_.spared = spared_in(problem_, distance_, knowledge_);
        problem_.loss = losses_in(problem_, distance_, context_);
        problem_.hard = hard_goals(distance_);
        find_equivalents(problem_, knowledge_);
        problem_.exclusive = exclusive_groups(problem_);
        return std::move(problem_);
    }

private:
    const std::vector<Line>& lines() const { return problem_.formula.lines; }
    const Ingredient& ingredient(const Line& line) const { return *knowledge_.ingredient(line.ingredient); }
    Role role_of_line(std::size_t l) const { return ingredient(lines()[l]).roles.front(); }
    bool is_meat(std::size_t l) const { return ingredient(lines()[l]).meat.has_value(); }
    double bought(const Line& line) const { return bought_per_gram(line, knowledge_); }
    Material unit(const Line& food) { return context_.nominal().unit(food); }

    // Grams of each line that are to be had; several lines of one ingredient share what there is, kept ones first.
    void start() {
        std::map<std::string, double> left;
        std::vector<std::size_t> order(lines().size());
        for (std::size_t l = 0; l < order.size(); ++l) order[l] = l;
        std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) { return lines()[a].keep > lines()[b].keep; });
        problem_.start.resize(lines().size());
        problem_.missing.resize(lines().size());
        problem_.excluded.resize(lines().size());
        for (const auto l : order) {
            const Line& line = lines()[l];
            const Offer offer = stock_.offer(ingredient(line));
            double grams = offer.on_hand ? line.grams.mid : 0;
            if (offer.on_hand && offer.grams) {
                double& rest = left.try_emplace(line.ingredient, *offer.grams).first->second;
                grams = std::min(grams, rest / bought(line));
                rest = std::max(0.0, rest - grams * bought(line));
            }
            problem_.start[l] = grams;
            problem_.missing[l] = grams < line.grams.mid;
            problem_.excluded[l] = offer.excluded;
        }
        left_ = std::move(left);
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
        problem_.least_meat = context_.constant("advice.meat.least") * meat;
    }

    // What a want or a missing line lets us touch.
    void find_roles() {
        asked_ = roles_asked_for(
            distance_, [&](Role role) { return has_line_of(role); }, [&](Role role) { return has_main_line_of(role); });
        for (std::size_t l = 0; l < lines().size(); ++l)
            if (problem_.missing[l] && sour_vegetable(l)) {
                asked_.change.insert(Role::acid);
                asked_.up.insert(Role::acid);
                asked_.down.insert(Role::acid);
                asked_.add.insert(Role::acid);
            }
    }

    // Whether the line gives the paste its bulk, so that what stands in for it has to.
    bool is_bulk(std::size_t l) const {
        const Role role = role_of_line(l);
        const bool seasoning = role == Role::herb || role == Role::spice || role == Role::allium;
        return is_vegetable(ingredient(lines()[l]).tissue) && !seasoning && lines()[l].grams.mid >= vegetable_share * base_mass_;
    }

    // Tomatillo, sorrel: what stands in for its bulk may need a partner for its acid.
    bool sour_vegetable(std::size_t l) {
        const double acid = unit(lines()[l])[Amount::titratable] * lines()[l].grams.mid;
        return is_bulk(l) && acid > partner_share * base_acid_;
    }

    bool has_line_of(Role role) const {
        return std::any_of(lines().begin(), lines().end(), [&](const Line& line) { return contains(ingredient(line).roles, role); });
    }

    bool has_main_line_of(Role role) const {
        return std::any_of(lines().begin(), lines().end(),
                           [&](const Line& line) { return ingredient(line).roles.front() == role && !line.keep; });
    }

    double room_for_more(std::size_t l) const {
        const auto left = left_.find(lines()[l].ingredient);
        return left == left_.end() ? base_mass_ : left->second / bought(lines()[l]);
    }

    // Salt follows only where something salty comes in or goes; water never by itself: what is absent takes its own water with it.
    bool salt_follows() {
        const auto is_salty = [&](const Material& m, Role role) {
            return role != Role::salt && m[Amount::salt] >= salty * m[Amount::mass];
        };
        for (const auto& move : problem_.moves)
            if (move.brings_food() && is_salty(move.per_gram, ingredient(move.food).roles.front())) return true;
        for (std::size_t l = 0; l < lines().size(); ++l)
            if (problem_.missing[l] && role_of_line(l) != Role::salt &&  // much bread takes along what a maker would weigh in again
                (lines()[l].grams.mid - problem_.start[l]) * unit(lines()[l])[Amount::salt] >
                    context_.constant("advice.salt.held") * distance_.base_material()[Amount::salt])
                return true;
        return false;
    }

    // Wine, sorrel and beer move sourness too, whatever they are there for first.
    bool sour_beside(std::size_t l) {
        constexpr double share = 0.05;  // of the batch's acid
        return asked_.change.count(Role::acid) > 0 && unit(lines()[l])[Amount::titratable] * lines()[l].grams.mid > share * base_acid_;
    }

    void change_line(std::size_t l) {
        const Line& line = lines()[l];
        if (line.keep || problem_.missing[l]) return;
        const Role role = role_of_line(l);
        const bool wanted = asked_.change.count(role) > 0 || sour_beside(l), follows = !wanted && role == Role::salt && salt_follows();
        if (!wanted && !follows) return;
        const bool plain_water = role == Role::liquid && unit(line)[Amount::titratable] <= 0 && unit(line)[Amount::alcohol] <= 0;
        const bool trim = follows, easy = role == Role::salt || plain_water;
        const bool asked_for = asked_.by_goal.count(role) > 0 || (wanted && asked_.change.count(role) == 0);
        const double price = context_.constant(follows ? "advice.price.trim" : asked_for ? "advice.price.lever" : "advice.price.change");
        const double least =
            std::max(context_.constant("advice.trim.least") * line.grams.mid, follows ? context_.constant("advice.trim.least_grams") : 0.0);
        const auto offer = [&](MoveKind kind, double most) {
            if (most < least || !(most > 0)) return;
            const bool down = kind == MoveKind::reduce;
            const Role moved = asked_.change.count(role) > 0 ? role : Role::acid;  // wine goes as acid does
            if (!follows && (down ? asked_.down : asked_.up).count(moved) == 0) return;
            Move move{kind, l, line, {}, down ? negated(unit(line)) : unit(line), most, price, trim, role};
            move.least = least;
            move.covers = Covers{l, (down ? -1 : 1) / line.grams.mid};
            if (down) move.remnant = remnant_of(l);
            push(std::move(move));
        };
        // Flour holds the water that makes a paste wet: who wants it to bind is not told to take it out.
        const bool dry_binder = role == Role::binder && ingredient(line).tissue == Tissue::dry;
        if (!dry_binder || !asked_.dry_binder_stays) offer(MoveKind::reduce, problem_.start[l] - stock_.least_of(line));
        if (role == Role::binder) return;
        const auto lift = asked_.lift.find(role);
        const double asked = lift == asked_.lift.end() ? 0 : dose_slack * (lift->second - 1);
        const bool leaf = role == Role::green && asked_.by_goal.count(role) > 0;  // twice the leaf before another leaf
        const double share = is_meat(l) ? 3.0 : std::max(easy ? trim_share : leaf ? twice_more : raise_share, asked);
        offer(MoveKind::raise,
              std::min({line.grams.mid * share, room_for_more(l), is_meat(l) ? base_mass_ : most_of_batch(role) * base_mass_}));
    }

    // Less than one pod, or a hundredth of a line, is no weight to write down.
    double remnant_of(std::size_t l) const {
        const double hundredth = 0.01 * lines()[l].grams.mid;
        if (role_of_line(l) != Role::heat || ingredient(lines()[l]).tissue != Tissue::chile_flesh) return hundredth;
        for (const auto& measure : ingredient(lines()[l]).measures)
            if (measure.measure == "piece") return std::max(hundredth, std::min(measure.grams.mid, 0.5 * lines()[l].grams.mid));
        return hundredth;
    }

    void replace_line(std::size_t l) {
        const Line& line = lines()[l];
        if (line.keep || (!problem_.missing[l] && !asked_.replace.count(role_of_line(l)))) return;
        std::size_t taken = 0;
        const auto may_use = [&](const Ingredient& i) {
            return stock_.can_bring(i) && stock_.may_stand_in(i, line) && (problem_.missing[l] || (!brings_a_beast(i) && !cured(i)));
        };
        const auto candidates =
            once_each(candidates_for(problem_.formula, l, graph_, context_.nominal(), may_use).fit, problem_.missing[l]);
        const std::size_t first = problem_.moves.size();
        const bool filled =
            is_bulk(l) && std::any_of(candidates.begin(), candidates.end(), [&](const Candidate& c) { return fills(l, c); });
        for (const auto& candidate : candidates) {
            if (taken == stand_ins_a_line && !stock_.listed()) break;
            if (taken == 2 * stand_ins_a_line) break;
            // Juice or powder is no filling where a vegetable is to be had: it comes beside that, as a partner.
            if (filled && !is_vegetable(ingredient(candidate.food).tissue)) continue;
            if (!offer_stand_in(l, candidate)) continue;
            ++taken;
            if (candidate.partner && problem_.missing[l]) offer_partner(l, candidate.partner->food, candidate.role);
        }
        if (taken == 1 && is_bulk(l) && problem_.missing[l]) fill_alone(l, problem_.moves[first]);
    }

    // Whether it can fill a fair part of the place of a vegetable.
    bool fills(std::size_t l, const Candidate& candidate) const {
        if (!is_vegetable(ingredient(candidate.food).tissue) || seasons_for(l, candidate)) return false;
        const Offer offer = stock_.offer(candidate.food);
        return std::min(weights(l, candidate).most, offer.grams.value_or(base_mass_)) >= third * fairly_missing(l);
    }

    // The only stand-in of a vegetable holds its bulk.
    void fill_alone(std::size_t l, Move& move) const {
        if (!is_vegetable(ingredient(move.food).tissue) || move.covers->per_gram * bodiless * missing_of(l) > 1) return;
        move.least = std::max(move.least, std::min(move.most, context_.constant("advice.bulk.least") * missing_of(l)));
    }

    double fairly_missing(std::size_t l) const { return std::min(missing_of(l), room_by_the_kilo(ingredient(lines()[l]))); }

    double missing_of(std::size_t l) const { return lines()[l].grams.mid - problem_.start[l]; }

    // Garlic for ramps: it stands for the taste alone, and far less of it is enough.
    bool seasons_for(std::size_t l, const Candidate& candidate) const {
        const double equal = candidate.food.grams.mid / candidate.share;
        return role_of_line(l) == Role::green && candidate.role == Role::allium && most_times * equal < lines()[l].grams.mid;
    }

    // How many grams take the place of the whole line, and how many are the most. A vegetable is replaced by about its own weight: what
    // carries the dose in far less does not fill its place, and of what would take far more the rest of the dose is left to others.
    struct Weights {
        double whole, most;
    };
    Weights weights(std::size_t l, const Candidate& candidate) const {
        const double equal = candidate.food.grams.mid / candidate.share, line = lines()[l].grams.mid;
        const auto lift = asked_.lift.find(candidate.role);
        const double most =
            std::min(dose_slack * candidate.food.grams.mid * (lift == asked_.lift.end() ? 1.0 : lift->second), candidate.most_grams);
        if (is_dried_form(l, candidate.food)) return {equal, most};
        if (seasons_for(l, candidate)) return {is_bulk(l) ? equal / bodiless : equal, most};
        if (!is_bulk(l)) {
            // Of a little of a vegetable too, no crumb and no basketful: the rest of the dose is left to others.
            const Tissue tissue = ingredient(lines()[l]).tissue;
            const bool body = role_of_line(l) == Role::green || role_of_line(l) == Role::allium;
            const bool dry = tissue == Tissue::dry && ingredient(candidate.food).tissue == Tissue::dry;
            if (body && !dry && !is_vegetable(ingredient(candidate.food).tissue) &&
                (most_times * equal < line || equal > most_times * line))
                return {equal, 0};
            if (!is_vegetable(tissue) || !is_vegetable(ingredient(candidate.food).tissue)) return {equal, most};
            return {std::max(equal, line / most_times), std::min(most, most_times * line)};
        }
        if (!is_vegetable(ingredient(candidate.food).tissue)) return {equal / bodiless, most};
        return {std::clamp(equal, context_.constant("advice.bulk.least") * line, line),
                std::min(most, context_.constant("advice.bulk.most") * line)};
    }

    bool offer_stand_in(std::size_t l, const Candidate& candidate) {
        const auto same = line_alike(candidate.food);
        if (same == l || (!same && kept_as_it_is(candidate.food))) return false;
        const auto [whole, most] = weights(l, candidate);
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
        move.most = std::min(most, room_for(move, candidate.role));
        const bool little = is_dried_form(l, candidate.food) || seasons_for(l, candidate);
        move.least = little ? least_of_stand_in * whole : least_of(l, whole);
        if (candidate.share < 1) move.least = std::min(move.least, candidate.food.grams.mid);
        if (move.least > move.most && seasons_or_fills(l) && !(leaf_allium(l, candidate.food) && move.most >= least_of_stand_in * whole))
            return false;
        move.least = std::min(move.least, move.most);
        move.price = price_of(move);
        move.covers = Covers{l, 1 / whole};
        if (!(move.most > 0)) return false;
        push(std::move(move));
        return true;
    }

    // Dried, a little does what the fresh line did: the same plant, or any allium.
    bool is_dried_form(std::size_t l, const Line& food) const {
        const Ingredient &fresh = ingredient(lines()[l]), &dry = ingredient(food);
        const bool same = !fresh.latin.empty() && fresh.latin == dry.latin;
        return dry.tissue == Tissue::dry && (same || role_of_line(l) == Role::allium);
    }

    // Chives for ramps: a small bunch of them brings back some of the onion, if not the bulk.
    bool leaf_allium(std::size_t l, const Line& food) const {
        const Ingredient &from = ingredient(lines()[l]), &to = ingredient(food);
        return to.tissue == Tissue::thin_leaf && contains(from.roles, Role::allium) && contains(to.roles, Role::allium);
    }
    bool seasons_or_fills(std::size_t l) const { return role_of_line(l) == Role::green || role_of_line(l) == Role::allium; }

    // One of several that share a line has its part in it: a third of a vegetable's weight, a tenth of what else there is.
    double least_of(std::size_t l, double whole) const {
        if (problem_.missing[l] && seasons_or_fills(l)) return third * fairly_missing(l);
        return least_of_stand_in * whole;
    }

    // The partner of a stand-in in two parts is a lever of its own: a line of the formula that may be raised, or something that comes in.
    void offer_partner(std::size_t l, const Line& food, Role role) {
        if (in_formula(ingredient(food)) || !partners_.insert(key_of(food)).second) return;
        Move move{MoveKind::add, 0, food, {}, unit(food), 0, 0, false, role};
        move.most = std::min(dose_slack * food.grams.mid, room_by_the_kilo(ingredient(food)));
        if (const Offer offer = stock_.offer(food); offer.grams) move.most = std::min(move.most, *offer.grams);
        move.least = std::min(least_of_stand_in * food.grams.mid, move.most);
        move.price = context_.constant("advice.price.new") + allergen_price(ingredient(food));
        move.partner_of = l;
        if (move.most > 0) push(std::move(move));
    }

    // What a kept line is made of is not used up elsewhere, unless the list says that there is more.
    bool kept_as_it_is(const Line& food) const {
        const bool kept =
            std::any_of(lines().begin(), lines().end(), [&](const Line& line) { return line.keep && line.ingredient == food.ingredient; });
        return kept && left_.count(food.ingredient) == 0;
    }

    // A stand-in that is in the formula already, prepared to the same weight, is that line raised.
    std::optional<std::size_t> line_alike(const Line& food) {
        for (std::size_t l = 0; l < lines().size(); ++l) {
            if (lines()[l].ingredient != food.ingredient || lines()[l].keep || problem_.missing[l]) continue;
            if (std::abs(unit(lines()[l])[Amount::mass] - unit(food)[Amount::mass]) < 1e-9) return l;
        }
        return std::nullopt;
    }

    // Strong foods have a most of their own.
    double room_by_the_kilo(const Ingredient& food) const {
        return food.most_g_per_kg ? food.most_g_per_kg->band.mid * base_mass_ / 1000 : std::numeric_limits<double>::infinity();
    }

    // How much of a food may come in at all.
    double room_for(const Move& move, Role role) const {
        const bool meat = ingredient(move.food).meat.has_value();
        // Green tomato stands in for the acid of tomatillo, and is a vegetable for all that.
        const bool fills = is_bulk(move.line) && is_vegetable(ingredient(move.food).tissue);
        const double share = meat ? 1 : fills ? most_of_paste : most_of_batch(role);
        double most = std::min(share * base_mass_, room_by_the_kilo(ingredient(move.food)));
        if (move.into) {
            most = std::min(
                {most, room_for_more(*move.into), is_meat(*move.into) ? base_mass_ : most_of_batch(role_of_line(*move.into)) * base_mass_});
            // More of another herb or spice: no more of it than a taster forgives.
            if (!interchangeable(role_of_line(*move.into))) most = std::min(most, raise_share * lines()[*move.into].grams.mid);
            return most;
        }
        if (const auto left = left_.find(move.food.ingredient); left != left_.end())
            return std::min(most, left->second / bought(move.food));
        const Offer offer = stock_.offer(move.food);
        return offer.grams ? std::min(most, *offer.grams) : most;
    }

    double price_of(const Move& move) const {
        const double unlike = 1 - move.stands_for.front().closeness;
        const Ingredient& food = ingredient(move.food);
        const bool asked_for = !problem_.missing[move.line];
        return context_.constant("advice.price.swap") * unlike * unlike +
               context_.constant(in_formula(food) ? "advice.price.change" : "advice.price.new") +
               (asked_for ? context_.constant("advice.price.lever") : 0) + allergen_price(food) +
               (brings_a_beast(food) ? context_.constant("advice.price.beast") : 0);
    }

    // Bacon, salt pork: nobody who asks for a fresh sausage leaner is given cured meat for it.
    bool cured(const Ingredient& food) {
        Line line;
        line.ingredient = food.id;
        return food.meat && unit(line)[Amount::salt] >= salty;
    }

    // Whether an animal comes in that the formula has not.
    bool brings_a_beast(const Ingredient& food) const {
        return food.meat && std::none_of(lines().begin(), lines().end(), [&](const Line& line) {
                   const auto& meat = ingredient(line).meat;
                   return meat && meat->species == food.meat->species;
               });
    }

    // Fat that may be added: of the animals that are in already, as it is ground; in a mass without such fat, oil.
    bool may_add(const Ingredient& food, Role role) const {
        if (role != Role::fat) return !brings_a_beast(food);
        const bool beasts = std::any_of(lines().begin(), lines().end(), [&](const Line& line) {
            const auto& meat = ingredient(line).meat;
            return meat && meat->species != Species::fish && meat->species != Species::crustacean;
        });
        return beasts ? food.meat && !brings_a_beast(food) : food.tissue == Tissue::liquid && food.allergens.empty();
    }

    // For each allergen that the formula does not have already.
    double allergen_price(const Ingredient& food) const {
        const auto fresh = std::count_if(food.allergens.begin(), food.allergens.end(), [&](const auto& a) { return !allergens_.count(a); });
        return static_cast<double>(fresh) * context_.constant("advice.price.allergen");
    }

    void add_role(Role role) {
        std::map<std::string, double> known;  // how often a food is named as a stand-in: the usual ones first
        double usual = 1;
        for (const auto& swap : knowledge_.records().swaps)
            if (swap.role == role) usual = std::max(usual, ++known[swap.to]);
        std::vector<const Ingredient*> foods;
        for (const auto& i : knowledge_.records().ingredients)
            if (i.roles.front() == role && stock_.can_bring(i) && (role != Role::binder || i.tissue == Tissue::dry) && !in_formula(i) &&
                may_add(i, role))
                foods.push_back(&i);
        // The same with a new allergen is no other idea.
        const bool safe = std::any_of(foods.begin(), foods.end(), [&](const Ingredient* i) { return allergen_price(*i) == 0; });
        if (safe && role == Role::binder) std::erase_if(foods, [&](const Ingredient* i) { return allergen_price(*i) > 0; });
        const auto worth = [&](const Ingredient* i) { return known[i->id] - (i->allergens.empty() ? 0 : 10); };
        std::stable_sort(foods.begin(), foods.end(), [&](const Ingredient* a, const Ingredient* b) { return worth(a) > worth(b); });
        for (std::size_t f = 0; f < std::min(foods.size(), adds_of_a_kind); ++f) {
            const Line food = brought_in(*foods[f], role, knowledge_);
            if (partners_.count(key_of(food))) continue;
            Move move{MoveKind::add, 0, food, {}, unit(food), 0, 0, false, role};
            if (!(dose_of(move.per_gram, role) > 0)) continue;
            move.most = base_mass_ * (role == Role::binder ? most_of_binder : role == Role::acid ? most_of_acid : most_of_paste / 3);
            move.most = std::min({move.most, enough_for_goals(distance_, base_mass_, move.per_gram, role), room_by_the_kilo(*foods[f])});
            const Offer offer = stock_.offer(food);
            if (offer.grams) move.most = std::min(move.most, *offer.grams);
            const bool asked_for = asked_.by_goal.count(role) > 0;
            const double rare = 1 - known[foods[f]->id] / usual;
            move.price = context_.constant("advice.price.new") + (asked_for ? context_.constant("advice.price.lever") : 0) +
                         context_.constant("advice.price.rare") * rare + allergen_price(*foods[f]);
            move.least = least_of_addition * move.most;
            if (move.most > 0) push(std::move(move));
        }
    }

    bool in_formula(const Ingredient& i) const {
        return std::any_of(lines().begin(), lines().end(), [&](const Line& line) { return line.ingredient == i.id; });
    }

    static Material negated(const Material& m) {
        Material minus;
        minus.add(m, -1);
        return minus;
    }

    void push(Move move) {
        move.bought = bought(move.food);
        problem_.moves.push_back(std::move(move));
    }

    const Stock& stock_;
    const SwapGraph& graph_;
    const Distance& distance_;
    const Context& context_;
    const Knowledge& knowledge_;
    Problem problem_;
    std::set<std::string> allergens_, partners_;
    AskedRoles asked_;
    std::map<std::string, double> left_;
    double base_mass_ = 0, base_acid_ = 0;
};

}  // namespace

Problem make_problem(const Formula& formula, const Stock& stock, const SwapGraph& graph, const Distance& distance, const Context& context) {
    return Builder(formula, stock, graph, distance, context).build();
}

}  // namespace standin
