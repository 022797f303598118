#include "adapt/adapt.hpp"

#include <algorithm>
#include <cmath>
#include <optional>

#include "adapt/alternatives.hpp"
#include "adapt/batch_size.hpp"
#include "adapt/care.hpp"
#include "adapt/compared.hpp"
#include "adapt/conflict.hpp"
#include "adapt/difference.hpp"
#include "adapt/edits_beside.hpp"
#include "adapt/explain.hpp"
#include "adapt/from_a_shop.hpp"
#include "adapt/idle_steps.hpp"
#include "adapt/losses.hpp"
#include "adapt/met.hpp"
#include "adapt/missing_salt.hpp"
#include "adapt/nearness.hpp"
#include "adapt/nothing_to_take.hpp"
#include "adapt/own_ideas.hpp"
#include "adapt/part_way.hpp"
#include "adapt/reach.hpp"
#include "adapt/request.hpp"
#include "adapt/salted_first.hpp"
#include "adapt/search.hpp"
#include "adapt/variant_list.hpp"
#include "adapt/variant_name.hpp"
#include "adapt/verify.hpp"
#include "core/band.hpp"
#include "evaluate/predict.hpp"
#include "safety/allergens.hpp"
#include "safety/page.hpp"
#include "safety/safety.hpp"

namespace standin {
namespace {

// Which idea comes first is not to hang on how many are shown: so many are held beside each other while one is looked for.
constexpr std::size_t least_ideas = 5;

// A plan as weighed out, and what it is at every draw.
struct WeighedPlan {
    Plan plan;
    BuiltVariant built;
    SampledBatch batch;
    std::vector<State> states;
};

class Adapt {
public:
    Adapt(const Formula& formula, const AdaptRequest& request, const Context& context, const std::vector<Goal>& goals, Stock stock,
          std::string_view want_weight = "advice.weight.want")
        : formula_(formula),
          request_(request),
          context_(context),
          stock_(std::move(stock)),
          graph_(context.knowledge()),
          base_batch_(formula, context.nominal()),
          base_total_(base_batch_.total()),
          distance_(context, base_total_, base_batch_.state(), without_what_is_there(goals, base_batch_.state()),
                    context.constant(want_weight)),
          problem_(make_careful_problem()),
          base_drawn_(formula, context.sampled()),
          base_states_(base_drawn_.states()) {}

    AdaptAnswer answer() {
        AdaptAnswer answer;
        answer.base = predicted(formula_, base_drawn_, base_states_);
        answer.presumed = stock_.presumed();
        answer.excluded = stock_.excluded();
        if (auto opposed = contradiction(distance_.goals(), distance_.base()); !opposed.empty()) {
            for (const auto& want : opposed) answer.conflict.push_back(demand("want", want));
            answer.would_give = {make_reason(ReasonKind::giving_up_one)};
            return with_safety(std::move(answer));
        }
        if (auto nothing = nothing_to_take(distance_, context_); !nothing.conflict.empty()) {
            answer.conflict = std::move(nothing.conflict);
            answer.would_give = std::move(nothing.would_give);
            return with_safety(std::move(answer));
        }
        if (auto excluded = ideas_excluded(request_, stock_, context_.knowledge()); !excluded.conflict.empty()) {
            answer.conflict = std::move(excluded.conflict);
            answer.would_give = std::move(excluded.would_give);
            return with_safety(std::move(answer));
        }
        if (answer.conflict = ideas_without_weight(request_, problem_, context_.knowledge()); !answer.conflict.empty()) {
            answer.would_give = ideas_by_weight(request_, formula_, context_);
            return with_safety(std::move(answer));
        }
        if (!kept_lines_missing()) search(answer);
        if (!kept_lines_missing() && !stopped_ && !distance_.goals().empty() && answer.variants.empty()) {
            problem_ = make_careful_problem(Leeway::all);
            search(answer);
        }
        if (std::none_of(answer.variants.begin(), answer.variants.end(), meets_all)) not_met(answer);
        if (auto against = ideas_not_followed(request_, formula_, answer.variants, context_.knowledge()); !against.empty()) {
            answer.conflict = std::move(against);
            answer.would_give = ideas_by_weight(request_, formula_, context_);
            return with_safety(std::move(answer));
        }
        add_what_shops_give(answer);
        return with_safety(std::move(answer));
    }

