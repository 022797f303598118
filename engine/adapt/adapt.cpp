#include "adapt/adapt.hpp"

#include <algorithm>
#include <cmath>
#include <functional>
#include <optional>

#include "adapt/batch_size.hpp"
#include "adapt/distance/met.hpp"
#include "adapt/goals/request.hpp"
#include "adapt/infeasibility/conflict.hpp"
#include "adapt/infeasibility/goes_away.hpp"
#include "adapt/infeasibility/held_at_most.hpp"
#include "adapt/infeasibility/nearest_numbers.hpp"
#include "adapt/infeasibility/nothing_to_take.hpp"
#include "adapt/infeasibility/reach.hpp"
#include "adapt/infeasibility/surest.hpp"
#include "adapt/kept_by_packet.hpp"
#include "adapt/moves/care.hpp"
#include "adapt/own_ideas.hpp"
#include "adapt/part_way.hpp"
#include "adapt/salted_first.hpp"
#include "adapt/search/search.hpp"
#include "adapt/trimmed.hpp"
#include "adapt/variants/drawn_plans.hpp"
#include "adapt/variants/from_a_shop.hpp"
#include "adapt/variants/variant_list.hpp"
#include "adapt/variants/variant_maker.hpp"
#include "adapt/verification/verify.hpp"
#include "core/has_food.hpp"
#include "evaluate/predict.hpp"
#include "safety/page.hpp"

namespace standin {
namespace {

// Which idea comes first is not to hang on how many are shown: so many are held beside each other while one is looked for.
constexpr std::size_t least_ideas = 5;

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
          base_states_(base_drawn_.states()),
          drawn_(formula, base_states_, problem_, distance_, stock_, context, request.sure),
          maker_(formula, request, base_states_, distance_, stock_, graph_, context) {}

    // It lends its own parts.
    Adapt(const Adapt&) = delete;
    Adapt& operator=(const Adapt&) = delete;

    AdaptAnswer answer() {
        AdaptAnswer answer;
        answer.base = maker_.predicted(formula_, base_drawn_, base_states_);
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
        if (!kept_lines_missing() && !stopped_ && !distance_.goals().empty()) look_with_all_leeway(answer);
        if (std::none_of(answer.variants.begin(), answer.variants.end(), meets_all)) not_met(answer);
        if (auto against = ideas_not_followed(request_, formula_, answer.variants, context_.knowledge()); !against.empty()) {
            answer.conflict = std::move(against);
            answer.would_give = ideas_by_weight(request_, formula_, context_);
            return with_safety(std::move(answer));
        }
        add_what_shops_give(answer);
        return with_safety(std::move(answer));
    }

    // Only what has all the goals; nothing is said of why there is none.
    AdaptAnswer having() {
        AdaptAnswer answer;
        answer.base = maker_.predicted(formula_, base_drawn_, base_states_);
        search(answer);
        if (!stopped_ && answer.variants.empty()) {
            problem_ = make_careful_problem(Leeway::all);
            search(answer);
        }
        std::erase_if(answer.variants, std::not_fn(meets_all));
        return answer;
    }

    // As far towards what was asked as it is worth what the sausage loses by it.
    AdaptAnswer part_way() {
        AdaptAnswer answer;
        answer.base = maker_.predicted(formula_, base_drawn_, base_states_);
        std::vector<std::string> aims;
        for (const auto& goal : distance_.goals()) aims.push_back(goal.want);
        best_effort(answer, aims);
        leave_out_idle(answer.variants, problem_.all_there());
        add_what_shops_give(answer);
        return answer;
    }

    // The making alone, with nothing weighed anew; nothing where something is missing, which making does not bring back, or where a number
    // is asked for and not a word.
    std::optional<Variant> by_making(const AdaptAnswer& answer) {
        if (!problem_.all_there() || !all_in_words(distance_.goals())) return std::nullopt;
        const auto changes_nothing = [](const ProcessOption& way) { return way.changes.empty(); };
        if (std::all_of(problem_.processes.begin(), problem_.processes.end(), changes_nothing)) return std::nullopt;
        if (answer.variants.empty() || !weighs_anew(answer.variants.front())) return std::nullopt;  // it has been said already
        // Of the ways to make it the one that comes nearest.
        const auto left = [&](std::size_t way) {
            const auto& made = problem_.processes[way];
            return distance_.wants_squared(context_.nominal().models().state(problem_.start_total, made.state)) + made.price;
        };
        std::size_t best = 0;
        for (std::size_t way = 1; way < problem_.processes.size(); ++way)
            if (left(way) < left(best)) best = way;
        const Plan plan{best, std::vector<double>(problem_.moves.size(), 0.0), 0, problem_.processes[best].price};
        return maker_.variant_of(drawn_.weighed_out(plan), problem_, answer.base);
    }

private:
    void add_what_shops_give(AdaptAnswer& answer) const {
        if (answer.variants.empty()) return;
        for (auto& bought : from_a_shop(answer.variants.front(), formula_, stock_, graph_, context_))
            answer.would_give.push_back(std::move(bought));
    }

