#include "adapt/problem.hpp"

#include <algorithm>
#include <cmath>
#include <functional>
#include <limits>
#include <map>
#include <set>

#include "adapt/kin.hpp"
#include "adapt/making.hpp"
#include "adapt/request.hpp"
#include "core/band.hpp"
#include "models/as_bought.hpp"
#include "substitute/dose.hpp"
#include "substitute/stand_ins.hpp"

namespace standin {
namespace {

// Shares of the batch that bound what a move may bring; a plain kitchen's sense of proportion, judgement throughout.
constexpr double most_of_paste = 0.25;    // a green, vegetable or nut
constexpr double most_of_binder = 0.035;  // also the usual legal cap
constexpr double most_of_acid = 0.04;
constexpr double most_of_liquid = 0.03;  // of wine, stock, milk on top of what there is
constexpr double raise_share = 0.6;      // of a line
constexpr double trim_share = 0.4;
constexpr double dose_slack = 1.5;  // over the equal dose
constexpr std::size_t stand_ins_a_line = 7;
constexpr std::size_t adds_of_a_kind = 6;

// Which roles can move a property that a want is about: by changing or replacing their lines, or by adding one.
struct Lever {
    Property property;
    std::vector<Role> change, replace, add;
};

const std::vector<Lever>& levers() {
    static const std::vector<Lever> all{
        {Property::heat_mg_kg, {Role::heat}, {Role::heat}, {Role::heat}},
        {Property::greenness, {Role::green, Role::herb}, {Role::green}, {Role::green}},
        {Property::chlorophyll_mg_kg, {Role::green, Role::herb}, {Role::green}, {Role::green}},
        {Property::sourness_mmol_kg, {Role::acid}, {Role::acid}, {Role::acid}},
        {Property::ph, {Role::acid}, {Role::acid}, {Role::acid}},
        {Property::bind, {Role::acid, Role::green, Role::liquid, Role::binder}, {Role::binder}, {Role::binder}},
        {Property::firmness, {Role::acid, Role::green, Role::liquid, Role::binder}, {Role::binder}, {Role::binder}},
        {Property::fat_pct, {Role::fat, Role::lean}, {Role::lean, Role::fat}, {Role::fat}},
        {Property::salt_pct, {Role::salt}, {}, {}},
        {Property::water_pct, {Role::liquid, Role::green}, {}, {}},
        {Property::protein_pct, {Role::lean, Role::fat}, {Role::lean, Role::fat}, {}},
        {Property::cook_loss_pct, {Role::liquid, Role::binder, Role::green, Role::acid}, {Role::binder}, {Role::binder}},
    };
    return all;
}

double most_of_batch(Role role) {
    switch (role) {
        case Role::binder:
            return most_of_binder;
        case Role::acid:
            return most_of_acid;
        case Role::liquid:
            return most_of_liquid;
        default:
            return most_of_paste;
    }
}

// Whether what one food brings in a role is the same thing in another: more cumin is no mustard.
bool interchangeable(Role role) { return !amount_of_dose(role) && role != Role::sweet; }

bool contains(const std::vector<Role>& roles, Role role) { return std::find(roles.begin(), roles.end(), role) != roles.end(); }

class Builder {
public:
    Builder(const Formula& formula, const Stock& stock, const SwapGraph& graph, const Yardstick& yardstick, const Context& context)
        : stock_(stock), graph_(graph), yardstick_(yardstick), context_(context), knowledge_(context.knowledge()) {
        problem_.formula = formula;
        for (const auto& line : formula.lines)
            for (const auto& allergen : ingredient(line).allergens) allergens_.insert(allergen);
    }

    Problem build() && {
        start();
        find_roles();
        for (std::size_t l = 0; l < lines().size(); ++l) change_line(l);
        for (std::size_t l = 0; l < lines().size(); ++l) replace_line(l);
        for (const Role role : add_roles_) add_role(role);
        limits();
        problem_.processes = ways_of_making(problem_.formula, yardstick_, context_);
        problem_.hard = hard_goals(yardstick_);
        relate(problem_, knowledge_);
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
        problem_.forced.resize(lines().size());
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
            problem_.forced[l] = grams < line.grams.mid;
            problem_.excluded[l] = offer.excluded;
        }
        left_ = std::move(left);
        double meat = 0;
        for (std::size_t l = 0; l < lines().size(); ++l) {
            const Material one = unit(lines()[l]);
            problem_.start_total.add(one, problem_.start[l]);
            // Fat that is not to be had may be rendered fat or oil instead, which is no meat.
            const bool fat = problem_.forced[l] && role_of_line(l) == Role::fat;
            meat += one[Amount::meat] * (fat ? problem_.start[l] : lines()[l].grams.mid);
            base_mass_ += one[Amount::mass] * lines()[l].grams.mid;
        }
        problem_.least_meat = context_.constant("advice.meat.least") * meat;
        hold_salt();
    }