    // As far towards what was asked as it is worth what the sausage loses by it.
    AdaptAnswer part_way() {
        AdaptAnswer answer;
        answer.base = predicted(formula_, base_drawn_, base_states_);
        std::vector<std::string> aims;
        for (const auto& goal : distance_.goals()) aims.push_back(goal.want);
        best_effort(answer, aims);
        leave_out_idle(answer.variants);
        add_what_shops_give(answer);
        return answer;
    }

private:
    void add_what_shops_give(AdaptAnswer& answer) const {
        if (answer.variants.empty()) return;
        for (auto& bought : from_a_shop(answer.variants.front(), formula_, stock_, graph_, context_))
            answer.would_give.push_back(std::move(bought));
    }

    // Care with the leaves costs nothing and comes before anything is bought.
    Problem make_careful_problem(Leeway leeway = Leeway::usual) const {
        const Care care = prepared_with_care(formula_, distance_, context_);
        Problem problem = make_problem(care.formula, stock_, graph_, distance_, context_, leeway);
        for (auto& way : problem.processes) way.changes.insert(way.changes.begin(), care.done.begin(), care.done.end());
        return problem;
    }

    Prediction predicted(const Formula& formula, const SampledBatch& batch, const std::vector<State>& states) {
        Prediction p = predict_formula(formula, batch, states, context_.evaluator);
        mark_safety(p, formula, context_.evaluator, context_.options.rules);
        return p;
    }

    bool kept_lines_missing() const {
        for (std::size_t l = 0; l < formula_.lines.size(); ++l)
            if (formula_.lines[l].keep && problem_.missing[l]) return true;
        return false;
    }

    // Nothing does all that was asked: what stands against what, how near each want can be come to, and the nearest that can be done.
    void not_met(AdaptAnswer& answer) {
        if (stopped_) {
            answer.conflict.push_back(make_reason(ReasonKind::stopped_before));
            return;
        }
        Conflict conflict = minimal_infeasible_subset(formula_, request_, distance_.goals(), graph_, context_);
        answer.conflict = std::move(conflict.demands);
        answer.would_give = std::move(conflict.would_give);
        // Each demand can be met alone and all together, but not in the plans found: say that, not nothing.
        if (answer.conflict.empty()) answer.conflict.push_back(make_reason(ReasonKind::none_within_limits));
        if (kept_lines_missing()) return let_go(answer);
        problem_.hard = hard_goals(distance_);
        const Problem asked = problem_;  // with all the leeway there is
        const Shown shown = [&](const Plan& plan, const Goal& goal) { return sure_value(weighed_out(plan, asked).states, goal); };
        problem_ = make_careful_problem();
        if (answer.variants.empty()) best_effort(answer, conflict.wants);
        answer.reach = reach_of_wants(asked, distance_, context_.nominal().models(), shown, answer.base.properties,
                                      answer.variants.empty() ? nullptr : &answer.variants.front().prediction.properties);
        leave_out_idle(answer.variants);
        clear_conflict_if_met(answer);
    }

    // A kept line that is not to be had in full: the nearest is what can be done with what there is of it.
    void let_go(AdaptAnswer& answer) {
        Formula freed = formula_;
        for (std::size_t l = 0; l < freed.lines.size(); ++l) freed.lines[l].keep = freed.lines[l].keep && !problem_.missing[l];
        AdaptAnswer nearest = Adapt(freed, request_, context_, distance_.goals(), stock_).answer();
        answer.variants = std::move(nearest.variants);
        answer.proved = nearest.proved;
        answer.gap = nearest.gap;
        answer.plans_visited = nearest.plans_visited;
    }