    // Care with the leaves costs nothing and comes before anything is bought.
    Problem make_careful_problem(Leeway leeway = Leeway::usual) const {
        const Care care = prepared_with_care(formula_, distance_, stock_, context_);
        Problem problem = make_problem(care.formula, stock_, graph_, distance_, context_, leeway);
        for (auto& way : problem.processes) way.changes.insert(way.changes.begin(), care.done.begin(), care.done.end());
        return problem;
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
        const Shown shown = [&](const Plan& plan, const Goal& goal) {
            return drawn_.sure_value(drawn_.weighed_out(plan, asked).states, goal);
        };
        problem_ = make_careful_problem();
        if (answer.variants.empty()) words_give_way(answer, conflict.wants);
        if (answer.variants.empty()) best_effort(answer, conflict.wants);
        // The nearest is shown whatever gives way for it: the words, then every want, then with all the leeway there is.
        if (answer.variants.empty()) best_effort_of_all(answer, Leeway::usual);
        if (answer.variants.empty()) best_effort_of_all(answer, Leeway::all);
        if (!stopped_) put_nearest_found_first(answer);
        answer.reach = reach_of_wants(asked, distance_, context_.nominal().models(), shown, answer.base.properties,
                                      answer.variants.empty() ? nullptr : &answer.variants.front());
        if (!answer.variants.empty())
            for (auto& held : held_at_most(formula_, answer.variants.front().formula, stock_, context_))
                answer.reach.push_back(std::move(held));
        leave_out_idle(answer.variants, problem_.all_there());
        // What the reckoning says can be had, and no plan was found to have, is nothing that was proved.
        const auto to_be_had = [](const Reason& r) { return r.role.find("alone") != std::string::npos; };
        answer.proved = answer.proved && std::none_of(answer.reach.begin(), answer.reach.end(), to_be_had);
        clear_conflict_if_met(answer, [this](const std::string& food) { return had(food); });
    }

