#include "adapt/moves/constraints.hpp"

#include <algorithm>
#include <functional>
#include <map>
#include <set>

#include "adapt/distance/asked_roles.hpp"
#include "adapt/goals/proportions.hpp"
#include "adapt/moves/fair_moves.hpp"
#include "adapt/moves/goes_first.hpp"
#include "adapt/moves/odd_foods.hpp"
#include "adapt/moves/own_water.hpp"
#include "adapt/moves/sour_pour.hpp"
#include "core/contains.hpp"
#include "knowledge/index/kinds.hpp"
#include "knowledge/records/tissue.hpp"
#include "models/as_bought.hpp"
#include "safety/cap_values.hpp"
#include "safety/caps.hpp"

namespace standin {
namespace {

constexpr double within = 0.998;  // of a cap, so that kitchen weights keep it too

class Constraints {
public:
    Constraints(const Problem& problem, const Stock& stock, const Distance& distance, const Context& context)
        : problem_(problem), stock_(stock), distance_(distance), context_(context) {}

    std::vector<LinearConstraint> all() && {
        share_stock();
        share_raises();
        swap_meat();
        fill_the_place();
        fill_once();
        kin_comes_in();
        for (auto& limit : what_goes_first(problem_, distance_, context_)) limits_.push_back(std::move(limit));
        cap_binders();
        cap_leaves();
        cap_by_the_kilo();
        if (auto limit = sour_pour_limit(problem_, context_)) limits_.push_back(std::move(*limit));
        cap_by_law();
        hold_meat();
        fill_the_lean();
        if (auto limit = distance_.goals().empty() ? water_follows(problem_, context_) : std::nullopt) limits_.push_back(std::move(*limit));
        hold_salt();
        cap_salt();
        return std::move(limits_);
    }

private:
    const Ingredient& ingredient(const Line& line) const { return *context_.knowledge().ingredient(line.ingredient); }
    Role role(const Line& line) const { return ingredient(line).roles.front(); }
    const Material& base() const { return distance_.base_material(); }

    using Weight = std::function<double(const Move&)>;

    // What some moves weigh together stays within `room`; no limit where there is but one move, which has its own most. A move that weighs
    // nothing is not one of them.
    void share(const Weight& weight, double room) {
        LinearConstraint limit{{}, room, room > 0 ? room : 1};
        for (const auto& move : problem_.moves) limit.per_gram.push_back(weight(move));
        if (std::count_if(limit.per_gram.begin(), limit.per_gram.end(), [](double w) { return w > 0; }) > 1)
            limits_.push_back(std::move(limit));
    }

    // One ingredient that comes in for several lines or in several forms draws on the same stock, as picked or bought.
    void share_stock() {
        std::map<std::string, double> stocked;
        for (const auto& move : problem_.moves) {
            if (move.kind == MoveKind::reduce) continue;
            const auto note = [&](const Line& food) {
                if (const Offer offer = stock_.offer(ingredient(food)); offer.grams) stocked[food.ingredient] = *offer.grams;
            };
            note(move.food);
            if (move.second) note(move.second->food);
        }
        for (auto& [id, grams] : stocked) {
            for (std::size_t l = 0; l < problem_.start.size(); ++l) {
                const Line& line = problem_.formula.lines[l];
                if (line.ingredient == id) grams -= problem_.start[l] * listed_per_gram(line, context_.knowledge());
            }
            share([&, &name = id](const Move& m) { return m.kind != MoveKind::reduce ? m.brings(name, true) : 0.0; }, std::max(0.0, grams));
        }
    }

    // A line that is raised for several others is raised only so far.
    void share_raises() {
        for (std::size_t l = 0; l < problem_.start.size(); ++l) {
            const Line& line = problem_.formula.lines[l];
            const auto raises = [&](const Move& m) {
                const double first = m.into == l || (m.kind == MoveKind::raise && m.line == l) ? 1 : 0;
                return first + (m.second && m.second->into == l ? m.second->per_gram : 0);
            };
            share(raises, interchangeable(role(line)) ? most_.of_batch(role(line)) * base()[Amount::mass] : most_.raise * line.grams.mid);
        }
    }

