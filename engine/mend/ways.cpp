#include "mend/ways.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include "adapt/difference.hpp"
#include "adapt/met.hpp"
#include "adapt/search.hpp"
#include "adapt/variant.hpp"
#include "core/words.hpp"
#include "mend/additions.hpp"
#include "mend/bring.hpp"
#include "safety/allergens.hpp"
#include "safety/page.hpp"
#include "standin/number_text.hpp"

namespace standin {
namespace {

bool thins(const Goal& goal) { return goal.kind == Goal::Kind::at_most && goal.property != Property::cook_loss_pct; }

// A mended mass before it is judged.
struct Mended {
    Formula formula;
    std::vector<Ingoing> add;
};

class WaysOf {
public:
    explicit WaysOf(const Mass& mass)
        : mass_(mass),
          total_(mass.made.total(mass.formula)),
          distance_(mass.context, total_, mass.made.state(mass.formula), goals_of(mass.tastes)) {}

    Ways ways() && {
        const bool thin = std::any_of(goals().begin(), goals().end(), thins) || any_less();
        if (!thin) by_additions();
        by_plain_mass(thin);
        if (ways_.all.empty() && !(thin && goals_all_thin())) by_what_comes_nearest();
        if (ways_.all.empty() && ways_.cannot.empty()) none_found();
        return std::move(ways_);
    }

private:
    static std::vector<Goal> goals_of(const std::vector<Meant>& tastes) {
        std::vector<Goal> goals;
        for (const auto& taste : tastes) goals.insert(goals.end(), taste.goals.begin(), taste.goals.end());
        return goals;
    }

    const std::vector<Goal>& goals() const { return distance_.goals(); }
    const Knowledge& knowledge() const { return mass_.context.knowledge(); }
    Role main_role(const Line& line) const { return knowledge().ingredient(line.ingredient)->roles.front(); }
    bool any_less() const {
        return std::any_of(mass_.tastes.begin(), mass_.tastes.end(), [](const Meant& m) { return m.reading->less_of.has_value(); });
    }

    bool goals_all_thin() const { return std::all_of(goals().begin(), goals().end(), thins); }

    bool meets(const std::vector<State>& states, const Goal& goal) const {
        return missed_by(goal, distance_, mass_.states, states, mass_.request.sure) <= 0;
    }
    bool meets_all_of(const Formula& formula) const {
        const auto states = mass_.made.states(formula);
        return std::all_of(goals().begin(), goals().end(), [&](const Goal& g) { return meets(states, g); });
    }

    // More of a role that no property stands for: the share of it in all there is, times what was asked.
    Mended with_more_of(const Formula& start) {
        Mended mended{start, {}};
        const double grown = mass_.made.total(start)[Amount::mass] / total_[Amount::mass];
        for (const auto& taste : mass_.tastes) {
            if (!taste.reading->more_of) continue;
            for (const auto& line : mass_.formula.lines) {
                if (main_role(line) != *taste.reading->more_of) continue;
                double there = 0;
                for (const auto& now : mended.formula.lines)
                    if (now.ingredient == line.ingredient && now.prepared == line.prepared) there += now.grams.mid;
                double grams = taste.by() * line.grams.mid * grown - there;
                const Offer offer = mass_.stock.offer(line);
                if (offer.grams) grams = std::min(grams, *offer.grams);
                grams = kitchen_grams(grams, offer.grams.has_value());
                if (offer.on_hand && grams > 0) bring(mended, line, grams, false);
            }
        }
        return mended;
    }

    void bring(Mended& mended, const Line& food, double grams, bool fresh) const {
        Ingoing in = ingoing(food, grams, fresh, mass_.mending, knowledge());
        put_in(mended.formula, food, in);
        mended.add.push_back(std::move(in));
    }

    void by_additions() {
        const Mended start = with_more_of(mass_.formula);
        if (goals().empty()) {
            if (!start.add.empty()) ways_.all.push_back(judged_way(start, nullptr, 0));
            return;
        }
        for (const auto& mended : searched(start, mass_.request.top)) ways_.all.push_back(judged_way(mended, nullptr, 0));
        keep_the_met();
    }