    void hold_salt() {
        const bool settled = yardstick_.wanted(Property::salt_pct) || std::any_of(lines().begin(), lines().end(), [&](const Line& line) {
                                 const auto l = static_cast<std::size_t>(&line - lines().data());
                                 return role_of_line(l) == Role::salt && (line.keep || problem_.forced[l]);
                             });
        if (!settled) problem_.least_salt = held_salt(yardstick_, problem_.start_total);
    }

    // What a want or a missing line lets us touch.
    void find_roles() {
        for (const auto& goal : yardstick_.goals())
            for (const auto& lever : levers()) {
                if (lever.property != goal.property) continue;
                change_roles_.insert(lever.change.begin(), lever.change.end());
                replace_roles_.insert(lever.replace.begin(), lever.replace.end());
                const bool more = goal.kind != Goal::Kind::at_most;
                const bool loss = goal.property == Property::cook_loss_pct;
                for (const Role role : lever.add)
                    if (role == Role::binder ? more != loss : more && (role == Role::heat || !has_line_of(role))) add_roles_.insert(role);
                for (const Role role : lever.replace)
                    if (more) lift_[role] = std::max(lift_[role], lifted(goal));
            }
        for (std::size_t l = 0; l < lines().size(); ++l)
            if (problem_.forced[l])
                for (const Role role : ingredient(lines()[l]).roles)
                    if (interchangeable(role)) change_roles_.insert(role);
    }

    // How many times the base's dose a goal may take.
    double lifted(const Goal& goal) const {
        constexpr double next_to_nothing = 1e-6, most_lift = 50;
        const double base = yardstick_.base().properties[goal.property];
        return base > next_to_nothing ? std::clamp(goal.target(base) / base, 1.0, most_lift) : most_lift;
    }

    // Grams of a food that would bring what a goal for more of `role` still asks for, with slack; no bound where the role has no unit a
    // property counts in.
    double enough_for_goals(const Material& per_gram, Role role) const {
        constexpr double slack = 2;
        double most = std::numeric_limits<double>::infinity();
        for (const auto& goal : yardstick_.goals()) {
            const bool counted = (role == Role::heat && goal.property == Property::heat_mg_kg) ||
                                 (role == Role::acid && goal.property == Property::sourness_mmol_kg);
            if (!counted || goal.kind == Goal::Kind::at_most) continue;
            const double base = yardstick_.base().properties[goal.property];
            most = std::min(most, slack * std::max(0.0, goal.target(base) - base) * base_mass_ / 1000 / dose_of(per_gram, role));
        }
        return most;
    }

    bool has_line_of(Role role) const {
        return std::any_of(lines().begin(), lines().end(), [&](const Line& line) { return contains(ingredient(line).roles, role); });
    }

    double room_for_more(std::size_t l) const {
        const auto left = left_.find(lines()[l].ingredient);
        return left == left_.end() ? base_mass_ : left->second / bought(lines()[l]);
    }

    void change_line(std::size_t l) {
        const Line& line = lines()[l];
        if (line.keep) return;
        const Role role = role_of_line(l);
        const bool trim =
            role == Role::salt || (role == Role::liquid && unit(line)[Amount::titratable] <= 0 && unit(line)[Amount::alcohol] <= 0);
        const bool touched = change_roles_.count(role) > 0 || problem_.forced[l];
        if (!trim && !touched) return;
        // Meat only moves for a want about it, or to make up for meat that is missing.
        if (is_meat(l) && !change_roles_.count(role)) return;
        const double price = context_.constant(trim && !touched ? "advice.price.trim" : "advice.price.change");
        const double down = trim && !touched ? trim_share : 1.0;
        if (problem_.start[l] > 0)
            push({MoveKind::reduce, l, line, {}, negated(unit(line)), problem_.start[l] * down, price, trim, role, {}});
        if (problem_.forced[l] || role == Role::binder) return;
        const double up = std::min({line.grams.mid * (trim         ? trim_share
                                                      : is_meat(l) ? 1.0
                                                                   : raise_share),
                                    room_for_more(l), is_meat(l) ? base_mass_ : most_of_batch(role) * base_mass_});
        if (up > 0) push({MoveKind::raise, l, line, {}, unit(line), up, price, trim, role, {}});
    }