    // Meat that is there gives way to other meat gram for gram: what a want brings in for it does not stand beside it.
    void swap_meat() {
        const bool about_fat = asks_leaner(distance_.goals()) || asks_firmer(distance_.goals());
        for (std::size_t l = 0; l < problem_.start.size(); ++l) {
            const Line& line = problem_.formula.lines[l];
            if (!ingredient(line).meat || problem_.missing[l]) continue;
            LinearConstraint limit{{}, 0, std::max(1.0, line.grams.mid)};
            bool comes_in = false;
            for (const auto& move : problem_.moves) {
                const bool comes = move.kind == MoveKind::stand_in && move.line == l;
                // For the fat that goes, where it is to be leaner or firmer, lean comes in as well.
                const bool fat_goes = about_fat && ingredient(move.food).tissue == Tissue::fat_tissue;
                const bool goes = move.kind == MoveKind::reduce && (move.line == l || fat_goes);
                comes_in = comes_in || comes;
                limit.per_gram.push_back(comes ? 1 : goes ? -1 : 0);
            }
            if (comes_in) limits_.push_back(std::move(limit));
        }
    }

    // Culantro and parsley for coriander leaf: herbs that come in for one season no more than it did, and of the stronger less is enough.
    void season_once(std::size_t l, double missing) {
        const Line& line = problem_.formula.lines[l];
        const auto seasons = [&](const Move& m) {
            const bool one = m.kind == MoveKind::stand_in && m.line == l && contains(ingredient(m.food).roles, Role::herb);
            return one ? m.covers->per_gram * line.grams.mid : 0.0;
        };
        if (contains(ingredient(line).roles, Role::herb)) share(seasons, missing);
    }

    // Vegetables that come in together for one fill its place once: the acid or the green that is then short is told.
    void fill_the_place() {
        const bool greener = any_asks(distance_.goals(), Property::greenness, Goal::Kind::at_least);
        for (std::size_t l = 0; l < problem_.start.size(); ++l) {
            const Line& line = problem_.formula.lines[l];
            if (!is_vegetable(ingredient(line)) || !problem_.missing[l] || (greener && role(line) == Role::green)) continue;
            const double mass = context_.nominal().unit(line)[Amount::mass], missing = line.grams.mid - problem_.start[l];
            const auto fills = [&](const Move& m) {
                const bool one = m.kind == MoveKind::stand_in && m.line == l && m.fills;
                return one ? m.per_gram[Amount::mass] / mass : 0.0;
            };
            double room = context_.constant("advice.bulk.together") * missing;
            for (const auto& move : problem_.moves)  // what takes more by itself may have it
                if (fills(move) > 0) room = std::max(room, fills(move) * missing / line.grams.mid / move.covers->per_gram);
            share(fills, room);
            season_once(l, missing);
        }
    }

    // Preserved lemon, capers: fruit that is there for its sour and its salt, and fills nothing.
    static bool is_relish(const Ingredient& food) { return contains(food.roles, Role::salt) && food.most_g_per_kg; }

    // What comes in for one line is together no more than that line: two that each make up for all of a wine share it.
    void fill_once() {
        const double over = context_.constant("advice.place.together");
        for (std::size_t l = 0; l < problem_.start.size(); ++l) {
            const Line& line = problem_.formula.lines[l];
            if (!problem_.missing[l] || (is_vegetable(ingredient(line).tissue) && !is_relish(ingredient(line)))) continue;
            const auto fills = [&](const Move& m) { return m.kind == MoveKind::stand_in && m.line == l ? m.covers->per_gram : 0.0; };
            double room = over * missing_share(problem_, l);
            for (const auto& move : problem_.moves) room = std::max(room, fills(move) * move.most);
            share(fills, room);
        }
    }