    // What is shown and judged are medians over the draws of weights as rounded; the search works at the middle of every band, and the
    // two lie a little apart. The limits are moved by what that comes to in the best relaxed batch, and for each plan by what its own
    // medians still miss. What the search proves holds as far as the plans it does not visit lie off the middle as that batch does.
    void search(AdaptAnswer& answer) {
        const std::vector<Goal> asked = problem_.hard;
        problem_.hard = moved_for_all(asked);
        const SearchResult found = searched(asked);
        show(found, distance_.goals(), answer);
        if (!stopped_ && !problem_.hard.empty() && answer.variants.empty()) look_further(answer, asked);
        if (!stopped_ && request_.changes == 0 && !distance_.goals().empty()) look_among_fewer(answer, asked);
    }

    // A plan of many changes was balanced from many changes: of fewer there may be a nearer one in another basin.
    void look_among_fewer(AdaptAnswer& answer, const std::vector<Goal>& asked) {
        constexpr std::size_t fewer = 4;
        if (answer.variants.empty() || answer.variants.front().edits.size() <= fewer) return;
        AdaptAnswer other;
        other.base = answer.base;
        show(searched(asked, fewer), distance_.goals(), other);
        if (other.variants.empty() || other.variants.front().distance >= answer.variants.front().distance) return;
        answer.variants = std::move(other.variants);
        answer.proved = false;
    }

    SearchResult searched(const std::vector<Goal>& asked, std::size_t changes = 0) {
        SearchLimits limits = this->limits();
        if (changes > 0) limits.changes = changes;
        SearchResult found = search_plans(problem_, distance_, context_.nominal().models(), limits);
        stopped_ = found.stopped;
        for (auto& plan : found.plans) {
            ease(plan, asked);
            simplify(plan, asked);
        }
        return found;
    }

    // Whatever gives more than was asked gives that as well: where nothing was found, a goal that is further off may lead into a basin that
    // the first one did not.
    void look_further(AdaptAnswer& answer, const std::vector<Goal>& asked) {
        for (const double further : {0.25, 0.5, 1.0, 2.0}) {
            problem_.hard = asked;
            for (auto& goal : problem_.hard) {
                const double step = further * distance_.unit(goal.property);
                if (goal.kind == Goal::Kind::at_least) goal.limit += step;
                if (goal.kind == Goal::Kind::at_most) goal.limit -= step;
            }
            show(searched(asked), distance_.goals(), answer);
            if (!answer.variants.empty()) break;
        }
        answer.proved = false;
        problem_.hard = asked;
    }

    // The shift of the relaxed batch may ask more of a plan than its own medians need: balance it once more from the limits as asked.
    void ease(Plan& plan, const std::vector<Goal>& hard) {
        std::vector<Choice> choices(problem_.moves.size(), Choice::out);
        for (const auto m : used_moves(problem_, plan.grams))
            choices[m] = plan.grams[m] >= problem_.moves[m].most ? Choice::full : Choice::in;
        if (const auto nearer = kept_within(choices, plan, hard); nearer && nearer->cost < plan.cost) plan = *nearer;
    }

    // Of plans that are as good as tied the one that touches fewer lines: a line that moves and gains next to nothing stays as it is, and
    // another food is not brought in for less than anybody notices.
    void simplify(Plan& plan, const std::vector<Goal>& asked) {
        constexpr double tie = 0.1;           // squared noticeable differences
        constexpr double worth_a_food = 0.3;  // noticeable differences; judgement
        const double tied = plan.cost + tie;  // of all that is left out together
        const double without_food = std::pow(std::sqrt(plan.cost) + worth_a_food, 2);
        for (const auto m : used_moves(problem_, plan.grams)) {
            const Move& move = problem_.moves[m];
            const bool added = comes_in_beside(move, plan);
            if (move.trim || (move.brings_food() && !added)) continue;
            const double enough = added ? without_food : tied;
            std::vector<Choice> choices(problem_.moves.size(), Choice::out);
            for (const auto other : used_moves(problem_, plan.grams))
                choices[other] = plan.grams[other] >= problem_.moves[other].most ? Choice::full : Choice::in;
            choices[m] = Choice::out;
            if (const auto shorter = kept_within(choices, plan, asked); shorter && shorter->cost <= enough) plan = *shorter;
        }
    }