    // What does all that was asked stands alone, where there is such a way.
    void keep_the_met() {
        if (std::any_of(ways_.all.begin(), ways_.all.end(), [](const MendWay& w) { return w.met; }))
            std::erase_if(ways_.all, [](const MendWay& w) { return !w.met; });
    }

    Mended weighed(const Problem& problem, const std::vector<double>& grams, const Mended& start) const {
        Mended mended = start;
        for (const auto m : used_moves(problem, grams)) {
            const Move& move = problem.moves[m];
            const Ingredient& food = *knowledge().ingredient(move.food.ingredient);
            const bool short_of = food.most_g_per_kg || move.role == Role::binder || mass_.stock.offer(food).grams;
            const double weight = kitchen_grams(grams[m], short_of);
            if (weight > 0) bring(mended, move.food, weight, move.kind == MoveKind::add);
        }
        return mended;
    }

    // The goals with the limits moved by what the draws miss; nothing where they keep them all.
    std::optional<std::vector<Goal>> tighter(const Formula& formula, std::vector<Goal> hard, double margin = 1.2) const {
        const auto states = mass_.made.states(formula);
        bool any = false;
        if (part_ != 1) return std::nullopt;
        for (std::size_t g = 0; g < goals().size(); ++g) {
            const double miss = missed_by(goals()[g], distance_, mass_.states, states, mass_.request.sure);
            if (miss <= 0 || thins(goals()[g])) continue;
            hard[g].limit += (goals()[g].kind == Goal::Kind::at_most ? -margin : margin) * miss;
            any = true;
        }
        return any ? std::optional(std::move(hard)) : std::nullopt;
    }

    // Additions to `start`, which may hold plain mass already: the same search as for a formula, from the mass as it stands. As few foods
    // as will do it, what is in the mass already before what is not, the usual before the rare.
    std::vector<Mended> searched(const Mended& start, std::size_t top) const {
        const Material there = mass_.made.total(start.formula);
        const State state = mass_.made.state(start.formula);
        const Distance distance(mass_.context, there, state, asked_in(start.formula, state));
        const Problem problem = additions_to(start.formula, there, mass_.stock, distance, mass_.context);
        std::vector<Candidate> found;
        constexpr std::size_t most_foods = 3;
        for (std::size_t foods = 1; foods <= most_foods && found.empty(); ++foods)
            for (const auto& chosen : chosen_moves(problem, foods))
                if (auto candidate = with_only(only(problem, chosen), chosen, start, distance)) found.push_back(std::move(*candidate));
        std::stable_sort(found.begin(), found.end(), [](const Candidate& a, const Candidate& b) { return a.rank < b.rank; });
        std::vector<Mended> best;
        for (auto& candidate : found)
            if (best.size() < std::max<std::size_t>(1, top)) best.push_back(std::move(candidate.mended));
        return best;
    }

    // Where the mass itself, of the middle draw, has all that is asked and too few draws have it, the limits move by what those miss.
    std::vector<Goal> asked_in(const Formula& formula, const State& state) const {
        std::vector<Goal> asked = asked_of(state);
        const auto lacks = [&](const Goal& goal) {
            const double value = state.properties[goal.property];
            return shortfall(goal, value, value) > 0;
        };
        if (!near_ || std::any_of(asked.begin(), asked.end(), lacks)) return asked;
        return tighter(formula, asked).value_or(asked);
    }

    // What is to hold of the mass with all that goes into it. Plain mass has done for what it thins as much as it shall.
    std::vector<Goal> asked_of(const State& state) const {
        constexpr double inside = 0.15, moved = 0.1;  // noticeable differences
        std::vector<Goal> asked;
        for (const auto& goal : goals()) {
            Goal one = as_condition(goal, distance_.base().properties[goal.property], inside * distance_.unit(goal.property));
            const double value = state.properties[goal.property];
            if (thins(goal) && (near_ || value < distance_.base().properties[goal.property]))
                one.limit = std::max(one.limit, value + moved * distance_.unit(goal.property));
            else if (shortfall(one, value, value) > 0) one.limit = value + (goal.most ? std::min(1.0, part_) : part_) * (one.limit - value);
            asked.push_back(std::move(one));
        }
        return asked;
    }