    // Swiss cheese for gruyere, peas for frozen peas: what is nearly the same and there in plenty comes in, whatever else of the batch were
    // the nearer without the line.
    void kin_comes_in() {
        if (!distance_.goals().empty()) return;
        const double nearly_same = context_.constant("advice.fair.nearly-same");
        const double all_but = context_.constant("advice.fair.all-but");
        const double most_of_it = context_.constant("advice.fair.most-of-it");
        const auto in_plenty = [&](const Move& m, double missing) {
            const Ingredient& food = ingredient(m.food);
            return !m.into && !m.second && !is_capped(food) && stock_.names(food.id) && !stock_.in_doubt(food.id) &&
                   !stock_.offer(food).grams && m.stands_for.front().closeness >= nearly_same &&
                   m.most * m.covers->per_gram >= all_but * missing;
        };
        for (std::size_t l = 0; l < problem_.start.size(); ++l) {
            if (!problem_.missing[l]) continue;
            const double missing = missing_share(problem_, l);
            const auto comes = [&](const Move& m) { return m.kind == MoveKind::stand_in && m.line == l; };
            LinearConstraint limit{{}, -most_of_it * missing, 1};
            for (const auto& move : problem_.moves) limit.per_gram.push_back(comes(move) ? -move.covers->per_gram : 0);
            if (std::any_of(problem_.moves.begin(), problem_.moves.end(), [&](const Move& m) { return comes(m) && in_plenty(m, missing); }))
                limits_.push_back(std::move(limit));
        }
    }

    // How much of a mass counts against a cap, by the food it is of.
    using Counts = std::function<double(const Ingredient&)>;

    // What counts stays within `cap` of the variant's own mass, or above it. A formula that is beyond it already gets no more of it, and
    // what else goes out of it does not count: less water makes no more starch. The law counts shares, whatever is beyond.
    void cap(const Counts& counts, double cap, bool at_least = false, bool by_law = false) {
        const double sign = at_least ? -1 : 1;
        // What counts is weighed dry: the water that soaked oats take up is none of it.
        const auto excess = [&](const Line& food, const Material& m, double of_mass) {
            const double weighed = m[Amount::mass] < 0 ? -1 : 1;
            return sign * (counts(ingredient(food)) * weighed - of_mass * m[Amount::mass]);
        };
        const auto sums = [&](double of_mass) {
            double start = 0, before = 0;
            for (std::size_t l = 0; l < problem_.start.size(); ++l) {
                const Line& line = problem_.formula.lines[l];
                const double one = excess(line, context_.nominal().unit(line), of_mass);
                start += one * problem_.start[l];
                before += one * line.grams.mid;
            }
            return std::pair(start, before);
        };
        const bool beyond = !by_law && !at_least && sums(cap).second > 0;
        const double of_mass = beyond ? 0 : cap;
        const auto [start, before] = sums(of_mass);
        LinearConstraint limit{{}, std::max(0.0, before) - start, std::max(cap, 0.01) * base()[Amount::mass]};
        for (const auto& move : problem_.moves) {
            const double beside = move.second ? sign * counts(ingredient(move.second->food)) * move.second->per_gram : 0;
            limit.per_gram.push_back(excess(move.food, move.per_gram, of_mass) + beside);
        }
        limit.is_cap = true;
        limits_.push_back(std::move(limit));
    }

    // Cereal and starch, those of the maker with those that come in. What the maker has near the most or beyond it counts by its weight: a
    // mass with less water holds no more flour for that. Bread sausages hold more than is usual, and bear a little more of it.
    void cap_binders() {
        const double near = context_.constant("advice.binder.near-the-most");
        const double more_of_own = context_.constant("advice.binder.more-of-own");
        const Counts dry_binder = [](const Ingredient& i) { return is_dry_binder(i) ? 1.0 : 0.0; };
        if (!moved(dry_binder)) return;
        double there = 0, own = 0;
        for (std::size_t l = 0; l < problem_.start.size(); ++l) {
            const Line& line = problem_.formula.lines[l];
            there += dry_binder(ingredient(line)) * problem_.start[l];
            own += dry_binder(ingredient(line)) * line.grams.mid;
        }
        const double usual = within * most_.binder * base()[Amount::mass];
        if (own <= near * usual) return cap(dry_binder, within * most_.binder);
        LinearConstraint limit{{}, std::max(usual, own > usual ? more_of_own * own : 0) - there, usual};
        for (const auto& move : problem_.moves) {
            const double sign = move.per_gram[Amount::mass] < 0 ? -1 : 1;
            const double beside = move.second ? dry_binder(ingredient(move.second->food)) * move.second->per_gram : 0;
            limit.per_gram.push_back(sign * dry_binder(ingredient(move.food)) + beside);
        }
        limit.is_cap = true;
        limits_.push_back(std::move(limit));
    }