    // What comes in for nothing that goes: no stand-in, or one beside a line that stays whole, or the partner of one that is not used.
    bool comes_in_beside(const Move& move, const Plan& plan) const {
        const auto used = used_moves(problem_, plan.grams);
        const auto any = [&](MoveKind kind, std::size_t line) {
            return std::any_of(used.begin(), used.end(),
                               [&](std::size_t m) { return problem_.moves[m].kind == kind && problem_.moves[m].line == line; });
        };
        if (move.kind == MoveKind::stand_in) return !move.into && !problem_.missing[move.line] && !any(MoveKind::reduce, move.line);
        return move.kind == MoveKind::add && !(move.partner_of && any(MoveKind::stand_in, *move.partner_of));
    }

    // The best grams of these moves whose medians keep what was asked.
    std::optional<Plan> kept_within(const std::vector<Choice>& choices, const Plan& from, std::vector<Goal> hard) {
        constexpr int rounds = 4;
        const auto& process = problem_.processes[from.process];
        for (int round = 0; round < rounds; ++round) {
            const Solution s = rebalancer().solve(choices, process, from.grams, {.hard = &hard});
            if (!s.feasible()) break;
            Plan plan{from.process, s.grams, s.cost + process.price, s.price + process.price};
            auto moved = tighter(plan, hard);
            if (!moved) return plan;
            hard = std::move(*moved);
        }
        return std::nullopt;
    }

    void show(const SearchResult& found, const std::vector<Goal>& goals, AdaptAnswer& answer) {
        answer.plans_visited += found.visited;
        answer.proved = found.proved;
        answer.gap = found.gap;
        for (auto& tried : weighed_out(found.plans, goals)) answer.variants.push_back(variant_of(std::move(tried), answer.base));
        put_in_order(answer.variants);
        answer.variants.resize(std::min(answer.variants.size(), std::max<std::size_t>(1, request_.top)));
    }

    Rebalancer rebalancer() const { return {problem_, distance_, context_.nominal().models()}; }

    // What the best relaxed batch misses is asked of every plan. It comes from the models, and is much the same whatever the food; but each
    // chile has a wide band of its own: heat is asked for only as far as the best batch without that one's new foods misses it too. Else
    // the bound lies, and a better plan with another chile is passed over.
    std::vector<Goal> moved_for_all(const std::vector<Goal>& asked) {
        std::vector<Choice> open(problem_.moves.size(), Choice::open);
        const auto relaxed = best_relaxed(open);
        auto moved = relaxed ? tighter(*relaxed, asked) : std::nullopt;
        if (!moved) return asked;
        const auto of_heat = [](const Goal& goal) { return goal.property == Property::heat_mg_kg; };
        if (std::none_of(asked.begin(), asked.end(), of_heat)) return std::move(*moved);
        for (const auto m : used_moves(problem_, relaxed->grams))
            if (problem_.moves[m].brings_food()) open[m] = Choice::out;
        const auto others = best_relaxed(open);
        if (!others) return std::move(*moved);
        const std::vector<Goal> less = tighter(*others, asked).value_or(asked);
        for (std::size_t g = 0; g < asked.size(); ++g) {
            if (!of_heat(asked[g])) continue;
            double& limit = (*moved)[g].limit;
            limit = asked[g].kind == Goal::Kind::at_most ? std::max(limit, less[g].limit) : std::min(limit, less[g].limit);
        }
        return std::move(*moved);
    }

    // The best batch of what is open, as if it were a plan.
    std::optional<Plan> best_relaxed(const std::vector<Choice>& open) const {
        std::optional<Plan> best;
        if (problem_.hard.empty()) return best;
        for (std::size_t p = 0; p < problem_.processes.size(); ++p) {
            const Solution s = rebalancer().solve(open, problem_.processes[p], {}, {.multistart = true});
            if (s.feasible() && (!best || s.cost < best->cost)) best = Plan{p, s.grams, s.cost, s.price};
        }
        return best;
    }