    struct Candidate {
        Mended mended;
        std::pair<std::size_t, double> rank;
    };

    // Every choice of so many moves, no two of one role.
    static std::vector<std::vector<std::size_t>> chosen_moves(const Problem& problem, std::size_t foods) {
        constexpr std::size_t enough = 60;
        std::vector<std::vector<std::size_t>> all{{}};
        for (std::size_t n = 0; n < foods; ++n) {
            std::vector<std::vector<std::size_t>> longer;
            for (const auto& chosen : all)
                for (std::size_t m = chosen.empty() ? 0 : chosen.back() + 1; m < problem.moves.size() && longer.size() < enough; ++m) {
                    const bool again = std::any_of(chosen.begin(), chosen.end(),
                                                   [&](std::size_t c) { return problem.moves[c].role == problem.moves[m].role; });
                    if (again) continue;
                    longer.push_back(chosen);
                    longer.back().push_back(m);
                }
            all = std::move(longer);
        }
        return all;
    }

    static Problem only(const Problem& problem, const std::vector<std::size_t>& chosen) {
        Problem part = problem;
        part.moves.clear();
        for (const auto m : chosen) {
            part.moves.push_back(problem.moves[m]);
            part.moves.back().equivalents.clear();
        }
        for (std::size_t c = 0; c < part.constraints.size(); ++c) {
            part.constraints[c].per_gram.clear();
            for (const auto m : chosen) part.constraints[c].per_gram.push_back(problem.constraints[c].per_gram[m]);
        }
        return part;
    }

    std::optional<Candidate> with_only(const Problem& problem, const std::vector<std::size_t>& chosen, const Mended& start,
                                       const Distance& distance) const {
        constexpr double rarer = 0.5;  // squared differences for each food that is more usual
        SearchLimits limits;
        limits.plans = 1;
        limits.progress = mass_.context.options.progress;
        // The draws that decide may gain less than the middle one does, so each time they are not there the step is longer.
        limits.tighter = [&, margin = 1.2](const Plan& plan, const std::vector<Goal>& hard) mutable {
            constexpr double longer = 1.4;
            auto moved = tighter(weighed(problem, plan.grams, start).formula, hard, margin);
            margin *= longer;
            return moved;
        };
        const auto plans = search_plans(problem, distance, mass_.context.nominal().models(), limits).plans;
        if (plans.empty()) return std::nullopt;
        Candidate candidate{weighed(problem, plans.front().grams, start), {0, plans.front().cost}};
        for (const auto m : used_moves(problem, plans.front().grams)) {
            candidate.rank.first += problem.moves[m].kind == MoveKind::add ? 1 : 0;
            candidate.rank.second += rarer * static_cast<double>(chosen[m]);
        }
        return candidate;
    }

    // The least share of plain mass by which the draws have `goal`; nothing where the most does not do it.
    std::optional<double> share_for(const Goal& goal, const Plain& plain) const {
        constexpr int halvings = 11;
        double low = 0, high = mass_.context.constant(thins(goal) ? "mend.plain.most" : "mend.plain.beside");
        const auto done = [&](double share) { return meets(mass_.made.states(blended(mass_.formula, plain, share)), goal); };
        if (!done(high)) return std::nullopt;
        for (int i = 0; i < halvings; ++i) {
            const double middle = (low + high) / 2;
            (done(middle) ? high : low) = middle;
        }
        return high;
    }

    std::optional<double> share_of(const Plain& plain, bool thin) {
        double share = 0;
        for (const auto* goal : plain.serves) {
            if (thin && !thins(*goal)) continue;  // additions can do that
            const auto least = share_for(*goal, plain);
            if (least) share = std::max(share, *least);
            else if (thins(*goal)) return too_much(goal->want);
            else return std::nullopt;
        }
        for (const auto& taste : mass_.tastes) {
            if (!taste.reading->less_of) continue;
            const double least = 1 / taste.by() - 1;
            if (least > mass_.context.constant("mend.plain.most")) return too_much(taste.taste.written);
            share = std::max(share, least);
        }
        const double step = mass_.context.constant("mend.plain.round");
        return share > 0 ? std::optional(std::ceil(share / step) * step) : std::nullopt;
    }