    // However green it is wanted: a mass of leaves is no sausage.
    void cap_leaves() {
        const Counts leaf = [](const Ingredient& i) { return i.roles.front() == Role::green && is_vegetable(i.tissue) ? 1.0 : 0.0; };
        if (distance_.wanted(Property::greenness) && moved(leaf)) cap(leaf, within * most_.leaves);
    }

    // What a gram of the line is against the most of a food: the dried herb that is in leaves less room for the fresh.
    double as_much_of(const Line& line, const Ingredient& food) const {
        if (line.ingredient == food.id) return 1;
        const Ingredient& there = ingredient(line);
        const bool other_form = there.most_g_per_kg && amount_of_dose(there.roles.front()) && same_plant(there, food);
        return other_form ? food.most_g_per_kg->band.mid / there.most_g_per_kg->band.mid : 0;
    }

    // Who asks for a milder one gets none that is still more than a kilo bears of the chile in it.
    bool comes_under_its_cap(const Move& move) const {
        return move.kind == MoveKind::reduce && ingredient(move.food).most_g_per_kg && ingredient(move.food).roles.front() == Role::heat &&
               any_asks(distance_.goals(), Property::heat_mg_kg, Goal::Kind::at_most);
    }

    // Strong foods, gums and the like: as weighed, in a kilo. Of what there is too much already no more comes in.
    void cap_by_the_kilo() {
        std::set<const Ingredient*> strong;
        for (const auto& move : problem_.moves) {
            if (move.kind != MoveKind::reduce && ingredient(move.food).most_g_per_kg) strong.insert(&ingredient(move.food));
            if (comes_under_its_cap(move)) strong.insert(&ingredient(move.food));
            if (move.second && ingredient(move.second->food).most_g_per_kg) strong.insert(&ingredient(move.second->food));
        }
        for (const auto* food : strong) {
            const double usual = within * food->most_g_per_kg->band.mid / 1000;
            LinearConstraint limit{{}, 0, std::max(1.0, usual * base()[Amount::mass])};
            double before = 0, start = 0;
            for (std::size_t l = 0; l < problem_.start.size(); ++l) {
                const Line& line = problem_.formula.lines[l];
                const double counts = as_much_of(line, *food);
                before += counts * line.grams.mid;
                start += counts * problem_.start[l];
            }
            const bool comes_under = std::any_of(problem_.moves.begin(), problem_.moves.end(), [&](const Move& move) {
                return &ingredient(move.food) == food && comes_under_its_cap(move);
            });
            const bool beyond = before > usual * base()[Amount::mass] && !comes_under;
            const double most = beyond ? 0 : usual;
            limit.room = beyond ? before - start : most * problem_.start_total[Amount::mass] - start;
            for (const auto& move : problem_.moves) {
                const double weighed = (move.kind == MoveKind::reduce ? -1 : 1) * move.brings(food->id);
                limit.per_gram.push_back(weighed - most * move.per_gram[Amount::mass]);
            }
            limit.is_cap = true;
            limits_.push_back(std::move(limit));
        }
    }

    // What the rule set that was chosen limits, of this product by its title.
    void cap_by_law() {
        const auto& all = context_.knowledge().records().rules;
        const auto rules = std::find_if(all.begin(), all.end(), [&](const RuleSet& r) { return r.code == context_.options.rules; });
        if (context_.options.rules.empty() || rules == all.end()) return;
        for (const auto* rule : caps_for(problem_.formula.title, *rules)) {
            double (*value)(const Counted&) = nullptr;
            if (rule->property == CapProperty::binder_pct) value = rule->limit > 0 ? binder_pct : any_binder_pct;
            if (rule->property == CapProperty::soy_isolate_pct) value = soy_isolate_pct;
            if (rule->property == CapProperty::meat_pct) value = meat_pct;
            if (rule->property == CapProperty::added_water_pct) value = added_water_pct;
            if (rule->property == CapProperty::fennel_or_anise_pct) value = fennel_or_anise_pct;
            if (!value) continue;
            const Counts counts = [value](const Ingredient& food) {
                PredictedLine line;
                line.grams = 1;
                return value(Counted{{Present{&line, &food}}, 1}) / 100;
            };
            if (rule->at_least || moved(counts))
                cap(counts, (rule->at_least ? 2 - within : within) * rule->limit / 100, rule->at_least, true);
        }
    }