    void replace_line(std::size_t l) {
        const Line& line = lines()[l];
        if (line.keep || (!problem_.forced[l] && !replace_roles_.count(role_of_line(l)))) return;
        std::size_t taken = 0;
        const auto may_use = [&](const Ingredient& i) { return stock_.can_bring(i); };
        for (const auto& candidate : candidates_for(problem_.formula, l, graph_, context_.nominal(), may_use).fit) {
            if (taken == stand_ins_a_line && !stock_.listed()) break;
            if (taken == 2 * stand_ins_a_line) break;
            if (offer_stand_in(l, candidate)) ++taken;
        }
    }

    bool offer_stand_in(std::size_t l, const Candidate& candidate) {
        const StandsFor stands{l, candidate.closeness, candidate.food.grams.mid / candidate.share, candidate.role, candidate.swaps};
        const std::string key = key_of(candidate.food);
        if (const auto same = line_alike(candidate.food)) return widen_raise(*same, stands);
        if (kept_as_it_is(candidate.food)) return false;
        const auto [place, fresh] = stand_in_moves_.try_emplace(key, problem_.moves.size());
        if (fresh)
            push({MoveKind::stand_in,
                  l,
                  candidate.food,
                  {},
                  counted_as(candidate, lines()[l], context_.nominal()),
                  0,
                  0,
                  false,
                  candidate.role,
                  {}});
        Move& move = problem_.moves[place->second];
        move.stands_for.push_back(stands);
        move.most = bounded(move, candidate.role);
        move.price = price_of(move);
        return true;
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
            if (lines()[l].ingredient != food.ingredient || lines()[l].keep || problem_.forced[l]) continue;
            if (std::abs(unit(lines()[l])[Amount::mass] - unit(food)[Amount::mass]) < 1e-9) return l;
        }
        return std::nullopt;
    }

    bool widen_raise(std::size_t l, const StandsFor& stands) {
        auto move = std::find_if(problem_.moves.begin(), problem_.moves.end(),
                                 [&](const Move& m) { return m.kind == MoveKind::raise && m.line == l; });
        if (move == problem_.moves.end()) {
            push({MoveKind::raise,
                  l,
                  lines()[l],
                  {},
                  unit(lines()[l]),
                  0,
                  context_.constant("advice.price.change"),
                  false,
                  role_of_line(l),
                  {}});
            move = problem_.moves.end() - 1;
        }
        move->stands_for.push_back(stands);
        const Role role = role_of_line(l);
        double most = std::min(room_for_more(l), is_meat(l) ? base_mass_ : most_of_batch(role) * base_mass_);
        if (!interchangeable(role)) {
            // More of another herb or spice is a stand-in like any other, and no more of it than a taster forgives.
            most = std::min(most, raise_share * lines()[l].grams.mid);
            move->price = price_of(*move);
        }
        move->most = std::min(most, move->most + dose_slack * stands.equal_grams);
        return move->most > 0;
    }

    double bounded(const Move& move, Role role) const {
        double equal = 0;
        for (const auto& stands : move.stands_for) equal += stands.equal_grams;
        const bool meat = ingredient(move.food).meat.has_value();
        const auto lift = lift_.find(role);
        double most = dose_slack * equal * (lift == lift_.end() ? 1.0 : lift->second);
        if (!meat) most = std::min(most, most_of_batch(role) * base_mass_);
        if (const auto left = left_.find(move.food.ingredient); left != left_.end())
            return std::min(most, left->second / bought(move.food));
        const Offer offer = stock_.offer(move.food);
        return offer.grams ? std::min(most, *offer.grams) : most;
    }

    double price_of(const Move& move) const {
        double closeness = 0;
        for (const auto& stands : move.stands_for) closeness = std::max(closeness, stands.closeness);
        const Ingredient& food = ingredient(move.food);
        return context_.constant("advice.price.swap") * (1 - closeness) +
               context_.constant(in_formula(food) ? "advice.price.change" : "advice.price.new") + allergen_price(food);
    }

    // For each allergen that the formula does not have already.
    double allergen_price(const Ingredient& food) const {
        const auto fresh = std::count_if(food.allergens.begin(), food.allergens.end(), [&](const auto& a) { return !allergens_.count(a); });
        return static_cast<double>(fresh) * context_.constant("advice.price.allergen");
    }