    std::nullopt_t too_much(const std::string& want) {
        ways_.cannot.push_back(
            cannot_be(ReasonKind::too_much_plain, want, {{"at most", {}, mass_.context.constant("mend.plain.most"), "times the mass"}}));
        return std::nullopt;
    }

    void by_plain_mass(bool thin) {
        auto plain = plain_for(mass_.formula, mass_.tastes, mass_.made, distance_, mass_.context);
        const auto served = [&](const Goal& goal) {
            return plain && std::any_of(plain->serves.begin(), plain->serves.end(),
                                        [&](const Goal* g) { return g->property == goal.property && g->want == goal.want; });
        };
        bool all = true;
        for (const auto& goal : goals())
            if (thins(goal) && !served(goal)) {
                ways_.cannot.push_back(cannot_be(ReasonKind::fault_in_meat, goal.want));
                all = false;
            }
        if (!plain || !all) return;
        auto share = share_of(*plain, thin);
        if (!share || !within_stock(*plain, *share)) return;
        constexpr int rounds = 6;
        for (int round = 0; round < rounds; ++round, *share *= 1.05) {
            Mended start = with_more_of(blended(mass_.formula, *plain, *share));
            std::vector<Mended> ends{start};
            if (!goals().empty() && !meets_all_of(start.formula)) {
                auto found = searched(start, 1);
                if (!found.empty()) ends = std::move(found);
            }
            MendWay way = judged_way(ends.front(), &*plain, *share);
            if (!way.met && round + 1 < rounds) continue;
            if (way.met || thin) ways_.all.push_back(std::move(way));
            return;
        }
    }

    // Where nothing does all that was asked: what does most of it, by additions alone and beside as much plain mass as may help.
    void by_what_comes_nearest() {
        std::vector<std::pair<double, MendWay>> near;
        const auto keep = [&](const Mended& mended, const Plain* plain, double share) {
            MendWay way = judged_way(mended, plain, share);
            const double done = progress_of(way);
            if (way.met || done >= mass_.context.constant("mend.nearest.least")) near.emplace_back(way.met ? 1e9 : done, std::move(way));
        };
        for (const auto& mended : nearest_to(with_more_of(mass_.formula), 2)) keep(mended, nullptr, 0);
        const double beside = mass_.context.constant("mend.plain.beside");
        auto plain = plain_for(mass_.formula, mass_.tastes, mass_.made, distance_, mass_.context);
        const auto said = ways_.cannot.size();
        if (plain && within_stock(*plain, beside)) {
            const Mended start = with_more_of(blended(mass_.formula, *plain, beside));
            const auto found = nearest_to(start, 1);
            keep(found.empty() ? start : found.front(), &*plain, beside);
        }
        ways_.cannot.resize(said);  // too little meat for plain mass was told before, if it was asked for
        std::stable_sort(near.begin(), near.end(), [](const auto& a, const auto& b) { return a.first > b.first; });
        for (auto& [done, way] : near)
            if (ways_.all.size() < std::clamp<std::size_t>(mass_.request.top, 1, 2)) ways_.all.push_back(std::move(way));
        keep_the_met();
    }

    // Additions that go the largest part of the way that any do: by the middle draw past it first, as then more of the draws get there.
    std::vector<Mended> nearest_to(const Mended& start, std::size_t top) {
        constexpr std::array parts{1.0, 1.6, 1.3, 0.98, 0.9, 0.6, 0.3};
        near_ = true;
        std::vector<Mended> found;
        for (const double part : parts) {
            part_ = part;
            found = searched(start, top);
            if (!found.empty()) break;
        }
        part_ = 1;
        near_ = false;
        return found;
    }