    bool moved(const Counts& counts) const {
        return std::any_of(problem_.moves.begin(), problem_.moves.end(), [&](const Move& m) {
            return counts(ingredient(m.food)) > 0 || (m.second && counts(ingredient(m.second->food)) > 0);
        });
    }

    // However salty it is wanted: beyond this nobody eats it.
    void cap_salt() {
        if (!distance_.wanted(Property::salt_pct)) return;
        const double most = std::max(context_.constant("advice.salt.most"), base()[Amount::salt] / base()[Amount::mass]);
        limits_.push_back(ratio_limit(problem_, Amount::salt, Amount::mass, most, false));
    }

    void hold_meat() {
        const bool moves =
            std::any_of(problem_.moves.begin(), problem_.moves.end(), [](const Move& m) { return m.per_gram[Amount::meat] != 0; });
        const double there = problem_.start_total[Amount::meat];
        if (!moves && there >= problem_.least_meat) return;
        LinearConstraint limit{{}, there - problem_.least_meat, std::max(problem_.least_meat, 1.0)};
        for (const auto& move : problem_.moves) limit.per_gram.push_back(-move.per_gram[Amount::meat]);
        limits_.push_back(std::move(limit));
        if (!moves || nothing_comes_out()) return;
        const bool any_missing = std::any_of(problem_.missing.begin(), problem_.missing.end(), [](bool missing) { return missing; });
        if (!any_missing) return hold_block(context_.constant("advice.meat.most"));
        lean_follows();
        if (distance_.goals().empty() && meat_can_be_held()) hold_block(1);
    }

    // Lean that is not to be had is made up for with lean, as far as the list has any: suet beside too little chicken is no meat.
    void fill_the_lean() {
        if (!distance_.goals().empty()) return;
        for (std::size_t l = 0; l < problem_.start.size(); ++l) {
            const Line& line = problem_.formula.lines[l];
            if (!problem_.missing[l] || !ingredient(line).meat || role(line) != Role::lean) continue;
            const auto comes = [&](const Move& m) { return m.kind == MoveKind::stand_in && m.line == l ? m.per_gram[Amount::meat] : 0.0; };
            std::map<std::string, double> there;  // a food comes in for one line in one form
            for (const auto& move : problem_.moves)
                if (comes(move) > 0) there[move.food.ingredient] = std::max(there[move.food.ingredient], comes(move) * move.most);
            double most = 0;
            for (const auto& [id, grams] : there) most += grams;
            const double missing = context_.nominal().unit(line)[Amount::meat] * (line.grams.mid - problem_.start[l]);
            LinearConstraint limit{{}, -std::min(context_.constant("advice.meat.least") * missing, within * most), std::max(1.0, missing)};
            for (const auto& move : problem_.moves) limit.per_gram.push_back(-comes(move));
            if (there.size() > 1) limits_.push_back(std::move(limit));
        }
    }

    // A mass that is mixed: meat and fat come in beside what there is, and the batch grows by them.
    bool nothing_comes_out() const {
        return std::all_of(problem_.moves.begin(), problem_.moves.end(),
                           [](const Move& m) { return m.kind == MoveKind::raise || m.kind == MoveKind::add; }) &&
               problem_.all_there();
    }

    // Lean goes only as far as it comes in with the fat.
    void lean_follows() {
        LinearConstraint limit{{}, 0, std::max(1.0, base()[Amount::meat])};
        bool follows = false;
        for (const auto& move : problem_.moves) {
            const bool goes = takes_lean_off(problem_, move);
            follows = follows || goes;
            limit.per_gram.push_back(goes ? 1 : -lean_brought(problem_, move, context_));
        }
        if (follows) limits_.push_back(std::move(limit));
    }