    void add_role(Role role) {
        std::map<std::string, int> known;  // how often a food is named as a stand-in: the usual ones first
        for (const auto& swap : knowledge_.records().swaps)
            if (swap.role == role) ++known[swap.to];
        std::vector<const Ingredient*> foods;
        for (const auto& i : knowledge_.records().ingredients)
            if (i.roles.front() == role && stock_.can_bring(i) && (role != Role::binder || i.tissue == Tissue::dry) && !in_formula(i))
                foods.push_back(&i);
        const auto worth = [&](const Ingredient* i) { return known[i->id] - (i->allergens.empty() ? 0 : 10); };
        std::stable_sort(foods.begin(), foods.end(), [&](const Ingredient* a, const Ingredient* b) { return worth(a) > worth(b); });
        for (std::size_t f = 0; f < std::min(foods.size(), adds_of_a_kind); ++f) {
            const Line food = brought_in(*foods[f], role, knowledge_);
            Move move{MoveKind::add, 0, food, {}, unit(food), 0, 0, false, role, {}};
            if (!(dose_of(move.per_gram, role) > 0)) continue;
            move.most = base_mass_ * (role == Role::binder ? most_of_binder : role == Role::acid ? most_of_acid : most_of_paste / 3);
            move.most = std::min(move.most, enough_for_goals(move.per_gram, role));
            const Offer offer = stock_.offer(food);
            if (offer.grams) move.most = std::min(move.most, *offer.grams);
            move.price = context_.constant("advice.price.new") + allergen_price(*foods[f]);
            push(std::move(move));
        }
    }

    bool in_formula(const Ingredient& i) const {
        return std::any_of(lines().begin(), lines().end(), [&](const Line& line) { return line.ingredient == i.id; });
    }

    // One ingredient in several forms draws on the same stock; binders together stay within what one may bring.
    void limits() {
        std::map<std::string, Limit> shared;
        for (std::size_t m = 0; m < problem_.moves.size(); ++m) {
            const Move& move = problem_.moves[m];
            if (move.kind == MoveKind::reduce) continue;
            const Offer offer = stock_.offer(ingredient(move.food));
            if (!offer.grams) continue;
            auto& limit = shared[move.food.ingredient];
            limit.moves.push_back(m);
            limit.grams = *offer.grams;
            limit.as_bought = true;
        }
        for (auto& [id, limit] : shared) {
            for (std::size_t l = 0; l < lines().size(); ++l)
                if (lines()[l].ingredient == id) limit.grams -= problem_.start[l] * bought(lines()[l]);
            if (limit.moves.size() > 1) problem_.limits.push_back(std::move(limit));
        }
        Limit binders{{}, most_of_binder * base_mass_};
        for (std::size_t m = 0; m < problem_.moves.size(); ++m)
            if (problem_.moves[m].kind == MoveKind::add && ingredient(problem_.moves[m].food).roles.front() == Role::binder)
                binders.moves.push_back(m);
        if (binders.moves.size() > 1) problem_.limits.push_back(std::move(binders));
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
    const Yardstick& yardstick_;
    const Context& context_;
    const Knowledge& knowledge_;
    Problem problem_;
    std::set<std::string> allergens_;
    std::set<Role> change_roles_, replace_roles_, add_roles_;
    std::map<std::string, double> left_;
    std::map<Role, double> lift_;
    std::map<std::string, std::size_t> stand_in_moves_;
    double base_mass_ = 0;
};

}  // namespace

std::vector<Goal> hard_goals(const Yardstick& yardstick) {
    std::vector<Goal> hard;
    for (const auto& goal : yardstick.goals())
        hard.push_back(as_condition(goal, yardstick.base().properties[goal.property], aimed_within * yardstick.step(goal.property)));
    return hard;
}

double held_salt(const Yardstick& yardstick, const Material& start) {
    constexpr double most_below = 0.25;  // noticeable differences; judgement
    const double held = yardstick.base().properties[Property::salt_pct] - most_below * yardstick.step(Property::salt_pct);
    return std::max(0.0, std::min(held, start.share(Amount::salt, 100)));
}

Problem make_problem(const Formula& formula, const Stock& stock, const SwapGraph& graph, const Yardstick& yardstick,
                     const Context& context) {
    return Builder(formula, stock, graph, yardstick, context).build();
}

}  // namespace standin