    // Goals with the limits moved by what the medians of the plan miss; nothing when they keep all of them.
    std::optional<std::vector<Goal>> tighter(const Plan& plan, const std::vector<Goal>& hard) {
        constexpr double margin = 1.2;        // the median moves a little less than the limit
        constexpr double least_shift = 0.02;  // of a noticeable difference: less is lost in the rounding of the weights
        const WeighedPlan tried = weighed_out(plan);
        std::vector<Goal> moved = hard;
        bool any = false;
        for (std::size_t g = 0; g < hard.size(); ++g) {
            const Goal& asked = distance_.goals()[g];
            const double short_by = missed_by(asked, distance_, base_states_, tried.states, request_.sure);
            if (short_by <= 0 || asked.kind == Goal::Kind::equal) continue;
            const double shift = std::max(margin * short_by, least_shift * distance_.unit(asked.property));
            moved[g].limit += asked.kind == Goal::Kind::at_most ? -shift : shift;
            any = true;
        }
        return any ? std::optional(std::move(moved)) : std::nullopt;
    }

    // What a property comes to at the draw that decides.
    double sure_value(const std::vector<State>& states, const Goal& goal) const {
        std::vector<double> values = values_of(states, goal.property);
        std::sort(values.begin(), values.end());
        const double share = goal.kind == Goal::Kind::at_least ? 1 - request_.sure : request_.sure;
        return values[std::min(values.size() - 1, static_cast<std::size_t>(share * static_cast<double>(values.size())))];
    }

    SearchLimits limits() {
        SearchLimits limits;
        limits.plans = std::max(least_ideas, request_.top);
        limits.changes = request_.changes;
        limits.progress = context_.options.progress;
        limits.tighter = [this](const Plan& plan, const std::vector<Goal>& hard) { return tighter(plan, hard); };
        return limits;
    }

    WeighedPlan weighed_out(const Plan& plan) { return weighed_out(plan, problem_); }

    WeighedPlan weighed_out(const Plan& plan, const Problem& problem) {
        BuiltVariant built = build_variant(problem, plan, stock_, context_.knowledge());
        drop_idle_steps(built, formula_.process, distance_, context_.nominal());
        SampledBatch batch(built.formula, context_.sampled());
        auto states = batch.states();
        return {plan, std::move(built), std::move(batch), std::move(states)};
    }

    std::vector<WeighedPlan> weighed_out(const std::vector<Plan>& plans, const std::vector<Goal>& goals) {
        std::vector<WeighedPlan> all;
        for (const auto& plan : plans) {
            WeighedPlan tried = weighed_out(plan);
            const auto faults = faults_of(tried.built.formula, problem_, stock_, goals, distance_, context_.nominal());
            if (faults.empty()) all.push_back(std::move(tried));
            else if (context_.options.log)
                for (const auto& fault : faults) context_.options.log("a plan was dropped: " + fault);
        }
        return all;
    }

    // The nearest to what was asked, with the wants of the conflict as aims only; the others stay hard.
    void best_effort(AdaptAnswer& answer, const std::vector<std::string>& given_up) {
        std::vector<Goal> kept, kept_hard;
        for (std::size_t g = 0; g < problem_.hard.size(); ++g) {
            const Goal& goal = distance_.goals()[g];
            const bool up = given_up.empty() ? !goal.condition : std::find(given_up.begin(), given_up.end(), goal.want) != given_up.end();
            if (up) continue;
            kept.push_back(goal);
            kept_hard.push_back(problem_.hard[g]);
        }
        problem_.hard = std::move(kept_hard);
        SearchLimits limits = this->limits();
        limits.tighter = nullptr;
        show(search_plans(problem_, distance_, context_.nominal().models(), limits), kept, answer);
    }