    // Who asks for a number gets no less than who asks for a weaker one: the aim at all of it may lead where nothing has it. Nor has who
    // asks for more certainty a worse chance than who asks for less.
    void put_nearest_found_first(AdaptAnswer& answer) {
        const auto having = [&](const std::vector<Goal>& goals, double sure) {
            AdaptRequest one = request_;
            one.top = 1;
            one.sure = sure;
            AdaptAnswer found = Adapt(formula_, one, context_, goals, stock_).having();
            answer.plans_visited += found.plans_visited;
            return found;
        };
        const auto put_first = [&](std::optional<AdaptAnswer> found) {
            if (!found || found->variants.empty()) return;
            Variant first = std::move(found->variants.front());
            first.wants = maker_.judged_wants(answer.base, first.prediction, SampledBatch(first.formula, context_.sampled()).states());
            put_nearest_first(answer, std::move(first), request_.top);
        };
        put_first(nearest_by_numbers(distance_, answer.base.properties,
                                     [&](const std::vector<Goal>& goals) { return having(goals, request_.sure); }));
        put_first(surest(request_.sure, [&](double sure) { return having(distance_.goals(), sure); }));
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

    // The limits are moved by what the draws of the best relaxed batch miss, and for each plan by what its own still miss. What the search
    // proves holds as far as the plans it does not visit lie off the middle as that batch does.
    void search(AdaptAnswer& answer) {
        const std::vector<Goal> asked = problem_.hard;
        // Between two bounds there is room: who asks for 2 to 3 is not given 2.95, of which every second lot is past it.
        if (const auto within = well_within(asked)) {
            search_for(answer, *within);
            problem_.hard = asked;
            if (stopped_ || !answer.variants.empty()) return;
        }
        search_for(answer, asked);
    }

    void search_for(AdaptAnswer& answer, const std::vector<Goal>& asked) {
        problem_.hard = drawn_.moved_for_all(asked);
        const SearchResult found = searched(asked);
        show(found, distance_.goals(), answer);
        if (!stopped_ && !problem_.hard.empty() && answer.variants.empty()) look_further(answer, asked);
        if (!stopped_ && request_.changes == 0 && !distance_.goals().empty()) look_among_fewer(answer, asked);
    }

    // Where nothing was found; or, of a number that was asked for, only what is another sausage: who asks for more of it finds his answer
    // among more moves, and that has this as well.
    void look_with_all_leeway(AdaptAnswer& answer) {
        const bool number = std::any_of(distance_.goals().begin(), distance_.goals().end(), [](const Goal& g) { return g.condition; });
        const bool far = number && !answer.variants.empty() && answer.variants.front().nearness >= Nearness::another;
        if (!answer.variants.empty() && !far) return;
        AdaptAnswer further;
        further.base = answer.base;
        problem_ = make_careful_problem(Leeway::all);
        search(further);
        answer.plans_visited += further.plans_visited;
        const double gained = context_.constant("advice.moves.leeway-gains");
        if (answer.variants.empty() ||
            (!further.variants.empty() && further.variants.front().distance <= answer.variants.front().distance - gained)) {
            answer.variants = std::move(further.variants);
            answer.proved = further.proved;
            answer.gap = further.gap;
        } else if (far) {
            problem_ = make_careful_problem();
        }
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
            drawn_.ease(plan, asked);
            drawn_.simplify(plan, asked);
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

    void show(const SearchResult& found, const std::vector<Goal>& goals, AdaptAnswer& answer) {
        answer.plans_visited += found.visited;
        answer.proved = found.proved;
        answer.gap = found.gap;
        for (auto& tried : weighed_out(found.plans, goals))
            answer.variants.push_back(maker_.variant_of(std::move(tried), problem_, answer.base));
        put_in_order(answer.variants, [this](const std::string& food) { return had(food); });
        answer.variants.resize(std::min(answer.variants.size(), std::max<std::size_t>(1, request_.top)));
    }

    bool had(const std::string& food) const { return has_food(formula_, food) || stock_.names(food); }

    SearchLimits limits() {
        SearchLimits limits;
        limits.plans = std::max(least_ideas, request_.top);
        limits.changes = request_.changes;
        limits.progress = context_.options.progress;
        limits.tighter = [this](const Plan& plan, const std::vector<Goal>& hard) { return drawn_.tighter(plan, hard); };
        return limits;
    }

    std::vector<WeighedPlan> weighed_out(const std::vector<Plan>& plans, const std::vector<Goal>& goals) {
        std::vector<WeighedPlan> all;
        for (const auto& plan : plans) {
            WeighedPlan tried = drawn_.weighed_out(plan);
            const auto faults = faults_of(tried.built.formula, problem_, stock_, goals, distance_,
                                          {base_states_, tried.states, request_.sure}, context_.nominal());
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

    // Of words and numbers that pull apart the words are aims, and the numbers stay.
    void words_give_way(AdaptAnswer& answer, const std::vector<std::string>& pulling) {
        std::vector<std::string> words;
        for (const auto& goal : distance_.goals())
            if (!goal.condition && std::find(pulling.begin(), pulling.end(), goal.want) != pulling.end()) words.push_back(goal.want);
        if (words.empty() || words.size() == pulling.size()) return;
        best_effort(answer, words);
        problem_ = make_careful_problem();
    }

    void best_effort_of_all(AdaptAnswer& answer, Leeway leeway) {
        std::vector<std::string> every;
        for (const auto& goal : distance_.goals()) every.push_back(goal.want);
        for (const auto& given_up : {std::vector<std::string>{}, every}) {
            if (stopped_ || !answer.variants.empty()) return;
            problem_ = make_careful_problem(leeway);
            best_effort(answer, given_up);
        }
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
    DrawnPlans drawn_;
    VariantMaker maker_;
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
    const auto own = with_own_ideas(request, merged, context.knowledge());
    if (!own) return Failure(own.error());
    const AdaptRequest asked = with_trimmed_cuts(*own, *goals, merged, context.knowledge());
    auto stock = Stock::of(merged, asked, context);
    if (!stock) return Failure(stock.error());
    if (const auto kept = with_doubtful_lines_kept(merged, *stock, context)) stock = Stock::of(*kept, asked, context);
    const auto sized = at_size(merged, meat_g, request.as_much, *stock, context);
    if (!sized) return Failure(sized.error());
    Adapt adapt(sized->formula, asked, context, *goals, *stock);
    AdaptAnswer answer = adapt.answer();
    if (is_a_toss_up(answer)) {
        // As it stands every second batch has it: what makes it surer is told beside that.
        constexpr double surer = 0.8;
        AdaptRequest more_sure = asked;
        more_sure.sure = surer;
        put_surer_beside(answer, Adapt(sized->formula, more_sure, context, *goals, *stock).answer());
    }
    if (auto made = adapt.by_making(answer)) put_making_first(answer, std::move(*made), request.top, context);
    if (goes_too_far(answer, *goals, context)) {
        AdaptAnswer gentle = Adapt(sized->formula, asked, context, *goals, *stock, "advice.part-way.weight").part_way();
        // What is there may lead the other way before anything is asked; then it is asked for in earnest.
        if (!gentle.variants.empty() && !brings_nearer(gentle.variants.front()))
            gentle = Adapt(sized->formula, asked, context, *goals, *stock).part_way();
        put_part_way_first(answer, std::move(gentle), request.top, context);
    }
    if (const auto salted = with_salt(sized->formula, asked, *goals, *stock, context)) {
        AdaptAnswer first = Adapt(sized->formula, salted->request, context, salted->goals, std::move(*stock)).answer();
        put_salted_first(answer, std::move(first), *salted, request.top);
    }
    tell_what_is_trimmed(answer, *own, asked, context.knowledge());
    answer.first = wants_gone_from(answer, sized->formula, *goals, context);
    answer.scaled = sized->scaled;
    return answer;
}

}  // namespace standin