    // Noticeable differences by which the goals are nearer than in the mass as made; none where one of them got worse.
    double progress_of(const MendWay& way) const {
        double nearer = 0;
        for (const auto& goal : goals()) {
            const double base = mass_.base.properties[goal.property].mid;
            const double step = (shortfall(goal, base, base) - shortfall(goal, way.prediction.properties[goal.property].mid, base)) /
                                distance_.unit(goal.property);
            constexpr double unfelt = 0.15;
            if (step < -unfelt) return 0;
            nearer += step;
        }
        return nearer;
    }

    // Meat there is too little of ends it; of anything else the plain mass does without.
    bool within_stock(Plain& plain, double share) {
        std::vector<Line> there;
        for (auto& line : plain.lines) {
            const Offer offer = mass_.stock.offer(line);
            const double needed = share * line.grams.mid;
            if (offer.on_hand && (!offer.grams || *offer.grams >= needed)) {
                there.push_back(std::move(line));
                continue;
            }
            const Ingredient& food = *knowledge().ingredient(line.ingredient);
            if (food.meat) {
                Reason short_of = make_reason(ReasonKind::short_of_plain, {{"needed", {}, needed, "g"}}, {food.names.front()});
                if (offer.on_hand) short_of.figures.push_back({"on hand", {}, *offer.grams, "g"});
                ways_.cannot.push_back(std::move(short_of));
                return false;
            }
            plain.lacks.push_back(line.ingredient);
        }
        plain.lines = std::move(there);
        return true;
    }

    MendWay judged_way(const Mended& mended, const Plain* plain, double share) const {
        MendWay way;
        way.kind = !plain ? MendKind::add : mended.add.empty() ? MendKind::blend : MendKind::blend_and_add;
        way.add = mended.add;
        if (plain) put_plain(way, *plain, share);
        way.formula = mended.formula;
        way.formula.title = mass_.formula.title + ", mended";
        way.formula.parent = mass_.formula.title;
        const auto states = mass_.made.states(way.formula);
        way.prediction = mass_.made.predicted(way.formula, states);
        for (const auto& goal : goals())
            way.wants.push_back(judged(goal, distance_, mass_.base.properties[goal.property].mid,
                                       way.prediction.properties[goal.property].mid, mass_.states, states, mass_.request.sure));
        way.met = std::all_of(way.wants.begin(), way.wants.end(), [](const WantResult& w) { return w.met; });
        way.differences = differences_between(mass_.states, states).properties;
        way.new_allergens = new_allergens(mass_.base, way.prediction);
        way.new_cautions = new_cautions(mass_.base, way.prediction);
        return way;
    }

    void put_plain(MendWay& way, const Plain& plain, double share) const {
        Formula alone = mass_.formula;
        alone.lines = plain_lines(plain, share);
        for (const auto& line : alone.lines) way.plain.push_back(ingoing(line, line.grams.mid, false, mass_.mending, knowledge()));
        for (auto& part : way.plain) part.water_g = 0, part.how.clear();  // it is made as the formula is
        way.plain_g = NominalBatch(alone, mass_.context.nominal()).total()[Amount::mass];
        for (const auto& id : plain.lacks) {
            const std::string& name = knowledge().ingredient(id)->names.front();
            if (std::find(way.plain_lacks.begin(), way.plain_lacks.end(), name) == way.plain_lacks.end()) way.plain_lacks.push_back(name);
        }
    }

    void none_found() {
        std::vector<std::string> wants;
        for (const auto& goal : goals())
            if (std::find(wants.begin(), wants.end(), goal.want) == wants.end()) wants.push_back(goal.want);
        for (const auto& taste : mass_.tastes)
            if (taste.reading->more_of) wants.push_back(taste.taste.written);
        if (!wants.empty()) ways_.cannot.push_back(cannot_be(ReasonKind::nothing_brings, listed(wants)));
    }

    const Mass& mass_;
    Material total_;
    Distance distance_;  // from the mass as it is
    Ways ways_;
    double part_ = 1;    // of the way to what was asked; the whole but where that cannot be had
    bool near_ = false;  // while what comes nearest is looked for
};

}  // namespace

Ways ways_to_mend(const Mass& mass) { return WaysOf(mass).ways(); }

}  // namespace standin