    // A cut with less fat than the line outweighs it, unless lean may go for it.
    bool meat_can_be_held() const {
        const auto goes = [&](const Move& m) { return takes_lean_off(problem_, m); };
        const auto brings_lean = [&](const Move& m) { return lean_brought(problem_, m, context_) > 0; };
        return std::any_of(problem_.moves.begin(), problem_.moves.end(), goes) ||
               std::none_of(problem_.moves.begin(), problem_.moves.end(), brings_lean);
    }

    // A want that moves the meat changes one for the other: nobody who asks for a firmer sausage has more meat by him.
    void hold_block(double share_of_base) {
        const double most = share_of_base * base()[Amount::meat];
        LinearConstraint limit{{}, most - problem_.start_total[Amount::meat], std::max(most, 1.0)};
        for (const auto& move : problem_.moves) limit.per_gram.push_back(is_fat_for_other_fat(move) ? 0 : move.per_gram[Amount::meat]);
        limits_.push_back(std::move(limit));
    }

    // Lard for butter is of the meat block and makes it no heavier in lean.
    bool is_fat_for_other_fat(const Move& move) const {
        return move.kind == MoveKind::stand_in && move.role == Role::fat &&
               !(context_.nominal().unit(problem_.formula.lines[move.line])[Amount::meat] > 0);
    }

    // Salt per kilo of meat stays where the maker has it, unless a want is about it or the salt itself is not to be had.
    void hold_salt() {
        const bool moves = std::any_of(problem_.moves.begin(), problem_.moves.end(),
                                       [&](const Move& m) { return !m.brings_food() && m.role == Role::salt; });
        if (!moves || distance_.wanted(Property::salt_pct) || !(base()[Amount::meat] > 0)) return;
        const double ratio = base()[Amount::salt] / base()[Amount::meat];
        // The least trim is no finer: half of it may lie to either side, or what lies between nothing and it could not be had at all.
        double least = context_.constant("advice.trim.least") * base()[Amount::salt];
        for (const auto& move : problem_.moves)
            if (!move.brings_food() && move.role == Role::salt) least = std::max(least, move.least * std::abs(move.per_gram[Amount::salt]));
        constexpr double hair = 1.05;  // the rest of the batch moves the meat a little as well
        const double held = std::max(context_.constant("advice.salt.held"), hair * least / 2 / base()[Amount::salt]);
        // Who wants it looser takes salt out of a mass that has more of it than most, as far as meat still binds well with.
        const bool less = salt_goes_for_looser(distance_);
        const double lowest = less ? std::min(1.0, context_.constant("advice.salt.binds") / 100 / ratio) : 1;
        limits_.push_back(ratio_limit(problem_, Amount::salt, Amount::meat, (lowest - held) * ratio, true));
        limits_.push_back(ratio_limit(problem_, Amount::salt, Amount::meat, (1 + held) * ratio, false));
    }

    const Problem& problem_;
    const Stock& stock_;
    const Distance& distance_;
    const Context& context_;
    const Proportions most_{problem_.formula, context_};
    std::vector<LinearConstraint> limits_;
};

}  // namespace

double LinearConstraint::violation(const std::vector<double>& grams) const {
    double used = -room;
    for (std::size_t m = 0; m < grams.size(); ++m) used += per_gram[m] * grams[m];
    return used / scale;
}

LinearConstraint ratio_limit(const Problem& problem, Amount of, Amount per, double bound, bool at_least) {
    const double sign = at_least ? -1 : 1;
    const auto excess = [&](const Material& m) { return sign * (m[of] - bound * m[per]); };
    LinearConstraint limit{{}, -excess(problem.start_total), std::max(bound * problem.start_total[per], 1e-9)};
    for (const auto& move : problem.moves) limit.per_gram.push_back(excess(move.per_gram));
    return limit;
}

std::vector<LinearConstraint> constraints_of(const Problem& problem, const Stock& stock, const Distance& distance, const Context& context) {
    return Constraints(problem, stock, distance, context).all();
}

}  // namespace standin