    Variant variant_of(WeighedPlan tried, const Prediction& base) {
        Variant v;
        const Plan& plan = tried.plan;
        const auto hotter = cook_through(tried.built.formula, base, context_);
        if (hotter) {
            tried.batch = SampledBatch(tried.built.formula, context_.sampled());
            tried.states = tried.batch.states();
        }
        const auto lost = lost_shares(problem_, plan.grams);
        Compared compared = compared_with(formula_, tried.built, problem_, lost, context_);
        // Of the weights as rounded; what is felt leaves out what is missed of a want, which is told as that.
        const double square = distance_.square(compared.variant, compared.after);
        v.felt = std::sqrt(std::max(0.0, square - distance_.wants_squared(compared.after)));
        v.distance = std::sqrt(square + plan.price + lost_square(problem_, plan.grams));
        v.nearness = nearness_of(v.distance, context_);
        v.table_reason = at_the_table(distance_, compared);
        v.table = in_full(v.table_reason);
        v.prediction = predicted(tried.built.formula, tried.batch, tried.states);
        // Reasons quote the medians that stand in the tables, not the middle draw the search works with.
        for_each_property([&](Property p) {
            compared.before.properties[p] = base.properties[p].mid;
            compared.after.properties[p] = v.prediction.properties[p].mid;
        });
        v.edits = explain_edits(tried.built, problem_, compared, alternatives_to(plan, problem_, rebalancer()), stock_, context_);
        if (hotter) v.edits.push_back(*hotter);
        for (auto& edit : without_all_beside(formula_, stock_)) v.edits.push_back(std::move(edit));
        v.new_allergens = new_allergens(base, v.prediction);
        v.new_cautions = new_cautions(base, v.prediction);
        v.gives_back = what_gives_back(formula_, distance_, compared, graph_, stock_, context_);
        if (auto salt = salt_would_bind(formula_, distance_, context_)) v.gives_back.insert(v.gives_back.begin(), std::move(*salt));
        v.formula = std::move(tried.built.formula);
        name_variant(v.formula, formula_, v.edits, request_.wants, context_.knowledge());
        put_on_the_plate(v.formula, v.gives_back);
        v.prediction.title = v.formula.title;
        const Differences d = differences_between(base_states_, tried.states);
        v.differences = d.properties;
        v.colour_rested = d.rested;
        v.colour_cooked = d.cooked;
        for (const auto& goal : distance_.goals())
            v.wants.push_back(judged(goal, distance_, base.properties[goal.property].mid, v.prediction.properties[goal.property],
                                     base_states_, tried.states, request_.sure));
        return v;
    }

    const Formula& formula_;
    const AdaptRequest& request_;
    const Context& context_;
    Stock stock_;
    SwapGraph graph_;
    NominalBatch base_batch_;
    Material base_total_;
    Distance distance_;
    Problem problem_;
    SampledBatch base_drawn_;
    std::vector<State> base_states_;
    bool stopped_ = false;  // by the maker
};

}  // namespace

Result<AdaptAnswer> adapt_formula(const CheckedFormula& formula, const AdaptRequest& request, std::optional<double> meat_g,
                                  const Context& context) {
    const auto marked = with_keep_marks(formula.formula(), request, context.knowledge());
    if (!marked) return Failure(marked.error());
    auto goals = read_wants(request.wants, context.knowledge());
    if (!goals) return Failure(goals.error());
    const Formula merged = with_equal_lines_merged(*marked);
    const auto asked = with_own_ideas(request, merged, context.knowledge());
    if (!asked) return Failure(asked.error());
    auto stock = Stock::of(merged, *asked, context);
    if (!stock) return Failure(stock.error());
    const auto sized = at_size(merged, meat_g, request.as_much, *stock, context);
    if (!sized) return Failure(sized.error());
    AdaptAnswer answer = Adapt(sized->formula, *asked, context, *goals, *stock).answer();
    if (goes_too_far(answer, *goals, context))
        put_part_way_first(answer, Adapt(sized->formula, *asked, context, *goals, *stock, "advice.part-way.weight").part_way(), request.top,
                           context);
    if (const auto salted = with_salt(sized->formula, *asked, *goals, *stock, context)) {
        AdaptAnswer first = Adapt(sized->formula, salted->request, context, salted->goals, std::move(*stock)).answer();
        put_salted_first(answer, std::move(first), *salted, request.top);
    }
    answer.scaled = sized->scaled;
    return answer;
}

}  // namespace standin
